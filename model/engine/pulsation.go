package engine

import (
	"math"

	"backspan/model/part"
)

// cyclicOrder is what makes up one order of the crank's torque.
type cyclicOrder struct {
	order              float64
	gasCos, gasSin     float64 // of burning, over the mean of the indicated torque
	compressionSin     float64 // N·m; compression gives back what it takes and has no mean
	inertiaSinPerSpeed float64 // over speed², kg·m²
}

// cyclic is the torque of the crank by orders: the first Orders that survive
// when the cylinders fire evenly.
type cyclic struct {
	friction float64 // torque of friction and gas exchange, N·m
	orders   [part.Orders]cyclicOrder
}

// newCyclic adds the cylinders up. Of evenly fired cylinders only multiples of
// the firing order are left, and in those all cylinders pull together.
func newCyclic(s *Spec, chargePressure float64) cyclic {
	firing := float64(s.Cylinders) / s.Cycle.Revolutions()
	displacement := s.Displacement()
	c := cyclic{friction: s.FrictionPressure * displacement / (2 * math.Pi * s.Cycle.Revolutions())}
	var g gasCycle
	g.build(s)
	gasMean := 0.0
	for i := range g.active {
		gasMean += (g.burningAfter[i] - g.burningBefore[i]) * g.rate[i]
		sin, cos := math.Sincos((float64(i) + 0.5) * degree * firing)
		c.addStep(&g, i, sin, cos)
	}
	perStep := chargePressure * displacement * 2 * degree / (2 * math.Pi * s.Cycle.Revolutions())
	radius := s.Stroke / 2
	inertia, moving := s.sliderCrank().inertia(), float64(s.Cylinders)*s.ReciprocatingMass*radius*radius
	for k := range c.orders {
		o := &c.orders[k]
		o.order = firing * float64(k+1)
		o.gasCos *= 2 / gasMean
		o.gasSin *= 2 / gasMean
		o.compressionSin *= perStep
		if n := int(o.order); float64(n) == o.order && n <= inertiaOrders {
			o.inertiaSinPerSpeed = moving * inertia[n-1]
		}
	}
	return c
}

// addStep adds both steps i to the sums of Fourier, for the sine and cosine of
// the firing order there; those of its multiples follow by recurrence.
func (c *cyclic) addStep(g *gasCycle, i int, sin, cos float64) {
	even := (g.burningAfter[i] - g.burningBefore[i]) * g.rate[i]
	odd := (g.burningAfter[i] + g.burningBefore[i]) * g.rate[i]
	compression := 2 * g.compression[i] * g.rate[i]
	cosBefore, cosHere, sinBefore, sinHere := 1.0, cos, 0.0, sin
	for k := range c.orders {
		o := &c.orders[k]
		o.gasCos += even * cosHere
		o.gasSin += odd * sinHere
		o.compressionSin += compression * sinHere
		cosBefore, cosHere = cosHere, 2*cos*cosHere-cosBefore
		sinBefore, sinHere = sinHere, 2*cos*sinHere-sinBefore
	}
}

// Pulsation is the torque of the crank while it gives a brake power, W, at
// least 0, at a speed, rad/s; full or part load. The pressure of compression
// is that of a charge at the site's pressure at any load; what burning adds is
// in proportion to brake and friction torque together. The friction itself is
// taken as steady. The crank is taken to turn evenly. Source: single-zone
// cycle and slider-crank, Heywood and Den Hartog, from memory.
func (e Engine) Pulsation(power, speed float64) part.Pulsation {
	if !(speed > 0) {
		return part.Pulsation{}
	}
	p := part.Pulsation{Mean: power / speed, Count: part.Orders}
	indicated, squared := p.Mean+e.cyclic.friction, speed*speed
	for k := range e.cyclic.orders {
		o := &e.cyclic.orders[k]
		p.Harmonics[k] = part.Harmonic{
			Order: o.order,
			Cos:   indicated * o.gasCos,
			Sin:   indicated*o.gasSin + o.compressionSin + squared*o.inertiaSinPerSpeed,
		}
	}
	return p
}

// extremes are the highest and the lowest torque between two firings, N·m, of
// the harmonics kept.
func extremes(p part.Pulsation) (peak, least float64) {
	const samples = 180
	peak, least = math.Inf(-1), math.Inf(1)
	for i := range samples {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / samples)
		torque := p.Mean
		cosBefore, cosHere, sinBefore, sinHere := 1.0, cos, 0.0, sin
		for _, h := range p.Harmonics[:p.Count] {
			torque += h.Cos*cosHere + h.Sin*sinHere
			cosBefore, cosHere = cosHere, 2*cos*cosHere-cosBefore
			sinBefore, sinHere = sinHere, 2*cos*sinHere-sinBefore
		}
		peak, least = max(peak, torque), min(least, torque)
	}
	return peak, least
}
