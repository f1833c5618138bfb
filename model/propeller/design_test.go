package propeller

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/internal/published"
	"backspan/model/unit"
)

// designPrinted designs the published blade with its own section figures.
func designPrinted(t testing.TB, c published.Case) map[string]float64 {
	foot := unit.Foot.SI(1)
	radius := c.List(t, "radius")
	ld, _ := blade(t, scaled(radius, foot), c.List(t, "lift_to_drag"), radius)
	d := screwWake{blades: c.Num(t, "blades"), tip: c.Num(t, "diameter") / 2 * foot, root: c.Num(t, "hub_diameter") / 2 * foot,
		flow: Flow{Airspeed: c.Num(t, "airspeed") * foot, Speed: rpm(c.Num(t, "speed")), Density: unit.SlugPerCubicFoot.SI(c.Num(t, "density")),
			SoundSpeed: standardSound, Viscosity: standardViscosity},
		section: func(r, _, _ float64) worksAt { return worksAt{degrees(c.Num(t, "alpha")), c.Num(t, "cl"), 1 / ld(r)} }}
	w, err := d.displacement(0, unit.Horsepower.SI(c.Num(t, "power")))
	if err != nil {
		t.Fatal(err)
	}
	thrust, torque := d.sum(w)
	power := torque * d.flow.Speed
	out := map[string]float64{"thrust": unit.PoundForce.From(thrust), "efficiency": thrust * d.flow.Airspeed / power}
	for i, r := range radius {
		s := d.at(r*foot, w)
		n := fmt.Sprint(i + 1)
		out["chord"+n], out["beta"+n] = s.chord/foot, (s.inflow+s.attack)*180/math.Pi
		out["phi"+n], out["a"+n], out["swirl"+n] = s.inflow*180/math.Pi, s.axial/d.flow.Airspeed, s.swirl/(d.flow.Speed*s.radius)
	}
	return out
}

// paramotorDesign is a blade designed with the generic section.
func paramotorDesign(t testing.TB, c published.Case) map[string]float64 {
	cl, e := c.Num(t, "cl"), c.Num(t, "drag_to_lift")
	s := flatBottomed()
	d := screwWake{blades: c.Num(t, "blades"), tip: c.Num(t, "diameter") / 2, root: c.Num(t, "hub_diameter") / 2,
		flow:    standard(c.Num(t, "airspeed"), c.Num(t, "rpm")),
		section: func(_, _, _ float64) worksAt { return worksAt{s.ZeroLiftAngle + cl/s.LiftSlope, cl, e} }}
	w, err := d.displacement(0, c.Num(t, "power"))
	if err != nil {
		t.Fatal(err)
	}
	thrust, torque := d.sum(w)
	out := map[string]float64{"displacement": w, "thrust": thrust, "efficiency": thrust * d.flow.Airspeed / (torque * d.flow.Speed)}
	for i, x := range c.List(t, "share") {
		row := d.at(x*d.tip, w)
		n := fmt.Sprint(i + 1)
		out["chord"+n], out["beta"+n] = 1000*row.chord, (row.inflow+row.attack)*180/math.Pi
	}
	return out
}

func aim(v float64) Aim {
	return Aim{Flow: standard(v, 2550), Power: 11e3, Lift: 0.6, LeastChord: 0.025, GreatestChord: 0.11, Stations: 12}
}

// The blade as built does what was wanted, and is a blade that New takes.
func TestDesignDoesWhatIsWanted(t *testing.T) {
	s := Default()
	for _, v := range []float64{0, 5, 10, 20} {
		for _, byThrust := range []bool{false, true} {
			a := aim(v)
			if byThrust {
				a.Thrust, a.Power = 380-8*v, 0
			}
			d, err := s.Design(a)
			if err != nil {
				t.Fatalf("at %g m/s: %v", v, err)
			}
			p, err := New(d.Blade)
			if err != nil {
				t.Fatal(err)
			}
			pt := p.At(a.Flow)
			if byThrust {
				alike(t, "thrust", pt.Thrust, a.Thrust, 0.1)
			} else {
				alike(t, "power", pt.Power, a.Power, 2)
			}
			if pt.Status != Valid || len(d.Blade.Rows) != 12 || d.Rows[11].Share != 1 || !d.Clipped {
				t.Errorf("at %g m/s: %v, %d rows", v, pt.Status, len(d.Blade.Rows))
			}
			if pt != d.Built {
				t.Errorf("the design quotes %+v, its blade gives %+v", d.Built, pt)
			}
		}
	}
}

