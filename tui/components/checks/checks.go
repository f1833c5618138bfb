// Package checks is the pane of readings held against limits, worst first.
package checks

import (
	"slices"
	"strings"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model/reading"
	"backspan/tui/components/figure"
	"backspan/tui/components/roll"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// Model is the pane.
type Model struct {
	th       *theme.Theme
	walk     keymap.Walk
	currency string
	checks   []reading.Check
	earlier  map[string]reading.Verdict
	roll     roll.Model
	height   int
	focus    bool
}

// New makes an empty pane.
func New(t *theme.Theme, k keymap.Walk) Model { return Model{th: t, walk: k} }

// Set gives the checks, and those before the last edit. The cursor stays on
// its check.
func (m *Model) Set(now, earlier []reading.Check, currency string) {
	was := m.at().Key
	m.checks, m.currency = slices.Clone(now), currency
	slices.SortStableFunc(m.checks, func(a, b reading.Check) int {
		switch {
		case a.Verdict.Worse(b.Verdict):
			return -1
		case b.Verdict.Worse(a.Verdict):
			return 1
		}
		return 0
	})
	m.earlier = make(map[string]reading.Verdict, len(earlier))
	for _, c := range earlier {
		m.earlier[c.Key] = c.Verdict
	}
	m.roll.Set(len(m.checks), nil)
	for i, c := range m.checks {
		if c.Key == was {
			m.roll.To(i)
		}
	}
	m.Size(m.height, m.focus)
}

func (m *Model) at() reading.Check {
	if m.roll.Cursor >= len(m.checks) {
		return reading.Check{}
	}
	return m.checks[m.roll.Cursor]
}

// Update moves the cursor; false when the key means something else.
func (m *Model) Update(msg tea.KeyMsg) bool { return m.roll.Update(msg, m.walk) }

// Size gives the pane's height, heading included, and whether it has the
// focus, because the check under the cursor then takes some lines.
func (m *Model) Size(h int, focus bool) {
	if focus && !m.focus {
		m.roll.Offset = 0
	}
	m.height, m.focus = h, focus
	m.roll.Height(h - 1 - m.detail())
}

func (m *Model) detail() int {
	if !m.focus || len(m.checks) == 0 {
		return 0
	}
	return min(max(m.height*2/5, 4), 9)
}

// View shows the pane.
func (m *Model) View(w int) []string {
	lines := []string{m.th.Heading("Checks", m.roll.Note(), w, m.focus)}
	if len(m.checks) == 0 {
		return append(lines, "", "  "+m.th.Quiet.Paint("no variant, no checks"))
	}
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.row(m.checks[i], w, i == m.roll.Cursor))
	}
	d := m.detail()
	for len(lines) < m.height-d {
		lines = append(lines, "")
	}
	return append(lines, m.about(w, d)...)
}

func (m *Model) row(c reading.Check, w int, here bool) string {
	const verdict, margin, text = 9, 9, 24
	mark, ink := "  ", theme.Ink{}
	if here && m.focus {
		mark, ink = m.th.Marks.Here+" ", m.th.Strong
	}
	shape, colour := m.th.Verdict(c.Verdict)
	sign := m.turned(c)
	label := w - 2 - 2 - verdict - 1 - 2 - margin
	long := label >= leastLabel+text
	if long {
		label -= text + 1
	}
	segs := []theme.Segment{
		{Ink: m.th.Accent, Text: mark},
		{Ink: colour, Text: shape + " " + m.th.Fit(string(c.Verdict), verdict)},
		{Ink: m.th.Merit(sign), Text: m.th.MeritMark(sign) + " "},
		{Ink: ink, Text: m.th.Label(m.th.Clean(c.Label), label)},
	}
	if long {
		s := ""
		if c.Valued {
			s = m.th.Clean(figure.Limit(c, true, m.currency))
		}
		segs = append(segs, theme.Segment{Text: " " + m.th.Right(s, text)})
	}
	segs = append(segs, theme.Segment{Ink: ink, Text: " " + m.th.Right(tight(c.MarginText(), margin), margin)})
	return m.th.Row(here && m.focus, segs...)
}

// leastLabel is the room that labels keep before limits get a column.
const leastLabel = 28

// tight leaves the blanks out of a margin that is wider than w; a number is
// never cut.
func tight(s string, w int) string {
	if theme.Width(s) <= w {
		return s
	}
	return strings.ReplaceAll(s, " ", "")
}

// marginClause is left out where there is no margin to speak of.
func marginClause(c reading.Check) string {
	if m := c.MarginText(); m != "" {
		return ", margin " + m
	}
	return ""
}

// turned reports whether the last edit changed the verdict, and which way.
func (m *Model) turned(c reading.Check) int {
	was, ok := m.earlier[c.Key]
	switch {
	case !ok || was == c.Verdict:
		return 0
	case c.Verdict.Worse(was):
		return -1
	}
	return 1
}

// about is h lines on the check under the cursor.
func (m *Model) about(w, h int) []string {
	if h == 0 {
		return nil
	}
	c := m.at()
	lines := []string{m.th.Heading(m.th.Clean(c.Label), "", w, false)}
	for _, s := range m.facts(c) {
		for _, l := range theme.Wrap(m.th.Clean(s), w-4) {
			lines = append(lines, "  "+l)
		}
	}
	if len(lines) > h {
		lines = lines[:h]
	}
	return lines
}

// facts is all there is to say of a check, as sentences.
func (m *Model) facts(c reading.Check) []string {
	s := string(c.Verdict)
	switch {
	case c.Valued:
		s += ": " + figure.Limit(c, false, m.currency) + marginClause(c)
	case c.Why != "":
		s += ": " + c.Why
	}
	if was, ok := m.earlier[c.Key]; ok && was != c.Verdict {
		s += "; " + string(was) + " before the last edit"
	}
	facts := []string{s}
	if c.Cure != "" {
		facts = append(facts, "what helps: "+c.Cure)
	}
	if c.Origin != "" {
		facts = append(facts, "limit from: "+c.Origin)
	}
	return facts
}
