package cooling

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	unsolved = "no steady full-throttle run standing was found"
	dry      = "there is no liquid circuit"
	noPower  = "the hot day is as hot as the head may be, or no air reaches the cylinder"
	balance  = "heat balance of gas and air, the form of NACA Report 612; fins: Gibson, and NACA Report 488 from memory; the heat share and the scatter are estimates"
	momentum = "momentum theory with a hub that does no work"
)

// Readings lists what was found.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = append(rs,
		r.solved("cooling.head_temperature", "Cylinder head temperature", r.Head.Mid, unit.Celsius).Lower().
			How("standing at full throttle in today's air; "+r.shaded()+"; "+r.trust()).Source(balance),
		r.solved("cooling.head_low", "Head temperature, low end", r.Head.Low, unit.Celsius).Lower().
			How("gas side over air side less its scatter").Source(balance),
		r.solved("cooling.head_high", "Head temperature, high end", r.Head.High, unit.Celsius).Lower().
			How("gas side over air side and its scatter").Source(balance),
		r.solved("cooling.head_hot_day", "Head temperature on a hot day", r.HotHead.Mid, unit.Celsius).Lower().
			How("standing at full throttle in the air of Hot day, at the same crank speed with the power the engine gives there; "+r.shaded()+"; "+r.trust()).Source(balance),
		r.solved("cooling.head_hot_day_low", "Head on a hot day, low end", r.HotHead.Low, unit.Celsius).Lower().
			How("gas side over air side less its scatter").Source(balance),
		r.solved("cooling.head_hot_day_high", "Head on a hot day, high end", r.HotHead.High, unit.Celsius).Lower().
			How("gas side over air side and its scatter").Source(balance),
		r.solved("cooling.air_speed", "Air speed at the cooling", r.Speed, unit.MetrePerSecond).Higher().
			How("at the cylinder, between its fins with a fan, or at the radiator").Source(momentum),
		r.solved("cooling.inflow_share", "Inflow left at the cylinder", r.Share, unit.Percent).Higher().
			How("distance ahead of the disc, the hub's shadow, pilot and frame, and the drive: "+r.keptOff()+"; of the mean induced speed").Source(momentum),
		r.solved("cooling.conductance", "Conductance to the air", r.AirSide, unit.WattPerKelvin).Higher().
			How(r.way()).Source(balance),
		r.solved("cooling.heat", "Heat carried away", r.Heat, unit.Watt).
			How("conductance × head above air, standing at full throttle today; of the engine's heat to shed "+unit.Percent.Text(r.OtherWays)+" go other ways than the fins, as set, and a hotter head takes less").Source(balance),
	)
	rs = r.free(rs)
	rs = r.circuit(rs)
	return append(rs,
		reading.New("cooling.power_taken", "Power taken by cooling", r.PowerTaken, unit.Watt).Lower().
			How("fan's or pump's share of crank power; free air takes none").Source("estimate"),
		reading.New("cooling.mass", "Cooling mass", r.Mass, unit.Kilogram).Lower().
			How("as set for the kind of cooling; free air adds none").Source("as set"),
		reading.New("cooling.depth", "Cooling depth", r.Depth, unit.Millimetre).Lower().
			How("fan and shroud between engine and drive; a radiator hangs beside the stack").Source("geometry"))
}

func (r *Result) solved(key, label string, si float64, u unit.Unit) reading.Reading {
	why := ""
	if !r.Solved {
		why = unsolved
	}
	return reading.Unless(why, key, label, si, u)
}

// shaded says what the drive keeps off what is cooled.
func (r *Result) shaded() string {
	if r.Kind.inAir() {
		return r.keptOff()
	}
	return "the drive keeps no air off a fan or a radiator"
}

// keptOff says what the drive keeps off the cylinder.
func (r *Result) keptOff() string {
	kept := unit.Percent.Text(r.Shade)
	switch {
	case r.GearCase:
		return "the gear case keeps off " + kept + " of the air, as set"
	case r.Covered > 0:
		return "the driven pulley covers " + unit.Percent.Text(r.Covered) + " of the fins and keeps off " + kept + " of the air"
	}
	return "the drive stands clear of the cylinder"
}

// way says by what the heat reaches the air.
func (r *Result) way() string {
	switch r.Kind {
	case Fan:
		return "fins and their own resistance; Gibson's correlation, made for a free stream, at the speed between the fins, and the air warms on its way"
	case Liquid:
		return "radiator and jacket"
	}
	return "fins and their own resistance"
}

// trust says how far a temperature is to be believed.
func (r *Result) trust() string {
	if r.Correction.Known {
		return "set by the measured head temperature"
	}
	return "not set by a measurement, so the band is wide"
}

func (r *Result) free(rs []reading.Reading) []reading.Reading {
	for i, word := range [...][2]string{
		{"cooling.free_air_power_low", "Free air cools, low end"},
		{"cooling.free_air_power", "Power that free air alone cools"},
		{"cooling.free_air_power_high", "Free air cools, high end"},
	} {
		why := noPower
		if !r.Solved {
			why = unsolved
		}
		rs = append(rs, reading.OfSlot(word[0], word[1], r.FreePower[i], unit.Kilowatt, why).Higher().
			How("this cylinder at this place, bare, at the head temperature allowed on the hot day").Source(balance))
	}
	return rs
}

func (r *Result) circuit(rs []reading.Reading) []reading.Reading {
	from := len(rs)
	rs = append(rs,
		r.solved("cooling.coolant_temperature", "Coolant temperature, hot day", r.Coolant, unit.Celsius).Lower().
			How("between head and air, standing at full throttle").Source(balance),
		r.solved("cooling.radiator_face_needed", "Radiator face needed", r.FaceNeeded, unit.SquareCentimetre).Lower().
			How("for the coolant temperature allowed on the hot day").Source(balance),
		r.solved("cooling.liquid_mass_needed", "Liquid cooling mass needed", r.MassNeeded, unit.Kilogram).Lower().
			How("radiator of the face needed, and the circuit").Source("estimate"),
	)
	if r.Kind != Liquid && r.Solved {
		reading.Without(rs[from:], dry)
	}
	return rs
}
