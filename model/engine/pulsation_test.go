package engine

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/air"
	"backspan/model/internal/anyspec"
	"backspan/model/part"
	"backspan/model/reading"
)

var _ part.Crank = Engine{}

// torqueAt is the pulsation's torque at a crank angle, straight from its
// definition.
func torqueAt(p part.Pulsation, angle float64) float64 {
	torque := p.Mean
	for _, h := range p.Harmonics[:p.Count] {
		torque += h.Cos*math.Cos(h.Order*angle) + h.Sin*math.Sin(h.Order*angle)
	}
	return torque
}

func TestAnyPulsationIsFiniteAndCarriesThePower(t *testing.T) {
	built := 0
	rapid.Check(t, func(t *rapid.T) {
		s, site := Default(), air.Default()
		anyspec.Set(t, s.pulsation(), nil)
		anyspec.Set(t, s.size(), nil)
		anyspec.Set(t, site.Params(), nil)
		e, err := New(s, site.State())
		if err != nil {
			return
		}
		built++
		speed := perMinute(rapid.Float64Range(1, 20000).Draw(t, "speed"))
		power := rapid.Float64Range(0, 1e5).Draw(t, "power")
		p := e.Pulsation(power, speed)
		if math.Abs(p.Mean*speed-power) > 1e-12*power+1e-290 || p.Count != part.Orders {
			t.Fatalf("mean torque %g at %g rad/s for %g W", p.Mean, speed, power)
		}
		turns := s.Cycle.Revolutions()
		const samples = 1000
		sum, swing := 0.0, math.Abs(p.Mean)
		peak, least := extremes(p)
		for i := range samples {
			torque := torqueAt(p, 2*math.Pi*turns*float64(i)/samples)
			sum += torque
			if math.IsNaN(torque) || math.IsInf(torque, 0) {
				t.Fatalf("torque %g", torque)
			}
			swing = max(swing, math.Abs(torque))
			// Samples may miss the top of the eighth harmonic by a hair.
			if room := 0.05 * (peak - least); torque > peak+room || torque < least-room {
				t.Fatalf("torque %g outside %g to %g", torque, least, peak)
			}
		}
		work := sum / samples * 2 * math.Pi * turns
		if asked := power / speed * 2 * math.Pi * turns; math.Abs(work-asked) > 1e-9*samples*swing {
			t.Fatalf("work per cycle %g, want %g", work, asked)
		}
		for k, h := range p.Harmonics {
			if want := float64(k+1) * float64(s.Cylinders) / turns; h.Order != want {
				t.Fatalf("harmonic %d has order %g, want %g", k, h.Order, want)
			}
		}
	})
	if built == 0 {
		t.Error("no random engine could be built")
	}
}

// The cylinders of an evenly fired engine, each a single of its own shifted by
// its share of the cycle, must add up to the engine.
func TestCylindersAddUp(t *testing.T) {
	for _, cycle := range []Cycle{TwoStroke, FourStroke} {
		for _, cylinders := range []int{2, 3, 4} {
			s := Default()
			s.Cycle = cycle
			single := build(t, s)
			s.Cylinders = cylinders
			whole := build(t, s)
			speed, n := 700.0, float64(cylinders)
			one, all := single.Pulsation(9000, speed), whole.Pulsation(9000*n, speed)
			for _, h := range one.Harmonics {
				cos, sin := 0.0, 0.0
				for i := range cylinders {
					b, a := math.Sincos(h.Order * 2 * math.Pi * cycle.Revolutions() * float64(i) / n)
					cos, sin = cos+h.Cos*a-h.Sin*b, sin+h.Cos*b+h.Sin*a
				}
				got := part.Harmonic{}
				for _, k := range all.Harmonics {
					if k.Order == h.Order {
						got = k
					}
				}
				if tol := 1e-9 * n * one.Mean; math.Abs(got.Cos-cos) > tol || math.Abs(got.Sin-sin) > tol {
					t.Errorf("%s, %d cylinders, order %g: %g %g, want %g %g", cycle, cylinders, h.Order, got.Cos, got.Sin, cos, sin)
				}
			}
		}
	}
}

// The inertia torque is the rate of the piston's energy of motion, taken here
// from the piston's travel alone.
func TestInertiaTorqueIsTheRateOfThePistonsEnergy(t *testing.T) {
	for _, ratio := range []sliderCrank{0.2, 0.26, 0.33, 0.5} {
		tolerance := 0.2 * math.Pow(float64(ratio), 5) // the order of the first term left out
		orders := ratio.inertia()
		energy := func(angle float64) float64 {
			_, rate := ratio.travel(math.Sincos(angle))
			return 2 * rate * rate // ½ (2 rate)², of crank radius and speed 1
		}
		for i := range 360 {
			angle, torque := float64(i)*degree, 0.0
			for n, a := range orders {
				torque += a * math.Sin(float64(n+1)*angle)
			}
			const h = 1e-4
			if want := -(energy(angle+h) - energy(angle-h)) / (2 * h); math.Abs(torque-want) > tolerance {
				t.Fatalf("ratio %g, %d degrees: %g, want %g", ratio, i, torque, want)
			}
		}
	}
}

