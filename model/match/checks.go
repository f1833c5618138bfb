package match

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// Standing, a well-matched engine turns a little below its speed of greatest
// power and comes up to it in flight.
const (
	leastShare  = 0.85
	askedShare  = 0.93
	lightShare  = 1.02
	practice    = "common practice, no source"
	lighten     = "lower Nominal pitch or Pitch trim, Diameter or the chords, or raise the reduction: a smaller crank pulley or pinion, or a larger driven pulley or wheel"
	loadUp      = "raise Nominal pitch or Pitch trim, Diameter or the chords, or lower the reduction: a larger crank pulley or pinion, or a smaller driven pulley or wheel"
	moreOrLess  = "more engine power, a larger Diameter, or less weight"
	lowLimit    = "Highest allowed speed or the end of Power curve keeps the engine from its speed of greatest power: raise or extend it, or take an engine that gives its power lower"
	longer      = "extend Power curve if the engine goes on further; or "
	checkStatic = "match.static"
)

// Checks holds the three points against the engine's range. marginAsked is the
// share of a limit below which a check is thin.
func (r Report) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	return append(cs, r.static(), r.light(), r.onePoint(), r.trim(marginAsked), r.fast(marginAsked), r.level(marginAsked))
}

func (r *Report) static() reading.Check {
	const label = "Engine reaches its power standing"
	switch r.Static.Status {
	case Matched, OverSpeed, PastCurve:
		advice := Lugging.cure()
		if r.Static.Status.Throttled() {
			advice = lowLimit
		}
		return reading.AtLeast(checkStatic, label, share(r.Static.CrankSpeed, r.PeakSpeed), leastShare, askedShare/leastShare-1, unit.Percent).
			Source("0.85 of the speed of greatest power, thin below 0.93; " + practice).Advice(advice)
	case Lugging, Forbidden:
		return failed(checkStatic, label, r.Static.Status)
	}
	return reading.Unrated(checkStatic, label, r.Static.Status.String())
}

func (r *Report) light() reading.Check {
	const key, label = "match.static_light", "Propeller loads engine standing"
	switch r.Static.Status {
	case OverSpeed, PastCurve:
		return failed(key, label, r.Static.Status)
	case Matched:
		return reading.AtMost(key, label, share(r.Static.CrankSpeed, r.PeakSpeed), lightShare, 0, unit.Percent).Warn().
			Source("1.02 of the speed of greatest power, since the engine still gains speed in flight; " + practice).Advice(loadUp)
	}
	return reading.Unrated(key, label, r.Static.Status.String())
}

func (r *Report) onePoint() reading.Check {
	const key, label = "match.one_point", "Engine comes up to its power"
	if !r.Static.Status.Settled() {
		return reading.Unrated(key, label, r.Static.Status.String())
	}
	c := reading.Condition(key, label, !r.Static.Deficit).Warn().Source("slopes of engine power and load").Advice(lighten)
	if r.Static.Deficit {
		c.Why = "below this point power is lacking at full throttle: two working points, the engine may not come on the pipe"
	}
	return c
}

func (r *Report) trim(marginAsked float64) reading.Check {
	const key, label = "match.trim", "Engine speed allowed at trim"
	switch r.Trim.Status {
	case OverSpeed, PastCurve, Windmilling, Lugging, Forbidden:
		return failed(key, label, r.Trim.Status)
	case Matched:
		return reading.AtMost(key, label, r.Trim.CrankSpeed, r.SpeedLimit, marginAsked, unit.RPM).
			Source("Highest allowed speed, as set").Advice(OverSpeed.cure())
	}
	return reading.Unrated(key, label, r.Trim.Status.String())
}

// fast warns only: the pilot can throttle back.
func (r *Report) fast(marginAsked float64) reading.Check {
	const key, label = "match.fast", "Engine speed at wing's top speed"
	switch {
	case r.Fast.Status.Throttled():
		return failed(key, label, r.Fast.Status).Warn().Advice("throttle back at speed; or " + loadUp)
	case r.Fast.Status != Matched:
		return reading.Unrated(key, label, r.Fast.Status.String())
	}
	return reading.AtMost(key, label, r.Fast.CrankSpeed, r.SpeedLimit, marginAsked, unit.RPM).Warn().
		Source("Highest allowed speed, as set").Advice("throttle back at speed; or " + loadUp)
}

func (r *Report) level(marginAsked float64) reading.Check {
	const key, label = "match.level", "Level flight below full throttle"
	switch r.Level.Status {
	case Matched:
		return reading.AtMost(key, label, r.Level.Throttle, 1, marginAsked, unit.Percent).
			Source(energy).Advice(moreOrLess)
	case BelowRange:
		return failed(key, label, BelowRange).Warn().Advice(lighten + "; or extend Power curve to lower speeds")
	case Impossible:
		advice := moreOrLess
		if r.Trim.Status.Throttled() {
			advice = r.Trim.Status.cure()
		}
		return failed(key, label, Impossible).Advice(advice)
	case Lugging, Windmilling:
		return failed(key, label, r.Level.Status)
	}
	return reading.Unrated(key, label, r.Level.Status.String())
}

// cure says what to change; empty for a state that needs no change.
func (s Status) cure() string {
	switch s {
	case Lugging:
		return s.Short() + ": " + lighten
	case OverSpeed, Windmilling:
		return s.Short() + ": " + loadUp
	case PastCurve:
		return s.Short() + ": " + longer + loadUp
	case Forbidden:
		return s.String()
	}
	return ""
}

// failed is a check that fails for a reason in words.
func failed(key, label string, why Status) reading.Check {
	c := reading.Condition(key, label, false).Source(energy)
	c.Cure, c.Why = why.cure(), why.String()
	return c
}
