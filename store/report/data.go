package report

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"

	"backspan/model"
	"backspan/model/reading"
	"backspan/model/unit"
)

// The JSON shape is a contract with scripts: numbers are numbers, in the unit
// named beside them; a value that does not exist is null with a why.
type jsonStudy struct {
	Study     string        `json:"study"`
	Reference string        `json:"reference"`
	Variants  []jsonVariant `json:"variants"`
}

type jsonVariant struct {
	Name     string        `json:"name"`
	Readings []jsonReading `json:"readings"`
	Checks   []jsonCheck   `json:"checks"`
	Bearings []jsonBearing `json:"bearings"`
	Feel     *jsonFeel     `json:"hip_moment_from_reference"` // null when it cannot be told
	Depths   []jsonDepth   `json:"depths"`
}

type jsonReading struct {
	Key    string         `json:"key"`
	Label  string         `json:"label"`
	Value  *float64       `json:"value"`
	Unit   string         `json:"unit"`
	Better reading.Better `json:"better"`
	How    string         `json:"how"`
	Source string         `json:"source"`
	Why    string         `json:"why,omitempty"`
}

type jsonCheck struct {
	Key     string          `json:"key"`
	Label   string          `json:"label"`
	Verdict reading.Verdict `json:"verdict"`
	Value   *float64        `json:"value"`
	Limit   *float64        `json:"limit"`
	Unit    string          `json:"unit"`
	Margin  *float64        `json:"margin"`
	Source  string          `json:"source"`
	Advice  string          `json:"advice"`
	Why     string          `json:"why,omitempty"`
}

type jsonFeel struct {
	FromMass  float64 `json:"from_mass"`
	FromDepth float64 `json:"from_depth"`
	Unit      string  `json:"unit"`
}

func writeJSON(w io.Writer, c model.Comparison) error {
	out := jsonStudy{Study: c.Study, Variants: []jsonVariant{}}
	if c.Reference >= 0 && c.Reference < len(c.Outcomes) {
		out.Reference = c.Outcomes[c.Reference].Variant
	}
	for i, o := range c.Outcomes {
		v := jsonVariant{Name: o.Variant, Readings: []jsonReading{}, Checks: []jsonCheck{}, Bearings: bearingsJSON(o.Bearings),
			Feel: feelJSON(c.Feel[i]), Depths: depthsJSON(o)}
		for _, r := range o.Readings {
			v.Readings = append(v.Readings, readingJSON(r, c.Currency))
		}
		for _, k := range o.Checks {
			v.Checks = append(v.Checks, checkJSON(k))
		}
		out.Variants = append(out.Variants, v)
	}
	return encodeJSON(w, out)
}

func feelJSON(f model.Feel) *jsonFeel {
	if !f.Known {
		return nil
	}
	return &jsonFeel{*number(f.FromMass), *number(f.FromDepth), unit.NewtonMetre.Symbol}
}

func readingJSON(r reading.Reading, currency string) jsonReading {
	j := jsonReading{Key: r.Key, Label: r.Label, Unit: money(r.Unit.Symbol, r.Unit, currency), Better: r.Better, How: r.Method, Source: r.Origin, Why: r.Why}
	if r.Known() {
		j.Value = number(r.Unit.From(r.Value))
	}
	return j
}

func checkJSON(k reading.Check) jsonCheck {
	j := jsonCheck{Key: k.Key, Label: k.Label, Verdict: k.Verdict, Unit: k.Unit.Symbol, Source: k.Origin, Advice: k.Cure, Why: k.Why}
	if k.Valued {
		j.Value, j.Limit, j.Margin = number(k.Unit.From(k.Value)), number(k.Unit.From(k.Limit)), number(k.Margin)
	}
	return j
}

// number drops the noise that the way from SI adds in the last digits.
func number(x float64) *float64 {
	if y, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 12, 64), 64); err == nil {
		x = y
	}
	return &x
}

func replaceMoney(text, currency string) string {
	return strings.Replace(text, unit.Currency.Symbol, currency, 1)
}

func writeCSV(w io.Writer, c model.Comparison) error {
	out := csv.NewWriter(w)
	head := []string{"kind", "key", "label", "unit"}
	for _, o := range c.Outcomes {
		head = append(head, o.Variant)
	}
	rows := [][]string{head}
	for _, p := range c.Parameters {
		rows = append(rows, append([]string{"parameter", p.Path, p.Label, ""}, p.Cells...))
	}
	for _, r := range c.Readings {
		row := []string{"reading", r.Key, r.Label, ""}
		for _, cell := range r.Cells {
			if cell.Key != "" {
				row[3] = money(cell.Unit.Symbol, cell.Unit, c.Currency)
			}
			row = append(row, figure(cell.Key != "" && cell.Known(), cell.Value, cell.Unit))
		}
		rows = append(rows, row)
	}
	for _, k := range c.Checks {
		row := []string{"check", k.Key, k.Label, ""}
		for _, cell := range k.Cells {
			row = append(row, string(cell.Verdict))
		}
		rows = append(rows, row)
	}
	return writeAll(out, append(rows, depthRows(c)...))
}

func writeCheckCSV(w io.Writer, c model.Comparison) error {
	rows := [][]string{{"variant", "key", "label", "verdict", "value", "limit", "unit", "margin", "source", "advice", "why"}}
	for _, o := range c.Outcomes {
		for _, k := range o.Checks {
			margin := ""
			if k.Valued {
				margin = strconv.FormatFloat(k.Margin, 'g', 6, 64)
			}
			rows = append(rows, []string{o.Variant, k.Key, k.Label, string(k.Verdict), figure(k.Valued, k.Value, k.Unit), figure(k.Valued, k.Limit, k.Unit),
				k.Unit.Symbol, margin, k.Origin, k.Cure, k.Why})
		}
	}
	return writeAll(csv.NewWriter(w), rows)
}

func figure(known bool, si float64, u unit.Unit) string {
	if !known {
		return ""
	}
	return strconv.FormatFloat(u.From(si), 'g', 12, 64)
}
