package desk

import (
	"fmt"

	"backspan/model"
)

// Step is one edit of this session.
type Step struct {
	Name    string
	Variant string // where it was made, empty for what all variants share
}

// Steps lists the edits in the order in which they were made. The first done of
// them are in force, the others were undone. forgotten is how many older ones
// are kept no more.
func (d *Desk) Steps() (steps []Step, done, forgotten int) {
	for _, e := range d.past {
		steps = append(steps, e.step())
	}
	for i := len(d.future) - 1; i >= 0; i-- {
		steps = append(steps, d.future[i].step())
	}
	return steps, len(d.past), d.forgotten
}

func (e edit) step() Step {
	return Step{Name: e.name, Variant: variantName(e.before, e.place.Variant)}
}

func variantName(s *model.Study, i int) string {
	if i < 0 || i >= len(s.Variants) {
		return ""
	}
	return s.Variants[i].Name
}

// GoTo undoes or does again as many edits as it takes until done of them are in
// force, as one step of the study. It returns what it did in words, empty when
// nothing, and the place of the last edit on the way.
func (d *Desk) GoTo(done int) (string, Place) {
	done = min(max(done, 0), len(d.past)+len(d.future))
	by := done - len(d.past)
	state, place := d.study, Place{}
	for range by {
		e := d.future[len(d.future)-1]
		d.future, d.past = d.future[:len(d.future)-1], append(d.past, e)
		state, place = e.after, e.lands
	}
	for range -by {
		e := d.past[len(d.past)-1]
		d.past, d.future = d.past[:len(d.past)-1], append(d.future, e)
		state, place = e.before, e.place
	}
	switch {
	case by == 0:
		return "", place
	case by > 0:
		d.last = fmt.Sprintf("%d done again", by)
	default:
		d.last = fmt.Sprintf("%d undone", -by)
	}
	d.reach(state)
	d.Select(place.Variant)
	return d.last, place
}

// state is the study after done edits.
func (d *Desk) state(done int) *model.Study {
	switch back, forth := len(d.past)-done, done-len(d.past); {
	case back > 0 && back <= len(d.past):
		return d.past[len(d.past)-back].before
	case forth > 0 && forth <= len(d.future):
		return d.future[len(d.future)-forth].after
	}
	return d.study
}

// Recall adds the variant in hand, as it was after done edits, behind itself
// under a free name and takes the copy in hand. The error is a sentence.
func (d *Desk) Recall(done int) error {
	v := d.Variant()
	if v == nil {
		return fmt.Errorf("no variant is in hand")
	}
	was := d.state(done)
	i := was.Index(v.Name)
	if i < 0 {
		return fmt.Errorf("%s was not there in that state under this name; go to it and duplicate it there", v.Name)
	}
	then := was.Variants[i].Clone()
	return d.insert(d.Selected+1, func(s *model.Study) model.Variant {
		then.Name = s.FreeName(v.Name)
		return then
	}, "duplicate as", ", as it was "+d.after(done))
}

// after names a state by the edit that led to it.
func (d *Desk) after(done int) string {
	steps, _, _ := d.Steps()
	if done < 1 || done > len(steps) {
		return "at the beginning"
	}
	return "after: " + steps[done-1].Name
}
