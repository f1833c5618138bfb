package explore

import (
	"math"
	"slices"
	"strings"

	"backspan/model/explore"
	"backspan/tui/components/chart"
	"backspan/tui/raster"
	"backspan/tui/theme"
)

// designsView shows designs in w x h cells: a chart, the table, and the design
// under the cursor in full.
func (m *Model) designsView(a *answer, w, h int) []string {
	d := a.designs
	a.roll.Set(len(d.rows), nil)
	var lines []string
	heads, columns := m.columns(a, w)
	full := m.inFull(a, columns, w, min(max(h/6, 2), 5))
	if len(d.plots) > 0 {
		lines = m.chart(a, w, (h-len(full))*6/11)
	}
	if len(d.rows) > 0 {
		if h-len(lines)-len(heads)-len(full) < 1 {
			lines, full = nil, nil // the designs before what is told of them
		}
		lines = append(lines, heads...)
	}
	a.roll.Height(max(h-len(lines)-len(full), 0))
	a.top = m.h - h + len(lines)
	from, to := a.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.designRow(a, columns, i, w))
	}
	for len(lines) < h-len(full) {
		lines = append(lines, "")
	}
	return append(lines, full...)
}

// verdictRoom is the least that the verdicts get.
func (d *designs) verdictRoom() int {
	if slices.ContainsFunc(d.rows, func(f explore.Finding) bool { return !f.Sound() }) || d.remarks != nil {
		return 24
	}
	return 8
}

// column is one of the table: which of a design's figures, and how wide.
type column struct{ of, wide int }

// columns are as many as there is room for, with their heads in two lines.
func (m *Model) columns(a *answer, w int) (heads []string, cs []column) {
	d, used := a.designs, 2
	var two [2]string
	labels, wide := d.heads(), m.widths(d)
	for _, of := range d.order(a.chart) {
		head := m.th.Clean(labels[of])
		c := max(wide[of], min((theme.Width(head)+1)/2, 11)) + 2
		if used+c+d.verdictRoom() > w {
			break
		}
		used += c
		cs = append(cs, column{of, c})
		wrapped := append(theme.Wrap(head, c-2), "", "")
		if len(wrapped) > 4 {
			wrapped[1] = m.th.Cut(wrapped[1]+" "+strings.Join(wrapped[2:], " "), c-2)
		}
		for y := range two {
			two[y] += m.th.Right(m.th.Cut(wrapped[y], c-2), c)
		}
	}
	return []string{m.th.Quiet.Paint("  " + two[0]), m.th.Quiet.Paint("  " + two[1] + "  checks")}, cs
}

// widths are those of the widest figures.
func (m *Model) widths(d *designs) []int {
	const narrow, measured = 8, 200
	wide := make([]int, len(d.dials)+len(d.readings))
	for i := range wide {
		wide[i] = narrow
	}
	for _, f := range d.rows[:min(len(d.rows), measured)] {
		for i, c := range d.cells(f) {
			wide[i] = max(wide[i], theme.Width(m.th.Clean(c)))
		}
	}
	return wide
}

// mark is before a row: where the keys go there, and where they do not.
func (m *Model) mark(here, focus bool) string {
	switch {
	case here && focus:
		return m.th.Marks.Here + " "
	case here:
		return m.th.Marks.Outside + " "
	}
	return "  "
}

func (m *Model) designRow(a *answer, cs []column, i, w int) string {
	d, here := a.designs, i == a.roll.Cursor
	mark, ink := m.mark(here, m.reading), theme.Ink{}
	cells := d.cells(d.rows[i])
	segs := []theme.Segment{{Ink: m.th.Accent, Text: mark}}
	used := 2
	for _, c := range cs {
		segs = append(segs, theme.Segment{Text: m.th.Right(m.th.Clean(cells[c.of]), c.wide)})
		used += c.wide
	}
	verdict := d.verdict(i)
	if theme.Width(m.th.Clean(verdict))+2 > w-used-2 {
		verdict = d.brief(i)
	}
	if !d.rows[i].Sound() {
		verdict, ink = m.cross()+" "+verdict, m.th.Worse
	}
	segs = append(segs, theme.Segment{Text: "  "}, theme.Segment{Ink: ink, Text: m.th.Label(m.th.Clean(verdict), w-used-2)})
	return m.th.Row(here && m.reading, segs...)
}

