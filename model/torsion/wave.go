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
}

// Through carries the harmonics of a torque on the first inertia through a
// spring of the chain, at a crank speed in rad/s. Orders are multiples of the
// first of them, or of a half.
func (c *Chain) Through(spring int, torque *part.Pulsation, speed float64) Wave {
	count := min(max(torque.Count, 0), part.Orders)
	w := Wave{base: base(torque.Harmonics[:count]), count: count}
	for i := range count {
		h := &torque.Harmonics[i]
		w.harmonics[i] = phasor{
			multiple: int(math.Round(h.Order / w.base)),
			height:   complex(h.Cos, -h.Sin) * c.Response(h.Order * speed)[spring],
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

// samples is how many points of a cycle are looked at; a power of two.
const samples = 64

// cosine is one turn of a cosine.
var cosine = func() (c [samples]float64) {
	for i := range c {
		c[i] = math.Cos(2 * math.Pi * float64(i) / samples)
	}
	return c
}()

// Extremes are the greatest and the least value over a cycle, N·m about the
// mean, each with its phase as it arrives. Between the 64 points looked at a
// parabola is laid through three; of eight harmonics it misses less than a
// hundredth of the heights' sum.
func (w *Wave) Extremes() (most, least float64) {
	var wave [samples]float64
	for i := range w.harmonics[:w.count] {
		w.harmonics[i].add(&wave)
	}
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

// add lays the harmonic over a cycle. Points as far before its start as others
// are after it share the cosine and differ in the sign of the sine.
func (h *phasor) add(wave *[samples]float64) {
	re, im := real(h.height), imag(h.height)
	wave[0] += re
	wave[samples/2] += re * cosine[(samples/2*h.multiple)&(samples-1)]
	at := 0
	for i := 1; i < samples/2; i++ {
		at += h.multiple
		even, odd := re*cosine[at&(samples-1)], im*cosine[(at-samples/4)&(samples-1)]
		wave[i] += even - odd
		wave[samples-i] += even + odd
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
