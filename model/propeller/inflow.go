package propeller

import "math"

// The inflow angle φ that balances a station lies between two angles whose
// residuals have known signs. With φ₀ = atan λ (no induction) the residual is
// −σ/4F·cl(β−φ₀)/cos φ₀, and at the angle of no lift, φₗ = β − α₀, it is
// (sin φₗ − λ cos φₗ)(sin φₗ + σ cd/4F). So a lifting blade has its root in
// [φ₀, φₗ] and a windmilling one in [φₗ, φ₀]; above both ends the residual
// cannot change sign. Where flow is attached the residual rises all the way,
// so a root found there is the one with the largest φ. Only a stalled blade
// can have several; it is searched from above, to find the root nearest to
// attached flow.
const (
	angleTolerance = 1e-9 // rad
	searchSteps    = 16
	dipSteps       = 10    // narrow two steps to a hundredth
	warmWidth      = 0.004 // rad
	secantSteps    = 30    // then halving, which always ends
	mostSteps      = 64
	steepest       = math.Pi/2 - 1e-6
)

// inflow solves the balance into s. It reports false only when the iteration
// does not end.
func (q *balance) inflow(s *settled) bool {
	none := min(q.angle-q.polar.zeroLift, steepest)
	s.unbalanced = false
	if math.Abs(none-q.free) < angleTolerance {
		s.element = q.look(q.free)
		return true
	}
	s.start = s.phi
	if !q.warm {
		s.start, s.slope = q.guess(none), 0
	}
	if none < q.free {
		return q.windmilling(none, s)
	}
	return q.lifting(none, s)
}

// guess solves the balance for small angles and linear lift, where it is a
// quadratic in φ.
func (q *balance) guess(none float64) float64 {
	free := q.free
	if none <= free || q.advance > 2 {
		return (free + none) / 2
	}
	near := free + 0.3*(none-free)
	load := q.solidity * q.polar.slope / (4 * lossFactor(q.tipGap, q.hubGap, math.Sin(near)))
	half := (load - q.advance) / 2
	return math.Sqrt(half*half+load*none) - half
}

func (q *balance) lifting(none float64, s *settled) bool {
	free, stalled := q.free, q.angle-q.polar.stall
	if stalled <= free {
		return q.solve(bracket{low: free, high: none, rising: true}, s)
	}
	if s.start > stalled && q.solve(bracket{low: stalled, lowUnsure: true, high: none, rising: true}, s) {
		return true
	}
	edge := q.look(stalled).residual
	if edge <= 0 {
		return q.solve(bracket{low: stalled, high: none, rising: true}, s)
	}
	return q.search(free, stalled, edge, s)
}

// windmilling solves a blade that the air drives. When even its angle of no
// lift lies behind the disc while the air comes from ahead, momentum theory
// may have no answer; the station then works without induction and is marked.
func (q *balance) windmilling(none float64, s *settled) bool {
	free := q.free
	if none < 0 && q.advance > 0 {
		s.unbalanced = !q.search(0, free, q.look(free).residual, s)
		if s.unbalanced {
			s.element = q.look(free)
		}
		return true
	}
	if free <= q.angle-q.polar.lowerStall {
		return q.solve(bracket{low: none, high: free, rising: true}, s)
	}
	return q.search(none, free, q.look(free).residual, s)
}

// search walks down from high, where the residual is last, above 0, to low and
// solves where it first changes sign; it reports false when it never does. A
// solution for nearly the same polar saves the walk.
func (q *balance) search(low, high, last float64, s *settled) bool {
	if near := (bracket{low: s.start - warmWidth, high: s.start + warmWidth}); q.warm && near.low > low && near.high < high &&
		q.look(near.low).residual <= 0 && q.look(near.high).residual > 0 {
		return q.solve(near, s)
	}
	step := (high - low) / searchSteps
	s.slope = 0
	before := math.Inf(1)
	for i := range searchSteps {
		phi := low + float64(searchSteps-1-i)*step
		now := q.look(phi).residual
		if last < before && last <= now && i > 0 {
			if touched, ok := q.dip(phi, phi+2*step); ok {
				s.start = touched
				return q.solve(bracket{low: touched, high: phi + 2*step}, s)
			}
		}
		if now <= 0 {
			s.start = phi + step/2
			return q.solve(bracket{low: phi, high: phi + step}, s)
		}
		before, last = last, now
	}
	return false
}

// dip looks for a negative residual between two angles where it has a least
// value: two roots may lie between the steps of a search.
func (q *balance) dip(low, high float64) (phi float64, ok bool) {
	const golden = 0.6180339887498949
	a, b := high-golden*(high-low), low+golden*(high-low)
	fa, fb := q.look(a).residual, q.look(b).residual
	for range dipSteps {
		if fb <= 0 {
			return b, true
		}
		if fa <= 0 {
			return a, true
		}
		if fa < fb {
			high, b, fb = b, a, fa
			a = high - golden*(high-low)
			fa = q.look(a).residual
		} else {
			low, a, fa = a, b, fb
			b = low + golden*(high-low)
			fb = q.look(b).residual
		}
	}
	return 0, false
}

// bracket holds the root: the residual is negative at low, positive at high.
type bracket struct {
	low, high float64
	lowUnsure bool // the sign at low is not known; leave when driven there
	rising    bool // attached and smooth: a first slope is worth computing
}

// solve finds the root by the secant method inside the bracket, from s.start and
// s.slope, halving the bracket whenever a step would leave it. Where the start
// is the element solved before, only its forces have changed.
func (q *balance) solve(b bracket, s *settled) bool {
	phi, slope := s.start, s.slope
	if !(phi > b.low && phi < b.high) {
		phi, slope = (b.low+b.high)/2, 0
	}
	e := s.element
	if q.warm && phi == e.phi {
		q.load(&e)
	} else {
		e = q.look(phi)
	}
	if slope <= 0 && b.rising {
		slope = e.loss*(2*math.Abs(e.sin)-q.advance) + q.solidity/4*q.polar.slope
	}
	done := false
	for i := range mostSteps {
		if i >= secantSteps {
			slope = 0
		}
		if e.residual < 0 {
			b.low, b.lowUnsure = phi, false
		} else {
			b.high = phi
		}
		next, step := (b.low+b.high)/2, -e.residual/slope
		close := slope > 0 && math.Abs(step) < q.close
		if newton := phi + step; slope > 0 && newton > b.low && newton < b.high {
			next = newton
		} else if close {
			done = true
			break
		} else if slope > 0 && b.lowUnsure {
			return false
		}
		was, before := phi, e.residual
		phi = next
		e = q.look(phi)
		if rise := (e.residual - before) / (phi - was); !close || math.Abs(phi-was) > fineStep {
			slope = rise
		}
		if close || e.residual == 0 {
			done = true
			break
		}
		if b.high-b.low < angleTolerance {
			done = !b.lowUnsure
			break
		}
	}
	s.element, s.start, s.slope = e, phi, slope
	return done
}
