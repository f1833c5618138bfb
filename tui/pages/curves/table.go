package curves

import (
	"backspan/model"
	"backspan/tui/components/chart"
	"backspan/tui/raster"
	"backspan/tui/theme"
)

// entry is a row of the table: a line, or a word about a machine.
type entry struct {
	curve int // index into the lines, −1 for a word
	text  string
}

// rows are the table's, without its head.
func (m *Model) rows(curves []curve) []entry {
	var rows []entry
	for i, k := range curves {
		if len(k.points) > 0 {
			rows = append(rows, entry{curve: i})
		} else if k.why != "" {
			rows = append(rows, entry{-1, letter(k.variant) + " " + m.name(k.variant) + ": " + k.why})
		}
	}
	for _, i := range m.shown() {
		if a, ok := m.found[m.subject(i, ratios)]; ok && sheets[m.sheet].ratio != nil && a.why == "" {
			rows = append(rows, entry{-1, letter(i) + " best: " + a.chart.Reason})
		}
	}
	return rows
}

// table tells what each line reads where the reading line stands, in w x h
// cells.
func (m *Model) table(c *chart.Chart, a axes, curves []curve, w, h int) []string {
	if h < 1 {
		return nil
	}
	lines := []string{m.head(c, a, w)}
	rows := m.wrapped(m.rows(curves), w, h)
	m.offset = min(max(m.offset, 0), max(len(rows)-(h-1), 0))
	last := min(m.offset+h-1, len(rows))
	for _, r := range rows[m.offset:last] {
		if r.curve < 0 {
			lines = append(lines, " "+m.th.Quiet.Paint(m.th.Cut(r.text, w-2)))
			continue
		}
		lines = append(lines, m.line(c, a, &c.Series[r.curve], curves[r.curve], w))
	}
	return lines
}

// wrapped breaks words where the table has room for them, and shortens them
// where it has not.
func (m *Model) wrapped(rows []entry, w, h int) []entry {
	if len(rows) >= h {
		return rows
	}
	var out []entry
	for _, r := range rows {
		if r.curve >= 0 {
			out = append(out, r)
			continue
		}
		for i, l := range theme.Wrap(m.th.Clean(r.text), w-4) {
			if i > 0 {
				l = "  " + l
			}
			out = append(out, entry{-1, l})
		}
	}
	return out
}

func (m *Model) head(c *chart.Chart, a axes, w int) string {
	at := ""
	if c.Reading == c.Reading {
		at = "at " + a.along.Label + " " + m.th.Clean(a.along.Unit.Text(a.along.Unit.SI(c.Reading)))
	}
	return " " + m.th.Strong.Paint(m.th.Cut(at, w-1))
}

// line is one line's name, its look, and what it reads.
func (m *Model) line(c *chart.Chart, a axes, s *chart.Series, k curve, w int) string {
	value, wide := "-", 11
	if y, ok := s.At(c.Reading); ok {
		value = m.th.Clean(a.across.Unit.Text(a.across.Unit.SI(y)))
	}
	name := min(w/3, 20)
	label := w - 1 - 2 - 4 - name - 1 - wide
	return m.th.Row(false, theme.Segment{Text: " "}, theme.Segment{Ink: s.Ink, Text: s.Letter + " " + m.sample(s) + " "},
		theme.Segment{Ink: m.th.Strong, Text: m.th.Label(m.th.Clean(m.name(k.variant)), name) + " "},
		theme.Segment{Ink: m.th.Quiet, Text: m.th.Label(k.label, label)}, theme.Segment{Text: m.th.Right(value, wide)})
}

// sample is three cells of a line's stroke.
func (m *Model) sample(s *chart.Series) string {
	c := raster.New(3, 1, m.th.ASCII)
	c.Path(raster.Pen{Stroke: s.Stroke}, [2]float64{0, 0.5}, [2]float64{3, 0.5})
	return m.th.Fit(c.Lines()[0], 3)
}

// spotWords names the marked points of the first line, for whoever reads the
// chart.
func spotWords(spots []model.Spot) string {
	words := ""
	for i, s := range spots {
		if i > 0 {
			words += ", "
		}
		words += s.Label
	}
	return words
}
