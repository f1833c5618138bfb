package flight

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// Checks holds the flight against its limits. What lies within the share
// marginAsked above a limit is thin.
func (r Result) Checks(marginAsked float64) []reading.Check {
	const stronger = "raise the thrust at flying speed with Diameter, Pitch or the drive's ratio, or lower the ready mass"
	return []reading.Check{
		reading.AtLeast("flight.level_thrust", "Full throttle holds level flight", r.FullThrust, r.Thrust, marginAsked, unit.Newton).
			Source(mechanics).Advice(stronger),
		r.climb(marginAsked).Source("own requirement, Least climb rate").Advice(stronger),
		reading.Condition("flight.hang", "Body hangs steadily at full throttle", r.HangsFull).
			Source(statics).
			Advice("raise Thrust line above hip axis, or set Hang points above hip axis so that thrust line and centre of gravity suit the thrust"),
		reading.Unrated("flight.gyroscopic_couple", "Gyroscopic couple", "no trustworthy limit for what a pilot tolerates is known"),
	}
}

func (r Result) climb(marginAsked float64) reading.Check {
	const key, label = "flight.climb_rate", "Climb rate"
	if !r.Climbs {
		return reading.Unrated(key, label, tooMuchThrust)
	}
	return reading.AtLeast(key, label, r.ClimbRate, r.LeastClimb, marginAsked, unit.MetrePerSecond)
}
