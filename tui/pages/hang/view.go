package hang

import (
	"fmt"
	"strings"

	"backspan/model/explore"
	"backspan/model/reading"
	"backspan/tui/components/figure"
	"backspan/tui/theme"
)

// View shows the page.
func (m *Model) View() []string {
	lines := []string{m.th.Heading("What hangs on it, in "+m.th.Clean(m.desk.InHand()), m.roll.Note(), m.w, true)}
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.row(m.rows[i], i == m.roll.Cursor))
	}
	return lines
}

// write lays the page out anew; the cursor stays on its row.
func (m *Model) write() {
	m.rows = nil
	p, there := m.param()
	if there {
		m.say(m.th.Strong, p.Label+": "+figure.Money(p.Show(), p.Unit, m.desk.Study().Currency))
		if p.Guidance != "" {
			m.say(theme.Ink{}, p.Guidance)
		}
		if p.Origin != "" {
			m.say(theme.Ink{}, "default: "+p.Origin)
		}
	}
	m.say(theme.Ink{}, "")
	switch {
	case !there:
		m.say(theme.Ink{}, "This machine has no such value.")
	case m.fault != "":
		m.say(m.th.Fails, "! "+m.fault)
	case m.found == nil:
		m.say(m.th.Quiet, m.doing)
	case m.none:
		m.say(theme.Ink{}, "Only numbers are stepped; not words, texts, tables and what is left empty.")
	default:
		m.writeFound()
	}
	m.roll.Set(len(m.rows), func(i int) bool { return !m.rows[i].rests() })
	m.roll.Height(m.h - 1)
}

func (m *Model) writeFound() {
	h := m.found
	m.say(m.th.Strong, "A step of "+h.Step+", up and down")
	m.rows = append(m.rows, row{text: m.heads(), ink: m.th.Quiet})
	for i := range h.First {
		m.rows = append(m.rows, row{moved: &h.First[i]})
	}
	m.say(theme.Ink{}, "")
	if len(h.Turned) > 0 {
		m.say(m.th.Strong, "turns the verdict of")
		for i := range h.Turned {
			m.rows = append(m.rows, row{turned: &h.Turned[i]})
		}
		m.say(theme.Ink{}, "")
	}
	switch n := len(h.Moved); n {
	case 0:
		m.say(theme.Ink{}, "moves no other reading")
	default:
		m.say(m.th.Strong, fmt.Sprintf("moves %d others, the most by their own measure first", n))
	}
	for i := range h.Moved {
		m.rows = append(m.rows, row{moved: &h.Moved[i]})
	}
}

func (m *Model) say(ink theme.Ink, s string) {
	lines := theme.Wrap(m.th.Clean(s), max(m.w-2, 20))
	if s == "" {
		lines = []string{""}
	}
	for _, l := range lines {
		m.rows = append(m.rows, row{text: "  " + l, ink: ink})
	}
}

// columns is how a reading's row is divided.
func (m *Model) columns() (label, now, effect int) {
	now, effect = 15, 14
	return min(m.w-2-now-2*effect, 48), now, effect
}

func (m *Model) heads() string {
	label, now, effect := m.columns()
	return m.th.Fit("", 2+label) + m.th.Right("now", now) + m.th.Right("a step up  ", effect) + m.th.Right("one down  ", effect)
}

func (m *Model) row(r row, here bool) string {
	mark := theme.Segment{Text: "  "}
	if here {
		mark = theme.Segment{Ink: m.th.Accent, Text: m.th.Marks.Here + " "}
	}
	switch {
	case r.moved != nil:
		label, now, effect := m.columns()
		return m.th.Row(here, mark, theme.Segment{Text: m.th.Label(m.th.Clean(r.moved.Reading.Label), label)},
			theme.Segment{Text: m.th.Right(m.th.Clean(figure.Text(r.moved.Reading, m.desk.Study().Currency)), now)},
			m.effect(*r.moved, r.moved.More, effect), m.effect(*r.moved, r.moved.Less, effect))
	case r.turned != nil:
		label, _, _ := m.columns()
		return m.th.Row(here, append([]theme.Segment{mark, {Text: m.th.Label(m.th.Clean(r.turned.Check.Label), label)}}, m.turns(*r.turned)...)...)
	}
	return r.ink.Paint(m.th.Cut(r.text, m.w))
}

// turns says which way a verdict turns.
func (m *Model) turns(t explore.Turned) []theme.Segment {
	verdict := func(v reading.Verdict) theme.Segment {
		mark, ink := m.th.Verdict(v)
		return theme.Segment{Ink: ink, Text: mark + " " + string(v)}
	}
	segs := []theme.Segment{{Text: " "}, verdict(t.Check.Verdict)}
	if t.More != t.Check.Verdict {
		segs = append(segs, theme.Segment{Ink: m.th.Quiet, Text: ", up "}, verdict(t.More))
	}
	if t.Less != t.Check.Verdict {
		segs = append(segs, theme.Segment{Ink: m.th.Quiet, Text: ", down "}, verdict(t.Less))
	}
	return segs
}

// effect is what a step does to a reading, in a column of w cells.
func (m *Model) effect(v explore.Moved, e explore.Effect, w int) theme.Segment {
	if !e.Change.Known {
		why := e.Why
		if why == "" {
			why = "-" // it has no figure now either
		}
		return theme.Segment{Ink: m.th.Quiet, Text: m.th.Right(strings.TrimPrefix(strings.TrimSuffix(why, " then"), "the ")+"  ", w)}
	}
	then := v.Reading
	then.Value += e.Change.Value
	sign := 0
	if e.Change.Value != 0 {
		sign = v.Reading.Improves(then)
	}
	return theme.Segment{Ink: m.th.Merit(sign), Text: m.th.Right(m.th.Clean(m.change(v.Reading, e.Change.Value)), w-2) + " " + m.th.MeritMark(sign)}
}

// change is what became of a reading: as a share, where a share means something.
// Of a figure below zero more could be taken for less.
func (m *Model) change(r reading.Reading, x float64) string {
	if r.Value > 0 && explore.Sharable(r.Unit) {
		return figure.Percent(x/r.Value) + " %"
	}
	return figure.Step(x, r.Unit, m.desk.Study().Currency)
}

// Text is the row under the cursor for a clipboard.
func (m *Model) Text() string {
	switch r := m.at(); {
	case r.moved != nil:
		v := r.moved
		label := v.Reading.Label + "\t" + figure.Text(v.Reading, m.desk.Study().Currency)
		return label + "\t" + strings.TrimSpace(m.effect(*v, v.More, 20).Text) + "\t" + strings.TrimSpace(m.effect(*v, v.Less, 20).Text)
	case r.turned != nil:
		t := r.turned
		return strings.Join([]string{t.Check.Label, string(t.Check.Verdict), string(t.More), string(t.Less)}, "\t")
	}
	return ""
}
