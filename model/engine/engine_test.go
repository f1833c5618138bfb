package engine

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/air"
	"backspan/model/internal/anyspec"
	"backspan/model/reading"
)

func TestOutsideTheCurveTheEngineDoesNotPull(t *testing.T) {
	e := build(t, Default())
	low, high := e.SpeedRange()
	for _, speed := range []float64{-1, 0, math.Nextafter(low, 0), math.Nextafter(high, 1e9), math.NaN(), math.Inf(1)} {
		if e.Power(speed) != 0 || e.Torque(speed) != 0 {
			t.Errorf("at %g: power %g, torque %g", speed, e.Power(speed), e.Torque(speed))
		}
	}
	if !(e.Power(low) > 0 && e.Power(high) > 0) {
		t.Error("no power at the ends of the curve")
	}
}

func TestAirMovesThePower(t *testing.T) {
	s := Default()
	power := func(a air.Spec) float64 {
		e, err := New(s, a.State())
		if err != nil {
			t.Fatal(err)
		}
		p, _ := e.Peak()
		return p
	}
	for _, c := range []Correction{SAEJ1349, ISO1585} {
		s.Correction = c
		base := power(air.Spec{})
		for _, tc := range []struct {
			name string
			site air.Spec
		}{
			{"high", air.Spec{Altitude: 1500}}, {"hot", air.Spec{TemperatureOffset: 20}}, {"humid", air.Spec{RelativeHumidity: 1}},
		} {
			if p := power(tc.site); !(p < base) {
				t.Errorf("%s, %s: %g W against %g W", c, tc.name, p, base)
			}
		}
	}
}

func TestFuel(t *testing.T) {
	e := build(t, Default())
	r := referencePeak(e)
	if got := r.FuelFlow / r.Power; !near(got, e.spec.SpecificFuel, 1e-12) {
		t.Errorf("specific fuel at peak %g, want %g", got, e.spec.SpecificFuel)
	}
	half := e.At(r.Power/2, r.Speed)
	if got := half.FuelFlow / half.Power; !(got > r.FuelFlow/r.Power && got < 1.5*r.FuelFlow/r.Power) {
		t.Errorf("specific fuel at half load %g against %g", got, r.FuelFlow/r.Power)
	}
	if r.HeatToCylinder != 0.55*r.Power {
		t.Errorf("heat from the cylinder %g of %g", r.HeatToCylinder, r.Power)
	}
	if idle := r.IdleFuelFlow * 3.6e6; !(idle > 0.1 && idle < 2) {
		t.Errorf("idle burns %g L/h", idle)
	}
}

func TestPiece(t *testing.T) {
	s := Default()
	p := build(t, s).Piece()
	if p.Depth != s.DepthToDrive || p.Mass != s.Mass || p.CGAft != s.CGAft || p.CGUp != s.CGAboveCrank {
		t.Errorf("%+v", p)
	}
	if want := s.Mass * (3*s.OutsideRadius*s.OutsideRadius + s.DepthToRearEnd*s.DepthToRearEnd) / 12; !near(p.PitchInertia, want, 1e-12) || p.YawInertia != p.PitchInertia {
		t.Errorf("inertia %g and %g, want %g", p.PitchInertia, p.YawInertia, want)
	}
}

func TestChecks(t *testing.T) {
	for _, tc := range []struct {
		name, key string
		change    func(*Spec)
		site      air.Spec
		speed     float64 // rpm
		want      reading.Verdict
	}{
		{"well under the limit", "engine.speed_limit", nil, air.Spec{}, 8000, reading.Holds},
		{"near the limit", "engine.speed_limit", nil, air.Spec{}, 9200, reading.Thin},
		{"over the limit", "engine.speed_limit", nil, air.Spec{}, 9501, reading.Fails},
		{"sea level", "engine.air_correction_valid", nil, air.Spec{}, 8000, reading.Holds},
		{"mountain", "engine.air_correction_valid", nil, air.Spec{Altitude: 1500}, 8000, reading.Thin},
		{"usual pressure", "engine.pressure_typical", nil, air.Spec{}, 8000, reading.Holds},
		{"mountain does not change the rating", "engine.pressure_typical", nil, air.Spec{Altitude: 6000}, 8000, reading.Holds},
		{"low pressure", "engine.pressure_typical", func(s *Spec) { s.Bore = 0.085 }, air.Spec{}, 8000, reading.Thin},
		{"high pressure", "engine.pressure_typical", func(s *Spec) { s.Bore = 0.045 }, air.Spec{}, 8000, reading.Thin},
	} {
		s := Default()
		if tc.change != nil {
			tc.change(&s)
		}
		e, err := New(s, tc.site.State())
		if err != nil {
			t.Fatal(err)
		}
		speed := perMinute(tc.speed)
		found := false
		for _, c := range e.At(e.Power(speed), speed).Checks(nil, 0.1) {
			if c.Key == tc.key {
				found = true
				if c.Verdict != tc.want {
					t.Errorf("%s: %s (%s), want %s", tc.name, c.Verdict, c.Text(), tc.want)
				}
			}
		}
		if !found {
			t.Errorf("%s: no check %s", tc.name, tc.key)
		}
	}
}

