package gear

import (
	"math"

	"backspan/model/part"
	"backspan/model/unit"
)

// flanks are what a gear's teeth are cut along, where they begin to work and
// what room they leave.
func (s Spec) flanks(key, name string, w Wheel) []part.Allowed {
	stem := "gear." + key
	list := []part.Allowed{s.active(stem, name, w),
		part.Between(stem+"_clearance", name+" root to the mate's tip", w.BottomClearance, w.BottomClearance, unit.Millimetre, 3).
			How("tip clearance as drawn, before backlash is cut").Source(isoGeometry)}
	if s.HelixAngle > 0 {
		lead := math.Pi * w.ReferenceDiameter / math.Tan(s.HelixAngle)
		list = append(list, part.Between(stem+"_lead", name+" lead of the helix", lead, lead, unit.Millimetre, 2).
			How("advance in one turn: π d / tan β").Source(isoGeometry))
	}
	return list
}

func (s Spec) active(stem, name string, w Wheel) part.Allowed {
	key, label := stem+"_active", name+" start of active profile, diameter"
	if w.StartRollLength <= 0 {
		return part.Unknown(key, label, unit.Millimetre, "contact would begin inside the base circle")
	}
	d := math.Hypot(w.BaseDiameter, 2*w.StartRollLength)
	return part.Between(key, label, d, d, unit.Millimetre, 3).How("where the mate's tip meets the flank").Source(isoGeometry)
}

// ballStep is what balls' diameters are rounded to, m.
const ballStep = 0.25e-3

// ball is the diameter, m, of a ball that touches near the middle of the
// flanks. Source: from memory, 1.728 modules, the usual wire for outside teeth.
func (s Spec) ball() float64 { return math.Round(1.728*s.Module/ballStep) * ballStep }

// overBalls are the ball and the measure over two of them, for teeth of a normal
// thickness between limits.
func (s Spec) overBalls(g Geometry, key, name string, w Wheel, thickness part.Allowed) []part.Allowed {
	stem, ball := "gear."+key, s.ball()
	label := name + " measure over two balls"
	if thickness.Why != "" {
		return []part.Allowed{part.Unknown(stem+"_over_balls", label, unit.Millimetre, thickness.Why)}
	}
	least, ok := s.over(g, w, ball, thickness.Least)
	most, fits := s.over(g, w, ball, thickness.Most)
	if !ok || !fits {
		return []part.Allowed{part.Unknown(stem+"_over_balls", label, unit.Millimetre, "a ball of this size does not rest on the involute")}
	}
	how := "at the limits of the tooth thickness"
	if w.Teeth%2 == 1 {
		how += ", in the spaces nearest to being across"
	}
	return []part.Allowed{
		part.Between(stem+"_ball", name+" measuring balls, diameter", ball, ball, unit.Millimetre, 2).
			How("touch near the middle of the flanks").Source("from memory: 1.728 modules, rounded to 0.25 mm"),
		part.Between(stem+"_over_balls", label, least, most, unit.Millimetre, 3).
			How(how).Source(isoGeometry),
	}
}

// over is the measure over two balls, m. Source: ISO 21771, dimension over
// balls. ok is false where the ball would touch beside the involute, or sink
// below the tips.
func (s Spec) over(g Geometry, w Wheel, ball, thickness float64) (measure float64, ok bool) {
	z := float64(w.Teeth)
	involute := thickness/(z*s.Module) + Involute(g.TransversePressureAngle) + ball/(z*s.Module*math.Cos(s.PressureAngle)) - math.Pi/z
	if !(involute > 0) {
		return 0, false
	}
	angle := InvoluteAngle(involute)
	centre := w.BaseDiameter / math.Cos(angle)
	touch := w.BaseDiameter/2*math.Tan(angle) - ball/2*math.Cos(g.BaseHelixAngle)
	if touch < math.Max(0, w.FormRollLength) || touch > rollLengthAt(w.TipDiameter, w.BaseDiameter) || centre+ball <= w.TipDiameter {
		return 0, false
	}
	if w.Teeth%2 == 1 {
		centre *= math.Cos(math.Pi / (2 * z))
	}
	return centre + ball, true
}

// stands are where the middles of the bearings stand, from the middle of the
// gears; none where there is no such bearing.
func (s Spec) stands(g Geometry) []part.Allowed {
	found, err := s.findBearings()
	if err != nil {
		return nil
	}
	r := Result{spec: s, Geometry: g, bearings: found}
	p := r.places()
	from := func(key, label string, aft float64) part.Allowed {
		side := "behind"
		if aft < 0 {
			side, aft = "ahead of", -aft
		}
		return part.Between("gear.place_"+key, label+" bearing, "+side+" middle of gears", aft, aft, unit.Millimetre, 2).
			How("to the middle of the bearing; behind is towards the propeller").Source("geometry")
	}
	list := []part.Allowed{from("wheel_prop", "Propeller shaft, propeller-side", p.Gears-p.WheelPropBearing),
		from("wheel_engine", "Propeller shaft, engine-side", p.Gears-p.WheelEngineBearing)}
	if s.Held.OnCrank {
		return list
	}
	return append(list, from("pinion_prop", "Pinion shaft, propeller-side", p.Gears-p.PinionPropBearing),
		from("pinion_engine", "Pinion shaft, engine-side", p.Gears-p.PinionEngineBearing))
}
