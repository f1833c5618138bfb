package bolt

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// Checks holds the joint against its limits. marginAsked is the share of a
// limit below which a margin counts as thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	cs = append(cs,
		r.slipCheck(),
		r.crushCheck(marginAsked),
		reading.AtMost("bolt.stress_share", "Yield used in tightening", r.StressShare, fullUse, 0, unit.Percent).
			Source(vdi+", 90 %").Advice(r.looser()+", or choose a larger Bolt size or a higher Property class"),
		reading.Condition("bolt.circle", "Bolts lie inside the plate", r.HolesInside).Source("geometry; "+r.ends()).
			Advice("change Bolt circle, raise "+r.wider()+", or lower Bore of hub and plate"),
		reading.Condition("bolt.heads", "Bolt heads clear each other", r.HeadsClear).Source("geometry").
			Advice("lower Propeller bolts, raise Bolt circle or choose a smaller Bolt size"),
		reading.AtMost("bolt.after_slip", "Bolts alone carry the peak", r.Combined, r.Yield, 0, unit.Megapascal).Warn().
			Source("mechanics, both ends of the bolt held; a loose front plate doubles the bending").
			Advice("keep the hub from slipping; more Propeller bolts, a larger Bolt size or Bolt circle bear more if it does"),
		reading.Unrated("bolt.not_covered", "Kicks, strikes and tilt on the plate",
			"a kick-back at the start, a blade strike and the tilt that turning puts on the hub are not counted, and loose washers in place of full plates crush far more"),
	)
	if r.Hub == Wood {
		cs = append(cs, reading.Unrated("bolt.retighten", "Retighten a wooden hub",
			"wood creeps and dries: retighten after the first hours and with the season; how much preload is left then is not known").Source(practice))
	}
	return cs
}

// slipCheck fails where the hub slips and is thin below the safety asked.
func (r *Result) slipCheck() reading.Check {
	const key, label = "bolt.slip_safety", "Propeller does not slip on its plate"
	if !r.SlipSafety.Known {
		return reading.Unrated(key, label, r.unslipped())
	}
	cure := "raise Propeller bolts, Bolt circle or Yield used in tightening, or choose a larger Bolt size or a higher Property class"
	if r.TorqueSet {
		cure = "raise Tightening torque, Propeller bolts or Bolt circle; a larger Bolt size or higher Property class only makes room for more torque"
	}
	if r.Hub == Wood {
		cure = r.woodCure()
	}
	return reading.AtLeast(key, label, r.SlipSafety.Value, 1, r.SlipAsked-1, unit.One).
		Source("fails below 1, thin below your own Slip safety asked; " + vdi).Advice(cure)
}

// woodCure names what keeps a wooden hub from being clamped as hard as the slip
// safety asks: the wood, the bolts, both or neither.
func (r *Result) woodCure() string {
	more := r.SlipAsked / r.SlipSafety.Value
	crushed := r.CrushSafety.Known && r.CrushSafety.Value < more
	yields := r.StressShare*more > fullUse
	switch {
	case crushed && yields:
		return "raise Propeller bolts or Bolt size, Bolt circle, and " + r.wider() + ": tightened so far, bolts and wood would both give way"
	case crushed:
		return "raise Bolt circle, " + r.wider() + ": the bolts bear more Tightening torque, the wood does not"
	case yields:
		return "raise Propeller bolts, Bolt size or Bolt circle, or choose a higher Property class: the wood bears more, the bolts do not"
	case r.TorqueSet:
		return "raise Tightening torque, or Bolt circle: bolts and wood bear it"
	}
	return "raise Yield used in tightening, or Bolt circle: bolts and wood bear it"
}

func (r *Result) crushCheck(thin float64) reading.Check {
	const key, label = "bolt.crush_pressure", "Plate does not crush the hub"
	switch {
	case !r.CrushPressure.Known:
		return reading.Unrated(key, label, noArea)
	case !r.CrushAllowed.Known:
		return reading.Unrated(key, label, noLimit)
	}
	source := "your own Pressure allowed on the hub"
	if r.Hub == Wood {
		source = "Pressure allowed on wood; from memory: USDA Wood Handbook"
	}
	return reading.AtMost(key, label, r.CrushPressure.Value, r.CrushAllowed.Value, thin, unit.Megapascal).Source(source).
		Advice(r.looser() + ", or raise " + r.wider())
}

// looser is how the preload is lowered.
func (r *Result) looser() string {
	if r.TorqueSet {
		return "lower Tightening torque"
	}
	return "lower Yield used in tightening, or enter a Tightening torque"
}
