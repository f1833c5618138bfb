package gear

import (
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	leastContactRatio = 1.2
	leastTip          = 0.4  // modules, case-hardened
	leastBottom       = 0.2  // modules
	dipSpeedLimit     = 15.0 // m/s
)

// Checks holds the reduction against its limits; marginAsked is the share of a
// limit below which a check is thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	cs = r.strengthChecks(cs, marginAsked)
	cs = append(cs, r.idleCheck(), r.runUpCheck())
	cs = r.Coupling.Checks(cs, marginAsked)
	cs = r.toothChecks(cs, marginAsked)
	cs = r.flankChecks(cs)
	cs = append(cs, r.depthCheck())
	cs = r.runningChecks(cs, marginAsked)
	return r.oilLifeChecks(cs, marginAsked)
}

func (r *Result) toothChecks(cs []reading.Check, thin float64) []reading.Check {
	g := &r.Geometry
	tip := math.Min(g.Pinion.TipThickness, g.Driven.TipThickness)
	bottom := math.Min(g.Pinion.BottomClearance, g.Driven.BottomClearance)
	return append(cs,
		r.contactRatioCheck(thin),
		reading.AtLeast("gear.tip_thickness", "Tip thickness, thinner gear", tip, leastTip*g.Module, thin, unit.Millimetre).
			Source("from memory: 0.4 modules for case-hardened teeth").
			Advice("Lower the profile shift of the thinner gear, or Pressure angle."),
		reading.AtLeast("gear.bottom_clearance", "Clearance of tip to root", bottom, leastBottom*g.Module, 0, unit.Millimetre).
			Source("from memory: 0.2 modules").Advice("Raise Centre distance a little, or choose Basic rack D."),
		reading.Condition("gear.hunting", "Teeth share no factor", g.CommonFactor == 1).Warn().
			Source("common practice, no source").Advice("Change Wheel teeth or Pinion teeth by one."),
		r.bodyCheck(),
		reading.AtLeast("gear.bearing_seats", "Metal between bearing seats", r.SeatWall, r.spec.BossWall, 0, unit.Millimetre).
			Source("estimate: one Bearing boss wall").
			Advice("Choose smaller bearings, or raise Module, the teeth or Centre distance."),
	)
}

// contactRatioCheck counts the path of contact as far as there is involute on
// both gears.
func (r *Result) contactRatioCheck(thin float64) reading.Check {
	const key, label = "gear.contact_ratio", "Transverse contact ratio"
	g := &r.Geometry
	left, source := g.ContactRatio, "common practice, no source"
	for _, w := range []*Wheel{&g.Pinion, &g.Driven} {
		if w.Undercut() {
			return reading.Unrated(key, label, "a tooth is undercut: where its involute starts, and with it how long the path of contact is, is not known")
		}
		if lost := math.Max(w.FormRollLength, 0) - w.StartRollLength; lost > 0 {
			left -= lost / g.BasePitch
			source = "common practice, no source; the path is cut where the involute ends"
		}
	}
	return reading.AtLeast(key, label, left, leastContactRatio, thin, unit.One).Source(source).
		Advice("Lower Pinion profile shift, Wheel profile shift, Centre distance or Pressure angle, or use more teeth.")
}

func (r *Result) bodyCheck() reading.Check {
	const key, label = "gear.pinion_body", "Pinion root over its bearing bore"
	if r.spec.Held.OnCrank {
		return reading.Unrated(key, label, "the pinion sits on the engine's crank, whose diameter is not known here")
	}
	return reading.AtLeast(key, label, r.Geometry.Pinion.RootDiameter, r.bearings.pinion.Bore, 0, unit.Millimetre).Source("geometry").
		Advice("Choose smaller Pinion bearings, or raise Module or Pinion teeth.")
}

