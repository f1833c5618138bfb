package torsion

import (
	"math"
	"math/cmplx"

	"backspan/model/part"
)

// Wave is a torque that swings about its mean: harmonics of a crank after they
// passed a spring, N·m.
type Wave struct {
	base      float64 // order of which all others are multiples
	count     int
	harmonics [part.Orders]phasor
}

type phasor struct {
	multiple int        // of the base order
	height   complex128 // its real part turns with the crank
	halfway  float64    // +1 or −1: what half a cycle makes of it
}

// Through carries the harmonics of a torque on the first inertia through a
// spring of the chain, at a crank speed in rad/s. Orders are multiples of the
// first of them, or of a half.
func (c *Chain) Through(spring int, torque *part.Pulsation, speed float64) Wave {
	count := min(max(torque.Count, 0), part.Orders)
	w := Wave{base: base(torque.Harmonics[:count]), count: count}
	for i := range count {
		h := &torque.Harmonics[i]
		multiple := int(math.Round(h.Order / w.base))
		w.harmonics[i] = phasor{
			multiple: multiple,
			height:   complex(h.Cos, -h.Sin) * c.Response(h.Order * speed)[spring],
			halfway:  float64(1 - 2*(multiple&1)),
		}
	}
	return w
}

// base is the order of which all are multiples.
func base(hs []part.Harmonic) float64 {
	const half = 0.5
	if len(hs) == 0 || !(hs[0].Order > 0) {
		return half
	}
	for i := range hs {
		n := hs[i].Order / hs[0].Order
		if math.Abs(n-math.Round(n)) > 1e-9 {
			return half
		}
	}
	return hs[0].Order
}

// Heights is the sum of the harmonics' heights, N·m: no wave reaches higher,
// whatever the phases.
func (w *Wave) Heights() float64 {
	sum := 0.0
	for i := range w.harmonics[:w.count] {
		sum += cmplx.Abs(w.harmonics[i].height)
	}
	return sum
}

// CubicMean is the cubic mean over a cycle of a torque that swings so about a
// mean, N·m: what wears bearings as much as the swinging torque does. Source:
// Palmgren's cubic mean, over 128 points.
func (w *Wave) CubicMean(mean float64) float64 {
	var wave [samples]float64
	w.draw(&wave)
	sum := 0.0
	for _, y := range wave {
		x := math.Abs(mean + y)
		sum += x * x * x
	}
	return math.Cbrt(sum / samples)
}

// samples is how many points of a cycle are looked at; a power of two.
const samples = 128

// turn is one turn of a cosine and a sine.
var turn = func() (c [samples]struct{ cos, sin float64 }) {
	for i := range c {
		c[i].sin, c[i].cos = math.Sincos(2 * math.Pi * float64(i) / samples)
	}
	return c
}()

// Extremes are the greatest and the least value over a cycle, N·m about the
// mean, each with its phase as it arrives. Between the 128 points looked at a
// parabola is laid through three; of eight harmonics it misses less than a
// hundredth of the heights' sum.
func (w *Wave) Extremes() (most, least float64) {
	var wave [samples]float64
	w.draw(&wave)
	top, bottom := 0, 0
	for i, y := range wave {
		if y > wave[top] {
			top = i
		}
		if y < wave[bottom] {
			bottom = i
		}
	}
	return vertex(&wave, top), vertex(&wave, bottom)
}

// draw lays the harmonics over a cycle. Four points share their figures: what
// lies as far before the start as after it has the sine turned round, half a
// cycle on the odd multiples are.
func (w *Wave) draw(wave *[samples]float64) {
	const half = samples / 2
	for i := range half/2 + 1 {
		near, nearSin, far, farSin := 0.0, 0.0, 0.0, 0.0
		for k := range w.harmonics[:w.count] {
			h := &w.harmonics[k]
			t := &turn[(i*h.multiple)&(samples-1)]
			cos, sin := real(h.height)*t.cos, imag(h.height)*t.sin
			near += cos
			nearSin += sin
			far += h.halfway * cos
			farSin += h.halfway * sin
		}
		wave[i], wave[(samples-i)&(samples-1)] = near-nearSin, near+nearSin
		wave[half+i], wave[half-i] = far-farSin, far+farSin
	}
}

// vertex is the top or bottom of a parabola through a point and its neighbours.
func vertex(wave *[samples]float64, at int) float64 {
	y, before, after := wave[at], wave[(at-1)&(samples-1)], wave[(at+1)&(samples-1)]
	if bend := before - 2*y + after; bend != 0 {
		return y - (after-before)*(after-before)/(8*bend)
	}
	return y
}
