package gear

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"

	"backspan/model/param"
	"backspan/model/unit"
)

// TeethWish is what a pair of gears should give. Lengths in m, shares of one.
type TeethWish struct {
	Ratio           float64 // wheel teeth over pinion teeth
	Tolerance       float64 // of the ratio, either way
	CentreDistance  param.Slot
	CentreTolerance float64 // either way, where no shift within reach meets the centre distance
	ShiftSum        float64 // of both gears, where no centre distance is given, modules
	Modules         []float64
	Least, Most     int     // pinion teeth
	CrankSpeed      float64 // for the mesh frequency, rad/s

	// Face width, helix, pressure angle, rack and materials are those of Like.
	Like Spec
}

// TeethCandidate is a pair of gears that can be built.
type TeethCandidate struct {
	PinionTeeth, WheelTeeth int
	Module                  float64 // m
	Ratio                   float64
	RatioError              float64 // over the wish, a share
	CentreDistance          float64 // m
	CentreError             float64 // over the wish, m; 0 without a wish
	ShiftSum                float64 // needed for the centre distance, modules
	PinionShift, WheelShift float64 // proposed, modules
	Sliding                 [2]float64
	ContactRatio            float64 // transverse
	OverlapRatio            float64
	TipThickness            [2]float64 // m
	UndercutRoom            [2]float64 // shift over the least, modules
	CommonFactor            int        // 1 is hunting
	MeshFrequency           float64    // Hz
	Score                   float64    // see SearchTeeth; lower is better
}

// The sums of shift looked at, modules, and what a good pair has (common
// practice, no source).
const (
	leastShiftSum   = -0.5
	mostShiftSum    = 1.4
	goodContact     = 1.4
	goodTip         = 0.5 // modules
	leastSoftTip    = 0.2 // modules, from memory: through-hardened teeth
	mostWheelTeeth  = 150
	leastWheelTeeth = 12
)

// SplitOrigin is where the split of the shifts is from.
const SplitOrigin = "balanced specific sliding at both ends of contact, after Henriot; from memory"

// SearchTeeth lists the pairs that meet a wish, best first, and equal ones by
// module and teeth. Pairs that are undercut, interfere, end in thin tips, run
// out of contact or of clearance are left out, as are those whose centre
// distance misses the wish by more than its tolerance. The shifts are split so
// that both gears slide as hard over their roots.
//
// The score adds five parts, each from 0 to 1: the error of the ratio over its
// tolerance; that of the centre distance over its own; 1 for teeth that share a
// factor; what the contact ratio lacks to 1.4, over 0.2; and what the thinner
// tip lacks to half a module, over the span down to the least allowed. It says
// nothing of strength, which grows with the module at one centre distance.
//
// The error says what of the wish cannot be looked for.
func SearchTeeth(w TeethWish) ([]TeethCandidate, error) {
	if err := w.sound(); err != nil {
		return nil, err
	}
	var found []TeethCandidate
	for _, module := range w.Modules {
		for pinion := w.Least; pinion <= w.Most; pinion++ {
			low, high := w.wheels(pinion)
			for wheel := low; wheel <= high; wheel++ {
				if c, ok := w.candidate(module, pinion, wheel); ok {
					found = append(found, c)
				}
			}
		}
	}
	slices.SortFunc(found, func(a, b TeethCandidate) int {
		return cmp.Or(cmp.Compare(a.Score, b.Score), cmp.Compare(a.Module, b.Module),
			cmp.Compare(a.PinionTeeth, b.PinionTeeth), cmp.Compare(a.WheelTeeth, b.WheelTeeth))
	})
	return found, nil
}

func (w *TeethWish) sound() error {
	switch {
	case !(w.Ratio >= 1 && w.Ratio <= 10):
		return fmt.Errorf("a ratio of %.4g cannot be looked for; give one from 1 to 10", w.Ratio)
	case !(w.Tolerance >= 0 && w.Tolerance <= 0.2):
		return errors.New("the tolerance of the ratio must be from 0 to 20 %")
	case w.CentreDistance.Known && !(w.CentreDistance.Value >= 20e-3 && w.CentreDistance.Value <= 400e-3):
		return fmt.Errorf("a centre distance of %s cannot be looked for; give one from 20 to 400 mm", unit.Millimetre.Text(w.CentreDistance.Value))
	case !(w.CentreTolerance >= 0 && w.CentreTolerance <= 5e-3):
		return errors.New("the tolerance of the centre distance must be from 0 to 5 mm")
	case slices.ContainsFunc(w.Modules, func(m float64) bool { return !(m >= 1e-3 && m <= 5e-3) }):
		return errors.New("a module must be from 1 to 5 mm")
	case len(w.Modules) == 0 || w.Least < 5 || w.Most < w.Least:
		return errors.New("no module or no pinion teeth are given to look through")
	}
	return nil
}

// wheels is the span of wheel teeth whose ratio with a pinion is near enough.
func (w *TeethWish) wheels(pinion int) (low, high int) {
	const hair = 1e-9
	exact := w.Ratio * float64(pinion)
	low = int(math.Ceil(exact*(1-w.Tolerance) - hair))
	high = int(math.Floor(exact*(1+w.Tolerance) + hair))
	return max(low, leastWheelTeeth), min(high, mostWheelTeeth)
}

func (w *TeethWish) candidate(module float64, pinion, wheel int) (TeethCandidate, bool) {
	s := w.Like
	s.Module, s.PinionTeeth, s.WheelTeeth, s.CentreDistance = module, pinion, wheel, param.Slot{}
	sum, ok := w.shiftSum(&s)
	if !ok {
		return TeethCandidate{}, false
	}
	g, ok := s.split(sum)
	if !ok || !g.feasible(leastTipOf(&s)) {
		return TeethCandidate{}, false
	}
	c := TeethCandidate{
		PinionTeeth: pinion, WheelTeeth: wheel, Module: module, Ratio: g.Ratio(), RatioError: g.Ratio()/w.Ratio - 1,
		CentreDistance: g.CentreDistance, ShiftSum: sum, PinionShift: g.Pinion.Shift, WheelShift: g.Driven.Shift,
		Sliding: g.specificSliding(), ContactRatio: g.ContactRatio, OverlapRatio: g.OverlapRatio,
		TipThickness: [2]float64{g.Pinion.TipThickness, g.Driven.TipThickness},
		UndercutRoom: [2]float64{g.Pinion.Shift - g.Pinion.LeastShift, g.Driven.Shift - g.Driven.LeastShift},
		CommonFactor: g.CommonFactor, MeshFrequency: g.meshFrequency(w.CrankSpeed),
	}
	if w.CentreDistance.Known {
		c.CentreError = g.CentreDistance - w.CentreDistance.Value
	}
	c.Score = w.score(&c, leastTipOf(&s))
	return c, true
}
