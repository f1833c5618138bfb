package gear

import (
	"math"
	"reflect"
	"slices"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"pgregory.net/rapid"
)

func wish() TeethWish {
	s := Default()
	return TeethWish{Ratio: 3, Tolerance: 0.02, ShiftSum: 0.4, Modules: []float64{2e-3}, Least: 12, Most: 40, CrankSpeed: 8500 * rpm, Like: s}
}

func search(t testing.TB, w TeethWish) []TeethCandidate {
	t.Helper()
	found, err := SearchTeeth(w)
	if err != nil {
		t.Fatal(err)
	}
	return found
}

// The pair at 80 mm of the published cases: 19 and 57, module 2, 15 degrees.
// Source: ISO 21771, worked by an independent script.
func TestSearchMeetsTheCentreDistance(t *testing.T) {
	w := wish()
	w.CentreDistance, w.CentreTolerance = param.Known(80e-3), 0.1e-3
	found := search(t, w)
	i := slices.IndexFunc(found, func(c TeethCandidate) bool { return c.PinionTeeth == 19 && c.WheelTeeth == 57 })
	if i < 0 {
		t.Fatalf("19 and 57 are not among %d pairs", len(found))
	}
	c := found[i]
	if math.Abs(c.ShiftSum-0.6964) > 5e-5 || math.Abs(c.CentreDistance-80e-3) > 1e-9 || c.CommonFactor != 19 || c.Score < 1 ||
		math.Abs(c.MeshFrequency-19*8500/60.0) > 1e-9 || c.RatioError != 0 {
		t.Errorf("%+v", c)
	}
	if found[0].CommonFactor != 1 {
		t.Errorf("the best pair shares a factor: %+v", found[0])
	}
}

// Every pair from 12 pinion teeth for 2.9 within 2 % at 80 mm, helix 15 degrees,
// and for 54 over 19 at 76 mm, spur: teeth, module, sum of shifts, pinion shift,
// contact ratio and thinner tip. Source: ISO 21771, all pairs tried one by one by
// an independent script.
func TestSearchFindsWhatAScriptFinds(t *testing.T) {
	for _, tc := range []struct {
		ratio, centre, helix float64
		pairs                [][7]float64
	}{
		{2.9, 80e-3, 15, [][7]float64{{26, 75, 1.5, 1.1219, 0.48, 1.4224, 0.992}, {26, 76, 1.5, 0.5527, 0.35, 1.5158, 0.9722},
			{19, 56, 2, 1.2918, 0.56, 1.2998, 1.2256}, {20, 57, 2, 0.1436, 0.31, 1.5145, 1.1877},
			{20, 58, 2, -0.3631, 0.23, 1.5935, 1.2797}, {16, 46, 2.5, -0.0926, 0.33, 1.4948, 1.3321}}},
		{54.0 / 19, 76e-3, 0, [][7]float64{{26, 73, 1.5, 1.2629, 0.53, 1.4479, 0.9758}, {26, 74, 1.5, 0.6988, 0.4, 1.5532, 0.9376},
			{26, 75, 1.5, 0.1687, 0.29, 1.645, 0.947}, {19, 55, 2, 1.0936, 0.53, 1.3814, 1.1401},
			{20, 56, 2, 0, 0.31, 1.604, 1.1355}, {16, 45, 2.5, -0.0987, 0.35, 1.5589, 1.2308}}},
	} {
		w := wish()
		w.Ratio, w.CentreDistance, w.Like.HelixAngle, w.Modules = tc.ratio, param.Known(tc.centre), tc.helix*degree, ModulesNear(2e-3)
		found := search(t, w)
		if len(found) != len(tc.pairs) {
			t.Errorf("%d pairs for %g, want %d", len(found), tc.ratio, len(tc.pairs))
		}
		for _, want := range tc.pairs {
			i := slices.IndexFunc(found, func(c TeethCandidate) bool {
				return float64(c.PinionTeeth) == want[0] && float64(c.WheelTeeth) == want[1] && c.Module == want[2]/1000
			})
			if i < 0 {
				t.Errorf("%g and %g are missing", want[0], want[1])
				continue
			}
			c := found[i]
			got := [4]float64{c.ShiftSum, c.PinionShift, c.ContactRatio, 1000 * math.Min(c.TipThickness[0], c.TipThickness[1])}
			for k, g := range got {
				if math.Abs(g-want[3+k]) > 6e-5 {
					t.Errorf("%g and %g: figure %d is %g, want %g", want[0], want[1], k, g, want[3+k])
				}
			}
		}
	}
}

