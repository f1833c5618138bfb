// Package hang is the page that tells what hangs on a value: what a small step of
// it, up and down, does to the readings and to the verdicts of the checks.
package hang

import (
	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model/explore"
	"backspan/model/param"
	"backspan/tui/components/headline"
	"backspan/tui/components/roll"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the page from which it was asked.
type BackMsg struct{}

// GoMsg asks the root for the reading or the check on the bench.
type GoMsg struct{ Of explore.Subject }

// row is a line of the page. The cursor rests on readings and checks only.
type row struct {
	text   string // of a heading, or what is said
	ink    theme.Ink
	moved  *explore.Moved
	turned *explore.Turned
}

func (r row) rests() bool { return r.moved != nil || r.turned != nil }

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	of    desk.Place
	found *explore.Hang // nil until it is found
	doing string        // what is done in the background
	fault string        // why it could not be
	none  bool          // the value cannot be stepped

	rows []row
	roll roll.Model
	w, h int
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk) *Model {
	return &Model{th: t, keys: k, desk: d}
}

// About says of which value the page tells.
func (m *Model) About(p desk.Place) {
	m.of = p
	m.roll.To(0)
	m.Forget()
}

// Question is what the page asks of the machine in hand.
func (m *Model) Question() any { return m.of }

// Ails is false: a value is no check that could be cured.
func (m *Model) Ails() bool { return false }

// Forget drops the answer, which is of another machine.
func (m *Model) Forget() {
	m.found, m.doing, m.fault, m.none = nil, "", "", false
	m.write()
}

// Doing says how far the work in the background is.
func (m *Model) Doing(s string) {
	m.doing = s
	m.write()
}

// Failed says why there is no answer.
func (m *Model) Failed(why string) {
	m.doing, m.fault = "", why
	m.write()
}

// Take takes what small steps do.
func (m *Model) Take(y *explore.Survey) {
	h, ok := y.Hangs(m.of.Path, m.of.Variant == desk.Shared, headline.Keys())
	m.found, m.none, m.doing = &h, !ok, ""
	m.write()
}

// param is the value asked about, as the machine in hand has it.
func (m *Model) param() (param.Param, bool) {
	variant := m.desk.Selected
	if m.of.Variant == desk.Shared {
		variant = desk.Shared
	}
	return param.Find(m.desk.Sections(variant), m.of.Path)
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtHang() }

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	k := m.keys.Hang
	switch {
	case key.Matches(msg, k.Back), key.Matches(msg, m.keys.Everywhere.Why):
		return BackMsg{}
	case key.Matches(msg, k.Go):
		switch r := m.at(); {
		case r.moved != nil:
			return GoMsg{explore.Subject{Key: r.moved.Reading.Key}}
		case r.turned != nil:
			return GoMsg{explore.Subject{Check: true, Key: r.turned.Check.Key}}
		}
	default:
		m.roll.Update(msg, m.keys.Walk)
	}
	return nil
}

func (m *Model) at() row {
	if m.roll.Cursor >= len(m.rows) {
		return row{}
	}
	return m.rows[m.roll.Cursor]
}

// Point takes a cell of the page that was pointed at; again is true when its row
// is the one under the cursor already.
func (m *Model) Point(_, y int) (again bool) { return m.roll.Point(y - 1) }

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	wider := w != m.w
	m.w, m.h = w, h
	if wider {
		m.write()
		return
	}
	m.roll.Height(h - 1)
}
