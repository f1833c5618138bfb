package gear

import "math"

// thinning is how much thinner than the rack leaves them the teeth are taken
// for the geometry factor J, modules of arc on the reference circle.
const thinning = 0.024

// lewis is the section of the root where the Lewis parabola touches the
// fillet, under a load.
func (c cutTooth) lewis(load loadPoint) (s rootSection, arm float64) {
	low, high := 0.5, 1.5
	for range 40 {
		lean := (low + high) / 2
		s = c.section(lean)
		arm = load.height - s.height
		if !(arm > 0) || s.thickness/(4*arm) > 1/math.Tan(lean) {
			high = lean
		} else {
			low = lean
		}
	}
	s.valid = s.valid && arm > 0 && low > 0.5 && high < 1.5
	return s, arm
}

// bendingGeometry is the geometry factor J of a spur gear under a load at the
// outer end of single contact; ok is false where no section is found. tip is
// the tip diameter in modules. Source: AGMA 908 by way of the Lewis parabola
// and the stress correction of Dolan and Broghamer, from memory.
func bendingGeometry(rack Rack, pressureAngle, teeth, shift, tip, contactRatio float64) (j float64, ok bool) {
	c := newCutTooth(rack, pressureAngle, teeth, shift-thinning/(2*math.Tan(pressureAngle)))
	load := c.loadAt(c.outerSingle(tip, contactRatio))
	s, arm := c.lewis(load)
	if !s.valid {
		return 0, false
	}
	least := c.fillet + c.rise*c.rise/(teeth/2-c.rise)
	form := math.Cos(pressureAngle) / math.Cos(load.angle) /
		(6*arm/(s.thickness*s.thickness) - math.Tan(load.angle)/s.thickness)
	h, l, m := 0.331-0.436*pressureAngle, 0.324-0.492*pressureAngle, 0.261+0.545*pressureAngle
	correction := h + math.Pow(s.thickness/least, l)*math.Pow(s.thickness/arm, m)
	j = form / correction
	return j, least > 0 && j > 0
}

// lewisY is the Lewis form factor Y of full-depth 20° teeth, linear between the
// rows of the table; beyond its ends, where Y hardly sways the size factor it is
// used for, it keeps the end's value. Source: Budynas & Nisbett, Shigley's
// Mechanical Engineering Design, table 14-2, from memory.
func lewisY(teeth float64) float64 {
	form := lewisForm()
	last := len(form) - 1
	switch {
	case teeth <= form[0][0]:
		return form[0][1]
	case teeth >= form[last][0]:
		return form[last][1]
	}
	i := 0
	for teeth > form[i+1][0] {
		i++
	}
	from, to := form[i], form[i+1]
	return from[1] + (to[1]-from[1])*(teeth-from[0])/(to[0]-from[0])
}
