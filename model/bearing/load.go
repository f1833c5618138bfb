package bearing

import (
	"math"
	"strings"
)

// ThrustFactors gives e, the share of axial over radial load that does not
// shorten the life, and the axial factor Y for a relative axial load f0 Fa/C0.
// Between rows of the table it is linear; beyond its ends the last row holds.
// Source: ISO 281:2007, from memory.
func ThrustFactors(relative float64) (limit, axial float64) {
	rows := thrust()
	if relative <= rows[0].relative {
		return rows[0].limit, rows[0].axial
	}
	for i := 1; i < len(rows); i++ {
		if lo, hi := &rows[i-1], &rows[i]; relative <= hi.relative {
			t := (relative - lo.relative) / (hi.relative - lo.relative)
			return lo.limit + t*(hi.limit-lo.limit), lo.axial + t*(hi.axial-lo.axial)
		}
	}
	last := &rows[len(rows)-1]
	return last.limit, last.axial
}

// EquivalentLoad is the radial load that wears the bearing as much as a radial
// and an axial load together, N. geometryFactor is f0 of the bearing, 12 to 16.
// Source: ISO 281:2007, X = 0.56 past e.
func (b DeepGroove) EquivalentLoad(radial, axial, geometryFactor float64) float64 {
	limit, y := ThrustFactors(geometryFactor * axial / b.StaticRating)
	if axial <= limit*radial {
		return radial
	}
	return math.Max(radial, thrust()[0].radial*radial+y*axial)
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
