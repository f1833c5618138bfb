package report

import (
	"encoding/csv"
	"encoding/json"
	"fmt"
	"io"
	"strings"
	"unicode/utf16"
)

// encodeJSON writes a value so that a terminal, too, can take it: what is not
// printable is escaped, which readers of JSON undo.
func encodeJSON(w io.Writer, v any) error {
	var b strings.Builder
	enc := json.NewEncoder(&b)
	enc.SetIndent("", "  ")
	enc.SetEscapeHTML(false)
	if err := enc.Encode(v); err != nil {
		return err
	}
	_, err := io.WriteString(w, escapedJSON(b.String()))
	return err
}

// escapedJSON takes JSON with line ends between its tokens only.
func escapedJSON(s string) string {
	if !strings.ContainsFunc(s, func(r rune) bool { return r != '\n' && unprintable(r) }) {
		return s
	}
	var b strings.Builder
	for _, r := range s {
		if r == '\n' || !unprintable(r) {
			b.WriteRune(r)
			continue
		}
		for _, unit := range utf16.Encode([]rune{r}) {
			fmt.Fprintf(&b, `\u%04x`, unit)
		}
	}
	return b.String()
}

// writeAll writes rows; line ends in a cell stay, other controls are spelt.
func writeAll(out *csv.Writer, rows [][]string) error {
	for _, row := range rows {
		cells := make([]string, len(row))
		for i, cell := range row {
			lines := strings.Split(cell, "\n")
			for j := range lines {
				lines[j] = Printable(lines[j])
			}
			cells[i] = strings.Join(lines, "\n")
		}
		if err := out.Write(cells); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}
