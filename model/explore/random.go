package explore

import "math"

// draw is a stream of random numbers that its seed alone decides: SplitMix64.
// A stream of a sample or of a run is begun from the numbers that name it, so
// that nothing depends on who draws first.
//
// Source: G. L. Steele, D. Lea and C. H. Flood, "Fast Splittable Pseudorandom
// Number Generators", OOPSLA 2014; constants of the public-domain reference
// program.
type draw struct{ state uint64 }

const golden = 0x9e3779b97f4a7c15

// drawOf is the stream with those numbers for a name.
func drawOf(names ...uint64) draw {
	var d draw
	for _, n := range names {
		d.state = mix(d.state+golden) ^ n
	}
	return draw{mix(d.state + golden)}
}

func (d *draw) next() uint64 {
	d.state += golden
	return mix(d.state)
}

func mix(z uint64) uint64 {
	z = (z ^ z>>30) * 0xbf58476d1ce4e5b9
	z = (z ^ z>>27) * 0x94d049bb133111eb
	return z ^ z>>31
}

// share is evenly spread between 0 and 1, never either.
func (d *draw) share() float64 { return (float64(d.next()>>12) + 0.5) / (1 << 52) }

// below is a whole number from 0 up to but without n.
func (d *draw) below(n int) int { return int(d.share() * float64(n)) }

// chance is true with that probability.
func (d *draw) chance(p float64) bool { return d.share() < p }

// normal has mean 0 and standard deviation 1.
func (d *draw) normal() float64 { return math.Sqrt2 * math.Erfinv(2*d.share()-1) }
