package model

import (
	"math"

	"backspan/model/air"
	"backspan/model/flight"
	"backspan/model/match"
	"backspan/model/propeller"
)

// ceiling carries the built machine up into thinner air until it climbs no
// more. Needs a full-throttle point at trim, and level flight at the site.
func (c *chain) ceiling(m match.Report) flight.Ceiling {
	rate, ok := c.climbs(m.Trim, c.air.Density)
	if !ok {
		return flight.Ceiling{Why: "the thrust at this site is too great for a steady climb at trim"}
	}
	near := m.Trim
	return flight.FindCeiling(c.air.Altitude, rate, c.ceilingGuess(m), func(altitude float64) (float64, bool) {
		site := c.study.Site
		site.Altitude = altitude
		there := site.State()
		airspeed, _ := flight.Level(c.study.Wing, c.allUp(), there.Density)
		flow := c.flow(there)
		flow.Airspeed = airspeed
		e := output{c.engine.In(there), c.variant.Cooling}
		p := match.FullThrottleNear(e, c.drive, &c.propeller, flow, near)
		if flies(p) {
			near = p
		}
		return c.climbs(p, there.Density)
	})
}

// climbs is the climb rate, m/s, with the thrust of a full-throttle point.
func (c *chain) climbs(p match.Point, density float64) (rate float64, ok bool) {
	if !flies(p) {
		return 0, false
	}
	angle, airspeed, ok := flight.Climb(c.study.Wing, c.allUp(), p.InstalledThrust, density)
	return airspeed * math.Sin(angle), ok
}

// ceilingGuess is where the thrust at trim has fallen to that of level flight
// if the engine's power follows Gagg and Ferrar's lapse (1934, from memory),
// thrust falls with the faster airspeed of thin air as it does at the site, and
// the propeller keeps its figure of merit, in the troposphere's density law
// reckoned from the site.
func (c *chain) ceilingGuess(m match.Report) float64 {
	_, level := flight.Level(c.study.Wing, c.allUp(), c.air.Density)
	thin, thick, line := 0.2, 1.0, thrustLine(m)
	for range 12 {
		middle := (thin + thick) / 2
		power := math.Max(0, 1.132*middle-0.132)
		if line.At(m.Trim.Airspeed/math.Sqrt(middle))*math.Cbrt(power*power*middle) > level {
			thick = middle
		} else {
			thin = middle
		}
	}
	return c.air.Altitude + air.Thinner(c.air.Temperature, thick)
}

// flow is a flow of the propeller in that air, without speeds.
func (c *chain) flow(at air.State) propeller.Flow {
	return propeller.Flow{Density: at.Density, SoundSpeed: at.SoundSpeed, Viscosity: at.DynamicViscosity}
}
