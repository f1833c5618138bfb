package propeller

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/param"
	"backspan/model/reading"
)

func made(t testing.TB, change func(*Spec)) Propeller {
	t.Helper()
	s := Default()
	change(&s)
	p, err := New(s)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func nothing(*Spec) {}

func TestDefaultIsInsideItsRangesAndHolds(t *testing.T) {
	s := Default()
	for _, p := range s.Params() {
		if err := p.Set(p.Editable()); err != nil {
			t.Error(err)
		}
		if len([]rune(p.Label)) > 34 {
			t.Errorf("label too long: %s", p.Label)
		}
	}
	p := made(t, nothing)
	pt := p.At(standard(0, 2550))
	if pt.Power < 12.5e3 || pt.Power > 13.5e3 {
		t.Errorf("takes %.0f W standing, not about 13 kW", pt.Power)
	}
	for _, c := range p.Report(pt, p.At(standard(11, 2600))).Checks(nil, 0.05) {
		if c.Verdict != reading.Holds {
			t.Errorf("%s %s: %s", c.Key, c.Verdict, c.Text())
		}
	}
}

func TestRefusals(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Spec)
		says   string
	}{
		{"hub", func(s *Spec) { s.Diameter, s.HubRadius = 0.6, 0.2 }, "Hub cut-out radius"},
		{"boss", func(s *Spec) { s.BossDiameter = 0.25 }, "Boss diameter"},
		{"chords", func(s *Spec) { s.GreatestChord = 0.05 }, "Greatest chord"},
		{"no rows", func(s *Spec) { s.Shape = Stations }, "four rows of Blade stations"},
		{"no polar", func(s *Spec) { s.Family = OwnPolar }, "Section polar"},
		{"overlap", func(s *Spec) { s.Blades, s.RootChord, s.GreatestChord, s.Pitch = 6, 0.2, 0.2, 0.3 }, "overlap"},
	} {
		s := Default()
		tc.change(&s)
		if _, err := New(s); err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: %v, want an error with %q", tc.name, err, tc.says)
		}
	}
}

func TestStationsOfConstantPitchAreTheNominalBlade(t *testing.T) {
	flat := made(t, func(s *Spec) { s.RootChord, s.GreatestChord, s.TipChord = 0.1, 0.1, 0.1 })
	want := flat.At(standard(5, 2500))
	rows := made(t, func(s *Spec) {
		s.Shape = Stations
		for _, x := range []float64{0.15, 0.4, 0.7, 1} {
			s.Rows = append(s.Rows, []float64{x, 0.1, math.Atan(s.Pitch / (math.Pi * x * s.Diameter))})
		}
	})
	got := rows.At(standard(5, 2500))
	if math.Abs(got.Thrust/want.Thrust-1) > 1e-4 || math.Abs(got.Power/want.Power-1) > 1e-4 {
		t.Errorf("stations give %.2f N and %.0f W, nominal pitch %.2f N and %.0f W", got.Thrust, got.Power, want.Thrust, want.Power)
	}
}

func TestCellsHaveConverged(t *testing.T) {
	s := Default()
	o, err := s.outline()
	if err != nil {
		t.Fatal(err)
	}
	fine := tested(o, 16*Cells)
	for _, n := range []int{6, 12, Cells, 2 * Cells, 4 * Cells} {
		coarse := tested(o, n)
		for _, v := range []float64{0, 10, 20} {
			a, b := coarse.At(standard(v, 2550)), fine.At(standard(v, 2550))
			t.Logf("%2.0f m/s, %3d cells: thrust %.2f N (%+.3f %%), power %.0f W (%+.3f %%)", v, n, a.Thrust, 100*(a.Thrust/b.Thrust-1), a.Power, 100*(a.Power/b.Power-1))
			if n >= Cells && (math.Abs(a.Thrust/b.Thrust-1) > 0.002 || math.Abs(a.Power/b.Power-1) > 0.002) {
				t.Errorf("not converged at %g m/s", v)
			}
		}
	}
}

// At no lift the blade still has its profile drag, at every station.
func TestZeroLiftTorqueIsProfileDrag(t *testing.T) {
	s := Default()
	o, err := s.outline()
	if err != nil {
		t.Fatal(err)
	}
	o.angle = func(float64) float64 { return o.section.ZeroLiftAngle }
	p := tested(o, Cells)
	f := standard(0, 2550)
	want := 0.0
	for i := range p.stations {
		st := &p.stations[i]
		w := f.Speed * st.radius
		q := st.section.at(f.Density*w*st.chord/f.Viscosity, w/f.SoundSpeed, st.delay, st.flatPlate)
		_, cd := q.coefficients(st.angle)
		want += 2 * 0.5 * f.Density * w * w * st.chord * cd * st.radius * st.width
	}
	if pt := p.At(f); math.Abs(pt.Torque/want-1) > 0.05 || math.Abs(pt.Thrust) > 0.5 {
		t.Errorf("torque %.3f N·m and thrust %.3f N, profile drag alone gives %.3f N·m", pt.Torque, pt.Thrust, want)
	}
}

