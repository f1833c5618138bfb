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
		Torque: torque, TorqueAmplitude: c.plateSwing(r.Kind, torque), Thrust: m.Static.Propeller.Thrust,
		HubDiameter: p.BossDiameter, HubThickness: p.BossThickness,
	})
	c.add(b.Readings(), b.Checks(c.study.MarginAsked))
}

// plateSwing is how far the torque at the plate rises above its mean, N·m,
// where the drive knows what passes through it in a turn.
func (c *chain) plateSwing(k drive.Kind, mean float64) param.Slot {
	peak := c.peakOverMean(k)
	if !peak.Known {
		return param.Slot{}
	}
	// The firing stroke raises the torque further than the rest of the turn can
	// turn it round, so the rise governs.
	return param.Known(math.Max(0, mean*(peak.Value-1)))
}

func (c *chain) peakOverMean(k drive.Kind) param.Slot {
	switch k {
	case drive.RibbedBelt:
		return c.over("belt.pull_peak", "belt.effective_pull")
	case drive.ToothedBelt:
		return c.over("toothedbelt.peak_pull", "toothedbelt.effective_pull")
	case drive.Gear:
		factor, _ := c.outcome.Reading("gear.pulsation_factor")
		return param.Slot{Value: factor.Value, Known: factor.Known()}
	}
	return param.Slot{}
}

// over is one reading over another, known where both are.
func (c *chain) over(above, below string) param.Slot {
	a, _ := c.outcome.Reading(above)
	b, _ := c.outcome.Reading(below)
	if !a.Known() || !b.Known() || !(b.Value > 0) {
		return param.Slot{}
	}
	return param.Known(a.Value / b.Value)
}
