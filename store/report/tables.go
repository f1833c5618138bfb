package report

import (
	"strings"

	"backspan/model"
)

// Block is one table as lines of text: a title, the columns' heads, rows, and
// perhaps a note.
type Block struct {
	Title string
	Head  string
	Rows  []string
	Note  string
}

// Tables are what of a variant is better read as a table than as single
// figures; money in the study's currency.
func Tables(o model.Outcome, currency string) []Block {
	var blocks []Block
	for _, g := range variantGrids(o, currency) {
		lines := g.columns()
		blocks = append(blocks, Block{Title: Printable(g.title), Head: lines[0], Rows: lines[1:], Note: Printable(g.note)})
	}
	return blocks
}

// variantGrids are a variant's tables; those with nothing to tell are left out.
func variantGrids(o model.Outcome, _ string) []grid {
	var grids []grid
	if g, ok := speedGrid(o); ok {
		grids = append(grids, g)
	}
	return grids
}

// columns sets head and rows in columns, the head first.
func (g grid) columns() []string {
	all := append([][]string{g.head}, g.rows...)
	widths := make([]int, len(g.head))
	for _, row := range all {
		for i, cell := range row {
			widths[i] = max(widths[i], cellWidth(cell))
		}
	}
	lines := make([]string, len(all))
	for y, row := range all {
		for i, cell := range row {
			lines[y] += " " + Printable(cell) + strings.Repeat(" ", widths[i]-cellWidth(cell)+1)
		}
		lines[y] = strings.TrimRight(lines[y], " ")
	}
	return lines
}
