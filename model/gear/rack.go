package gear

import "math"

// Profile is a basic rack tooth profile of ISO 53.
type Profile string

// The profiles offered.
const (
	ProfileA Profile = "ISO 53 A"
	ProfileC Profile = "ISO 53 C"
	ProfileD Profile = "ISO 53 D"
)

// Rack is the tooth of the basic rack, in modules.
type Rack struct {
	Addendum     float64
	Dedendum     float64
	FilletRadius float64
}

// Rack gives the profile's proportions. Source: from memory: ISO 53.
func (p Profile) Rack() Rack {
	switch p {
	case ProfileC:
		return Rack{Addendum: 1, Dedendum: 1.25, FilletRadius: 0.25}
	case ProfileD:
		return Rack{Addendum: 1, Dedendum: 1.4, FilletRadius: 0.39}
	}
	return Rack{Addendum: 1, Dedendum: 1.25, FilletRadius: 0.38}
}

// StraightDedendum is how far the rack's straight flank reaches below the
// reference line, in modules, at a normal pressure angle in rad.
func (r Rack) StraightDedendum(pressureAngle float64) float64 {
	return r.Dedendum - r.FilletRadius*(1-math.Sin(pressureAngle))
}

// LeastShift is the profile shift below which the rack undercuts a gear of
// that many teeth, in modules; angles in rad. Source: ISO 21771.
func (r Rack) LeastShift(teeth, pressureAngle, helixAngle float64) float64 {
	transverse := math.Atan(math.Tan(pressureAngle) / math.Cos(helixAngle))
	s := math.Sin(transverse)
	return r.StraightDedendum(pressureAngle) - teeth*s*s/(2*math.Cos(helixAngle))
}

// LeastPinionTeeth is the least number of teeth, not rounded up, of an
// unshifted pinion that meets a wheel of the given ratio without interference;
// addendum in modules, angles in rad. Source: Budynas & Nisbett, Shigley's
// Mechanical Engineering Design, section 13-7.
func LeastPinionTeeth(ratio, addendum, pressureAngle, helixAngle float64) float64 {
	transverse := math.Atan(math.Tan(pressureAngle) / math.Cos(helixAngle))
	s2 := math.Sin(transverse) * math.Sin(transverse)
	wide := 1 + 2*ratio
	return 2 * addendum * math.Cos(helixAngle) / (wide * s2) * (ratio + math.Sqrt(ratio*ratio+wide*s2))
}
