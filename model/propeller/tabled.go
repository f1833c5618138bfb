package propeller

import (
	"math"
	"sort"
)

// tabled is a measured polar at one Reynolds and one Mach number: two
// neighbouring curves, and the angles stretched so that lift rises faster with
// the Mach number while its greatest value stays, as Prandtl and Glauert's
// rule asks.
type tabled struct {
	low, high    *polarCurve
	share        float64 // of high
	stretch      float64
	stall        float64 // as measured, at low Mach number
	lower        float64
	above, below float64 // stretch between stall and 90°
	wave         float64 // drag of shocks
}

// fix sets p to the measured polar; Reynolds numbers outside those given take
// the nearest. delay belongs to the station.
func (t *polarTable) fix(p *polar, reynolds, mach, delay float64) {
	m := &p.table
	m.low, m.high, m.share = t.around(math.Log(max(reynolds, 1)))
	subsonic := min(mach, greatestMach)
	m.stretch = 1 / math.Sqrt(1-subsonic*subsonic)
	mix := func(a, b float64) float64 { return a + m.share*(b-a) }
	m.stall, m.lower = mix(m.low.stall, m.high.stall), mix(m.low.lowerStall, m.high.lowerStall)
	zero := m.low.zeroLift
	if m.low != m.high {
		zero = m.low.zeroBetween(m.high, m.share, min(m.low.zeroLift, m.high.zeroLift)-gridStep, max(m.low.zeroLift, m.high.zeroLift)+gridStep)
	}
	shock := max(0, mach-0.75)
	m.wave = 20 * mix(m.low.cdLeast, m.high.cdLeast) * shock * shock
	p.zeroLift, p.slope, p.delay = zero, m.stretch*mix(m.low.slope, m.high.slope), delay
	p.stall, p.lowerStall = zero+(m.stall-zero)/m.stretch, zero+(m.lower-zero)/m.stretch
	m.above = (math.Pi/2 - m.stall) / (math.Pi/2 - p.stall)
	m.below = (math.Pi/2 + m.lower) / (math.Pi/2 + p.lowerStall)
}

// around gives the curves on either side of a Reynolds number.
func (t *polarTable) around(log float64) (low, high *polarCurve, share float64) {
	last := len(t.curves) - 1
	i := sort.SearchFloat64s(t.logReynolds, log)
	switch {
	case i == 0:
		return &t.curves[0], &t.curves[0], 0
	case i > last:
		return &t.curves[last], &t.curves[last], 0
	}
	return &t.curves[i-1], &t.curves[i], (log - t.logReynolds[i-1]) / (t.logReynolds[i] - t.logReynolds[i-1])
}

// measured looks lift and drag up at an angle of attack.
func (p *polar) measured(alpha float64) (cl, cd float64) {
	m := &p.table
	at := m.unstretched(p, alpha)
	cl, cd = m.low.look(at)
	if m.low != m.high {
		l, d := m.high.look(at)
		cl, cd = cl+m.share*(l-cl), cd+m.share*(d-cd)
	}
	return cl, cd + m.wave
}

// unstretched is the angle of attack at low Mach number with the same flow.
func (m *tabled) unstretched(p *polar, alpha float64) float64 {
	switch {
	case alpha > math.Pi/2 || alpha < -math.Pi/2:
		return alpha
	case alpha > p.stall:
		return m.stall + (alpha-p.stall)*m.above
	case alpha < p.lowerStall:
		return m.lower + (alpha-p.lowerStall)*m.below
	}
	return p.zeroLift + (alpha-p.zeroLift)*m.stretch
}