func TestNoPairWithinTheShiftsAtThatCentreDistance(t *testing.T) {
	w := wish()
	w.Least, w.Most, w.CentreDistance, w.CentreTolerance = 19, 19, param.Known(95e-3), 0.1e-3
	if found := search(t, w); len(found) != 0 {
		t.Errorf("%+v", found[0])
	}
	// 19 and 57 reach 81.22 mm at the greatest sum of shifts.
	w.CentreDistance, w.CentreTolerance, w.Tolerance = param.Known(81.4e-3), 0.5e-3, 0
	if found := search(t, w); len(found) != 1 || !(found[0].CentreError < 0 && found[0].CentreError > -0.5e-3) || found[0].ShiftSum != mostShiftSum {
		t.Errorf("%+v", found)
	}
	w.CentreTolerance = 0.01e-3
	if found := search(t, w); len(found) != 0 {
		t.Errorf("%+v", found)
	}
}

// Whatever is listed passes every check of the teeth when it is built.
func TestFoundPairsCanBeBuilt(t *testing.T) {
	geometric := []string{"gear.contact_ratio", "gear.tip_thickness", "gear.bottom_clearance", "gear.undercut_pinion", "gear.undercut_wheel",
		"gear.interference_pinion", "gear.interference_wheel"}
	seen := 0
	rapid.Check(t, func(t *rapid.T) {
		w := wish()
		w.Ratio = rapid.Float64Range(1.2, 5).Draw(t, "ratio")
		w.ShiftSum = rapid.Float64Range(-0.3, 1).Draw(t, "sum")
		w.Like.HelixAngle = rapid.SampledFrom([]float64{0, 0.2, 0.4}).Draw(t, "helix")
		w.Modules = ModulesNear(rapid.Float64Range(1e-3, 5e-3).Draw(t, "module"))
		if rapid.Bool().Draw(t, "centre") {
			w.CentreDistance, w.CentreTolerance = param.Known(rapid.Float64Range(40e-3, 200e-3).Draw(t, "centre distance")), 0.2e-3
		}
		found, err := SearchTeeth(w)
		must(t, err)
		if len(found) == 0 {
			return
		}
		c := found[rapid.IntRange(0, len(found)-1).Draw(t, "which")]
		seen++
		s := c.In(w.Like)
		s.PinionBearings, s.DipDepth = "6002", 0
		g, err := New(s, rated())
		must(t, err)
		m := &g.geometry
		if math.Abs(m.Ratio()/w.Ratio-1) > w.Tolerance+1e-9 || math.Abs(m.CentreDistance-c.CentreDistance) > 1e-9 ||
			w.CentreDistance.Known && math.Abs(m.CentreDistance-w.CentreDistance.Value) > w.CentreTolerance+1e-9 {
			t.Fatalf("%+v is not what was asked for", c)
		}
		for _, k := range g.Examine(rated(), part.Train{}).Checks(nil, 0) {
			if slices.Contains(geometric, k.Key) && k.Verdict != reading.Holds {
				t.Fatalf("%+v: %s %s", c, k.Key, k.Text())
			}
		}
	})
	if seen == 0 {
		t.Error("nothing was found at all")
	}
}

func TestSearchIsOrderedAndRepeats(t *testing.T) {
	w := wish()
	w.Modules = ModulesNear(2e-3)
	a, b := search(t, w), search(t, w)
	if !reflect.DeepEqual(a, b) || len(a) < 20 {
		t.Fatalf("%d and %d pairs", len(a), len(b))
	}
	for i := 1; i < len(a); i++ {
		if a[i].Score < a[i-1].Score {
			t.Fatalf("%+v comes after %+v", a[i], a[i-1])
		}
	}
}

// Both roots slide alike, and equal gears share their shifts alike.
func TestSplitBalancesTheSliding(t *testing.T) {
	for _, c := range search(t, wish()) {
		if d := c.Sliding[0] - c.Sliding[1]; math.Abs(d) > 0.12 || c.Sliding[0] < 0 {
			t.Errorf("%d and %d: %v", c.PinionTeeth, c.WheelTeeth, c.Sliding)
		}
	}
	s := Default()
	s.PinionTeeth, s.WheelTeeth = 25, 25
	g, ok := s.split(0.5)
	if !ok || math.Abs(g.Pinion.Shift-0.25) > 0.011 {
		t.Errorf("%v, %+v", ok, g.Pinion)
	}
}

