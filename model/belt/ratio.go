package belt

import "math"

// DrivenFor is the effective diameter of the driven pulley, m, to a tenth of a
// millimetre, that gives the ratio of crank over propeller speed nearest to the
// one asked; the crank pulley stays. Source: pitch diameters.
func (s *Spec) DrivenFor(ratio float64) float64 {
	const step = 1e-4
	beyond := 2 * s.section().lineDifferential
	return math.Round((ratio*(s.CrankDiameter+beyond)-beyond)/step) * step
}
