package differences

import (
	"fmt"
	"strings"

	"backspan/model"
	"backspan/tui/components/figure"
	"backspan/tui/theme"
)

// row is a line of the page: a heading, or a line of a difference.
type row struct {
	heading string
	cells   [3]string // label and both sides, one line of each
	of      int       // number of the difference
}

// columns are the widths of label and sides; a gap follows the first two.
func columns(w int) [3]int {
	label := max((w-mark-2*gap)*3/10, 14)
	side := (w - mark - 2*gap - label) / 2
	return [3]int{label, side, side}
}

const mark, gap = 2, 2

// View shows the page.
func (m *Model) View() []string {
	title := "No difference"
	switch {
	case m.count == 1:
		title = "1 difference"
	case m.count > 1:
		title = fmt.Sprintf("%d differences", m.count)
	}
	lines := []string{m.th.Heading(title, m.roll.Note(), m.w, true),
		m.th.Quiet.Paint(m.line("", [3]string{"", m.th.Clean(m.sides.FromName), m.th.Clean(m.sides.ToName)}))}
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		r := m.rows[i]
		if r.heading != "" {
			lines = append(lines, m.th.Strong.Paint(m.th.Cut(r.heading, m.w)))
			continue
		}
		here := ""
		if i == m.roll.Cursor {
			here = m.th.Marks.Here
		}
		lines = append(lines, m.th.Row(i == m.roll.Cursor, theme.Segment{Text: m.line(here, r.cells)}))
	}
	return lines
}

func (m *Model) line(here string, cells [3]string) string {
	w := columns(m.w)
	between := strings.Repeat(" ", gap)
	return m.th.Fit(here, mark) + m.th.Fit(cells[0], w[0]) + between + m.th.Fit(cells[1], w[1]) + between + m.th.Fit(cells[2], w[2])
}

// write lists what differs, and counts it.
func (m *Model) write(w int) (rows []row, count int) {
	for _, c := range m.contrasts {
		if c.Nothing() {
			continue
		}
		rows = append(rows, row{heading: m.th.Clean(c.Title), of: -1})
		switch c.Only {
		case model.OnlyFrom:
			rows = append(rows, m.entry(w, count, "the whole variant", "is here", "is not here")...)
			count++
		case model.OnlyTo:
			rows = append(rows, m.entry(w, count, "the whole variant", "is not here", "is here")...)
			count++
		}
		for _, d := range c.Differences {
			rows = append(rows, m.entry(w, count, labelOf(d), figure.Money(d.From, d.Unit, m.sides.From.Currency), figure.Money(d.To, d.Unit, m.sides.To.Currency))...)
			count++
		}
	}
	return rows, count
}

// labelOf leaves the section out where it says what the heading says.
func labelOf(d model.Difference) string {
	label := d.Label
	if d.Section != "Study" && d.Section != "Variant" && d.Section != "" {
		label = d.Section + ": " + label
	}
	if d.Idle {
		label += " (in use on one side at most)"
	}
	return label
}

// entry writes one difference in as many lines as its longest cell takes.
func (m *Model) entry(w, of int, texts ...string) []row {
	var rows []row
	for i, width := range columns(w) {
		for y, l := range m.wrapped(texts[i], width) {
			if y == len(rows) {
				rows = append(rows, row{of: of})
			}
			rows[y].cells[i] = l
		}
	}
	return rows
}

// wrapped shows a text whole, line end by line end.
func (m *Model) wrapped(text string, w int) []string {
	if text == "" {
		return []string{"-"}
	}
	var lines []string
	for _, l := range strings.Split(text, "\n") {
		if l = m.th.Clean(l); l == "" {
			lines = append(lines, "")
		}
		lines = append(lines, theme.Wrap(l, w)...)
	}
	return lines
}
