package sidebyside

import (
	"backspan/tui/components/figure"
	"backspan/tui/theme"
)

// View shows the page.
func (m *Model) View() []string {
	if len(m.desk.Study().Variants) == 0 {
		return []string{m.th.Heading("Side by side", "", m.w, true), "", "  no variants to lay side by side yet"}
	}
	c := m.columns()
	title := "Side by side"
	if m.differences {
		title += ", only what differs"
	}
	lines := []string{m.th.Heading(title, m.note(c), m.w, true), m.heads(c)}
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.line(m.rows[i], c, i == m.roll.Cursor))
	}
	for len(lines) < m.h-m.detail() {
		lines = append(lines, "")
	}
	return append(lines, m.about()...)
}

// heads names the variants over their columns; the one in hand has a mark.
func (m *Model) heads(c columns) string {
	key := "  " + m.th.Marks.Better + " best  " + m.th.Marks.Worse + " worst"
	if c.each >= leastForBars {
		key += "  " + m.th.Marks.Bar + " change"
	}
	s := m.th.Quiet.Paint(m.th.Fit(key, c.label))
	study := m.desk.Study()
	for i := m.first; i < m.first+c.shown && i < len(study.Variants); i++ {
		name, ink := m.th.Clean(study.Variants[i].Name), m.th.Strong
		if i == study.ReferenceIndex() {
			name = m.th.Short(name, c.each-7) + " ref"
		}
		if i == m.desk.Selected {
			name, ink = m.th.Marks.Here+" "+name, m.th.Accent
		}
		s += ink.Paint(m.th.Right(name, c.each-1)) + " "
	}
	return s
}

func (m *Model) line(r row, c columns, here bool) string {
	if r.group != "" {
		return m.heading(r, here)
	}
	mark := "  "
	if here {
		mark = m.th.Marks.Here + " "
	}
	unit := 0
	if r.unit != "" {
		unit = theme.Width(r.unit) + 1
	}
	segs := []theme.Segment{
		{Ink: m.th.Accent, Text: mark},
		{Text: m.th.Label(m.th.Clean(r.label), c.label-2-unit)},
		{Ink: m.th.Quiet, Text: m.th.Right(r.unit, unit)},
	}
	for i := m.first; i < m.first+c.shown && i < len(r.cells); i++ {
		segs = append(segs, m.cell(r, r.cells[i], c.each)...)
	}
	return m.th.Row(here, segs...)
}

// changeRoom is what the difference from the reference takes in a column.
const changeRoom = 8

// cell is laid out as figure, difference, bar and mark; words alone take the
// room of all.
func (m *Model) cell(r row, k cell, w int) []theme.Segment {
	if !r.figures {
		return []theme.Segment{{Text: m.th.Right(k.text, w-2) + "  "}}
	}
	mark := k.mark
	if mark == "" {
		mark = " "
	}
	if k.change == "" && theme.Width(k.text) > w-2-changeRoom {
		return []theme.Segment{{Text: m.th.Right(k.text, w-2)}, {Ink: k.ink, Text: " " + mark}}
	}
	change := figure.Rounded(k.change, changeRoom-1)
	bar := ""
	if free := w - 2 - theme.Width(k.text) - max(changeRoom, theme.Width(change)+1); r.bars && w >= leastForBars && free > barCells {
		bar = " " + m.th.Fit(m.bar(k.share), barCells)
	}
	room := wide(change, changeRoom, w-2-theme.Width(k.text)-theme.Width(bar))
	return []theme.Segment{
		{Text: m.th.Right(k.text, w-2-room-theme.Width(bar))},
		{Ink: m.th.Quiet, Text: " " + m.th.Right(change, room-1)},
		{Ink: m.th.Quiet, Text: bar},
		{Ink: k.ink, Text: " " + mark},
	}
}

// wide is the room for a change and a gap before it: what is usual, or more for
// words that are longer, while there is some.
func wide(change string, usual, most int) int {
	return max(usual, min(theme.Width(change)+1, most))
}

// about tells of the cell under the cursor: its row, in the variant in hand.
func (m *Model) about() []string {
	h := m.detail()
	if m.roll.Cursor >= len(m.rows) {
		return nil
	}
	r := m.rows[m.roll.Cursor]
	if m.desk.Selected >= len(r.cells) {
		return nil
	}
	lines := []string{m.th.Heading(m.th.Clean(m.desk.Study().Variants[m.desk.Selected].Name), "", m.w, false)}
	for _, s := range r.cells[m.desk.Selected].facts {
		for _, l := range theme.Wrap(m.th.Clean(s), m.w-4) {
			lines = append(lines, "  "+l)
		}
	}
	if len(lines) > h {
		lines = lines[:h]
	}
	return lines
}
