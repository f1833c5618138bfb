package model

import (
	"fmt"
	"math"
	"slices"

	"backspan/model/air"
	"backspan/model/cooling"
	"backspan/model/drive"
	"backspan/model/engine"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/propeller"
	"backspan/model/reading"
	"backspan/model/stack"
	"backspan/model/vibration"
)

// EvaluateAll evaluates every variant of a study, in its order.
func EvaluateAll(s *Study) []Outcome {
	outcomes := make([]Outcome, len(s.Variants))
	for i := range s.Variants {
		outcomes[i] = Evaluate(s, &s.Variants[i])
	}
	return outcomes
}

// Evaluate carries one variant through the whole chain: air, engine, drive,
// propeller and their match in the order in which the power flows, then stack,
// carry and flight in the order in which the weight hangs, then noise. A part that cannot
// be computed fails a check that says why; the readings that depend on it are
// missing, with the same reason.
func Evaluate(s *Study, v *Variant) Outcome { return Reevaluate(s, v, Outcome{}) }

// Reevaluate is Evaluate for those who ask many times: it writes over the lists
// of an outcome that is no longer needed.
func Reevaluate(s *Study, v *Variant, spent Outcome) Outcome {
	measured := *s
	measured.Pilot = s.Pilot.Measured()
	c := chain{study: &measured, variant: v, outcome: Outcome{Variant: v.Name, Readings: spent.Readings[:0], Checks: spent.Checks[:0]}}
	c.run()
	return c.outcome
}

// Room for the lists of most machines; more is found when it is needed.
const usualReadings, usualChecks = 460, 128

// chain is one pass; each step uses what the steps before it found.
type chain struct {
	study   *Study
	variant *Variant
	outcome Outcome

	air       air.State
	engine    engine.Engine
	drive     drive.Drive
	propeller propeller.Propeller
	stack     stack.Result
	shaking   vibration.Result
	torsional [2]param.Slot // first and second torsional frequency, Hz

	// Why a part does not exist; nil when it does.
	engineErr, driveErr, propellerErr error
}

func (c *chain) run() {
	c.outcome.Readings = slices.Grow(c.outcome.Readings, usualReadings)
	c.outcome.Checks = slices.Grow(c.outcome.Checks, usualChecks)
	c.assemble()
	m := c.match()
	c.reportEngine(m)
	c.reportDrive(m)
	c.reportPropeller(m)
	c.reportWeight()
	c.reportFlight(m)
	c.reportNoise(m)
	c.reportUpkeep(m)
	c.reportShaking(m)
	c.mapSpeeds(m)
	c.reportSafety(m)
	c.unload(m)
	c.outcome.Readings = c.air.Readings(c.outcome.Readings)
	c.add(c.torsionalReadings(), nil)
}

// assemble makes the parts and, when all exist, stands them in place.
func (c *chain) assemble() {
	c.air = c.study.Site.State()
	c.engine, c.engineErr = engine.New(c.variant.Engine, c.air)
	c.propeller, c.propellerErr = propeller.New(c.variant.Propeller)
	c.drive, c.driveErr = c.designDrive()

	if c.firstError() == nil {
		c.build()
	}
}

// designDrive lays the drive out for the engine's greatest power in the
// reference air, less what the cooling takes: what is built does not change
// with the day.
func (c *chain) designDrive() (drive.Drive, error) {
	if c.engineErr != nil {
		return nil, fmt.Errorf("the drive needs an engine: %w", c.engineErr)
	}
	power, speed := output{c.engine, c.variant.Cooling}.RatedPeak()
	rated := part.Duty{Power: power, CrankSpeed: speed, AirTemperature: engine.ReferenceTemperature, AirDensity: engine.ReferenceDensity,
		Inflow: c.inflow(c.idealInflow(power, engine.ReferenceDensity))}
	return drive.New(c.variant.Drive, rated, cooling.Cost(c.variant.Cooling, power).Depth, c.train())
}

// train is what turns on either side of the drive. Without a propeller nothing
// is known of its inertia.
func (c *chain) train() part.Train {
	t := part.Train{Crank: output{c.engine, c.variant.Cooling}, CrankInertia: c.variant.Engine.CrankInertia, CrankTurn: c.variant.Engine.Turns}
	if c.propellerErr == nil {
		t.PropellerInertia = c.propeller.PolarInertia()
	}
	return t
}

// idealInflow is what an ideal propeller of this diameter draws in standing
// with that power, m/s: the drive is laid out before the propeller is matched.
// Source: momentum theory.
func (c *chain) idealInflow(power, density float64) float64 {
	d := c.variant.Propeller.Diameter
	area := math.Pi / 4 * d * d
	return propeller.DiscSpeed(propeller.IdealThrust(power, density, area), 0, density, area)
}

// inflow is what of the propeller's inflow reaches the drive, m/s.
func (c *chain) inflow(induced float64) float64 { return c.variant.Cooling.InflowShare * induced }

func (c *chain) duty(power, crankSpeed, inflow float64) part.Duty {
	return part.Duty{Power: power, CrankSpeed: crankSpeed, AirTemperature: c.air.Temperature, AirDensity: c.air.Density,
		Inflow: c.inflow(inflow)}
}

// set takes the lists over from a chapter that has put its own behind them.
func (c *chain) set(rs []reading.Reading, cs []reading.Check) {
	c.outcome.Readings, c.outcome.Checks = rs, cs
}

func (c *chain) add(rs []reading.Reading, cs []reading.Check) {
	c.outcome.Readings = append(c.outcome.Readings, rs...)
	c.outcome.Checks = append(c.outcome.Checks, cs...)
}

// missing declares the readings of a part that could not be computed, and one
// failing check that says why.
func (c *chain) missing(part, label string, rs []reading.Reading, why error) {
	c.add(reading.Blank(rs, why.Error()), []reading.Check{
		reading.Condition(part+".possible", label, false).Source("geometry").Advice(why.Error()),
	})
}

// withheld declares readings that cannot exist because an earlier part failed
// a check already.
func (c *chain) withheld(rs []reading.Reading, why error) { c.add(reading.Blank(rs, why.Error()), nil) }

// firstError is the earliest reason why the power cannot flow.
func (c *chain) firstError() error {
	for _, err := range []error{c.engineErr, c.driveErr, c.propellerErr} {
		if err != nil {
			return err
		}
	}
	return nil
}
