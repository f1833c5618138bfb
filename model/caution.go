package model

import (
	"backspan/model/match"
	"backspan/model/param"
	"backspan/model/safety"
)

// reportSafety lists the cautions about guard, propeller and hot parts. It
// needs what reportShaking found.
func (c *chain) reportSafety(m match.Report) {
	if err := c.firstError(); err != nil {
		c.withheld(safety.Result{}.Readings(nil), err)
		return
	}
	in := safety.Input{
		TipClearance: c.stack.TipClearance, PropellerDiameter: c.propeller.Diameter(),
		PropellerInertia: c.propeller.PolarInertia() + c.drive.SpinningInertia(),
	}
	if worked(m.Static) {
		in.PropellerSpeed = param.Known(m.Static.PropellerSpeed)
	}
	if r := &c.shaking; r.Held {
		in.TipForward, in.TipShift, in.Swings = param.Known(r.TipForward), param.Known(r.TipShift), r.Single
	}
	r := safety.Examine(c.variant.Safety, in)
	c.set(r.Readings(c.outcome.Readings), r.Checks(c.outcome.Checks, c.study.MarginAsked))
}