func TestReadingsDeclareTheirKeysAlsoWithoutAnEngine(t *testing.T) {
	rs := reading.Blank(Running{}.Readings(nil), "no engine")
	for _, key := range []string{
		"engine.power", "engine.speed", "engine.torque", "engine.peak_power", "engine.peak_speed", "engine.mean_effective_pressure",
		"engine.piston_speed", "engine.specific_fuel", "engine.fuel_flow", "engine.heat_to_cylinder", "engine.air_correction", "engine.displacement",
		"engine.torque_peak_share", "engine.torque_least_share", "engine.harmonic_first",
	} {
		if r, ok := reading.Find(rs, key); !ok || r.Known() {
			t.Errorf("%s: %v, %v", key, r, ok)
		}
	}
}

func TestCloneSharesNothing(t *testing.T) {
	s := Default()
	c := s.Clone()
	c.Curve[0].Power = 1
	if s.Curve[0].Power == 1 {
		t.Error("the clone's curve is the original's")
	}
}

func TestDefaultIsInsideItsRanges(t *testing.T) {
	s := Default()
	seen := map[string]bool{}
	for _, p := range s.Params() {
		if seen[p.Key] {
			t.Errorf("%s is declared twice", p.Key)
		}
		seen[p.Key] = true
		if n := len([]rune(p.Label)); n > 34 {
			t.Errorf("%s: the label has %d characters", p.Key, n)
		}
		if err := p.Set(p.Editable()); err != nil {
			t.Errorf("%s does not take its default: %v", p.Key, err)
		}
	}
	if len(s.Curve) != 10 {
		t.Errorf("the curve has %d points after a round trip", len(s.Curve))
	}
}

func TestCurveParameterRefusesFallingSpeeds(t *testing.T) {
	s := Default()
	for _, p := range s.Params() {
		if p.Key != "power_curve" {
			continue
		}
		for _, text := range []string{"4000 5", "4000 5; 4000 6", "5000 6; 4000 5", "4000 5; 5000 0"} {
			if err := p.Set(text); err == nil {
				t.Errorf("took %q", text)
			}
		}
	}
}

func TestAnyEngineHasFiniteFigures(t *testing.T) {
	built := 0
	rapid.Check(t, func(t *rapid.T) {
		s, site := Default(), air.Default()
		anyspec.Set(t, s.Params(), map[string]anyspec.Own{"power_curve": anyspec.Leave})
		anyspec.Set(t, site.Params(), nil)
		s.Curve = drawCurve(t)
		e, err := New(s, site.State())
		if err != nil {
			return
		}
		built++
		speed := perMinute(rapid.Float64Range(0, 20000).Draw(t, "speed"))
		power := e.Power(speed)
		if !(power >= 0) || math.IsInf(power, 0) {
			t.Fatalf("power %g at %g rad/s", power, speed)
		}
		r := e.At(power*rapid.Float64Range(0, 1).Draw(t, "throttle"), speed)
		for _, x := range r.Readings(nil) {
			if !x.Known() && x.Why != noPower {
				t.Errorf("%s: %s", x.Key, x.Why)
			}
			if x.Known() && x.Value < 0 && x.Key != "engine.torque_least_share" {
				t.Errorf("%s is %g", x.Key, x.Value)
			}
		}
		for _, c := range r.Checks(nil, 0.1) {
			if c.Verdict == reading.NotRated {
				t.Errorf("%s: %s", c.Key, c.Why)
			}
		}
	})
	if built == 0 {
		t.Error("no random engine could be built")
	}
}

func TestPowerDoesNotAllocate(t *testing.T) {
	e := build(t, Default())
	if n := testing.AllocsPerRun(100, func() { e.Power(800) }); n != 0 {
		t.Errorf("%g allocations", n)
	}
}

func BenchmarkPower(b *testing.B) {
	e := build(b, Default())
	for b.Loop() {
		if e.Power(800) <= 0 {
			b.Fatal("no power")
		}
	}
}

func BenchmarkPowerOfAPipeConcept(b *testing.B) {
	e := concept(b, func(s *Spec) { s.Shape = TunedPipe })
	for b.Loop() {
		if e.Power(800) <= 0 {
			b.Fatal("no power")
		}
	}
}

func BenchmarkNew(b *testing.B) {
	s, at := Default(), air.Default().State()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := New(s, at); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkReadings(b *testing.B) {
	e := build(b, Default())
	b.ReportAllocs()
	for b.Loop() {
		if len(e.At(9000, 800).Readings(nil)) == 0 {
			b.Fatal("no readings")
		}
	}
}
