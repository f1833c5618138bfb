package report

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
	"backspan/store/report/elevation"
)

// measures are the lettered dimensions of the elevations.
func (r *Reviewed) measures() grid {
	g := grid{title: "Dimensions of the side elevations, in " + unit.Millimetre.Symbol, head: append([]string{"dimension"}, r.variants()...), under: true, figures: true}
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
	g := grid{title: "How far figures may be off", head: append([]string{"from low end to high end"}, r.variants()...), figures: true,
		note: "Only where a method's error is known or was estimated; a figure without a line here is not the surer for it."}
	for i, o := range r.Compared.Outcomes {
		for _, low := range o.Readings {
			stem, ok := strings.CutSuffix(low.Key, lowEnd)
			if !ok {
				continue
			}
			if high, ok := o.Reading(stem + highEnd); ok {
				name := low.Label + " / " + high.Label
				if middle, ok := o.Reading(stem); ok {
					name = middle.Label
				}
				put(&g, name, i, len(r.Compared.Outcomes), bandText(low, high))
			}
		}
		for _, q := range o.Readings {
			if doubt := eitherWay.FindString(q.Method + "; " + q.Origin); doubt != "" && q.Known() {
				put(&g, q.Label, i, len(r.Compared.Outcomes), strings.Replace(doubt, "plus or minus ", "±", 1))
			}
		}
	}
	return g
}

// eitherWay is how a method says by how much its figures may be off.
var eitherWay = regexp.MustCompile(`plus or minus [0-9.]+ [^,;. ]+`)

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

// assumed is a parameter left at a default that nobody measured.
type assumed struct {
	path, section, label, value, origin string
	in, given                           []bool // the variants that have this value, and those that were given one
}

// guesses are the origins that say no more than what kind of guess a value is.
var guesses = []string{"invented", "estimate", "common practice, no source"}

// assumptions are the parameters left at a default that is nobody's
// measurement: first those whose origin says something, then the guesses.
func (r *Reviewed) assumptions() []grid {
	list := r.assumed()
	sourced := grid{title: "Assumptions", beside: true,
		note: "Values left at a default that nobody measured. A default may have been published for something else than this machine. Where no variant is named, it stands in all that have the parameter."}
	plain := make([]grid, len(guesses))
	for i, word := range guesses {
		plain[i] = grid{title: "Assumptions, " + word, head: []string{"parameter", "value"}, under: true, beside: true}
	}
	for _, a := range list {
		value := a.value + r.assumedIn(a, list)
		if i := slices.Index(guesses, a.origin); i >= 0 {
			plain[i].rows = append(headed(plain[i].rows, a.section), []string{a.label, value})
			continue
		}
		sourced.points = append(sourced.points, a.section+": "+a.label+" "+value+"; "+a.origin)
	}
	plain = slices.DeleteFunc(plain, func(g grid) bool { return len(g.rows) == 0 })
	return append([]grid{sourced}, plain...)
}

// assumedIn names the variants that have this value, where others have none or
// another.
func (r *Reviewed) assumedIn(a assumed, list []assumed) string {
	other := slices.ContainsFunc(list, func(b assumed) bool { return a.path == b.path && a.value != b.value })
	switch {
	case a.given == nil && !other:
		return ""
	case a.given == nil:
		return " (" + r.names(a.in) + ")"
	}
	return " (" + r.names(a.in) + "; set in " + r.names(a.given) + ")"
}

func (r *Reviewed) assumed() []assumed {
	var list []assumed
	at, given := map[[2]string]int{}, map[string][]bool{}
	for i := range r.Study.Variants {
		lines := newBuildLines(r.Study, &r.Study.Variants[i], &r.Compared.Outcomes[i])
		for _, s := range lines.sections {
			for _, p := range s.Params {
				if s.Hidden || p.Hidden || !doubtful(p.Origin) {
					continue
				}
				path := s.Path(p)
				if lines.origin(path, p) == asSet {
					if given[path] == nil {
						given[path] = make([]bool, len(r.Study.Variants))
					}
					given[path][i] = true
					continue
				}
				value := money(p.Show(), p.Unit, r.Study.Currency)
				n, met := at[[2]string{path, value}]
				if !met {
					n = len(list)
					at[[2]string{path, value}] = n
					list = append(list, assumed{path: path, section: s.Label, label: p.Label, value: value, origin: p.Origin, in: make([]bool, len(r.Study.Variants))})
				}
				list[n].in[i] = true
			}
		}
	}
	for i := range list {
		list[i].given = given[list[i].path]
	}
	return list
}

// inFull are the parameters that were cut in the table of what differs; none
// where none was.
func (r *Reviewed) inFull() []grid {
	g := grid{title: "Parameters in full that are cut above"}
	for _, p := range r.Compared.Parameters {
		if !p.Differs || !slices.ContainsFunc(p.Cells, tooWide) {
			continue
		}
		var told origins
		for i, cell := range p.Cells {
			if cell != "" {
				told.add(cell, r.Compared.Outcomes[i].Variant)
			}
		}
		for _, t := range told.list {
			g.points = append(g.points, p.Section+": "+p.Label+r.columns(p.Path)+", "+strings.Join(t.what, ", ")+" → "+t.origin)
		}
	}
	if len(g.points) == 0 {
		return nil
	}
	return []grid{g}
}

// columns are what the figures of a table stand for.
func (r *Reviewed) columns(path string) string {
	for i := range r.Study.Variants {
		if p, ok := param.Find(r.Study.Variants[i].Sections(), path); ok && p.Kind == param.KindTable {
			return " (" + p.Range() + ")"
		}
	}
	return ""
}

// cautions are what no check could rate, and what holds for every machine.
func (r *Reviewed) cautions() grid {
	g := grid{title: "Cautions, and what is not rated", named: true, head: []string{"not rated", "in", "why"}, note: buildCaution + caution}
	for _, k := range r.Compared.Checks {
		told := map[string]bool{}
		for _, cell := range k.Cells {
			if cell.Verdict != reading.NotRated || told[cell.Why] {
				continue
			}
			have, whys := make([]bool, len(k.Cells)), []string{}
			for i, other := range k.Cells {
				if have[i] = other.Verdict == reading.NotRated && figures.ReplaceAllString(other.Why, "#") == figures.ReplaceAllString(cell.Why, "#"); have[i] {
					told[other.Why] = true
					whys = append(whys, other.Why)
				}
			}
			g.rows = append(g.rows, []string{k.Label, r.names(have), merged(whys)})
		}
	}
	return g
}

var figures = regexp.MustCompile(`[0-9]+(\.[0-9]+)?`)

// merged is one sentence for several that differ in their figures only: each
// figure becomes the range of them.
func merged(sentences []string) string {
	n := -1
	return figures.ReplaceAllStringFunc(sentences[0], func(first string) string {
		n++
		least, most := first, first
		for _, s := range sentences[1:] {
			if text := figures.FindAllString(s, -1)[n]; magnitude(text) < magnitude(least) {
				least = text
			} else if magnitude(text) > magnitude(most) {
				most = text
			}
		}
		if least == most {
			return first
		}
		return least + " to " + most
	})
}

func magnitude(figure string) float64 {
	x, _ := strconv.ParseFloat(figure, 64) // the pattern lets only numbers through
	return x
}
