package curves

import (
	"math"
	"strings"

	"backspan/model/unit"
	"backspan/tui/components/chart"
	"backspan/tui/raster"
	"backspan/tui/theme"
)

// speeds shows for each machine in sight the crank speeds at which a belt span
// is shaken, over one axis of speed.
func (m *Model) speeds() []string {
	w, h := m.w, m.h-1
	from, to := m.speedRange()
	var lines []string
	if !(to > from) {
		lines = append(lines, "  "+m.th.Cut("No belt drives any of these machines, or none finds its working speed.", w-2))
		return lines
	}
	label := min(w*2/5, 44)
	wide := w - label - 1
	column := func(speed float64) float64 { return (speed - from) / (to - from) * float64(wide) }
	m.columns = wide
	for _, i := range m.shown() {
		if at := m.desk.OutcomeOf(i).Speeds.Working; !m.moved && at > 0 {
			m.reading = min(max((at-from)/(to-from), 0), 1)
			break
		}
	}
	reading := from + m.reading*(to-from)
	said := " at crank speed " + unit.RPM.Text(reading)
	lines = append(lines, m.th.Strong.Paint(said)+m.th.Quiet.Paint(m.th.Cut("   "+m.bar()+" a span is shaken   "+m.th.Marks.Spot+" works standing", w-theme.Width(said))))
	rows := m.speedRows(label, wide, column, reading)
	room := max(h-2, 0)
	m.offset = min(max(m.offset, 0), max(len(rows)-room, 0))
	lines = append(lines, rows[m.offset:min(m.offset+room, len(rows))]...)
	return append(lines, chart.Ruler(m.th, label+1, wide, unit.RPM.From(from), unit.RPM.From(to), unit.RPM.Symbol))
}

// shorter says a cause in fewer words.
var shorter = strings.NewReplacer("engine ", "", " on mode ", ", mode ", " at twice mode ", ", twice mode ", " of the ", ", ")

func brief(cause string, w int) string {
	if theme.Width(cause) <= w {
		return cause
	}
	return shorter.Replace(cause)
}

func (m *Model) bar() string {
	if m.th.ASCII {
		return "#"
	}
	return "▒"
}

func (m *Model) speedRange() (from, to float64) {
	from, to = math.Inf(1), math.Inf(-1)
	for _, i := range m.shown() {
		if s := m.desk.OutcomeOf(i).Speeds; s.To > s.From {
			from, to = math.Min(from, s.From), math.Max(to, s.To)
		}
	}
	return from, to
}

func (m *Model) speedRows(label, wide int, column func(float64) float64, reading float64) []string {
	bar := m.bar()
	var rows []string
	for _, i := range m.shown() {
		s, ink := m.desk.OutcomeOf(i).Speeds, m.th.Lines[i%len(m.th.Lines)]
		name := letter(i) + " " + m.th.Clean(m.name(i))
		if !(s.To > s.From) {
			rows = append(rows, " "+m.th.Strong.Paint(m.th.Label(name, label-1))+m.th.Quiet.Paint(m.th.Cut(" no belt, or no working speed", wide)))
			continue
		}
		rows = append(rows, " "+m.th.Strong.Paint(m.th.Label(name, label-1)))
		for _, b := range s.Bands {
			c := raster.New(wide, 1, m.th.ASCII)
			for x := int(column(b.From)); x <= int(column(b.To)); x++ {
				c.Mark(x, 0, bar, ink)
			}
			if at := int(column(reading)); c.Free(at, 0) {
				c.Mark(at, 0, m.th.Marks.Column, m.th.Accent)
			}
			c.Mark(min(int(column(s.Working)), wide-1), 0, m.th.Marks.Spot, m.th.Strong)
			inside := " "
			if reading >= b.From && reading <= b.To {
				inside = m.th.Marks.Here
			}
			rows = append(rows, m.th.Row(false, theme.Segment{Text: " " + inside}, theme.Segment{Ink: m.th.Quiet, Text: m.th.Label(brief(m.th.Clean(b.Cause), label-2), label-2)})+" "+c.Lines()[0])
		}
	}
	return rows
}
