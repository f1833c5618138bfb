package model

import (
	"fmt"
	"math"
	"strings"

	"backspan/model/drive"
	"backspan/model/gear"
	"backspan/model/param"
	"backspan/model/reading"
)

// TeethAsk is what a pair of gears is looked for by. What is empty follows from
// the variant's own gear.
type TeethAsk struct {
	Variant         string // the reference, or the first with a gear, when empty
	Ratio           param.Slot
	Tolerance       float64 // of the ratio, a share
	CentreDistance  param.Slot
	CentreTolerance float64 // m
	Modules         []float64
	Rows            int // listed at most
}

// TeethTable is the pairs found for one variant, best first.
type TeethTable struct {
	Study, Variant string
	Wish           gear.TeethWish
	Found          int // before the list was cut
	Rows           []TeethRow
}

// TeethRow is one pair, and what its teeth stand in that variant.
type TeethRow struct {
	gear.TeethCandidate
	Pitting, Bending reading.Reading
}

// SearchTeeth looks for pairs of gears for a variant and rates each of them in
// its place. The error is a sentence for the person who asks.
func SearchTeeth(s *Study, ask TeethAsk) (TeethTable, error) {
	v, err := s.geared(ask.Variant)
	if err != nil {
		return TeethTable{}, err
	}
	t := TeethTable{Study: s.Name, Variant: v.Name, Wish: wishOf(s, v, ask)}
	found, err := gear.SearchTeeth(t.Wish)
	if err != nil {
		return TeethTable{}, err
	}
	t.Found = len(found)
	for _, c := range found[:min(len(found), ask.Rows)] {
		with := v.Clone()
		with.Drive.Gear = c.In(with.Drive.Gear)
		o := Evaluate(s, &with)
		row := TeethRow{TeethCandidate: c}
		row.Pitting, _ = o.Reading("gear.pitting_safety")
		row.Bending, _ = o.Reading("gear.bending_safety")
		t.Rows = append(t.Rows, row)
	}
	return t, nil
}

// geared is the variant of that name, which must have a gear; without a name
// the reference when it has one, else the first that has.
func (s *Study) geared(name string) (*Variant, error) {
	var with []string
	found := -1
	for i := range s.Variants {
		if s.Variants[i].Drive.Kind != drive.Gear {
			continue
		}
		with = append(with, s.Variants[i].Name)
		if name == s.Variants[i].Name || name == "" && (found < 0 || i == s.ReferenceIndex()) {
			found = i
		}
	}
	switch {
	case len(with) == 0:
		return nil, fmt.Errorf("no variant of %s has a gear; set Kind of drive to gear in one", s.Name)
	case found < 0 && s.Index(name) < 0:
		return nil, fmt.Errorf("there is no variant \"%s\"; name one of: %s", name, strings.Join(with, ", "))
	case found < 0:
		return nil, fmt.Errorf("variant \"%s\" has no gear; name one of: %s", name, strings.Join(with, ", "))
	}
	return &s.Variants[found], nil
}

func wishOf(s *Study, v *Variant, ask TeethAsk) gear.TeethWish {
	like := v.Drive.Gear
	w := gear.TeethWish{
		Ratio: float64(like.WheelTeeth) / float64(like.PinionTeeth), Tolerance: ask.Tolerance,
		CentreDistance: like.CentreDistance, CentreTolerance: ask.CentreTolerance, ShiftSum: like.PinionShift + like.WheelShift,
		Modules: ask.Modules, Least: 12, Most: 40, Like: like,
	}
	if ask.Ratio.Known {
		w.Ratio = ask.Ratio.Value
	}
	if ask.CentreDistance.Known {
		w.CentreDistance = ask.CentreDistance
	}
	if len(w.Modules) == 0 {
		w.Modules = []float64{like.Module}
		// At one centre distance the module is what trades teeth for strength.
		if w.CentreDistance.Known {
			w.Modules = gear.ModulesNear(like.Module)
		}
	}
	o := Evaluate(s, v)
	if mesh, ok := o.Reading("gear.mesh_frequency"); ok && mesh.Known() {
		w.CrankSpeed = mesh.Value * 2 * math.Pi / float64(like.PinionTeeth)
	}
	return w
}
