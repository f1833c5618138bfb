package shaft

import (
	"fmt"
	"math"

	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// quietStatic is the static safety below which a bearing may dent enough to be
// heard, as a share above the limit of 1.
const quietStatic = 1.0

// Checks holds the result against its limits. marginAsked is the share of a
// limit below which a margin counts as thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	cs = append(cs,
		r.lifeCheck("bearing.life_prop_side", "Bearing life, propeller side", "Bearing, propeller side", "lower Plate to propeller-side bearing", r.PropSide.Life, marginAsked),
		r.lifeCheck("bearing.life_engine_side", "Bearing life, engine side", "Bearing, engine side", "raise Plate to propeller-side bearing", r.EngineSide.Life, marginAsked),
		rated("bearing.static_safety", "Static safety, worse bearing", r.staticSafety(), 1, math.Max(marginAsked, quietStatic), noLoad).
			Source("from memory: at least 1, 2 and more to stay quiet").
			Advice("choose a larger Bearing, propeller side or engine side"),
		reading.AtMost("bearing.speed_parameter", "Mean diameter times speed", r.speedParameter(), r.SpeedLimit, marginAsked, unit.MillimetrePerMinute).
			Source(r.speedSource).
			Advice("choose a smaller "+r.fastest()+", or oil as Lubricant of the bearings"),
		r.leastLoadCheck(),
		r.thrustCheck(marginAsked),
		reading.AtLeast("bearing.spacing", "Bearings clear of each other", r.Spacing, r.LeastSpacing, 0, unit.Millimetre).
			Source("geometry").Advice("raise Bearing spacing, or choose narrower bearings"),
		reading.Condition("shaft.wall", "Axle bore leaves a wall", r.Walled).
			Source("geometry").Advice("lower Axle bore, or choose bearings of a larger bore or a larger Axle diameter"),
		r.axleCheck("shaft.fatigue_safety", "Axle safety against fatigue", "Tensile strength of the axle", r.FatigueSafety, marginAsked),
		r.axleCheck("shaft.yield_safety", "Axle safety against yield", "Yield strength of the axle", r.YieldSafety, marginAsked),
	)
	if r.CrankMoment != 0 {
		cs = append(cs, reading.Unrated("shaft.crank_bending", "Bending of the overhung crank",
			fmt.Sprintf("no limit is known for the engine's crank; the pull bends it with %s", unit.NewtonMetre.Text(r.CrankMoment))))
	}
	return cs
}

// rated is a check of a slot against a least value.
func rated(key, label string, s param.Slot, limit, thin float64, why string) reading.Check {
	if !s.Known {
		return reading.Unrated(key, label, why)
	}
	return reading.AtLeast(key, label, s.Value, limit, thin, unit.One)
}

// fastest names the bearing nearer to its speed limit.
func (r *Result) fastest() string {
	if r.EngineSide.SpeedParameter > r.PropSide.SpeedParameter {
		return "Bearing, engine side"
	}
	return "Bearing, propeller side"
}

func (r *Result) lifeCheck(key, label, part, move string, s param.Slot, thin float64) reading.Check {
	if !s.Known {
		return reading.Unrated(key, label, noLoad)
	}
	return reading.AtLeast(key, label, s.Value, r.LifeAsked, thin, unit.Hour).
		Source("your own Bearing life asked; " + lifeSource).
		Advice("choose a larger " + part + ", or " + move)
}

// leastLoadCheck warns of the bearing that is loaded least for its size.
func (r *Result) leastLoadCheck() reading.Check {
	worse := &r.PropSide
	if e := &r.EngineSide; e.Running*worse.LeastLoad < worse.Running*e.LeastLoad {
		worse = e
	}
	return reading.AtLeast("bearing.least_load", "Load that keeps the balls rolling", worse.Running, worse.LeastLoad, 0, unit.Newton).Warn().
		Source("from memory: a hundredth of the dynamic rating").
		Advice("choose a smaller bearing where the load is low, or preload it with a spring washer")
}

func (r *Result) thrustCheck(thin float64) reading.Check {
	locating := &r.PropSide
	if r.EngineSide.Axial > locating.Axial {
		locating = &r.EngineSide
	}
	return reading.AtMost("bearing.axial_load", "Axial load on the locating bearing", locating.Axial, locating.GreatestThrust, thin, unit.Newton).Warn().
		Source("from memory: half the static rating, a quarter in the series 60").
		Advice("choose a larger bearing as Locating bearing")
}

func (r *Result) axleCheck(key, label, strength string, s param.Slot, thin float64) reading.Check {
	why := noStress
	if !r.Walled {
		why = noWall
	}
	return rated(key, label, s, r.SafetyAsked, thin, why).Source("your own Axle safety asked; " + shaftSource).
		Advice("raise Axle diameter or " + strength + ", lower Axle bore, Bearing to where axle is held or Stress concentration, bending")
}
