package match

import (
	"math"

	"backspan/model/part"
	"backspan/model/propeller"
)

// level finds the part-throttle point at which the propeller gives an installed
// thrust (> 0, N). It starts from full throttle at the same airspeed, or from nothing when
// full is the zero Point.
func (m *machine) level(thrust float64, full Point) Point {
	lowest, highest := m.span()
	ratio := m.drive.Ratio()
	if !(thrust > 0 && lowest > 0 && highest > lowest && ratio > 0) {
		return Point{Status: m.spanless(), Airspeed: m.flow.Airspeed}
	}
	pp, found := m.giving(m.propeller.Isolated(thrust), highest/ratio, full.Propeller)
	if !found {
		return m.impossible(full)
	}
	tr, found := m.crankFor(pp.Power, pp.Flow.Speed)
	if !found {
		return Point{Airspeed: m.flow.Airspeed}
	}
	switch {
	case tr.SpeedIn > highest, tr.PowerIn > m.engine.Power(math.Max(tr.SpeedIn, lowest))*(1+m.tolerance):
		return m.impossible(full)
	case tr.SpeedIn < lowest:
		return m.point(BelowRange, tr, pp)
	}
	return m.point(Matched, tr, pp)
}

func (m *machine) impossible(full Point) Point {
	pt := full
	if pt.Status == Unsolved {
		s := m.survey()
		pt = s.fullThrottle(propeller.Point{})
	}
	if pt.Status.Settled() {
		pt.Status = Impossible
	}
	return pt
}

// giving finds the propeller speed up to most at which the isolated thrust is
// reached. Thrust over speed is nearly a straight line of speed, which gives
// the next guess; the bracket keeps it safe. near is a point at the same
// airspeed, or zero.
func (m *machine) giving(thrust, most float64, near propeller.Point) (propeller.Point, bool) {
	low, high := 0.0, math.Inf(1)
	speed, speed0, over0 := 0.7*most, 0.0, 0.0
	if near.Thrust > thrust {
		speed0, over0 = near.Flow.Speed, near.Thrust/near.Flow.Speed
		// With some airspeed thrust falls off faster than with speed squared.
		speed = speed0 * (0.25 + 0.75*math.Sqrt(thrust/near.Thrust))
	}
	for range mostEvaluations + halvings {
		pp := m.at(speed)
		if math.Abs(pp.Thrust-thrust) <= m.tolerance*thrust {
			return pp, true
		}
		if pp.Thrust < thrust {
			if speed >= most {
				return pp, false
			}
			low = math.Max(low, speed)
		} else {
			high = math.Min(high, speed)
		}
		over := pp.Thrust / speed
		next := guess(thrust, speed, over, speed0, over0)
		speed0, over0 = speed, over
		speed = math.Min(next, most)
		if !(speed > low && speed < high) {
			speed = (low + math.Min(high, most)) / 2
		}
	}
	return propeller.Point{}, false
}

// guess solves T/Ω = a Ω − b for the thrust, from one point (b = 0) or two.
func guess(thrust, speed, over, speed0, over0 float64) float64 {
	a, b := over/speed, 0.0
	if speed0 > 0 {
		a = (over - over0) / (speed - speed0)
		b = a*speed - over
	}
	if !(a > 0) {
		return math.Inf(1)
	}
	return (b + math.Sqrt(math.Max(b*b+4*a*thrust, 0))) / (2 * a)
}

// crankFor inverts the drive: power and speed at the crank for those at the
// propeller.
func (m *machine) crankFor(power, speed float64) (part.Transmission, bool) {
	in, crank := power, speed*m.drive.Ratio()
	for range halvings {
		tr := m.drive.Transmit(in, crank)
		if tr.SpeedOut <= 0 {
			return tr, false
		}
		short, slow := power-tr.PowerOut, speed/tr.SpeedOut
		if math.Abs(short) <= 1e-3*fine*power && math.Abs(slow-1) <= 1e-3*fine {
			return tr, true
		}
		in += short
		crank *= slow
	}
	return part.Transmission{}, false
}
