package raster

import (
	"math"

	"backspan/tui/theme"
)

// Stroke is how a line is drawn, told apart without colour.
type Stroke int

// The strokes.
const (
	Solid Stroke = iota
	Dashed
	Dotted
	Chain // long and short by turns, as an axis
)

// patterns are the strokes as what is drawn and what is left out of each turn,
// in dots. The longest stretch of a stroke stays under four cells, so that a
// short line still shows which it is.
var patterns = [...]string{Solid: "#", Dashed: "####..", Dotted: "#..", Chain: "######..#.."}

// plain are the same in ASCII, a cell each.
var plain = [...]string{Solid: "#", Dashed: "#.", Dotted: "#", Chain: "##."}

// Pen draws lines.
type Pen struct {
	Stroke Stroke
	Ink    theme.Ink
}

// Path draws a line through points of x and y in cells. The pattern of the
// stroke runs on across the corners.
func (c *Canvas) Path(p Pen, points ...[2]float64) {
	phase := 0
	for i := 1; i < len(points); i++ {
		phase = c.segment(p, points[i-1], points[i], phase)
	}
}

func (c *Canvas) segment(p Pen, a, b [2]float64, phase int) int {
	across, down := 2.0, 4.0
	pattern := patterns[p.Stroke]
	if c.ascii {
		across, down = 1, 1
		pattern = plain[p.Stroke]
	}
	a, b, ok := c.clip(a, b)
	if !ok {
		return phase
	}
	dx, dy := (b[0]-a[0])*across, (b[1]-a[1])*down
	steps := int(math.Ceil(math.Max(math.Abs(dx), math.Abs(dy))))
	glyph := direction(b[0]-a[0], b[1]-a[1], p.Stroke)
	for i := range steps + 1 {
		t := 0.0
		if steps > 0 {
			t = float64(i) / float64(steps)
		}
		if i > 0 || phase == 0 {
			phase++ // the first dot of a corner is the last of the line before
		}
		if pattern[(phase-1)%len(pattern)] == '#' {
			c.dot(p, int(math.Floor(a[0]*across+t*dx)), int(math.Floor(a[1]*down+t*dy)), glyph)
		}
	}
	return phase
}

// clip keeps what lies on the canvas. Source: Liang and Barsky 1984.
func (c *Canvas) clip(a, b [2]float64) (from, to [2]float64, ok bool) {
	t0, t1 := 0.0, 1.0
	d := [2]float64{b[0] - a[0], b[1] - a[1]}
	for i, most := range [2]float64{float64(c.w), float64(c.h)} {
		for _, e := range [2][2]float64{{-d[i], a[i]}, {d[i], most - a[i]}} {
			switch {
			case !(e[0] < 0 || e[0] > 0):
				if e[1] < 0 {
					return a, b, false
				}
			case e[0] < 0:
				t0 = math.Max(t0, e[1]/e[0])
			default:
				t1 = math.Min(t1, e[1]/e[0])
			}
		}
	}
	at := func(t float64) [2]float64 { return [2]float64{a[0] + t*d[0], a[1] + t*d[1]} }
	return at(t0), at(t1), t0 <= t1
}

// dot sets a dot, or in ASCII a stroke, at a place in dots. What lies on the
// far edge belongs to the last cell.
func (c *Canvas) dot(p Pen, x, y int, glyph rune) {
	across, down := 2, 4
	if c.ascii {
		across, down = 1, 1
	}
	x, y = min(x, across*c.w-1), min(y, down*c.h-1)
	if x < 0 || y < 0 {
		return
	}
	k := &c.cells[y/down*c.w+x/across]
	if k.text {
		return
	}
	k.ink = p.Ink
	if c.ascii {
		k.glyph = joined(k.glyph, glyph)
		return
	}
	k.dots |= bits[y%4][x%2]
}

var bits = [4][2]uint8{{0x01, 0x08}, {0x02, 0x10}, {0x04, 0x20}, {0x40, 0x80}}

// direction is the ASCII character for a stroke by its slope; a cell is twice
// as high as it is wide.
func direction(dx, dy float64, s Stroke) rune {
	dy *= 2
	flat, steep := math.Abs(dy) < 0.5*math.Abs(dx), math.Abs(dx) < 0.5*math.Abs(dy)
	switch {
	case s == Dotted && steep:
		return ':'
	case s == Dotted:
		return '.'
	case flat:
		return '-'
	case steep:
		return '|'
	case dx*dy > 0:
		return '\\'
	}
	return '/'
}

// joined is the character where two strokes meet.
func joined(a, b rune) rune {
	if a == '-' && b == '|' || a == '|' && b == '-' || a == '+' && (b == '-' || b == '|') {
		return '+'
	}
	if a != 0 && (b == '.' || b == ':') {
		return a
	}
	return b
}
