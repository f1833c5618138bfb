package match

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// Report is the match as people read it: standing and at trim speed at full
// throttle, and in level flight.
type Report struct {
	Static, Trim, Level Point

	Fast  Point // full throttle at the highest airspeed looked at
	Light Point // level flight with the tank empty

	PeakPower  float64 // W
	PeakSpeed  float64 // rad/s
	SpeedLimit float64 // highest allowed, rad/s
}

// NewReport gathers three points of one machine.
func NewReport(e Engine, static, trim, level Point) Report {
	r := Report{Static: static, Trim: trim, Level: level}
	r.PeakPower, r.PeakSpeed = e.Peak()
	r.SpeedLimit = e.SpeedLimit()
	return r
}

const (
	balance  = "power arriving through the drive equals power absorbed by the propeller"
	allowed  = "share of full-throttle power that keeps the engine within Highest allowed speed and within its Power curve; 100 % when it would pass neither"
	thrustAt = "propeller speed for the thrust that level flight needs, then back through the drive to the crank"
	energy   = "balance of power"
)

// Readings are the match's figures. Figures of a point that was not reached
// are missing, with the reason.
func (r Report) Readings(rs []reading.Reading) []reading.Reading {
	static, trim, level, fast := &r.Static, &r.Trim, &r.Level, &r.Fast
	return append(rs,
		static.read("match.static_speed_share", "Standing speed, share of peak's", share(static.CrankSpeed, r.PeakSpeed), unit.Percent).
			How("engine speed at full throttle standing over its speed of greatest power; "+balance).Source(energy),
		static.read("match.static_power_share", "Standing power, share of greatest", share(static.EnginePower, r.PeakPower), unit.Percent).Higher().
			How("power to the drive at full throttle standing over its greatest").Source(energy),
		static.read("match.static_throttle", "Throttle allowed standing", static.Throttle, unit.Percent).
			How(allowed).Source(energy),
		trim.read("match.trim_speed", "Engine speed at trim", trim.CrankSpeed, unit.RPM).
			How("full throttle at trim speed; "+balance).Source(energy),
		trim.read("match.trim_power", "Power to the drive at trim", trim.EnginePower, unit.Kilowatt).Higher().
			How("at the drive face, after what the cooling takes; full throttle at trim speed").Source(energy),
		trim.read("match.trim_throttle", "Throttle allowed at trim", trim.Throttle, unit.Percent).
			How(allowed).Source(energy),
		fast.read("match.fast_speed", "Engine speed at wing's top speed", fast.CrankSpeed, unit.RPM).
			How("full throttle at the top speed of the wing in level flight; "+balance).Source(energy),
		level.read("match.level_speed", "Engine speed in level flight", level.CrankSpeed, unit.RPM).
			How(thrustAt).Source(energy),
		level.read("match.level_propeller_speed", "Propeller speed in level flight", level.PropellerSpeed, unit.RPM).Lower().
			How(thrustAt).Source(energy),
		level.read("match.level_power", "Power to the drive, level flight", level.EnginePower, unit.Kilowatt).Lower().
			How("at the drive face, after what the cooling takes; "+thrustAt).Source(energy),
		r.throttle(),
		r.reserve(),
	)
}

// throttle has no value below the usable speeds, where no full-throttle power
// is known.
func (r *Report) throttle() reading.Reading {
	const key, label = "match.level_throttle", "Power used in level flight"
	if r.Level.Status == BelowRange {
		return reading.Missing(key, label, unit.Percent, BelowRange.String())
	}
	return r.Level.read(key, label, r.Level.Throttle, unit.Percent).Lower().
		How("share of full-throttle power at the same engine speed").Source(energy)
}

// reserve is the thrust left to climb with.
func (r *Report) reserve() reading.Reading {
	const key, label = "match.thrust_reserve", "Thrust to spare at trim speed"
	if !r.Trim.Status.Settled() {
		return reading.Missing(key, label, unit.Newton, r.Trim.Status.String())
	}
	if !r.Level.holds() {
		return reading.Missing(key, label, unit.Newton, r.Level.Status.String())
	}
	return reading.New(key, label, r.Trim.InstalledThrust-r.Level.InstalledThrust, unit.Newton).Higher().
		How("installed, full throttle less level flight").Source(energy)
}

// read declares a reading of the point, missing when it was not reached.
func (p *Point) read(key, label string, si float64, u unit.Unit) reading.Reading {
	if !p.Status.Settled() && p.Status != BelowRange {
		return reading.Missing(key, label, u, p.Status.String())
	}
	return reading.New(key, label, si, u)
}

func share(x, of float64) float64 {
	if of <= 0 {
		return 0
	}
	return x / of
}
