package gear

import (
	"cmp"
	"math"
	"strings"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"pgregory.net/rapid"
)

func spur() Spec {
	s := Default()
	s.HelixAngle, s.PinionTeeth, s.WheelTeeth = 0, 19, 56
	return s
}

func strengthOf(t testing.TB, change func(*Spec)) Strength {
	t.Helper()
	s := Default()
	change(&s)
	r := newGear(t, s).Examine(rated(), trainOf(1))
	if r.Strength.Why != "" {
		t.Fatal(r.Strength.Why)
	}
	return r.Strength
}

func TestWhatWeakensTeeth(t *testing.T) {
	base := strengthOf(t, func(*Spec) {})
	for _, tc := range []struct {
		name   string
		change func(*Spec)
	}{
		{"coarser class", func(s *Spec) { s.AccuracyClass = 8 }},
		{"larger application factor", func(s *Spec) { s.ApplicationFactor = 2.5 }},
		{"longer life", func(s *Spec) { s.Life *= 10 }},
		{"lower quality", func(s *Spec) { s.MaterialQuality = ML }},
		{"no crowning", func(s *Spec) { s.Crowned = false }},
		{"softer steel", func(s *Spec) {
			s.PinionMaterial, s.PinionHardness, s.WheelMaterial, s.WheelHardness = HardenedAlloy, 300, HardenedAlloy, 280
		}},
		{"overhung", func(s *Spec) { s.PinionPlace, s.PinionOffset = Overhung, 15e-3 }},
		{"narrower", func(s *Spec) { s.FaceWidth = 14e-3 }},
	} {
		worse := strengthOf(t, tc.change)
		if !(worse.PittingSafety() < base.PittingSafety() && worse.BendingSafety() < base.BendingSafety()) {
			t.Errorf("%s: pitting %g after %g, breakage %g after %g", tc.name,
				worse.PittingSafety(), base.PittingSafety(), worse.BendingSafety(), base.BendingSafety())
		}
	}
	rough := strengthOf(t, func(s *Spec) { s.Roughness = 2e-6 })
	if rough.PittingSafety() >= base.PittingSafety() || rough.BendingSafety() != base.BendingSafety() {
		t.Error("rough flanks pit sooner and break no sooner")
	}
	if r := strengthOf(t, func(s *Spec) { s.RootRoughness = 30e-6 }); r.BendingSafety() >= base.BendingSafety() {
		t.Error("rough roots break sooner")
	}
	if c := strengthOf(t, func(s *Spec) { s.CaseCore = Core30 }); c.BendingSafety() <= base.BendingSafety() {
		t.Error("a strong core helps the root")
	}
}

// The mesh is far below resonance here, so that more torque can only be worse.
func TestSafetyFallsWithPower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Default()
		s.AccuracyClass = rapid.IntRange(4, 9).Draw(t, "class")
		s.HelixAngle = rapid.Float64Range(0, 0.4).Draw(t, "helix")
		g, err := New(s, rated())
		must(t, err)
		at := rated()
		at.CrankSpeed = rapid.Float64Range(300, 1000).Draw(t, "speed")
		at.Power = rapid.Float64Range(2000, 30000).Draw(t, "power")
		less := g.Examine(at, part.Train{}).Strength
		at.Power *= rapid.Float64Range(1.01, 2).Draw(t, "more")
		more := g.Examine(at, part.Train{}).Strength
		if less.Why != "" || less.Load.Resonance > 0.5 {
			t.Skip()
		}
		if !(more.PittingSafety() < less.PittingSafety() && more.BendingSafety() < less.BendingSafety()) {
			t.Fatalf("pitting %g then %g, breakage %g then %g", less.PittingSafety(), more.PittingSafety(), less.BendingSafety(), more.BendingSafety())
		}
	})
}

func TestLoadFactorsAreAtLeastOne(t *testing.T) {
	rated := 0
	rapid.Check(t, func(t *rapid.T) {
		s := ratableSpec(t)
		at := randomDuty(t)
		g, err := New(s, at)
		if err != nil {
			return
		}
		r := g.Examine(at, trainOf(rapid.Float64Range(0, 3).Draw(t, "share"))).Strength
		if r.Why != "" {
			return
		}
		rated++
		k := r.Load
		for name, v := range map[string]float64{"application": k.Application, "dynamic": k.Dynamic, "simple": cmp.Or(k.DynamicSimple, 1),
			"face": k.Face, "face, root": k.FaceRoot, "transverse": k.Transverse, "transverse, root": k.TransverseRoot} {
			if !(v >= 1) || math.IsInf(v, 0) {
				t.Fatalf("%s factor is %g", name, v)
			}
		}
		if !(r.PittingSafety() > 0 && r.BendingSafety() > 0) {
			t.Fatalf("safeties %g and %g", r.PittingSafety(), r.BendingSafety())
		}
	})
	if rated == 0 {
		t.Error("no random design was rated")
	}
	t.Logf("%d random designs were rated", rated)
}

func TestDynamicFactorHasNoStepAboveResonance(t *testing.T) {
	g := newGear(t, Default())
	k := g.teeth.loadFactors(&g.geometry, 900, 1.75, 900)
	per := 900 / k.Resonance
	for _, n := range []float64{1.15, 1.5} {
		below := g.teeth.loadFactors(&g.geometry, 900, 1.75, per*(n-1e-9)).Dynamic
		above := g.teeth.loadFactors(&g.geometry, 900, 1.75, per*(n+1e-9)).Dynamic
		if math.Abs(above-below) > 1e-6 {
			t.Errorf("at %g times resonance the factor steps from %g to %g", n, below, above)
		}
	}
}

