package model

import (
	"backspan/model/drive"
	"backspan/model/engine"
	"backspan/model/match"
	"backspan/model/upkeep"
)

// reportUpkeep adds up what the machine costs until the study's horizon. It
// needs the fuel of full throttle at trim speed and of level flight.
func (c *chain) reportUpkeep(m match.Report) {
	if err := c.firstError(); err != nil {
		c.withheld((&upkeep.Result{}).Readings(nil), err)
		return
	}
	if !flies(m.Trim) || !levels(m.Level) {
		c.add((&upkeep.Result{}).Readings(nil), nil)
		return
	}
	density := c.variant.Engine.FuelDensity
	r := upkeep.Keep(c.study.Use, &c.variant.Upkeep, upkeep.Machine{
		IdleFlow:  c.engine.FuelFlow(0, c.variant.Engine.IdleSpeed) / density,
		ClimbFlow: m.Trim.FuelFlow / density, CruiseFlow: m.Level.FuelFlow / density,
		Mixture: c.variant.Engine.Cycle == engine.TwoStroke,
		Drive:   c.drive.Upkeep(), DrivePart: changedPart(c.variant.Drive.Kind),
	})
	c.outcome.Changes = r.Changes
	c.set(r.Readings(c.outcome.Readings), r.Checks(c.outcome.Checks))
}

// changedPart is what of a drive is changed on schedule.
func changedPart(k drive.Kind) string {
	switch k {
	case drive.Gear:
		return "Gear oil and seals"
	case drive.ToothedBelt:
		return "Toothed belt"
	}
	return "Ribbed belt"
}
