package engine

import (
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

// Readings lists the figures for people.
func (r Running) Readings(rs []reading.Reading) []reading.Reading {
	rs = r.powerReadings(rs)
	rs = r.fuelReadings(rs)
	return r.pulsationReadings(rs)
}

func (r *Running) powerReadings(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.New("engine.power", "Engine power, standing", r.Power, unit.Kilowatt).Higher().
			How("at the crank, where engine and propeller balance at full throttle").Source(r.Correction.source()),
		reading.New("engine.speed", "Engine speed, standing", r.Speed, unit.RPM).
			How("of the crank, where engine and propeller balance at full throttle").Source("balance of power"),
		reading.New("engine.torque", "Engine torque, standing", r.Torque, unit.NewtonMetre).
			How("power over speed").Source("mechanics"),
		reading.New("engine.peak_power", "Peak power on site", r.PeakPower, unit.Kilowatt).Higher().
			How("highest of the full-throttle curve, over the air correction").Source(r.Correction.source()),
		reading.New("engine.peak_speed", "Speed of peak power", r.PeakSpeed, unit.RPM).
			How("highest point of the full-throttle curve").Source("the power curve"),
		reading.New("engine.lowest_speed", "Lowest speed of the curve", r.LowestSpeed, unit.RPM).
			How("below it the engine is taken not to pull").Source("the power curve"),
		reading.New("engine.highest_speed", "Highest speed of the curve", r.HighestSpeed, unit.RPM).
			How("above it the engine is taken not to pull").Source("the power curve"),
		reading.New("engine.displacement", "Displacement", r.Displacement, unit.CubicCentimetre).
			How("bore, stroke and cylinders").Source("geometry"),
		reading.New("engine.mean_effective_pressure", "Mean effective pressure, standing", r.MeanEffectivePressure, unit.Bar).
			How("brake work per cycle over displacement").Source("definition"),
		reading.New("engine.piston_speed", "Mean piston speed, standing", r.MeanPistonSpeed, unit.MetrePerSecond).Lower().
			How("two strokes per revolution").Source("geometry"),
		reading.New("engine.air_correction", "Air correction", r.CorrectionFactor, unit.One).Lower().
			How("power in the reference air over power on site").Source(r.Correction.source()),
	)
}

const willansSource = "Willans line; friction pressure is an estimate"

func (r *Running) fuelReadings(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.New("engine.fuel_flow", "Fuel flow, standing", r.FuelVolumeFlow, unit.LitrePerHour).Lower().
			How("fuel in proportion to brake and friction power").Source(willansSource),
		r.specificFuel(),
		r.efficiency(),
		reading.New("engine.idle_fuel", "Fuel flow at idle", r.IdleFuelFlow, unit.LitrePerHour).Lower().
			How("friction power alone, at idle speed").Source(willansSource),
		reading.New("engine.fuel_heat", "Heat in the fuel", r.FuelHeat, unit.Kilowatt).
			How("fuel flow times heating value").Source("energy balance"),
		reading.New("engine.heat_to_cylinder", "Heat to shed, cylinder and head", r.HeatToCylinder, unit.Watt).Lower().
			How("share of the brake power, as set; less is left for the fins: see Heat carried away and Heat that does not pass the fins").Source("estimate; no published two-stroke balance is known to us"),
	)
}

const noPower = "the engine gives no power at this point"

func (r *Running) specificFuel() reading.Reading {
	const key, label = "engine.specific_fuel", "Specific fuel, standing"
	if !(r.Power > 0) {
		return reading.Missing(key, label, unit.GramPerKilowattHour, noPower).Lower()
	}
	return reading.New(key, label, r.FuelFlow/r.Power, unit.GramPerKilowattHour).Lower().
		How("fuel flow over brake power").Source(willansSource)
}

func (r *Running) efficiency() reading.Reading {
	const key, label = "engine.efficiency", "Brake efficiency, standing"
	if !(r.Power > 0) {
		return reading.Missing(key, label, unit.Percent, noPower).Higher()
	}
	return reading.New(key, label, r.Power/r.FuelHeat, unit.Percent).Higher().
		How("brake power over heat in the fuel").Source(willansSource)
}

const pulsationSource = "single-zone cycle and slider-crank, from memory: Heywood, Den Hartog; the burning is an estimate, good to about a quarter"

func (r *Running) pulsationReadings(rs []reading.Reading) []reading.Reading {
	return append(rs,
		r.torqueShare("engine.torque_peak_share", "Highest over mean torque, standing", r.PeakTorqueShare).Lower().
			How("gas and inertia torque added up from the first eight harmonics, which of few cylinders round off the very peak"),
		r.torqueShare("engine.torque_least_share", "Lowest over mean torque, standing", r.LeastTorqueShare).Higher().
			How("gas and inertia torque added up from the first eight harmonics; below zero the torque reverses between firings"),
		r.torqueShare("engine.harmonic_first", "Firing harmonic torque, standing", r.FiringHarmonicShare).Lower().
			How("amplitude at the order of firing over mean torque, gas and inertia"),
	)
}

// torqueShare is a figure over the mean torque; a torque too small to divide
// by is none.
func (r *Running) torqueShare(key, label string, share float64) reading.Reading {
	if !(r.Torque > 0) || math.IsNaN(share) || math.IsInf(share, 0) {
		return reading.Missing(key, label, unit.One, noPower)
	}
	return reading.New(key, label, share, unit.One).Source(pulsationSource)
}
