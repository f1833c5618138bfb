package report

import (
	"encoding/csv"
	"io"
)

// Sheet is one table of figures with a line below it, for commands that show
// other things than a comparison.
type Sheet struct {
	Title string
	Head  []string
	Rows  [][]string
	Note  string

	Plain [][]string // head and rows for CSV: bare numbers
	Data  any        // for JSON
}

// Write writes the sheet in one format.
func (s Sheet) Write(w io.Writer, f Format) error {
	switch f {
	case JSON:
		return encodeJSON(w, s.Data)
	case CSV:
		return writeAll(csv.NewWriter(w), s.Plain)
	}
	return writeGrids(w, []grid{{title: s.Title, head: s.Head, rows: s.Rows, note: s.Note}}, f)
}
