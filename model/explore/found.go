package explore

import (
	"fmt"
	"strings"

	"backspan/model"
)

// Found is a design of the sweep as a variant of its own, with a name and a
// note that say where it comes from. The study may have the name already.
func (s Sweep) Found(at []float64) (model.Variant, error) {
	var labels []string
	for _, a := range s.Axes {
		labels = append(labels, a.Label)
	}
	return s.Base.found(dials(s.Axes), at, fmt.Sprintf("Found by a sweep from %s over %s.", s.Base.Name(), strings.Join(labels, " and ")))
}

// Found is what is shown at i as a variant of its own. Its note says so when
// it misses the target.
func (s Solve) Found(v Solved, i int) (model.Variant, error) {
	how := fmt.Sprintf("Found from %s by changing %s for %s of %s", s.Base.Name(), s.Dial.Label, s.Reading.Label, s.Reading.Unit.Text(s.Target))
	if v.What(i) != "met" {
		how += ", which it misses by " + s.off(v.Shown[i].Finding)
	}
	return s.Base.found([]Dial{s.Dial}, v.Shown[i].At, how+".")
}

// Found is a design of the search as a variant of its own. Its note says so when
// no design was allowed.
func (s Search) Found(at []float64, allowed bool) (model.Variant, error) {
	goals := make([]string, len(s.Goals))
	for i, g := range s.Goals {
		goals[i] = g.text()
	}
	how := fmt.Sprintf("Found by a search from %s for %s", s.Base.Name(), strings.Join(goals, " and "))
	if !allowed {
		how += "; it does not pass every check, or is past a limit that was set"
	}
	return s.Base.found(s.Dials(), at, how+".")
}

func (g Goal) text() string {
	if g.More {
		return "more " + g.Label
	}
	return "less " + g.Label
}

func (b Base) found(dials []Dial, at []float64, how string) (model.Variant, error) {
	v, err := b.With(dials, at)
	if err != nil {
		return v, err
	}
	v.Name = strings.TrimSuffix(b.Name(), " found") + " found"
	v.Notes = strings.TrimSpace(v.Notes + " " + how)
	return v, nil
}
