// Package roll keeps a cursor inside a window onto rows. The window moves by
// half its height, so that a slow line repaints rarely.
package roll

import (
	"fmt"

	tea "github.com/charmbracelet/bubbletea"

	"github.com/charmbracelet/bubbles/key"

	"backspan/tui/keymap"
)

// Model is a cursor and the first row shown.
type Model struct {
	Cursor, Offset int
	rows, height   int
	skip           func(row int) bool // rows on which the cursor does not rest
}

// Set gives the number of rows and says which are passed over; the cursor
// stays as near as it can.
func (m *Model) Set(rows int, skip func(int) bool) {
	m.rows, m.skip = rows, skip
	m.To(m.Cursor)
}

// Height gives the number of rows shown.
func (m *Model) Height(h int) {
	m.height = max(h, 0)
	m.show()
}

// Room is the number of rows shown.
func (m *Model) Room() int { return m.height }

// To puts the cursor on row i, or on the nearest row where it may rest.
func (m *Model) To(i int) {
	i = min(max(i, 0), max(m.rows-1, 0))
	if j, ok := m.rest(i, 1); ok {
		i = j
	} else if j, ok := m.rest(i, -1); ok {
		i = j
	}
	m.Cursor = i
	m.show()
}

// Move shifts the cursor by n rows where it may rest.
func (m *Model) Move(n int) {
	step, at := 1, m.Cursor
	if n < 0 {
		step, n = -1, -n
	}
	for range n {
		j, ok := m.rest(at+step, step)
		if !ok {
			break
		}
		at = j
	}
	m.Cursor = at
	m.show()
}

// Leap moves the cursor to the first row of the next group, or of a group
// before; begins tells on which rows groups begin.
func (m *Model) Leap(step int, begins func(int) bool) {
	for i := m.Cursor + step; i >= 0 && i < m.rows; i += step {
		j, ok := m.rest(i, 1)
		if begins(i) && ok && j != m.Cursor && (j-m.Cursor)*step > 0 {
			m.To(j)
			return
		}
	}
}

// rest finds the next row from i on, going by step, where the cursor may rest.
func (m *Model) rest(i, step int) (int, bool) {
	for ; i >= 0 && i < m.rows; i += step {
		if m.skip == nil || !m.skip(i) {
			return i, true
		}
	}
	return 0, false
}

func (m *Model) show() {
	if m.height <= 0 {
		return
	}
	top := m.Cursor
	for top > 0 && m.skip != nil && m.skip(top-1) {
		top-- // headings right above belong into view
	}
	if m.Cursor-top >= m.height {
		top = m.Cursor
	}
	if top < m.Offset {
		m.Offset = min(top, m.Cursor-m.height/2)
	}
	if m.Cursor >= m.Offset+m.height {
		m.Offset = m.Cursor - m.height/2
	}
	m.Offset = max(min(m.Offset, m.rows-m.height), 0)
}

// Point puts the cursor on the n-th row shown, where it may rest. again is true
// when it was there already.
func (m *Model) Point(n int) (again bool) {
	i := m.Offset + n
	if n < 0 || n >= m.height || i >= m.rows || m.skip != nil && m.skip(i) {
		return false
	}
	again = i == m.Cursor
	m.To(i)
	return again
}

// Update moves the cursor; false when the key is not one of k.
func (m *Model) Update(msg tea.KeyMsg, k keymap.Walk) bool {
	half := max(m.height/2, 1)
	switch {
	case key.Matches(msg, k.Up):
		m.Move(-1)
	case key.Matches(msg, k.Down):
		m.Move(1)
	case key.Matches(msg, k.HalfUp):
		m.Move(-half)
	case key.Matches(msg, k.HalfDown):
		m.Move(half)
	case key.Matches(msg, k.Top):
		m.To(0)
	case key.Matches(msg, k.Bottom):
		m.To(m.rows - 1)
	default:
		return false
	}
	return true
}

// Window is the range of rows shown.
func (m *Model) Window() (from, to int) {
	return min(m.Offset, m.rows), min(m.Offset+m.height, m.rows)
}

// Note says where the window is when not all rows fit: "1-12 of 40".
func (m *Model) Note() string {
	if m.rows <= m.height {
		return ""
	}
	from, to := m.Window()
	return fmt.Sprintf("%d-%d of %d", from+1, to, m.rows)
}
