package match

import (
	"math"

	"backspan/model/propeller"
)

// load predicts the propeller's power and thrust from what was last computed:
// power over speed cubed and thrust over speed squared, which hardly change, on
// straight lines through two points.
type load struct {
	speed, cubic, square    float64 // latest
	slope, squareSlope      float64
	speed0, cubic0, square0 float64 // the one before
}

func (l *load) learn(pp propeller.Point) {
	l.speed0, l.cubic0, l.square0 = l.speed, l.cubic, l.square
	l.speed = pp.Flow.Speed
	l.cubic = pp.Power / (l.speed * l.speed * l.speed)
	l.square = pp.Thrust / (l.speed * l.speed)
	if between := l.speed - l.speed0; l.speed0 > 0 && between*between > 1e-12*l.speed*l.speed {
		l.slope = (l.cubic - l.cubic0) / between
		l.squareSlope = (l.square - l.square0) / between
	}
}

func (l *load) power(speed float64) float64 {
	return (l.cubic + l.slope*(speed-l.speed)) * speed * speed * speed
}

func (l *load) thrust(speed float64) float64 {
	return (l.square + l.squareSlope*(speed-l.speed)) * speed * speed
}

// points is the number of crank speeds surveyed; a tuned pipe's dip spans
// several of their steps.
const points = 33

const mostCrossSteps = 20

// survey is full-throttle power arriving at the propeller over the whole range
// of speeds that the engine may turn at.
type survey struct {
	*machine
	lowest, highest float64
	crank           [points]float64
	out             [points]float64 // propeller speed
	power           [points]float64 // arriving
	usable          bool            // there is such a range
}

// survey looks along the range. What it finds holds at every airspeed.
func (m *machine) survey() survey {
	s := survey{machine: m}
	s.lowest, s.highest = s.span()
	if !(s.lowest > 0 && s.highest > s.lowest && s.drive.Ratio() > 0) {
		return s
	}
	for i := range points {
		// The last speed must be the highest itself: beyond it there is no power.
		s.crank[i] = min(s.lowest+(s.highest-s.lowest)*float64(i)/(points-1), s.highest)
		tr := s.full(s.crank[i])
		s.out[i], s.power[i] = tr.SpeedOut, tr.PowerOut
	}
	s.usable = s.out[points-1] > 0
	return s
}

// peakOut is the propeller's speed at the engine's greatest power.
func (s *survey) peakOut() float64 {
	_, peak := s.engine.Peak()
	if tr := s.full(peak); tr.SpeedOut > 0 {
		return tr.SpeedOut
	}
	return s.out[points-1]
}

// end tells where the fastest point of a survey lies.
type end int

const (
	inside end = iota
	below      // the load is heavier all over the range
	beyond     // the engine still has power to spare at its highest speed
)

type place struct {
	crankSpeed float64
	end        end
}

// fastest is the highest crank speed at which power to spare turns into power
// lacking: a stable point, since there the engine's line falls below the load.
func (s *survey) fastest(l *load) place {
	if s.spare(l, points-1) > 0 {
		return place{s.highest, beyond}
	}
	for i := points - 2; i >= 0; i-- {
		if s.spare(l, i) > 0 {
			return place{s.cross(l, i), inside}
		}
	}
	return place{s.lowest, below}
}

func (s *survey) spare(l *load, i int) float64 { return s.power[i] - l.power(s.out[i]) }

// cross finds the crossing between survey points i and i+1 by false position,
// Illinois variant: an end that stays twice counts half.
func (s *survey) cross(l *load, i int) float64 {
	a, b := s.crank[i], s.crank[i+1]
	fa, fb := s.spare(l, i), s.spare(l, i+1)
	close := 1e-9 * s.power[i]
	x, side := a, 0
	for range mostCrossSteps {
		x = (a*fb - b*fa) / (fb - fa)
		tr := s.full(x)
		f := tr.PowerOut - l.power(tr.SpeedOut)
		switch {
		case math.Abs(f) <= close:
			return x
		case f > 0:
			a, fa = x, f
			if side > 0 {
				fb /= 2
			}
			side = 1
		default:
			b, fb = x, f
			if side < 0 {
				fa /= 2
			}
			side = -1
		}
	}
	return x
}

// deficit reports whether power is lacking anywhere below a crank speed.
func (s *survey) deficit(l *load, crankSpeed float64) bool {
	for i := range points {
		if s.crank[i] >= crankSpeed {
			return false
		}
		if s.spare(l, i) < 0 {
			return true
		}
	}
	return false
}
