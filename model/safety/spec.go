package safety

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Shape is the shape of the openings of the net.
type Shape string

// The shapes.
const (
	Slot   Shape = "slot"
	Square Shape = "square"
	Round  Shape = "round"
)

// Spec is what a user sets. Lengths in m.
type Spec struct {
	Shape         Shape
	Opening       float64 // narrowest side of a slot, side of a square, diameter of a hole
	NetToBlade    float64 // at rest
	NetGive       float64 // of the net towards the blades under a hand
	NetAsked      float64 // least NetToBlade
	HoopPush      float64 // hand or fall against the hoop, N
	HoopStiffness float64 // of the hoop against that push, N/m

	ChipMass float64 // piece of a blade, kg

	ExhaustSurface param.Slot // K
	HeadSurface    param.Slot // K
	BurnThreshold  float64    // K
}

// Default is a net of 50 mm squares.
func Default() Spec {
	return Spec{
		Shape: Square, Opening: 0.05, NetToBlade: 0.10, NetGive: 0.04, NetAsked: 0.08,
		HoopPush: 200, HoopStiffness: 8000, ChipMass: 0.02, BurnThreshold: unit.Celsius.SI(65),
	}
}

// Params lists what a user may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	return []param.Param{
		param.Choice(&s.Shape, "net_shape", "Shape of the net's openings", Square, Slot, Round),
		param.Number(&s.Opening, "net_opening", "Opening of the net", unit.Millimetre).Within(2, 120).Typical(30, 60).
			Help("side of a square, diameter of a hole, narrow side of a slot"),
		param.Number(&s.NetToBlade, "net_to_blade", "Net ahead of the blades", unit.Millimetre).Within(0, 400).
			Typical(80, 150).From("estimate").Help("from the net or the pilot's back rest to the nearest blade, at rest"),
		param.Number(&s.NetGive, "net_give", "Net gives under a hand", unit.Millimetre).Within(0, 200).
			Typical(20, 80).From("estimate").Help("press on the middle of the net and measure"),
		param.Number(&s.NetAsked, "net_asked", "Net to blades asked", unit.Millimetre).Within(0, 400).
			Typical(80, 100).From("from memory: common practice 80 to 100 mm"),
		param.Number(&s.HoopPush, "hoop_push", "Push against the hoop", unit.Newton).Within(0, 1000).
			Typical(100, 300).From("estimate").Help("a hand, or the machine set down on its edge"),
		param.Number(&s.HoopStiffness, "hoop_stiffness", "Stiffness of the hoop", unit.NewtonPerMillimetre).Within(0.5, 100).
			Typical(4, 20).From("estimate").Help("hang a known weight on the hoop and measure how far it gives"),
		param.Number(&s.ChipMass, "chip_mass", "Piece that breaks off a blade", unit.Gram).Within(1, 200).
			Typical(5, 50).From("estimate").Help("to see what it carries; a whole blade carries far more"),
		param.Open(&s.ExhaustSurface, "exhaust_surface", "Exhaust surface, measured", unit.Celsius).Within(-20, 900).
			Help("hottest place a hand or a line can touch, after a run"),
		param.Open(&s.HeadSurface, "head_surface", "Head surface, measured", unit.Celsius).Within(-20, 500).
			Help("hottest place a hand can touch, after a run"),
		param.Number(&s.BurnThreshold, "burn_threshold", "Surface that burns on touch", unit.Celsius).Within(40, 100).
			Typical(43, 73).From("from memory: ISO 13732-1, bare metal touched for 1 s, 65 to 70 °C").
			Help("bare metal: about 51 for a minute, 48 for ten, 43 for hours; coatings and plastics stand higher"),
	}
}
