// Package table reads the tables of standards that chapters embed as CSV.
//
// Comment lines at the top carry what holds for the whole table, one a line,
// "# word: text": standard, certainty, units and what remarks there are. Every
// row names the clause or table of the standard that it is from in a column
// "clause". Reading is done once a table, before its numbers go into arrays.
package table

import (
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"
)

// Table is a table of a standard as embedded.
type Table struct {
	Standard  string
	Certainty string // "verified": seen in the source, "memory", or "computed"
	Units     string
	Rows      []Row
}

// Row is one line of a table.
type Row struct {
	cells   []string
	columns map[string]int
}

// Origin is what a form or a reading says of where the table is from.
func (t Table) Origin() string {
	if t.Certainty == "memory" {
		return "from memory: " + t.Standard
	}
	return t.Standard
}

// Parse reads the text of a table.
func Parse(text string) (Table, error) {
	t := Table{}
	for line := range strings.Lines(text) {
		word, says, ok := strings.Cut(strings.TrimSpace(strings.TrimPrefix(line, "#")), ": ")
		if !ok || !strings.HasPrefix(line, "#") {
			continue
		}
		switch word {
		case "standard":
			t.Standard = says
		case "certainty":
			t.Certainty = says
		case "units":
			t.Units = says
		}
	}
	r := csv.NewReader(strings.NewReader(text))
	r.Comment = '#'
	r.TrimLeadingSpace = true
	lines, err := r.ReadAll()
	if err != nil {
		return t, err
	}
	if len(lines) < 2 {
		return t, fmt.Errorf("the table of %s has no rows", t.Standard)
	}
	columns := map[string]int{}
	for i, name := range lines[0] {
		columns[name] = i
	}
	for _, line := range lines[1:] {
		t.Rows = append(t.Rows, Row{line, columns})
	}
	return t, nil
}

// Must reads the text of an embedded table. Text that is no table is a fault of
// the program and ends it.
func Must(text string) Table {
	t, err := Parse(text)
	if err != nil {
		panic(err)
	}
	return t
}

// Word is the text in a column, empty where there is no such column.
func (r Row) Word(column string) string {
	if i, ok := r.columns[column]; ok {
		return r.cells[i]
	}
	return ""
}

// Num is the number in a column; an empty cell is 0. What is no number is a
// fault of the program and ends it.
func (r Row) Num(column string) float64 {
	text := r.Word(column)
	if text == "" {
		return 0
	}
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		panic(fmt.Errorf("column %s: %w", column, err))
	}
	return x
}
