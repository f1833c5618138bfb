package belt

import (
	"math"

	"backspan/model/part"
)

// loadLine is the propeller's cube law through an examined duty, between idle
// and the engine's highest speed, capped by full throttle.
type loadLine struct {
	crank    part.Crank
	at       part.Duty
	from, to float64 // rad/s
}

// loadLineOf is false when the engine is not known or gives no range of speeds.
func loadLineOf(at part.Duty, crank part.Crank) (loadLine, bool) {
	if crank == nil || !(at.CrankSpeed > 0) {
		return loadLine{}, false
	}
	lowest, highest := crank.SpeedRange()
	from := crank.IdleSpeed()
	if !(from > 0) || from >= highest {
		from = lowest
	}
	return loadLine{crank, at, from, highest}, from > 0 && highest > from
}

// power is that on the line at a crank speed, W.
func (l loadLine) power(speed float64) float64 {
	n := speed / l.at.CrankSpeed
	power := l.at.Power * n * n * n
	if most := l.crank.Power(speed); most > 0 {
		return math.Min(power, most)
	}
	return power
}

// steps is how many speeds a sweep looks at, in equal ratios: narrower than
// half a resonance with the usual loss factor.
const steps = 40

// speeds are those of a sweep, rad/s.
func (l loadLine) speeds() (s [steps]float64) {
	s[0] = l.from
	ratio := math.Pow(l.to/l.from, 1.0/(steps-1))
	for i := 1; i < steps; i++ {
		s[i] = s[i-1] * ratio
	}
	s[steps-1] = l.to
	return s
}

// Sweep is the worst that the pulsation does from idle to the highest speed.
// Tensions in N, speeds at the crank in rad/s.
type Sweep struct {
	From, To   float64
	Tight      float64 // greatest tight side
	TightSpeed float64
	Need       float64 // standing tension that keeps the slack side pressed on its pulley throughout
	NeedSpeed  float64
	Open       float64 // greatest share of a cycle with the slack side off its pulley
	Load       float64 // greatest shaft load
}

// each visits the line from idle to the highest speed. Beside the even steps it
// looks at the speeds where a harmonic meets the torsional frequency.
func (l loadLine) each(w twin, look func(speed, power float64, p *part.Pulsation)) {
	var p part.Pulsation
	visit := func(speed float64) {
		power := l.power(speed)
		p = l.crank.Pulsation(power, speed)
		look(speed, power, &p)
	}
	for _, speed := range l.speeds() {
		visit(speed)
	}
	if l.at.CrankSpeed > l.from && l.at.CrankSpeed < l.to {
		visit(l.at.CrankSpeed)
	}
	natural, harmonics := w.natural(2), p.Harmonics
	for _, h := range harmonics[:p.Count] {
		if speed := natural / h.Order; speed > l.from && speed < l.to {
			visit(speed)
		}
	}
}

// sweep runs along the load line.
func (b Belt) sweep(l loadLine, w twin) Sweep {
	r := Sweep{From: l.from, To: l.to}
	l.each(w, func(speed, power float64, p *part.Pulsation) {
		v := b.Run().Speed(speed)
		s := b.surge(w, p, speed, power/v, b.standing, b.Centrifugal(v))
		if s.Tight > r.Tight {
			r.Tight, r.TightSpeed = s.Tight, speed
		}
		if s.Need > r.Need {
			r.Need, r.NeedSpeed = s.Need, speed
		}
		r.Open, r.Load = math.Max(r.Open, s.Open), math.Max(r.Load, s.Load.Size())
	})
	return r
}

// pulsationNeed is the standing tension that keeps the slack side pressed on
// its pulley through the torque peaks of the rated point, N.
func (b Belt) pulsationNeed(train part.Train) float64 {
	at := b.rated
	v := b.Run().Speed(at.CrankSpeed)
	p := train.Crank.Pulsation(at.Power, at.CrankSpeed)
	taut := b.twin(train).swing(&p, at.CrankSpeed, 2)
	return b.Centrifugal(v) + at.Power/v/2 + taut.highest()
}
