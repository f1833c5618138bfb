package why

import (
	"cmp"
	"fmt"
	"strings"

	"backspan/model/explore"
	"backspan/tui/components/figure"
	"backspan/tui/theme"
)

// View shows the page.
func (m *Model) View() []string {
	lines := []string{m.th.Heading("Why, in "+m.th.Clean(m.desk.InHand()), m.roll.Note(), m.w, true)}
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.line(m.lines[i], i == m.roll.Cursor))
	}
	d := m.detail()
	for len(lines) < m.h-d {
		lines = append(lines, "")
	}
	return append(lines, m.about(d)...)
}

func (m *Model) line(l line, here bool) string {
	switch {
	case l.mover != nil:
		return m.moverRow(*l.mover, here)
	case l.cure != nil:
		return m.cureRow(*l.cure, here)
	case l.said:
		return m.th.Row(here, m.mark(here), theme.Segment{Ink: l.ink, Text: l.text})
	}
	return l.ink.Paint(m.th.Cut(l.text, m.w))
}

func (m *Model) mark(here bool) theme.Segment {
	if here {
		return theme.Segment{Ink: m.th.Accent, Text: m.th.Marks.Here + " "}
	}
	return theme.Segment{Text: "  "}
}

// columns is how a mover's row is divided.
type columns struct{ label, set, step, effect, origin int }

func (m *Model) columns() columns {
	c := columns{set: 12, step: 9, effect: 12}
	switch {
	case m.w < 76:
		c = columns{set: 11, step: 8, effect: 11}
	case m.w >= 112:
		c.origin = min(m.w-82, 44)
	}
	c.label = min(m.w-2-c.set-c.step-2*c.effect-c.origin, 40)
	return c
}

func (m *Model) heads() string {
	c := m.columns()
	up, down := "a step up", "one down"
	if c.effect < 12 {
		up, down = "up", "down"
	}
	s := m.th.Fit("", 2+c.label) + m.th.Right("now", c.set-1) + m.th.Right("step", c.step) +
		m.th.Right(up+"  ", c.effect) + m.th.Right(down+"  ", c.effect)
	if c.origin > 0 {
		s += " where the default is from"
	}
	return s
}

func (m *Model) moverRow(v explore.Mover, here bool) string {
	c := m.columns()
	label := v.Label
	if v.Shared {
		label += " (all)"
	}
	set := m.th.Clean(figure.InCurrency(v.Set, m.currency()))
	segs := []theme.Segment{m.mark(here),
		{Text: m.th.Label(m.th.Clean(label), c.label)},
		{Text: m.th.Right(set, c.set-1)},
		{Ink: m.th.Quiet, Text: m.th.Right(m.th.Clean(v.Step), c.step)},
		m.effect(v.More, c.effect), m.effect(v.Less, c.effect)}
	if c.origin > 0 {
		segs = append(segs, theme.Segment{Ink: m.th.Quiet, Text: " " + m.th.Fit(m.th.Clean(cmp.Or(v.Origin, own)), c.origin-1)})
	}
	return m.th.Row(here, segs...)
}

// own stands where a value has no other source than the person.
const own = "yours to set"

// origin is where a default comes from, in words.
func origin(s string) string {
	if s == "" {
		return own
	}
	return "default: " + s
}

func (m *Model) cureRow(c explore.Cure, here bool) string {
	const verdict = 13
	worse, other := 15, "other "
	if m.w < 76 {
		worse, other = 8, ""
	}
	shape, ink := m.th.Verdict(c.Check.Verdict)
	others := "no " + other + "worse"
	if n := len(c.Worse); n > 0 {
		others = fmt.Sprintf("%d %sworse", n, other)
	}
	span := m.th.Clean(c.From + " → " + c.To)
	value := max(min(30, m.w/3), theme.Width(span)+1)
	label := min(m.w-2-value-2-verdict-1-worse, 40)
	return m.th.Row(here, m.mark(here),
		theme.Segment{Text: m.th.Label(m.th.Clean(c.Label), label)},
		theme.Segment{Text: m.th.Right(span, value)},
		theme.Segment{Ink: ink, Text: "  " + shape + " " + m.th.Fit(string(c.Check.Verdict)+" "+c.Check.MarginText(), verdict-2)},
		theme.Segment{Ink: m.th.Quiet, Text: " " + m.th.Fit(others, worse)})
}

// about is h lines on the row under the cursor.
func (m *Model) about(h int) []string {
	l := m.at()
	var title string
	var facts []string
	switch {
	case l.mover != nil:
		title, facts = l.mover.Section+": "+l.mover.Label, m.moverFacts(*l.mover)
	case l.cure != nil:
		title, facts = l.cure.Section+": "+l.cure.Label, m.cureFacts(*l.cure)
	default:
		return nil
	}
	lines := []string{m.th.Heading(m.th.Clean(title), "", m.w, false)}
	for _, f := range facts {
		for _, s := range theme.Wrap(m.th.Clean(f), m.w-4) {
			lines = append(lines, "  "+s)
		}
	}
	return lines[:min(len(lines), h)]
}

func (m *Model) moverFacts(v explore.Mover) []string {
	facts := []string{m.sentence(v)}
	now := figure.InCurrency(v.Set, m.currency()) + " now; " + origin(v.Origin)
	if v.Shared {
		now += "; shared by all variants"
	}
	facts = append(facts, now)
	if v.Help != "" {
		facts = append(facts, v.Help)
	}
	return facts
}

func (m *Model) cureFacts(c explore.Cure) []string {
	then := "with " + c.To + " it " + string(c.Check.Verdict)
	if c.Check.Valued {
		then += ": " + figure.Limit(c.Check, false, m.currency())
	}
	worse := "no other check gets worse"
	if len(c.Worse) > 0 {
		worse = "worse then: " + strings.Join(c.Worse, ", ")
	}
	return []string{then + "; a tries it as a new variant", worse, origin(c.Origin)}
}

// Point takes a cell of the page that was pointed at; again is true when its row
// is the one under the cursor already.
func (m *Model) Point(_, y int) (again bool) { return m.roll.Point(y - 1) }
