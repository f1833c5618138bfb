// Package finder finds one of many things by a few letters of its name: a line
// to type into and below it what answers, best first.
package finder

import (
	"fmt"
	"slices"
	"strings"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/components/line"
	"backspan/tui/components/roll"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// Item is something that can be found. Kind and Key together tell it from
// others.
type Item struct{ Kind, Label, Part, Key, Value string }

// Reply is what became of a key.
type Reply int

// The replies.
const (
	None Reply = iota
	Left
	Chosen
)

// Model is the line and the list.
type Model struct {
	th   *theme.Theme
	keys keymap.Find

	browse bool   // all is listed while no letters are typed
	of     string // what the items are, for the line below the letters
	line   line.Model
	items  []Item
	found  []int // into the items
	roll   roll.Model
	w, h   int
}

// New begins to look among items; of says what they are. With browse all are
// listed while no letters are typed.
func New(t *theme.Theme, k keymap.Find, of string, items []Item, browse bool) Model {
	m := Model{browse: browse, th: t, keys: k, of: of, items: items, line: line.New("", line.Blank)}
	m.look()
	return m
}

// At is the place among the items of the one under the cursor, −1 when there
// is none.
func (m *Model) At() int {
	if m.roll.Cursor >= len(m.found) {
		return -1
	}
	return m.found[m.roll.Cursor]
}

// Note says where the window on the list is.
func (m *Model) Note() string { return m.roll.Note() }

// look finds what answers to the letters typed, best first, and among equals
// the shorter name, then the order of the items.
func (m *Model) look() {
	query := m.line.Value()
	worths := make([]int, len(m.items))
	best := 0
	m.found = nil
	all := m.browse && strings.TrimSpace(query) == ""
	for i, it := range m.items {
		if worths[i] = worth(query, it.Label, it.Key+" "+it.Part); worths[i] > 0 || all {
			m.found = append(m.found, i)
			best = max(best, worths[i])
		}
	}
	if best >= elsewhere { // letters here and there are for want of better
		m.found = slices.DeleteFunc(m.found, func(i int) bool { return worths[i] < elsewhere })
	}
	slices.SortStableFunc(m.found, func(a, b int) int {
		if all {
			return a - b
		}
		if d := worths[b] - worths[a]; d != 0 {
			return d
		}
		return len(m.items[a].Label) - len(m.items[b].Label)
	})
	m.roll.Cursor, m.roll.Offset = 0, 0
	m.roll.Set(len(m.found), nil)
	m.Size(m.w, m.h)
}

// Update takes a key.
func (m *Model) Update(msg tea.KeyMsg) Reply {
	switch {
	case key.Matches(msg, m.keys.Leave):
		return Left
	case key.Matches(msg, m.keys.Go):
		if m.At() >= 0 {
			return Chosen
		}
	case key.Matches(msg, m.keys.Up):
		m.roll.Move(-1)
	case key.Matches(msg, m.keys.Down):
		m.roll.Move(1)
	default:
		m.line = m.line.Update(msg)
		m.look()
	}
	return None
}

// Size gives the room.
func (m *Model) Size(w, h int) {
	m.w, m.h = w, h
	m.roll.Height(h - 2)
}

// View shows the line, how many were found, and these.
func (m *Model) View() []string {
	lines := []string{"  " + m.line.View(m.th, min(m.w-4, 60)), m.th.Quiet.Paint(m.th.Cut("  "+m.told(), m.w))}
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.row(m.items[m.found[i]], i == m.roll.Cursor))
	}
	return lines
}

func (m *Model) told() string {
	switch {
	case strings.TrimSpace(m.line.Value()) == "":
		return fmt.Sprintf("a few letters of %s; %d to choose from", m.of, len(m.items))
	case len(m.found) == 0:
		return "nothing has these letters; fewer find more"
	}
	return fmt.Sprintf("%d of %d", len(m.found), len(m.items))
}

func (m *Model) row(it Item, here bool) string {
	const kind = 13
	value, part := 16, 0
	if m.w >= 76 {
		part = 15
	}
	if m.w >= 112 {
		value, part = 24, 32
	}
	mark := "  "
	if here {
		mark = m.th.Marks.Here + " "
	}
	label := min(m.w-2-kind-value-part, 44)
	return m.th.Row(here, theme.Segment{Ink: m.th.Accent, Text: mark},
		theme.Segment{Text: m.th.Label(m.th.Clean(it.Label), label)},
		theme.Segment{Ink: m.th.Quiet, Text: " " + m.th.Fit(it.Kind, kind-1)},
		theme.Segment{Ink: m.th.Quiet, Text: m.th.Fit(m.th.Clean(it.Part), part)},
		theme.Segment{Text: m.th.Right(m.th.Short(m.th.Clean(it.Value), value-1), value)})
}

// Point takes a line of the finder that was pointed at; again is true when it is
// the one under the cursor already.
func (m *Model) Point(y int) (again bool) { return m.roll.Point(y - 2) }
