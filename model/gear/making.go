package gear

import (
	"math"

	"backspan/model/part"
	"backspan/model/unit"
)

const (
	isoAccuracy = "ISO 1328-1, from memory"
	mostTeeth   = 40 // that a base tangent is measured over
)

// Making is what the teeth are cut and measured by; none where they cannot
// mesh.
func (s Spec) Making() []part.Allowed {
	g, err := Solve(s)
	if err != nil {
		return nil
	}
	list := []part.Allowed{
		part.Said("gear.wheel_hand", "Hand of the wheel's helix", s.wheelHand()).How("against the pinion's").Source("geometry"),
		part.Between("gear.centre_limits", "Centre distance, limits", g.CentreDistance-s.CentreTolerance, g.CentreDistance+s.CentreTolerance, unit.Millimetre, 3).
			How("as drawn, plus or minus its tolerance").Source("geometry"),
		s.play(g),
	}
	list = append(list, s.cut(g, "pinion", "Pinion", g.Pinion)...)
	list = append(list, s.cut(g, "wheel", "Wheel", g.Driven)...)
	list = append(list, s.flanks("pinion", "Pinion", g.Pinion)...)
	list = append(list, s.flanks("wheel", "Wheel", g.Driven)...)
	list = append(list, s.stands(g)...)
	list = append(list, s.deviations("pinion", "Pinion", g.Pinion)...)
	return append(list, s.deviations("wheel", "Wheel", g.Driven)...)
}

func (s Spec) wheelHand() string {
	switch {
	case s.HelixAngle == 0:
		return "none, spur"
	case s.PinionHand == RightHand:
		return string(LeftHand)
	}
	return string(RightHand)
}

// nearer is by how much play shrinks in the normal section when the shafts
// stand nearer by the tolerance of their distance, m.
func (s Spec) nearer(g Geometry) float64 {
	return 2 * s.CentreTolerance * math.Sin(g.WorkingPressureAngle) * math.Cos(g.BaseHelixAngle)
}

// play is the backlash between what the tolerances leave at least and at most.
func (s Spec) play(g Geometry) part.Allowed {
	const key, label = "gear.backlash_limits", "Normal backlash at 20 °C, limits"
	if !s.Backlash.Known {
		return part.Unknown(key, label, unit.Millimetre, "no backlash is given")
	}
	least := s.Backlash.Value
	return part.Between(key, label, least, least+2*s.nearer(g)+2*s.SpanTolerance, unit.Millimetre, 3).
		How("as drawn, up to what the tolerances of centre distance and base tangents add").Source("geometry")
}

// cut are a gear's tooth thickness and base tangent length. What the backlash
// asks, with the shafts at their nearest, is taken from both gears alike.
func (s Spec) cut(g Geometry, key, name string, w Wheel) []part.Allowed {
	thickness := s.Module * (math.Pi/2 + 2*w.Shift*math.Tan(s.PressureAngle))
	over, length := s.tangent(g, w)
	spanKey, spanLabel := "gear."+key+"_span", name+" base tangent length"
	countKey, countLabel := "gear."+key+"_span_teeth", name+", base tangent over teeth"
	const how = "half of the backlash taken from each gear, shafts at their nearest; greatest to least"
	if !s.Backlash.Known {
		const why = "no backlash is given"
		return []part.Allowed{
			part.Unknown("gear."+key+"_thickness", name+" tooth thickness, normal", unit.Millimetre, why),
			part.Unknown(spanKey, spanLabel, unit.Millimetre, why),
		}
	}
	thinner := (s.Backlash.Value + s.nearer(g)) / 2
	normal := math.Cos(s.PressureAngle)
	if thickness <= (thinner+s.SpanTolerance)/normal {
		return []part.Allowed{part.Unknown("gear."+key+"_thickness", name+" tooth thickness, normal", unit.Millimetre, "backlash and tolerances take the whole tooth; lower Normal backlash")}
	}
	list := []part.Allowed{part.Between("gear."+key+"_thickness", name+" tooth thickness, normal", thickness-(thinner+s.SpanTolerance)/normal, thickness-thinner/normal, unit.Millimetre, 3).
		How("at the reference cylinder; " + how).Source(isoGeometry)}
	list = append(list, s.overBalls(g, key, name, w, list[0])...)
	if over == 0 || s.FaceWidth < spanned(g, length) {
		return append(list, part.Unknown(spanKey, spanLabel, unit.Millimetre, "the face is too narrow to span these teeth; measure over balls"))
	}
	return append(list,
		part.Between(countKey, countLabel, float64(over), float64(over), unit.Count, 0).How("that touch nearest to the middle of the flanks").Source(isoGeometry),
		part.Between(spanKey, spanLabel, length-thinner-s.SpanTolerance, length-thinner, unit.Millimetre, 3).How(how).Source(isoGeometry))
}

