package torsion

import (
	"math"
	"math/cmplx"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/part"
)

func anyChain(t *rapid.T) Chain {
	inertia := rapid.Float64Range(1e-4, 1)
	stiffness := rapid.Float64Range(10, 1e6)
	damping := rapid.Float64Range(0, 2)
	c := Chain{Count: rapid.IntRange(2, 3).Draw(t, "count")}
	for i := range c.Inertia {
		c.Inertia[i] = inertia.Draw(t, "inertia")
	}
	for i := range c.Spring {
		c.Spring[i] = Spring{stiffness.Draw(t, "stiffness"), damping.Draw(t, "damping")}
	}
	return c
}

// Swinging freely, a train has no momentum, ends without torque, and turns as
// much energy of motion into twist as it had.
func TestFreeSwingKeepsMomentumAndEnergy(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t)
		for m, natural := range c.Natural() {
			if m >= c.modes() {
				continue
			}
			shape := c.shape(natural)
			momentum, scale, motion, twist := 0.0, 0.0, 0.0, 0.0
			for i, j := range c.Inertia[:c.Count] {
				momentum += j * shape[i]
				scale += math.Abs(j * shape[i])
				motion += natural * natural * j * shape[i] * shape[i]
			}
			for i, s := range c.Spring[:c.Count-1] {
				d := shape[i] - shape[i+1]
				twist += s.Stiffness * d * d
			}
			if math.Abs(momentum) > 1e-6*scale || math.Abs(motion/twist-1) > 1e-6 {
				t.Fatalf("%+v mode %d: momentum %g of %g, energies %g and %g", c, m, momentum, scale, motion, twist)
			}
		}
	})
}

func TestModesAreOrthogonal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t)
		c.Count = 3
		f := c.Natural()
		a, b := c.shape(f[0]), c.shape(f[1])
		product, first, second := 0.0, 0.0, 0.0
		for i, j := range c.Inertia {
			product += j * a[i] * b[i]
			first += j * a[i] * a[i]
			second += j * b[i] * b[i]
		}
		if f[0] > f[1] || math.Abs(product) > 1e-6*math.Sqrt(first*second) {
			t.Fatalf("%+v: %v, product %g of %g", c, f, product, math.Sqrt(first*second))
		}
	})
}

// Slow swinging is shared by inertia, and so is any swinging of a stiff train.
func TestSlowOrStiffIsSharedByInertia(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t)
		for i := range c.Spring {
			c.Spring[i].Damping = 0
		}
		slow := c.Response(0)
		stiff := c
		for i := range stiff.Spring {
			stiff.Spring[i].Stiffness *= 1e9
		}
		fast := stiff.Response(c.Natural()[0])
		for i := range c.Count - 1 {
			want := complex(c.share(i), 0)
			if cmplx.Abs(slow[i]-want) > 1e-12 || cmplx.Abs(fast[i]-want) > 1e-4*real(want) {
				t.Fatalf("%+v spring %d: slow %g, stiff %g, share %g", c, i, slow[i], fast[i], want)
			}
		}
	})
}

// The closed form of two inertias on a damped spring: Den Hartog, from memory.
func TestResponseOfAPair(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t)
		damping, r := rapid.Float64Range(0.005, 0.5).Draw(t, "damping"), rapid.Float64Range(0.01, 20).Draw(t, "tuning")
		k := c.Spring[0].Stiffness
		natural := Alone(c.Inertia[0], k, c.Inertia[1])
		c = Pair(c.Inertia[0], Damped(k, damping, natural), c.Inertia[1])
		if f := c.Natural()[0]; math.Abs(f/natural-1) > 1e-12 {
			t.Fatalf("%g, want %g", f, natural)
		}
		want := complex(c.share(0), 0) * complex(1, 2*damping*r) / complex(1-r*r, 2*damping*r)
		if got := c.Response(r * natural)[0]; cmplx.Abs(got-want) > 1e-9*cmplx.Abs(want) {
			t.Fatalf("%g, want %g", got, want)
		}
	})
}

