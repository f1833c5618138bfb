// Package find is the page on which a parameter, a reading or a check is found
// by a few letters of its name.
package find

import (
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model/explore"
	"backspan/tui/components/figure"
	"backspan/tui/components/finder"
	"backspan/tui/components/readings"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the page from which something was looked for.
type BackMsg struct{}

// SetMsg asks the root for the form, at a parameter.
type SetMsg struct{ Place desk.Place }

// FigureMsg asks the root for a reading or a check.
type FigureMsg struct{ Of explore.Subject }

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	finder finder.Model
	items  []finder.Item
	goes   []tea.Msg // where the items lead
	w, h   int
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk) *Model {
	return &Model{th: t, keys: k, desk: d}
}

// Begin looks for something else.
func (m *Model) Begin() {
	m.items, m.goes = nil, nil
	m.settings("set", m.desk.Selected)
	m.settings("set for all", desk.Shared)
	m.figures()
	m.finder = finder.New(m.th, m.keys.Find, "a value to set, a reading or a check", m.items, false)
	m.Size(m.w, m.h)
}

func (m *Model) put(it finder.Item, goes tea.Msg) {
	m.items, m.goes = append(m.items, it), append(m.goes, goes)
}

func (m *Model) settings(kind string, variant int) {
	for _, s := range m.desk.Sections(variant) {
		for _, p := range s.Params {
			if p.Shown() {
				m.put(finder.Item{Kind: kind, Label: p.Label, Part: s.Label, Key: s.Path(p), Value: figure.Money(p.Show(), p.Unit, m.currency())},
					SetMsg{desk.Place{Variant: variant, Path: s.Path(p)}})
			}
		}
	}
}

func (m *Model) currency() string { return m.desk.Study().Currency }

func (m *Model) figures() {
	o := m.desk.Outcome()
	for _, r := range o.Readings {
		m.put(finder.Item{Kind: "reading", Label: r.Label, Part: readings.Part(r.Key), Key: r.Key, Value: figure.Text(r, m.currency())},
			FigureMsg{explore.Subject{Key: r.Key}})
	}
	for _, c := range o.Checks {
		m.put(finder.Item{Kind: "check", Label: c.Label, Part: readings.Part(c.Key), Key: c.Key, Value: string(c.Verdict)},
			FigureMsg{explore.Subject{Check: true, Key: c.Key}})
	}
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtFind() }

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	switch m.finder.Update(msg) {
	case finder.Left:
		return BackMsg{}
	case finder.Chosen:
		return m.goes[m.finder.At()]
	case finder.None:
	}
	return nil
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	m.w, m.h = w, h
	m.finder.Size(w, h-1)
}

// View shows the page.
func (m *Model) View() []string {
	return append([]string{m.th.Heading("Find", m.finder.Note(), m.w, true)}, m.finder.View()...)
}

// Point takes a cell of the page that was pointed at; again is true when its row
// is the one under the cursor already.
func (m *Model) Point(_, y int) (again bool) { return m.finder.Point(y - 1) }
