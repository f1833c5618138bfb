package tui

import (
	"context"
	"fmt"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/model/explore"
	"backspan/tui/desk"
)

// looker asks the model what small steps do; tests put a quick one here.
type looker func(ctx context.Context, s *model.Study, v *model.Variant, progress func(done, total int)) (*explore.Survey, error)

// asker is a page whose answers are found in the background.
type asker interface {
	Question() any // of the machine in hand; comparable
	Ails() bool    // it asks of a check that could do with a cure
	Forget()       // what is of another machine
	Doing(what string)
	Failed(why string)
	Take(*explore.Survey)
}

// inquiry is what runs in the background for such a page. A state of the study
// never changes, so that it tells an inquiry of another one.
type inquiry struct {
	study   *model.Study
	variant int
	of      any                // the page's question
	cancel  context.CancelFunc // nil when nothing runs
	told    chan whyMsg
}

// seen is the last survey, kept for the next question about the same machine.
type seen struct {
	study   *model.Study
	variant int
	survey  *explore.Survey
}

// whyMsg brings what an inquiry found, or how far it is.
type whyMsg struct {
	told   chan whyMsg // of which inquiry
	doing  string
	survey *explore.Survey
	cures  []explore.Cure
	cured  bool
	err    error
}

// askWhy turns to the page that says why, about a reading or a check, or to the
// one that says what hangs on a value; heed then begins to find out.
func (r *root) askWhy() {
	of, ok := explore.Subject{}, false
	switch r.page {
	case atBench:
		of, ok = r.bench.Subject()
		if p, set := r.bench.Value(); set {
			r.visit(atHang)
			r.hang.About(p)
			return
		}
	case atSideBySide:
		of, ok = r.beside.Subject()
	}
	if !ok {
		r.say("why is asked of a reading, a check or a value: go to one and press " + r.keys.Everywhere.Why.Help().Key + " again")
		return
	}
	r.visit(atWhy)
	r.why.About(of)
}

// asker is the page in sight whose answers are found in the background, also
// behind the help and what is being looked for; nil when there is none.
func (r *root) asker() asker {
	p := r.page
	for p == atKeys || p == atFind {
		p = r.from[p]
	}
	switch p {
	case atWhy:
		return r.why
	case atHang:
		return r.hang
	}
	return nil
}

// heed keeps what runs in the background in step with what is on the desk and
// in sight: the next edit ends it.
func (r *root) heed() tea.Cmd {
	q, a := &r.inquiry, r.asker()
	if a != nil && q.study == r.desk.Study() && q.variant == r.desk.Selected && q.of == a.Question() {
		return nil
	}
	if q.cancel != nil {
		q.cancel()
	}
	*q = inquiry{}
	if a == nil || r.page == atKeys || r.page == atFind {
		return nil
	}
	a.Forget()
	if r.desk.Variant() == nil {
		return nil
	}
	return r.inquire(a)
}

// inquire begins to find out.
func (r *root) inquire(a asker) tea.Cmd {
	ctx, cancel := context.WithCancel(context.Background())
	q := inquiry{study: r.desk.Study(), variant: r.desk.Selected, of: a.Question(), cancel: cancel, told: make(chan whyMsg)}
	r.inquiry = q
	var known *explore.Survey
	if r.seen.study == q.study && r.seen.variant == q.variant {
		known = r.seen.survey
	}
	a.Doing("trying small steps")
	look, ails := r.look, a.Ails()
	go q.run(ctx, look, known, ails)
	return q.listen
}

// listen waits for what an inquiry tells next.
func (q inquiry) listen() tea.Msg {
	msg, ok := <-q.told
	if !ok {
		return nil
	}
	return msg
}

// run finds out, and tells. Nothing waits for it: progress is told only to who
// listens, and the end of ctx ends it.
func (q inquiry) run(ctx context.Context, look looker, y *explore.Survey, ails bool) {
	defer close(q.told)
	tell := func(m whyMsg) bool {
		m.told = q.told
		select {
		case q.told <- m:
			return true
		case <-ctx.Done():
			return false
		}
	}
	defer func() {
		if fault := recover(); fault != nil {
			tell(whyMsg{err: fmt.Errorf("the sums stopped: %v", fault)})
		}
	}()
	if y == nil {
		var err error
		if y, err = look(ctx, q.study, &q.study.Variants[q.variant], q.progress("trying small steps")); err != nil {
			return // of ctx: nobody listens
		}
	}
	if !tell(whyMsg{survey: y}) || !ails {
		return
	}
	check, _ := q.of.(explore.Subject)
	if cures, err := y.Cures(ctx, check.Key, q.progress("looking for cures")); err == nil {
		tell(whyMsg{cures: cures, cured: true})
	}
}

// progress tells about every twentieth of the way, where someone listens.
func (q inquiry) progress(what string) func(done, total int) {
	return func(done, total int) {
		if every := max(total/20, 1); done%every != 0 {
			return
		}
		select {
		case q.told <- whyMsg{told: q.told, doing: fmt.Sprintf("%s, %d of %d", what, done, total)}:
		default:
		}
	}
}

// heard takes what an inquiry tells; one that was ended is heard no more.
func (r *root) heard(msg whyMsg) tea.Cmd {
	q, a := &r.inquiry, r.asker()
	if msg.told != q.told || a == nil {
		return nil
	}
	switch {
	case msg.err != nil:
		a.Failed(msg.err.Error())
	case msg.cured:
		r.why.Cured(msg.cures)
	case msg.survey != nil:
		r.seen = seen{q.study, q.variant, msg.survey}
		a.Take(msg.survey)
	default:
		a.Doing(msg.doing)
	}
	return q.listen
}

// tryCure tries a cure as a new variant, one edit, and leads to it.
func (r *root) tryCure(c explore.Cure) tea.Cmd {
	v := r.desk.Variant()
	if v == nil {
		return nil
	}
	i := r.desk.Selected
	r.edit(func() tea.Msg {
		if err := r.desk.Try(i, c.VariantName(v.Name), c.Path, c.Text); err != nil {
			r.say(err.Error())
		}
		return nil
	}, nil)
	return r.openAt(desk.Place{Variant: r.desk.Selected, Path: c.Path})
}

// openAt leads to a parameter in the form.
func (r *root) openAt(p desk.Place) tea.Cmd {
	cmd := r.goTo(atBench)
	r.bench.Open(p)
	return cmd
}

// openFigure leads to a reading or a check on the bench.
func (r *root) openFigure(of explore.Subject) tea.Cmd {
	cmd := r.goTo(atBench)
	r.bench.OpenFigure(of)
	return cmd
}
