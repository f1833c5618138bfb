package flight

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Seat is the pilot as seated in the harness.
type Seat struct {
	ClothingMass float64 // clothing, helmet, radio, kg
	Aft          float64 // centre of gravity of the seated pilot behind the back plane, m
	Up           float64 // the same above the hip axis, m
	Gyration     float64 // radius of gyration of the seated pilot in pitch, m
	YawGyration  float64 // the same in yaw, m
	DragArea     float64 // of pilot and machine, drag over dynamic pressure, m²
}

// DefaultSeat is a pilot sitting upright.
func DefaultSeat() Seat {
	return Seat{ClothingMass: 6, Aft: -0.2, Up: 0.17, Gyration: 0.27, YawGyration: 0.23, DragArea: 0.3}
}

// Params lists what a user may set, in the order a form shows it.
func (s *Seat) Params() []param.Param {
	return []param.Param{
		param.Number(&s.ClothingMass, "clothing_mass", "Clothing and helmet", unit.Kilogram).Within(0, 25).
			Typical(4, 10).From("estimate").Help("all that the pilot wears besides the machine"),
		param.Number(&s.Aft, "seated_aft", "Seated pilot behind back plane", unit.Millimetre).Within(-500, 100).
			Typical(-260, -140).From("estimate").Help("centre of gravity; negative is ahead of the back plane"),
		param.Number(&s.Up, "seated_up", "Seated pilot above hip axis", unit.Millimetre).Within(-200, 400).
			Typical(100, 230).From("estimate").Help("centre of gravity"),
		param.Number(&s.Gyration, "seated_gyration", "Seated radius of gyration", unit.Millimetre).Within(100, 500).
			Typical(240, 300).From("estimate").Help("of the seated pilot in pitch, about the own centre of gravity"),
		param.Number(&s.YawGyration, "seated_yaw_gyration", "Seated radius of gyration in yaw", unit.Millimetre).Within(80, 500).
			Typical(200, 280).From("estimate").Help("of the seated pilot about the upright axis through the own centre of gravity"),
		param.Number(&s.DragArea, "drag_area", "Drag area of pilot and machine", unit.SquareMetre).Within(0, 1.5).
			Typical(0.2, 0.5).From("estimate").Help("drag over dynamic pressure, taken at the common centre of gravity; 0 leaves it out"),
	}
}
