package bearing

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestEverySizeIsWhole(t *testing.T) {
	seen := map[Size]bool{}
	for _, s := range Sizes() {
		b := listed(t, s)
		if seen[s] || b.Designation != s || !(0 < b.Bore && b.Bore < b.Outside) || !(0 < b.StaticRating && b.StaticRating < b.Rating) {
			t.Errorf("%+v", b)
		}
		seen[s] = true
		// The designation ends in a fifth of the bore, 02 and 03 apart.
		bore := map[string]float64{"02": 15, "03": 17}[string(s[2:])]
		if bore == 0 {
			bore = 5 * float64(s[3]-'0')
		}
		if math.Abs(b.Bore*1000-bore) > 1e-9 || b.Mass() <= 0 {
			t.Errorf("%s has a bore of %g mm and a mass of %g kg", s, b.Bore*1000, b.Mass())
		}
	}
	if _, ok := Size("9999").DeepGroove(); ok {
		t.Error("an unlisted size is found")
	}
}

func TestThrustFactorsBeyondTheTable(t *testing.T) {
	for _, tc := range []struct{ relative, e, y float64 }{{0, 0.19, 2.30}, {0.172, 0.19, 2.30}, {6.89, 0.44, 1}, {50, 0.44, 1}} {
		if e, y := ThrustFactors(tc.relative); e != tc.e || y != tc.y {
			t.Errorf("%g: e %g, Y %g", tc.relative, e, y)
		}
	}
}

func TestEquivalentLoadOfRadialLoadIsItself(t *testing.T) {
	b := listed(t, "6005")
	for _, axial := range []float64{0, 100} {
		if p := b.EquivalentLoad(1000, axial, 14); p != 1000 {
			t.Errorf("axial %g: %g", axial, p)
		}
	}
	if p := b.EquivalentLoad(0, 500, 14); p <= 500 {
		t.Errorf("pure thrust of 500 N counts as %g N", p)
	}
}

func TestStaticLoad(t *testing.T) {
	for _, tc := range []struct{ radial, axial, want float64 }{{1000, 0, 1000}, {1000, 2000, 1600}, {0, 600, 300}, {1000, 700, 1000}} {
		if p := StaticLoad(tc.radial, tc.axial); p != tc.want {
			t.Errorf("%g, %g: %g, want %g", tc.radial, tc.axial, p, tc.want)
		}
	}
}

func TestMeanLoad(t *testing.T) {
	for _, tc := range []struct {
		name          string
		loads, shares []float64
		want          float64
	}{
		{"one", []float64{700}, []float64{3}, 700},
		{"two equal", []float64{700, 700}, []float64{1, 9}, 700},
		{"half the time unloaded", []float64{1000, 0}, []float64{0.5, 0.5}, 1000 * math.Cbrt(0.5)},
		{"no load", []float64{0, 0}, []float64{1, 1}, 0},
	} {
		if got := MeanLoad(tc.loads, tc.shares); math.Abs(got-tc.want) > 1e-9 {
			t.Errorf("%s: %g, want %g", tc.name, got, tc.want)
		}
	}
}

func TestLifeFactorJoinsAtItsBranches(t *testing.T) {
	for _, at := range []float64{0.1, 0.4, 1} {
		lo, hi := LifeFactor(at*(1-1e-9), 0.05), LifeFactor(at, 0.05)
		if math.Abs(lo/hi-1) > 0.01 {
			t.Errorf("at a viscosity ratio of %g it jumps from %g to %g", at, lo, hi)
		}
	}
	if LifeFactor(4, 0.05) != LifeFactor(9, 0.05) {
		t.Error("more than four times the viscosity still helps")
	}
}

func TestSpeedLimitAndParameter(t *testing.T) {
	if Oil.SpeedLimit() <= Grease.SpeedLimit() {
		t.Error("oil bears no more than grease")
	}
	if r := listed(t, "6005").ViscosityRatio(2e-5, 0); r != 0 {
		t.Errorf("a film at standstill: %g", r)
	}
}

func TestSeriesSetsTheGreatestThrust(t *testing.T) {
	light, medium := listed(t, "6005"), listed(t, "6305")
	if light.GreatestThrust() != light.StaticRating/4 || medium.GreatestThrust() != medium.StaticRating/2 {
		t.Errorf("%g, %g", light.GreatestThrust(), medium.GreatestThrust())
	}
}

func TestRateCutsOffTheLifeFactor(t *testing.T) {
	b := listed(t, "6204")
	clean := Lubrication{Viscosity: 1e-3, Contamination: 1, LargestFactor: 3}
	r := b.Rate(300, 270, clean, Reliability95)
	if r.LifeFactor != 3 || math.Abs(r.Life/(0.64*3*r.BasicLife)-1) > 1e-12 {
		t.Errorf("%+v", r)
	}
}

func TestSpreadFitsTheBasicLife(t *testing.T) {
	if r := Survival(1); math.Abs(r-0.9) > 0.002 {
		t.Errorf("%g outlive the basic life", r)
	}
	if Survival(0) != 1 || Survival(leastLife) != 1 {
		t.Error("some fail before the least life")
	}
}

func TestMoreOfAnythingBadNeverLastsLonger(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, _ := rapid.SampledFrom(Sizes()).Draw(t, "size").DeepGroove()
		radial, axial := rapid.Float64Range(1, 1e4).Draw(t, "radial"), rapid.Float64Range(0, 5e3).Draw(t, "axial")
		f0 := rapid.Float64Range(12, 16).Draw(t, "f0")
		speed := rapid.Float64Range(0, 1500).Draw(t, "speed")
		l := Lubrication{rapid.Float64Range(1e-6, 5e-4).Draw(t, "viscosity"), rapid.Float64Range(0, 0.3).Draw(t, "contamination"), 3}
		rate := func(load float64) Rating { return b.Rate(load, speed, l, Reliability90) }
		p := b.EquivalentLoad(radial, axial, f0)
		if p < radial || math.IsInf(p, 0) || math.IsNaN(p) {
			t.Fatalf("equivalent load %g of %g radial", p, radial)
		}
		light, heavy := rate(p), rate(1.1*p)
		for _, x := range []float64{light.Life, light.LifeFactor, light.ViscosityRatio, light.BasicLife} {
			if math.IsNaN(x) || math.IsInf(x, 0) || x < 0 {
				t.Fatalf("%+v", light)
			}
		}
		if heavy.Life > light.Life || light.LifeFactor < leastLifeFactor*(1-1e-12) || light.LifeFactor > 3 {
			t.Fatalf("%+v under less, %+v under more", light, heavy)
		}
	})
}

func BenchmarkRate(b *testing.B) {
	x, _ := Size("6005").DeepGroove()
	l := Lubrication{Viscosity: 2e-5, Contamination: 0.2, LargestFactor: 3}
	b.ReportAllocs()
	for b.Loop() {
		x.Rate(x.EquivalentLoad(1000, 600, 14), 270, l, Reliability90)
	}
}
