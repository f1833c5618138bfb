package belt

import "backspan/model/part"

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
// looks at the examined duty and at the speeds where a harmonic meets the
// torsional frequency.
func each(l *part.LoadLine, at part.Duty, w twin, look func(speed, power float64, p *part.Pulsation)) {
	var p part.Pulsation
	visit := func(speed float64) {
		p = l.Pulsation(speed)
		look(speed, l.Power(speed), &p)
	}
	for _, speed := range l.Speeds() {
		visit(speed)
	}
	if at.CrankSpeed > l.From && at.CrankSpeed < l.To {
		visit(at.CrankSpeed)
	}
	var room [part.Orders]float64
	for _, speed := range l.Meets(room[:0], &p, w.natural(2)) {
		visit(speed)
	}
}

// sweep runs along the load line.
func (b Belt) sweep(l *part.LoadLine, at part.Duty, w twin) Sweep {
	r := Sweep{From: l.From, To: l.To}
	each(l, at, w, func(speed, power float64, p *part.Pulsation) {
		v := b.Run().Speed(speed)
		s := b.surge(w, p, speed, power/v, b.standing, b.Centrifugal(v))
		if s.Tight > r.Tight {
			r.Tight, r.TightSpeed = s.Tight, speed
		}
		if s.Need > r.Need {
			r.Need, r.NeedSpeed = s.Need, speed
		}
		r.Open, r.Load = max(r.Open, s.Open), max(r.Load, s.Load.Size())
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
