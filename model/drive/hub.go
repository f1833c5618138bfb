package drive

import (
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/unit"
)

// HubSpec is the propeller bolted to the crank through a hub.
type HubSpec struct {
	Depth float64 // m
	Mass  float64 // kg
	Price float64 // money
}

// DefaultHub is a plain turned hub; an estimate.
func DefaultHub() HubSpec { return HubSpec{Depth: 0.030, Mass: 0.5, Price: 60} }

// Params lists what a user may set.
func (s *HubSpec) Params() []param.Param {
	return []param.Param{
		param.Number(&s.Depth, "hub_depth", "Hub depth", unit.Millimetre).Within(5, 200).Typical(20, 50).
			Help("from the engine's drive face to the propeller plate").From("estimate"),
		param.Number(&s.Mass, "hub_mass", "Hub mass", unit.Kilogram).Within(0.05, 10).Typical(0.3, 1).From("estimate"),
		param.Number(&s.Price, "price", "Price", unit.Currency).Within(0, 1e6).Help("of the hub").From("invented"),
	}
}

// Hub is the direct drive: one to one, without loss.
type Hub struct{ Spec HubSpec }

// Ratio is 1.
func (h Hub) Ratio() float64 { return 1 }

// Turn is +1: the propeller is on the crank.
func (h Hub) Turn() int { return 1 }

// Transmit passes everything on.
func (h Hub) Transmit(power, crankSpeed float64) part.Transmission {
	return part.Transmission{PowerIn: power, SpeedIn: crankSpeed, PowerOut: power, SpeedOut: crankSpeed}
}

// Pieces is the hub alone.
func (h Hub) Pieces() []part.Piece {
	return []part.Piece{{Key: "drive.hub", Label: "Propeller hub", Depth: h.Spec.Depth, Mass: h.Spec.Mass, CGAft: h.Spec.Depth / 2}}
}

// AxisOffset is 0: one axis.
func (h Hub) AxisOffset() float64 { return 0 }

// SpinningInertia of a hub is negligible beside the propeller's.
func (h Hub) SpinningInertia() float64 { return 0 }

// CrankInertia of a hub is negligible beside the crank's.
func (h Hub) CrankInertia() float64 { return 0 }

// Upkeep has no wearing part.
func (h Hub) Upkeep() part.Upkeep { return part.Upkeep{Price: h.Spec.Price} }

// Examine has nothing to add to what every drive reports.
func (h Hub) Examine(part.Duty, part.Train) Findings { return nothing{} }

type nothing struct{}

func (nothing) Readings(rs []reading.Reading) []reading.Reading      { return rs }
func (nothing) Checks(cs []reading.Check, _ float64) []reading.Check { return cs }
