// Package history is the page that lists the edits of this session and leads
// back, or forth again, to any of the states between them.
package history

import (
	"fmt"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/components/roll"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the page from which the history was asked for.
type BackMsg struct{}

// GoMsg asks the root for the state in which so many edits are in force.
type GoMsg struct{ Done int }

// RefusedMsg says why something could not be done.
type RefusedMsg struct{ Err error }

// Model is the page. Its rows are states, the newest on top; the last is the
// one before all edits.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	steps           []desk.Step
	done, forgotten int
	roll            roll.Model
	w, h            int
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk) *Model { return &Model{th: t, keys: k, desk: d} }

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtHistory() }

// Begin puts the cursor on the present state.
func (m *Model) Begin() {
	m.Refresh()
	m.roll.To(len(m.steps) - m.done)
}

// Refresh takes over what changed on the desk.
func (m *Model) Refresh() {
	m.steps, m.done, m.forgotten = m.desk.Steps()
	m.roll.Set(len(m.steps)+1, nil)
	m.Size(m.w, m.h)
}

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	switch k := m.keys.History; {
	case key.Matches(msg, k.Back):
		return BackMsg{}
	case key.Matches(msg, k.Go):
		return GoMsg{len(m.steps) - m.roll.Cursor}
	case key.Matches(msg, k.Recall):
		if err := m.desk.Recall(len(m.steps) - m.roll.Cursor); err != nil {
			return RefusedMsg{err}
		}
		m.Refresh()
		m.roll.To(0)
	default:
		m.roll.Update(msg, m.keys.Walk)
	}
	return nil
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	m.w, m.h = w, h
	m.roll.Height(h - 2)
}

// View shows the page.
func (m *Model) View() []string {
	where := m.where()
	lines := []string{m.th.Heading("History of this session", m.roll.Note(), m.w, true),
		m.th.Quiet.Paint(m.th.Cut(m.th.Fit("", 2)+m.th.Right("edit", 5)+"  "+m.th.Fit("state", stateRoom)+m.th.Fit("in", where)+"what was done", m.w))}
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.row(len(m.steps)-i, i == m.roll.Cursor))
	}
	return lines
}

const stateRoom = 9

func (m *Model) where() int { return min(max(m.w/5, 12), 28) }

// row is the state after n edits.
func (m *Model) row(n int, here bool) string {
	mark, state, ink := "  ", "", theme.Ink{}
	if here {
		mark = m.th.Marks.Here + " "
	}
	switch {
	case n == m.done:
		state, ink = m.th.Marks.Spot+" now", m.th.Strong
	case n > m.done:
		state, ink = "undone", m.th.Quiet
	}
	number, in, name := fmt.Sprint(m.forgotten+n), "", m.beginning()
	if n > 0 {
		s := m.steps[n-1]
		if in = s.Variant; in == "" {
			in = "all variants"
		}
		name = s.Name
	}
	where := m.where()
	return m.th.Row(here,
		theme.Segment{Ink: m.th.Accent, Text: mark},
		theme.Segment{Ink: m.th.Quiet, Text: m.th.Right(number, 5) + "  "},
		theme.Segment{Ink: ink, Text: m.th.Fit(state, stateRoom)},
		theme.Segment{Ink: m.th.Quiet, Text: m.th.Label(m.th.Clean(in), where-2) + "  "},
		theme.Segment{Ink: ink, Text: m.th.Short(m.th.Clean(name), m.w-9-stateRoom-where)})
}

func (m *Model) beginning() string {
	if m.forgotten > 0 {
		return "the oldest state that is kept"
	}
	return "as it was at the beginning"
}

// Point takes a cell of the page that was pointed at; again is true when its row
// is the one under the cursor already.
func (m *Model) Point(_, y int) (again bool) { return m.roll.Point(y - 2) }
