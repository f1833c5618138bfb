package curves

import (
	"fmt"
	"math"
	"slices"

	"backspan/model"
	"backspan/tui/components/chart"
	"backspan/tui/raster"
	"backspan/tui/theme"
)

// beside is the width from which the table stands beside the chart.
const beside = 110

// draw lays the page out.
func (m *Model) draw() {
	if m.w <= 0 || m.h <= 1 {
		return
	}
	m.lines = []string{m.heading()}
	if m.desk.Variant() == nil {
		m.lines = append(m.lines, "  No variant yet.")
		return
	}
	if !sheets[m.sheet].asks {
		m.lines = append(m.lines, m.speeds()...)
		return
	}
	curves, a := m.curves()
	c := m.chart(curves, a)
	w, h := m.w, m.h-1
	table := m.rows(curves)
	if !drawable(curves) {
		m.lines = append(m.lines, m.plot(c, a, curves, w, h)...)
		return
	}
	if w >= beside {
		const wide = 54
		m.lines = append(m.lines, m.th.Beside(h, theme.Block{Width: w - wide - 1, Lines: m.plot(c, a, curves, w-wide-1, h)},
			theme.Block{Width: wide, Lines: m.table(c, a, curves, wide, h)})...)
		return
	}
	low := min(len(table)+1, max(h/3, 2))
	m.lines = append(m.lines, m.plot(c, a, curves, w, h-low)...)
	m.lines = append(m.lines, m.table(c, a, curves, w, low)...)
}

func drawable(curves []curve) bool {
	return slices.ContainsFunc(curves, func(k curve) bool { return len(k.points) > 0 })
}

func (m *Model) heading() string {
	note := fmt.Sprintf("chart %d of %d", m.sheet+1, len(sheets))
	if left, all := m.waiting(); len(left) > 0 {
		note = fmt.Sprintf("working, %d of %d machines done", all-len(left), all)
	}
	return m.th.Heading(sheets[m.sheet].title, note, m.w, true)
}

// chart makes the lines ready for the axes' units.
func (m *Model) chart(curves []curve, a axes) *chart.Chart {
	c := &chart.Chart{XUnit: m.th.Clean(a.along.Unit.Symbol), YUnit: m.th.Clean(a.across.Unit.Symbol), Reading: math.NaN()}
	at := func(p model.CurvePoint) [2]float64 {
		return [2]float64{a.along.Unit.From(p.X), a.across.Unit.From(p.Y)}
	}
	nth := map[int]int{}
	for _, k := range curves {
		s := chart.Series{Letter: letter(k.variant), Stroke: raster.Stroke(nth[k.variant] % 4), Ink: m.th.Lines[k.variant%len(m.th.Lines)]}
		nth[k.variant]++
		for _, p := range k.points {
			s.Points = append(s.Points, at(p))
		}
		for _, p := range k.crosses {
			s.Marks = append(s.Marks, chart.Mark{At: at(p), Sign: m.cross()})
		}
		for _, p := range k.best {
			s.Marks = append(s.Marks, chart.Mark{At: at(p), Sign: m.th.Marks.Better})
		}
		for _, p := range k.spots {
			s.Marks = append(s.Marks, chart.Mark{At: at(p.CurvePoint), Sign: m.th.Marks.Spot})
		}
		c.Series = append(c.Series, s)
	}
	return c
}

// letter tells machines apart: A is the study's first.
func letter(variant int) string { return string(rune('A' + variant%26)) }

// plot draws the chart, or says why there is none, in w x h cells.
func (m *Model) plot(c *chart.Chart, a axes, curves []curve, w, h int) []string {
	if !c.Lay(m.th, w, h) {
		lines := m.reasons(curves, w)
		for len(lines) < h {
			lines = append(lines, "")
		}
		return lines[:max(h, 0)]
	}
	from, to, columns := c.Span()
	m.columns = columns
	if !m.moved {
		m.reading = 0.5
		if at, ok := begin(curves, a); ok {
			m.reading = min(max((at-from)/(to-from), 0), 1)
		}
	}
	c.Reading = from + m.reading*(to-from)
	return c.View()
}

// begin is where the reading line stands at first: at the first marked point of
// the machine in hand.
func begin(curves []curve, a axes) (x float64, ok bool) {
	for _, k := range curves {
		if k.variant == curves[0].variant && len(k.spots) > 0 {
			return a.along.Unit.From(k.spots[0].X), true
		}
	}
	return 0, false
}

func (m *Model) cross() string {
	if m.th.ASCII {
		return "x"
	}
	return "×"
}

func (m *Model) reasons(curves []curve, w int) []string {
	var lines []string
	said := map[string]bool{}
	for _, k := range curves {
		if k.why == "" || said[k.why] {
			continue
		}
		said[k.why] = true
		for _, l := range theme.Wrap(m.th.Clean(m.name(k.variant)+": "+k.why), w-4) {
			lines = append(lines, "  "+l)
		}
	}
	if len(curves) == 0 {
		lines = append(lines, "  ...")
	}
	return lines
}

func (m *Model) name(i int) string { return m.desk.Study().Variants[i].Name }
