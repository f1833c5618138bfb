package bench

import (
	"backspan/tui/components/line"
	"backspan/tui/theme"
)

// The widths from which more panes stand side by side.
const (
	threeColumns = 112
	fourColumns  = 195
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

// right divides the right column between readings and checks; little depends
// on the focus, because rows that move have to be sent.
func (m *Model) right() (up, down int) {
	up = m.h * 3 / 5
	switch m.focus {
	case Readings:
		up = m.h * 2 / 3
	case Checks:
		up = m.h / 2
	}
	return up, m.h - up
}

// widths divides the page: the column of names, the form, the readings (and,
// in three columns, the checks below them), and the checks in a column of
// their own. Labels of the widest panes get thirty cells first, then the
// readings room for the reference, then all alike.
func (m *Model) widths() (names, form, readings, checks int) {
	const leastNames, mostNames, leastForm, leastReadings, withReference, leastChecks = 17, 26, 46, 55, 65, 55
	switch {
	case m.w < threeColumns:
		names = 22
		if m.w < 76 {
			names = 20
		}
		return names, m.w - names - 1, m.w, m.w
	case m.w < fourColumns:
		names = leastNames
		spare := m.w - 2 - names - leastForm - leastReadings
		readings = leastReadings + min(spare, withReference-leastReadings)
		if spare < 0 {
			readings = leastReadings + spare/2
		}
		spare = max(spare-(withReference-leastReadings), 0)
		names += min(spare, mostNames-leastNames)
		readings += max(spare-(mostNames-leastNames), 0) / 2
		return names, m.w - 2 - names - readings, readings, readings
	}
	spare := m.w - 3 - mostNames - leastForm - withReference - leastChecks
	form, readings = leastForm+spare/3, withReference+spare/3
	return mostNames, form, readings, m.w - 3 - mostNames - form - readings
}

// View shows the page in as many columns as are readable; the pane with the
// focus is always among them.
func (m *Model) View() []string {
	nw, fw, rw, cw := m.widths()
	names := theme.Block{Width: nw, Lines: m.leftColumn(nw)}
	switch {
	case m.w >= fourColumns:
		return m.th.Beside(m.h, names, m.formBlock(fw),
			theme.Block{Width: rw, Lines: m.readings.View(rw)}, theme.Block{Width: cw, Lines: m.checks.View(cw)})
	case m.w >= threeColumns:
		up, _ := m.right()
		right := m.th.Beside(up, theme.Block{Width: rw, Lines: m.readings.View(rw)})
		return m.th.Beside(m.h, names, m.formBlock(fw), theme.Block{Width: rw, Lines: append(right, m.checks.View(cw)...)})
	case m.focus == Readings:
		return m.th.Beside(m.h, theme.Block{Width: rw, Lines: m.readings.View(rw)})
	case m.focus == Checks:
		return m.th.Beside(m.h, theme.Block{Width: cw, Lines: m.checks.View(cw)})
	}
	return m.th.Beside(m.h, names, m.formBlock(fw))
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

// Point takes a cell of the page that was pointed at: its pane gets the focus, and
// its row the cursor. again is true when it is a value under the cursor already.
func (m *Model) Point(x, y int) (again bool) {
	pane, y := m.under(x, y)
	was := m.focus == pane
	switch pane {
	case Variants:
		m.variants.Point(y)
		if i, ok := m.variants.Key(); ok {
			m.Take(i)
		}
	case Parts:
		m.walkParts(func() { m.parts.Point(y) })
	case Form:
		again = m.form.Point(y) && was
	case Readings:
		m.readings.Point(y)
	case Checks:
		m.checks.Point(y)
	}
	m.look(pane)
	return again
}

// Face gives the pane at a cell of the page the focus.
func (m *Model) Face(x, y int) Pane {
	pane, _ := m.under(x, y)
	m.look(pane)
	return pane
}

// under is the pane at a cell of the page, and the line of the pane.
func (m *Model) under(x, y int) (Pane, int) {
	names, form, readings, _ := m.widths()
	up, _ := m.left()
	low, _ := m.right()
	switch {
	case m.w < threeColumns && m.focus >= Readings:
		return m.focus, y
	case x < names && y < up:
		return Variants, y
	case x < names:
		return Parts, y - up
	case x <= names+form || m.w < threeColumns:
		return Form, y
	case m.w >= fourColumns && x > names+form+1+readings:
		return Checks, y
	case m.w >= fourColumns || y < low:
		return Readings, y
	}
	return Checks, y - low
}
