package cooling

import (
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/unit"
)

// Kind is the way the cylinder is cooled.
type Kind string

// The ways of cooling.
const (
	FreeAir Kind = "free air"
	Fan     Kind = "fan"
	Liquid  Kind = "liquid"
)

// Spec is the cooling as a user sets it.
type Spec struct {
	Kind Kind

	InflowShare float64 // of the propeller's inflow that reaches engine and drive

	FanDepth      float64 // fan and shroud along the thrust axis, between engine and drive, m
	FanMass       float64 // fan and shroud, kg
	FanPowerShare float64 // of the crank power, 0..1

	LiquidMass  float64 // radiator, coolant, pump and hoses together, kg
	RadiatorAft float64 // centre of gravity behind the engine's mount face, m
	RadiatorUp  float64 // centre of gravity above the crank axis, m
}

// Default is a cylinder in free air; the other two are laid out ready to be
// chosen.
func Default() Spec {
	return Spec{
		Kind: FreeAir, InflowShare: 0.6,
		FanDepth: 0.045, FanMass: 1.1, FanPowerShare: 0.02,
		LiquidMass: 2.2, RadiatorAft: 0.06, RadiatorUp: 0.22,
	}
}

// Params lists what a user may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	fan, liquid := s.Kind == Fan, s.Kind == Liquid
	return []param.Param{
		param.Choice(&s.Kind, "kind", "Cooling", FreeAir, Fan, Liquid).
			Help("what carries the cylinder's heat away"),
		param.Number(&s.InflowShare, "inflow_share", "Inflow that reaches the drive", unit.Percent).
			Within(5, 150).Typical(40, 90).From("estimate").
			Help("share of the propeller's inflow speed; pilot, frame and the calm near the hub take the rest"),
		param.Number(&s.FanDepth, "fan_depth", "Fan and shroud depth", unit.Millimetre).
			Within(5, 150).Typical(35, 60).From("estimate").When(fan).
			Help("along the thrust axis, between engine and drive"),
		param.Number(&s.FanMass, "fan_mass", "Fan and shroud mass", unit.Kilogram).
			Within(0, 6).Typical(0.8, 1.5).From("estimate").When(fan).
			Help("everything that a free-air cylinder does without"),
		param.Number(&s.FanPowerShare, "fan_power_share", "Fan's share of crank power", unit.Percent).
			Within(0, 15).Typical(1.5, 2.5).From("estimate").When(fan).
			Help("taken before the drive"),
		param.Number(&s.LiquidMass, "liquid_mass", "Liquid cooling mass", unit.Kilogram).
			Within(0, 10).Typical(1.8, 2.6).From("estimate").When(liquid).
			Help("radiator, coolant, pump and hoses, filled"),
		param.Number(&s.RadiatorAft, "radiator_aft", "Radiator behind mount face", unit.Millimetre).
			Within(-300, 500).Typical(0, 150).When(liquid).
			Help("centre of gravity of the filled circuit, aft of the engine's mount face"),
		param.Number(&s.RadiatorUp, "radiator_up", "Radiator above crank axis", unit.Millimetre).
			Within(-600, 600).Typical(-250, 250).When(liquid).
			Help("centre of gravity of the filled circuit; negative is below"),
	}
}

// AppendPieces adds the cooling's bodies to dst. The fan and its shroud stand
// in the stack between engine and drive; the radiator hangs beside it, so it
// has no depth and its place is measured from the engine's mount face and the
// crank axis. The own inertia of both is left out.
func (s Spec) AppendPieces(dst []part.Piece) []part.Piece {
	switch s.Kind {
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
	if s.Kind == Fan {
		return s.FanPowerShare * power
	}
	return 0
}
