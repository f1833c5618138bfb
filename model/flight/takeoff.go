package flight

import "math"

// Run is the take-off run of a foot launch: the wing already stands overhead,
// the pilot runs until it carries all.
type Run struct {
	Airspeed    float64 // at lift-off, m/s
	GroundSpeed float64 // at lift-off, m/s
	Distance    float64 // over the ground, m
	Time        float64 // s
	ThrustLeft  float64 // at lift-off, share of the standing thrust
	Lifts       bool    // thrust and legs reach lift-off
}

// TakeOff runs up to lift-off in level, still or steadily moving air: allUp kg,
// density kg/m³.
//
//	m dV/dt = T(V) cos τ + F_legs − D(V),  D = D_lift-off (V/V_lift-off)²
//
// A runner has no rolling friction; what legs push or hold back is a parameter.
// Left out: inflating the wing, the air that it drags along, its swing behind
// and ahead of the pilot, wet or rising ground. Source: Newton's second law.
func TakeOff(w Wing, allUp, density float64, line ThrustLine) Run {
	sin, cos := math.Sincos(w.ThrustTilt)
	weight, lift := allUp*gravity, 0.0
	var r Run
	for range 6 {
		lift = math.Max(weight-line.At(r.Airspeed)*sin, weight/10)
		r.Airspeed = w.LiftOffSpeed * w.airspeed(lift, density)
	}
	r.GroundSpeed = math.Max(0, r.Airspeed-w.Headwind)
	if line.static > 0 {
		r.ThrustLeft = line.At(r.Airspeed) / line.static
	}
	drag := w.drag(lift, r.Airspeed, density) / (r.Airspeed * r.Airspeed)
	r.Time, r.Distance, r.Lifts = integrate(w.Headwind, r.Airspeed, func(v float64) float64 {
		return (line.At(v)*cos + w.LegsPush - drag*v*v) / allUp
	})
	return r
}

// integrate sums time and way over the ground from standing in a headwind to a
// final airspeed by Simpson's rule. It reports false where an acceleration is
// not positive.
func integrate(headwind, final float64, acceleration func(airspeed float64) float64) (time, way float64, ok bool) {
	if headwind >= final {
		return 0, 0, true
	}
	const steps = 32
	step := (final - headwind) / steps
	for i := range steps + 1 {
		ground := float64(i) * step
		a := acceleration(headwind + ground)
		if !(a > 0) {
			return 0, 0, false
		}
		weight := float64(2 + 2*(i%2))
		if i == 0 || i == steps {
			weight = 1
		}
		time += weight / a
		way += weight * ground / a
	}
	return time * step / 3, way * step / 3, true
}
