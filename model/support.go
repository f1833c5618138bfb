package model

import (
	"math"

	"backspan/model/drive"
	"backspan/model/gearshaft"
	"backspan/model/match"
	"backspan/model/reading"
	"backspan/model/shaft"
	"backspan/model/unit"
)

// reportSupport rates the shafts and the bearings on which the propeller and
// what drives it turn.
func (c *chain) reportSupport(m match.Report, r drive.Result) {
	margin := c.study.MarginAsked
	switch {
	case c.variant.Drive.Kind == drive.Direct:
		c.add(c.supportReadings(), nil)
	case !worked(m.Static):
		c.withheld(c.supportReadings(), c.unmatched(m))
	case r.OnAxle:
		s := shaft.Support(c.variant.Drive.Support, c.axleLoads(m, r.Axle))
		c.outcome.Bearings = s.Bearings()
		c.set(s.Readings(c.outcome.Readings), s.Checks(c.outcome.Checks, margin))
	default:
		g := gearshaft.Rate(c.variant.Drive.GearShafts, r.Shafting, c.variant.Engine.Turns, c.axleLoads(m, shaft.Loads{}))
		c.outcome.Bearings = g.Rows()
		r.CrankPull = g.CrankPull()
		c.set(g.Readings(c.outcome.Readings), g.Checks(c.outcome.Checks, margin))
	}
	f := c.crankForces(m, r)
	c.outcome.Bearings = append(c.outcome.Bearings, f.Bearings()...)
	c.outcome.Readings = f.Readings(c.outcome.Readings)
}

// unsupported declares the readings of shafts and bearings of a drive that
// could not be built.
func (c *chain) unsupported() {
	if c.variant.Drive.Kind == drive.Direct {
		c.add(c.supportReadings(), nil)
	} else {
		c.withheld(c.supportReadings(), c.driveErr)
	}
	c.add(shaft.CrankForces{Why: c.driveErr.Error()}.Readings(nil), nil)
}

// supportReadings declares the readings of this kind of drive.
func (c *chain) supportReadings() []reading.Reading {
	switch c.variant.Drive.Kind {
	case drive.Gear:
		return gearshaft.Result{}.Readings(nil)
	case drive.Direct:
		return c.ownBearings()
	}
	return shaft.Result{}.Readings(nil)
}

// axleLoads adds the propeller to what the drive puts on the axle.
func (c *chain) axleLoads(m match.Report, l shaft.Loads) shaft.Loads {
	p, spinning := c.propeller.Piece(), m.Static.PropellerSpeed
	l.PropellerWeight, l.PropellerOverhang = p.Mass*unit.StandardGravity, p.CGAft
	if c.variant.Drive.PropellerAxis == drive.Below {
		l.PropellerWeight = -l.PropellerWeight
	}
	l.Thrust, l.Torque, l.Speed = m.Static.Propeller.Thrust, m.Static.Propeller.Torque, spinning
	l.GyroCouple = (c.propeller.PolarInertia() + c.drive.SpinningInertia()) * spinning * c.study.Wing.TurnRate
	l.GyroWear, l.GyroPeak = l.GyroCouple, l.GyroCouple
	// One blade or two resist a turn about the axis they lie along and give way
	// about the other: the couple's size is 2|cos φ| of its mean.
	if c.variant.Propeller.Blades <= 2 {
		l.GyroWear *= twoBladesWear
		l.GyroPeak *= 2
	}
	return l
}

// twoBladesWear is the cubic mean of 2|cos φ|: the cube root of 32/(3π).
var twoBladesWear = math.Cbrt(32 / (3 * math.Pi))

// ownBearings declares the bearing lives of machines without a shaft of their
// own.
func (c *chain) ownBearings() []reading.Reading {
	var lives []reading.Reading
	for _, r := range (shaft.Result{}).Readings(nil) {
		if r.Key == "bearing.life_prop_side" || r.Key == "bearing.life_engine_side" {
			lives = append(lives, r)
		}
	}
	return reading.Without(lives, "the propeller turns on the engine's own bearings")
}

// crankForces are those of a belt's pull or of a pinion on the crank.
func (c *chain) crankForces(m match.Report, r drive.Result) shaft.CrankForces {
	e := &c.variant.Engine
	pull := r.CrankPull
	switch {
	case c.variant.Drive.Kind == drive.Direct:
		return shaft.CrankForces{Why: "what the propeller itself does to the crank is not computed"}
	case !worked(m.Static):
		return shaft.CrankForces{Why: c.unmatched(m).Error()}
	case c.variant.Drive.Kind == drive.Gear && pull == (shaft.CrankPull{}):
		return shaft.CrankForces{Why: "the coupling carries no side force to the crank", Absent: true}
	case !e.MainSpacing.Known:
		return shaft.CrankForces{Why: "Crank main bearings, spacing, is not given"}
	case c.variant.Drive.Kind == drive.Gear && !e.FaceToMain.Known:
		return shaft.CrankForces{Why: "Drive face to nearer main bearing is not given"}
	}
	if c.variant.Drive.Kind == drive.Gear {
		pull.Behind += e.FaceToMain.Value
	}
	return pull.Crank(e.MainSpacing.Value)
}

// torsionalReadings are the frequencies at which crank, drive and propeller
// twist against one another.
func (c *chain) torsionalReadings() []reading.Reading {
	second := "a belt or a hub is one spring between crank and propeller: there is no second frequency in the model"
	if c.variant.Drive.Kind == drive.Gear {
		second = "the inertias of crank and propeller, or the torque, are not known"
	}
	return []reading.Reading{
		reading.OfSlot("vibration.torsional_first", "First torsional frequency", c.torsional[0], unit.Hertz,
			"the stiffness between crank and propeller is not given, or the drive is stiff").
			How("crank against propeller over the belt with both spans taut, or over the coupling of a gear").Source("mechanics of inertias on springs"),
		reading.OfSlot("vibration.torsional_second", "Second torsional frequency", c.torsional[1], unit.Hertz, second).
			How("pinion against wheel over the teeth of a gear, with the crank where the coupling is stiff; shafts, bearings and case give too, so the true one is lower. Speed over mesh resonance leaves out what hangs on the two gears").
			Source("mechanics of inertias on springs; tooth stiffness ISO 6336-1, from memory"),
	}
}
