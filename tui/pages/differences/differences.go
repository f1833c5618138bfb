// Package differences is the page that lists everything in which two states of
// a study differ, for who has to choose between them.
package differences

import (
	"slices"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/tui/components/roll"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the question that is still to be answered.
type BackMsg struct{}

// Sides are the two states and what stands over their columns.
type Sides struct {
	From, To         *model.Study
	FromName, ToName string
}

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map

	sides     Sides
	contrasts []model.Contrast
	count     int
	rows      []row
	roll      roll.Model
	w, h      int
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map) *Model { return &Model{th: t, keys: k} }

// Of says which two states are meant.
func (m *Model) Of(s Sides) {
	m.sides, m.contrasts = s, append(model.Contrasts(s.From, s.To), model.Remarked(s.From, s.To))
	m.roll = roll.Model{}
	m.arrange(m.w)
	m.Size(m.w, m.h)
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtDifferences() }

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	if key.Matches(msg, m.keys.Differences.Back) {
		return BackMsg{}
	}
	m.roll.Update(msg, m.keys.Walk)
	return nil
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	if w != m.w {
		m.arrange(w)
	}
	m.w, m.h = w, h
	m.roll.Height(h - 2)
}

// arrange writes the rows for w cells. The cursor stays on its difference.
func (m *Model) arrange(w int) {
	at := -1
	if m.roll.Cursor < len(m.rows) {
		at = m.rows[m.roll.Cursor].of
	}
	m.rows, m.count = m.write(w)
	m.roll.Set(len(m.rows), func(i int) bool { return m.rows[i].heading != "" })
	if i := slices.IndexFunc(m.rows, func(r row) bool { return r.of == at && r.heading == "" }); i >= 0 {
		m.roll.To(i)
	}
}
