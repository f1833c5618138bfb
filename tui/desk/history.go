package desk

import "backspan/model"

// do carries out one edit on a copy of the study. When the edit is refused, or
// leaves everything as it was, nothing happens.
func (d *Desk) do(place Place, change func(s *model.Study) (name string, err error)) error {
	next := d.study.Clone()
	name, err := change(next)
	if err != nil || name == "" {
		return err
	}
	d.past = append(d.past, edit{name, place, place, d.study, next})
	if len(d.past) > keep {
		d.past = d.past[1:]
		d.forgotten++
	}
	d.future = nil
	d.last = name
	d.reach(next)
	return nil
}

// reach makes s the present state.
func (d *Desk) reach(s *model.Study) {
	d.earlier = d.outcomes
	d.outcomes = evaluate(s, d.study, d.outcomes)
	d.study = s
	d.revision++
	d.weigh()
	d.Selected = min(d.Selected, max(len(s.Variants)-1, 0))
}

// Undo takes the last edit back. It returns the edit's name and place; the
// name is empty when there is nothing to undo.
func (d *Desk) Undo() (string, Place) {
	if len(d.past) == 0 {
		return "", Place{}
	}
	e := d.past[len(d.past)-1]
	d.past = d.past[:len(d.past)-1]
	d.future = append(d.future, e)
	d.last = "undone: " + e.name
	d.reach(e.before)
	d.Select(e.place.Variant)
	return e.name, e.place
}

// Redo carries out again the edit that was undone last.
func (d *Desk) Redo() (string, Place) {
	if len(d.future) == 0 {
		return "", Place{}
	}
	e := d.future[len(d.future)-1]
	d.future = d.future[:len(d.future)-1]
	d.past = append(d.past, e)
	d.last = "done again: " + e.name
	d.reach(e.after)
	d.Select(e.lands.Variant)
	return e.name, e.lands
}

// land notes that the last edit led to variant i and takes it in hand.
func (d *Desk) land(i int) {
	d.past[len(d.past)-1].lands.Variant = i
	d.Select(i)
}

// Replace makes another study the present state, as one edit.
func (d *Desk) Replace(s *model.Study, name string) {
	_ = d.do(Place{Variant: Shared}, func(next *model.Study) (string, error) {
		*next = *s.Clone()
		return name, nil
	})
}
