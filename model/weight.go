package model

import (
	"backspan/model/carry"
	"backspan/model/drive"
	"backspan/model/flight"
	"backspan/model/match"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/stack"
)

// build stands the pieces in place. It needs every part.
func (c *chain) build() {
	pieces := c.drive.Pieces()
	if c.variant.Drive.PropellerAxis == drive.Below {
		for i := range pieces {
			pieces[i].CGUp = -pieces[i].CGUp
		}
	}
	prop := c.propeller.Piece()
	c.stack = stack.Build(c.variant.Frame, c.variant.Tank, stack.Parts{
		Engine: c.engine.Piece(), EngineRear: c.variant.Engine.DepthToRearEnd,
		Cooling: c.variant.Cooling.AppendPieces(make([]part.Piece, 0, 1)), Drive: pieces, Propeller: prop,
		PropellerDiameter: c.propeller.Diameter(), AxisOffset: c.variant.Drive.AxisRise(c.drive),
		FuelDensity: c.variant.Engine.FuelDensity,
	})
	c.outcome.Stack = c.stack
	c.layOut()
	c.outcome.Load = carry.Load{Mass: c.stack.MassReady, CGAft: c.stack.CGAft, CGUp: c.stack.CGUp}
}

func (c *chain) allUp() float64 {
	return flight.AllUp(c.study.Wing, c.study.Seat, c.study.Pilot.Mass, c.stack.MassReady)
}

func (c *chain) reportWeight() {
	if err := c.firstError(); err != nil {
		c.withheld(stack.Result{}.Readings(nil), err)
		c.withheld(carry.Result{}.Readings(nil), err)
		c.withheld(carry.Burden{}.Readings(nil), err)
		return
	}
	c.set(c.stack.Readings(c.outcome.Readings), c.stack.Checks(c.outcome.Checks, c.study.MarginAsked))
	carried := carry.Stand(c.study.Pilot, c.outcome.Load)
	c.set(carried.Readings(c.outcome.Readings), carried.Checks(c.outcome.Checks, c.study.MarginAsked))
	burden := carry.Bear(c.study.Pilot, &carried, c.machine())
	c.outcome.Depths = burden.Depths
	c.set(burden.Readings(c.outcome.Readings), burden.Checks(c.outcome.Checks, c.study.MarginAsked))
}

// machine is the stack as the pilot carries it, at both ends of the tank.
func (c *chain) machine() carry.Machine {
	s := &c.stack
	return carry.Machine{Ready: c.outcome.Load, Items: s.Items,
		Full:  carry.Load{Mass: s.MassFull, CGAft: s.CGAftFull, CGUp: s.CGUpFull},
		Empty: carry.Load{Mass: s.MassDry, CGAft: s.CGAftDry, CGUp: s.CGUpDry}}
}

func (c *chain) reportFlight(m match.Report) {
	if err := c.firstError(); err != nil {
		c.withheld(flight.Result{}.Readings(nil), err)
		return
	}
	if !flies(m.Static) || !flies(m.Trim) {
		c.withheld(flight.Result{}.Readings(nil), c.grounded(m))
		return
	}
	in := c.flightInput(m)
	r := flight.Fly(&in)
	c.set(r.Readings(c.outcome.Readings), r.Checks(c.outcome.Checks, c.study.MarginAsked))
}

// grounded says why flight cannot be reckoned.
func (c *chain) grounded(m match.Report) error {
	switch {
	case !worked(m.Static):
		return c.unmatched(m)
	case !flies(m.Static):
		return sentence(m.Static.Propeller.Status.String())
	case !worked(m.Trim):
		return sentence(m.Trim.Status.String())
	}
	return sentence(m.Trim.Propeller.Status.String())
}

func (c *chain) flightInput(m match.Report) flight.Input {
	s := &c.stack
	in := flight.Input{
		Wing: c.study.Wing, Seat: c.study.Seat, AirDensity: c.air.Density, PilotMass: c.study.Pilot.Mass,
		UnitMass: s.MassReady, UnitAft: s.CGAft, UnitUp: s.CGUp, UnitPitchInertia: s.PitchInertia,
		UnitYawInertia: s.YawInertia,
		ThrustHeight:   s.ThrustHeight, HangAft: s.HangAft, HangUp: s.HangUp, HangSpacing: s.HangSpacing,
		Line: thrustLine(m), Ceiling: c.ceiling(m), FullFuelFlow: param.Known(m.Trim.FuelFlow), FuelMass: s.FuelMass, FuelDensity: c.variant.Engine.FuelDensity,
		ShaftTorque: m.Static.Propeller.Torque, PropellerInertia: c.propeller.PolarInertia(), PropellerSpeed: m.Static.PropellerSpeed,
		DrivenInertia: c.drive.SpinningInertia(), CrankInertia: c.variant.Engine.CrankInertia + c.drive.CrankInertia(), CrankSpeed: m.Static.CrankSpeed,
		CrankTurn: c.variant.Engine.Turns, Turn: c.drive.Turn(), Blades: c.propeller.Blades(),
		LevelFuelFlow: levelFuel(m.Level), LightFuelFlow: levelFuel(m.Light),
	}
	return in
}

// levelFuel is the fuel flow of a point in level flight, where it stands for one.
func levelFuel(p match.Point) param.Slot {
	if levels(p) {
		return param.Known(p.FuelFlow)
	}
	return param.Slot{}
}

// thrustLine is straight where the propeller is outside its model, or the
// engine outside its range, at the wing's top speed.
func thrustLine(m match.Report) flight.ThrustLine {
	fast := m.Fast
	if !flies(fast) {
		fast = match.Point{}
	}
	return flight.Thrust(m.Static.InstalledThrust, m.Trim.Airspeed, m.Trim.InstalledThrust, fast.Airspeed, fast.InstalledThrust)
}