func TestPistonTravelsItsStrokeAndItsRateIsItsSlope(t *testing.T) {
	q := sliderCrank(0.27)
	travel := func(angle float64) float64 {
		below, _ := q.travel(math.Sincos(angle))
		return below
	}
	if top, bottom := travel(0), travel(math.Pi); top != 0 || !near(bottom, 1, 1e-15) {
		t.Errorf("top %g, bottom %g strokes", top, bottom)
	}
	for i := range 360 {
		angle := float64(i) * degree
		_, rate := q.travel(math.Sincos(angle))
		const h = 1e-5
		if want := (travel(angle+h) - travel(angle-h)) / (2 * h); math.Abs(rate-want) > 1e-9 {
			t.Fatalf("%d degrees: rate %g, want %g", i, rate, want)
		}
	}
}

func TestCompressionGivesBackWhatItTakes(t *testing.T) {
	s := Default()
	s.ReciprocatingMass, s.FrictionPressure = 0, 0
	for _, h := range build(t, s).Pulsation(0, 500).Harmonics {
		if h.Cos != 0 {
			t.Errorf("order %g of a motored engine has a cosine %g", h.Order, h.Cos)
		}
	}
}

// What burning does follows the indicated torque: friction asks for as much
// more brake torque of an engine without it.
func TestFrictionIsPartOfTheIndicatedTorque(t *testing.T) {
	for _, cycle := range []Cycle{TwoStroke, FourStroke} {
		s := Default()
		s.Cycle = cycle
		rough := build(t, s)
		s.FrictionPressure = 0
		smooth := build(t, s)
		const power, speed = 6000, 700
		a, b := rough.Pulsation(power, speed), smooth.Pulsation(power+rough.friction(speed), speed)
		for k := range a.Harmonics {
			if h, g := a.Harmonics[k], b.Harmonics[k]; !near(h.Cos, g.Cos, 1e-9) || !near(h.Sin, g.Sin, 1e-9) {
				t.Errorf("%s, order %g: %v, want %v", cycle, h.Order, h, g)
			}
		}
	}
}

func TestWhatMovesThePulsation(t *testing.T) {
	share := func(change func(*Spec)) Running {
		s := Default()
		change(&s)
		e := build(t, s)
		return e.At(9000, 700)
	}
	usual := share(func(*Spec) {})
	if !(usual.PeakTorqueShare > 2 && usual.LeastTorqueShare < 0) {
		t.Errorf("a single runs between %g and %g of its mean torque", usual.LeastTorqueShare, usual.PeakTorqueShare)
	}
	for _, tc := range []struct {
		name   string
		change func(*Spec)
	}{
		{"more cylinders are smoother", func(s *Spec) { s.Cylinders, s.Bore, s.Stroke = 3, s.Bore/math.Cbrt(3), s.Stroke/math.Cbrt(3) }},
		{"slow burning is smoother", func(s *Spec) { s.ReciprocatingMass, s.BurnDuration = 0.2, 80*degree }},
	} {
		if r := share(tc.change); !(r.PeakTorqueShare-r.LeastTorqueShare < usual.PeakTorqueShare-usual.LeastTorqueShare) {
			t.Errorf("%s: %g to %g against %g to %g", tc.name, r.LeastTorqueShare, r.PeakTorqueShare, usual.LeastTorqueShare, usual.PeakTorqueShare)
		}
	}
	if r := share(func(s *Spec) { s.Cycle = FourStroke }); !(r.PeakTorqueShare > usual.PeakTorqueShare) {
		t.Errorf("a four-stroke of the same torque peaks at %g, the two-stroke at %g", r.PeakTorqueShare, usual.PeakTorqueShare)
	}
}

func TestWithoutPowerThereIsNoShare(t *testing.T) {
	e := build(t, Default())
	for _, power := range []float64{0, 5e-324} {
		for _, key := range []string{"engine.torque_peak_share", "engine.torque_least_share", "engine.harmonic_first"} {
			if r, ok := reading.Find(e.At(power, 700).Readings(nil), key); !ok || r.Known() {
				t.Errorf("%g W: %s %v", power, key, r)
			}
		}
	}
	if p := e.Pulsation(1000, 0); p != (part.Pulsation{}) {
		t.Errorf("standing still: %+v", p)
	}
	if p := e.Pulsation(0, e.IdleSpeed()); p.Mean != 0 || !(p.Harmonics[0].Amplitude() > 0) {
		t.Errorf("idle: %+v", p)
	}
}

func BenchmarkPulsation(b *testing.B) {
	e := build(b, Default())
	b.ReportAllocs()
	for b.Loop() {
		if e.Pulsation(9000, 800).Count == 0 {
			b.Fatal("no harmonics")
		}
	}
}