// inFull is the design under the cursor in h lines: its verdict, what the table
// had no room for, then the rest.
func (m *Model) inFull(a *answer, cs []column, w, h int) []string {
	d := a.designs
	if a.roll.Cursor >= len(d.rows) {
		return nil
	}
	heads, cells := d.heads(), d.cells(d.rows[a.roll.Cursor])
	words := []string{d.verdict(a.roll.Cursor)}
	for _, shown := range []bool{false, true} {
		for _, of := range d.order(a.chart) {
			if shown == slices.ContainsFunc(cs, func(c column) bool { return c.of == of }) {
				words = append(words, heads[of]+" "+cells[of])
			}
		}
	}
	var lines []string
	for _, l := range theme.Wrap(m.th.Clean(strings.Join(words, "; ")), w-2) {
		lines = append(lines, m.th.Quiet.Paint(" "+l))
	}
	for len(lines) < h {
		lines = append(lines, "")
	}
	return lines[:h]
}

func (m *Model) cross() string {
	if m.th.ASCII {
		return "x"
	}
	return "×"
}

// chart draws the chart in hand with its name and legend, in h lines; nothing
// where there is no room.
func (m *Model) chart(a *answer, w, h int) []string {
	d := a.designs
	p := d.plots[a.chart%len(d.plots)]
	c := &chart.Chart{XUnit: m.th.Clean(p.along.unit.Symbol), YUnit: m.th.Clean(p.across.unit.Symbol), Reading: math.NaN()}
	strokes := []raster.Stroke{raster.Solid, raster.Dashed, raster.Dotted, raster.Chain}
	for _, l := range p.lines {
		s := chart.Series{Stroke: strokes[l.nth%len(strokes)], Ink: m.th.Lines[l.nth%len(m.th.Lines)], Loose: p.loose}
		if p.legend != "" {
			s.Letter = letter(l.nth)
		}
		for _, pt := range l.points {
			m.put(&s, p, pt, a.roll.Cursor)
		}
		c.Series = append(c.Series, s)
	}
	m.level(c, p)
	if x, ok := m.rowAt(a, p); ok {
		c.Reading = p.along.unit.From(x)
	}
	if !c.Lay(m.th, w, h-1) {
		return nil
	}
	name := " " + p.across.label + " over " + p.along.label
	legend := m.th.Clean(m.legend(d, p))
	const leastName, tall = 20, 13
	name = m.th.Clean(name)
	if theme.Width(name)+2+theme.Width(legend) > w && h >= tall && c.Lay(m.th, w, h-2) {
		return append([]string{m.th.Strong.Paint(m.th.Cut(name, w)), " " + m.th.Quiet.Paint(m.th.Cut(legend, w-1))}, c.View()...)
	}
	name = m.th.Cut(name, max(w-theme.Width(legend)-2, leastName))
	return append([]string{m.th.Strong.Paint(name) + m.th.Quiet.Paint(m.th.Cut("  "+legend, w-theme.Width(name)))}, c.View()...)
}

func (m *Model) rowAt(a *answer, p plot) (float64, bool) {
	if a.roll.Cursor >= len(a.designs.rows) {
		return 0, false
	}
	return p.row(a.roll.Cursor)
}

// put sets a point on a line, with a mark when it is a design of the table or
// one that fails.
func (m *Model) put(s *chart.Series, p plot, pt point, cursor int) {
	at := [2]float64{p.along.unit.From(pt.x), p.across.unit.From(pt.y)}
	s.Points = append(s.Points, at)
	switch {
	case pt.bad:
		s.Marks = append(s.Marks, chart.Mark{At: at, Sign: m.cross()})
	case pt.row >= 0 && pt.row == cursor:
		s.Marks = append(s.Marks, chart.Mark{At: at, Sign: m.th.Marks.Spot})
	case pt.row >= 0 && (p.loose || p.legend == ""):
		s.Marks = append(s.Marks, chart.Mark{At: at, Sign: "+"})
	}
}

// level draws the value to be reached across the chart.
func (m *Model) level(c *chart.Chart, p plot) {
	if math.IsNaN(p.level) {
		return
	}
	from, to := math.Inf(1), math.Inf(-1)
	for _, s := range c.Series {
		for _, at := range s.Points {
			from, to = math.Min(from, at[0]), math.Max(to, at[0])
		}
	}
	if to > from {
		y := p.across.unit.From(p.level)
		c.Series = append(c.Series, chart.Series{Stroke: raster.Dotted, Ink: m.th.Quiet, Points: [][2]float64{{from, y}, {to, y}}})
	}
}

func (m *Model) legend(d *designs, p plot) string {
	var words []string
	if k := m.keys.Explore; len(d.plots) > 1 {
		words = append(words, k.PreviousChart.Help().Key+" "+k.NextChart.Help().Key+" others")
	}
	if p.legend != "" {
		words = append(words, p.legend)
	}
	if !math.IsNaN(p.level) {
		words = append(words, "dotted: the target")
	}
	for _, l := range p.lines {
		for _, pt := range l.points {
			if pt.bad {
				return strings.Join(append(words, m.cross()+" fails a check"), "; ")
			}
		}
	}
	return strings.Join(words, "; ")
}
