package bench

import (
	"backspan/tui/components/line"
	"backspan/tui/theme"
)

// The widths from which more panes stand side by side.
const (
	threeColumns = 112
	fourColumns  = 168
)

// Size gives the page's room. Focus, cursors and what is being typed stay.
func (m *Model) Size(w, h int) {
	m.w, m.h = w, h
	up, down := m.left()
	m.variants.Size(up)
	m.parts.Size(down)
	m.form.Size(h)
	switch {
	case w >= fourColumns, w < threeColumns:
		m.readings.Size(h, m.focus == Readings)
		m.checks.Size(h, m.focus == Checks)
	default:
		up, down = m.right()
		m.readings.Size(up, m.focus == Readings)
		m.checks.Size(down, m.focus == Checks)
	}
}

// left divides the left column between variants and parts; the one with the
// focus gets what it needs first.
func (m *Model) left() (up, down int) {
	up = min(m.variants.Rows(), m.h/2)
	if m.focus == Variants {
		up = min(m.variants.Rows(), m.h*2/3)
	}
	return up, m.h - up
}

// right divides the right column between readings and checks.
func (m *Model) right() (up, down int) {
	up = m.h * 3 / 5
	switch m.focus {
	case Readings:
		up = m.h * 3 / 4
	case Checks:
		up = m.h * 2 / 5
	}
	return up, m.h - up
}

// leftWidth is the width of the column of names.
func (m *Model) leftWidth() int {
	switch {
	case m.w >= fourColumns:
		return 28
	case m.w >= threeColumns, m.w < 76:
		return 20
	}
	return 22
}

// View shows the page in as many columns as are readable; the pane with the
// focus is always among them.
func (m *Model) View() []string {
	lw := m.leftWidth()
	names := theme.Block{Width: lw, Lines: m.leftColumn(lw)}
	switch {
	case m.w >= fourColumns:
		rest := m.w - lw - 3
		fw := rest * 32 / 100
		rw := rest * 36 / 100
		return m.th.Beside(m.h, names, m.formBlock(fw),
			theme.Block{Width: rw, Lines: m.readings.View(rw)},
			theme.Block{Width: rest - fw - rw, Lines: m.checks.View(rest - fw - rw)})
	case m.w >= threeColumns:
		rest := m.w - lw - 2
		fw := rest * 41 / 100
		rw := rest - fw
		up, _ := m.right()
		right := m.th.Beside(up, theme.Block{Width: rw, Lines: m.readings.View(rw)})
		return m.th.Beside(m.h, names, m.formBlock(fw), theme.Block{Width: rw, Lines: append(right, m.checks.View(rw)...)})
	case m.focus == Readings:
		return m.th.Beside(m.h, theme.Block{Width: m.w, Lines: m.readings.View(m.w)})
	case m.focus == Checks:
		return m.th.Beside(m.h, theme.Block{Width: m.w, Lines: m.checks.View(m.w)})
	}
	return m.th.Beside(m.h, names, m.formBlock(m.w-lw-1))
}

func (m *Model) formBlock(w int) theme.Block {
	return theme.Block{Width: w, Lines: m.form.View(w, m.focus == Form)}
}

func (m *Model) leftColumn(w int) []string {
	up, _ := m.left()
	var typing *line.Model
	if m.focus == Variants {
		typing = m.naming
	}
	top := m.th.Beside(up, theme.Block{Width: w, Lines: m.variants.View(w, m.focus == Variants, typing)})
	return append(top, m.parts.View(w, m.focus == Parts, nil)...)
}
