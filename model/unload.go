package model

import (
	"strings"

	"backspan/model/match"
	"backspan/model/propeller"
	"backspan/model/reading"
)

// unload takes back what was rated of shafts, bearings, bolts and mounts under
// loads that stand for nothing: with a single blade thrust turns round beside
// the shaft, and outside the propeller's model thrust and torque are not known.
// Needs all other reports.
func (c *chain) unload(m match.Report) {
	switch {
	case worked(m.Static) && !flies(m.Static):
		c.unrate(m.Static.Propeller.Status.String())
	case c.variant.Propeller.Blades == 1:
		c.unrate(propeller.Single)
	}
}

func (c *chain) unrate(why string) {
	c.outcome.Bearings = nil
	for i := range c.outcome.Readings {
		if r := &c.outcome.Readings[i]; carriesThrust(r.Key) && r.Known() {
			r.Value, r.Why = 0, why
		}
	}
	for i := range c.outcome.Checks {
		if k := &c.outcome.Checks[i]; carriesThrust(k.Key) && k.Verdict != reading.NotRated {
			*k = reading.Unrated(k.Key, k.Label, why).Source("mechanics")
		}
	}
}

// carriesThrust tells by the key whether a figure is of a part that carries the
// propeller.
func carriesThrust(key string) bool {
	if strings.HasPrefix(key, "vibration.torsional") {
		return false
	}
	part, _, _ := strings.Cut(key, ".")
	switch part {
	case "shaft", "gearshaft", "bearing", "bolt", "vibration":
		return true
	}
	return false
}
