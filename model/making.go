package model

import (
	"fmt"
	"math"

	"backspan/model/drive"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/shaft"
	"backspan/model/unit"
)

// Making is what a workshop needs beside parameters and readings to make,
// measure and set a variant: limits, and what is told in words. o is the
// variant's outcome.
func Making(v *Variant, o *Outcome) []part.Allowed {
	var list []part.Allowed
	d := &v.Drive
	switch d.Kind {
	case drive.Gear:
		list = d.BuiltGear().Making()
	case drive.RibbedBelt:
		list = ribbedMaking(v, o)
	case drive.ToothedBelt:
		if teeth, ok := known(o, "toothedbelt.belt_teeth"); ok {
			list = []part.Allowed{part.Said("toothedbelt.order", "Belt to order",
				fmt.Sprintf("%s, %.0f teeth, %s wide", d.ToothedBelt.Section, teeth.Value, unit.Millimetre.Text(d.ToothedBelt.BeltWidth))).
				How("section, teeth and width").Source("geometry")}
		}
	}
	if turn := o.Layout.Turn; turn != "" {
		list = append(list, part.Said("propeller.turns", "Propeller turns, seen from behind", string(turn)).
			How("as the crank does, or reversed by a gear").Source("geometry"))
	}
	if torque, ok := known(o, "bolt.tightening_torque"); ok {
		list = append(list, d.Plate.Making(torque.Value)...)
	}
	if mass, ok := known(o, "propeller.mass"); ok {
		list = append(list, imbalance(v, mass.Value))
	}
	return append(list, part.AtMost("propeller.tracking", "Tracking of the blades, tip to tip", v.Propeller.TrackingLimit, unit.Millimetre, 1).
		How("turn by hand past a fixed pointer, plate bolts tight").Given("propeller.tracking_limit"))
}

// SeatLimits are the limits of the seats of one of the outcome's bearings.
func SeatLimits(v *Variant, o *Outcome, bearing int) []part.Allowed {
	seats, turns := v.Drive.Support.Seats, v.Drive.Support.Axle == shaft.Turns
	if v.Drive.Kind == drive.Gear {
		seats, turns = v.Drive.GearShafts.Seats, true
	}
	return seats.Making(o.Bearings[bearing].Size, turns)
}

func known(o *Outcome, key string) (reading.Reading, bool) {
	r, ok := o.Reading(key)
	return r, ok && r.Known()
}

// imbalance is what the propeller may have with its centre as far off the axis
// as the bearings are rated for.
func imbalance(v *Variant, mass float64) part.Allowed {
	offset := v.Drive.Support.CentreOffset
	if v.Drive.Kind == drive.Gear {
		offset = v.Drive.GearShafts.CentreOffset
	}
	const perMass = 1e6 // g·mm of a kg·m
	if v.Drive.Kind == drive.Direct {
		return part.Said("propeller.imbalance", "Imbalance left in the propeller", "not given").How("no limit is entered for a hub on the crank")
	}
	left := mass * offset
	return part.Said("propeller.imbalance", "Imbalance left in the propeller",
		fmt.Sprintf("at most %.0f g·mm, %.2f g at the tip", left*perMass, 1000*left/(v.Propeller.Diameter/2))).
		How("propeller mass times how far its centre may lie off the axis, as the bearings are rated").Source("mechanics")
}

func ribbedMaking(v *Variant, o *Outcome) []part.Allowed {
	list := []part.Allowed{part.Said("belt.check_again", "Tension of a new belt", "check after 20 h").
		How("then set it as a run-in belt").Source("common practice, no source")}
	b := &v.Drive.RibbedBelt
	if length, ok := known(o, "belt.length_effective"); ok {
		list = append(list, part.Said("belt.order", "Belt to order", fmt.Sprintf("%d %s %.0f", b.Ribs, b.Profile, unit.Millimetre.From(length.Value))).
			How("ribs, profile and effective length in mm").Source("from memory: ISO 9982"))
	}
	step, ok := known(o, "belt.tension_step")
	if !ok {
		return list
	}
	for _, at := range []struct{ when, words string }{{"new", "new belt"}, {"run_in", "run-in belt"}} {
		tension, ok := known(o, "belt.setting_"+at.when)
		frequency, found := known(o, "belt.frequency_"+at.when)
		if !ok || !found || !(tension.Value > step.Value/2) {
			continue
		}
		half := step.Value / 2
		list = append(list,
			part.Between("belt.setting_"+at.when+"_limits", "Tension to set, "+at.words+", limits", tension.Value-half, tension.Value+half, unit.Newton, 0).
				How("as near as one step of the eccentric comes, per strand").Source("geometry"),
			part.Between("belt.frequency_"+at.when+"_limits", "Span frequency, "+at.words+", limits",
				frequency.Value*math.Sqrt(1-half/tension.Value), frequency.Value*math.Sqrt(1+half/tension.Value), unit.Hertz, 0).
				How("goes with the root of the tension between its limits").Source("mechanics of a string"))
	}
	return list
}
