package explore

import (
	"cmp"
	"math"
	"slices"

	"backspan/model"
	"backspan/model/reading"
)

// What a design that is not allowed is charged: one for each check that fails
// and up to one more for how far, so that fewer failing checks come first, and
// more than any number of them where there is no design or no figure.
const (
	noDesign = 1e6
	noFigure = 1e3
)

func (s Search) judge(m *machine, at []float64) Candidate {
	o, refused := m.try(at)
	if refused != "" {
		return Candidate{Finding{At: at, Refused: refused}, noDesign}
	}
	c := Candidate{Finding: Finding{At: at}}
	c.Fails, c.First = failing(o)
	for _, r := range s.readings {
		c.Figures = append(c.Figures, figure(o, r.Key))
	}
	c.Violation = s.violation(o, c)
	return c
}

func (s Search) violation(o model.Outcome, c Candidate) float64 {
	sum := 0.0
	for _, check := range o.Checks {
		if check.Verdict == reading.Fails {
			sum += 1 + math.Min(math.Abs(check.Margin), 1)
		}
	}
	for i, f := range c.Figures {
		switch {
		case !f.Known:
			sum += noFigure
		case i >= len(s.Goals):
			sum += s.Limits[i-len(s.Goals)].broken(f.Value)
		}
	}
	return sum
}

func (l Limit) broken(x float64) float64 {
	room := x - l.Value
	if l.Side == reading.Most {
		room = -room
	}
	switch {
	case room >= 0:
		return 0
	case l.Value == 0:
		return 2
	}
	return 1 + math.Min(-room/math.Abs(l.Value), 1)
}

// score turns the goals so that less is better.
func (s Search) score(c Candidate) score {
	sc := score{goals: make([]float64, len(s.Goals)), violation: c.Violation}
	for i, g := range s.Goals {
		if i < len(c.Figures) {
			sc.goals[i] = c.Figures[i].Value
		}
		if g.More {
			sc.goals[i] = -sc.goals[i]
		}
	}
	return sc
}

// Best are the best compromises of all runs, by the first goal, the best
// first. allowed is false where no run found a design that is: the one nearest
// to it is then given.
func (s Search) Best(runs []Run) (best []Candidate, allowed bool) {
	var all []Candidate
	for _, r := range runs {
		all = append(all, r.Found...)
	}
	for i, c := range all {
		sc := s.score(c)
		beaten := slices.ContainsFunc(all, func(o Candidate) bool { return s.score(o).beats(sc) })
		twice := slices.ContainsFunc(all[:i], func(o Candidate) bool { return slices.Equal(o.At, c.At) })
		if !beaten && !twice {
			best = append(best, c)
		}
	}
	slices.SortStableFunc(best, func(a, b Candidate) int {
		return cmp.Or(slices.Compare(s.score(a).goals, s.score(b).goals), slices.Compare(a.At, b.At))
	})
	if len(best) == 0 || best[0].Violation == 0 {
		return best, len(best) > 0
	}
	return best[:1], false
}
