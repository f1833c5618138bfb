package vibration

import (
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	softer   = "lower Mount stiffness along thrust or across thrust"
	stiffer  = "raise Mount stiffness, or spread Places of the mounts"
	clearOf  = 0.15 // of a mode; estimate
	textbook = "a mode isolates from √2 of its own speed on; Rao, from memory"
)

// Checks holds the mounts against what is asked of them. marginAsked is the
// share of a limit below which a margin counts as thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	if !r.Solved {
		return cs
	}
	cs = append(cs,
		reading.Condition("vibration.held", "Mounts hold the machine", r.Held).Source("mechanics").Advice("give three or more Places of the mounts that do not stand in one line"),
	)
	if !r.Held {
		return cs
	}
	cs = append(cs,
		reading.AtLeast("vibration.tip_clearance", "Tip clearance after sag", r.TipLeft, r.TipAsked, marginAsked, unit.Millimetre).
			Source("Tip clearance asked after sag, as set; estimate").Advice(stiffer+", raise Guard diameter or lower the propeller's Diameter"),
		r.aheadCheck(marginAsked),
		reading.AtLeast("vibration.near_mode", "First two orders keep off a mode", r.NearMode, clearOf, marginAsked, unit.Percent).Warn().
			Source("estimate").Advice(softer+", or another standing speed"),
		r.idleCheck())
	if !r.Single {
		return append(cs, reading.Unrated("vibration.isolation", "Mounts isolate the frame", several))
	}
	return append(cs, reading.AtMost("vibration.isolation", "Mounts isolate the frame", r.PassedFirst, r.PassedAllowed, marginAsked, unit.Percent).Warn().
		Source("Shaking that may reach the frame, as set; estimate").Advice(softer))
}

// aheadCheck fails where the blades reach the guard; short of what is asked it
// is thin.
func (r *Result) aheadCheck(marginAsked float64) reading.Check {
	c := reading.AtLeast("vibration.guard_ahead", "Blades clear the guard ahead", r.AheadLeft, r.TipAsked, marginAsked, unit.Millimetre).
		Source("Tip clearance asked after sag, as set; the guard's plane is that of its centre of gravity").Advice(stiffer + ", or raise Guard ahead of propeller plate")
	if r.AheadLeft < 0 {
		return c
	}
	return c.Warn()
}

// idleCheck asks that idling stays clear of the fastest mode.
func (r *Result) idleCheck() reading.Check {
	return reading.AtLeast("vibration.idle", "Idle lies above the mount modes", r.Idle/(2*math.Pi), math.Sqrt2*r.Modes[freedoms-1], 0, unit.Hertz).Warn().
		Source(textbook).Advice(softer + ", or raise Idle speed")
}
