package part

import "math"

// LoadLine is the propeller's load through an examined duty, between idle and
// a highest speed: its power goes with the cube of speed, its torque with the
// square, capped by full throttle. Speeds of the crank, rad/s; power W.
type LoadLine struct {
	From, To float64
	crank    Crank
	at       Duty
}

// LoadLineOf runs from idle to the engine's highest speed. It is false when the
// engine is not known or gives no range of speeds.
func LoadLineOf(at Duty, crank Crank) (LoadLine, bool) {
	if crank == nil || !(at.CrankSpeed > 0) {
		return LoadLine{}, false
	}
	lowest, highest := crank.SpeedRange()
	from := crank.IdleSpeed()
	if !(from > 0) || from >= highest {
		from = lowest
	}
	return LoadLine{from, highest, crank, at}, from > 0 && highest > from
}

// RunUp runs from a speed up to the examined duty, and is that duty alone where
// the speed is not below it. The engine and its duty must be known.
func RunUp(at Duty, crank Crank, from float64) LoadLine {
	if !(from > 0) || from > at.CrankSpeed {
		from = at.CrankSpeed
	}
	return LoadLine{from, at.CrankSpeed, crank, at}
}

// Power on the line at a crank speed, W.
func (l *LoadLine) Power(speed float64) float64 {
	n := speed / l.at.CrankSpeed
	power := l.at.Power * n * n * n
	if most := l.crank.Power(speed); most > 0 {
		return math.Min(power, most)
	}
	return power
}

// Pulsation is the crank's torque on the line at a crank speed.
func (l *LoadLine) Pulsation(speed float64) Pulsation {
	return l.crank.Pulsation(l.Power(speed), speed)
}

// LineSteps is how many speeds a sweep of the line looks at, in equal ratios:
// narrower than half a resonance with the usual loss factor.
const LineSteps = 40

// Speeds are those of a sweep, rad/s, from one end to the other.
func (l *LoadLine) Speeds() (s [LineSteps]float64) {
	s[0] = l.From
	ratio := math.Pow(l.To/l.From, 1.0/(LineSteps-1))
	for i := 1; i < LineSteps; i++ {
		s[i] = s[i-1] * ratio
	}
	s[LineSteps-1] = l.To
	return s
}

// Meets are the speeds inside the line at which an order of p meets a natural
// frequency, rad/s, added to a list.
func (l *LoadLine) Meets(into []float64, p *Pulsation, natural float64) []float64 {
	for i := range p.Harmonics[:min(max(p.Count, 0), Orders)] {
		if speed := natural / p.Harmonics[i].Order; speed > l.From && speed < l.To {
			into = append(into, speed)
		}
	}
	return into
}
