package gear

import "math"

// Forces are the steady forces on the teeth at a duty, N, without shock.
type Forces struct {
	Tangential float64 // at the pinion's reference circle
	Radial     float64 // pushes the shafts apart
	Axial      float64 // along the shafts, 0 for spur teeth
}

// forces are those of a torque on the pinion, N·m. Source: ISO 21771 geometry
// and statics.
func (g *Geometry) forces(torque float64) Forces {
	reference := 2 * torque / g.Pinion.ReferenceDiameter
	working := 2 * torque / g.Pinion.WorkingDiameter
	return Forces{
		Tangential: reference,
		Radial:     working * math.Tan(g.WorkingPressureAngle),
		Axial:      reference * math.Tan(g.HelixAngle),
	}
}

// pitchLineSpeed is the speed of the working circles, m/s, at a speed of the
// pinion in rad/s.
func (g *Geometry) pitchLineSpeed(speed float64) float64 { return speed * g.Pinion.WorkingDiameter / 2 }

// slidingSpeed is the greatest speed at which flanks rub, at a tip, m/s.
func (g *Geometry) slidingSpeed(speed float64) float64 {
	farther := math.Max(g.Pinion.TipContactRatio, g.Driven.TipContactRatio) * g.BasePitch
	return speed * (1 + 1/g.Ratio()) * farther
}

// meshFrequency is how often teeth come into contact, Hz.
func (g *Geometry) meshFrequency(speed float64) float64 {
	return float64(g.Pinion.Teeth) * speed / (2 * math.Pi)
}
