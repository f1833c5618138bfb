package model

import (
	"backspan/model/coupling"
	"backspan/model/drive"
	"backspan/model/match"
	"backspan/model/reading"
	"backspan/model/unit"
)

// clutchInFlight holds a gear's clutch against level flight, where it turns
// slowest for long: there it must not rub.
func (c *chain) clutchInFlight(m match.Report) []reading.Check {
	const key, label = "coupling.level_flight", "Clutch grips in level flight"
	d, level := &c.variant.Drive, m.Level
	built := d.BuiltGear()
	if d.Kind != drive.Gear || built.Coupling.Kind != coupling.Clutch {
		return nil
	}
	if level.Status != match.Matched && level.Status != match.BelowRange || !(level.CrankSpeed > 0) {
		return []reading.Check{reading.Unrated(key, label, level.Status.String())}
	}
	torque := level.EnginePower / level.CrankSpeed
	r := built.Coupling.Examine(coupling.Load{Torque: torque, Speed: level.CrankSpeed})
	if !r.Capacity.Known {
		return []reading.Check{reading.Unrated(key, label, r.Why)}
	}
	return []reading.Check{reading.AtLeast(key, label, r.Capacity.Value, torque, c.study.MarginAsked, unit.NewtonMetre).
		Source("mechanics: what it carries at the crank speed of level flight against the mean torque there; less slips and burns").
		Advice("Lower Clutch takes hold at, yet keep it well above Idle speed; or raise Clutch torque, Mass of one shoe, Clutch shoes or Clutch drum.")}
}
