package explore

import (
	"math"

	"backspan/model/explore"
	"backspan/tui/components/chart"
	"backspan/tui/theme"
)

// sureView shows a tolerance run in w x h cells: how a reading is spread, and
// below the readings, what moves it, and the checks.
func (m *Model) sureView(a *answer, w, h int) []string {
	s := a.sure
	s.look(&a.roll)
	a.roll.Set(len(s.rows), s.titled)
	lines := m.histogram(s, w, h*5/11)
	a.roll.Height(max(h-len(lines), 0))
	a.top = m.h - h + len(lines)
	from, to := a.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.sureRow(a, i, w))
	}
	return lines
}

// histogram draws how the charted reading is spread; nothing where all machines
// are alike in it, or where there is no room.
func (m *Model) histogram(s *sure, w, h int) []string {
	d, ok := s.charted()
	if !ok {
		return nil
	}
	u := d.Reading.Unit
	c := &chart.Chart{XUnit: m.th.Clean(u.Symbol), YUnit: "%", Reading: math.NaN()}
	if d.Reading.Known() {
		c.Reading = u.From(d.Reading.Value)
	}
	bar := chart.Series{Ink: m.th.Lines[0]}
	for i, n := range d.Bars {
		share := 100 * float64(n) / float64(d.Samples)
		for _, at := range []int{i, i + 1} {
			x := d.Least + (d.Most-d.Least)*float64(at)/float64(len(d.Bars))
			bar.Points = append(bar.Points, [2]float64{u.From(x), share})
		}
	}
	c.Series = []chart.Series{bar}
	if !c.Lay(m.th, w, h-1) {
		return nil
	}
	name := m.th.Cut(m.th.Clean(" "+d.Reading.Label+", share of the machines"), w)
	rest := m.th.Cut(m.th.Clean("   upright: as set, "+d.Reading.Text()), w-theme.Width(name))
	return append([]string{m.th.Strong.Paint(name) + m.th.Quiet.Paint(rest)}, c.View()...)
}

func (m *Model) sureRow(a *answer, i, w int) string {
	s := a.sure
	row, here := s.rows[i], i == a.roll.Cursor
	segs := []theme.Segment{{Ink: m.th.Accent, Text: m.mark(here, m.reading)}}
	switch {
	case row.heading != "":
		return m.sureHeading(row, i, w)
	case row.reading >= 0:
		segs = append(segs, m.spreadCells(s.Distributions[row.reading], w-2)...)
	case row.mover >= 0:
		d, _ := s.charted()
		segs = append(segs, m.moverCells(d.Contributions[row.mover], w-2)...)
	default:
		segs = append(segs, m.oddsCells(s, s.Judged[row.check], w-2)...)
	}
	return m.th.Row(here && m.reading, segs...)
}

// figureWide is how wide one of the figures of a spread is.
const figureWide = 11

func (m *Model) sureHeading(row sureRow, i, w int) string {
	head := m.th.Clean(row.heading)
	if i > 0 {
		return m.th.Strong.Paint(m.th.Cut(" "+head, w))
	}
	label := w - 4*figureWide
	tail := ""
	for _, t := range []string{"as set", "5% below", "half below", "95% below"} {
		tail += m.th.Right(t, figureWide)
	}
	return m.th.Strong.Paint(m.th.Fit(" "+head, label)) + m.th.Quiet.Paint(tail)
}

func (m *Model) spreadCells(d explore.Distribution, w int) []theme.Segment {
	low, middle, high := lowMiddleHigh(d)
	segs := []theme.Segment{{Text: m.th.Label(m.th.Clean(d.Reading.Label), w-4*figureWide)}}
	for _, t := range []string{d.Reading.Text(), low, middle, high} {
		segs = append(segs, theme.Segment{Text: m.th.Right(m.th.Clean(t), figureWide)})
	}
	return segs
}

func (m *Model) moverCells(c explore.Contribution, w int) []theme.Segment {
	const share, bar = 6, 12
	label, part, way := mover(c)
	tail := c.Spread.Text()
	if way != "" {
		tail = way + "; " + tail
	}
	name := (w - share - bar) * 2 / 5
	return []theme.Segment{{Text: m.th.Label(m.th.Clean(label), name)}, {Text: m.th.Right(part, share) + " "},
		{Ink: m.th.Accent, Text: m.th.Fit(m.bar(c.Share, bar-2), bar-2) + " "},
		{Ink: m.th.Quiet, Text: m.th.Fit(m.th.Clean(tail), w-name-share-bar)}}
}

// bar is a share of w cells.
func (m *Model) bar(share float64, w int) string {
	s := ""
	for range int(math.Round(share * float64(w))) {
		s += m.th.Marks.Bar
	}
	return s
}

func (m *Model) oddsCells(s *sure, j explore.Judged, w int) []theme.Segment {
	name, ink := w*2/5, theme.Ink{}
	if spare := w - 2 - s.oddsWidth; spare > name {
		name = spare
	}
	switch {
	case j.Fails > 0:
		ink = m.th.Fails
	case j.Thin > 0:
		ink = m.th.Thin
	}
	return []theme.Segment{{Text: m.th.Label(m.th.Clean(j.Label), name)}, {Text: "  "}, {Ink: ink, Text: m.th.Fit(m.th.Clean(s.odds(j)), w-name-2)}}
}
