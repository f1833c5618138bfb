// Package list is a pane of names to choose from, some under headings.
package list

import (
	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/components/line"
	"backspan/tui/components/roll"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// Item is a row: a name, or a heading. Key is what the name stands for.
type Item[K comparable] struct {
	Key     K
	Name    string
	Word    string    // short, after the name
	Mark    string    // one cell, at the end
	Ink     theme.Ink // of the mark
	Heading bool
}

// Model is the pane.
type Model[K comparable] struct {
	Title string
	Empty string // said when there is nothing to choose
	th    *theme.Theme
	walk  keymap.Walk
	items []Item[K]
	roll  roll.Model
}

// New makes an empty pane.
func New[K comparable](t *theme.Theme, k keymap.Walk, title, empty string) Model[K] {
	return Model[K]{Title: title, Empty: empty, th: t, walk: k}
}

// Set gives the rows. The cursor stays on its key while that exists.
func (m *Model[K]) Set(items []Item[K]) {
	was, ok := m.Key()
	m.items = items
	m.roll.Set(len(items), func(i int) bool { return items[i].Heading })
	if ok {
		m.To(was)
	}
}

// To puts the cursor on the item with that key, if there is one.
func (m *Model[K]) To(key K) {
	for i, it := range m.items {
		if !it.Heading && it.Key == key {
			m.roll.To(i)
			return
		}
	}
}

// Key is the key of the item under the cursor; false when there is none.
func (m *Model[K]) Key() (key K, ok bool) {
	if m.roll.Cursor >= len(m.items) || m.items[m.roll.Cursor].Heading {
		return key, false
	}
	return m.items[m.roll.Cursor].Key, true
}

// Step moves the cursor by n items.
func (m *Model[K]) Step(n int) { m.roll.Move(n) }

// Update moves the cursor; false when the key means something else.
func (m *Model[K]) Update(msg tea.KeyMsg) bool { return m.roll.Update(msg, m.walk) }

// Size gives the pane's height, heading included.
func (m *Model[K]) Size(h int) { m.roll.Height(h - 1) }

// Rows is how many lines the pane would fill.
func (m *Model[K]) Rows() int { return max(len(m.items), 1) + 1 }

// View shows the pane. A name being typed takes the place of the row under the
// cursor.
func (m *Model[K]) View(w int, focus bool, typing *line.Model) []string {
	lines := []string{m.th.Heading(m.Title, m.roll.Note(), w, focus)}
	if len(m.items) == 0 {
		for _, l := range theme.Wrap(m.Empty, w-2) {
			lines = append(lines, "  "+m.th.Quiet.Paint(l))
		}
		return lines
	}
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		switch it := m.items[i]; {
		case it.Heading:
			lines = append(lines, m.th.Quiet.Paint(m.th.Fit(it.Name, w)))
		case i == m.roll.Cursor && typing != nil:
			lines = append(lines, m.th.Marks.Here+" "+typing.View(m.th, w-2))
		default:
			lines = append(lines, m.row(it, w, i == m.roll.Cursor, focus))
		}
	}
	return lines
}

func (m *Model[K]) row(it Item[K], w int, here, focus bool) string {
	mark, ink := "  ", theme.Ink{}
	if here {
		mark, ink = m.th.Marks.Here+" ", m.th.Strong
	}
	tail := ""
	if it.Word != "" {
		tail = " " + it.Word
	}
	room := w - 2 - theme.Width(tail) - 2*theme.Width(it.Mark)
	segs := []theme.Segment{{Ink: m.th.Accent, Text: mark}, {Ink: ink, Text: m.th.Label(m.th.Clean(it.Name), room)}, {Ink: m.th.Quiet, Text: tail}}
	if it.Mark != "" {
		segs = append(segs, theme.Segment{Ink: it.Ink, Text: " " + it.Mark})
	}
	return m.th.Row(here && focus, segs...)
}

// Point takes a line of the pane that was pointed at.
func (m *Model[K]) Point(y int) (again bool) { return m.roll.Point(y - 1) }
