package drawing

import (
	"slices"

	"backspan/store/report/elevation"
	"backspan/tui/theme"
)

// row is a figure of the machine in hand and of the reference.
type row struct {
	letter, label string
	here, there   string
	by            string
}

// figures is the table beside the picture, w cells wide and at most h high.
func (m *Model) figures(hand, ref *subject, w, h int) []string {
	rows := m.rows(hand, ref)
	widest := func(head string, of func(row) string) int {
		n := theme.Width(head)
		for _, r := range rows {
			n = max(n, theme.Width(of(r)))
		}
		return n
	}
	here := widest("here", func(r row) string { return r.here })
	var there, by int
	if ref != nil {
		by = widest("to ref", func(r row) string { return r.by })
		if w >= 44 {
			there = widest("reference", func(r row) string { return r.there })
		}
	}
	label := w - 3 - (here + 1)
	for _, n := range []int{there, by} {
		if n > 0 {
			label -= n + 1
		}
	}
	line := func(r row, ink theme.Ink) string {
		s := []theme.Segment{{Text: " "}, {Ink: m.th.Strong, Text: m.th.Fit(r.letter, 2)}, {Ink: ink, Text: m.th.Label(r.label, label)}, {Ink: ink, Text: " " + m.th.Right(r.here, here)}}
		if there > 0 {
			s = append(s, theme.Segment{Ink: m.th.Quiet, Text: " " + m.th.Right(r.there, there)})
		}
		if by > 0 {
			s = append(s, theme.Segment{Ink: ink, Text: " " + m.th.Right(r.by, by)})
		}
		return m.th.Row(false, s...)
	}
	lines := []string{line(row{here: "here", there: "reference", by: "to ref", label: "measures in mm"}, m.th.Quiet)}
	for _, r := range rows {
		lines = append(lines, line(r, theme.Ink{}))
	}
	for len(lines) < h && h-len(lines) > len(m.legend(w)) {
		lines = append(lines, "")
	}
	return append(lines, m.legend(w)...)[:min(len(lines)+len(m.legend(w)), h)]
}

func (m *Model) rows(hand, ref *subject) []row {
	var rows []row
	for _, d := range slices.Concat(hand.drawing.Dimensions, hand.drawing.Pieces) {
		r := row{letter: d.Letter, label: d.Label, here: length(d.Length())}
		if ref != nil {
			r.there, r.by = "-", ""
			for _, o := range slices.Concat(ref.drawing.Dimensions, ref.drawing.Pieces) {
				if d.Letter != "" && o.Letter == d.Letter || d.Letter == "" && o.Label == d.Label {
					r.there, r.by = length(o.Length()), difference(d.Length(), o.Length())
				}
			}
		}
		if d.Letter == "" {
			r.label = "depth of " + d.Label
		}
		rows = append(rows, r)
	}
	return rows
}

// legend says what the signs and strokes stand for.
func (m *Model) legend(w int) []string {
	words := ""
	for _, k := range []elevation.MarkKind{elevation.Gravity, elevation.Hang, elevation.Hip, elevation.Exhaust, elevation.Axis} {
		if k == elevation.Axis != m.rear && (k == elevation.Axis || k == elevation.Exhaust) {
			continue
		}
		if words != "" {
			words += ", "
		}
		words += m.sign(k) + " " + string(k)
	}
	words += "; dashed: assumed"
	var lines []string
	for _, l := range theme.Wrap(m.th.Clean(words), w-2) {
		lines = append(lines, " "+m.th.Quiet.Paint(l))
	}
	return lines
}

// sign is what stands at a marked point.
func (m *Model) sign(k elevation.MarkKind) string {
	signs := drawn
	if m.th.ASCII {
		signs = typed
	}
	return signs[k]
}

var (
	drawn = map[elevation.MarkKind]string{elevation.Gravity: "⊕", elevation.Hang: "▲", elevation.Hip: "○", elevation.Exhaust: "×", elevation.Axis: "+"}
	typed = map[elevation.MarkKind]string{elevation.Gravity: "@", elevation.Hang: "A", elevation.Hip: "o", elevation.Exhaust: "x", elevation.Axis: "+"}
)
