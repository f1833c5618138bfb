package raster

import (
	"math"

	"backspan/tui/theme"
)

// Measure draws a dimension line in a row, from one place to another in
// columns, with its figure inside or, where that is too narrow, behind it, or
// before it. A line that leaves the canvas has no end there.
func (c *Canvas) Measure(row int, from, to float64, figure string, ink, word theme.Ink) {
	if to < from {
		from, to = to, from
	}
	first, last := int(math.Round(from)), int(math.Round(to))-1
	if row < 0 || row >= c.h || first >= c.w || last < 0 {
		return
	}
	left, rule, right, both := "├", "─", "┤", "│"
	if c.ascii {
		left, rule, right, both = "|", "-", "|", "|"
	}
	for x := max(first, 0); x <= min(last, c.w-1); x++ {
		glyph := rule
		switch {
		case first >= last:
			glyph = both
		case x == first:
			glyph = left
		case x == last:
			glyph = right
		}
		c.Mark(x, row, glyph, ink)
	}
	if last <= first {
		last = first
		c.Mark(first, row, both, ink)
	}
	n, room := theme.Width(figure), min(last, c.w-1)-max(first, 0)-1
	switch {
	case n == 0:
	case room >= n+2:
		c.over(max(first, 0)+1+(room-n-2)/2, row, " "+figure+" ", word)
	case room >= n:
		c.over(max(first, 0)+1+(room-n)/2, row, figure, word)
	case !c.Put(last+2, row, figure, word):
		c.Put(first-1-n, row, figure, word)
	}
}

func (c *Canvas) over(col, row int, s string, ink theme.Ink) {
	for i, r := range []rune(s) {
		c.Mark(col+i, row, string(r), ink)
	}
}
