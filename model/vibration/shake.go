package vibration

import "math"

// Cylinder is the crank gear of one cylinder.
type Cylinder struct {
	Reciprocating float64 // mass, kg
	Radius        float64 // of the crank, m
	Rod           float64 // between its eyes, m
	Counterweight float64 // share of the reciprocating mass that the crank balances
}

// Shake are the amplitudes of the inertia forces, N.
type Shake struct {
	Along  float64 // the bore, once a turn, with the cosine of the crank angle
	Across float64 // once a turn, with the sine
	Second float64 // along the bore, twice a turn
}

// At is the shaking at a crank speed, rad/s, with all that rotates balanced. A
// counterweight cannot take the first order away; it turns a share of it from
// along the bore to across. Orders above the second are left out.
// Source: slider-crank, Heywood and Taylor, from memory.
func (c Cylinder) At(speed float64) Shake {
	if !(c.Rod > 0) {
		return Shake{}
	}
	force := c.Reciprocating * c.Radius * speed * speed
	return Shake{Along: (1 - c.Counterweight) * force, Across: c.Counterweight * force, Second: c.Radius / c.Rod * force}
}

// First is the force once a turn at a crank angle from top dead centre, N.
func (s Shake) First(angle float64) float64 {
	return math.Hypot(s.Along*math.Cos(angle), s.Across*math.Sin(angle))
}
