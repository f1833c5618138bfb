package safety

import (
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	standsStill = "the propeller finds no working point standing"
	notMeasured = "no surface temperature was measured; exhaust and head stand more than 100 K above any surface that burns: keep distance and shield them"
	iso13857    = "ISO 13857, table 4: distances from a reprint, ranges of the openings from memory"
	mechanics   = "mechanics"
)

// Readings lists what was found.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = r.gaps(rs)
	return r.energies(rs)
}

func (r *Result) gaps(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.New("safety.tip_gap", "Tip to guard, hoop pushed", r.TipGap, unit.Millimetre).Higher().
			How("gap at rest less "+unit.Millimetre.Text(r.HoopGive)+", push against the hoop / its stiffness"+r.travel(r.Shift, "the tips move aside")).Source("geometry; stiffness estimated"),
		reading.New("safety.net_gap", "Blades to net, net pressed", r.PressedNet, unit.Millimetre).Higher().
			How("net ahead of the blades less what it gives under a hand"+r.travel(r.Forward, "the tips come forward")).Source("geometry; give estimated"),
		reading.New("safety.reach", "Reach through the net", r.Reach, unit.Millimetre).
			How("distance behind an opening of this size that fingers, hand or arm get to").Source(iso13857),
	)
}

// travel says how far the propeller's way in its mounts is counted.
func (r *Result) travel(way param.Slot, text string) string {
	if !way.Known {
		return "; how far " + text + " in the mounts is not known and not counted"
	}
	s := "; less " + unit.Millimetre.Text(way.Value) + " that " + text + " in the mounts at full throttle standing, sag"
	if r.Swings {
		return s + " and swing while crossing a mode"
	}
	return s + " alone"
}

func (r *Result) energies(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.OfSlot("safety.spin_energy", "Energy in the turning propeller", r.SpinEnergy, unit.Joule, standsStill).Lower().
			How("½ × inertia of propeller and what turns with it × speed², full throttle standing").Source(mechanics),
		reading.OfSlot("safety.tip_speed", "Speed of the blade tips", r.TipSpeed, unit.MetrePerSecond, standsStill).Lower().
			How("speed of rotation × radius, full throttle standing").Source(mechanics),
		reading.OfSlot("safety.chip_energy", "Energy of a piece off a blade", r.ChipEnergy, unit.Joule, standsStill).Lower().
			How("½ × "+unit.Gram.Text(r.Spec.ChipMass)+" × speed² at 90 % of the radius, full throttle standing").Source(mechanics+"; mass estimated"),
		reading.OfSlot("safety.surface", "Hottest surface measured", r.HottestKnown, unit.Celsius, notMeasured).Lower().
			How("the hotter of exhaust and head surface, as entered").Source("as measured"),
	)
}

// Checks lists the cautions. A gap within the share marginAsked of what is asked
// is thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	return append(cs,
		reading.AtLeast("safety.tip_gap", "Pushed hoop stays off the blades", r.TipGap, 0, 0, unit.Millimetre).Warn().
			Source("geometry; push and stiffness are estimates").
			Advice("measure Stiffness of the hoop; make the guard stiffer or Guard diameter larger, or the propeller Diameter smaller"),
		reading.AtLeast("safety.net_to_blade", "Net ahead of the blades", r.Spec.NetToBlade, r.Spec.NetAsked, marginAsked, unit.Millimetre).Warn().
			Source("common practice, no source; set as Net to blades asked").
			Advice("move the net or the propeller until Net ahead of the blades reaches what is asked"),
		r.fingers(marginAsked),
		reading.Unrated("safety.spin_energy", "Turning propeller",
			"no energy is harmless: never start unless worn or tied down, nobody in the plane of the propeller or behind it, the kill switch in the throttle hand"),
		r.surface(),
	)
}

func (r *Result) fingers(marginAsked float64) reading.Check {
	const key, label = "safety.fingers", "Fingers through the net"
	if r.Spec.Opening > armPasses {
		return reading.Unrated(key, label,
			"an arm passes openings this wide, and ISO 13857 would ask for 850 mm: the guard turns things aside and reminds, it keeps no hand out")
	}
	return reading.AtLeast(key, label, r.PressedNet, r.Reach, marginAsked, unit.Millimetre).Warn().Source(iso13857 + "; no claim of conformity").
		Advice("choose a smaller Opening of the net, a stiffer net, or set Net ahead of the blades larger")
}

func (r *Result) surface() reading.Check {
	const key, label = "safety.surface", "Hot surfaces"
	if !r.HottestKnown.Known {
		return reading.Unrated(key, label, notMeasured)
	}
	return reading.AtMost(key, label, r.HottestKnown.Value, r.Spec.BurnThreshold, 0, unit.Celsius).Warn().
		Source("from memory: ISO 13732-1, bare metal; set as Surface that burns on touch").
		Advice("shield it, or keep hands, lines and fuel away; let it cool before carrying")
}
