package cooling

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	measure = "measure the head standing at full throttle and give Measured head temperature and Air temperature at that reading"
	cooler  = "bring the cylinder out of the hub's shadow and from behind a gear case or pulley (Cylinder leans from upright by, Cylinder behind mount face), " +
		"choose baffled air, a fan or liquid for Cooling, raise Fin height or Finned length, or hold full throttle standing for a short time only"

	// Below this pitch fins at less than this speed cool no better for standing
	// closer; the finding is published, the two figures are an estimate.
	leastGap, slowAir = 5e-3, 8.0
)

// Checks holds the cooling against its limits. marginAsked is the share of a
// limit below which a margin counts as thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	if !r.Solved {
		return append(cs, reading.Unrated("cooling.head_temperature", "Head temperature on a hot day", unsolved))
	}
	cs = append(cs, r.headCheck(marginAsked), r.bandCheck())
	if r.Asked {
		cs = append(cs, reading.Condition("cooling.calibration", "Measured head temperature fits", r.Correction.Known).Source("heat balance").
			Advice("give both Measured head temperature and Air temperature at that reading, the head between the air and Effective gas temperature"))
	}
	if r.Kind.inAir() {
		cs = append(cs, reading.Condition("cooling.fin_gap", "Fins stand wide enough apart", r.Gap >= leastGap || r.Speed >= slowAir).Warn().
			Source("Yoshida et al., JSME Int. J. B 49 (2006) 869, abstract; the figures are an estimate").
			Advice("raise Fin pitch: in slow air narrow fins cool no better"))
	}
	if r.Kind == Liquid {
		cs = append(cs,
			reading.AtMost("cooling.coolant", "Coolant stays below its limit", r.Coolant, r.CoolantLimit, marginAsked, unit.Celsius).Warn().
				Source("Coolant temperature allowed, as set").Advice("raise Radiator face area, or hang the radiator where the propeller draws more air"),
			reading.AtLeast("cooling.liquid_mass", "Mass of the liquid circuit is enough", r.Mass, r.MassNeeded, 0, unit.Kilogram).Warn().
				Source("Radiator mass over face area and the circuit, as set").Advice("raise Liquid cooling mass to what the circuit weighs"))
	}
	return cs
}

// bandCheck is thin where the limit lies inside the band.
func (r *Result) bandCheck() reading.Check {
	c := reading.AtMost("cooling.head_band", "Head on a hot day, high end", r.HotHead.High, r.Limit, 0, unit.Celsius).Warn().
		Source("Head temperature allowed, as set; from memory")
	if r.Correction.Known {
		return c.Advice(cooler)
	}
	return c.Advice(measure + ": the band narrows. Else " + cooler)
}

// headCheck fails for a machine whose head was measured too hot, and for an
// unmeasured one only where even the low end of the band is past the limit.
func (r *Result) headCheck(marginAsked float64) reading.Check {
	c := reading.AtMost("cooling.head_temperature", "Head temperature on a hot day", r.HotHead.Mid, r.Limit, marginAsked, unit.Celsius).
		Source("Head temperature allowed, as set; from memory")
	if r.Correction.Known {
		return c.Advice(cooler)
	}
	if r.HotHead.Low > r.Limit {
		return c.Advice("even the low end of the band, " + unit.Celsius.Text(r.HotHead.Low) + ", is past the limit: " + measure + ". Else " + cooler)
	}
	return c.Warn().Advice(measure + "; until then this is a rough guide. Else " + cooler)
}
