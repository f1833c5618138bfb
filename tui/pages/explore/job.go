package explore

import (
	"context"
	"fmt"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model/explore"
)

// work is a question as it was put to the model.
type work struct {
	what  string // what is counted on the way: "designs"
	steps int
	run   func(ctx context.Context, step func()) (*answer, error)
}

// job is work that runs in the background.
type job struct {
	work
	question question
	of       machine
	done     int
	cancel   context.CancelFunc
	told     chan ToldMsg
	heard    bool // someone listens already
}

// ToldMsg brings what the work in the background found, or how far it is.
type ToldMsg struct {
	job    *job
	done   int
	answer *answer
}

// ask puts the question in sight to the model. What is worked already is ended
// first.
func (m *Model) ask() {
	f := m.form()
	f.refusal = ""
	w, err := m.pose()
	if err != nil {
		m.reading, f.refusal = false, err.Error()
		return
	}
	m.Stop()
	ctx, cancel := context.WithCancel(context.Background())
	m.job = &job{work: w, question: m.at, of: machine{m.desk.Study(), m.desk.Selected}, cancel: cancel, told: make(chan ToldMsg)}
	m.stopped[m.at], m.reading, f.asked, f.of = "", true, true, m.desk.Variant().Name
	go m.job.find(ctx)
}

// Working reports whether any question is being worked.
func (m *Model) Working() bool { return m.job != nil }

// working reports whether the question in sight is being worked.
func (m *Model) working() bool { return m.job != nil && m.job.question == m.at }

// Stop ends what is worked at once. What was found before stays.
func (m *Model) Stop() {
	if m.job == nil {
		return
	}
	m.job.cancel()
	m.stopped[m.job.question] = fmt.Sprintf("stopped after %d of %d %s", m.job.done, m.job.steps, m.job.what)
	m.job = nil
}

// Next is what is to be waited for in the background, nil when there is
// nothing or it is waited for already.
func (m *Model) Next() tea.Cmd {
	if m.job == nil || m.job.heard {
		return nil
	}
	m.job.heard = true
	return m.job.listen
}

func (j *job) listen() tea.Msg {
	if msg, ok := <-j.told; ok {
		return msg
	}
	return nil
}

// find finds the answer, and tells. Nothing waits for it: progress is told
// only to who listens, and the end of ctx ends it.
func (j *job) find(ctx context.Context) {
	defer close(j.told)
	tell := func(a *answer) {
		select {
		case j.told <- ToldMsg{job: j, answer: a}:
		case <-ctx.Done():
		}
	}
	defer func() {
		if fault := recover(); fault != nil {
			tell(&answer{fault: fmt.Sprintf("the sums stopped: %v", fault)})
		}
	}()
	done, every := 0, max(j.steps/100, 1)
	a, err := j.run(ctx, func() {
		if done++; done%every != 0 {
			return
		}
		select {
		case j.told <- ToldMsg{job: j, done: done}:
		default:
		}
	})
	if err == nil {
		tell(a)
	}
}

// Take takes what the background tells. Work that was ended is heard no more.
// The question is named when it is answered; inSight tells that the page shows
// it.
func (m *Model) Take(msg ToldMsg) (answered string, inSight bool) {
	j := msg.job
	if j != m.job {
		return "", false
	}
	j.heard = false
	if msg.answer == nil {
		j.done = msg.done
		m.draw()
		return "", false
	}
	msg.answer.of = j.of
	m.answers[j.question], m.job = msg.answer, nil
	m.draw()
	return titles[j.question], j.question == m.at
}

// values are the fields of a role as the commands take them.
func (f *form) values(r role) (texts []string) {
	for _, x := range f.fields {
		if x.role == r {
			texts = append(texts, x.grammar())
		}
	}
	return texts
}

// count is the whole number in a field, which has been checked.
func (f *form) count(r role) uint64 {
	for _, x := range f.fields {
		if x.role == r {
			n, _ := x.number()
			return n
		}
	}
	return 0
}

// pose makes the question in sight ready to be worked, or says why it cannot
// be, with the cursor on the field to blame.
func (m *Model) pose() (work, error) {
	b, f := m.base(), m.form()
	for i, s := range f.spots {
		if s.field < 0 {
			continue
		}
		if err := f.fields[s.field].check(b); err != nil {
			f.roll.To(i)
			return work{}, err
		}
	}
	switch m.at {
	case overRange:
		q, err := explore.NewSweep(b, f.values(over), f.values(show))
		return work{"designs", q.Total(), func(ctx context.Context, step func()) (*answer, error) { return sweepAnswer(ctx, q, step) }}, err
	case whatFor:
		return m.poseSolve(b, f)
	case compromises:
		wishes := explore.Wishes{Free: f.values(free), Goals: f.values(goal), AtLeast: f.values(least), AtMost: f.values(most)}
		q, err := explore.NewSearch(b, wishes, explore.Effort{Population: int(f.count(population)), Generations: int(f.count(generations)), Runs: int(f.count(runs)), Seed: f.count(seed)})
		return work{"designs", q.Total() * q.Steps(), func(ctx context.Context, step func()) (*answer, error) { return searchAnswer(ctx, q, step) }}, err
	default:
		q, err := explore.NewTolerance(b, f.values(doubt), f.values(show), int(f.count(samples)), f.count(seed))
		return work{"samples", q.Total(), func(ctx context.Context, step func()) (*answer, error) { return sureAnswer(ctx, q, step) }}, err
	}
}

func (m *Model) poseSolve(b explore.Base, f *form) (work, error) {
	var to field
	for _, x := range f.fields {
		if x.role == target {
			to = x
		}
	}
	q, err := explore.NewSolve(b, f.values(change)[0], to.key, to.text, 0)
	return work{"stretches", q.Total(), func(ctx context.Context, step func()) (*answer, error) { return solveAnswer(ctx, q, step) }}, err
}
