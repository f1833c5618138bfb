package weights

import (
	"fmt"
	"math"
	"strings"

	"backspan/model/explore"
	"backspan/tui/theme"
)

func hundredths(share float64) string { return fmt.Sprintf("%.0f", math.Round(100*share)) }

// View shows the page: the order, and below it what may count.
func (m *Model) View() []string {
	if len(m.desk.Study().Variants) < 2 {
		return []string{m.th.Heading("Weights", "", m.w, true), "", "  there is nothing to rank: a study needs two variants"}
	}
	lines := append([]string{m.th.Heading("Order by your weights", "first: with each weight moved by up to half", m.w, false)}, m.order()...)
	title := "Weights of all readings, 0 does not count"
	if m.counted {
		title = "Weights of what counts"
	}
	lines = append(lines, m.th.Heading(title, m.roll.Note(), m.w, true))
	if len(m.rows) == 0 {
		return append(lines, "", "  "+m.th.Quiet.Paint("nothing counts yet; "+m.keys.Weights.Counted.Help().Key+" shows all that could"))
	}
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.row(m.rows[i], i == m.roll.Cursor))
	}
	return lines
}

func (m *Model) order() []string {
	if len(m.standing) == 0 {
		return []string{"  nothing counts: give a reading a weight"}
	}
	n := m.ranked()
	lines := make([]string, n)
	for i := range lines {
		lines[i] = m.place(i, m.standing[i])
	}
	return lines
}

// place is one variant of the order: its score of 100, and in how many of 100
// weightings it comes first.
func (m *Model) place(i int, v explore.Standing) string {
	name := m.th.Clean(m.desk.Study().Variants[v.Variant].Name)
	label := min(max(m.w-58, 16), 40)
	note := ""
	switch {
	case v.Failing > 0:
		note = fmt.Sprintf("%d checks fail", v.Failing)
	case len(v.Lacking) > 0:
		note = fmt.Sprintf("%d readings lacking", len(v.Lacking))
	}
	bar := int(math.Round(v.Score * 20))
	segs := []theme.Segment{
		{Text: fmt.Sprintf("%3d ", i+1)},
		{Ink: m.th.Strong, Text: m.th.Label(name, label)},
		{Text: m.th.Right(hundredths(v.Score), 4) + " "},
		{Ink: m.th.Quiet, Text: m.th.Fit(strings.Repeat(m.th.Marks.Usual, bar), 21)},
		{Text: m.th.Right("first "+hundredths(v.First)+" %", 11) + "  "},
		{Ink: m.th.Fails, Text: m.th.Cut(note, max(m.w-4-label-5-21-13, 0))},
	}
	return m.th.Row(false, segs...)
}

func (m *Model) row(r row, here bool) string {
	if r.heading != "" {
		return m.th.Quiet.Paint(m.th.Cut(m.th.Clean(r.heading), m.w))
	}
	mark := "  "
	if here {
		mark = m.th.Marks.Here + " "
	}
	weight := m.weights[r.key]
	figure, ink := "0", m.th.Quiet
	if weight > 0 {
		figure, ink = fmt.Sprint(weight), m.th.Strong
	}
	label := min(m.w-2-16-24, 40)
	return m.th.Row(here, theme.Segment{Ink: m.th.Accent, Text: mark},
		theme.Segment{Text: m.th.Label(m.th.Clean(r.label), label)},
		theme.Segment{Ink: ink, Text: m.th.Right(figure, 4) + " "},
		theme.Segment{Ink: m.th.Quiet, Text: m.th.Fit(strings.Repeat(m.th.Marks.Spot, weight), 11)},
		theme.Segment{Ink: m.th.Quiet, Text: m.th.Cut("best "+m.th.Clean(r.best), m.w-2-label-16)})
}

// Point takes a cell of the page that was pointed at; again is true when its row
// is the one under the cursor already. A weight is not set by pointing.
func (m *Model) Point(_, y int) (again bool) {
	m.roll.Point(y - 2 - m.ranked())
	return false
}
