package engine

import "math"

// findPeak is the speed of the highest power of a curve with those nodes: a
// scan that visits every node, each of its summits refined between its
// neighbours.
func findPeak(c *measuredCurve, nodes []float64) float64 {
	const perSegment = 8
	last := (len(nodes) - 1) * perSegment
	speed := func(i int) float64 {
		if i >= last {
			return nodes[len(nodes)-1] // exactly, not a rounding error beyond it
		}
		i = max(i, 0)
		k := i / perSegment
		share := float64(i-k*perSegment) / perSegment
		return nodes[k] + share*(nodes[k+1]-nodes[k])
	}
	best := nodes[0]
	consider := func(x float64) {
		if power(c, x) > power(c, best) {
			best = x
		}
	}
	before, here := power(c, speed(0)), power(c, speed(0))
	for i := range last + 1 {
		after := power(c, speed(i+1))
		if here >= before && here >= after {
			consider(speed(i))
			consider(goldenPeak(c, speed(i-1), speed(i+1)))
		}
		before, here = here, after
	}
	return best
}

func power(c *measuredCurve, speed float64) float64 { return speed * c.torque(speed) }

// goldenPeak narrows the interval around the highest power by the golden
// section, to 1e-9 of its width.
func goldenPeak(c *measuredCurve, low, high float64) float64 {
	const steps = 43 // 0.618^43 ≈ 1e-9
	section := (math.Sqrt(5) - 1) / 2
	a, b := high-section*(high-low), low+section*(high-low)
	pa, pb := power(c, a), power(c, b)
	for range steps {
		if pa > pb {
			high, b, pb = b, a, pa
			a = high - section*(high-low)
			pa = power(c, a)
		} else {
			low, a, pa = a, b, pb
			b = low + section*(high-low)
			pb = power(c, b)
		}
	}
	return (low + high) / 2
}
