package explore

import (
	"fmt"
	"math"
	"strings"

	"backspan/model/param"
)

// Caution stands with every answer.
const Caution = "Figures are for design and prove no airworthiness."

// Verdict says whether there is such a design and whether its checks pass.
func (f Finding) Verdict() string {
	switch {
	case f.Refused != "":
		return "no such design: " + f.Refused
	case f.Fails == 1:
		return "fails: " + f.First
	case f.Fails > 1:
		return fmt.Sprintf("%d fail, first: %s", f.Fails, f.First)
	}
	return "pass"
}

// Figure is the reading of that place among those asked for; not known where
// there is no design.
func (f Finding) Figure(i int) param.Slot {
	if i >= len(f.Figures) {
		return param.Slot{}
	}
	return f.Figures[i]
}

// Note says how many of the designs pass.
func (s Sweep) Note(fs []Finding) string {
	sound := 0
	for _, f := range fs {
		if f.Sound() {
			sound++
		}
	}
	return fmt.Sprintf("%d of %d designs pass every check.", sound, len(fs))
}

// Solved is what a solve found in the end. Where nothing brings the reading to
// its target or past it, the nearest design alone is shown.
type Solved struct {
	Shown     []Solution
	Met, Past int  // values that meet the target, and that go past it
	Any       bool // some design has the reading
}

// What is the word for what is shown at i: "met", "past" or "nearest".
func (v Solved) What(i int) string {
	switch {
	case v.Met+v.Past == 0:
		return "nearest"
	case v.Shown[i].Past:
		return "past"
	}
	return "met"
}

// Sum puts the stretches together.
func (s Solve) Sum(sts []Stretch) Solved {
	var v Solved
	for _, st := range sts {
		v.Shown = append(v.Shown, st.Found...)
	}
	for _, found := range v.Shown {
		if found.Past {
			v.Past++
		} else {
			v.Met++
		}
	}
	nearest, any := s.Nearest(sts)
	if v.Any = any; len(v.Shown) == 0 && any {
		v.Shown = []Solution{{Finding: nearest}}
	}
	return v
}

// Remark says how what is shown at i stands to the target.
func (s Solve) Remark(v Solved, i int) string {
	found := v.Shown[i]
	off := s.off(found.Finding)
	switch v.What(i) {
	case "met":
		return "meets it"
	case "past":
		return fmt.Sprintf("misses it by %s; on the other side, %s at %s", off, s.Reading.Unit.Text(found.Other.Figures[0].Value), s.Dial.Text(found.Other.At[0]))
	}
	return fmt.Sprintf("misses it by %s, the nearest", off)
}

// off is how far a design is from the target, with its sign and unit.
func (s Solve) off(f Finding) string {
	miss, _ := s.Miss(f)
	u := s.Reading.Unit
	return strings.TrimSpace(u.Delta(miss, f.Figures[0].Value) + " " + u.Symbol)
}

// Note says in a sentence what was found.
func (s Solve) Note(v Solved) string {
	within := fmt.Sprintf("%s from %s to %s", s.Dial.Label, s.Dial.Text(s.Levels[0]), s.Dial.Text(s.Levels[s.Total()]))
	switch {
	case v.Met == 1 && v.Past == 0:
		return "One value of " + within + " meets the target."
	case v.Met > 0 && v.Past == 0:
		return fmt.Sprintf("%d values of %s meet the target.", v.Met, within)
	case v.Met > 0:
		return fmt.Sprintf("Of %s the target is met %d times; %d times more the reading goes past it without meeting it.", within, v.Met, v.Past)
	case v.Past > 0:
		return fmt.Sprintf("No value of %s meets the target; at %d the reading goes past it from one side to the other.", within, v.Past)
	case v.Any:
		return "No value of " + within + " meets the target; the nearest of those looked at is shown."
	}
	return "No value of " + within + " gives " + s.Reading.Label + " at all."
}

// Reach is from where to where the best compromises reach in goal i, SI.
func (s Search) Reach(best []Candidate, i int) (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for _, c := range best {
		least, most = math.Min(least, c.Figures[i].Value), math.Max(most, c.Figures[i].Value)
	}
	return least, most
}

// Note says what Best found: how many, and how far they reach in each goal.
func (s Search) Note(best []Candidate, allowed bool) string {
	if !allowed {
		return "No design passed every check and kept to the limits; the nearest to it is shown. Widen what is free, or ease a limit."
	}
	note := fmt.Sprintf("%d designs, of which none is better in one goal without being worse in another", len(best))
	if len(best) == 1 {
		note = "One design is the best in every goal"
	}
	for i, g := range s.Goals {
		least, most := s.Reach(best, i)
		reach := g.Unit.Text(most)
		if low := g.Unit.Number(least); low != g.Unit.Number(most) {
			reach = low + " to " + reach
		}
		note += "; " + g.Label + " " + reach
	}
	return note + ". A search finds good designs and does not prove that there are no better."
}

// ShareText is k of n in words: "none", "all" or a percentage that says neither.
func ShareText(k, n int) string {
	switch k {
	case 0:
		return "none"
	case n:
		return "all"
	}
	text := fmt.Sprintf("%.3g", 100*float64(k)/float64(n))
	if text == "100" {
		return fmt.Sprintf("all but %d of %d", n-k, n)
	}
	return text + " %"
}

// Note says in how many of the machines no check fails, and how sure that is:
// of n samples without a failure, less than 3/n fail with 95 % confidence, for
// (1-3/n)^n is 0.05. The doubt of a method moves its reading alone.
func (r Result) Note() string {
	note := fmt.Sprintf("Every check holds or is thin in %s of the machines", ShareText(r.Sound, r.Samples))
	if r.Methods > 0 {
		note += " (no check counts the doubt of a method)"
	}
	if r.Sound == r.Samples {
		note += fmt.Sprintf(", so that less than %.2g %% fail one, with 95 %% confidence and if the spreads are as given", 100*3/float64(r.Samples))
	}
	if r.Clipped > 0 {
		note += fmt.Sprintf("; in %s a value was held at the end of its allowed range", ShareText(r.Clipped, r.Samples))
	}
	return note + ". Spreads are independent of one another; percentages behind names are shares of the variance."
}
