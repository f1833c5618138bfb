package belt

import (
	"math"

	"backspan/model/part"
)

// twin is the stage as two inertias joined by the belt, seen from the crank.
// The propeller stands for a mass that nothing but the belt moves: its own
// damping in the air is left out.
type twin struct {
	crank      float64 // crank, flywheel and pulley, kg·m²
	driven     float64 // propeller and driven pulley over the ratio squared, kg·m²
	stiffness  float64 // one span's, with its share of the arcs, N/m of belt
	radius     float64 // crank pulley, pitch, m
	lossFactor float64
}

// twin joins the stage to what turns on either side of it.
func (b Belt) twin(train part.Train) twin {
	o := b.Run()
	arcs := o.Length() - 2*o.Span()
	return twin{
		crank:      train.CrankInertia + b.CrankInertia(),
		driven:     (train.PropellerInertia + b.SpinningInertia()) / (b.ratio * b.ratio),
		stiffness:  b.losses.stiffness / (o.Span() + b.spec.Pulsing.ArcShare*arcs),
		radius:     o.Crank / 2,
		lossFactor: b.spec.Pulsing.LossFactor,
	}
}

// natural is the torsional frequency with so many spans in tension, rad/s; a
// cycle that opens one span part of the time has a number between 1 and 2.
func (w twin) natural(spans float64) float64 {
	return math.Sqrt(spans * w.stiffness * w.radius * w.radius * (1/w.crank + 1/w.driven))
}

// transfer is the torque in the belt over that of the engine at n times the
// natural frequency. Mechanics: two inertias and a spring with a loss factor.
func (w twin) transfer(n float64) complex128 {
	share := w.driven / (w.crank + w.driven)
	return complex(share, 0) * complex(1, w.lossFactor) / complex(1-n*n, w.lossFactor)
}

// samples is how many points of a cycle are looked at; a power of two.
const samples = 64

// cosine is one turn of a cosine.
var cosine = func() (c [samples]float64) {
	for i := range c {
		c[i] = math.Cos(2 * math.Pi * float64(i) / samples)
	}
	return c
}()

// swing is a tension's deviation from its mean over a cycle, N.
type swing [samples]float64

// swing is what the engine's harmonics add to the tight span and take from the
// slack one, each harmonic with the phase it arrives in. A cycle is one turn
// of the crank, or two when a half order is present.
func (w twin) swing(p *part.Pulsation, speed, spans float64) (s swing) {
	turns, natural := 1.0, w.natural(spans)
	for _, h := range p.Harmonics[:p.Count] {
		if h.Order != math.Trunc(h.Order) {
			turns = 2
		}
	}
	// Half a cycle on, an even number of waves repeats and an odd one changes sign.
	const half = samples / 2
	var even, odd [half]float64
	for _, h := range p.Harmonics[:p.Count] {
		pull := complex(h.Cos, -h.Sin) * w.transfer(h.Order*speed/natural)
		waves, sum := int(math.Round(h.Order*turns)), &even
		if waves&1 == 1 {
			sum = &odd
		}
		re, im := real(pull)/(spans*w.radius), imag(pull)/(spans*w.radius)
		for i := range sum {
			at := i * waves
			sum[i] += re*cosine[at&(samples-1)] - im*cosine[(at-samples/4)&(samples-1)]
		}
	}
	for i := range half {
		s[i], s[half+i] = even[i]+odd[i], even[i]-odd[i]
	}
	return s
}

// highest is the greatest value between the samples too.
func (s *swing) highest() float64 {
	top := 0
	for i := range s {
		if s[i] > s[top] {
			top = i
		}
	}
	return s.vertex(top)
}

// lowest is the least value, found alike.
func (s *swing) lowest() float64 {
	bottom := 0
	for i := range s {
		if s[i] < s[bottom] {
			bottom = i
		}
	}
	return s.vertex(bottom)
}

// vertex is that of a parabola through a highest or lowest sample and its
// neighbours.
func (s *swing) vertex(i int) float64 {
	y, before, after := s[i], s[(i-1)&(samples-1)], s[(i+1)&(samples-1)]
	if bend := before - 2*y + after; bend != 0 {
		return y - (after-before)*(after-before)/(8*bend)
	}
	return y
}
