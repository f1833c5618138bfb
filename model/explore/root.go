package explore

import "math"

// bracket is a stretch of one dial at whose ends a function has opposite signs.
type bracket struct{ a, b, ya, yb float64 }

// narrow closes the bracket until it is no wider than width or f vanishes at an
// end. It ends early where f has no value: ok is then false. It needs at most
// two calls more than halving does.
//
// Source: the ITP method, I. F. D. Oliveira and R. H. C. Takahashi, "An
// Enhancement of the Bisection Method Average Performance Preserving Minmax
// Optimality", ACM Trans. Math. Softw. 47 (2020) 1, with k1 = 0.2/(b-a), k2 = 2
// and n0 = 1; the constants from memory, any do.
func (r bracket) narrow(width float64, f func(float64) (float64, bool)) (_ bracket, ok bool) {
	const k1, n0 = 0.2, 1
	first, sign := r.b-r.a, math.Copysign(1, r.yb)
	most := math.Ceil(math.Log2(first/width)) + n0
	for j := 0.0; r.b-r.a > width && r.ya != 0 && r.yb != 0; j++ {
		half := (r.a + r.b) / 2
		reach := width/2*math.Exp2(most-j) - (r.b-r.a)/2
		chord := (r.yb*r.a - r.ya*r.b) / (r.yb - r.ya)
		x := toward(chord, half, k1/first*(r.b-r.a)*(r.b-r.a))
		if math.Abs(x-half) > reach {
			x = toward(half, chord, reach)
		}
		if !(x > r.a && x < r.b) {
			x = half
		}
		if x == r.a || x == r.b {
			break
		}
		y, known := f(x)
		if !known {
			return r, false
		}
		if y*sign >= 0 {
			r.b, r.yb = x, y
		} else {
			r.a, r.ya = x, y
		}
	}
	return r, true
}

// toward goes a step from x to y and no further than y.
func toward(x, y, step float64) float64 {
	if step >= math.Abs(y-x) {
		return y
	}
	return x + math.Copysign(step, y-x)
}

// best is the end nearer to the root.
func (r bracket) best() (x, y float64) {
	if math.Abs(r.ya) <= math.Abs(r.yb) {
		return r.a, r.ya
	}
	return r.b, r.yb
}
