package gear

import (
	"math"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/unit"
)

const (
	isoAccuracy = "ISO 1328-1, from memory"
	mostTeeth   = 40 // that a base tangent is measured over
)

// Making is what the teeth are cut and measured by; none where they cannot
// mesh. running is the backlash as drawn but with case and gears warm, m.
func (s Spec) Making(running param.Slot) []part.Allowed {
	g, err := Solve(s)
	if err != nil {
		return nil
	}
	list := []part.Allowed{
		part.Said("gear.wheel_hand", "Hand of the wheel's helix", s.wheelHand()).How("against the pinion's").Source("geometry"),
		part.Between("gear.centre_limits", "Centre distance, limits", g.CentreDistance-s.CentreTolerance, g.CentreDistance+s.CentreTolerance, unit.Millimetre, 3).
			How("as drawn, plus or minus its tolerance").Source("geometry"),
		s.play(g, "gear.backlash_limits", "Normal backlash at 20 °C, limits", s.Backlash, ""),
		s.play(g, "gear.backlash_running_limits", "Normal backlash, running, limits", running, ", case and gears as warm as the oil"),
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

// eccentric is by how much run-out of both gears at once makes the play more and
// less round a turn, normal, m: each brings its teeth nearer and farther by half
// of its run-out.
func (s Spec) eccentric(g Geometry) float64 {
	return (s.runout(g.Pinion) + s.runout(g.Driven)) * math.Sin(g.WorkingPressureAngle) * math.Cos(g.BaseHelixAngle)
}

// play is the backlash between what tolerances and run-out leave at least and at
// most, anywhere round a turn. nominal is the play as drawn; when says in which
// state.
func (s Spec) play(g Geometry, key, label string, nominal param.Slot, when string) part.Allowed {
	switch {
	case !s.Backlash.Known:
		return part.Unknown(key, label, unit.Millimetre, "no backlash is given")
	case !nominal.Known:
		return part.Unknown(key, label, unit.Millimetre, "how warm it runs is not known")
	}
	swing := s.eccentric(g)
	least, most := nominal.Value-swing, nominal.Value+2*s.nearer(g)+2*s.SpanTolerance+swing
	how := "as drawn, up to what the tolerances of centre distance and base tangents add, and round a turn less or more by the run-out of both gears" + when
	if least < 0 {
		how = "warning: run-out takes all of the backlash somewhere round a turn and the teeth bind; raise Normal backlash or choose a finer Accuracy class; " + how
	}
	return part.Between(key, label, max(0, least), max(0, most), unit.Millimetre, 3).How(how).Source("geometry; run-out: " + isoAccuracy)
}

// cut are a gear's tooth thickness and base tangent length. What the backlash
// asks, with the shafts at their nearest, is taken from both gears alike.
func (s Spec) cut(g Geometry, key, name string, w Wheel) []part.Allowed {
	thickness := s.Module * (math.Pi/2 + 2*w.Shift*math.Tan(s.PressureAngle))
	over, length := s.tangent(g, w)
	spanKey, spanLabel := "gear."+key+"_span", name+" base tangent length"
	countKey, countLabel := "gear."+key+"_span_teeth", name+", base tangent over teeth"
	rootKey, rootLabel := "gear."+key+"_root", name+" root diameter, limits"
	const how = "half of the backlash taken from each gear, shafts at their nearest; greatest to least"
	if !s.Backlash.Known {
		const why = "no backlash is given"
		return []part.Allowed{
			part.Unknown("gear."+key+"_thickness", name+" tooth thickness, normal", unit.Millimetre, why),
			part.Unknown(spanKey, spanLabel, unit.Millimetre, why),
			part.Unknown(rootKey, rootLabel, unit.Millimetre, why),
		}
	}
	thinner := (s.Backlash.Value + s.nearer(g)) / 2
	normal := math.Cos(s.PressureAngle)
	if thickness <= (thinner+s.SpanTolerance)/normal {
		return []part.Allowed{part.Unknown("gear."+key+"_thickness", name+" tooth thickness, normal", unit.Millimetre, "backlash and tolerances take the whole tooth; lower Normal backlash")}
	}
	list := []part.Allowed{part.Between("gear."+key+"_thickness", name+" tooth thickness, normal", thickness-(thinner+s.SpanTolerance)/normal, thickness-thinner/normal, unit.Millimetre, 3).
		How("at the reference cylinder; " + how).Source(isoGeometry), s.root(w, rootKey, rootLabel, thinner)}
	list = append(list, s.overBalls(g, key, name, w, list[0])...)
	if over == 0 || s.FaceWidth < spanned(g, length) {
		return append(list, part.Unknown(spanKey, spanLabel, unit.Millimetre, "the face is too narrow to span these teeth; measure over balls"))
	}
	return append(list,
		part.Between(countKey, countLabel, float64(over), float64(over), unit.Count, 0).How("that touch nearest to the middle of the flanks").Source(isoGeometry),
		part.Between(spanKey, spanLabel, length-thinner-s.SpanTolerance, length-thinner, unit.Millimetre, 3).How(how).Source(isoGeometry))
}

// root is a gear's root circle between its limits: the cutter that thins the
// teeth in the normal section by so much, m, goes as much deeper as its flanks
// slope.
func (s Spec) root(w Wheel, key, label string, thinner float64) part.Allowed {
	deeper := func(thinner float64) float64 { return thinner / math.Sin(s.PressureAngle) }
	return part.Between(key, label, max(0, w.RootDiameter-deeper(thinner+s.SpanTolerance)), max(0, w.RootDiameter-deeper(thinner)), unit.Millimetre, 2).
		How("cut by the same rack as the flanks: thinner teeth lower the root; another cutter leaves another root").Source(isoGeometry)
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
	total := s.totalPitch(w)
	micro := func(which, label string, um float64) part.Allowed {
		return part.AtMost("gear."+key+"_"+which, name+" "+label, um*1e-6, unit.Micrometre, 1).How("of the accuracy class, not rounded").Source(isoAccuracy)
	}
	return []part.Allowed{
		micro("single_pitch", "single pitch deviation", t.pitch),
		micro("total_pitch", "total cumulative pitch deviation", total),
		micro("total_profile", "total profile deviation", math.Hypot(t.profile, slope)),
		micro("total_helix", "total helix deviation", math.Hypot(t.lead, lead)),
		micro("runout", "runout", 1e6*s.runout(w)),
	}
}

// totalPitch is the cumulative pitch deviation that the accuracy class allows,
// µm.
func (s Spec) totalPitch(w Wheel) float64 {
	d, m := w.ReferenceDiameter*1000, s.Module*1000
	return (0.002*d + 0.55*math.Sqrt(d) + 0.7*m + 12) * math.Pow(math.Sqrt2, float64(s.AccuracyClass-5))
}

// runout is that of the teeth which the accuracy class allows, m.
func (s Spec) runout(w Wheel) float64 { return 0.9e-6 * s.totalPitch(w) }
