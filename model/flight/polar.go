package flight

import "math"

// atTrim is the lift, N, that the wing gives at its trim lift coefficient.
func (w Wing) atTrim(airspeed, density float64) float64 {
	v := airspeed / w.TrimSpeed
	return w.ReferenceMass * gravity * v * v * density / standardDensity
}

// drag of wing, pilot and machine, N, at a lift, N, and a true airspeed, m/s. A
// part of the drag at trim grows with the dynamic pressure alone, the rest with
// the square of the lift coefficient.
//
//	D = ((1−i) L_t + i L²/L_t) / (L/D)
//
// L_t is the lift that the airspeed would give at trim, i Drag from lift at
// trim. Source: mechanics of flight, parabolic polar.
func (w Wing) drag(lift, airspeed, density float64) float64 {
	trim := w.atTrim(airspeed, density)
	return ((1-w.LiftDragShare)*trim + w.LiftDragShare*lift*lift/trim) / w.GlideRatio
}

// LevelThrust is what holds level flight at a true airspeed, m/s, other than
// trim, N: brake or accelerator hold it.
func LevelThrust(w Wing, allUp, density, airspeed float64) float64 {
	weight := allUp * gravity
	sin, cos := math.Sincos(w.ThrustTilt)
	thrust := 0.0
	// Thrust carries little of the weight, so this settles to a digit a pass.
	for range 12 {
		thrust = w.drag(weight-thrust*sin, airspeed, density) / cos
	}
	return thrust
}

// Speeds is the range of true airspeeds, m/s, at which full throttle holds
// level flight.
type Speeds struct {
	Stall            float64 // the slowest the wing flies level
	Slowest, Fastest float64
	ShortSlow        bool // thrust, not the stall, bounds the slow end
	ShortFast        bool // thrust, not the wing's top speed, bounds the fast end
	Level            bool // there is such a range
}

// LevelSpeeds finds the range about trim, or where thrust is short there about
// the speed with most to spare. Source: mechanics of flight.
func LevelSpeeds(w Wing, allUp, density float64, line ThrustLine) Speeds {
	trim, _ := Level(w, allUp, density)
	spare := func(v float64) float64 { return line.At(v) - LevelThrust(w, allUp, density, v) }
	s, from := Speeds{Stall: trim * w.LeastSpeed}, trim
	if spare(from) < 0 {
		from = summit(spare, s.Stall, trim*w.TopSpeed)
	}
	if s.Level = spare(from) >= 0; !s.Level {
		return s
	}
	s.Slowest, s.ShortSlow = edge(spare, from, s.Stall)
	s.Fastest, s.ShortFast = edge(spare, from, trim*w.TopSpeed)
	return s
}

// summit is the speed with most thrust to spare: drag is least at
// trim·(i/(1−i))^¼, and thrust that falls with airspeed moves it slower. There
// is one summit, since the drag bends more than the thrust does.
func summit(spare func(float64) float64, low, high float64) float64 {
	for range 40 {
		a, b := (2*low+high)/3, (low+2*high)/3
		if spare(a) < spare(b) {
			low = a
		} else {
			high = b
		}
	}
	return (low + high) / 2
}

// edge goes from a speed with thrust to spare towards another until there is
// none; short when that happens on the way.
func edge(spare func(float64) float64, from, to float64) (speed float64, short bool) {
	if spare(to) >= 0 {
		return to, false
	}
	for range 24 {
		if middle := (from + to) / 2; spare(middle) >= 0 {
			from = middle
		} else {
			to = middle
		}
	}
	return from, true
}
