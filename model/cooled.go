package model

import (
	"math"

	"backspan/model/cooling"
	"backspan/model/drive"
	"backspan/model/engine"
	"backspan/model/match"
)

// reportCooling finds the head's temperature standing at full throttle. It
// needs the stack, which places cylinder and propeller.
func (c *chain) reportCooling(m match.Report, e engine.Running) {
	r := cooling.Work(c.variant.Cooling, c.coolingDuty(m, e))
	c.add(r.Readings(), r.Checks(c.study.MarginAsked))
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
		Bore: v.Engine.Bore, Stroke: v.Engine.Stroke, Cylinders: v.Engine.Cylinders, GearCase: v.Drive.Kind == drive.Gear,
	}
	if e.Power > 0 {
		d.HeatShare = e.HeatToCylinder / e.Power
	}
	return d
}
