// Package why is the page that answers why a figure is what it is: how it was
// found and from where, which numbers move it, and what would cure a check.
package why

import (
	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model/explore"
	"backspan/model/reading"
	"backspan/tui/components/roll"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the page from which it was asked.
type BackMsg struct{}

// GoMsg asks the root for the form, at a parameter.
type GoMsg struct{ Place desk.Place }

// TryMsg asks the root to try a cure as a new variant.
type TryMsg struct{ Cure explore.Cure }

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	of     explore.Subject
	answer *explore.Answer // nil until it is found
	cures  []explore.Cure
	cured  bool // the search for cures has ended
	tried  int
	doing  string // what is done in the background
	fault  string // why it could not be

	lines   []line
	roll    roll.Model
	touched bool // the cursor was moved
	w, h    int
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk) *Model {
	return &Model{th: t, keys: k, desk: d}
}

// About says of what the page tells. The answers are still to come.
func (m *Model) About(of explore.Subject) {
	m.of = of
	m.roll.To(0)
	m.Forget()
}

// Question is what the page asks of the machine in hand.
func (m *Model) Question() any { return m.of }

// Forget drops the answers, which are of another machine.
func (m *Model) Forget() {
	m.answer, m.cures, m.cured, m.tried, m.doing, m.fault, m.touched = nil, nil, false, 0, "", "", false
	m.write()
}

// Doing says how far the work in the background is.
func (m *Model) Doing(s string) {
	m.doing = s
	m.write()
}

// Failed says why there are no answers.
func (m *Model) Failed(why string) {
	m.doing, m.fault = "", why
	m.write()
}

// Take takes what small steps do.
func (m *Model) Take(y *explore.Survey) {
	a := y.Movers(m.of)
	m.answer, m.tried, m.doing = &a, y.Tried(), ""
	m.write()
}

// Cured gives what would cure the check.
func (m *Model) Cured(cures []explore.Cure) {
	m.cures, m.cured, m.doing = cures, true, ""
	m.write()
}

// Ails reports whether the page tells of a check that could do with a cure.
func (m *Model) Ails() bool {
	c, ok := m.check()
	return ok && (c.Verdict == reading.Fails || c.Verdict == reading.Thin)
}

func (m *Model) check() (reading.Check, bool) {
	if m.of.Check {
		for _, c := range m.desk.Outcome().Checks {
			if c.Key == m.of.Key {
				return c, true
			}
		}
	}
	return reading.Check{}, false
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtWhy() }

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	k := m.keys.Why
	l := m.at()
	switch {
	case key.Matches(msg, k.Back), key.Matches(msg, m.keys.Everywhere.Why):
		return BackMsg{}
	case key.Matches(msg, k.Go) && l.mover != nil:
		return GoMsg{m.place(l.mover.Path, l.mover.Shared)}
	case key.Matches(msg, k.Go) && l.cure != nil:
		return GoMsg{m.place(l.cure.Path, false)}
	case key.Matches(msg, k.Try) && l.cure != nil:
		return TryMsg{*l.cure}
	case m.roll.Update(msg, m.keys.Walk):
		m.touched = true
	}
	return nil
}

func (m *Model) place(path string, shared bool) desk.Place {
	if shared {
		return desk.Place{Variant: desk.Shared, Path: path}
	}
	return desk.Place{Variant: m.desk.Selected, Path: path}
}

func (m *Model) at() line {
	if m.roll.Cursor >= len(m.lines) {
		return line{}
	}
	return m.lines[m.roll.Cursor]
}

// Text is the row under the cursor for a clipboard.
func (m *Model) Text() string {
	switch l := m.at(); {
	case l.mover != nil:
		return m.sentence(*l.mover)
	case l.cure != nil:
		return l.cure.Label + ": " + l.cure.From + " → " + l.cure.To
	}
	return m.head()
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	wider := w != m.w
	m.w, m.h = w, h
	if wider {
		m.write()
		return
	}
	m.roll.Height(m.h - 1 - m.detail())
}

func (m *Model) detail() int { return min(max(m.h/4, 3), 6) }
