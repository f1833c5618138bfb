package model

import (
	"fmt"
	"math"

	"backspan/model/bearing"
	"backspan/model/drive"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/propeller"
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
		running, ok := known(o, "gear.backlash_running")
		list = d.BuiltGear().Making(param.Slot{Value: running.Value, Known: ok})
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
		list = append(list, imbalance(v, o, mass.Value))
	}
	return append(list, part.AtMost("propeller.tracking", "Tracking of the blades, tip to tip", v.Propeller.TrackingLimit, unit.Millimetre, 1).
		How("turn by hand past a fixed pointer, plate bolts tight").Given("propeller.tracking_limit"))
}

// SeatLimits are the limits of the seats of one of the outcome's bearings.
func SeatLimits(v *Variant, o *Outcome, at int) []part.Allowed {
	seats, turns := v.Drive.Support.Seats, v.Drive.Support.Axle == shaft.Turns
	if v.Drive.Kind == drive.Gear {
		seats, turns = v.Drive.GearShafts.Seats, true
	}
	return seats.Making(o.Bearings[at].Size, turns, housing(v, o))
}

// housing is what the outer rings of a drive's bearings sit in.
func housing(v *Variant, o *Outcome) bearing.Housing {
	warm := func(h bearing.Housing, key string) bearing.Housing {
		if r, ok := known(o, key); ok {
			h.Temperature = param.Known(r.Value)
		}
		return h
	}
	if v.Drive.Kind == drive.Gear {
		return warm(bearing.Housing{Name: "case", As: "the oil", Expansion: bearing.AluminiumExpansion}, "gear.oil_temperature")
	}
	h := bearing.Housing{Name: "hub", As: "the belt", Expansion: v.Drive.Support.HousingGrowth / 100}
	if v.Drive.Support.Axle == shaft.Turns {
		h.Name = "case"
	}
	if v.Drive.Kind == drive.ToothedBelt {
		return warm(h, "toothedbelt.temperature")
	}
	return warm(h, "belt.temperature")
}

func known(o *Outcome, key string) (reading.Reading, bool) {
	r, ok := o.Reading(key)
	return r, ok && r.Known()
}

// imbalance is what the propeller may have: of its grade at the highest speed
// that the engine is allowed, and no more than the bearings are rated for.
func imbalance(v *Variant, o *Outcome, mass float64) part.Allowed {
	const key, label = "propeller.imbalance", "Imbalance left in the propeller"
	ratio, ok := known(o, "drive.ratio")
	if !ok || !(ratio.Value > 0) {
		return part.Unknown(key, label, unit.One, "the propeller's speed is not known")
	}
	speed, grade := v.Engine.SpeedLimit/ratio.Value, v.Propeller.BalanceGrade
	offset := grade.Eccentricity(speed)
	how := fmt.Sprintf("propeller mass times the %s that grade %s leaves at %s, the engine's highest allowed speed over the ratio", unit.Micrometre.Text(offset), grade, unit.RPM.Text(speed))
	if rated, ok := centreOffset(&v.Drive); ok && rated < offset {
		offset = rated
		how = fmt.Sprintf("propeller mass times the %s that the bearings are rated for; grade %s would leave more at %s", unit.Micrometre.Text(offset), grade, unit.RPM.Text(speed))
	}
	const perMass = 1e6 // g·mm of a kg·m
	left := mass * offset
	return part.Said(key, label, fmt.Sprintf("at most %.0f g·mm, %.2f g at the tip", left*perMass, 1000*left/(v.Propeller.Diameter/2))).
		How(how + "; half the play of bore on spigot counts in it").Source(propeller.BalanceStandard)
}

// centreOffset is how far off the axis the propeller's centre may lie for its
// bearings, m; ok is false on the engine's own.
func centreOffset(d *drive.Spec) (offset float64, ok bool) {
	switch d.Kind {
	case drive.Gear:
		return d.GearShafts.CentreOffset, true
	case drive.Direct:
		return 0, false
	case drive.RibbedBelt, drive.ToothedBelt:
	}
	return d.Support.CentreOffset, true
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
		least, most := tension.Value-step.Value/2, tension.Value+step.Value/2
		how := "as near as one step of the eccentric comes, per strand"
		if floor, ok := known(o, "belt.standing_tension"); ok && least < floor.Value {
			least, most = floor.Value, max(most, floor.Value+step.Value)
			how = "one step of the eccentric, and never below the standing tension, per strand: slip and life are reckoned with it"
		}
		list = append(list,
			part.Between("belt.setting_"+at.when+"_limits", "Tension to set, "+at.words+", limits", least, most, unit.Newton, 0).How(how).Source("geometry"),
			part.Between("belt.frequency_"+at.when+"_limits", "Span frequency, "+at.words+", limits",
				frequency.Value*math.Sqrt(least/tension.Value), frequency.Value*math.Sqrt(most/tension.Value), unit.Hertz, 0).
				How("goes with the root of the tension between its limits").Source("mechanics of a string"))
	}
	return list
}
