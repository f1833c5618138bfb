// Package headline is the strip that never scrolls away: the figures a builder
// decides by, and the worst check.
package headline

import (
	"fmt"
	"strings"

	"backspan/model"
	"backspan/model/reading"
	"backspan/tui/components/figure"
	"backspan/tui/theme"
)

// figures are the readings of the strip, with a short and a full name.
var figures = []struct{ key, short, full string }{
	{"stack.depth", "depth", "depth to propeller plate"},
	{"stack.mass_ready", "mass", "ready mass"},
	{"carry.equivalent_mass", "feels", "feels like"},
	{"propeller.static_thrust", "thrust", "standing thrust"},
	{"flight.climb_rate", "climb", "climb"},
}

// Strip is what it shows, written out when the facts change and not when the
// screen is painted.
type Strip struct {
	th    *theme.Theme
	cells []cell
	worst string
	was   string // the worst check before the last edit, when it is another
	ink   theme.Ink
	tally string
}

type cell struct {
	short, full   string
	number, units string
	change        figure.Change
}

// New takes the facts: the variant in hand, now and before the last edit.
func New(t *theme.Theme, now, earlier model.Outcome) Strip {
	s := Strip{th: t}
	for _, f := range figures {
		r, ok := now.Reading(f.key)
		c := cell{short: f.short, full: f.full, number: "not rated"}
		if ok && r.Known() {
			c.number, c.units = r.Unit.Number(r.Value), t.Clean(r.Unit.Symbol)
			if was, ok := earlier.Reading(f.key); ok {
				c.change = figure.Between(was, r)
			}
		}
		s.cells = append(s.cells, c)
	}
	w, ok := now.Worst()
	if !ok {
		s.worst = "no checks"
		return s
	}
	shape, ink := t.Verdict(w.Verdict)
	s.ink = ink
	s.worst = shape + " worst check " + string(w.Verdict) + ": " + t.Clean(w.Label)
	if w.Verdict == reading.Holds {
		s.worst = shape + " every check holds; closest: " + t.Clean(w.Label)
	}
	if was, ok := earlier.Worst(); ok && (was.Key != w.Key || was.Verdict != w.Verdict) {
		s.was = " (was " + string(was.Verdict) + ": " + t.Clean(was.Label) + ")"
	}
	s.tally = tally(now.Checks)
	return s
}

func tally(cs []reading.Check) string {
	return fmt.Sprintf("%d fail, %d thin, %d hold, %d not rated", reading.Count(cs, reading.Fails),
		reading.Count(cs, reading.Thin), reading.Count(cs, reading.Holds), reading.Count(cs, reading.NotRated))
}

// Height is how many lines the strip takes in w cells.
func Height(w int) int {
	if w < oneLine {
		return 3
	}
	return 2
}

// oneLine is the width from which figures and changes share a line.
const oneLine = 120

// View shows the strip in w cells.
func (s Strip) View(w int) []string {
	if len(s.cells) == 0 {
		return make([]string, Height(w))
	}
	each := w / len(s.cells)
	var lines []string
	if w >= oneLine {
		lines = []string{s.row(each, func(c cell) []theme.Segment { return append(s.value(c, each), s.change(c, each, true)...) })}
	} else {
		lines = []string{
			s.row(each, func(c cell) []theme.Segment { return s.value(c, each) }),
			s.row(each, func(c cell) []theme.Segment { return s.change(c, each, false) }),
		}
	}
	return append(lines, s.judgement(w))
}

func (s Strip) row(each int, write func(cell) []theme.Segment) string {
	var b strings.Builder
	for _, c := range s.cells {
		segs, used := write(c), 0
		for i, g := range segs {
			segs[i].Text = s.th.Cut(g.Text, each-1-used)
			used += theme.Width(segs[i].Text)
		}
		b.WriteString(s.th.Row(false, segs...))
		b.WriteString(strings.Repeat(" ", each-used))
	}
	return strings.TrimRight(b.String(), " ")
}

// value names and gives a figure; the unit goes where it does not fit.
func (s Strip) value(c cell, each int) []theme.Segment {
	name := c.short
	if each >= 46 {
		name = c.full
	}
	number := c.number
	if c.units != "" && theme.Width(name+" "+number+" "+c.units) < each {
		number += " " + c.units
	}
	return []theme.Segment{{Ink: s.th.Quiet, Text: name + " "}, {Ink: s.th.Strong, Text: number}}
}

// change gives the step since the last edit, under the figure or behind it.
func (s Strip) change(c cell, each int, behind bool) []theme.Segment {
	if c.change.Text == "" {
		return nil
	}
	text := strings.TrimRight(c.change.Text+" "+s.th.MeritMark(c.change.Sign), " ")
	word := theme.MeritWord(c.change.Sign)
	if word != "" && (each >= 28 || !behind && each >= theme.Width(text)+len(word)+4) {
		text += " " + word
	}
	lead := "  "
	if !behind && each >= 16 {
		lead = ""
	}
	return []theme.Segment{{Text: lead}, {Ink: s.th.Merit(c.change.Sign), Text: text}}
}

// judgement is the worst check, then as much else as fits beside it.
func (s Strip) judgement(w int) string {
	line := s.ink.Paint(s.th.Cut(s.worst, w))
	room := w - theme.Width(s.worst)
	tail := "  " + s.tally
	if theme.Width(s.was+tail) <= room {
		return line + s.was + s.th.Quiet.Paint(s.th.Right(tail, room-theme.Width(s.was)))
	}
	if theme.Width(s.was) <= room {
		return line + s.was
	}
	return line
}
