package model

import (
	"strings"

	"backspan/model/match"
	"backspan/model/part"
	"backspan/model/stack"
	"backspan/model/vibration"
)

// reportShaking finds how engine, drive and propeller shake and sag in their
// mounts. It needs the stack.
func (c *chain) reportShaking(m match.Report) {
	switch err := c.firstError(); {
	case err != nil:
		c.withheld(vibration.Result{}.Readings(nil), err)
	case !worked(m.Static):
		c.withheld(vibration.Result{}.Readings(nil), c.unmatched(m))
	default:
		r := vibration.Swing(&c.variant.Mounts, c.shakingDuty(m))
		c.shaking = r
		c.set(r.Readings(c.outcome.Readings), r.Checks(c.outcome.Checks, c.study.MarginAsked))
	}
}

func (c *chain) shakingDuty(m match.Report) vibration.Duty {
	v, s, static := c.variant, &c.stack, &m.Static
	mount := s.Depth - s.DriveDepth
	cylinder := v.Engine.CGAft
	if v.Cooling.CylinderAft.Known {
		cylinder = v.Cooling.CylinderAft.Value
	}
	sign := v.Engine.Turns.Sign()
	return vibration.Duty{
		Parts: c.swinging(), MountFace: mount, CrankAxis: s.ThrustHeight - v.Drive.AxisRise(c.drive),
		Cylinder: mount + cylinder, Lean: v.Cooling.CylinderLean,
		Plate: s.Depth, PropellerAxis: s.ThrustHeight, PropellerRadius: v.Propeller.Diameter / 2, TipGap: s.TipClearance, GuardAhead: v.Frame.GuardAhead,
		// The air turns the machine against its propeller: aft is the axis of
		// the frame, forward that of the signs.
		Thrust: static.Propeller.Thrust, Torque: static.Propeller.Torque * sign * float64(c.drive.Turn()),
		Cylinders: v.Engine.Cylinders, Reciprocating: v.Engine.ReciprocatingMass, CrankRadius: v.Engine.Stroke / 2, Rod: v.Engine.RodLength,
		CrankSign: sign, Working: static.CrankSpeed, Idle: v.Engine.IdleSpeed,
		Pulsation: output{c.engine, v.Cooling}.Pulsation(static.EnginePower, static.CrankSpeed), Crank: output{c.engine, v.Cooling},
	}
}

// swinging are the pieces behind the rubber mounts. What spins turns freely
// about the thrust axis and adds nothing to the roll of the rest.
func (c *chain) swinging() []vibration.Part {
	parts := make([]vibration.Part, 0, len(c.stack.Items))
	for i := range c.stack.Items {
		it := &c.stack.Items[i]
		if !c.rides(it.Key) {
			continue
		}
		p := vibration.Part{Mass: it.Mass, X: it.X, Z: it.Z, Pitch: it.PitchInertia, Yaw: it.YawInertia}
		switch it.Key {
		case "engine":
			r := c.variant.Engine.OutsideRadius
			p.Roll = it.Mass * r * r / 2
		case "propeller":
		default:
			p.Roll = rollOf(it)
		}
		parts = append(parts, p)
	}
	return parts
}

func (c *chain) rides(key string) bool {
	switch {
	case key == "engine", key == "propeller", strings.HasPrefix(key, "cooling."), strings.HasPrefix(key, "drive."):
		return true
	}
	return key == "stack.exhaust" && c.variant.Mounts.ExhaustRides
}

// rollOf is the inertia about the thrust axis of a solid of revolution about
// it, kg·m², from that about the vertical axis. Source: mechanics, m(3r²+l²)/12
// against m·r²/2.
func rollOf(it *stack.Item) float64 {
	flat := it.YawInertia - part.Cylinder(it.Mass, 0, it.Depth)
	return max(0, 2*flat)
}
