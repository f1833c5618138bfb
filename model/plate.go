package model

import (
	"math"

	"backspan/model/bolt"
	"backspan/model/drive"
	"backspan/model/match"
	"backspan/model/param"
)

// reportPlate rates the bolts that carry the propeller, whatever the drive. It
// needs the drive's readings.
func (c *chain) reportPlate(m match.Report, r drive.Result) {
	if !worked(m.Static) {
		c.withheld(bolt.Result{}.Readings(), c.unmatched(m))
		return
	}
	p, torque := &c.variant.Propeller, m.Static.Propeller.Torque
	b := bolt.Clamp(c.variant.Drive.Plate, bolt.Load{
		Torque: torque, TorqueAmplitude: c.plateSwing(r, torque), Thrust: m.Static.Propeller.Thrust,
		HubDiameter: p.BossDiameter, HubThickness: p.BossThickness,
	})
	c.add(b.Readings(), b.Checks(c.study.MarginAsked))
}

// plateSwing is how far the torque at the plate rises above its mean, N·m,
// where the pull of a belt through a turn is known.
func (c *chain) plateSwing(r drive.Result, mean float64) param.Slot {
	pull, peak := "belt.effective_pull", "belt.pull_peak"
	if r.Kind == drive.ToothedBelt {
		pull, peak = "toothedbelt.effective_pull", "toothedbelt.peak_pull"
	}
	steady, _ := c.outcome.Reading(pull)
	most, _ := c.outcome.Reading(peak)
	if !r.OnAxle || !steady.Known() || !most.Known() || !(steady.Value > 0) {
		return param.Slot{}
	}
	// The firing stroke raises the pull further than the rest of the turn can
	// turn it round, so the rise governs.
	return param.Known(math.Max(0, mean*(most.Value/steady.Value-1)))
}
