package propeller

import "math"

// plate carries lift and drag from stall to 90° so that the flow there is that
// of a flat plate across the wind. Source: Viterna & Corrigan, Fixed pitch
// rotor performance of large horizontal axis wind turbines, NASA CP-2230
// (1981); continuous at stall. Their drag starts from the attached value;
// once separation reaches the nose no suction is left there, the force stands
// across the chord and the drag is the lift times the tangent of the angle of
// attack: Tangler & Kocurek, NREL/CP-500-36900 (2004), who have it so from
// 20° on, from memory.
type plate struct {
	a1, a2, b1, b2 float64
	stall          float64
}

// noSuction is where the nose has lost its suction.
const noSuction = 20 * math.Pi / 180

// leastPlateDrag keeps the formula from falling below zero in flow from
// behind.
const leastPlateDrag = 0.01

// platePast joins on at the stall angle, where lift is cl and drag is cd.
func platePast(stall, cl, cd, flatPlate float64) plate {
	sin, cos := math.Sincos(stall)
	return plate{
		a1: flatPlate / 2, a2: (cl - flatPlate*sin*cos) * sin / (cos * cos),
		b1: flatPlate, b2: (cd - flatPlate*sin*sin) / cos,
		stall: stall,
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
	lost := min(max((alpha-p.stall)/max(noSuction-p.stall, leastStallAngle), 0), 1)
	cd = p.b1*sin*sin + (p.b2+lost*max(p.a2-p.b2, 0))*cos
	return turned * cl, max(cd, leastPlateDrag)
}

// flatPlateDrag is the drag coefficient at 90° of a blade with the aspect
// ratio of radius to chord.
func flatPlateDrag(aspect float64) float64 { return 1.11 + 0.018*aspect }