// spanned is the face width, m, over which a base tangent of that length is
// taken: its slant, and on helical teeth a bit of each flank for the gauge to
// rest on. Source: from memory, DIN 3960: 1.2 mm and 1.8 % of the length.
func spanned(g Geometry, length float64) float64 {
	slant := length * math.Sin(g.BaseHelixAngle)
	if slant == 0 {
		return 0
	}
	return slant + (1.2e-3+0.018*length)*math.Cos(g.BaseHelixAngle)
}

// tangent is the base tangent length without backlash, m, over as many teeth
// as touch the gauge nearest to the shifted reference cylinder. Source: ISO
// 21771, base tangent length. over is 0 when there is none.
func (s Spec) tangent(g Geometry, w Wheel) (over int, length float64) {
	z, at, normal := float64(w.Teeth), g.TransversePressureAngle, math.Cos(s.PressureAngle)
	middle := w.ReferenceDiameter + 2*w.Shift*s.Module
	if middle <= w.BaseDiameter {
		return 0, 0
	}
	wanted := math.Sqrt(middle*middle-w.BaseDiameter*w.BaseDiameter) / math.Cos(g.BaseHelixAngle)
	rest := z*Involute(at) + 2*w.Shift*math.Tan(s.PressureAngle)
	teeth := math.Round(wanted/(s.Module*normal*math.Pi) - rest/math.Pi + 0.5)
	if !(teeth >= 2) {
		teeth = 2
	}
	if teeth > mostTeeth || teeth >= z {
		return 0, 0
	}
	return int(teeth), s.Module * normal * (math.Pi*(teeth-0.5) + rest)
}

// deviations are what the accuracy class allows a gear. Source: ISO
// 1328-1:2013, from memory; not rounded as the standard rounds.
func (s Spec) deviations(key, name string, w Wheel) []part.Allowed {
	d, m, b := w.ReferenceDiameter*1000, s.Module*1000, s.FaceWidth*1000
	step := math.Pow(math.Sqrt2, float64(s.AccuracyClass-5))
	t := newToothTolerances(s.AccuracyClass, d, m, b)
	slope := (0.4*m + 0.001*d + 4) * step
	lead := (0.07*math.Sqrt(d) + 0.45*math.Sqrt(b) + 4) * step
	total := (0.002*d + 0.55*math.Sqrt(d) + 0.7*m + 12) * step
	micro := func(which, label string, um float64) part.Allowed {
		return part.AtMost("gear."+key+"_"+which, name+" "+label, um*1e-6, unit.Micrometre, 1).How("of the accuracy class, not rounded").Source(isoAccuracy)
	}
	return []part.Allowed{
		micro("single_pitch", "single pitch deviation", t.pitch),
		micro("total_pitch", "total cumulative pitch deviation", total),
		micro("total_profile", "total profile deviation", math.Hypot(t.profile, slope)),
		micro("total_helix", "total helix deviation", math.Hypot(t.lead, lead)),
		micro("runout", "runout", 0.9*total),
	}
}
