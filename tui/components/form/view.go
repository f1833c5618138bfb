package form

import (
	"strings"

	"backspan/model/param"
	"backspan/tui/components/figure"
	"backspan/tui/theme"
)

// View shows the pane: rows, and below them what there is to know of the row
// under the cursor.
func (m *Model) View(w int, focus bool) []string {
	lines := []string{m.th.Heading(m.th.Clean(m.Title), m.roll.Note(), w, focus)}
	if len(m.fields) == 0 {
		return append(lines, m.th.Quiet.Paint(m.th.Fit("  nothing to set here", w)))
	}
	switch f, _ := m.field(); {
	case m.state == choosing:
		lines = append(lines, m.words(w)...)
	case m.state == typing && f.Param.Kind == param.KindTable:
		lines = append(lines, m.table(f.Param, w)...)
	default:
		lines = append(lines, m.rows(w, focus)...)
	}
	d := m.detail()
	for len(lines) < m.height-d {
		lines = append(lines, "")
	}
	return append(lines, m.about(w, d)...)
}

func (m *Model) rows(w int, focus bool) []string {
	var lines []string
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		here := i == m.roll.Cursor
		if here && m.state == typing {
			lines = append(lines, m.edited(m.fields[i], w))
			continue
		}
		lines = append(lines, m.row(m.fields[i], w, here, focus))
	}
	return lines
}

// columns divides a row: mark, label, value with unit, gauge.
func columns(w int) (label, value, gauge int) {
	switch {
	case w >= 50:
		value = 15
	case w >= 46:
		value = 13
	default:
		value = 12
	}
	if w >= 64 {
		gauge = min(w-60, 24)
	}
	label = max(w-2-value-1, 4)
	if gauge > 0 {
		label -= gauge + 1
	}
	if most := 38; label > most {
		value = min(value+label-most, 40)
		label = w - 3 - value
		if gauge > 0 {
			label -= gauge + 1
		}
	}
	return label, value, gauge
}

func (m *Model) row(f Field, w int, here, focus bool) string {
	label, value, gauge := columns(w)
	mark, ink := "  ", theme.Ink{}
	if here {
		mark, ink = m.th.Marks.Here+" ", m.th.Strong
	}
	name := m.th.Clean(f.Param.Label)
	if spare := label - theme.Width(name); spare > 0 && !numeric(f.Param) {
		label, value = label-spare, value+spare
	}
	segs := []theme.Segment{
		{Ink: m.th.Accent, Text: mark},
		{Ink: ink, Text: m.th.Label(name, label)},
		{Text: " "},
		{Ink: ink, Text: m.value(f.Param, value)},
	}
	if gauge > 0 {
		segs = append(segs, theme.Segment{Text: " "}, theme.Segment{Ink: m.th.Quiet, Text: m.th.Fit(m.gauge(f.Param, gauge), gauge)})
	}
	return m.th.Row(here && focus, segs...)
}

// unitRoom is what the units take at the end of the value column, so that the
// numbers stand under one another.
const unitRoom = 6

func (m *Model) value(p param.Param, w int) string {
	si, number := p.Number()
	room := w - unitRoom
	if !number {
		s := m.th.Clean(p.Show())
		if theme.Width(s) <= room {
			return m.th.Fit(m.th.Right(s, room), w)
		}
		return m.th.Right(s, w)
	}
	s := p.Editable()
	if len(s) > room {
		s = p.Unit.Number(si)
	}
	u := m.th.Clean(figure.Money(p.Unit.Symbol, p.Unit, m.Currency))
	return m.th.Right(s, room) + " " + m.th.Fit(u, unitRoom-1)
}

func (m *Model) gauge(p param.Param, w int) string {
	si, ok := p.Number()
	if !ok {
		return ""
	}
	return m.th.Gauge(theme.Span{Min: p.Min, Max: p.Max, UsualMin: p.TypicalMin, UsualMax: p.TypicalMax, Value: p.Unit.From(si)}, w)
}

// leastTyping is the room that a value gets while it is typed; the full label
// stands below the rows.
const leastTyping = 16

// edited is the row while its value is typed. Long texts get most of the row.
func (m *Model) edited(f Field, w int) string {
	label, _, _ := columns(w)
	name := m.th.Clean(f.Param.Label)
	if f.Param.Kind == param.KindText {
		label = min(label, theme.Width(name), 16)
	}
	unit := m.th.Clean(figure.Money(f.Param.Unit.Symbol, f.Param.Unit, m.Currency))
	if unit != "" {
		unit = " " + m.th.Cut(unit, unitRoom-1)
	}
	label = max(min(label, w-3-theme.Width(unit)-leastTyping), 4)
	room := w - 2 - label - 1 - theme.Width(unit)
	if numeric(f.Param) {
		room = min(room, 24)
	}
	return m.th.Accent.Paint(m.th.Marks.Here+" ") + m.th.Strong.Paint(m.th.Label(name, label)) + " " + m.line.View(m.th, room) + unit
}

// table is the rows of a table while they are typed, under the names of their
// columns.
func (m *Model) table(p param.Param, w int) []string {
	var names []string
	for _, c := range p.Columns {
		name := c.Label
		if c.Unit.Symbol != "" {
			name += " in " + c.Unit.Symbol
		}
		names = append(names, name)
	}
	var lines []string
	for _, l := range theme.Wrap(m.th.Clean(strings.Join(names, ", ")), w-3) {
		lines = append(lines, m.th.Strong.Paint("   "+l))
	}
	return append(lines, m.line.Table(m.th, w, max(m.roll.Room()-len(lines), 1))...)
}

func (m *Model) words(w int) []string {
	f, _ := m.field()
	lines := []string{m.th.Strong.Paint(m.th.Fit("  "+m.th.Clean(f.Param.Label)+":", w))}
	from, to := m.choice.Window()
	for i := from; i < to; i++ {
		mark, word := "    ", m.th.Clean(f.Words[i])
		if i == m.choice.Cursor {
			mark = "  " + m.th.Marks.Here + " "
		}
		if f.Words[i] == f.Param.Editable() {
			word += "  (now)"
		}
		lines = append(lines, m.th.Row(i == m.choice.Cursor, theme.Segment{Text: m.th.Fit(mark+word, w)}))
	}
	return lines
}

// about is h lines on the row under the cursor, the most pressing first.
func (m *Model) about(w, h int) []string {
	f, _ := m.field()
	lines := []string{m.th.Heading(m.th.Clean(f.Param.Label), "", w, false)}
	add := func(ink theme.Ink, s string) {
		for _, l := range theme.Wrap(m.th.Clean(s), w-4) {
			lines = append(lines, "  "+ink.Paint(l))
		}
	}
	if m.refusal != "" {
		for i, l := range theme.Wrap(m.th.Clean(m.refusal), w-4) {
			mark := "  "
			if i == 0 {
				mark = "! "
			}
			lines = append(lines, m.th.Fails.Paint(mark+l))
		}
	}
	for _, s := range m.facts(f, w) {
		add(theme.Ink{}, s)
	}
	if m.state == resting && f.Reference != "" {
		add(theme.Ink{}, m.Against+" has "+f.Reference)
	}
	if len(lines) > h {
		lines = lines[:h]
	}
	return lines
}
