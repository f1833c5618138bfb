package tui

import (
	"fmt"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/components/figure"
)

// typist is a page on which something can be typed.
type typist interface {
	Busy() bool
	Accept() bool
	Notice() string
}

func (r *root) typists() []typist { return []typist{r.bench, r.log} }

// typing is the page on which something is being typed, nil when none is.
func (r *root) typing() typist {
	for _, p := range r.typists() {
		if p.Busy() {
			return p
		}
	}
	return nil
}

// edit does something that may change the study or the variant in hand, and
// then says what came of it.
func (r *root) edit(do func() tea.Msg, out *tea.Msg) {
	revision, hand := r.desk.Revision(), r.desk.Selected
	msg := do()
	if out != nil {
		*out = msg
	}
	changed := r.desk.Revision() != revision
	if changed || r.desk.Selected != hand {
		r.refresh()
	}
	if changed {
		r.effect("", r.desk.Last())
	}
	for _, p := range r.typists() {
		if s := p.Notice(); s != "" {
			r.say(s)
		}
	}
}

func (r *root) undo() {
	name, place := r.desk.Undo()
	if name == "" {
		r.say("nothing to undo")
		return
	}
	r.bench.Show(place)
	r.refresh()
	r.effect("undone: ", name)
}

func (r *root) redo() {
	name, place := r.desk.Redo()
	if name == "" {
		r.say("nothing to do again")
		return
	}
	r.bench.Show(place)
	r.refresh()
	r.effect("done again: ", name)
}

// goToState leads to the state after so many edits of this session.
func (r *root) goToState(done int) {
	name, place := r.desk.GoTo(done)
	if name == "" {
		r.say("this is the present state")
		return
	}
	r.bench.Show(place)
	r.refresh()
	r.effect("", name)
}

// said is what stands at the foot until the next key. The tally comes first and
// is never cut; a text that is too long loses its middle, or is given more
// lines when it must be read whole.
type said struct {
	tally, text string
	whole       bool
}

func (r *root) say(text string) { r.notice = said{text: text} }

// effect says what an edit, or taking it back, did to the variant in hand.
func (r *root) effect(how, name string) {
	r.say(how + name)
	earlier, ok := r.desk.Earlier()
	if !ok {
		return
	}
	moved, better, worse := figure.Moved(earlier.Readings, r.desk.Outcome().Readings)
	switch {
	case moved == 0:
		return
	case better+worse == 0:
		r.notice.tally = fmt.Sprintf("%d moved; ", moved)
	default:
		r.notice.tally = fmt.Sprintf("%d better, %d worse of %d moved; ", better, worse, moved)
	}
}
