package report

import (
	"fmt"
	"slices"
	"strings"

	"backspan/model"
	"backspan/model/reading"
)

// checks are all of them with their limits, what was found where one does not
// plainly hold, and where the limits come from.
func (r *Reviewed) checks() []grid {
	all := grid{title: "All checks", head: append([]string{"check", "limit"}, r.variants()...), figures: true, second: "limit",
		note: "A bare margin, a share of the limit, says that the check holds; \"varies\": each variant has a limit of its own."}
	for _, k := range r.Compared.Checks {
		row := []string{k.Label, limitText(k)}
		for _, cell := range k.Cells {
			text := verdictCell(cell)
			if margin := cell.MarginText(); cell.Verdict == reading.Holds && margin != "" {
				text = margin
			}
			row = append(row, text)
		}
		all.rows = append(all.rows, row)
	}
	return []grid{all, r.cures(), r.limitSources()}
}

// sides are the signs of what a limit asks.
var sides = map[reading.Side]string{reading.Least: "≥", reading.Most: "≤"}

// limitText is the limit where all variants share one.
func limitText(k model.CheckRow) string {
	text := ""
	for _, cell := range k.Cells {
		if !cell.Valued {
			continue
		}
		switch is := sides[cell.Side] + " " + cell.Unit.Text(cell.Limit); text {
		case "", is:
			text = is
		default:
			return "varies"
		}
	}
	return text
}

// cures are the checks that fail or are thin, with what was found and what to
// do.
func (r *Reviewed) cures() grid {
	g := grid{title: "Checks that fail or are thin: what was found, and what to do", under: true, head: []string{"check", "found", "what to do"}}
	for _, v := range []reading.Verdict{reading.Fails, reading.Thin} {
		for _, k := range r.Compared.Checks {
			if worst, _ := reading.Worst(k.Cells); worst.Verdict == v {
				g.rows = append(g.rows, []string{k.Label, r.foundText(k), r.cureText(k, worst)})
			}
		}
	}
	if len(g.rows) == 0 {
		g.note = "none"
	}
	return g
}

// cureText is what to do about the worst, and whose it is where another variant
// would be told something else.
func (r *Reviewed) cureText(k model.CheckRow, worst reading.Check) string {
	whose, alone := "", true
	for i, cell := range k.Cells {
		switch {
		case cell == worst && whose == "":
			whose = r.Compared.Outcomes[i].Variant
		case (cell.Verdict == reading.Fails || cell.Verdict == reading.Thin) && cell.Cure != worst.Cure:
			alone = false
		}
	}
	if alone || worst.Cure == "" {
		return worst.Cure
	}
	return whose + ": " + worst.Cure
}

func (r *Reviewed) foundText(k model.CheckRow) string {
	limit := limitText(k)
	var words []string
	for i, cell := range k.Cells {
		if cell.Verdict != reading.Fails && cell.Verdict != reading.Thin {
			continue
		}
		text := r.Compared.Outcomes[i].Variant + " " + string(cell.Verdict)
		if cell.Valued {
			text += " " + cell.Unit.Text(cell.Value)
			if limit == "varies" {
				text += " (" + sides[cell.Side] + " " + cell.Unit.Text(cell.Limit) + ")"
			}
		}
		words = append(words, text)
	}
	if limit != "" && limit != "varies" {
		return limit + ": " + strings.Join(words, "; ")
	}
	return strings.Join(words, "; ")
}

// limitSources tell for each source of limits which checks stand on it.
func (r *Reviewed) limitSources() grid {
	var s origins
	for _, k := range r.Compared.Checks {
		for _, cell := range k.Cells {
			s.add(cell.Origin, k.Label)
		}
	}
	return grid{title: "Where the limits come from", under: true, beside: true, points: s.points()}
}

// sources tell for each part on what the methods of its readings stand.
func (r *Reviewed) sources() grid {
	var s origins
	counts := map[[2]string]int{}
	for _, row := range r.Compared.Readings {
		met := map[string]bool{}
		part := partTitle(strings.SplitN(row.Key, ".", 2)[0])
		for _, q := range row.Cells {
			if q.Origin != "" && !met[q.Origin] {
				met[q.Origin] = true
				counts[[2]string{part, q.Origin}]++
				s.add(part, q.Origin)
			}
		}
	}
	for _, at := range s.list {
		for i, origin := range at.what {
			at.what[i] = fmt.Sprintf("%s (%d)", origin, counts[[2]string{at.origin, origin}])
		}
	}
	return grid{title: "Sources of the readings", beside: true, points: s.points(),
		note: "In brackets: how many readings of the part stand on the source. Each reading's own method and source: the format json of backspan compare, or w on a reading at the bench."}
}

// origins gather what stands on the same ground, in the order in which it
// comes.
type origins struct {
	list []ground
	seen map[[2]string]bool
}

type ground struct {
	origin string
	what   []string
}

func (s *origins) add(origin, label string) {
	if s.seen == nil {
		s.seen = map[[2]string]bool{}
	}
	if origin == "" || s.seen[[2]string{origin, label}] {
		return
	}
	s.seen[[2]string{origin, label}] = true
	i := slices.IndexFunc(s.list, func(g ground) bool { return g.origin == origin })
	if i < 0 {
		i = len(s.list)
		s.list = append(s.list, ground{origin: origin})
	}
	s.list[i].what = append(s.list[i].what, label)
}

// points are a line for each ground.
func (s *origins) points() []string {
	lines := make([]string, len(s.list))
	for i, g := range s.list {
		lines[i] = g.origin + " → " + strings.Join(g.what, "; ")
	}
	return lines
}
