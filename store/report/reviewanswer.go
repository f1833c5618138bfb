package report

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"backspan/model"
	"backspan/model/reading"
	"backspan/model/unit"
)

// deciding are the readings that a choice is made by, in the order in which
// they are asked for.
var deciding = []string{
	"carry.equivalent_mass", "carry.hip_moment", "stack.depth", "stack.drive_depth", "stack.mass_ready", "drive.mass", "drive.ratio", "drive.efficiency",
	"propeller.static_thrust", "flight.climb_rate", "flight.level_fuel", "cooling.head_hot_day", "noise.level_at_150m", "drive.price", "upkeep.cost_per_hour",
	"upkeep.steady_cost_per_hour",
}

// Brief writes of a comparison what decides: a line on each variant, the
// readings that a choice is made by, and the checks that fail or are thin.
func Brief(w io.Writer, c model.Comparison, f Format) error {
	if f != Table && f != Markdown {
		return fmt.Errorf("the brief comparison is written as %s or %s; the formats %s and %s have everything", Table, Markdown, JSON, CSV)
	}
	r := Reviewed{Compared: c}
	answer, attention := r.answer(), r.attention()
	answer.title = c.Study + ": the answer in short"
	answer.note = strings.TrimSuffix(answer.note, " A band goes from the low to the high end of what a figure may be; more of them stand below.")
	attention.note = "\"backspan check\" has every check with limit and source. " + caution
	return writeGrids(w, []grid{answer, attention}, f)
}

// answer is the comparison on half a page: a line on each variant, and the
// readings that decide with the best and the worst of them marked.
func (r *Reviewed) answer() grid {
	c := &r.Compared
	g := grid{title: "The answer in short", head: append([]string{"reading", "unit"}, r.variants()...), figures: true, second: "unit",
		note: "Behind a figure stands its difference from the reference. ◆ best and ◇ worst of those that differ. A band goes from the low to the high end of what a figure may be; more of them stand below."}
	for i := range c.Outcomes {
		g.points = append(g.points, r.line(i))
	}
	for _, key := range deciding {
		for _, row := range c.Readings {
			if row.Key != key {
				continue
			}
			g.rows = append(g.rows, r.marked(row))
			if band, ok := r.bandRow(row); ok {
				g.rows = append(g.rows, band)
			}
		}
	}
	for _, v := range []reading.Verdict{reading.Fails, reading.Thin, reading.Holds, reading.NotRated} {
		row := []string{"Checks: " + string(v), ""}
		for _, o := range c.Outcomes {
			row = append(row, strconv.Itoa(reading.Count(o.Checks, v)))
		}
		g.rows = append(g.rows, row)
	}
	return g
}

// bandRow tells from where to where a deciding reading may be off; ok is false
// where nobody knows.
func (r *Reviewed) bandRow(row model.ReadingRow) (cells []string, ok bool) {
	cells = []string{row.Label + ", band", ""}
	for i, q := range row.Cells {
		text := "-"
		if low, high, known := ends(&r.Compared.Outcomes[i], row.Key); known && q.Known() {
			text, ok = low.Unit.Number(low.Value)+" to "+high.Unit.Number(high.Value), true
			cells[1] = low.Unit.Symbol
		}
		cells = append(cells, text)
	}
	return cells, ok
}

// ends are the readings of a reading's band.
func ends(o *model.Outcome, stem string) (low, high reading.Reading, known bool) {
	low, ok := o.Reading(stem + lowEnd)
	high, found := o.Reading(stem + highEnd)
	return low, high, ok && found && low.Known() && high.Known()
}

// marked is a row of readings with the best and the worst of them marked.
func (r *Reviewed) marked(row model.ReadingRow) []string {
	cells := r.readingRow(row)
	best, worst := extremes(row.Cells)
	for i, q := range row.Cells {
		switch text := q.Text(); {
		case best < 0 || q.Key == "":
		case text == row.Cells[best].Text():
			cells[2+i] = "◆ " + cells[2+i]
		case text == row.Cells[worst].Text():
			cells[2+i] = "◇ " + cells[2+i]
		}
	}
	return cells
}

// extremes are the best and the worst of readings that differ as shown; -1
// where no way is better or nothing differs.
func extremes(cells []reading.Reading) (best, worst int) {
	best, worst = -1, -1
	for i, q := range cells {
		if q.Key == "" || !q.Known() || q.Better == reading.Neither {
			continue
		}
		if best < 0 {
			best, worst = i, i
			continue
		}
		if cells[best].Improves(q) > 0 {
			best = i
		}
		if q.Improves(cells[worst]) > 0 {
			worst = i
		}
	}
	if best >= 0 && cells[best].Text() == cells[worst].Text() {
		return -1, -1
	}
	return best, worst
}

