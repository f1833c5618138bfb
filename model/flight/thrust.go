package flight

// ThrustLine is installed full-throttle thrust over airspeed: a parabola
// through the matched points standing, at trim and at the wing's top speed.
// Between them it lies within about one percent of the match.
type ThrustLine struct{ static, slope, bend, trim float64 }

// Thrust draws the line through thrusts, N, at 0, trim and fast, m/s. Where
// fast is not beyond trim it is straight.
func Thrust(static, trim, atTrim, fast, atFast float64) ThrustLine {
	t := ThrustLine{static: static, trim: trim}
	if trim > 0 {
		t.slope = (atTrim - static) / trim
	}
	if trim > 0 && fast > trim {
		t.bend = ((atFast-atTrim)/(fast-trim) - t.slope) / fast
	}
	return t
}

// At is the thrust, N, at an airspeed, m/s, up to the fastest of the points.
func (t ThrustLine) At(airspeed float64) float64 {
	return t.static + airspeed*(t.slope+t.bend*(airspeed-t.trim))
}
