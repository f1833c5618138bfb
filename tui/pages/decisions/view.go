package decisions

import (
	"fmt"

	"backspan/model"
	"backspan/tui/theme"
)

// Size gives the page's room: the log, and under it the entry under the cursor
// in full where it does not fit on its line.
func (m *Model) Size(w, h int) {
	m.w, m.h = w, h
	m.roll.Set(len(m.log()), nil)
	room := h - 1 - len(m.inFull())
	if m.Busy() && m.of == fresh {
		room--
	}
	m.roll.Height(room)
}

const dateRoom = 12

// View shows the page.
func (m *Model) View() []string {
	lines := []string{m.th.Heading(m.title(), m.roll.Note(), m.w, true)}
	if m.Busy() && m.of == fresh {
		lines = append(lines, m.editor())
	} else if len(m.log()) == 0 {
		return append(lines, "", "  "+m.th.Quiet.Paint(m.th.Cut("nothing is entered yet; "+m.keys.Decisions.Add.Help().Key+" enters what you settle, and why", m.w-2)))
	}
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.row(i))
	}
	full := m.inFull()
	for len(lines)+len(full) < m.h {
		lines = append(lines, "")
	}
	return append(lines, full...)
}

func (m *Model) title() string {
	switch n := len(m.log()); n {
	case 0:
		return "Decisions"
	case 1:
		return "Decisions: one"
	default:
		return fmt.Sprintf("Decisions: %d, the newest on top", n)
	}
}

func (m *Model) editor() string {
	return m.th.Accent.Paint(m.th.Marks.Here+" ") + m.typing.View(m.th, m.w-2)
}

// row is the i-th entry from the newest.
func (m *Model) row(i int) string {
	at := len(m.log()) - 1 - i
	if m.Busy() && m.of == at {
		return m.editor()
	}
	here := i == m.roll.Cursor && !m.Busy()
	mark := "  "
	if here {
		mark = m.th.Marks.Here + " "
	}
	d := m.log()[at]
	return m.th.Row(here, theme.Segment{Ink: m.th.Accent, Text: mark},
		theme.Segment{Ink: m.th.Quiet, Text: m.th.Fit(m.th.Clean(d.Date), dateRoom)},
		theme.Segment{Text: m.th.Cut(m.th.Clean(d.Text), m.textRoom())})
}

func (m *Model) textRoom() int { return m.w - 2 - dateRoom }

// leastForFull is the height from which there is room for more than the log.
const leastForFull = 8

// inFull is the entry under the cursor, when its line cannot hold it: at most
// half of the page.
func (m *Model) inFull() []string {
	i := m.at()
	if i < 0 || m.Busy() || m.h < leastForFull {
		return nil
	}
	d := m.log()[i]
	if theme.Width(m.th.Clean(d.Text)) <= m.textRoom() {
		return nil
	}
	lines := append([]string{m.th.Heading("In full, "+m.th.Clean(d.Date), "", m.w, false)}, m.wrapped(d)...)
	if most := m.h / 2; len(lines) > most {
		lines = append(lines[:most-1], m.th.Quiet.Paint("  "+m.th.Marks.Cut+" the rest is in the review"))
	}
	return lines
}

func (m *Model) wrapped(d model.Decision) []string {
	var lines []string
	for _, l := range theme.Wrap(m.th.Clean(d.Text), min(m.w-4, 96)) {
		lines = append(lines, "  "+l)
	}
	return lines
}

// Point takes a cell of the page that was pointed at; again is true when its row
// is the one under the cursor already.
func (m *Model) Point(_, y int) (again bool) { return m.roll.Point(y - 1) }
