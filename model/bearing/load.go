package bearing

import (
	"math"
	"strings"
)

// thrust is the table of ISO 281 for single-row deep-groove bearings of normal
// clearance: f0 Fa/C0, the limiting share e and the axial factor Y.
var thrust = [...]struct{ relative, limit, axial float64 }{
	{0.172, 0.19, 2.30}, {0.345, 0.22, 1.99}, {0.689, 0.26, 1.71}, {1.03, 0.28, 1.55}, {1.38, 0.30, 1.45},
	{2.07, 0.34, 1.31}, {3.45, 0.38, 1.15}, {5.17, 0.42, 1.04}, {6.89, 0.44, 1.00},
}

// ThrustFactors gives e, the share of axial over radial load that does not
// shorten the life, and the axial factor Y for a relative axial load f0 Fa/C0.
// Between rows of the table it is linear; beyond its ends the last row holds.
// Source: ISO 281:2007, from memory.
func ThrustFactors(relative float64) (limit, axial float64) {
	if relative <= thrust[0].relative {
		return thrust[0].limit, thrust[0].axial
	}
	for i := 1; i < len(thrust); i++ {
		if lo, hi := &thrust[i-1], &thrust[i]; relative <= hi.relative {
			t := (relative - lo.relative) / (hi.relative - lo.relative)
			return lo.limit + t*(hi.limit-lo.limit), lo.axial + t*(hi.axial-lo.axial)
		}
	}
	last := &thrust[len(thrust)-1]
	return last.limit, last.axial
}

const radialFactor = 0.56

// EquivalentLoad is the radial load that wears the bearing as much as a radial
// and an axial load together, N. geometryFactor is f0 of the bearing, 12 to 16.
// Source: ISO 281:2007, X = 0.56 past e.
func (b DeepGroove) EquivalentLoad(radial, axial, geometryFactor float64) float64 {
	limit, y := ThrustFactors(geometryFactor * axial / b.StaticRating)
	if axial <= limit*radial {
		return radial
	}
	return math.Max(radial, radialFactor*radial+y*axial)
}

// StaticLoad is the radial load at standstill that dents as much as a radial
// and an axial load together, N. Source: ISO 76, from memory.
func StaticLoad(radial, axial float64) float64 { return math.Max(0.6*radial+0.5*axial, radial) }

// LeastLoad is the radial load below which the balls may skid, N: a hundredth
// of the dynamic rating. From memory.
func (b DeepGroove) LeastLoad() float64 { return 0.01 * b.Rating }

// GreatestThrust is the axial load that the bearing should not pass, N: half
// the static rating, a quarter in the light series 60. From memory.
func (b DeepGroove) GreatestThrust() float64 {
	if strings.HasPrefix(string(b.Designation), "60") {
		return b.StaticRating / 4
	}
	return b.StaticRating / 2
}

// MeanLoad is the load that wears as much as loads N that each act for a share
// of the revolutions; shares are weighed against their sum. Source: Palmgren's
// cubic mean.
func MeanLoad(loads, shares []float64) float64 {
	greatest, total := 0.0, 0.0
	for i, p := range loads {
		greatest = math.Max(greatest, p)
		total += shares[i]
	}
	if greatest == 0 || total == 0 {
		return 0
	}
	sum := 0.0
	for i, p := range loads {
		x := p / greatest
		sum += x * x * x * shares[i]
	}
	return greatest * math.Cbrt(sum/total)
}
