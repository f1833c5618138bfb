package report

import (
	"fmt"
	"io"
	"strings"

	"backspan/model"
)

// Format is how a comparison is written.
type Format string

// The formats.
const (
	Table    Format = "table"
	JSON     Format = "json"
	CSV      Format = "csv"
	Markdown Format = "markdown"
)

// Formats are all of them.
var Formats = [...]Format{Table, JSON, CSV, Markdown}

// ParsePaper takes the word a person gave for a document; the first allowed one
// stands for an empty word.
func ParsePaper(word string, allowed ...Format) (Format, error) {
	if word == "" {
		return allowed[0], nil
	}
	names := make([]string, len(allowed))
	for i, f := range allowed {
		if strings.EqualFold(word, string(f)) {
			return f, nil
		}
		names[i] = string(f)
	}
	return "", fmt.Errorf("unknown format %q; give one of: %s", word, strings.Join(names, ", "))
}

// ParseFormat takes the word a person gave.
func ParseFormat(word string) (Format, error) {
	for _, f := range Formats {
		if strings.EqualFold(word, string(f)) {
			return f, nil
		}
	}
	return "", fmt.Errorf("unknown format %q; give table, json, csv or markdown", word)
}

// Comparison writes the variants side by side with their differences from the
// reference.
func Comparison(w io.Writer, c model.Comparison, f Format) error {
	switch f {
	case JSON:
		return writeJSON(w, c)
	case CSV:
		return writeCSV(w, c)
	}
	grids := comparisonGrids(c)
	if f == Markdown {
		grids = append(grids, logGrids(c)...)
	}
	return writeGrids(w, grids, f)
}

// Checks writes every check of every variant with its margin, limit and source.
func Checks(w io.Writer, c model.Comparison, f Format) error {
	switch f {
	case JSON:
		return writeJSON(w, c)
	case CSV:
		return writeCheckCSV(w, c)
	}
	return writeGrids(w, checkGrids(c), f)
}