// Between two springs only the middle inertia takes torque away; behind the
// last it is all the far inertia's: the equations of motion hold.
func TestResponseSolvesTheEquationsOfMotion(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t)
		c.Count = 3
		for i := range c.Spring {
			c.Spring[i].Damping += 1e-3
		}
		w := rapid.Float64Range(1, 5000).Draw(t, "frequency")
		s := c.Response(w)
		square := complex(-w*w, 0)
		third := s[1] / (square * complex(c.Inertia[2], 0))
		second := third + s[1]*c.Spring[1].gives(w)
		first := second + s[0]*c.Spring[0].gives(w)
		middle := s[0] - s[1] - square*complex(c.Inertia[1], 0)*second
		whole := square*complex(c.Inertia[0], 0)*first + s[0]
		if scale := cmplx.Abs(s[0]) + cmplx.Abs(s[1]) + 1; cmplx.Abs(middle) > 1e-7*scale || cmplx.Abs(whole-1) > 1e-7*scale {
			t.Fatalf("%+v at %g: middle %g, driven by %g", c, w, middle, whole)
		}
	})
}

// What the crank puts in, the dampers turn to heat.
func TestHeatIsTheWorkOfTheCrank(t *testing.T) {
	heights := rapid.Float64Range(-50, 50)
	rapid.Check(t, func(t *rapid.T) {
		c := anyChain(t)
		for i := range c.Spring {
			c.Spring[i].Damping += 1e-3
		}
		speed := rapid.Float64Range(50, 1000).Draw(t, "speed")
		p, work := part.Pulsation{Count: 3}, 0.0
		for i := range p.Count {
			h := part.Harmonic{Order: float64(i + 1), Cos: heights.Draw(t, "cos"), Sin: heights.Draw(t, "sin")}
			p.Harmonics[i] = h
			w, torque := h.Order*speed, complex(h.Cos, -h.Sin)
			swing := (torque - torque*c.Response(w)[0]) / complex(-w*w*c.Inertia[0], 0)
			work += real(torque*cmplx.Conj(complex(0, w)*swing)) / 2
		}
		heat := 0.0
		for i := range c.modes() {
			heat += c.Heat(i, &p, speed)
		}
		if math.Abs(heat-work) > 1e-6*heat+1e-9 {
			t.Fatalf("%+v: %g W of work, %g W of heat", c, work, heat)
		}
	})
}

// A spring far stiffer than the other joins its inertias to one.
func TestStiffSpringJoinsItsInertias(t *testing.T) {
	c := Row(2.7e-3, Spring{100, 0.02}, 4.5e-4, Spring{1e9, 1}, 5.8e-3)
	p := Pair(2.7e-3, Spring{100, 0.02}, 4.5e-4+5.8e-3)
	if a, b := c.Natural()[0], p.Natural()[0]; math.Abs(a/b-1) > 1e-5 {
		t.Errorf("%g against %g", a, b)
	}
	if a, b := c.Response(500)[0], p.Response(500)[0]; cmplx.Abs(a-b) > 1e-5*cmplx.Abs(b) {
		t.Errorf("%g against %g", a, b)
	}
}

// rigid passes on nearly all of a torque, as it is.
func rigid() Chain { return Pair(1e-9, Spring{1e9, 0}, 1) }

// brute looks at every quarter of a degree over two turns.
func brute(p *part.Pulsation) (most, least float64) {
	for i := range 2880 {
		at, sum := float64(i)*math.Pi/720, 0.0
		for _, h := range p.Harmonics[:p.Count] {
			sum += h.Cos*math.Cos(h.Order*at) + h.Sin*math.Sin(h.Order*at)
		}
		most, least = math.Max(most, sum), math.Min(least, sum)
	}
	return most, least
}

func TestExtremesOfAWave(t *testing.T) {
	heights := rapid.Float64Range(-1, 1)
	rapid.Check(t, func(t *rapid.T) {
		firing := rapid.SampledFrom([]float64{0.5, 1, 1.5, 2, 3}).Draw(t, "firing")
		p := part.Pulsation{Count: part.Orders}
		sum := 0.0
		for i := range p.Harmonics {
			n := float64(i + 1)
			p.Harmonics[i] = part.Harmonic{Order: firing * n, Cos: heights.Draw(t, "cos") / n, Sin: heights.Draw(t, "sin") / n}
			sum += p.Harmonics[i].Amplitude()
		}
		chain := rigid()
		w := chain.Through(0, &p, 1)
		if h := w.Heights(); math.Abs(h-sum) > 1e-6*(1+sum) {
			t.Fatalf("heights %g, want %g", h, sum)
		}
		most, least := w.Extremes()
		wantMost, wantLeast := brute(&p)
		allowed := 0.01*sum + 1e-300 // a hundredth of the least numbers is nothing at all
		if math.Abs(most-wantMost) > allowed || math.Abs(least-wantLeast) > allowed {
			t.Fatalf("%g to %g, want %g to %g of %g", least, most, wantLeast, wantMost, sum)
		}
	})
}

