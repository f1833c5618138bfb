package gear

import "math"

// cutTooth is a tooth of the equivalent spur gear as the basic rack cuts it.
// Lengths in normal modules, angles in rad.
type cutTooth struct {
	teeth, shift, pressureAngle float64
	fillet                      float64 // of the rack
	centre                      float64 // half pitch to the centre of the rack's fillet, E
	rise                        float64 // of that centre against the rolling line, G
}

func newCutTooth(rack Rack, pressureAngle, teeth, shift float64) cutTooth {
	sin, cos := math.Sincos(pressureAngle)
	return cutTooth{
		teeth: teeth, shift: shift, pressureAngle: pressureAngle, fillet: rack.FilletRadius,
		centre: math.Pi/4 - rack.Dedendum*math.Tan(pressureAngle) - (1-sin)*rack.FilletRadius/cos,
		rise:   rack.FilletRadius - rack.Dedendum + shift,
	}
}

// rootSection is a section across the foot of the tooth, in normal modules.
type rootSection struct {
	thickness float64
	height    float64 // above the gear's centre
	radius    float64 // of the fillet there
	valid     bool
}

// section is where the normal of the fillet leans by that angle from the
// middle of the tooth; π/3 is the 30° tangent. Source: ISO 6336-3, clause 6,
// from memory.
func (c cutTooth) section(lean float64) rootSection {
	h := 2/c.teeth*(math.Pi/2-c.centre) - lean
	roll := math.Pi / 6
	for range 30 {
		tan := math.Tan(roll)
		slope := 1 - 2*c.rise/c.teeth*(1+tan*tan)
		step := (roll - 2*c.rise/c.teeth*tan + h) / slope
		roll = math.Min(math.Max(roll-step, -1.4), 1.4)
		if math.Abs(step) < 1e-12 {
			break
		}
	}
	cos := math.Cos(roll)
	arm := c.rise/cos - c.fillet
	s := rootSection{
		thickness: c.teeth*math.Sin(lean-roll) + 2*math.Sin(lean)*arm,
		height:    c.teeth/2*math.Cos(lean-roll) + math.Cos(lean)*arm,
		radius:    c.fillet + 2*c.rise*c.rise/(cos*(c.teeth*cos*cos-2*c.rise)),
	}
	s.valid = math.Abs(roll) < 1.39 && s.thickness > 0 && s.radius > 0
	return s
}

// loadPoint is where a load acts on the tooth.
type loadPoint struct {
	angle  float64 // of the load against the normal to the tooth's middle, rad
	height float64 // where it crosses the middle, above the gear's centre, modules
}

func (c cutTooth) loadAt(diameter float64) loadPoint {
	flank := math.Acos(math.Min(1, c.teeth*math.Cos(c.pressureAngle)/diameter))
	half := (math.Pi/2+2*c.shift*math.Tan(c.pressureAngle))/c.teeth + Involute(c.pressureAngle) - Involute(flank)
	p := loadPoint{angle: flank - half}
	p.height = (math.Cos(half) - math.Sin(half)*math.Tan(p.angle)) * diameter / 2
	return p
}

// outerSingle is the diameter of the outer end of single contact, modules; tip
// is the tip diameter of the equivalent gear.
func (c cutTooth) outerSingle(tip, contactRatio float64) float64 {
	base := c.teeth * math.Cos(c.pressureAngle) / 2
	roll := math.Sqrt(math.Max(0, tip*tip/4-base*base)) - math.Pi*math.Cos(c.pressureAngle)*(contactRatio-1)
	return 2 * math.Hypot(roll, base)
}

// rootForm is what shape does to the stress in the root.
type rootForm struct {
	form       float64 // YF
	correction float64 // YS
	notch      float64 // qs
	valid      bool
}

// isoForm gives form and stress correction factor under a load. It is not
// valid where the notch lies outside 1 to 8, the range of the correction.
// Source: ISO 6336-3, clauses 6 and 7, from memory.
func (c cutTooth) isoForm(load loadPoint) rootForm {
	s := c.section(math.Pi / 3)
	arm := load.height - s.height
	if !s.valid || !(arm > 0) {
		return rootForm{}
	}
	f := rootForm{notch: s.thickness / (2 * s.radius)}
	f.form = 6 * arm * math.Cos(load.angle) / (s.thickness * s.thickness * math.Cos(c.pressureAngle))
	slender := s.thickness / arm
	f.correction = (1.2 + 0.13*slender) * math.Pow(f.notch, 1/(1.21+2.3/slender))
	f.valid = f.form > 0 && f.notch >= 1 && f.notch < 8
	return f
}
