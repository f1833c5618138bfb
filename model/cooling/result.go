package cooling

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// Result is what the cooling costs at one crank power.
type Result struct {
	PowerTaken float64 // from the crank, W
	Mass       float64 // kg
	Depth      float64 // along the thrust axis, m
}

// Cost is what the cooling s costs when the crank delivers power, W.
func Cost(s Spec, power float64) Result {
	r := Result{PowerTaken: s.PowerTaken(power)}
	switch s.Kind {
	case Fan:
		r.Mass, r.Depth = s.FanMass, s.FanDepth
	case Liquid:
		r.Mass = s.LiquidMass
	}
	return r
}

const noTemperature = "head temperature is not computed in this version"

// Readings lists what was found.
func (r Result) Readings() []reading.Reading {
	return []reading.Reading{
		reading.Missing("cooling.head_temperature", "Cylinder head temperature", unit.Celsius, noTemperature).Lower(),
		reading.New("cooling.power_taken", "Power taken by cooling", r.PowerTaken, unit.Watt).Lower().
			How("fan's share of crank power; free air and liquid take none here").Source("estimate"),
		reading.New("cooling.mass", "Cooling mass", r.Mass, unit.Kilogram).Lower().
			How("as set for the kind of cooling; free air adds none").Source("as set"),
		reading.New("cooling.depth", "Cooling depth", r.Depth, unit.Millimetre).Lower().
			How("fan and shroud between engine and drive; a radiator hangs beside the stack").Source("geometry"),
	}
}

// Checks holds the cooling against what is known: nothing yet.
func (r Result) Checks() []reading.Check {
	return []reading.Check{
		reading.Unrated("cooling.head_temperature", "Cylinder head temperature", noTemperature).
			Advice("measure it standing at full throttle on a hot day"),
	}
}
