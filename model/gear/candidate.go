package gear

import (
	"math"
	"slices"

	"backspan/model/param"
)

// shiftSum is the sum of shifts that meets the centre distance, or comes within
// its tolerance at the end of the sums looked at.
func (w *TeethWish) shiftSum(s *Spec) (sum float64, ok bool) {
	if !w.CentreDistance.Known {
		return w.ShiftSum, true
	}
	at := math.Atan(math.Tan(s.PressureAngle) / math.Cos(s.HelixAngle))
	teeth := float64(s.PinionTeeth + s.WheelTeeth)
	base := s.Module / math.Cos(s.HelixAngle) * teeth / 2 * math.Cos(at)
	need := func(centre float64) float64 {
		return (Involute(math.Acos(math.Min(base/centre, 1))) - Involute(at)) * teeth / (2 * math.Tan(s.PressureAngle))
	}
	wanted := w.CentreDistance.Value
	sum = need(wanted)
	switch {
	case sum < leastShiftSum:
		return leastShiftSum, need(wanted+w.CentreTolerance) >= leastShiftSum
	case sum > mostShiftSum:
		return mostShiftSum, need(wanted-w.CentreTolerance) <= mostShiftSum
	}
	return sum, true
}

// leastTipOf is the thinnest tip allowed, modules: 0.4 of hardened surfaces, 0.2
// where both gears are soft.
func leastTipOf(s *Spec) float64 {
	if s.PinionMaterial.treatment() == soft && s.WheelMaterial.treatment() == soft {
		return leastSoftTip
	}
	return leastTip
}

func (w *TeethWish) score(c *TeethCandidate, tip float64) float64 {
	part := func(x, full float64) float64 {
		if full <= 0 {
			return 0
		}
		return math.Min(math.Max(x/full, 0), 1)
	}
	thinner := math.Min(c.TipThickness[0], c.TipThickness[1]) / c.Module
	score := part(math.Abs(c.RatioError), w.Tolerance) + part(math.Abs(c.CentreError), w.CentreTolerance) +
		part(goodContact-c.ContactRatio, goodContact-leastContactRatio) + part(goodTip-thinner, goodTip-tip)
	if c.CommonFactor > 1 {
		score++
	}
	// Noise in the last bits must not order what is equal.
	return math.Round(score*1e6) / 1e6
}

// In is a spec with the pair in it. A centre distance that was given follows.
func (c *TeethCandidate) In(s Spec) Spec {
	s.Module, s.PinionTeeth, s.WheelTeeth = c.Module, c.PinionTeeth, c.WheelTeeth
	s.PinionShift, s.WheelShift = c.PinionShift, c.WheelShift
	if s.CentreDistance.Known {
		s.CentreDistance = param.Known(c.CentreDistance)
	}
	return s
}

// ModulesNear is a module and those of the first series of ISO 54 from 0.7 to
// 1.4 times as large, m, smallest first.
func ModulesNear(module float64) []float64 {
	near := []float64{module}
	for _, m := range standardModules() {
		if m >= 0.7*module && m <= 1.4*module && math.Abs(m-module) > 1e-9 {
			near = append(near, m)
		}
	}
	slices.Sort(near)
	return near
}
