package tui

import (
	"fmt"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/components/figure"
)

// edit does something that may change the study or the variant in hand, and
// then says what came of it. It is false when the study did not change.
func (r *root) edit(do func() tea.Msg, out *tea.Msg) bool {
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
		r.notice = r.effect("last edit: " + r.desk.Last())
	}
	if s := r.bench.Notice(); s != "" {
		r.notice = s
	}
	return changed
}

func (r *root) undo() {
	name, place := r.desk.Undo()
	if name == "" {
		r.notice = "nothing to undo"
		return
	}
	r.bench.Show(place)
	r.refresh()
	r.notice = r.effect("undone: " + name)
}

func (r *root) redo() {
	name, place := r.desk.Redo()
	if name == "" {
		r.notice = "nothing to do again"
		return
	}
	r.bench.Show(place)
	r.refresh()
	r.notice = r.effect("done again: " + name)
}

// effect says in one sentence what an edit did to the variant in hand.
func (r *root) effect(edit string) string {
	earlier, ok := r.desk.Earlier()
	if !ok {
		return edit
	}
	moved, better, worse := figure.Moved(earlier.Readings, r.desk.Outcome().Readings)
	if moved == 0 {
		return edit
	}
	s := fmt.Sprintf("%s; %d readings moved", edit, moved)
	if moved == 1 {
		s = edit + "; 1 reading moved"
	}
	if better+worse > 0 {
		s += fmt.Sprintf(": %d better, %d worse", better, worse)
	}
	return s
}
