// Package desk holds the open study while it is worked on: its present state,
// the states it had, and what the model finds of it. It knows nothing of
// terminals.
//
// A state is never changed once it has been reached; an edit works on a copy.
// So a save that runs meanwhile, and every step back, sees a whole study.
package desk

import (
	"reflect"

	"backspan/model"
	"backspan/model/param"
)

// Shared stands in place of a variant's index for what all variants share.
const Shared = -1

// keep is how many edits can be undone.
const keep = 1000

// Place is where an edit was made, so that undoing it can lead back there.
type Place struct {
	Variant int    // index, or Shared
	Path    string // of the parameter; empty for a whole variant
}

// edit is a step from one state to the next.
type edit struct {
	name   string
	place  Place // where it was made
	lands  Place // where it led
	before *model.Study
	after  *model.Study
}

// Desk is the open study.
type Desk struct {
	Path     string // file of the study, "" when it has none yet
	Selected int    // variant in hand

	study    *model.Study
	saved    *model.Study // the state that the file holds, or the first one
	unsaved  bool
	outcomes []model.Outcome

	earlier         []model.Outcome // before the last edit, undo or redo
	past, future    []edit
	forgotten       int // edits that cannot be undone any more
	last            string
	revision        int
	comparison      model.Comparison
	comparisonTaken int // revision of which comparison is
	declared        map[int][]param.Section
	declaredFor     *model.Study // state of which declared is
}

// New lays a study on the desk. path is its file, "" when it has none yet.
func New(s *model.Study, path string) *Desk {
	d := &Desk{Path: path, study: s.Clone(), revision: 1}
	d.saved = d.study
	d.outcomes = evaluate(d.study, nil, nil)
	d.Selected = max(d.study.ReferenceIndex(), 0)
	return d
}

// Study is the present state. It must not be changed.
func (d *Desk) Study() *model.Study { return d.study }

// Revision rises with every change of the study, back or forth.
func (d *Desk) Revision() int { return d.revision }

// Variant is the variant in hand, nil when the study has none.
func (d *Desk) Variant() *model.Variant {
	if d.Selected < 0 || d.Selected >= len(d.study.Variants) {
		return nil
	}
	return &d.study.Variants[d.Selected]
}

// InHand names the variant in hand.
func (d *Desk) InHand() string {
	if v := d.Variant(); v != nil {
		return v.Name
	}
	return "no variant"
}

// Select takes another variant in hand; an index beyond the ends is ignored.
func (d *Desk) Select(i int) {
	if i >= 0 && i < len(d.study.Variants) {
		d.Selected = i
	}
}

// Outcome is what the model finds of the variant in hand.
func (d *Desk) Outcome() model.Outcome { return d.OutcomeOf(d.Selected) }

// ReferenceOutcome is what the model finds of the reference variant.
func (d *Desk) ReferenceOutcome() model.Outcome { return d.OutcomeOf(d.study.ReferenceIndex()) }

// OutcomeOf is what the model finds of variant i, empty when there is none.
func (d *Desk) OutcomeOf(i int) model.Outcome {
	if i < 0 || i >= len(d.outcomes) {
		return model.Outcome{}
	}
	return d.outcomes[i]
}

// Earlier is what the model found of the variant in hand before the last edit;
// false when there was no edit yet or the variant is new. A variant keeps its
// past under its name, and under its place when it was renamed.
func (d *Desk) Earlier() (model.Outcome, bool) {
	v := d.Variant()
	if v == nil {
		return model.Outcome{}, false
	}
	for _, o := range d.earlier {
		if o.Variant == v.Name {
			return o, true
		}
	}
	if len(d.earlier) == len(d.outcomes) {
		return d.earlier[d.Selected], true
	}
	return model.Outcome{}, false
}

// Comparison lays the variants side by side. It is taken anew only after a
// change.
func (d *Desk) Comparison() model.Comparison {
	if d.comparisonTaken != d.revision && len(d.outcomes) > 0 {
		d.comparison = model.Compare(d.study, d.outcomes)
		d.comparisonTaken = d.revision
	}
	if len(d.outcomes) == 0 {
		return model.Comparison{Study: d.study.Name, Currency: d.study.Currency, Reference: Shared}
	}
	return d.comparison
}

// Unsaved reports whether the study differs from its file, or, without a file,
// from what it was at first.
func (d *Desk) Unsaved() bool { return d.unsaved }

// Saved notes that the file at path now holds that state.
func (d *Desk) Saved(path string, state *model.Study) {
	d.Path, d.saved = path, state
	d.weigh()
}

// weigh compares the present state with the saved one.
func (d *Desk) weigh() {
	d.unsaved = d.study != d.saved && !reflect.DeepEqual(d.study, d.saved)
}

// Last is the name of the last edit, empty before the first.
func (d *Desk) Last() string { return d.last }

// CanUndo is the name of the edit that Undo would take back.
func (d *Desk) CanUndo() string {
	if len(d.past) == 0 {
		return ""
	}
	return d.past[len(d.past)-1].name
}
