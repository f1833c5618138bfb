package curves

import (
	"fmt"
	"math"
	"slices"
	"strings"

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
	if signs := m.signs(curves); signs != "" {
		rows = append(rows, entry{-1, signs})
	}
	for _, i := range m.shown()[:min(len(m.shown()), 2)] {
		if a, ok := m.found[m.subject(i, ratios)]; ok && sheets[m.sheet].ratio != nil && a.why == "" {
			rows = append(rows, entry{-1, letter(i) + " best: " + a.chart.Reason})
		}
	}
	return rows
}

// signs says what the marks on the lines stand for.
func (m *Model) signs(curves []curve) string {
	var spots []string
	best, crosses := false, false
	for _, k := range curves {
		for _, s := range k.spots {
			if !slices.Contains(spots, s.Label) {
				spots = append(spots, s.Label)
			}
		}
		best, crosses = best || len(k.best) > 0, crosses || len(k.crosses) > 0
	}
	var words []string
	if len(spots) > 0 {
		words = append(words, m.th.Marks.Spot+" "+strings.Join(spots, ", "))
	}
	if best {
		words = append(words, m.th.Marks.Better+" best climb")
	}
	if crosses {
		words = append(words, m.cross()+" the engine lugs or over-speeds, or the tips are too fast")
	}
	return strings.Join(words, "; ")
}

// table tells what each line reads where the reading line stands, in w x h
// cells.
func (m *Model) table(c *chart.Chart, a axes, curves []curve, w, h int) []string {
	if h < 1 {
		return nil
	}
	rows := m.wrapped(m.rows(curves), w, h)
	m.offset = min(max(m.offset, 0), max(len(rows)-(h-1), 0))
	last := min(m.offset+h-1, len(rows))
	more := ""
	if last-m.offset < len(rows) {
		more = fmt.Sprintf("%d-%d of %d, up down for more", m.offset+1, last, len(rows))
	}
	lines := []string{m.head(c, a, more, w)}
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

func (m *Model) head(c *chart.Chart, a axes, more string, w int) string {
	at := ""
	if !math.IsNaN(c.Reading) {
		at = "at " + a.along.Label + " " + m.th.Clean(a.along.Unit.Text(a.along.Unit.SI(c.Reading)))
	}
	room := max(w-2-theme.Width(more), 0)
	return " " + m.th.Strong.Paint(m.th.Fit(at, room)) + " " + m.th.Quiet.Paint(more)
}

// line is one line's name, its look, and what it reads.
func (m *Model) line(c *chart.Chart, a axes, s *chart.Series, k curve, w int) string {
	value, wide := "-", 11
	if y, ok := s.At(c.Reading); ok {
		value = m.th.Clean(a.across.Unit.Text(a.across.Unit.SI(y)))
	}
	name := min(w/4+3, 16)
	label := w - 1 - 2 - 5 - name - 2 - wide
	return m.th.Row(false, theme.Segment{Text: " "}, theme.Segment{Ink: s.Ink, Text: s.Letter + " " + m.sample(s) + " "},
		theme.Segment{Ink: m.th.Strong, Text: m.th.Label(m.th.Clean(m.name(k.variant)), name) + " "},
		theme.Segment{Ink: m.th.Quiet, Text: m.th.Label(k.label, label)}, theme.Segment{Text: " " + m.th.Right(value, wide)})
}

// sample is four cells of a line's stroke.
func (m *Model) sample(s *chart.Series) string {
	c := raster.New(4, 1, m.th.ASCII)
	c.Path(raster.Pen{Stroke: s.Stroke}, [2]float64{0, 0.5}, [2]float64{4, 0.5})
	return m.th.Fit(c.Lines()[0], 4)
}