// With chords free and the section's drag small the designed blade beats the
// same propeller of constant pitch at the same power.
func TestDesignBeatsConstantPitch(t *testing.T) {
	s := Default()
	a := aim(11)
	constant := made(t, nothing)
	plain := constant.At(a.Flow)
	a.Power, a.GreatestChord = plain.Power, 0.14
	d, err := s.Design(a)
	if err != nil {
		t.Fatal(err)
	}
	if d.Built.Thrust <= plain.Thrust {
		t.Errorf("designed %.1f N, constant pitch %.1f N, both for %.0f W", d.Built.Thrust, plain.Thrust, plain.Power)
	}
	if best := d.IdealThrust; best <= 0 || best > discThrust(plain.Power, 11, standardDensity, math.Pi/4*s.Diameter*s.Diameter) {
		t.Errorf("ideal thrust %g N is beyond the ideal disc", best)
	}
}

func TestDesignRefusals(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Aim)
		says   string
	}{
		{"nothing asked", func(a *Aim) { a.Power = 0 }, "either the thrust or the power"},
		{"both asked", func(a *Aim) { a.Thrust = 300 }, "either the thrust or the power"},
		{"too much", func(a *Aim) { a.Power = 1e6 }, "raise"},
		{"stands", func(a *Aim) { a.Flow.Speed = 0 }, "propeller speed"},
		{"few stations", func(a *Aim) { a.Stations = 3 }, "4 to 60 stations, not 3"},
		{"many stations", func(a *Aim) { a.Stations = 61 }, "4 to 60 stations, not 61"},
		{"chords", func(a *Aim) { a.GreatestChord = 0.01 }, "greatest chord"},
		{"too narrow", func(a *Aim) { a.LeastChord, a.GreatestChord = 0.005, 0.012 }, "greatest chord"},
		{"too little", func(a *Aim) { a.Power, a.Flow.Airspeed, a.LeastChord = 20, 0, 0.1 }, "least chord"},
	} {
		s, a := Default(), aim(10)
		tc.change(&a)
		if _, err := s.Design(a); err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: %v, want %q", tc.name, err, tc.says)
		}
	}
}

// Whatever is asked, the answer is a blade that does it, or a sentence.
func TestAnyDesignIsABladeOrASentence(t *testing.T) {
	made := 0
	rapid.Check(t, func(t *rapid.T) {
		s := drawn(t)
		f := drawnFlow(t)
		f.Speed = rapid.Float64Range(50, 500).Draw(t, "turns")
		a := Aim{Flow: f, Lift: rapid.Float64Range(0.1, 1.5).Draw(t, "lift"), Stations: rapid.IntRange(4, 20).Draw(t, "stations"),
			LeastChord: rapid.Float64Range(0.005, 0.06).Draw(t, "least chord")}
		a.GreatestChord = a.LeastChord * rapid.Float64Range(1, 5).Draw(t, "greatest chord")
		if rapid.Bool().Draw(t, "by thrust") {
			a.Thrust = rapid.Float64Range(10, 1500).Draw(t, "thrust")
		} else {
			a.Power = rapid.Float64Range(200, 40e3).Draw(t, "power")
		}
		d, err := s.Design(a)
		if err != nil {
			if len(err.Error()) < 30 {
				t.Fatalf("%v says too little", err)
			}
			return
		}
		made++
		anyspec.Finite(t, "design", d)
		if got, want := d.Built.Thrust, a.Thrust; want > 0 && math.Abs(got-want) > 0.003*want {
			t.Fatalf("%g N for %g N", got, want)
		}
		if got, want := d.Built.Power, a.Power; want > 0 && math.Abs(got-want) > 0.003*want {
			t.Fatalf("%g W for %g W", got, want)
		}
	})
	if made == 0 {
		t.Error("no blade was made")
	}
}

func BenchmarkDesign(b *testing.B) {
	s := Default()
	for b.Loop() {
		if _, err := s.Design(aim(10)); err != nil {
			b.Fatal(err)
		}
	}
}

// discThrust is what an ideal actuator disc gives for a power (≥ 0, W) at an
// airspeed (≥ 0): the root of T(V + v) = P. Source: Rankine and Froude's
// momentum theory.
func discThrust(power, airspeed, density, area float64) float64 {
	low, high := 0.0, IdealThrust(power, density, area)
	for range 60 {
		if t := (low + high) / 2; t*(airspeed+DiscSpeed(t, airspeed, density, area)) < power {
			low = t
		} else {
			high = t
		}
	}
	return (low + high) / 2
}

// Rows that do not rise are refused in words, not by the fit's panic.
func TestRowsOutOfOrderAreRefused(t *testing.T) {
	for _, second := range []float64{0.2, 0.1} {
		s := Default()
		s.Shape = Stations
		for _, x := range []float64{0.2, second, 0.6, 1} {
			s.Rows = append(s.Rows, []float64{x, 0.1, degrees(12)})
		}
		if _, err := New(s); err == nil || !strings.Contains(err.Error(), "put the rows of Blade stations in order") {
			t.Errorf("second row at %g: %v", second, err)
		}
	}
	s, a := Default(), aim(10)
	a.Stations = 60
	if d, err := s.Design(a); err != nil || len(d.Rows) != 60 {
		t.Errorf("%d rows, %v", len(d.Rows), err)
	}
}
