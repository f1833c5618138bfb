package cooling

import "math"

// unitsSpeed is the air speed at which a radiator's transfer units are stated.
const unitsSpeed = 5.0 // m/s

// radiator is the heat that a radiator of one m² passes by one kelvin between
// coolant and air, W/m²K, in air of a speed, m/s, and a density, kg/m³.
// Source: effectiveness and number of transfer units of a cross-flow exchanger
// whose coolant hardly cools; that the units fall with the root of the speed is
// an estimate.
func (s *Spec) radiator(speed, density float64) float64 {
	if !(speed > 0) {
		return 0
	}
	units := s.RadiatorUnits * math.Sqrt(unitsSpeed/speed)
	return -math.Expm1(-units) * density * speed * airHeat
}

// jacket is the area through which cylinder and head pass their heat to the
// coolant, m²: the wall around the stroke and the lid over it.
func (m *machine) jacket() float64 {
	root := m.fins.root
	return float64(m.duty.Cylinders) * math.Pi * root * (2*m.duty.Stroke + root)
}

// byLiquid stands metal to coolant and coolant to air behind one another.
func (m *machine) byLiquid(power, density float64) sides {
	s := m.spec
	speed := m.radiatorInflow * m.induced(power, density)
	face, wall := s.RadiatorFace*s.radiator(speed, density), s.JacketCoefficient*m.jacket()
	return sides{m.gasSide(power), face * wall / (face + wall), speed}
}

// coolant is its temperature between head and air, K, and the face that would
// keep it at its limit, m²; 0 where no face would.
func (m *machine) coolant(x sides, head, air, density float64) (temperature, face float64) {
	heat, one := x.air*(head-air), m.spec.radiator(x.speed, density)
	if !(one > 0) {
		return head, 0
	}
	if m.spec.CoolantLimit > air {
		face = heat / (one * (m.spec.CoolantLimit - air))
	}
	return air + heat/(one*m.spec.RadiatorFace), face
}
