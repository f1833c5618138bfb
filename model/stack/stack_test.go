package stack

import (
	"math"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

func sample() Parts {
	return Parts{
		FuelDensity: 745,
		Engine:      part.Piece{Key: "engine", Label: "Engine", Depth: 0.13, Mass: 9, CGAft: 0.06, CGUp: 0.05}, EngineRear: 0.2,
		Cooling: []part.Piece{
			{Key: "cooling.fan", Label: "Fan", Depth: 0.045, Mass: 1.1, CGAft: 0.02},
			{Key: "cooling.radiator", Label: "Radiator", Mass: 2, CGAft: 0.06, CGUp: 0.2},
		},
		Drive: []part.Piece{
			{Key: "drive.crank_pulley", Label: "Crank pulley", Mass: 0.4, CGAft: 0.02},
			{Key: "drive.driven_pulley", Label: "Driven pulley", Depth: 0.05, Mass: 1.6, CGAft: 0.02, CGUp: 0.17},
		},
		Propeller:         part.Piece{Key: "propeller", Label: "Propeller", Mass: 0.8, CGAft: 0.015, Depth: 0.04},
		PropellerDiameter: 1.25, AxisOffset: 0.17,
	}
}

func find(t *testing.T, r Result, key string) Item {
	t.Helper()
	for _, it := range r.Items {
		if it.Key == key {
			return it
		}
	}
	t.Fatalf("no item %s", key)
	return Item{}
}

func TestPiecesStandBehindOneAnother(t *testing.T) {
	s := Default()
	r := Build(s, DefaultTank(), sample())
	mount := s.PadDepth + s.FrameDepth + s.MountDepth
	crank := s.ThrustHeight - 0.17
	for _, tc := range []struct {
		key         string
		front, x, z float64
	}{
		{"engine", mount, mount + 0.06, crank + 0.05},
		{"cooling.fan", mount + 0.13, mount + 0.15, crank},
		{"cooling.radiator", mount, mount + 0.06, crank + 0.2},
		{"drive.crank_pulley", mount + 0.175, mount + 0.195, crank},
		{"drive.driven_pulley", mount + 0.175, mount + 0.195, crank + 0.17},
		{"propeller", mount + 0.225, mount + 0.24, s.ThrustHeight},
		{"stack.guard", mount + 0.225 - s.GuardAhead, mount + 0.225 - s.GuardAhead, s.ThrustHeight},
	} {
		it := find(t, r, tc.key)
		if math.Abs(it.Front-tc.front) > 1e-12 || math.Abs(it.X-tc.x) > 1e-12 || math.Abs(it.Z-tc.z) > 1e-12 {
			t.Errorf("%s: front %g x %g z %g, want %g %g %g", tc.key, it.Front, it.X, it.Z, tc.front, tc.x, tc.z)
		}
	}
	for _, tc := range []struct {
		name      string
		got, want float64
	}{
		{"depth", r.Depth, mount + 0.225},
		{"drive depth", r.DriveDepth, 0.225},
		{"overall depth, hub rearmost", r.OverallDepth, 0.265},
		{"tip clearance", r.TipClearance, (s.GuardDiameter - 1.25) / 2},
		{"fuel", r.MassReady - r.MassDry, DefaultTank().FuelMass(745)},
	} {
		if math.Abs(tc.got-tc.want) > 1e-12 {
			t.Errorf("%s = %g, want %g", tc.name, tc.got, tc.want)
		}
	}
	p := sample()
	p.EngineRear = 0.4
	if r := Build(s, DefaultTank(), p); r.OverallDepth != 0.4 {
		t.Errorf("overall depth with the engine rearmost is %g", r.OverallDepth)
	}
}

func TestFuelSinksAsTheTankEmpties(t *testing.T) {
	k := DefaultTank()
	k.Fill = 0.5
	if got, want := k.FuelUp(), k.Up-k.Height/4; math.Abs(got-want) > 1e-12 {
		t.Errorf("half full: %g, want %g", got, want)
	}
	k.Fill = 1
	if k.FuelUp() != k.Up {
		t.Errorf("full: %g, want %g", k.FuelUp(), k.Up)
	}
}

func TestTipClearanceVerdicts(t *testing.T) {
	for _, tc := range []struct {
		name     string
		diameter float64
		want     reading.Verdict
	}{
		{"roomy", 1.25, reading.Holds},
		{"inside the margin", 1.275, reading.Thin},
		{"too wide", 1.29, reading.Fails},
		{"wider than the guard", 1.45, reading.Fails},
	} {
		p := sample()
		p.PropellerDiameter = tc.diameter
		c := Build(Default(), DefaultTank(), p).Checks(nil, 0.1)
		if c[0].Verdict != tc.want {
			t.Errorf("%s: %s, want %s", tc.name, c[0].Verdict, tc.want)
		}
	}
}

func all(s *Spec, k *Tank) []param.Section {
	return append(s.Sections(), param.Section{Key: "tank", Params: k.Params()})
}

func TestDeclarations(t *testing.T) {
	s, k := Default(), DefaultTank()
	seen := map[string]bool{}
	for _, sec := range all(&s, &k) {
		for _, p := range sec.Params {
			if err := p.Set(p.Editable()); err != nil {
				t.Error(err)
			}
			if path := sec.Path(p); seen[path] {
				t.Errorf("%s is declared twice", path)
			} else {
				seen[path] = true
			}
			if utf8.RuneCountInString(p.Label) > 34 {
				t.Errorf("label %q is too long", p.Label)
			}
		}
	}
	keys := map[string]bool{}
	for _, r := range (Result{}).Readings(nil) {
		if keys[r.Key] || utf8.RuneCountInString(r.Label) > 34 || r.Method == "" || r.Origin == "" {
			t.Errorf("reading %+v", r)
		}
		keys[r.Key] = true
	}
}

func drawStack(t *rapid.T) (Spec, Tank, Parts) {
	s, k := Default(), DefaultTank()
	for _, sec := range all(&s, &k) {
		for _, p := range sec.Params {
			anyspec.One(t, sec.Path(p), p)
		}
	}
	piece := rapid.Custom(func(t *rapid.T) part.Piece {
		f := func(lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, "piece") }
		return part.Piece{
			Depth: f(0, 0.3), Mass: f(0, 30), CGAft: f(-0.1, 0.3), CGUp: f(-0.3, 0.3),
			PitchInertia: f(0, 1), YawInertia: f(0, 1),
		}
	})
	return s, k, Parts{
		FuelDensity: rapid.Float64Range(600, 900).Draw(t, "fuel density"),
		Engine:      piece.Draw(t, "engine"), EngineRear: rapid.Float64Range(0, 0.6).Draw(t, "rear"),
		Cooling: rapid.SliceOfN(piece, 0, 2).Draw(t, "cooling"), Drive: rapid.SliceOfN(piece, 0, 6).Draw(t, "drive"),
		Propeller: piece.Draw(t, "propeller"), PropellerDiameter: rapid.Float64Range(0.5, 2).Draw(t, "diameter"),
		AxisOffset: rapid.Float64Range(-0.3, 0.3).Draw(t, "offset"),
	}
}

