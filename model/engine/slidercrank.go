package engine

import "math"

// sliderCrank is the ratio of crank radius to connecting-rod length, below 1,
// of a crank whose axis the cylinder's axis meets.
type sliderCrank float64

func (s Spec) sliderCrank() sliderCrank { return sliderCrank(s.Stroke / 2 / s.RodLength) }

// travel is how far the piston stands below top dead centre, and its rate per
// radian of crank, both in strokes, for the sine and cosine of the crank angle.
// Source: Heywood, Internal Combustion Engine Fundamentals, from memory.
func (q sliderCrank) travel(sin, cos float64) (below, rate float64) {
	ratio := float64(q)
	slant := math.Sqrt(1 - ratio*ratio*sin*sin)
	return (1 - cos + ratio*sin*sin/(1+slant)) / 2, sin * (1 + ratio*cos/slant) / 2
}

// inertiaOrders is how many orders of the inertia torque are kept.
const inertiaOrders = 6

// inertia lists the sines of the torque that a reciprocating mass puts on the
// crank, order 1 first, over mass × crank radius² × speed². It is the product
// of the piston's speed and acceleration, of which orders 1, 2 and 4 are kept;
// at a rod as long as the stroke that is good to about 1 % of the second order,
// at a usual rod to 0.1 %. The leading terms, with λ the ratio, are λ/4, −1/2,
// −3λ/4 and −λ²/4. Source: Den Hartog, Mechanical Vibrations, from memory; the
// further terms follow from the binomial series of the piston's travel.
func (q sliderCrank) inertia() [inertiaOrders]float64 {
	r := float64(q)
	second := r + r*r*r/4 + 15*math.Pow(r, 5)/128
	fourth := r*r*r/4 + 3*math.Pow(r, 5)/16
	return [inertiaOrders]float64{
		second / 4,
		-0.5 - second*fourth/8,
		-3*second/4 - 3*fourth/8,
		-second * second / 4,
		5 * fourth / 8,
		3 * second * fourth / 8,
	}
}
