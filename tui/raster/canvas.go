// Package raster draws lines and words on a grid of character cells: braille
// dots, two across and four up to a cell, or plain ASCII strokes. A dot is as
// wide as it is high where a cell is twice as high as wide, so a drawing with
// one scale both ways stays true.
package raster

import (
	"strings"

	"backspan/tui/theme"
)

// Canvas is a grid of cells. Places on it are in cells from its top left
// corner, whole numbers at the edges of cells.
type Canvas struct {
	w, h  int
	ascii bool
	cells []cell
}

type cell struct {
	dots  uint8
	glyph rune // a word's, or in ASCII a line's
	text  bool
	ink   theme.Ink
}

// New is an empty canvas of w x h cells.
func New(w, h int, ascii bool) *Canvas {
	w, h = max(w, 0), max(h, 0)
	return &Canvas{w: w, h: h, ascii: ascii, cells: make([]cell, w*h)}
}

// Put writes plain text from a cell on, above any line. It is false, and
// writes nothing, when the text would leave the canvas or cover another.
func (c *Canvas) Put(col, row int, s string, ink theme.Ink) bool {
	n := theme.Width(s)
	if row < 0 || row >= c.h || col < 0 || col+n > c.w || n != len([]rune(s)) {
		return false
	}
	at := c.cells[row*c.w+col : row*c.w+col+n]
	for i := range at {
		if at[i].text {
			return false
		}
	}
	for i, r := range []rune(s) {
		at[i] = cell{glyph: r, text: true, ink: ink}
	}
	return true
}

// Down is Put from the top down, a cell a character.
func (c *Canvas) Down(col, row int, s string, ink theme.Ink) bool {
	runes := []rune(s)
	if col < 0 || col >= c.w || row < 0 || row+len(runes) > c.h {
		return false
	}
	for i := range runes {
		if c.cells[(row+i)*c.w+col].text {
			return false
		}
	}
	for i, r := range runes {
		c.cells[(row+i)*c.w+col] = cell{glyph: r, text: true, ink: ink}
	}
	return true
}

// Mark writes one character over whatever is there.
func (c *Canvas) Mark(col, row int, s string, ink theme.Ink) {
	if col < 0 || col >= c.w || row < 0 || row >= c.h || theme.Width(s) != 1 {
		return
	}
	c.cells[row*c.w+col] = cell{glyph: []rune(s)[0], text: true, ink: ink}
}

// Free reports whether the cell holds neither line nor word.
func (c *Canvas) Free(col, row int) bool {
	if col < 0 || col >= c.w || row < 0 || row >= c.h {
		return false
	}
	return c.cells[row*c.w+col] == cell{}
}

const braille = 0x2800

func (k *cell) shown() rune {
	switch {
	case k.glyph != 0:
		return k.glyph
	case k.dots != 0:
		return braille + rune(k.dots)
	}
	return ' '
}

// Lines are the rows, painted, without blanks at their ends.
func (c *Canvas) Lines() []string {
	lines := make([]string, c.h)
	var b, run strings.Builder
	for y := range lines {
		row := c.cells[y*c.w : (y+1)*c.w]
		for len(row) > 0 && row[len(row)-1].shown() == ' ' {
			row = row[:len(row)-1]
		}
		b.Reset()
		ink := theme.Ink{}
		for i := range row {
			r := row[i].shown()
			if r != ' ' && row[i].ink != ink {
				b.WriteString(ink.Paint(run.String()))
				run.Reset()
				ink = row[i].ink
			}
			run.WriteRune(r)
		}
		b.WriteString(ink.Paint(run.String()))
		run.Reset()
		lines[y] = b.String()
	}
	return lines
}

// Lay puts another canvas on this one, its corner at a cell. Its blanks leave
// what is there.
func (c *Canvas) Lay(o *Canvas, col, row int) {
	for y := range o.h {
		for x := range o.w {
			k := o.cells[y*o.w+x]
			if at := (row+y)*c.w + col + x; k != (cell{}) && row+y < c.h && col+x < c.w {
				c.cells[at] = k
			}
		}
	}
}
