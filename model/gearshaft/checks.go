package gearshaft

import (
	"math"

	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// quietStatic is the share above 1 below which a bearing may dent enough to be
// heard.
const quietStatic = 1.0

// parts are the parameters by which the bearings are chosen.
var parts = [bearingCount]string{"Wheel bearing, propeller side", "Wheel bearing, engine side", "Pinion bearings", "Pinion bearings"}

// Checks holds the result against its limits. marginAsked is the share of a
// limit below which a margin counts as thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	from := len(cs)
	cs = r.lifeChecks(cs, marginAsked)
	cs = r.bearingChecks(cs, marginAsked)
	cs = r.axialChecks(cs, marginAsked)
	cs = r.shaftChecks(cs, marginAsked)
	cs = r.bendChecks(cs, marginAsked)
	cs = r.seatChecks(cs, marginAsked)
	if r.onCrank {
		for i, c := range cs[from:] {
			if ofPinion[c.Key] {
				cs[from+i] = reading.Unrated(c.Key, c.Label, onCrank)
			}
		}
	}
	return cs
}

// ofPinion are the checks that fall away with a shaft of the pinion's own.
var ofPinion = map[string]bool{
	"bearing.life_pinion_prop_side": true, "bearing.life_pinion_engine_side": true, "bearing.speed_pinion": true,
	"bearing.axial_load_pinion": true, "gearshaft.pinion_room": true, "gearshaft.fatigue_safety_pinion": true,
	"gearshaft.yield_safety_pinion": true, "gearshaft.mesh_slope": true, "gearshaft.shift": true,
	"gearshaft.bearing_slope_pinion": true, "gearshaft.coupling_seat": true, "gearshaft.coupling_seat_room": true,
}

// rated is a check of a slot against a least value.
func rated(key, label string, s param.Slot, limit, thin float64, u unit.Unit, why string) reading.Check {
	if !s.Known {
		return reading.Unrated(key, label, why)
	}
	return reading.AtLeast(key, label, s.Value, limit, thin, u)
}

func (r *Result) lifeChecks(cs []reading.Check, thin float64) []reading.Check {
	for i := range r.Bearings {
		cs = append(cs, rated(lifeNames.keys[i], lifeNames.labels[i], r.Bearings[i].Life, r.spec.LifeAsked, thin, unit.Hour, noLoad).
			Source("your own Bearing life asked; "+lifeSource).Advice("choose a larger bearing as "+parts[i]+", or lower the mesh forces with a larger Module or more teeth"))
	}
	return cs
}

func (r *Result) bearingChecks(cs []reading.Check, thin float64) []reading.Check {
	static, worst := r.least(staticSafety)
	cs = append(cs,
		rated("bearing.static_safety", "Static safety, worse bearing", static, 1, math.Max(thin, quietStatic), unit.One, noLoad).
			Source("from memory: at least 1, 2 and more to stay quiet").Advice("choose a larger bearing as "+parts[worst]),
		r.leastLoadCheck(),
	)
	for _, x := range []struct {
		at         int
		key, label string
	}{{wheelProp, "prop_side", "Bearing speed, propeller side"}, {wheelEngine, "engine_side", "Bearing speed, engine side"}, {pinionProp, "pinion", "Bearing speed, pinion"}} {
		cs = append(cs, reading.AtMost("bearing.speed_"+x.key, x.label, r.Bearings[x.at].SpeedParameter, r.limit, thin, unit.MillimetrePerMinute).
			Source(r.limitSource).
			Advice("choose a smaller bearing as "+parts[x.at]+", or oil as Lubricant of the bearings"))
	}
	return append(cs, reading.AtLeast("gearshaft.pinion_room", "Pinion clear of its bearings", r.Room, 0, 0, unit.Millimetre).
		Source("geometry").Advice("raise Pinion bearing span, or lower Face width; overhung, raise Pinion offset"))
}

// leastLoadCheck warns of the bearing that is loaded least for its size.
func (r *Result) leastLoadCheck() reading.Check {
	worst := 0
	for i := range r.Bearings {
		if b, w := &r.Bearings[i], &r.Bearings[worst]; b.Running*w.LeastLoad < w.Running*b.LeastLoad {
			worst = i
		}
	}
	return reading.AtLeast("bearing.least_load", "Load that keeps the balls rolling", r.Bearings[worst].Running, r.Bearings[worst].LeastLoad, 0, unit.Newton).Warn().
		Source("from memory: a hundredth of the dynamic rating").
		Advice("choose a smaller bearing as " + parts[worst] + ", or preload it with a spring washer")
}

func (r *Result) axialChecks(cs []reading.Check, thin float64) []reading.Check {
	check := func(key, label string, first int) reading.Check {
		at := first
		if r.Bearings[first+1].Axial > r.Bearings[first].Axial {
			at++
		}
		return reading.AtMost(key, label, r.Bearings[at].Axial, r.Bearings[at].GreatestThrust, thin, unit.Newton).Warn().
			Source("from memory: half the static rating, a quarter in the series 60").
			Advice("choose a larger bearing as " + parts[at] + ", or lower Helix angle")
	}
	cs = append(cs,
		check("bearing.axial_load", "Axial load on the locating bearing", wheelProp),
		check("bearing.axial_load_pinion", "Axial load, pinion's locating one", pinionProp),
	)
	if !r.helical {
		return cs
	}
	return append(cs, reading.Condition("gearshaft.helix_hand", "Helix pushes against the thrust", r.WheelAxial*r.Thrust <= 0).Warn().
		Source("statics").Advice("choose the other Hand of the pinion's helix: the teeth now push the propeller shaft the same way as the propeller does"))
}
