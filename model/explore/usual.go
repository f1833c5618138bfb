package explore

import (
	"backspan/model/drive"
	"backspan/model/param"
)

// UsualReadings are the keys of the readings looked at when none is asked for.
func UsualReadings() []string {
	return []string{"stack.depth", "propeller.static_thrust", "flight.climb_rate"}
}

// UsualPath is the parameter to try first: the one that makes the ratio of the
// drive, and the propeller's pitch where none can.
func (b Base) UsualPath() string {
	path, _, err := b.variant.Drive.ForRatio(1)
	if err != nil || b.variant.Drive.Kind == drive.Gear && b.variant.Drive.Gear.CentreDistance.Known {
		return "propeller.pitch"
	}
	return "drive." + path
}

// UsualFree are the parameters that a search may set unless told otherwise:
// the propeller's size, what makes the ratio, and what makes the drive as wide
// as it is.
func (b Base) UsualFree() []string {
	paths := []string{"propeller.pitch", "propeller.diameter"}
	if p := b.UsualPath(); p != paths[0] {
		paths = append(paths, p)
	}
	switch b.variant.Drive.Kind {
	case drive.RibbedBelt:
		return append(paths, "drive.ribbed_belt.ribs")
	case drive.ToothedBelt:
		return append(paths, "drive.toothed_belt.belt_width")
	case drive.Gear:
		return append(paths, "drive.gear.face_width")
	case drive.Direct:
	}
	return paths
}

// UsualGoals are the keys of what a search improves unless told otherwise: more
// lift for less felt weight.
func UsualGoals() []string { return []string{"propeller.static_thrust", "carry.equivalent_mass"} }

// UsualSpread is a doubt that a builder has anyway.
type UsualSpread struct {
	Key, Spread string // as for Base.Spread
	Origin      string
}

// UsualSpreads are the doubts looked at unless others are given.
func (b Base) UsualSpreads() []UsualSpread {
	all := []UsualSpread{
		{"propeller.pitch", "±2 %", "estimate: how true a blade is to its pitch"},
		{"engine.mean_effective_pressure", "±5 %", "estimate: one engine against the next"},
		{"engine.mass", "±2 %", "estimate: what is weighed against what is written"},
		{"site.temperature_offset", "±10 K triangular", "estimate: cool mornings and warm days"},
	}
	if band, err := b.Reading("propeller.thrust_band"); err == nil && band.Known() {
		all = append(all, UsualSpread{"propeller.static_thrust", "±" + band.Text(), "the reading \"" + band.Label + "\""})
	}
	var usual []UsualSpread
	for _, u := range all {
		if _, err := b.Spread(u.Key + "=" + u.Spread); err == nil && b.Applies(u.Key) {
			usual = append(usual, u)
		}
	}
	return usual
}

// Applies reports whether a parameter, or a reading, bears on the machine as
// it is chosen. A reading always does.
func (b Base) Applies(key string) bool {
	for _, s := range b.sections {
		for _, p := range s.Params {
			if s.Path(p) == key {
				return !s.Hidden && !p.Hidden
			}
		}
	}
	return true
}

// UsualRange is a dial's usual range as Axis reads it: every word of a choice.
func (d Dial) UsualRange() string {
	if d.Kind == param.KindChoice || d.Kind == param.KindToggle {
		return ""
	}
	return d.Text(d.Usual[0]) + ".." + d.Text(d.Usual[1])
}