// line tells a variant in one sentence.
func (r *Reviewed) line(i int) string {
	o, ref := &r.Compared.Outcomes[i], &r.Compared.Outcomes[r.Compared.Reference]
	words := []string{}
	for _, q := range []struct{ key, name string }{{"carry.equivalent_mass", "feels like"}, {"stack.mass_ready", "weighs"}, {"propeller.static_thrust", "thrust"}, {"flight.climb_rate", "climb"}} {
		at, ok := o.Reading(q.key)
		if !ok || !at.Known() {
			continue
		}
		text := q.name + " " + at.Text()
		if was, ok := ref.Reading(q.key); ok && i != r.Compared.Reference {
			text += bracketed(was.Change(at))
		}
		words = append(words, text)
	}
	name := o.Variant
	if i == r.Compared.Reference {
		name += " (reference)"
	}
	text := strings.Join(words, ", ") + momentWords(r.Compared.Feel[i], i == r.Compared.Reference)
	if text != "" {
		text += "; "
	}
	return name + ": " + text + verdictWords(o.Checks) + "."
}

func bracketed(s string) string {
	if s == "" {
		return ""
	}
	return " (" + s + ")"
}

func momentWords(f model.Feel, itself bool) string {
	if itself || !f.Known {
		return ""
	}
	sum := f.FromMass + f.FromDepth
	part := func(x float64) string { return unit.NewtonMetre.Delta(x, sum) }
	return fmt.Sprintf("; moment at the hip %s N·m, %s from mass and %s from depth", part(sum), part(f.FromMass), part(f.FromDepth))
}

// verdictWords name what fails, and count the rest.
func verdictWords(checks []reading.Check) string {
	var failing []string
	for _, k := range checks {
		if k.Verdict == reading.Fails {
			failing = append(failing, k.Label)
		}
	}
	words := "no check fails"
	if len(failing) > 0 {
		words = "fails: " + strings.Join(failing, ", ")
	}
	return words + fmt.Sprintf("; %d thin%s; %d not rated", reading.Count(checks, reading.Thin), pastWords(checks), reading.Count(checks, reading.NotRated))
}

// pastWords tell how many thin checks are past their limit, not only near it,
// and how far.
func pastWords(checks []reading.Check) string {
	n := 0
	furthest := reading.Check{}
	for _, k := range checks {
		if k.Verdict != reading.Thin || !k.Past {
			continue
		}
		n++
		if k.MarginText() != "" && k.Margin < furthest.Margin {
			furthest = k
		}
	}
	by := strings.TrimPrefix(furthest.MarginText(), "past ")
	switch {
	case n == 0:
		return ""
	case n == 1 && by == "":
		return ", 1 of them past its guide value"
	case n == 1:
		return ", 1 of them past its guide value by " + by
	case by == "":
		return fmt.Sprintf(", %d of them past their guide values", n)
	}
	return fmt.Sprintf(", %d of them past their guide values by up to %s", n, by)
}

// thinWords say how to read a check that is thin: near its limit is not past it.
const thinWords = "\"thin +9 %\" is within its limit, by 9 % of it, which is less than the margin asked; \"thin past 44 %\" is past its guide value by 44 % of it; \"thin\" alone: what is asked is not met, and no figure says by how much."

// attention are the checks that do not plainly hold for every variant.
func (r *Reviewed) attention() grid {
	g := grid{title: "Checks that fail or are thin", head: append([]string{"check"}, r.variants()...), figures: true,
		note: "What is not rated stands under Cautions; every check, with limit and source, in the complete list."}
	for _, v := range []reading.Verdict{reading.Fails, reading.Thin} {
		for _, k := range r.Compared.Checks {
			if worst, _ := reading.Worst(k.Cells); worst.Verdict == v {
				g.rows = append(g.rows, append([]string{k.Label}, verdicts(k.Cells)...))
			}
		}
	}
	if len(g.rows) == 0 {
		g.note = "none. " + g.note
	} else {
		g.points = []string{thinWords}
	}
	return g
}

func verdicts(cells []reading.Check) []string {
	out := make([]string, len(cells))
	for i, cell := range cells {
		if out[i] = verdictCell(cell); cell.Verdict == reading.Holds {
			out[i] = string(cell.Verdict)
		}
	}
	return out
}