func (r *Result) flankChecks(cs []reading.Check) []reading.Check {
	g := &r.Geometry
	for _, f := range []struct {
		w         Wheel
		key, name string
	}{{g.Pinion, "pinion", "Pinion"}, {g.Driven, "wheel", "Wheel"}} {
		raise := "Raise " + f.name + " profile shift or " + f.name + " teeth"
		cs = append(cs, reading.AtLeast("gear.undercut_"+f.key, f.name+" profile shift, undercut", f.w.Shift, f.w.LeastShift, 0, unit.One).
			Source(isoGeometry).Advice(raise+"."))
		cs = append(cs, f.w.contactCheck("gear.interference_"+f.key, f.name+" contact above its fillet",
			raise+", or lower the other gear's profile shift."))
	}
	return cs
}

// contactCheck holds where contact starts against where the involute does. The
// involute of an undercut tooth starts higher than its cutter's reach says, at
// an unknown height, but never inside the base circle.
func (w Wheel) contactCheck(key, label, advice string) reading.Check {
	least := math.Max(w.FormRollLength, 0)
	if w.Undercut() && w.StartRollLength >= least {
		return reading.Unrated(key, label, "the tooth is undercut, so its involute starts at an unknown height")
	}
	return reading.AtLeast(key, label, w.StartRollLength, least, 0, unit.Millimetre).
		Source("ISO 21771, as roll lengths along the line of action").Advice(advice)
}

func (r *Result) runningChecks(cs []reading.Check, thin float64) []reading.Check {
	return append(r.backlashChecks(cs, thin),
		reading.AtMost("gear.pitch_line_speed", "Pitch-line speed for dip oiling", r.PitchLineSpeed, dipSpeedLimit, thin, unit.MetrePerSecond).
			Warn().Source("from memory: 12 to 15 m/s").
			Advice("Put a baffle round the dipping gear, or lower Module or Pinion teeth."),
		r.oilCheck(thin),
		reading.AtLeast("gear.dip_depth", "Dip depth", r.spec.DipDepth, r.spec.Module, 0, unit.Millimetre).
			Warn().Source("estimate: one module").Advice("Raise Dip depth."),
		reading.AtMost("gear.seal_speed", "Speed under the seal lips", r.SealSpeed, r.spec.SealMaterial.SpeedLimit(), thin, unit.MetrePerSecond).
			Source("from memory: 14 m/s NBR, 35 m/s FKM").
			Advice("Choose FKM as Seal rubber, smaller Pinion bearings, or no Seal on the pinion shaft."),
	)
}

func (r *Result) backlashChecks(cs []reading.Check, thin float64) []reading.Check {
	if !r.Backlash.Known {
		const why = "no backlash is given; fill in Normal backlash"
		return append(cs,
			reading.Unrated("gear.backlash", "Normal backlash", why),
			reading.Unrated("gear.backlash_least", "Least backlash, cold or warm", why),
		)
	}
	return append(cs,
		reading.AtLeast("gear.backlash", "Normal backlash", r.Backlash.Drawn, r.Backlash.Asked, thin, unit.Millimetre).
			Source("from memory: ISO/TR 10064-2").Advice("Raise Normal backlash."),
		reading.AtLeast("gear.backlash_least", "Least backlash, cold or warm", r.Backlash.Least, 0, 0, unit.Millimetre).
			Source("geometry").Advice("Raise Normal backlash."),
	)
}

func (r *Result) oilCheck(thin float64) reading.Check {
	const key, label = "gear.oil_temperature", "Oil temperature"
	const advice = "Raise Fin factor, lower Dip depth, drop Seal on the pinion shaft, or lower Conductance to the engine case."
	if !r.Sump.Balanced {
		return reading.Condition(key, label, false).
			Source("heat balance").Advice(advice)
	}
	return reading.AtMost(key, label, r.Sump.Temperature, r.spec.OilTemperatureLimit, thin, unit.Celsius).
		Source("the Oil temperature limit set").Advice(advice)
}
