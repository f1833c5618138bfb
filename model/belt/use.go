package belt

import (
	"math"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/unit"
)

// Use is how the running time is spent; what is left is idling. Powers are
// shares of the examined one, at speeds after the propeller's cube law.
type Use struct {
	Full, Climb, Level     float64 // shares of the time
	ClimbPower, LevelPower float64
}

func defaultUse() Use {
	return Use{Full: 0.05, Climb: 0.20, Level: 0.65, ClimbPower: 0.85, LevelPower: 0.5}
}

func (u *Use) params() []param.Param {
	const estimate = "estimate"
	return []param.Param{
		param.Number(&u.Full, "time_full", "Time at full throttle", unit.Percent).
			Within(0, 100).Typical(2, 15).Help("share of the running time at the examined power; for the belt's life alone, cost and fuel go by the shares of Use").From(estimate),
		param.Number(&u.Climb, "time_climb", "Time in climb", unit.Percent).
			Within(0, 100).Typical(10, 40).Help("share of the running time; what full, climb and level leave is idling").From(estimate),
		param.Number(&u.Level, "time_level", "Time in level flight", unit.Percent).
			Within(0, 100).Typical(40, 80).Help("share of the running time").From(estimate),
		param.Number(&u.ClimbPower, "climb_power", "Power in climb", unit.Percent).
			Within(10, 100).Typical(70, 95).Help("share of the examined power").From(estimate),
		param.Number(&u.LevelPower, "level_power", "Power in level flight", unit.Percent).
			Within(10, 100).Typical(35, 65).Help("share of the examined power").From(estimate),
	}
}

// spell is a part of the running time at one duty.
type spell struct {
	share float64
	at    part.Duty
}

// spells are the duties the running time is made of. Idling counts only where
// the engine's idle speed is known.
func (u *Use) spells(full part.Duty, crank part.Crank) [4]spell {
	at := func(power float64) part.Duty {
		d := full
		d.Power, d.CrankSpeed = power*full.Power, math.Cbrt(power)*full.CrankSpeed
		return d
	}
	s := [4]spell{{u.Full, full}, {u.Climb, at(u.ClimbPower)}, {u.Level, at(u.LevelPower)}}
	if crank != nil && full.CrankSpeed > 0 {
		n := crank.IdleSpeed() / full.CrankSpeed
		s[3] = spell{math.Max(0, 1-u.Full-u.Climb-u.Level), at(n * n * n)}
	}
	return s
}
