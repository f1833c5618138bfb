// Package chart draws lines over common axes in character cells. Lines differ
// by stroke and by a letter set into them; colour only helps.
package chart

import (
	"math"

	"backspan/tui/raster"
	"backspan/tui/theme"
)

// Series is one line. Places are in the units of the axes.
type Series struct {
	Letter string
	Stroke raster.Stroke
	Ink    theme.Ink
	Points [][2]float64
	Loose  bool   // the points are not joined
	Marks  []Mark // later ones cover earlier ones
}

// Mark is a sign of one cell at a place.
type Mark struct {
	At   [2]float64
	Sign string
}

// At reads the line at x; false outside of it.
func (s *Series) At(x float64) (float64, bool) {
	for i := 1; i < len(s.Points); i++ {
		a, b := s.Points[i-1], s.Points[i]
		if x >= a[0] && x <= b[0] {
			if b[0] <= a[0] {
				return b[1], true
			}
			return a[1] + (b[1]-a[1])*(x-a[0])/(b[0]-a[0]), true
		}
	}
	return 0, false
}

// Chart is lines over common axes.
type Chart struct {
	Series       []Series
	XUnit, YUnit string
	Reading      float64 // x of the reading line; none when it is not a number

	x, y  axis
	left  int // column of the upright axis
	w, h  int // of the field between the axes
	th    *theme.Theme
	on    *raster.Canvas
	field *raster.Canvas
}

// Least is the smallest room, in cells, in which a chart is drawn.
const (
	LeastWidth  = 24
	LeastHeight = 5
)

// Lay fits the axes into w x h cells. It is false when there is nothing to
// draw, or no room.
func (c *Chart) Lay(t *theme.Theme, w, h int) bool {
	c.th = t
	x, y, found := c.extent()
	if !found || w < LeastWidth || h < LeastHeight {
		return false
	}
	c.h = h - 2
	c.y = wide(y[0], y[1], max(c.h/2, 2))
	c.left = max(c.y.widest(), theme.Width(c.top())) + 1
	c.w = w - c.left - 1
	c.x = tight(x[0], x[1], max(c.w/12, 2))
	return true
}

// extent is what the lines reach.
func (c *Chart) extent() (x, y [2]float64, found bool) {
	x, y = [2]float64{math.Inf(1), math.Inf(-1)}, [2]float64{math.Inf(1), math.Inf(-1)}
	for _, s := range c.Series {
		for _, p := range s.Points {
			x, y = stretch(x, p[0]), stretch(y, p[1])
			found = true
		}
	}
	return x, y, found
}

func stretch(r [2]float64, v float64) [2]float64 {
	return [2]float64{math.Min(r[0], v), math.Max(r[1], v)}
}

// Span is the range of x in sight and the number of columns it takes.
func (c *Chart) Span() (from, to float64, columns int) { return c.x.from, c.x.to, c.w }

// View draws what was laid out.
func (c *Chart) View() []string {
	c.on = raster.New(c.left+1+c.w, c.h+2, c.th.ASCII)
	c.axes()
	c.field = raster.New(c.w, c.h, c.th.ASCII)
	for i := range c.Series {
		s := &c.Series[i]
		if s.Loose {
			continue
		}
		points := make([][2]float64, len(s.Points))
		for j, p := range s.Points {
			points[j] = c.place(p)
		}
		c.field.Path(raster.Pen{Stroke: s.Stroke, Ink: s.Ink}, points...)
	}
	for i := range c.Series {
		if !c.Series[i].Loose && c.Series[i].Letter != "" {
			c.letters(&c.Series[i], i)
		}
	}
	c.marks()
	c.readingLine()
	c.grid()
	c.on.Lay(c.field, c.left+1, 0)
	return c.on.Lines()
}

// place is where a point lies in the field, in cells.
func (c *Chart) place(p [2]float64) [2]float64 {
	return [2]float64{c.x.share(p[0]) * float64(c.w), (1 - c.y.share(p[1])) * float64(c.h)}
}

func (c *Chart) cell(p [2]float64) (col, row int) {
	q := c.place(p)
	return min(max(int(q[0]), 0), c.w-1), min(max(int(q[1]), 0), c.h-1)
}

// letters are set into the line about every thirty columns, those of one line
// beside those of another.
func (c *Chart) letters(s *Series, nth int) {
	const apart = 30
	for x := (3 + 7*nth) % apart; x < c.w; x += apart {
		at := c.x.from + (float64(x)+0.5)/float64(c.w)*(c.x.to-c.x.from)
		if y, ok := s.At(at); ok {
			col, row := c.cell([2]float64{at, y})
			c.field.Mark(col, row, s.Letter, s.Ink)
		}
	}
}

func (c *Chart) marks() {
	for _, s := range c.Series {
		for _, k := range s.Marks {
			if c.x.holds(k.At[0]) && c.y.holds(k.At[1]) {
				col, row := c.cell(k.At)
				c.field.Mark(col, row, k.Sign, s.Ink)
			}
		}
	}
}

// readingLine stands in the free cells of its column.
func (c *Chart) readingLine() {
	if !(c.Reading >= c.x.from && c.Reading <= c.x.to) {
		return
	}
	col, _ := c.cell([2]float64{c.Reading, c.y.from})
	for row := range c.h {
		if c.field.Free(col, row) {
			c.field.Mark(col, row, c.th.Marks.Column, c.th.Accent)
		}
	}
}

// grid sets a point where ticks of both axes cross and nothing else is.
func (c *Chart) grid() {
	for _, x := range c.x.ticks {
		for _, y := range c.y.ticks {
			col, row := c.cell([2]float64{x, y})
			if c.field.Free(col, row) {
				c.field.Mark(col, row, c.th.Marks.Outside, c.th.Quiet)
			}
		}
	}
}

// top is the figure at the last tick of the upright axis, which names the unit.
func (c *Chart) top() string {
	text := c.y.text(c.y.ticks[len(c.y.ticks)-1])
	if c.YUnit == "" {
		return text
	}
	return text + " " + c.YUnit
}

// axes are drawn left of and below the field, with figures at their ticks.
func (c *Chart) axes() {
	quiet := c.th.Quiet
	upright, level, corner, tick, foot := "│", "─", "└", "┤", "┴"
	if c.th.ASCII {
		upright, level, corner, tick, foot = "|", "-", "+", "+", "+"
	}
	for row := range c.h {
		c.on.Mark(c.left, row, upright, quiet)
	}
	for col := range c.w {
		c.on.Mark(c.left+1+col, c.h, level, quiet)
	}
	c.on.Mark(c.left, c.h, corner, quiet)
	for i, y := range c.y.ticks {
		_, row := c.cell([2]float64{c.x.from, y})
		text := c.y.text(y)
		if i == len(c.y.ticks)-1 {
			text = c.top()
		}
		if c.on.Put(c.left-theme.Width(text), row, text, quiet) {
			c.on.Mark(c.left, row, tick, quiet)
		}
	}
	c.on.Put(c.left+1+c.w-theme.Width(c.XUnit), c.h+1, c.XUnit, quiet)
	for _, x := range c.x.ticks {
		col, _ := c.cell([2]float64{x, c.y.from})
		text := c.x.text(x)
		at := min(max(c.left+1+col-theme.Width(text)/2, 0), c.left+1+c.w-theme.Width(text))
		if c.on.Put(at, c.h+1, text, quiet) {
			c.on.Mark(c.left+1+col, c.h, foot, quiet)
		}
	}
}
