package match

import (
	"math"

	"backspan/model/part"
	"backspan/model/propeller"
)

const (
	mostEvaluations = 12 // of the propeller before halving takes over
	halvings        = 40
)

// FullThrottleNear finds the steady point at full throttle in a flow whose Speed
// is not used, to a few parts in a thousand of the thrust, from a settled point
// in other air or at another airspeed: one to three workings of the propeller.
// It does not allocate.
func FullThrottleNear(e Engine, d Drive, p *propeller.Propeller, flow propeller.Flow, near Point) Point {
	m := machine{e, d, p, flow, rough}
	start := near.Propeller
	// Power follows the density of the air.
	start.Power *= flow.Density / start.Flow.Density
	s := m.survey()
	return s.fullThrottle(start)
}

// fullThrottle finds the steady point at full throttle. Of several stable points
// it takes the fastest and says so in Deficit. It starts from the propeller at a point that is not far off, or
// from the engine's speed of greatest power when near is the zero Point.
func (s *survey) fullThrottle(near propeller.Point) Point {
	if !s.usable {
		return Point{Status: s.spanless(), Airspeed: s.flow.Airspeed}
	}
	start := near
	if near.Power <= 0 {
		start = s.at(s.peakOut())
	}
	var l load
	l.learn(start)
	low, high := s.lowest, s.highest
	for i := range mostEvaluations {
		where := s.fastest(&l)
		tr := s.full(where.crankSpeed)
		pp := s.at(tr.SpeedOut)
		short := pp.Power - tr.PowerOut
		if i == 0 && near.Power > 0 {
			l = load{} // the start was at another airspeed
		}
		l.learn(pp)
		switch {
		case where.end == beyond && short < 0:
			return s.throttledBack(tr, pp)
		case where.end == below && short > 0:
			return Point{Status: Lugging, Airspeed: s.flow.Airspeed}
		case where.end == inside && math.Abs(short) <= s.tolerance*tr.PowerOut:
			if s.tolerance > fine {
				tr, pp = s.polish(&l, tr, pp)
			}
			pt := s.point(Matched, tr, pp)
			pt.Deficit = s.deficit(&l, tr.SpeedIn)
			return pt
		case short > 0:
			high = math.Min(high, where.crankSpeed)
		default:
			low = math.Max(low, where.crankSpeed)
		}
	}
	return s.halve(low, high, &l)
}

// polish takes the last small step to balance by prediction, without working
// the propeller again.
func (s *survey) polish(l *load, tr part.Transmission, pp propeller.Point) (part.Transmission, propeller.Point) {
	where := s.fastest(l)
	if where.end != inside {
		return tr, pp
	}
	tr = s.full(where.crankSpeed)
	pp.Flow.Speed, pp.Power, pp.Thrust = tr.SpeedOut, tr.PowerOut, l.thrust(tr.SpeedOut)
	pp.Torque = pp.Power / tr.SpeedOut
	return tr, pp
}

// halve closes in on a working point between two crank speeds when the load
// line is too crooked for the quick way. Where a blade station stalls the load
// may jump; the point is then the place of the jump.
func (s *survey) halve(low, high float64, l *load) Point {
	var tr part.Transmission
	var pp propeller.Point
	for range halvings {
		tr = s.full((low + high) / 2)
		pp = s.at(tr.SpeedOut)
		if math.Abs(pp.Power-tr.PowerOut) <= s.tolerance*tr.PowerOut {
			break
		}
		if pp.Power > tr.PowerOut {
			high = tr.SpeedIn
		} else {
			low = tr.SpeedIn
		}
	}
	pt := s.point(Matched, tr, pp)
	pt.Deficit = s.deficit(l, tr.SpeedIn)
	return pt
}

// throttledBack holds the engine at its highest speed with as much power as
// the propeller absorbs there. Less power slips less, so the propeller gains a
// little speed over that at full throttle.
func (s *survey) throttledBack(tr part.Transmission, pp propeller.Point) Point {
	if pp.Power <= 0 {
		return Point{Status: Windmilling, Airspeed: s.flow.Airspeed}
	}
	var l load
	l.learn(pp)
	power := tr.PowerIn
	for range mostEvaluations {
		for range mostEvaluations {
			tr = s.drive.Transmit(power, s.highest)
			short := l.power(tr.SpeedOut) - tr.PowerOut
			power += short
			if math.Abs(short) <= s.tolerance/10*math.Abs(power) {
				break
			}
		}
		pp = s.at(tr.SpeedOut)
		if math.Abs(pp.Power-tr.PowerOut) <= s.tolerance*tr.PowerOut {
			return s.point(s.held(), tr, pp)
		}
		l.learn(pp)
	}
	return Point{Airspeed: s.flow.Airspeed}
}
