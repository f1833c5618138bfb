package report

import (
	"encoding/csv"
	"io"
	"strings"

	"backspan/model"

	"github.com/charmbracelet/x/ansi"
)

// Contrast is one of the model's with the names of its sides.
type Contrast struct {
	model.Contrast
	From, To   string    // what stands over the columns
	Currencies [2]string // of either side
}

// onlyIn is the side that alone has it; empty where both do.
func (c Contrast) onlyIn() string {
	switch c.Only {
	case model.OnlyFrom:
		return c.From
	case model.OnlyTo:
		return c.To
	}
	return ""
}

// note says so in words.
func (c Contrast) note() string {
	if side := c.onlyIn(); side != "" {
		return "only in " + side
	}
	return ""
}

// Contrasts writes what differs; every title stands even where nothing does.
func Contrasts(w io.Writer, cs []Contrast, f Format) error {
	switch f {
	case JSON:
		return writeContrastJSON(w, cs)
	case CSV:
		rows := [][]string{{"what", "key", "label", "from", "to", "applies", "only_in"}}
		for _, c := range cs {
			if side := c.onlyIn(); side != "" {
				rows = append(rows, []string{c.Title, "", "", "", "", "yes", side})
			}
			for _, d := range c.Differences {
				rows = append(rows, []string{c.Title, d.Path, d.Label, money(d.From, d.Unit, c.Currencies[0]), money(d.To, d.Unit, c.Currencies[1]), applies(d), ""})
			}
		}
		return writeAll(csv.NewWriter(w), rows)
	}
	grids := contrastGrids(cs)
	if f == Table {
		for i := range grids {
			grids[i].fold(widestSide)
		}
	}
	return writeGrids(w, grids, f)
}

// widestSide keeps a long note from pushing the columns of a table apart.
const widestSide = 40

// fold sets what is wider than that on several lines, but for what names a row.
func (g *grid) fold(most int) {
	var rows [][]string
	for _, r := range g.rows {
		cells := make([][]string, len(r))
		lines := 0
		for i, cell := range r {
			cells[i] = []string{cell}
			if i > 0 {
				cells[i] = strings.Split(ansi.Wrap(Printable(cell), most, ""), "\n")
			}
			lines = max(lines, len(cells[i]))
		}
		for y := range lines {
			row := make([]string, len(r))
			for i := range r {
				if y < len(cells[i]) {
					row[i] = cells[i][y]
				}
			}
			rows = append(rows, row)
		}
	}
	g.rows = rows
}

func applies(d model.Difference) string {
	if d.Idle {
		return "no"
	}
	return "yes"
}

func contrastGrids(cs []Contrast) []grid {
	grids := make([]grid, len(cs))
	for i, c := range cs {
		grids[i] = grid{title: c.Title, head: []string{"parameter", c.From, c.To}, note: c.note()}
		if c.Title == model.TitleDecisions {
			grids[i].head[0] = "decision"
		}
		for _, d := range c.Differences {
			label := d.Label
			if d.Section != "" {
				label = d.Section + ": " + label
			}
			if d.Idle {
				label += " (in use on one side at most)"
			}
			grids[i].rows = append(grids[i].rows, []string{label, orNothing(money(d.From, d.Unit, c.Currencies[0])), orNothing(money(d.To, d.Unit, c.Currencies[1]))})
		}
		if c.Nothing() {
			grids[i].note = "nothing is set differently"
		}
	}
	return grids
}

func orNothing(s string) string {
	if s == "" {
		return "-"
	}
	return s
}

type jsonContrast struct {
	What        string           `json:"what"`
	From        string           `json:"from"`
	To          string           `json:"to"`
	Note        string           `json:"note,omitempty"`
	Differences []jsonDifference `json:"differences"`
}

type jsonDifference struct {
	Key     string `json:"key"`
	Label   string `json:"label"`
	From    string `json:"from"`
	To      string `json:"to"`
	Applies bool   `json:"applies"`
}

func writeContrastJSON(w io.Writer, cs []Contrast) error {
	out := make([]jsonContrast, len(cs))
	for i, c := range cs {
		out[i] = jsonContrast{What: c.Title, From: c.From, To: c.To, Note: c.note(), Differences: []jsonDifference{}}
		for _, d := range c.Differences {
			out[i].Differences = append(out[i].Differences, jsonDifference{d.Path, d.Label, money(d.From, d.Unit, c.Currencies[0]), money(d.To, d.Unit, c.Currencies[1]), !d.Idle})
		}
	}
	return encodeJSON(w, out)
}
