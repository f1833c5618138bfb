package model

import (
	"backspan/model/drive"
	"backspan/model/match"
	"backspan/model/reading"
	"backspan/model/shaft"
	"backspan/model/unit"
)

// reportSupport rates the axle and the bearings on which driven pulley and
// propeller turn.
func (c *chain) reportSupport(m match.Report, r drive.Result) {
	switch {
	case !r.OnAxle:
		c.add(c.noSupport(), nil)
	case !worked(m.Static):
		c.withheld(shaft.Result{}.Readings(), c.unmatched(m))
	default:
		s := shaft.Support(c.variant.Drive.Support, c.axleLoads(m, r.Axle))
		c.add(s.Readings(), s.Checks(c.study.MarginAsked))
	}
}

// unsupported declares the readings of axle and bearings of a drive that could
// not be built.
func (c *chain) unsupported() {
	if c.variant.Drive.Kind.Belt() {
		c.withheld(shaft.Result{}.Readings(), c.driveErr)
		return
	}
	c.add(c.noSupport(), nil)
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
	l.GyroPeak = l.GyroCouple
	// Two blades resist a turn about the axis they lie along and give way about
	// the other: the couple swings between nothing and twice its mean.
	if c.variant.Propeller.Blades == 2 {
		l.GyroPeak *= 2
	}
	return l
}

// noSupport declares the bearing lives of machines without an axle of their
// own.
func (c *chain) noSupport() []reading.Reading {
	var lives []reading.Reading
	for _, r := range (shaft.Result{}).Readings() {
		if r.Key == "bearing.life_prop_side" || r.Key == "bearing.life_engine_side" {
			lives = append(lives, r)
		}
	}
	if c.variant.Drive.Kind == drive.Direct {
		return reading.Without(lives, "the propeller turns on the engine's own bearings")
	}
	return reading.Blank(lives, "the life of a gear's bearings is not computed in this version")
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
			How("pinion against wheel over the teeth of a gear, with the crank where the coupling is stiff; shafts, bearings and case give too, so the true one is lower").
			Source("mechanics of inertias on springs; tooth stiffness ISO 6336-1, from memory"),
	}
}
