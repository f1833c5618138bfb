package gear

import "math"

// Lubricant is the kind of oil, as far as friction in the mesh knows it.
type Lubricant string

// The kinds of oil.
const (
	Mineral    Lubricant = "mineral"
	PAO        Lubricant = "PAO or ester"
	Polyglycol Lubricant = "polyglycol"
	leastLine            = 150e3 // N/m, the least line load of the friction law
	lossOrigin           = "from memory: ISO/TR 14179-2 (Niemann, Ohlendorf)"
	leanOrigin           = "from memory: ISO/TR 14179-1"
)

// meshLoss is the friction of the teeth as a function of torque and speed.
type meshLoss struct {
	factor          float64 // loss over power at 1 N/mm and 1 rad/s
	speedExponent   float64
	lineLoadPerUnit float64 // N/mm per N·m on the pinion
}

// lossFactor is the tooth loss factor Hv. Source: ISO/TR 14179-2.
func (g *Geometry) lossFactor() float64 {
	u, e1, e2 := g.Ratio(), g.Pinion.TipContactRatio, g.Driven.TipContactRatio
	return math.Pi * (u + 1) / (float64(g.Pinion.Teeth) * u * math.Cos(g.BaseHelixAngle)) *
		(1 - g.ContactRatio + e1*e1 + e2*e2)
}

// reducedRadius is that of the two flanks at the pitch point, normal section, m.
func (g *Geometry) reducedRadius() float64 {
	tan := math.Tan(g.WorkingPressureAngle)
	r1, r2 := g.Pinion.BaseDiameter/2*tan, g.Driven.BaseDiameter/2*tan
	return r1 * r2 / (r1 + r2) / math.Cos(g.BaseHelixAngle)
}

// newMeshLoss sets up the friction law at the oil's dynamic viscosity, Pa·s,
// and the flanks' roughness, m. Source: ISO/TR 14179-2, mean coefficient of
// friction after Niemann and Ohlendorf.
func newMeshLoss(g *Geometry, viscosity, roughness float64, kind Lubricant) meshLoss {
	sumPerSpeed := g.Pinion.WorkingDiameter * math.Sin(g.WorkingPressureAngle)
	m := meshLoss{speedExponent: -0.2}
	m.lineLoadPerUnit = 2 / (g.Pinion.ReferenceDiameter * math.Cos(g.TransversePressureAngle) * g.FaceWidth) / 1000
	m.factor = 0.048 * math.Pow(sumPerSpeed*g.reducedRadius()*1000, -0.2) *
		math.Pow(viscosity*1000, -0.05) * math.Pow(roughness*1e6, 0.25) * g.lossFactor()
	switch kind {
	case PAO:
		m.factor *= 0.8
	case Polyglycol:
		m.factor *= 0.75 * math.Pow(6/sumPerSpeed, 0.2)
		m.speedExponent = -0.4
	}
	return m
}

// power is the loss in W at a power in W, torque in N·m and speed by its
// logarithm.
func (m meshLoss) power(power, torque, logSpeed float64) float64 {
	line := math.Max(torque*m.lineLoadPerUnit, leastLine/1000)
	return power * m.factor * math.Exp(0.2*math.Log(line)+m.speedExponent*logSpeed)
}

// leanMeshLoss is the mesh loss in W by the other report, which comes out at
// about half at light loads; oil's kinematic viscosity in m²/s. Source:
// ISO/TR 14179-1, with its bounds on pitch-line speed (2 to 25 m/s) and load
// intensity (1.4 to 14 N/mm²).
func (g *Geometry) leanMeshLoss(torque, speed, viscosity float64) float64 {
	if torque <= 0 || speed <= 0 {
		return 0
	}
	u, aw := g.Ratio(), g.WorkingPressureAngle
	cos2 := math.Cos(aw) * math.Cos(aw)
	start := (u + 1) * (tipOver(g.Driven, cos2) - math.Sin(aw))
	end := (u + 1) / u * (tipOver(g.Pinion, cos2) - math.Sin(aw))
	advantage := 2 * math.Cos(aw) * (start + end) / (start*start + end*end)

	r1 := g.Pinion.WorkingDiameter / 2 * 1000
	z1, z2 := float64(g.Pinion.Teeth), float64(g.Driven.Teeth)
	intensity := 1000 * torque * (z1 + z2) / (2 * g.FaceWidth * 1000 * r1 * r1 * z2)
	intensity = math.Min(math.Max(intensity, 1.4), 14)
	pitchLine := math.Min(math.Max(g.pitchLineSpeed(speed), 2), 25)
	friction := math.Pow(viscosity*mm2, -0.223) * math.Pow(intensity, -0.4) / (3.239 * math.Pow(pitchLine, 0.7))

	helix := math.Atan(math.Tan(g.HelixAngle) * g.Pinion.WorkingDiameter / g.Pinion.ReferenceDiameter)
	return friction * torque * speed * math.Cos(helix) * math.Cos(helix) / advantage
}

func tipOver(w Wheel, cos2 float64) float64 {
	q := w.TipDiameter / w.WorkingDiameter
	return math.Sqrt(math.Max(0, q*q-cos2))
}
