package noise

import (
	"math"
	"testing"

	"backspan/model/param"
	"backspan/model/propeller"
	"backspan/model/unit"
)

const standardSound = 340.294

// blades is the default propeller in standard air at sea level, changed.
func blades(t testing.TB, turns float64, change func(*propeller.Spec)) Source {
	t.Helper()
	spec := propeller.Default()
	change(&spec)
	p, err := propeller.New(spec)
	if err != nil {
		t.Fatal(err)
	}
	f := propeller.Flow{Speed: unit.RPM.SI(turns), Density: 1.225, SoundSpeed: standardSound, Viscosity: 1.789e-5}
	pt := p.At(f)
	return Source{
		Blades: spec.Blades, Radius: spec.Diameter / 2, Speed: f.Speed, Density: f.Density, SoundSpeed: f.SoundSpeed,
		TipMach: pt.TipMach, Thrust: pt.Thrust, Torque: pt.Torque, Cells: p.Loading(f, nil),
	}
}

func unchanged(*propeller.Spec) {}

func worked(t testing.TB) Input {
	return Input{Source: blades(t, 2550, unchanged), Spec: Default(), Listener: DefaultListener(), DiscAft: 0.35, ShaftUp: 0.34}
}

// loaded scales the forces and leaves the metal out.
func loaded(s Source, force float64) Source {
	s.Thrust, s.Torque = s.Thrust*force, s.Torque*force
	cells := append([]propeller.StationLoad(nil), s.Cells...)
	for i := range cells {
		cells[i].Along, cells[i].Across, cells[i].Area = cells[i].Along*force, cells[i].Across*force, 0
	}
	s.Cells = cells
	return s
}

func within(t *testing.T, what string, got, want, off float64) {
	t.Helper()
	if !(math.Abs(got-want) <= off) {
		t.Errorf("%s: %.6g, want %.6g", what, got, want)
	}
}

// Spherical spreading: 20 lg 2 for each doubling of distance.
func TestTwiceAsFarIsSixDecibelsLess(t *testing.T) {
	near := worked(t)
	near.EngineLevel = param.Known(84)
	far := near
	far.Distance *= 2
	within(t, "dB", Hear(&far).AtOwn-Hear(&near).AtOwn, -6.0206, 1e-4)
	near.Distance = far150
	r := Hear(&near)
	within(t, "the same place", r.AtOwn, r.At150, 1e-9)
}

// Pressure goes with force: 20 lg 2 for twice the load, far and near.
func TestTwiceTheLoadIsSixDecibelsMore(t *testing.T) {
	s := blades(t, 2550, unchanged)
	one, two := loaded(s, 1), loaded(s, 2)
	a, b := one.far(1.8), two.far(1.8)
	within(t, "far", level(b.square*1e3)-level(a.square*1e3), 6.0206, 1e-4)
	within(t, "far, weighted", level(b.weighted*1e3)-level(a.weighted*1e3), 6.0206, 1e-4)
	c, d := one.near(0.4, 0.3), two.near(0.4, 0.3)
	within(t, "near", level(d.square)-level(c.square), 6.0206, 1e-4)
	e, f := one.vortex(), two.vortex()
	within(t, "vortex", level(f.square*1e3)-level(e.square*1e3), 6.0206, 1e-4)
}

// NACA TN 1354 found a seven-blade propeller quieter than a two-blade one for
// comparable operating conditions: the same thrust at the same tip speed.
func TestMoreBladesAtTheSameThrustAreQuieter(t *testing.T) {
	spread := loaded(blades(t, 2550, unchanged), 1)
	last := math.Inf(1)
	for n := 2; n <= 6; n++ {
		s := loaded(spread, 1)
		for i := range s.Cells {
			s.Cells[i].Along *= 2 / float64(n)
			s.Cells[i].Across *= 2 / float64(n)
		}
		s.Blades = n
		if now := s.far(1.8).square; now >= last {
			t.Errorf("%d blades are no quieter than %d", n, n-1)
		} else {
			last = now
		}
	}
}

