package gear

import "math"

// specificSliding is how fast each gear's root slides over the mate's tip, as a
// share of its own rolling speed: at the start of contact for the pinion, at
// its end for the wheel; infinite where contact reaches the base circle.
// Source: ISO 21771, geometry.
func (g *Geometry) specificSliding() [2]float64 {
	u := g.Ratio()
	line := g.CentreDistance * math.Sin(g.WorkingPressureAngle)
	slide := func(own, mateSpeed float64) float64 {
		if !(own > 0) {
			return math.Inf(1)
		}
		return (line-own)/own*mateSpeed - 1
	}
	return [2]float64{slide(g.Pinion.StartRollLength, 1/u), slide(g.Driven.StartRollLength, u)}
}

// split shares a sum of shifts between the gears so that both slide as hard at
// their roots, the pinion's to a hundredth of a module; ok is false where no
// such pair meshes.
func (s Spec) split(sum float64) (g Geometry, ok bool) {
	low, high := -0.6, 1.2
	for range 24 {
		s.PinionShift = (low + high) / 2
		s.WheelShift = sum - s.PinionShift
		g, err := Solve(s)
		// Pinions too much shifted end in points or below their base circle,
		// those too little slide without end.
		if sliding := g.specificSliding(); err == nil && sliding[0] > sliding[1] || err != nil && s.PinionShift < sum/2 {
			low = s.PinionShift
		} else {
			high = s.PinionShift
		}
	}
	s.PinionShift = math.Round(high*100) / 100
	s.WheelShift = sum - s.PinionShift
	g, err := Solve(s)
	return g, err == nil
}

// feasible reports whether the pair can be made and mesh: no undercut, contact
// above the fillets, contact ratio, tips and clearance as the checks ask.
func (g *Geometry) feasible(tip float64) bool {
	for _, w := range []*Wheel{&g.Pinion, &g.Driven} {
		if w.Undercut() || w.StartRollLength < w.FormRollLength || w.TipThickness < tip*g.Module || w.BottomClearance < leastBottom*g.Module-1e-9 {
			return false
		}
	}
	return g.ContactRatio >= leastContactRatio
}
