package report

import (
	"fmt"
	"strings"

	"backspan/model"
	"backspan/model/reading"
	"backspan/model/unit"

	"github.com/charmbracelet/x/ansi"
)

func variantHead(c model.Comparison, first string) []string {
	head := []string{first}
	for i, o := range c.Outcomes {
		name := o.Variant
		if i == c.Reference {
			name += " (reference)"
		}
		head = append(head, name)
	}
	return head
}

func comparisonGrids(c model.Comparison) []grid {
	return []grid{
		{title: c.Study + ": parameters that differ", head: variantHead(c, "parameter"), rows: differingRows(c)},
		{title: "Readings, with the difference from the reference", head: variantHead(c, "reading"), rows: readingRows(c)},
		{title: "Hip moment against the reference, split exactly", head: variantHead(c, "because of"), rows: feelRows(c),
			note: "what more or less mass does, and what sitting deeper or closer does; they sum to the difference"},
		{title: "Checks", head: variantHead(c, "check"), rows: checkRows(c), note: caution},
	}
}

const logTitle = model.TitleDecisions

// logGrids is the log of decisions; none when nothing was decided yet.
func logGrids(c model.Comparison) []grid {
	if len(c.Decisions) == 0 {
		return nil
	}
	log := grid{title: logTitle, head: []string{"date", "decision"}}
	for _, d := range c.Decisions {
		log.rows = append(log.rows, []string{d.Date, d.Text})
	}
	return []grid{log}
}

const caution = "Figures for design, not proof of airworthiness: propeller, belt, fuel, hot parts, noise and the load on the back can hurt; " +
	"follow local rules and licensed practice."

func differingRows(c model.Comparison) [][]string {
	var rows [][]string
	for _, p := range c.Parameters {
		if p.Differs {
			rows = append(rows, append([]string{p.Section + ": " + p.Label}, parameterCells(p, c.Currency)...))
		}
	}
	return rows
}

func parameterCells(p model.ParameterRow, currency string) []string {
	out := make([]string, len(p.Cells))
	for i, s := range p.Cells {
		switch {
		case s == "":
			out[i] = "-"
		case tooWide(s):
			out[i] = ansi.Truncate(s, widestParameter, "...")
		default:
			out[i] = money(s, p.Unit, currency)
		}
	}
	return out
}

func tooWide(s string) bool { return ansi.StringWidth(s) > widestParameter }

// widestParameter keeps a power curve from pushing every column apart; CSV has
// it in full.
const widestParameter = 24

func readingRows(c model.Comparison) [][]string {
	var rows [][]string
	for _, r := range c.Readings {
		row := []string{r.Label}
		for i, cell := range r.Cells {
			row = append(row, readingCell(cell, r.Cells[c.Reference], i == c.Reference, c.Currency))
		}
		rows = append(rows, row)
	}
	return rows
}

func readingCell(cell, ref reading.Reading, isRef bool, currency string) string {
	if cell.Key == "" {
		return "-"
	}
	s := money(cell.Text(), cell.Unit, currency)
	if change := ref.Change(cell); !isRef && ref.Key != "" && change != "" {
		s += "  " + change
	}
	return s
}

// money puts the study's currency where a unit says only that it is money.
func money(text string, u unit.Unit, currency string) string {
	switch u.Dimension {
	case unit.Money, unit.MoneyPerTime:
		return replaceMoney(text, currency)
	}
	return text
}

func feelRows(c model.Comparison) [][]string {
	mass, depth, sum := []string{"mass"}, []string{"depth"}, []string{"sum"}
	for i, f := range c.Feel {
		if i == c.Reference || !f.Known {
			mass, depth, sum = append(mass, "-"), append(depth, "-"), append(sum, "-")
			continue
		}
		like := f.FromMass + f.FromDepth
		cell := func(x float64) string { return unit.NewtonMetre.Delta(x, like) + " N·m" }
		mass, depth, sum = append(mass, cell(f.FromMass)), append(depth, cell(f.FromDepth)), append(sum, cell(like))
	}
	return [][]string{mass, depth, sum}
}

func checkRows(c model.Comparison) [][]string {
	var rows [][]string
	for _, k := range c.Checks {
		row := []string{k.Label}
		for _, cell := range k.Cells {
			row = append(row, verdictCell(cell))
		}
		rows = append(rows, row)
	}
	return rows
}

func verdictCell(k reading.Check) string {
	if k.Key == "" {
		return "-"
	}
	return strings.TrimSpace(string(k.Verdict) + " " + k.MarginText())
}

func checkGrids(c model.Comparison) []grid {
	var grids []grid
	for _, o := range c.Outcomes {
		g := grid{
			title: o.Variant + ": " + summary(o.Checks),
			head:  []string{"verdict", "check", "value", "limit", "margin", "advice or reason", "source of the limit"},
		}
		for _, v := range []reading.Verdict{reading.Fails, reading.Thin, reading.NotRated, reading.Holds} {
			for _, k := range o.Checks {
				if k.Verdict == v {
					g.rows = append(g.rows, checkLine(k))
				}
			}
		}
		grids = append(append(grids, g), proofGrids(o)...)
	}
	if len(grids) > 0 {
		grids[len(grids)-1].note = caution
	}
	return grids
}

func checkLine(k reading.Check) []string {
	value, limit, margin := "-", "-", "-"
	if k.Valued {
		value, limit = k.Unit.Text(k.Value), string(k.Side)+" "+k.Unit.Text(k.Limit)
	}
	if m := k.MarginText(); m != "" {
		margin = m
	}
	advice := ""
	switch k.Verdict {
	case reading.Fails, reading.Thin:
		advice = k.Cure
	case reading.NotRated:
		advice = k.Why
	}
	return []string{string(k.Verdict), k.Label, value, limit, margin, advice, k.Origin}
}

func summary(cs []reading.Check) string {
	return fmt.Sprintf("%d hold, %d thin, %d fail, %d not rated", reading.Count(cs, reading.Holds), reading.Count(cs, reading.Thin),
		reading.Count(cs, reading.Fails), reading.Count(cs, reading.NotRated))
}
