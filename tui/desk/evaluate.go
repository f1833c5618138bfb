package desk

import (
	"fmt"
	"reflect"
	"sync"

	"backspan/model"
	"backspan/model/reading"
)

// evaluate finds the outcomes of s. Outcomes of the study before are kept for
// the variants that an edit did not touch.
func evaluate(s, before *model.Study, known []model.Outcome) []model.Outcome {
	out := make([]model.Outcome, len(s.Variants))
	var running sync.WaitGroup
	same := before != nil && reflect.DeepEqual(givens(s), givens(before))
	for i := range s.Variants {
		v := &s.Variants[i]
		if same {
			if j := before.Index(v.Name); j >= 0 && j < len(known) && reflect.DeepEqual(*v, before.Variants[j]) {
				out[i] = known[j]
				continue
			}
		}
		running.Go(func() { out[i] = outcome(s, v) })
	}
	running.Wait()
	return out
}

// Same reports whether variant i is still the machine, under the same givens,
// that variant j was in an earlier state.
func (d *Desk) Same(i int, was *model.Study, j int) bool {
	if was == d.study {
		return i == j
	}
	return d.has(i) == nil && reflect.DeepEqual(d.study.Variants[i], was.Variants[j]) && reflect.DeepEqual(givens(d.study), givens(was))
}

// givens is what of a study bears on every outcome.
func givens(s *model.Study) model.Study {
	g := *s
	g.Name, g.Notes, g.Reference, g.Decisions, g.Variants = "", "", "", nil, nil
	return g
}

// outcome shields a person's unsaved work from a fault of the model: a variant
// that cannot be computed shows one check that says so.
func outcome(s *model.Study, v *model.Variant) (o model.Outcome) {
	defer func() {
		if fault := recover(); fault != nil {
			o = model.Outcome{Variant: v.Name, Checks: []reading.Check{reading.Condition("model.computed", "Variant can be computed", false).
				Advice(fmt.Sprintf("undo the last edit; the model stopped with: %v", fault))}}
		}
	}()
	return model.Evaluate(s, v)
}
