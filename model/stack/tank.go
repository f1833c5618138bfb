package stack

import (
	"backspan/model/param"
	"backspan/model/unit"
)

// Tank is the fuel and what holds it.
type Tank struct {
	Capacity  float64 // m³
	Fill      float64 // share of the capacity, 0..1
	EmptyMass float64 // kg
	Aft       float64 // centre behind the back plane, m
	Up        float64 // centre above the hip axis, m
	Height    float64 // inside, m
}

// DefaultTank is a full tank of eleven litres under the engine.
func DefaultTank() Tank {
	return Tank{Capacity: 0.011, Fill: 1, EmptyMass: 0.9, Aft: 0.1, Up: -0.12, Height: 0.22}
}

// Params lists what a user may set, in the order a form shows it.
func (t *Tank) Params() []param.Param {
	return []param.Param{
		param.Number(&t.Capacity, "capacity", "Tank capacity", unit.Litre).Within(1, 30).Typical(8, 15),
		param.Number(&t.Fill, "fill", "Fuel at the start", unit.Percent).Within(0, 100).Typical(50, 100).
			Help("share of the capacity; the ready mass counts it"),
		param.Number(&t.EmptyMass, "empty_mass", "Empty tank mass", unit.Kilogram).Within(0, 6).Typical(0.6, 1.5),
		param.Number(&t.Aft, "aft", "Tank behind back plane", unit.Millimetre).Within(-600, 600).Typical(50, 200).
			Help("middle of the tank; negative is ahead of the back plane"),
		param.Number(&t.Up, "up", "Tank above hip axis", unit.Millimetre).Within(-500, 900).Typical(-250, 450).
			Help("middle of the tank; negative is below"),
		param.Number(&t.Height, "height", "Tank height", unit.Millimetre).Within(20, 600).Typical(150, 300).
			Help("inside; the fuel's centre of gravity sinks as the tank empties"),
	}
}

// FuelMass is the fuel at the start, kg, of a density in kg/m³.
func (t Tank) FuelMass(density float64) float64 { return t.Capacity * t.Fill * density }

// FuelUp is the height of the fuel's centre of gravity above the hip axis, m,
// in a tank with upright walls.
func (t Tank) FuelUp() float64 { return t.Up - t.Height*(1-t.Fill)/2 }

// fill adds the ready machine with its tank full.
func (r *Result) fill(t Tank, density float64) {
	t.Fill = 1
	fuel := t.FuelMass(density)
	r.MassFull, r.CGAftFull, r.CGUpFull = centre([]Item{
		{Mass: r.MassDry, X: r.CGAftDry, Z: r.CGUpDry}, {Mass: fuel, X: t.Aft, Z: t.FuelUp()},
	})
}
