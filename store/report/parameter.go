package report

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"

	"backspan/model/param"
)

// variantTables is what a variant's tables begin with in a file; keys go
// without it.
const variantTables = "variant."

// Parameters writes the reference of every parameter of the sections, whose
// values must be the defaults. Their keys are the tables of a file.
func Parameters(w io.Writer, sections []param.Section, f Format) error {
	switch f {
	case JSON:
		return writeParameterJSON(w, sections)
	case CSV:
		rows := [][]string{{"key", "file_key", "label", "unit", "allowed", "usual", "default", "origin", "help", "table"}}
		for _, s := range sections {
			for _, p := range s.Params {
				rows = append(rows, append(append([]string{keyOf(s, p), p.FileKey(), p.Label, p.Unit.Symbol}, declared(p)...), s.Key))
			}
		}
		return writeAll(csv.NewWriter(w), rows)
	}
	grids := make([]grid, 0, len(sections))
	for _, s := range sections {
		g := grid{title: s.Label + " [" + s.Key + "]", head: []string{"key", "label", "allowed", "usual", "default", "origin", "help"}, note: s.Help}
		if s.Key == "" {
			g.title = s.Label
		}
		for _, p := range s.Params {
			g.rows = append(g.rows, append([]string{p.FileKey(), p.Label}, declared(p)...))
		}
		grids = append(grids, g)
	}
	return writeGrids(w, grids, f)
}

func keyOf(s param.Section, p param.Param) string {
	return strings.TrimPrefix(s.Path(p), variantTables)
}

// declared is allowed, usual, default, origin and help.
func declared(p param.Param) []string {
	usual := ""
	if p.TypicalMin != p.TypicalMax {
		usual = bound(p.TypicalMin) + " to " + bound(p.TypicalMax)
	}
	return []string{p.Range(), usual, p.Show(), p.Origin, p.Guidance}
}

func bound(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }

type jsonParameter struct {
	Key     string   `json:"key"`
	FileKey string   `json:"file_key"`
	Section string   `json:"section"`
	Label   string   `json:"label"`
	Unit    string   `json:"unit"`
	Allowed string   `json:"allowed"`
	Least   *float64 `json:"least"`
	Most    *float64 `json:"most"`
	Options []string `json:"options,omitempty"`
	Default string   `json:"default"`
	Origin  string   `json:"origin"`
	Help    string   `json:"help"`
	Table   string   `json:"table"` // of the file
}

func writeParameterJSON(w io.Writer, sections []param.Section) error {
	out := []jsonParameter{}
	for _, s := range sections {
		for _, p := range s.Params {
			j := jsonParameter{Key: keyOf(s, p), FileKey: p.FileKey(), Section: s.Label, Label: p.Label, Unit: p.Unit.Symbol, Allowed: p.Range(),
				Options: p.Options, Default: p.Show(), Origin: p.Origin, Help: p.Guidance, Table: s.Key}
			if p.Kind == param.KindNumber || p.Kind == param.KindWhole {
				j.Least, j.Most = number(p.Min), number(p.Max)
			}
			out = append(out, j)
		}
	}
	return encodeJSON(w, out)
}
