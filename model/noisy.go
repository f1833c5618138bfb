package model

import (
	"backspan/model/match"
	"backspan/model/noise"
	"backspan/model/propeller"
	"backspan/model/reading"
)

// reportNoise listens to the machine standing at full throttle: there it can
// be measured with the same means.
func (c *chain) reportNoise(m match.Report) {
	switch {
	case !worked(m.Static):
		c.withheld(noise.Result{}.Readings(nil), c.unmatched(m))
		return
	case !flies(m.Static):
		c.withheld(noise.Result{}.Readings(nil), sentence(m.Static.Propeller.Status.String()))
		return
	case m.Static.Propeller.StallMargin < 0:
		c.add(reading.Blank(noise.Result{}.Readings(nil), noise.Stalled), noise.StalledChecks())
		return
	}
	var loads [propeller.Cells]propeller.StationLoad
	p := &m.Static.Propeller
	in := noise.Input{
		Source: noise.Source{
			Blades: c.propeller.Blades(), Radius: c.propeller.Diameter() / 2, Speed: p.Flow.Speed,
			Density: p.Flow.Density, SoundSpeed: p.Flow.SoundSpeed, TipMach: p.TipMach, Thrust: p.Thrust, Torque: p.Torque,
			Cells: c.propeller.Loading(p.Flow, loads[:0]),
		},
		Spec: c.variant.Noise, Listener: c.study.Listener,
		DiscAft: c.stack.Depth + c.variant.Propeller.BossThickness/2, ShaftUp: c.stack.ThrustHeight,
	}
	r := noise.Hear(&in)
	c.set(r.Readings(c.outcome.Readings), r.Checks(c.outcome.Checks, c.study.MarginAsked))
}
