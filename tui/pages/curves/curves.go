// Package curves is the page of charts: what the machines do over speed, over
// airspeed and over other ratios, laid over one another. What takes long is
// worked in the background, one machine at a time.
package curves

import (
	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the bench.
type BackMsg struct{}

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	sheet   int     // of sheets
	all     bool    // every variant, not only the one in hand and the reference
	reading float64 // where the reading line stands, 0..1 along the chart
	moved   bool    // by the person; else it stands at the match
	columns int     // of the chart in sight
	offset  int     // rows of the table scrolled out

	found map[subject]answer
	busy  bool
	w, h  int
	lines []string
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk) *Model {
	return &Model{th: t, keys: k, desk: d, found: map[subject]answer{}}
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtCurves() }

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	k, w := m.keys.Curves, m.keys.Walk
	switch {
	case key.Matches(msg, k.Back):
		return BackMsg{}
	case key.Matches(msg, k.Left):
		m.step(-1)
	case key.Matches(msg, k.Right):
		m.step(1)
	case key.Matches(msg, k.FarLeft):
		m.step(-10)
	case key.Matches(msg, k.FarRight):
		m.step(10)
	case key.Matches(msg, k.Next):
		m.turn(1)
	case key.Matches(msg, k.Previous):
		m.turn(-1)
	case key.Matches(msg, k.All):
		m.all, m.offset = !m.all, 0
	case key.Matches(msg, w.Up):
		m.offset--
	case key.Matches(msg, w.Down):
		m.offset++
	default:
		return nil
	}
	m.draw()
	return nil
}

// step moves the reading line by columns.
func (m *Model) step(n int) {
	m.moved = true
	if m.columns > 1 {
		m.reading = min(max(m.reading+float64(n)/float64(m.columns-1), 0), 1)
	}
}

// turn goes to another chart; the reading line begins at the match again.
func (m *Model) turn(n int) {
	m.sheet = (m.sheet + n + len(sheets)) % len(sheets)
	m.moved, m.offset = false, 0
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	if w != m.w || h != m.h {
		m.w, m.h = w, h
		m.draw()
	}
}

// Refresh takes over what changed on the desk. What was found of machines that
// are as they were is kept.
func (m *Model) Refresh() {
	kept := map[subject]answer{}
	for i := range m.desk.Study().Variants {
		for _, q := range questions {
			s := m.subject(i, q)
			if a, ok := m.found[s]; ok {
				kept[s] = a
			}
		}
	}
	m.found = kept
	m.draw()
}

// View shows the page.
func (m *Model) View() []string { return m.lines }

// shown are the variants in the chart: the one in hand, the reference, then
// the others in their order.
func (m *Model) shown() []int {
	hand, ref := m.desk.Selected, m.desk.Study().ReferenceIndex()
	if m.desk.Variant() == nil {
		return nil
	}
	order := []int{hand}
	if ref >= 0 && ref != hand {
		order = append(order, ref)
	}
	for i := range m.desk.Study().Variants {
		if m.all && i != hand && i != ref {
			order = append(order, i)
		}
	}
	return order
}