// 19 and 57, module 2, spur, 0.3 and 0: the roll lengths at the ends of contact
// by hand. Source: geometry, worked by an independent script.
func TestSpecificSliding(t *testing.T) {
	s := Default()
	s.HelixAngle, s.WheelTeeth, s.PinionShift, s.WheelShift = 0, 57, 0.3, 0
	g := solve(t, s)
	got := g.specificSliding()
	for i, want := range slidingByScript {
		if math.Abs(got[i]-want) > 5e-5 {
			t.Errorf("gear %d: %g, want %g", i, got[i], want)
		}
	}
}

func TestWishesThatCannotBeLookedFor(t *testing.T) {
	for name, change := range map[string]func(*TeethWish){
		"ratio":            func(w *TeethWish) { w.Ratio = 0.5 },
		"no number":        func(w *TeethWish) { w.Ratio = math.NaN() },
		"tolerance":        func(w *TeethWish) { w.Tolerance = 0.5 },
		"centre":           func(w *TeethWish) { w.CentreDistance = param.Known(2) },
		"centre tolerance": func(w *TeethWish) { w.CentreTolerance = -1 },
		"no module":        func(w *TeethWish) { w.Modules = nil },
		"module":           func(w *TeethWish) { w.Modules = []float64{2} },
		"teeth":            func(w *TeethWish) { w.Least = 50 },
	} {
		w := wish()
		change(&w)
		if _, err := SearchTeeth(w); err == nil {
			t.Errorf("%s: is looked for", name)
		}
	}
}

func TestModulesNear(t *testing.T) {
	if got := ModulesNear(2e-3); !reflect.DeepEqual(got, []float64{1.5e-3, 2e-3, 2.5e-3}) {
		t.Errorf("%v", got)
	}
	if got := ModulesNear(2.2e-3); !reflect.DeepEqual(got, []float64{2e-3, 2.2e-3, 2.5e-3, 3e-3}) {
		t.Errorf("%v", got)
	}
	if got := ModulesNear(1.75e-3); !reflect.DeepEqual(got, []float64{1.25e-3, 1.5e-3, 1.75e-3, 2e-3}) {
		t.Errorf("%v", got)
	}
}

func TestSoftTeethMayEndThinner(t *testing.T) {
	s := Default()
	hard := leastTipOf(&s)
	s.PinionMaterial, s.WheelMaterial = HardenedAlloy, HardenedAlloy
	if got := leastTipOf(&s); got != 0.2 || hard != 0.4 {
		t.Errorf("%g and %g", got, hard)
	}
}

func BenchmarkSearchTeeth(b *testing.B) {
	w := wish()
	w.Modules = ModulesNear(2e-3)
	for b.Loop() {
		if _, err := SearchTeeth(w); err != nil {
			b.Fatal(err)
		}
	}
}

// of the pinion and the wheel.
var slidingByScript = [2]float64{1.7885, 1.3434}

// Each part of the score by itself, full at its end and half in the middle.
func TestScoreAddsItsParts(t *testing.T) {
	w := wish()
	w.CentreDistance, w.CentreTolerance = param.Known(80e-3), 0.2e-3
	good := TeethCandidate{Module: 2e-3, ContactRatio: 1.5, TipThickness: [2]float64{1.2e-3, 1.5e-3}, CommonFactor: 1}
	for _, tc := range []struct {
		name   string
		change func(*TeethCandidate)
		want   float64
	}{
		{"faultless", func(*TeethCandidate) {}, 0},
		{"ratio", func(c *TeethCandidate) { c.RatioError = -0.01 }, 0.5},
		{"centre distance", func(c *TeethCandidate) { c.CentreError = -0.1e-3 }, 0.5},
		{"shared factor", func(c *TeethCandidate) { c.CommonFactor = 3 }, 1},
		{"contact ratio", func(c *TeethCandidate) { c.ContactRatio = 1.3 }, 0.5},
		{"tip", func(c *TeethCandidate) { c.TipThickness[0] = 0.9e-3 }, 0.5},
		{"all", func(c *TeethCandidate) {
			*c = TeethCandidate{Module: 2e-3, RatioError: 0.02, CentreError: 0.2e-3, CommonFactor: 2, ContactRatio: 1.2}
		}, 5},
	} {
		c := good
		tc.change(&c)
		if got := w.score(&c, leastTip); math.Abs(got-tc.want) > 1e-9 {
			t.Errorf("%s: %g, want %g", tc.name, got, tc.want)
		}
	}
}
