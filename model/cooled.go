package model

import (
	"math"

	"backspan/model/cooling"
	"backspan/model/drive"
	"backspan/model/engine"
	"backspan/model/match"
	"backspan/model/pulley"
)

// reportCooling finds the head's temperature standing at full throttle. It
// needs the stack, which places cylinder and propeller.
func (c *chain) reportCooling(m match.Report, e engine.Running) {
	r := cooling.Work(c.variant.Cooling, c.coolingDuty(m, e))
	c.set(r.Readings(c.outcome.Readings), r.Checks(c.outcome.Checks, c.study.MarginAsked))
}

func (c *chain) coolingDuty(m match.Report, e engine.Running) cooling.Duty {
	v := c.variant
	s := &v.Cooling
	aft := v.Engine.CGAft
	if s.CylinderAft.Known {
		aft = s.CylinderAft.Value
	}
	rise := v.Drive.AxisRise(c.drive)
	disc := c.stack.DriveDepth + v.Propeller.BossThickness/2 // behind the mount face
	d := cooling.Duty{
		Power: e.Power, AirTemperature: c.air.Temperature, AirDensity: c.air.Density, Induced: m.Static.Propeller.InducedSpeed,
		PropellerRadius: v.Propeller.Diameter / 2, HubRadius: v.Propeller.HubRadius,
		CylinderAhead: disc - aft, CylinderOff: math.Hypot(s.CylinderUp()-rise, s.CylinderSide()),
		RadiatorAhead: disc - s.RadiatorAft, RadiatorOff: s.RadiatorUp - rise,
		Bore: v.Engine.Bore, Stroke: v.Engine.Stroke, Cylinders: v.Engine.Cylinders, GearCase: v.Drive.Kind == drive.Gear, AxisRise: rise,
		Hot: c.dayAt(s.HotDay, m.Static.CrankSpeed),
	}
	if s.MeasuredAir.Known {
		d.Measured = c.dayAt(s.MeasuredAir.Value, m.Static.CrankSpeed)
	}
	if b, ok := c.drive.(interface{ Run() pulley.OpenBelt }); ok {
		d.PulleyRadius = b.Run().Driven / 2
	}
	if e.Power > 0 {
		d.HeatShare = e.HeatToCylinder / e.Power
	}
	return d
}

// dayAt is full throttle on this site at another air temperature, K, with the
// same relative humidity.
func (c *chain) dayAt(temperature, crankSpeed float64) cooling.Day {
	site := c.study.Site
	site.TemperatureOffset += temperature - c.air.Temperature
	there := site.State()
	return cooling.Day{Power: c.engine.In(there).Power(crankSpeed), Density: there.Density}
}
