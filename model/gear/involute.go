package gear

import "math"

// Involute is the involute function tan α − α, in rad.
func Involute(angle float64) float64 { return math.Tan(angle) - angle }

// InvoluteAngle is the angle in rad whose involute is given, 0 for none above
// zero. Newton's rule converges from above without overshoot, because the
// involute is convex: both starts bound the angle from above.
func InvoluteAngle(involute float64) float64 {
	if !(involute > 0) {
		return 0
	}
	a := math.Min(math.Cbrt(3*involute), math.Atan(involute+math.Pi/2))
	for range 40 {
		t := math.Tan(a)
		step := (t - a - involute) / (t * t)
		a -= step
		if math.Abs(step) < 1e-15 {
			break
		}
	}
	return a
}
