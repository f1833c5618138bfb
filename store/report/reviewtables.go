package report

import (
	"strings"

	"backspan/model/reading"
	"backspan/model/unit"
	"backspan/store/report/elevation"
)

// measures are the lettered dimensions of the elevations.
func (r *Reviewed) measures() grid {
	g := grid{title: "Dimensions of the side elevations, in " + unit.Millimetre.Symbol, head: variantHead(r.Compared, "dimension")}
	for i, o := range r.Compared.Outcomes {
		d, _ := elevation.Side(o)
		for _, q := range d.Dimensions {
			put(&g, q.Letter+"  "+q.Label, i, len(r.Compared.Outcomes), unit.Millimetre.Number(q.Length()))
		}
	}
	return g
}

// put writes the cell of a variant in the row of that name, which it makes
// where there is none yet.
func put(g *grid, name string, variant, variants int, text string) {
	for _, row := range g.rows {
		if row[0] == name {
			row[1+variant] = text
			return
		}
	}
	row := make([]string, 1+variants)
	for i := range row {
		row[i] = "-"
	}
	row[0], row[1+variant] = name, text
	g.rows = append(g.rows, row)
}

// The ends of the keys under which a reading's band stands.
const lowEnd, highEnd = "_low", "_high"

// bands are the readings that say how far a figure may be off.
func (r *Reviewed) bands() grid {
	g := grid{title: "How far figures may be off", head: variantHead(r.Compared, "from low end to high end"),
		note: "Only where a method's error is known or was estimated; a figure without a line here is not the surer for it."}
	for i, o := range r.Compared.Outcomes {
		for _, low := range o.Readings {
			stem, ok := strings.CutSuffix(low.Key, lowEnd)
			if !ok {
				continue
			}
			if high, ok := o.Reading(stem + highEnd); ok {
				put(&g, low.Label+" / "+high.Label, i, len(r.Compared.Outcomes), bandText(low, high))
			}
		}
	}
	return g
}

func bandText(low, high reading.Reading) string {
	if !low.Known() || !high.Known() {
		return low.Text()
	}
	return low.Unit.Number(low.Value) + " to " + high.Text()
}

// doubted begin the origins of values that nobody measured or published.
var doubted = [...]string{"from memory", "estimate", "invented", "common practice"}

func doubtful(origin string) bool {
	for _, d := range doubted {
		if strings.HasPrefix(strings.ToLower(origin), d) {
			return true
		}
	}
	return false
}

// assumptions are the parameters left at a default that is nobody's
// measurement.
func (r *Reviewed) assumptions() grid {
	g := grid{title: "Assumptions: values left at a default that nobody measured", head: append(variantHead(r.Compared, "parameter"), "where from"),
		note: "\"set\" is a value that somebody gave for that variant."}
	variants := len(r.Study.Variants)
	for i := range r.Study.Variants {
		v := &r.Study.Variants[i]
		lines := newBuildLines(r.Study, v, &r.Compared.Outcomes[i])
		for _, s := range lines.sections {
			for _, p := range s.Params {
				if s.Hidden || p.Hidden || !doubtful(p.Origin) {
					continue
				}
				text := "set"
				if lines.origin(s.Path(p), p) != asSet {
					text = money(p.Show(), p.Unit, r.Study.Currency)
				}
				put(&g, s.Label+": "+p.Label, i, variants+1, text)
				put(&g, s.Label+": "+p.Label, variants, variants+1, p.Origin)
			}
		}
	}
	g.rows = withDefault(g.rows)
	return g
}

// withDefault drops what every variant that has it was given.
func withDefault(rows [][]string) [][]string {
	var kept [][]string
	for _, row := range rows {
		for _, cell := range row[1 : len(row)-1] {
			if cell != "set" && cell != "-" {
				kept = append(kept, row)
				break
			}
		}
	}
	return kept
}

// cautions are what no check could rate, and what holds for every machine.
func (r *Reviewed) cautions() grid {
	g := grid{title: "Cautions", head: []string{"not rated", "why"}, note: buildCaution + caution}
	seen := map[string]bool{}
	for _, o := range r.Compared.Outcomes {
		for _, row := range buildCautions(&o).rows {
			if line := strings.Join(row, "\x00"); !seen[line] {
				seen[line] = true
				g.rows = append(g.rows, row)
			}
		}
	}
	return g
}
