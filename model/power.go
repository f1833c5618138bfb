package model

import (
	"backspan/model/cooling"
	"backspan/model/drive"
	"backspan/model/engine"
	"backspan/model/flight"
	"backspan/model/match"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/propeller"
	"backspan/model/reading"
)

// output is the engine as the drive meets it: what the cooling takes from the
// crank is gone, the fuel for it is not.
type output struct {
	engine.Engine
	cooling cooling.Spec
}

// Power is full throttle at the drive face, W.
func (s output) Power(crankSpeed float64) float64 {
	p := s.Engine.Power(crankSpeed)
	return p - s.cooling.PowerTaken(p)
}

// Peak is the greatest power at the drive face, W, and its speed, rad/s.
func (s output) Peak() (power, speed float64) {
	p, w := s.Engine.Peak()
	return p - s.cooling.PowerTaken(p), w
}

// RatedPeak is the same in the engine's reference air.
func (s output) RatedPeak() (power, speed float64) {
	p, w := s.Engine.RatedPeak()
	return p - s.cooling.PowerTaken(p), w
}

// FuelFlow is kg/s for a power at the drive face.
func (s output) FuelFlow(power, crankSpeed float64) float64 {
	return s.Engine.FuelFlow(s.crank(power), crankSpeed)
}

// Pulsation is the torque at the drive face: the mean is what the cooling
// leaves, the rest is the crank's own.
func (s output) Pulsation(power, crankSpeed float64) part.Pulsation {
	p := s.Engine.Pulsation(s.crank(power), crankSpeed)
	if crankSpeed > 0 {
		p.Mean = power / crankSpeed
	}
	return p
}

// crank is the power the engine gives for a power at the drive face: the
// cooling takes a fixed share of it.
func (s output) crank(power float64) float64 {
	if left := 1 - s.cooling.PowerTaken(1); left > 0 {
		return power / left
	}
	return power
}

// match finds the working points: full throttle standing, at trim and at the
// wing's top speed, and level flight with the tank as filled and empty. It needs the stack, whose mass sets trim.
func (c *chain) match() match.Report {
	if c.firstError() != nil {
		return match.Report{}
	}
	s := output{c.engine, c.variant.Cooling}
	w := c.study.Wing
	airspeed, thrust := flight.Level(w, c.allUp(), c.air.Density)
	ask := match.Ask{Trim: airspeed, Level: thrust, Fast: airspeed * w.TopSpeed}
	if c.stack.FuelMass > 0 {
		ask.LightTrim, ask.LightLevel = flight.Level(w, c.allUp()-c.stack.FuelMass, c.air.Density)
	}
	return match.Find(s, c.drive, &c.propeller, c.flow(c.air), ask)
}

// worked reports whether a point stands for a working machine.
func worked(p match.Point) bool { return p.Status.Settled() }

// flies also asks that the propeller works inside its model: figures from
// outside stand for nothing.
func flies(p match.Point) bool { return worked(p) && p.Propeller.Status == propeller.Valid }

// levels reports whether a point stands for level flight whose fuel is known.
func levels(p match.Point) bool {
	return (p.Status == match.Matched || p.Status == match.BelowRange) && p.Propeller.Status == propeller.Valid
}

// engineAlone are the engine's readings that need no propeller to work against.
var engineAlone = []string{"engine.peak_power", "engine.peak_speed", "engine.lowest_speed", "engine.highest_speed",
	"engine.displacement", "engine.air_correction", "engine.idle_fuel"}

func (c *chain) reportEngine(m match.Report) {
	if c.engineErr != nil {
		c.missing("engine", "Engine can be built", engine.Running{}.Readings(nil), c.engineErr)
		c.withheld(cooling.Result{}.Readings(nil), c.engineErr)
		return
	}
	s := output{c.engine, c.variant.Cooling}
	r := c.engine.At(s.crank(m.Static.EnginePower), m.Static.CrankSpeed)
	if !worked(m.Static) {
		c.add(reading.BlankBut(r.Readings(nil), c.unmatched(m).Error(), engineAlone...), nil)
		c.withheld(cooling.Result{}.Readings(nil), c.unmatched(m))
		return
	}
	c.set(r.Readings(c.outcome.Readings), r.Checks(c.outcome.Checks, c.study.MarginAsked))
	c.reportCooling(m, r)
}

func (c *chain) reportDrive(m match.Report) {
	if c.driveErr != nil {
		if c.engineErr == nil {
			c.missing("drive", "Drive can be built", drive.Result{Kind: c.variant.Drive.Kind}.Readings(nil), c.driveErr)
		} else {
			c.withheld(drive.Result{Kind: c.variant.Drive.Kind}.Readings(nil), c.driveErr)
		}
		c.unsupported()
		c.reportPlate(m, drive.Result{})
		return
	}
	static := m.Static
	power, speed, inflow := static.EnginePower, static.CrankSpeed, static.Propeller.InducedSpeed
	if !worked(static) {
		power, speed = output{c.engine, c.variant.Cooling}.Peak()
		inflow = c.idealInflow(power, c.air.Density)
	}
	r := drive.Report(c.variant.Drive, c.drive, static.Transmission, c.duty(power, speed, inflow), c.train())
	from := len(c.outcome.Readings)
	c.set(r.Readings(c.outcome.Readings), r.Checks(c.outcome.Checks, c.study.MarginAsked))
	if !worked(static) {
		drive.BlankStanding(c.outcome.Readings[from:], c.unmatched(m).Error())
	}
	c.add(nil, c.clutchInFlight(m))
	c.reportSupport(m, r)
	c.reportPlate(m, r)
	c.torsional = [2]param.Slot{r.Torsional, r.Second}
	if worked(static) {
		c.outcome.Speeds = r.Speeds
	}
}

func (c *chain) reportPropeller(m match.Report) {
	if err := c.propellerErr; err != nil {
		c.missing("propeller", "Propeller can be built", propeller.Report{}.Readings(nil), err)
		c.withheld(match.Report{}.Readings(nil), err)
		return
	}
	if err := c.firstError(); err != nil {
		c.withheld(propeller.Report{}.Readings(nil), err)
		c.withheld(match.Report{}.Readings(nil), err)
		return
	}
	p := c.propeller.Report(m.Static.Propeller, m.Trim.Propeller)
	p.NoStatic, p.NoTrim = m.Static.Status.String(), m.Trim.Status.String()
	c.set(p.Readings(c.outcome.Readings), p.Checks(c.outcome.Checks, c.study.MarginAsked))
	c.set(m.Readings(c.outcome.Readings), m.Checks(c.outcome.Checks, c.study.MarginAsked))
}

// unmatched says why there is no working point standing.
func (c *chain) unmatched(m match.Report) error {
	if err := c.firstError(); err != nil {
		return err
	}
	return sentence(m.Static.Status.String())
}

// sentence is an error that is one plain sentence.
type sentence string

func (s sentence) Error() string { return string(s) }
