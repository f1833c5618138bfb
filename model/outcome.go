package model

import (
	"backspan/model/bearing"
	"backspan/model/carry"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/stack"
	"backspan/model/upkeep"
)

// Outcome is all that is known of one variant.
type Outcome struct {
	Variant  string
	Readings []reading.Reading
	Checks   []reading.Check
	Stack    stack.Result      // the pieces in place, for drawings
	Load     carry.Load        // the ready machine on the pilot's back
	Depths   []carry.Thickness // what the depth of each piece costs, the dearest first
	Speeds   part.SpeedMap
	Layout   Layout          // outlines and places, for drawings
	Changes  []upkeep.Change // of parts, in order of running time until the horizon
	Bearings []bearing.Row   // with the forces on them; of the crank's, where they are known
}

// Reading finds a reading by key.
func (o Outcome) Reading(key string) (reading.Reading, bool) { return reading.Find(o.Readings, key) }

// Worst is the check with the worst news.
func (o Outcome) Worst() (reading.Check, bool) { return reading.Worst(o.Checks) }

// Fails reports whether any check fails.
func (o Outcome) Fails() bool { return reading.Count(o.Checks, reading.Fails) > 0 }
