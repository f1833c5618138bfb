package model

import (
	"math"
	"slices"

	"backspan/model/bolt"
	"backspan/model/drive"
	"backspan/model/match"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

// What of the bolts stands before they are loaded, and what does not.
var (
	boltsAlone = []string{"bolt.count", "bolt.tightening_torque", "bolt.full_torque", "bolt.preload", "bolt.full_preload", "bolt.preload_least",
		"bolt.stress_share", "bolt.clamping_force", "bolt.slip_torque", "bolt.crush_pressure", "bolt.crush_safety"}
	boltsLoaded = []string{"bolt.slip_safety", "bolt.after_slip"}
)

// reportPlate rates the bolts that carry the propeller, whatever the drive. It
// needs the drive's readings.
func (c *chain) reportPlate(m match.Report, r drive.Result) {
	if err := c.firstError(); err != nil {
		c.withheld(bolt.Result{}.Readings(nil), err)
		return
	}
	p, torque := &c.variant.Propeller, m.Static.Propeller.Torque
	if !worked(m.Static) {
		b := bolt.Clamp(c.variant.Drive.Plate, bolt.Load{HubDiameter: p.BossDiameter, HubThickness: p.BossThickness})
		c.add(reading.BlankBut(b.Readings(nil), c.unmatched(m).Error(), boltsAlone...),
			slices.DeleteFunc(b.Checks(nil, c.study.MarginAsked), func(k reading.Check) bool { return slices.Contains(boltsLoaded, k.Key) }))
		return
	}
	b := bolt.Clamp(c.variant.Drive.Plate, bolt.Load{
		Torque: torque, TorqueAmplitude: c.plateSwing(r, m), Thrust: m.Static.Propeller.Thrust,
		HubDiameter: p.BossDiameter, HubThickness: p.BossThickness, Flange: c.variant.Drive.Flange(),
	})
	c.set(b.Readings(c.outcome.Readings), b.Checks(c.outcome.Checks, c.study.MarginAsked))
}

// plateSwing is how far the torque at the plate rises above its mean, N·m,
// where it is known what the drive passes.
func (c *chain) plateSwing(r drive.Result, m match.Report) param.Slot {
	mean := m.Static.Propeller.Torque
	switch r.Kind {
	case drive.RibbedBelt:
		return rise(mean, c.over("belt.pull_peak", "belt.effective_pull"))
	case drive.ToothedBelt:
		return rise(mean, c.over("toothedbelt.peak_pull", "toothedbelt.effective_pull"))
	case drive.Gear:
		peak, _ := c.outcome.Reading("gear.run_up_peak")
		if !peak.Known() {
			return param.Slot{}
		}
		return param.Known(math.Max(0, peak.Value*r.Ratio-mean))
	}
	return c.stiffSwing(r.Standing)
}

// rise is by how much a peak passes the mean. A belt that cannot carry the mean
// has no peak to tell of. The firing stroke raises the torque further than the
// rest of the turn can turn it round, so the rise governs.
func rise(mean float64, peakOverMean param.Slot) param.Slot {
	if !peakOverMean.Known || peakOverMean.Value <= 1 {
		return param.Slot{}
	}
	return param.Known(mean * (peakOverMean.Value - 1))
}

// stiffSwing is the propeller's share of the engine's pulsation where nothing
// gives between them, all harmonics taken to peak at once. Source: mechanics of
// two inertias.
func (c *chain) stiffSwing(t part.Transmission) param.Slot {
	train := c.train()
	if !(t.PowerIn > 0) || !(t.SpeedIn > 0) || !(train.PropellerInertia > 0) {
		return param.Slot{}
	}
	torque, swing := train.Crank.Pulsation(t.PowerIn, t.SpeedIn), 0.0
	for _, h := range torque.Harmonics[:torque.Count] {
		swing += h.Amplitude()
	}
	return param.Known(swing * train.PropellerInertia / (train.PropellerInertia + train.CrankInertia + c.drive.SpinningInertia()))
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
