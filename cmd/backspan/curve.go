package main

import (
	"bytes"
	"math"

	"backspan/model/explore"
	"backspan/model/param"
)

// curveWidth is the room for the marks, in characters. A blank would not keep
// its place in Markdown.
const (
	curveWidth = 32
	nothing    = '.'
)

// curve draws the figures of a chart as marks on lines of plain ASCII, one line
// a ratio: read it from top to bottom.
type curve struct{ marks []mark }

type mark struct {
	letter        byte
	of            func(explore.Ratio) param.Slot
	least, utmost float64
}

func newCurve(points []explore.Ratio) curve {
	c := curve{[]mark{
		{letter: 'm', of: func(p explore.Ratio) param.Slot { return p.TipMach }},
		{letter: 'c', of: func(p explore.Ratio) param.Slot { return p.Climb }},
		{letter: 'T', of: func(p explore.Ratio) param.Slot { return p.Thrust }},
	}}
	for i := range c.marks {
		m := &c.marks[i]
		m.least, m.utmost = math.Inf(1), math.Inf(-1)
		for _, p := range points {
			if s := m.of(p); s.Known {
				m.least, m.utmost = math.Min(m.least, s.Value), math.Max(m.utmost, s.Value)
			}
		}
	}
	return c
}

func (c curve) head() string { return "least" + string(empty(curveWidth-len("leastmost"))) + "most" }

func (c curve) line(p explore.Ratio) string {
	line := empty(curveWidth)
	for _, m := range c.marks {
		s := m.of(p)
		if !s.Known || !(m.utmost > m.least) {
			continue
		}
		i := int(math.Round((s.Value - m.least) / (m.utmost - m.least) * (curveWidth - 1)))
		if line[i] != nothing {
			line[i] = '*'
			continue
		}
		line[i] = m.letter
	}
	return string(line)
}

func empty(n int) []byte { return bytes.Repeat([]byte{nothing}, n) }
