package propeller

import "math"

// leastLoss keeps the loss factor off zero at the very tip.
const leastLoss = 1e-4

// lossFactor is Prandtl's factor for a finite number of blades: the share of
// the ring's air that the blades grip. tip and hub are B/2 (R−r)/r and
// B/2 (r−Rh)/Rh; hub is negative when there is no loss at the hub.
func lossFactor(tip, hub, sin float64) float64 {
	sin = math.Abs(sin)
	f := prandtl(tip, sin)
	if hub >= 0 {
		f *= prandtl(hub, sin)
	}
	if f < leastLoss {
		return leastLoss
	}
	return f
}

func prandtl(gap, sin float64) float64 {
	// Beyond 16 the factor is 1 to seven digits; this also covers sin = 0.
	if gap >= 16*sin {
		return 1
	}
	return gripped(gap / sin)
}

// gripped is Prandtl's factor for his exponent f.
func gripped(f float64) float64 { return 2 / math.Pi * arccos(math.Exp(-f)) }

// arccos is the angle for 0 ≤ x ≤ 1, to 2e-8 rad. Source: Abramowitz & Stegun,
// Handbook of Mathematical Functions, 4.4.46.
func arccos(x float64) float64 {
	series := 1.5707963050 + x*(-0.2145988016+x*(0.0889789874+x*(-0.0501743046+x*(0.0308918810+x*(-0.0170881256+x*(0.0066700901+x*-0.0012624911))))))
	return math.Sqrt(1-x) * series
}