// "Approximately a linear function of tip speed" for a fixed pitch, in dB:
// NACA TN 1354.
func TestFasterTipsAreLouder(t *testing.T) {
	last, lastVortex := 0.0, 0.0
	for turns := 1800.0; turns <= 3400; turns += 200 {
		s := blades(t, turns, unchanged)
		tones, vortex := s.far(1.8), s.vortex()
		if tones.weighted <= last || vortex.weighted <= lastVortex {
			t.Errorf("at %g rpm the tones give %g, the vortices %g Pa²", turns, tones.weighted, vortex.weighted)
		}
		last, lastVortex = tones.weighted, vortex.weighted
	}
}

// Steady loads send no sound along the shaft, and most of it somewhat behind
// the disc (NACA TN 1354 measured at 105°).
func TestLoudestBehindTheDisc(t *testing.T) {
	s := blades(t, 2550, unchanged)
	loudest, where := 0.0, 0.0
	for direction := 1.0; direction < 180; direction++ {
		if p := s.far(unit.Degree.SI(direction)).square; p > loudest {
			loudest, where = p, direction
		}
	}
	if where < 95 || where > 125 {
		t.Errorf("loudest at %g°", where)
	}
	if ahead := s.far(unit.Degree.SI(1)).square; ahead > 1e-4*loudest {
		t.Errorf("%g Pa² straight ahead, %g at most", ahead, loudest)
	}
}

// Far off, the ring of retarded paths and the Bessel functions are the same
// theory.
func TestNearFieldBecomesTheFarField(t *testing.T) {
	s := blades(t, 2550, unchanged)
	ring := s
	ring.Cells = []propeller.StationLoad{{
		Radius: effectiveShare * s.Radius, Width: 1, Area: s.seenVolume(effectiveShare*s.Radius) / float64(s.Blades),
		Along: s.Thrust / float64(s.Blades), Across: s.Torque / (effectiveShare * s.Radius) / float64(s.Blades),
	}}
	const distance = 4000.0
	for _, direction := range []float64{40, 75, 90, 105, 140} {
		sin, cos := math.Sincos(unit.Degree.SI(direction))
		near, far := s.near(distance*cos, distance*sin), ring.far(unit.Degree.SI(direction))
		within(t, "dB", 10*math.Log10(near.square*distance*distance/far.square), 0, 0.02)
	}
}

// The radius at which thrust and torque may act as one is 0.8 of the tip's, by
// Gutin; the blade summed cell by cell agrees within 2 dB at the first tone.
func TestGutinsRadiusStandsForTheBlade(t *testing.T) {
	s := loaded(blades(t, 2550, unchanged), 1)
	one := s
	r := effectiveShare * s.Radius
	one.Cells = []propeller.StationLoad{{Radius: r, Width: 1, Along: s.Thrust / 2, Across: s.Torque / r / 2}}
	within(t, "dB", 10*math.Log10(one.farHarmonic(1, 1.83)/s.farHarmonic(1, 1.83)), 0, 2)
}

func TestWeightIsOneAtAThousandHertz(t *testing.T) {
	within(t, "weight", weight(1000), 1, 1e-12)
	if weight(0) != 0 {
		t.Error("a steady pressure is heard")
	}
}

// At low speed a Bessel function is a power of its argument, and the volume
// gathered on the ring sounds as the blades do.
func TestVolumeOnTheRingSoundsAsTheBladesDo(t *testing.T) {
	for _, n := range []int{2, 3, 5} {
		s := loaded(blades(t, 400, func(p *propeller.Spec) { p.Blades = n }), 1)
		for i := range s.Cells {
			c := &s.Cells[i]
			c.Along, c.Across, c.Area = 0, 0, 0.68*c.Chord*c.Thickness
		}
		s.Thrust, s.Torque = 0, 0
		within(t, "dB", 10*math.Log10(s.near(0, 2000).square*2000*2000/s.far(pi/2).square), 0, 0.1)
	}
}

func TestAnEarInTheBladesPathGetsAFigure(t *testing.T) {
	s := blades(t, 2550, unchanged)
	if p := s.near(0, effectiveShare*s.Radius).weighted; !(p > 0) || math.IsInf(p, 0) {
		t.Errorf("%g Pa²", p)
	}
}
