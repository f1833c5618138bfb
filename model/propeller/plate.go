package propeller

import "math"

// plate carries lift and drag from stall to 90° so that the flow there is that
// of a flat plate across the wind. Source: Viterna & Corrigan 1981, from
// memory; continuous at stall.
type plate struct{ a1, a2, b1, b2 float64 }

// platePast joins on at the stall angle, where lift is cl and drag is cd.
func platePast(stall, cl, cd, flatPlate float64) plate {
	sin, cos := math.Sincos(stall)
	return plate{
		a1: flatPlate / 2, a2: (cl - flatPlate*sin*cos) * sin / (cos * cos),
		b1: flatPlate, b2: (cd - flatPlate*sin*sin) / cos,
	}
}

// coefficients takes an angle past stall; beyond 90° the flow comes from the
// trailing edge and gives 0.7 of the lift the other way.
func (p plate) coefficients(alpha float64) (cl, cd float64) {
	turned := 1.0
	if alpha > math.Pi/2 {
		alpha, turned = math.Pi-alpha, -0.7
	}
	sin, cos := math.Sincos(max(alpha, leastStallAngle))
	cl = 2*p.a1*sin*cos + p.a2*cos*cos/sin
	cd = p.b1*sin*sin + p.b2*cos
	return turned * cl, cd
}

// flatPlateDrag is the drag coefficient at 90° of a blade with the aspect
// ratio of radius to chord.
func flatPlateDrag(aspect float64) float64 { return 1.11 + 0.018*aspect }
