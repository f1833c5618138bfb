package gearshaft

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// Limits of slope and shift. Source: Shigley's Mechanical Engineering Design,
// table 7-2: uncrowned spur gears below 0.0005 rad; deep-groove ball bearings
// 0.001 to 0.003 rad; shift of spur gears 0.010, 0.005 and 0.003 in by pitch.
const (
	gearSlope    = 0.0005
	bearingSlope = 0.001
	slopeSource  = "Shigley's Mechanical Engineering Design, table 7-2"
	inch         = 0.0254
)

func (r *Result) shaftChecks(cs []reading.Check, thin float64) []reading.Check {
	for _, x := range [...]struct {
		s                       *Shaft
		key, label, make, steel string
	}{{&r.Pinion, "pinion", "pinion shaft", "Pinion bearings", "pinion shaft"}, {&r.Wheel, "wheel", "propeller shaft", "Wheel bearing, propeller side", "prop. shaft"}} {
		where := ""
		if x.s.Weakest != "" {
			where = "at the " + x.s.Weakest + ": "
		}
		advice := where + "choose a larger bore as " + x.make + ", raise Tensile or Yield strength, " + x.steel + ", lower Notch in bending and Notch in torsion, or lower the peaks of torque with another Coupling stiffness"
		cs = append(cs,
			rated("gearshaft.fatigue_safety_"+x.key, "Fatigue safety, "+x.label, x.s.Fatigue, r.spec.SafetyAsked, thin, unit.One, noStress).
				Source("your own Shaft safety asked; "+shaftSource).Advice(advice),
			rated("gearshaft.yield_safety_"+x.key, "Yield safety, "+x.label, x.s.Yield, r.spec.SafetyAsked, thin, unit.One, noStress).
				Source("your own Shaft safety asked; "+shaftSource).Advice(advice))
	}
	return cs
}

func (r *Result) bendChecks(cs []reading.Check, thin float64) []reading.Check {
	b := &r.Bend
	slope := func(key, label string, x float64, where string) reading.Check {
		return reading.AtMost(key, label, x, bearingSlope, thin, unit.Milliradian).Warn().
			Source(slopeSource + ": 0.001 to 0.003 rad for deep-groove ball bearings, the lower one").
			Advice("choose a larger bore as " + where + ", or lower Face width or Gap beside the gears")
	}
	return append(cs,
		reading.AtMost("gearshaft.mesh_slope", "Slope between the gears", b.MeshSlope, gearSlope, thin, unit.Milliradian).Warn().
			Source(slopeSource+": 0.0005 rad for uncrowned spur gears").
			Advice("choose larger bores as Pinion bearings and Wheel bearing, or choose Crowned teeth, which stand more than this limit"),
		reading.AtMost("gearshaft.shift", "Shift of the gears", b.Shift, r.shiftLimit(), thin, unit.Micrometre).Warn().
			Source(slopeSource+", by the pitch of the teeth").Advice("choose larger bores as Pinion bearings and Wheel bearing"),
		slope("gearshaft.bearing_slope_wheel", "Bearing slope, propeller shaft", max(b.Bearings[wheelProp], b.Bearings[wheelEngine]), "Wheel bearing, propeller side"),
		slope("gearshaft.bearing_slope_pinion", "Bearing slope, pinion shaft", max(b.Bearings[pinionProp], b.Bearings[pinionEngine]), "Pinion bearings"),
	)
}

// shiftLimit is how far a gear of this module may shift, m; between the groups
// of the source the stricter one holds.
func (r *Result) shiftLimit() float64 {
	switch {
	case r.module > inch/10:
		return 0.010 * inch
	case r.module > inch/20:
		return 0.005 * inch
	}
	return 0.003 * inch
}

func (r *Result) seatChecks(cs []reading.Check, thin float64) []reading.Check {
	if r.Coupling.Fit != Integral {
		cs = append(cs, reading.AtMost("gearshaft.coupling_seat_room", "Coupling seat within the coupling", r.spec.CouplingSeatLength, r.SeatRoom[0], 0, unit.Millimetre).
			Source("geometry").Advice("lower Coupling seat, length, or raise Coupling depth"))
	}
	if r.Flange.Fit != Integral {
		cs = append(cs, reading.AtMost("gearshaft.flange_seat_room", "Flange seat clear of the bearing", r.spec.FlangeSeatLength, r.SeatRoom[1], 0, unit.Millimetre).
			Source("geometry").Advice("lower Flange seat, length, or raise Propeller flange thickness or Seal cover depth"))
	}
	for _, x := range r.seats() {
		key, label := "gearshaft."+x.key+"_seat", x.name+" seat under peak torque"
		if x.s.Fit == Integral {
			continue
		}
		cs = append(cs, rated(key, label, x.s.Safety, r.spec.SeatSafetyAsked, thin, unit.One, x.s.Why).
			Source("your own Seat safety asked; "+seatSource).Advice(x.advice()))
	}
	return cs
}

// advice names the parameters that make a seat hold.
func (x namedSeat) advice() string {
	longer := "raise " + x.name + " seat, length"
	if x.key == "wheel" {
		longer = "raise Face width"
	}
	switch x.s.Fit {
	case Keyed:
		return longer + ", choose a stronger hub or raise Yield strength of the keys, or choose splines as " + x.name + " held by"
	case Tapered:
		return "raise Taper nut's force, " + x.key + ", or Taper, length per diameter"
	}
	return longer + ", raise Spline module or choose a stronger hub"
}