// Each harmonic arrives as high and as late as its own response makes it.
func TestWaveKeepsItsPhases(t *testing.T) {
	c := Row(2e-3, Damped(500, 0.1, 600), 4e-4, Spring{1e5, 1}, 6e-3)
	p := part.Pulsation{Count: 3}
	p.Harmonics[0], p.Harmonics[1], p.Harmonics[2] = part.Harmonic{Order: 1, Cos: 1, Sin: 2}, part.Harmonic{Order: 2, Cos: -1, Sin: 1}, part.Harmonic{Order: 3, Sin: 3}
	for _, speed := range []float64{150, 250, 300, 600} {
		q := p
		for i, h := range p.Harmonics[:p.Count] {
			z := c.Response(h.Order * speed)[0]
			sin, cos := math.Sincos(cmplx.Phase(z))
			q.Harmonics[i].Cos = cmplx.Abs(z) * (h.Cos*cos + h.Sin*sin)
			q.Harmonics[i].Sin = cmplx.Abs(z) * (h.Sin*cos - h.Cos*sin)
		}
		w := c.Through(0, &p, speed)
		most, least := w.Extremes()
		if a, b := brute(&q); math.Abs(most-a) > 1e-3*a || math.Abs(least-b) > -1e-3*b {
			t.Errorf("%g rad/s: %g to %g, want %g to %g", speed, least, most, b, a)
		}
	}
}

// Orders that are not multiples of the first are taken over two turns.
func TestExtremesOverTwoTurns(t *testing.T) {
	p := part.Pulsation{Count: 2}
	p.Harmonics[0], p.Harmonics[1] = part.Harmonic{Order: 1, Cos: 1}, part.Harmonic{Order: 1.5, Sin: 1}
	chain := rigid()
	w := chain.Through(0, &p, 1)
	most, least := w.Extremes()
	if a, b := brute(&p); math.Abs(most-a) > 1e-3 || math.Abs(least-b) > 1e-3 {
		t.Errorf("%g to %g, want %g to %g", least, most, b, a)
	}
}

func TestNoHarmonicsMakeNoWave(t *testing.T) {
	chain := rigid()
	w := chain.Through(0, &part.Pulsation{}, 100)
	if most, least := w.Extremes(); most != 0 || least != 0 || w.Heights() != 0 {
		t.Errorf("%g to %g", least, most)
	}
}

func BenchmarkThrough(b *testing.B) {
	c := Row(2.7e-3, Spring{100, 0.02}, 4.5e-4, Spring{1.3e5, 0.7}, 5.8e-3)
	p := part.Pulsation{Count: part.Orders}
	for i := range p.Harmonics {
		p.Harmonics[i] = part.Harmonic{Order: float64(i + 1), Cos: 1, Sin: 2}
	}
	b.ReportAllocs()
	for b.Loop() {
		c.Through(1, &p, 890)
	}
}

func BenchmarkExtremes(b *testing.B) {
	c := rigid()
	p := part.Pulsation{Count: part.Orders}
	for i := range p.Harmonics {
		p.Harmonics[i] = part.Harmonic{Order: float64(i + 1), Cos: 1, Sin: 2}
	}
	w := c.Through(0, &p, 890)
	b.ReportAllocs()
	for b.Loop() {
		w.Extremes()
	}
}

// The cubic mean of a mean with one harmonic is that of a sine, m ∛(1 + 3/2 s²);
// of one that does not swing the mean itself.
func TestCubicMeanOfASine(t *testing.T) {
	c := Pair(1, Spring{Stiffness: 1e6}, 3)
	torque := part.Pulsation{Mean: 10, Count: 1}
	torque.Harmonics[0] = part.Harmonic{Order: 1, Cos: 6, Sin: 8}
	wave := c.Through(0, &torque, 1e-3)
	for _, mean := range []float64{10, 20, -20} {
		s := 7.5 / mean
		if got, want := wave.CubicMean(mean), math.Abs(mean)*math.Cbrt(1+1.5*s*s); math.Abs(got/want-1) > 1e-6 {
			t.Errorf("about %g: %g, want %g", mean, got, want)
		}
	}
	still := Wave{}
	if got := still.CubicMean(7); math.Abs(got-7) > 1e-12 {
		t.Errorf("still: %g", got)
	}
}