func TestMomentsBalanceAboutTheCentreOfGravity(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := Build(drawStack(t))
		mass, x, z := 0.0, 0.0, 0.0
		for _, it := range r.Items {
			mass += it.Mass
			x += it.Mass * (it.X - r.CGAft)
			z += it.Mass * (it.Z - r.CGUp)
		}
		if math.Abs(x) > 1e-9 || math.Abs(z) > 1e-9 || math.Abs(mass-r.MassReady) > 1e-9 {
			t.Fatalf("first moments %g and %g kg·m, mass %g against %g", x, z, mass, r.MassReady)
		}
		if r.MassDry > r.MassReady || r.OverallDepth < r.DriveDepth || r.Depth < r.DriveDepth {
			t.Fatalf("out of order: %+v", r)
		}
		for _, rd := range r.Readings(nil) {
			if !rd.Known() {
				t.Fatalf("%s: %s", rd.Key, rd.Why)
			}
		}
	})
}

func TestInertiaFollowsParallelAxes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := Build(drawStack(t))
		own, _ := inertia(r.Items, r.CGAft, r.CGUp)
		aft, up := r.CGAft-r.HangAft, r.CGUp-r.HangUp
		want := own + r.MassReady*(aft*aft+up*up)
		if math.Abs(r.PitchInertia-want) > 1e-9*(1+want) {
			t.Fatalf("pitch inertia %g, want %g", r.PitchInertia, want)
		}
	})
}

func TestBuildAllocatesItsItemsOnly(t *testing.T) {
	s, k, p := Default(), DefaultTank(), sample()
	if n := testing.AllocsPerRun(100, func() { sink = Build(s, k, p) }); n > 1 {
		t.Errorf("%g allocations", n)
	}
}

var sink Result

func BenchmarkBuild(b *testing.B) {
	s, k, p := Default(), DefaultTank(), sample()
	b.ReportAllocs()
	for b.Loop() {
		sink = Build(s, k, p)
	}
}
