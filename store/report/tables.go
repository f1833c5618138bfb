package report

import (
	"encoding/csv"
	"io"
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
// figures; money in the study's currency. Where a split is given, what parts the
// variant from another stands with the depths.
func Tables(o model.Outcome, currency string, splits ...Split) []Block {
	var blocks []Block
	for _, g := range variantGrids(o, currency, splits...) {
		lines := g.columns()
		blocks = append(blocks, Block{Title: Printable(g.title), Head: lines[0], Rows: lines[1:], Note: Printable(g.note)})
	}
	return blocks
}

// VariantTables writes them for every variant.
func VariantTables(w io.Writer, c model.Comparison, f Format) error {
	var grids []grid
	for _, o := range c.Outcomes {
		grids = append(grids, variantGrids(o, c.Currency)...)
	}
	if f == CSV {
		return writeGridCSV(w, grids)
	}
	return writeGrids(w, grids, f)
}

// writeGridCSV puts the title of a table before each of its rows.
func writeGridCSV(w io.Writer, grids []grid) error {
	var rows [][]string
	for _, g := range grids {
		rows = append(rows, append([]string{"table"}, g.head...))
		for _, r := range g.rows {
			rows = append(rows, append([]string{g.title}, r...))
		}
	}
	return writeAll(csv.NewWriter(w), rows)
}

// variantGrids are a variant's tables; those with nothing to tell are left out.
func variantGrids(o model.Outcome, currency string, splits ...Split) []grid {
	grids := proofGrids(o)
	if g, ok := depthGrid(o); ok {
		grids = append(grids, g)
	}
	for _, s := range splits {
		grids = append(grids, splitGrid(s))
	}
	if g, ok := changeGrid(o, currency); ok {
		grids = append(grids, g)
	}
	return grids
}

// proofGrids are the tables that belong with the checks.
func proofGrids(o model.Outcome) []grid {
	var grids []grid
	if g, ok := bearingGrid(o); ok {
		grids = append(grids, g)
	}
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