func TestPowerCoversInducedAndUsefulPower(t *testing.T) {
	p := made(t, nothing)
	for _, v := range []float64{0, 5, 10, 15, 20} {
		if pt := p.At(standard(v, 2550)); pt.Power < pt.Thrust*(v+DiscSpeed(pt.Thrust, v, standardDensity, p.DiscArea())) {
			t.Errorf("at %g m/s power %g W is less than the ideal disc's", v, pt.Power)
		}
	}
}

func TestBody(t *testing.T) {
	p := made(t, func(s *Spec) { s.Mass = param.Known(2) })
	free := made(t, nothing)
	if got := p.PolarInertia() / free.PolarInertia(); math.Abs(got-2/free.Mass()) > 1e-12 {
		t.Errorf("inertia scales by %g, mass by %g", got, 2/free.Mass())
	}
	if k := free.PolarInertia() / (free.Mass() * free.tip * free.tip); k < 0.15 || k > 0.33 {
		t.Errorf("inertia is %.3f m R², outside that of real blades", k)
	}
	if piece := p.Piece(); piece.Mass != 2 || piece.CGAft != piece.Depth/2 {
		t.Errorf("piece %+v", piece)
	}
	measured := made(t, func(s *Spec) { s.Inertia = param.Known(0.1) })
	if got := measured.PolarInertia(); got != 0.1 {
		t.Errorf("measured inertia not used: %g", got)
	}
}

func TestCloneSharesNothing(t *testing.T) {
	s := Spec{Rows: [][]float64{{1, 2, 3}}}
	c := s.Clone()
	c.Rows[0][0] = 9
	if s.Rows[0][0] != 1 {
		t.Error("the clone shares its rows")
	}
}

func TestEmptyReportSaysWhy(t *testing.T) {
	for _, r := range (Report{}).Readings(nil)[:10] {
		if r.Known() {
			t.Errorf("%s has a value without a propeller", r.Key)
		}
	}
	(Report{}).Checks(nil, 0.1)
}

func TestTipMachVerdicts(t *testing.T) {
	p := made(t, nothing)
	for turns, want := range map[float64]reading.Verdict{2500: reading.Holds, 3000: reading.Thin, 3600: reading.Thin, 4800: reading.Fails} {
		pt := p.At(standard(0, turns))
		if c := p.Report(pt, pt).Checks(nil, 0.05)[0]; c.Verdict != want {
			t.Errorf("%g rpm: %s, want %s (%s)", turns, c.Verdict, want, c.Text())
		}
	}
}

func TestReportIsFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawnPropeller(t)
		r := p.Report(p.At(drawnFlow(t)), p.At(drawnFlow(t)))
		for _, x := range r.Readings(nil) {
			if strings.Contains(x.Why, "no finite") {
				t.Fatalf("%s: %s", x.Key, x.Why)
			}
		}
		r.Checks(nil, 0.1)
	})
}

func TestAtDoesNotAllocate(t *testing.T) {
	p, f := made(t, nothing), standard(8, 2550)
	if n := testing.AllocsPerRun(20, func() { p.At(f) }); n != 0 {
		t.Errorf("%g allocations", n)
	}
}

func TestReadingsAreNamedOnceAndShort(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range (Report{}).Readings(nil) {
		if seen[r.Key] || len([]rune(r.Label)) > 34 || !strings.HasPrefix(r.Key, "propeller.") {
			t.Errorf("%s %q", r.Key, r.Label)
		}
		seen[r.Key] = true
	}
	for _, c := range (Report{}).Checks(nil, 0.1) {
		if len([]rune(c.Label)) > 34 {
			t.Errorf("%s %q", c.Key, c.Label)
		}
	}
}

func BenchmarkAtStanding(b *testing.B) {
	p, f := made(b, nothing), standard(0, 2550)
	b.ReportAllocs()
	for b.Loop() {
		p.At(f)
	}
}

func BenchmarkAtTrim(b *testing.B) {
	p, f := made(b, nothing), standard(11, 2550)
	b.ReportAllocs()
	for b.Loop() {
		p.At(f)
	}
}

func BenchmarkNew(b *testing.B) {
	s := Default()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := New(s); err != nil {
			b.Fatal(err)
		}
	}
}

func TestLoadingDoesNotAllocate(t *testing.T) {
	p, f := made(t, nothing), standard(8, 2550)
	into := make([]StationLoad, 0, Cells)
	if n := testing.AllocsPerRun(20, func() { into = p.Loading(f, into) }); n != 0 || len(into) != Cells {
		t.Errorf("%g allocations, %d cells", n, len(into))
	}
	if got := p.Loading(Flow{}, into); len(got) != 0 {
		t.Errorf("%d cells of a propeller that stands", len(got))
	}
}
