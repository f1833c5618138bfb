package shaft

import "math"

// place is a section of the axle that is looked at.
type place struct{ at, diameter float64 }

// examineAxle finds the largest bending and the least safety over the
// sections: both bearing seats, and where the wheel sits on a turning axle or
// where a standing one is held.
func (r *Result) examineAxle(s *Spec, c *cases, propBore, engineBore float64) {
	third := place{c.wheel, s.AxleDiameter}
	if s.Axle == StandsStill {
		third.at = c.places.EngineSide + s.Held
	}
	places := [...]place{{c.places.PropSide, propBore}, {c.places.EngineSide, engineBore}, third}
	r.Walled = s.AxleBore < math.Min(s.AxleDiameter, math.Min(propBore, engineBore))
	fatigue, yield := 0.0, 0.0
	r.EnduranceLimit = math.Inf(1)
	for i, p := range places {
		running := c.stressing(s.Axle, p.at)
		standing := Stressing{MeanBending: c.bending(s.Axle, p.at, &c.standing)}
		greatest := math.Max(running.MeanBending+running.BendingAmplitude, standing.MeanBending)
		r.Bending[i] = greatest
		r.LargestBending = math.Max(r.LargestBending, greatest)
		m := Strength{s.Tensile, s.Yield, EnduranceLimit(s.Tensile, p.diameter, s.Surface, s.EnduranceReliability)}
		r.EnduranceLimit = math.Min(r.EnduranceLimit, m.Endurance)
		if !r.Walled {
			continue
		}
		section := Section{p.diameter, s.AxleBore, NotchFactor(s.BendingConcentration, s.NotchSensitivity), NotchFactor(s.TorsionConcentration, s.NotchSensitivity)}
		fatigue = math.Max(fatigue, section.FatigueUse(s.Criterion, running, m))
		yield = math.Max(yield, math.Max(section.YieldUse(running, m), section.YieldUse(standing, m)))
	}
	if r.Walled {
		r.FatigueSafety, r.YieldSafety = inverse(fatigue), inverse(yield)
	}
}

// bending is the moment that one part of the load puts on the axle. A standing
// axle feels only what the bearings hand on, and is free at its propeller end.
func (c *cases) bending(a Axle, at float64, b *balanced) float64 {
	if a == StandsStill {
		return BendingMoment(at, b.loads[2:]...)
	}
	return BendingMoment(at, b.loads[:]...)
}

// stressing tells steady from alternating. What keeps its direction in space
// is reversed every turn on an axle that turns and steady on one that stands;
// imbalance turns with the propeller and is the other way about. A gyroscopic
// couple comes and goes with the turns and blades, and is reversed on both.
func (c *cases) stressing(a Axle, at float64) Stressing {
	fixed := c.bending(a, at, &c.steady)
	imbalance := c.bending(a, at, &c.imbalance)
	changing := c.bending(a, at, &c.pulsating) + c.bending(a, at, &c.peak)
	if a == StandsStill {
		return Stressing{MeanBending: fixed, BendingAmplitude: changing + imbalance}
	}
	x := Stressing{MeanBending: imbalance, BendingAmplitude: fixed + changing}
	if at <= c.wheel {
		x.MeanTorque, x.TorqueAmplitude = c.torque.MeanTorque, c.torque.TorqueAmplitude
	}
	return x
}
