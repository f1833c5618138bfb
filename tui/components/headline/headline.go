// Package headline is the strip that never scrolls away: the figures a builder
// decides by, and the worst check.
package headline

import (
	"strings"

	"backspan/model"
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

// Keys are those readings, in the order of the strip.
func Keys() []string {
	keys := make([]string, len(figures))
	for i, f := range figures {
		keys[i] = f.key
	}
	return keys
}

// Strip is what it shows, written out when the facts change and not when the
// screen is painted.
type Strip struct {
	th        *theme.Theme
	cells     []cell
	judgement judgement
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
	s.judgement = judge(t, now.Checks, earlier.Checks)
	return s
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
	room := s.rooms(w)
	var lines []string
	if w >= oneLine {
		lines = []string{s.row(room, func(c cell, each int) []theme.Segment { return append(s.value(c, each), s.change(c, each, true)...) })}
	} else {
		lines = []string{
			s.row(room, s.value),
			s.row(room, func(c cell, each int) []theme.Segment { return s.change(c, each, false) }),
		}
	}
	return append(lines, s.judgement.line(s.th, w))
}

// rooms is how many cells each figure gets, a blank after it included. All get
// the same; one that needs more, for its unit, takes it from those that need
// less.
func (s Strip) rooms(w int) []int {
	each := w / len(s.cells)
	room, spare, short := make([]int, len(s.cells)), 0, 0
	for i, c := range s.cells {
		room[i] = each
		if need := c.need(); need > each {
			short += need - each
		} else {
			spare += each - need
		}
	}
	spare += w + 1 - each*len(s.cells) // the last needs no blank after it
	if short == 0 || short > spare {
		return room
	}
	for i, c := range s.cells {
		if need := c.need(); need > each {
			room[i] = need
		}
	}
	short -= w + 1 - each*len(s.cells)
	for i, c := range s.cells {
		if take := min(each-c.need(), short); take > 0 {
			room[i] -= take
			short -= take
		}
	}
	return room
}

// need is what the figure takes with its short name, its unit and a blank.
func (c cell) need() int {
	n := theme.Width(c.short) + 1 + theme.Width(c.number) + 1
	if c.units != "" {
		n += theme.Width(c.units) + 1
	}
	return n
}

func (s Strip) row(room []int, write func(cell, int) []theme.Segment) string {
	var b strings.Builder
	for n, c := range s.cells {
		segs, used := write(c, room[n]), 0
		for i, g := range segs {
			segs[i].Text = s.th.Cut(g.Text, room[n]-1-used)
			used += theme.Width(segs[i].Text)
		}
		b.WriteString(s.th.Row(false, segs...))
		b.WriteString(strings.Repeat(" ", room[n]-used))
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
