package cooling

import (
	"math"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/unit"
)

// Kind is the way the cylinder is cooled.
type Kind string

// The ways of cooling.
const (
	FreeAir Kind = "free air"
	Baffled Kind = "baffled air"
	Fan     Kind = "fan"
	Liquid  Kind = "liquid"
)

// Spec is the cooling as a user sets it. Lengths in m.
type Spec struct {
	Kind Kind

	InflowShare float64 // of the propeller's inflow that reaches engine and drive

	CylinderAft   param.Slot // middle of the fins behind the mount face
	CylinderReach float64    // middle of the fins from the crank axis
	CylinderLean  float64    // 0 upright, π hanging down
	Passage       float64    // share of the inflow that pilot and frame leave
	CaseShade     float64    // share of it that a gear case keeps off
	PulleyShade   float64    // share of it that a driven pulley keeps off the fins behind it

	RootRadius, FinHeight, FinnedLength param.Slot
	FinPitch, FinThickness              float64
	FinConductivity                     float64 // W/mK

	GasTemperature float64 // effective, K
	StatedAt       float64 // head temperature for which the engine's heat share holds, K
	OtherWays      float64 // share of that heat that does not pass the fins
	PowerExponent  float64 // of heat over power
	Scatter        float64 // of K before a measurement, share
	ScatterLeft    float64 // after one
	HotDay         float64 // K
	HeadLimit      float64 // K

	MeasuredHead, MeasuredAir param.Slot // standing at full throttle, K

	BaffleMass, BaffleGain float64

	FanDepth      float64 // fan and shroud along the thrust axis, between engine and drive
	FanMass       float64 // fan and shroud, kg
	FanPowerShare float64 // of the crank power, 0..1
	FanPressure   float64 // Pa
	FanEfficiency float64

	LiquidMass          float64 // radiator, coolant, pump and hoses together, kg
	PumpPowerShare      float64 // of the crank power, 0..1
	RadiatorAft         float64 // centre of gravity behind the engine's mount face
	RadiatorUp          float64 // centre of gravity above the crank axis
	RadiatorFace        float64 // m²
	RadiatorUnits       float64 // number of transfer units at 5 m/s
	JacketCoefficient   float64 // metal to coolant, W/m²K
	CoolantLimit        float64 // K
	RadiatorMassPerFace float64 // filled core, kg/m²
	CircuitMass         float64 // pump, hoses and the coolant in them, kg
}

// Default is a cylinder in free air; the other kinds are laid out ready to be
// chosen.
func Default() Spec {
	return Spec{
		Kind: FreeAir, InflowShare: 0.6,
		CylinderReach: 0.12, Passage: 0.85, CaseShade: 0.35, PulleyShade: 0.15,
		FinPitch: 0.008, FinThickness: 0.002, FinConductivity: 150,
		GasTemperature: unit.Celsius.SI(621), StatedAt: unit.Celsius.SI(200), OtherWays: 0.4, PowerExponent: 0.64,
		Scatter: 0.6, ScatterLeft: 0.12, HotDay: unit.Celsius.SI(38), HeadLimit: unit.Celsius.SI(250),
		BaffleMass: 0.15, BaffleGain: 1.2,
		FanDepth: 0.045, FanMass: 1.1, FanPowerShare: 0.02, FanPressure: 900, FanEfficiency: 0.45,
		LiquidMass: 2.2, PumpPowerShare: 0.003, RadiatorAft: 0.06, RadiatorUp: 0.22, RadiatorFace: 0.06, RadiatorUnits: 1,
		JacketCoefficient: 6000, CoolantLimit: unit.Celsius.SI(110), RadiatorMassPerFace: 12, CircuitMass: 1,
	}
}

// CylinderUp is the middle of the fins above the crank axis, m.
func (s *Spec) CylinderUp() float64 { return s.CylinderReach * math.Cos(s.CylinderLean) }

// CylinderSide is the middle of the fins beside the crank axis, m.
func (s *Spec) CylinderSide() float64 { return s.CylinderReach * math.Sin(s.CylinderLean) }

// inAir reports whether the propeller's inflow alone cools the fins.
func (k Kind) inAir() bool { return k == FreeAir || k == Baffled }

// AppendPieces adds the cooling's bodies to dst. The fan and its shroud stand
// in the stack between engine and drive; baffles and radiator hang beside it,
// so they have no depth and their places are measured from the engine's mount
// face and the crank axis. Their own inertia is left out.
func (s Spec) AppendPieces(dst []part.Piece) []part.Piece {
	switch s.Kind {
	case Baffled:
		return append(dst, part.Piece{
			Key: "cooling.baffles", Label: "Baffles", Mass: s.BaffleMass, CGAft: s.CylinderAft.Value, CGUp: s.CylinderUp(),
		})
	case Fan:
		return append(dst, part.Piece{
			Key: "cooling.fan", Label: "Fan and shroud",
			Depth: s.FanDepth, Mass: s.FanMass, CGAft: s.FanDepth / 2,
		})
	case Liquid:
		return append(dst, part.Piece{
			Key: "cooling.radiator", Label: "Radiator and coolant",
			Mass: s.LiquidMass, CGAft: s.RadiatorAft, CGUp: s.RadiatorUp,
		})
	}
	return dst
}

// PowerTaken is what the cooling takes from the crank ahead of the drive, W,
// when the crank delivers power, W.
func (s Spec) PowerTaken(power float64) float64 {
	switch s.Kind {
	case Fan:
		return s.FanPowerShare * power
	case Liquid:
		return s.PumpPowerShare * power
	}
	return 0
}
