// Package sidebyside is the page that lays the variants beside one another:
// what is set differently, what comes of it, and what makes one heavier on the
// back than the other.
package sidebyside

import (
	"fmt"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/components/roll"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BenchMsg asks the root for the bench.
type BenchMsg struct{}

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	rows        []row
	taken       int // revision of the study that rows show
	differences bool
	folded      map[string]bool // groups of which the heading alone is shown
	roll        roll.Model
	first       int // variant in the first column
	w, h        int
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk) *Model {
	return &Model{th: t, keys: k, desk: d, folded: map[string]bool{}}
}

// Refresh takes over what changed on the desk.
func (m *Model) Refresh() {
	if m.taken == m.desk.Revision() {
		return
	}
	m.taken = m.desk.Revision()
	m.arrange()
}

func (m *Model) arrange() {
	was := m.at().key
	m.rows = m.fold(m.lay(m.desk.Comparison()))
	m.roll.Set(len(m.rows), func(i int) bool { return m.rows[i].key == "" })
	m.toKey(was)
	m.Size(m.w, m.h)
}

func (m *Model) toKey(key string) {
	for i, r := range m.rows {
		if key != "" && r.key == key {
			m.roll.To(i)
		}
	}
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtSideBySide() }

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	k := m.keys.SideBySide
	switch {
	case key.Matches(msg, k.Left):
		m.desk.Select(m.desk.Selected - 1)
	case key.Matches(msg, k.Right):
		m.desk.Select(m.desk.Selected + 1)
	case key.Matches(msg, m.keys.Panes.NextPart):
		m.roll.Leap(1, m.begins)
	case key.Matches(msg, m.keys.Panes.PreviousPart):
		m.roll.Leap(-1, m.begins)
	case key.Matches(msg, k.Differences):
		m.differences = !m.differences
		m.arrange()
	case key.Matches(msg, k.Fold):
		m.foldHere()
	case key.Matches(msg, k.FoldAll):
		m.foldAll()
	case key.Matches(msg, k.Open), key.Matches(msg, k.Back):
		return BenchMsg{}
	default:
		m.roll.Update(msg, m.keys.Walk)
	}
	m.Size(m.w, m.h)
	return nil
}

// begins reports whether a group begins at row i.
func (m *Model) begins(i int) bool { return m.rows[i].group != "" }

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	m.w, m.h = w, h
	m.roll.Height(h - 2 - m.detail())
	n := len(m.desk.Study().Variants)
	shown := m.columns().shown
	if m.desk.Selected < m.first {
		m.first = m.desk.Selected
	}
	if m.desk.Selected >= m.first+shown {
		m.first = m.desk.Selected - shown + 1
	}
	m.first = max(min(m.first, n-shown), 0)
}

func (m *Model) detail() int { return min(max(m.h/6, 3), 6) }

// columns is how the page is divided: the fixed first column, and as many
// variants as fit.
type columns struct{ label, each, shown int }

func (m *Model) columns() columns {
	n := max(len(m.desk.Study().Variants), 1)
	c := columns{label: 29, each: 17}
	if m.w >= 115 {
		c.label = 35
	}
	if m.w >= 160 {
		c.label = 44
	}
	c.shown = min(max((m.w-c.label)/c.each, 1), n)
	c.each = min((m.w-c.label)/c.shown, 26)
	return c
}

func (m *Model) note(c columns) string {
	n := len(m.desk.Study().Variants)
	if c.shown >= n {
		return m.roll.Note()
	}
	s := fmt.Sprintf("variants %d-%d of %d", m.first+1, m.first+c.shown, n)
	if rows := m.roll.Note(); rows != "" {
		s += ", rows " + rows
	}
	return s
}
