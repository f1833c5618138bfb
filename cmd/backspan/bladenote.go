package main

import (
	"fmt"
	"strconv"

	"backspan/model/explore"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// bladeReadings are shown of the machine as it is and with the new blade.
var bladeReadings = []string{"propeller.static_thrust", "engine.speed", "match.trim_speed", "flight.climb_rate", "propeller.stall_margin", "propeller.tip_mach"}

func bladeNote(f explore.BladeFound) string {
	d := &f.Design
	note := fmt.Sprintf("As built it gives %s for %s there, isolated; turned %s against the least-loss blade. ",
		unit.Newton.Text(d.Built.Thrust), unit.Kilowatt.Text(d.Built.Power), unit.Degree.Text(d.Turned))
	if d.Clipped {
		note += "Chords that cannot be built are cut to the limits, so the least-loss figures do not hold for it. "
	}
	note += "On the machine:"
	for i, key := range bladeReadings {
		before, _ := f.Before.Reading(key)
		after, _ := f.After.Reading(key)
		if i > 0 {
			note += ";"
		}
		note += fmt.Sprintf(" %s %s (now %s)", after.Label, after.Text(), before.Text())
	}
	return note + ". A blade is loaded by thousands of times its weight: strength, balance and safe running up are the builder's to prove."
}

type bladeData struct {
	Study         string        `json:"study"`
	Variant       string        `json:"variant"`
	Thrust        float64       `json:"thrust_n"`
	Power         float64       `json:"power_w"`
	TurnedDegrees float64       `json:"turned_deg"`
	Stations      []bladeRow    `json:"stations"`
	Machine       []bladeEffect `json:"machine"`
}

type bladeRow struct {
	Share          float64 `json:"share_of_radius"`
	Radius         float64 `json:"radius_mm"`
	Chord          float64 `json:"chord_mm"`
	LeastLossChord float64 `json:"least_loss_chord_mm"`
	Thickness      float64 `json:"thickness_mm"`
	Angle          float64 `json:"blade_angle_deg"`
	Reynolds       float64 `json:"reynolds"`
}

type bladeEffect struct {
	Key  string   `json:"key"`
	Now  *float64 `json:"now"`
	With *float64 `json:"with_blade"`
	Unit string   `json:"unit"`
	Why  string   `json:"why,omitempty"`
}

func slotOf(r reading.Reading) param.Slot {
	return param.Slot{Value: r.Value, Known: r.Key != "" && r.Known()}
}

func plain(x float64) string { return strconv.FormatFloat(x, 'g', 8, 64) }