func TestWhatIsNotRatedSaysWhy(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Spec)
		at     part.Duty
		train  part.Train
		says   string
	}{
		{"hardness not listed", func(s *Spec) { s.WheelHardness = 500 }, rated(), trainOf(1), "Wheel hardness"},
		{"no pulsation known", func(s *Spec) { s.LoadFactor = FromPulsation }, rated(), part.Train{}, "not known"},
		{"standing", func(*Spec) {}, part.Duty{AirTemperature: 290, AirDensity: 1.2}, trainOf(1), "no torque"},
		{"pinion outside its bearings", func(s *Spec) { s.PinionOffset = 30e-3 }, rated(), trainOf(1), "Pinion offset"},
		{"thin rim", func(s *Spec) { s.WheelTeeth, s.PinionTeeth, s.PinionBearings = 19, 18, "6003" }, rated(), trainOf(1), "rim"},
	} {
		s := Default()
		tc.change(&s)
		g, err := New(s, rated())
		if err != nil {
			t.Fatalf("%s: %v", tc.name, err)
		}
		r := g.Examine(tc.at, tc.train)
		x, _ := reading.Find(r.Readings(nil), "gear.pitting_safety")
		if x.Known() || !strings.Contains(x.Why, tc.says) {
			t.Errorf("%s: %s, %s", tc.name, x, x.Why)
		}
		for _, c := range r.Checks(nil, 0.1) {
			if (c.Key == "gear.pitting" || c.Key == "gear.bending") && c.Verdict != reading.NotRated {
				t.Errorf("%s: %s %s", tc.name, c.Key, c.Verdict)
			}
		}
	}
}

func TestSoftWheelGainsFromAHardPinion(t *testing.T) {
	pair := func(s *Spec) {
		s.WheelMaterial, s.WheelHardness = HardenedAlloy, 280
	}
	s := strengthOf(t, pair)
	if s.Flank[0].Hard != 1 || s.Flank[1].Hard <= 1 {
		t.Errorf("work hardening factors %g and %g", s.Flank[0].Hard, s.Flank[1].Hard)
	}
}

func TestSecondRatingIsNear(t *testing.T) {
	s := spur()
	r := newGear(t, s).Examine(rated(), trainOf(1)).Strength
	if r.Cross.Why != "" || r.Cross.BendingWhy != "" {
		t.Fatal(r.Cross.Why, r.Cross.BendingWhy)
	}
	for i := range 2 {
		p, b := r.Cross.Pitting[i]/r.Flank[i].Safety, r.Cross.Bending[i]/r.Root[i].Safety
		t.Logf("gear %d: AGMA over ISO, pitting %.3f, breakage %.3f", i, p, b)
		if p < 0.7 || p > 1.5 || b < 0.5 || b > 1.5 {
			t.Errorf("gear %d: pitting %g, breakage %g times the first rating", i, p, b)
		}
	}
}

func TestFirstToGiveOut(t *testing.T) {
	for _, tc := range []struct {
		pitting, bending [2]float64
		roots            bool
		want             mode
	}{
		{[2]float64{1.2, 1.3}, [2]float64{3, 3}, true, mode{0, false}},
		{[2]float64{1.3, 1.2}, [2]float64{3, 3}, true, mode{1, false}},
		{[2]float64{1.5, 1.5}, [2]float64{2, 1.6}, true, mode{1, true}},
		{[2]float64{1.5, 1.6}, [2]float64{2, 1.6}, false, mode{0, false}},
	} {
		if got := first(tc.pitting, tc.bending, 1.1, 1.5, tc.roots); got != tc.want {
			t.Errorf("%+v: %+v", tc, got)
		}
	}
}

// At 17 m/s a soft pair wears in far less than a slow one would.
func TestFastSoftTeethWearInLess(t *testing.T) {
	m, ok := newToothMaterial(Normalized, MQ, Core25, 150)
	if !ok {
		t.Fatal("no such steel")
	}
	for _, tc := range []struct{ speed, want float64 }{{4, 95 * 320 / m.contact}, {6, 25600 / m.contact}, {17, 12800 / m.contact}} {
		if got, want := m.runInLead(95, tc.speed), min(tc.want, 95); math.Abs(got-want) > 1e-9 {
			t.Errorf("at %g m/s %g µm, want %g", tc.speed, got, want)
		}
	}
}

func TestPinionsThatCannotBeHeldSo(t *testing.T) {
	for _, tc := range []struct {
		name         string
		place        Place
		span, offset float64
		rated        bool
	}{
		{"overhung, without overhang", Overhung, 45e-3, 0, false}, {"overhung", Overhung, 45e-3, 17e-3, true},
		{"between bearings closer than the face", Between, 10e-3, 0, false}, {"between", Between, 45e-3, 5e-3, true},
		{"far off the middle", Between, 60e-3, 19e-3, false},
	} {
		s := Default()
		s.PinionPlace, s.PinionSpan, s.PinionOffset = tc.place, param.Known(tc.span), tc.offset
		if why := newGear(t, s).Examine(rated(), part.Train{}).Strength.Why; (why == "") != tc.rated {
			t.Errorf("%s: %q", tc.name, why)
		}
	}
}

// Resonance starts earlier under a low load.
func TestResonanceIsSeenAtLowLoad(t *testing.T) {
	for _, tc := range []struct {
		ratio, from float64
		want        reading.Verdict
	}{{0.84, 0.80, reading.Thin}, {0.84, 0.85, reading.Holds}, {1.1, 0.85, reading.Thin}, {1.2, 0.85, reading.Holds}} {
		r := Result{}
		r.Strength.Load.Resonance, r.Strength.Load.resonant = tc.ratio, tc.from
		if got := r.resonanceCheck().Verdict; got != tc.want {
			t.Errorf("%g from %g: %s, want %s", tc.ratio, tc.from, got, tc.want)
		}
	}
}
