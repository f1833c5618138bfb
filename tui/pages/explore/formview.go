package explore

import (
	"backspan/tui/theme"
)

// fields shows the question in w x h cells: what it asks, its fields, and what
// is to be known of the one under the cursor.
func (m *Model) fields(w, h int) []string {
	f := m.form()
	var lines []string
	for _, l := range theme.Wrap(leads[m.at], w-2) {
		lines = append(lines, " "+m.th.Quiet.Paint(l))
	}
	detail := m.detail(w)
	most := min(max(h/3, 3), 8)
	if len(detail) > most {
		detail = detail[:most]
	}
	const tall = 14 // from here on the rows do not move when more or less is told below
	if h < tall {
		most = len(detail)
	}
	room := max(h-len(lines)-most, 1)
	f.roll.Height(room)
	f.top = 1 + len(lines)
	from, to := f.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.spotRow(i, w))
	}
	for len(lines) < h-len(detail) {
		lines = append(lines, "")
	}
	return append(lines, detail...)
}

// spotRow is one row of the form.
func (m *Model) spotRow(i, w int) string {
	f, s := m.form(), m.form().spots[i]
	here := i == f.roll.Cursor && !m.reading
	mark := m.mark(i == f.roll.Cursor, !m.reading)
	if s.asks {
		k := m.keys.Explore
		text := "work it out (" + k.Ask.Help().Key + ", from anywhere on this page)"
		if m.answer() != nil {
			text = "work it out again (" + k.Ask.Help().Key + "); " + k.Turn.Help().Key + " leads to the answer"
		}
		return m.th.Row(here, theme.Segment{Ink: m.th.Accent, Text: mark}, theme.Segment{Ink: m.th.Strong, Text: m.th.Fit(text, w-2)})
	}
	t := traits[s.role]
	const word = 12
	typed := min(max(w/3, 18), 34)
	label := w - 2 - word - typed
	segs := []theme.Segment{{Ink: m.th.Accent, Text: mark}, {Ink: m.th.Quiet, Text: m.th.Fit(t.word, word)}}
	switch {
	case s.field < 0:
		return m.th.Row(here, append(segs, theme.Segment{Ink: m.th.Quiet, Text: m.th.Fit(" + "+t.more, w-2-word)})...)
	case t.from == nothing:
		label, typed = 0, w-2-word
	case !t.text:
		label, typed = w-2-word, 0
	}
	x := f.fields[s.field]
	if label > 0 {
		name := m.th.Clean(x.label(m.base()))
		segs = append(segs, theme.Segment{Text: m.cell(name, label, here && !f.onText())})
	}
	if typed > 0 && f.state == typing && here {
		return m.th.Row(false, segs...) + f.line.View(m.th, typed)
	}
	return m.th.Row(here, append(segs, theme.Segment{Text: m.cell(m.th.Clean(x.text), typed, here && f.onText())})...)
}

// cell is one of the two that Enter may set, in brackets when it would.
func (m *Model) cell(s string, w int, inHand bool) string {
	switch {
	case w <= 0:
		return ""
	case inHand:
		return "[" + m.th.Label(s, w-2) + "]"
	}
	return " " + m.th.Label(s, w-2) + " "
}

// detail is what is to be known of the row under the cursor.
func (m *Model) detail(w int) []string {
	f, s := m.form(), m.form().here()
	var lines []string
	say := func(ink theme.Ink, lead, text string) {
		for i, l := range theme.Wrap(m.th.Clean(text), w-4) {
			if i > 0 {
				lead = "  "
			}
			lines = append(lines, ink.Paint(lead+l))
		}
	}
	if f.refusal != "" {
		say(m.th.Fails, "! ", f.refusal)
	} else if s.field >= 0 && f.state == resting {
		if err := f.fields[s.field].check(m.base()); err != nil {
			say(m.th.Fails, "! ", err.Error())
		}
	}
	if s.field < 0 {
		return lines
	}
	if f.state == typing {
		say(m.th.Quiet, "  ", "Enter accepts, Esc leaves it as it was")
	}
	x := f.fields[s.field]
	if how := traits[s.role].how; how != "" {
		say(theme.Ink{}, "  ", how)
	}
	for _, fact := range x.facts(m.base()) {
		say(m.th.Quiet, "  ", fact)
	}
	return lines
}
