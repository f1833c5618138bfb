package shaft

import "math"

// Criterion joins steady and alternating stress.
type Criterion string

// The criteria of distortion energy with a mean stress.
const (
	Goodman      Criterion = "Goodman"
	Soderberg    Criterion = "Soderberg"
	Gerber       Criterion = "Gerber"
	ASMEElliptic Criterion = "ASME elliptic"
)

// Section is a round section of an axle: diameters in m and the fatigue notch
// factors there.
type Section struct {
	Diameter     float64
	Bore         float64 // smaller than the diameter; 0 is solid
	BendingNotch float64
	TorsionNotch float64
}

// Stressing is what a section carries, N·m.
type Stressing struct {
	MeanBending      float64
	BendingAmplitude float64
	MeanTorque       float64
	TorqueAmplitude  float64
}

// Strength is that of the axle's material at a section, Pa.
type Strength struct {
	Tensile   float64
	Yield     float64
	Endurance float64 // with every factor of size, surface and reliability
}

// perModulus is 16/(π d³ (1 - (bore/d)⁴)), 1/m³.
func (s Section) perModulus() float64 {
	bore := s.Bore / s.Diameter
	return 16 / (math.Pi * s.Diameter * s.Diameter * s.Diameter * (1 - bore*bore*bore*bore))
}

// FatigueUse is the share of the endurance used, the inverse of the safety
// factor. Source: Shigley's Mechanical Engineering Design, chapter 7,
// distortion energy with the criterion named.
func (s Section) FatigueUse(c Criterion, x Stressing, m Strength) float64 {
	bend, twist := s.BendingNotch, s.TorsionNotch
	alternating := equivalent(bend*x.BendingAmplitude, twist*x.TorqueAmplitude)
	steady := equivalent(bend*x.MeanBending, twist*x.MeanTorque)
	k := s.perModulus()
	switch c {
	case Soderberg:
		return k * (alternating/m.Endurance + steady/m.Yield)
	case Gerber:
		a := alternating / m.Endurance
		return k / 2 * (a + math.Hypot(a, 2*steady/m.Tensile))
	case ASMEElliptic:
		return k * math.Hypot(alternating/m.Endurance, steady/m.Yield)
	}
	return k * (alternating/m.Endurance + steady/m.Tensile)
}

// YieldUse is the share of the yield strength used at the peak. Source:
// Shigley's Mechanical Engineering Design, chapter 7.
func (s Section) YieldUse(x Stressing, m Strength) float64 {
	bending := s.BendingNotch * (x.MeanBending + x.BendingAmplitude)
	torque := s.TorsionNotch * (x.MeanTorque + x.TorqueAmplitude)
	return s.perModulus() * equivalent(bending, torque) / m.Yield
}

// equivalent is √(4 M² + 3 T²), which times 16/πd³ is the von Mises stress.
func equivalent(bending, torque float64) float64 {
	return math.Hypot(2*bending, math.Sqrt(3)*torque)
}
