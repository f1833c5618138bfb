package param

import (
	"fmt"
	"strings"

	"backspan/model/unit"
)

// parseRows reads "4000 5.2; 5000 7,1": rows parted by semicolons or line
// ends, columns by blanks or tabs, each number in its column's unit.
func (p Param) parseRows(text string) ([][]float64, error) {
	var rows [][]float64
	for _, line := range strings.FieldsFunc(text, func(r rune) bool { return r == ';' || r == '\n' || r == '\r' }) {
		cells := strings.Fields(line)
		if len(cells) == 0 {
			continue
		}
		if len(cells) != len(p.Columns) {
			return nil, fmt.Errorf("row %d has %d numbers; give %s", len(rows)+1, len(cells), p.columnsHelp())
		}
		row := make([]float64, len(cells))
		for i, cell := range cells {
			si, err := unit.Parse(cell, p.Columns[i].Unit)
			if err != nil {
				return nil, fmt.Errorf("row %d, %s: %w", len(rows)+1, p.Columns[i].Label, err)
			}
			row[i] = si
		}
		rows = append(rows, row)
	}
	return rows, nil
}

func (p Param) setRows(rows [][]float64) error {
	if len(rows) > 0 && len(rows) < p.MinRows {
		return p.refuse("", "has %d row(s), needs at least %d", len(rows), p.MinRows)
	}
	for i, row := range rows {
		for j, c := range p.Columns {
			if !within(c.Unit.From(row[j]), c.Min, c.Max) {
				return p.refuse("", "row %d, %s: %s is outside %s", i+1, c.Label, exactly(row[j], c.Unit), span(c.Min, c.Max, c.Unit))
			}
			row[j] = c.Unit.Settle(row[j])
		}
	}
	if p.rule != nil && len(rows) > 0 {
		if err := p.rule(rows); err != nil {
			return p.refuse("", "%v", err)
		}
	}
	p.bind.set(rows)
	return nil
}

func (p Param) editableRows(rows [][]float64) string {
	lines := make([]string, len(rows))
	for i, row := range rows {
		cells := make([]string, len(row))
		for j, si := range row {
			cells[j] = p.Columns[j].Unit.Exact(si)
		}
		lines[i] = strings.Join(cells, " ")
	}
	return strings.Join(lines, "; ")
}

func (p Param) showRows(rows [][]float64) string {
	if len(rows) == 0 {
		return "not given"
	}
	return fmt.Sprintf("%d rows", len(rows))
}

func (p Param) columnsHelp() string {
	names := make([]string, len(p.Columns))
	for i, c := range p.Columns {
		names[i] = c.Label
		if c.Unit.Symbol != "" {
			names[i] += " in " + c.Unit.Symbol
		}
	}
	return "rows of " + strings.Join(names, ", ") + `, parted by ";"`
}
