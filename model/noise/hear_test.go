package noise

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/propeller"
	"backspan/model/reading"
	"backspan/model/unit"
)

func TestDefaults(t *testing.T) {
	s, l := Default(), DefaultListener()
	anyspec.HoldDefaults(t, s.Params())
	anyspec.HoldDefaults(t, l.Params())
}

func TestAZeroResultListsTheKeys(t *testing.T) {
	rs := Result{}.Readings(nil)
	for _, key := range []string{"noise.level_at_150m", "noise.tones", "noise.vortex", "noise.engine", "noise.plain_level", "noise.level_at_distance",
		"noise.blade_passing", "noise.loudest_tone", "noise.level_at_ear", "noise.level_protected", "noise.daily_exposure", "noise.permitted_time"} {
		if r, ok := reading.Find(rs, key); !ok || r.Method == "" || r.Origin == "" || len([]rune(r.Label)) > 34 {
			t.Errorf("%s: %+v", key, r)
		}
	}
	if len(rs) != 12 {
		t.Errorf("%d readings", len(rs))
	}
	if len(Result{}.Checks(nil, 0.1)) != 3 {
		t.Error("a check is missing")
	}
}

// Two equal sources are 3.01 dB louder than one.
func TestEngineAddsInEnergy(t *testing.T) {
	in := worked(t)
	alone := Hear(&in)
	in.EngineLevel, in.EngineDistance = param.Known(alone.At150), far150
	both := Hear(&in)
	within(t, "dB", both.At150-alone.At150, 3.0103, 1e-4)
	within(t, "engine", both.Engine.Value, alone.At150, 1e-9)
	for _, tc := range []struct {
		r    Result
		says string
	}{{alone, "propeller only"}, {both, "propeller and engine"}} {
		if r, _ := reading.Find(tc.r.Readings(nil), "noise.level_at_150m"); !strings.Contains(r.Method, tc.says) {
			t.Errorf("%q does not say %q", r.Method, tc.says)
		}
	}
	if r, _ := reading.Find(alone.Readings(nil), "noise.engine"); r.Known() || r.Why != noEngine {
		t.Errorf("%+v", r)
	}
}

// Reflected sound adds 3 dB in energy and 6 dB in pressure, and only far off;
// the allowance for body and cage belongs to the tones far off.
func TestGroundAndCage(t *testing.T) {
	in := worked(t)
	in.PusherExcess = 0
	free := Hear(&in)
	within(t, "parts", free.At150, level(square(free.Tones)+square(free.Vortex)), 1e-9)
	for ground, gain := range map[Ground]float64{FreeField: 0, SoftField: 3.0103, HardField: 6.0206} {
		in.Ground = ground
		r := Hear(&in)
		within(t, string(ground), r.At150-free.At150, gain, 1e-4)
		within(t, "ear", r.AtEar, free.AtEar, 0)
		within(t, "tones", r.Tones, free.Tones, 0)
	}
	in.Ground, in.PusherExcess = FreeField, 10
	r := Hear(&in)
	within(t, "behind the cage", r.At150, level(10*square(free.Tones)+square(free.Vortex)), 1e-9)
	within(t, "ear behind the cage", r.AtEar, free.AtEar, 0)
}

func TestEar(t *testing.T) {
	in := worked(t)
	base := Hear(&in)
	deeper, protected := in, in
	deeper.DiscAft += 0.1
	if r := Hear(&deeper); r.AtEar >= base.AtEar || r.At150 != base.At150 {
		t.Errorf("farther ahead of the disc: %g dB(A), before %g", r.AtEar, base.AtEar)
	}
	forward, near := in, in
	forward.EarAhead += 0.1
	within(t, "leaning forward", Hear(&forward).AtEar, Hear(&deeper).AtEar, 1e-9)
	near.EngineLevel, near.EngineDistance, near.EngineToEar = param.Known(90), 7, 0.7
	within(t, "engine at the ear", Hear(&near).AtEar, level(square(base.AtEar)+square(110)), 1e-9)
	protected.Attenuation = 24
	r := Hear(&protected)
	within(t, "protected", base.AtEar-r.Protected, 24, 1e-9)
	within(t, "one hour of eight", r.Protected-r.Daily, 9.0309, 1e-4)
	within(t, "time", r.Permitted/base.Permitted, 256, 1e-6)
	protected.Attenuation = 40
	within(t, "all day", Hear(&protected).Permitted, day, 0)
}

func TestVerdicts(t *testing.T) {
	for _, tc := range []struct {
		name, key string
		set       func(*Input)
		want      reading.Verdict
	}{
		{"bare ears", "noise.daily_exposure", func(*Input) {}, reading.Thin},
		{"plugs and muffs", "noise.daily_exposure", func(in *Input) { in.Attenuation = 30 }, reading.Holds},
		{"tips too fast", "noise.tip_mach_guide", func(in *Input) { in.TipMach = 0.6 }, reading.Thin},
		{"tips far too fast", "noise.tip_mach_guide", func(in *Input) { in.TipMach = 0.95 }, reading.Thin},
		{"quiet tips", "noise.tip_mach_guide", func(in *Input) { in.TipMach = 0.4 }, reading.Holds},
		{"local rule", "noise.level_at_150m", func(*Input) {}, reading.NotRated},
	} {
		in := worked(t)
		tc.set(&in)
		if c := anyspec.Check(t, Hear(&in).Checks(nil, 0.1), tc.key); c.Verdict != tc.want {
			t.Errorf("%s: %s, %s", tc.name, c.Verdict, c.Text())
		}
	}
}

// Where the series is cut, what is left out is less than a tenth of a decibel.
func TestTheTailIsNegligible(t *testing.T) {
	s := blades(t, 2550, unchanged)
	for _, turns := range []float64{1500, 2550, 3400} {
		s.Speed = unit.RPM.SI(turns)
		var whole sound
		for m := 1; m <= 60; m++ {
			whole.add(s.farHarmonic(m, 1.8), float64(m)*s.passing())
		}
		cut := s.far(1.8)
		within(t, "weighted, dB", 10*math.Log10(whole.weighted/cut.weighted), 0, 0.1)
		within(t, "dB", 10*math.Log10(whole.square/cut.square), 0, 0.1)
	}
}

func TestLoudestToneIsTheStrongestHarmonic(t *testing.T) {
	for _, n := range []int{2, 3, 6} {
		in := worked(t)
		in.Source = blades(t, 2900, func(p *propeller.Spec) { p.Blades = n })
		strongest, which := 0.0, 0
		for m := 1; m <= 20; m++ {
			f := float64(m*n) * 2900 / 60
			if p := in.farHarmonic(m, in.Direction) * weight(f); p > strongest {
				strongest, which = p, m
			}
		}
		r := Hear(&in)
		within(t, "passing, Hz", r.Passing, float64(n)*2900/60, 1e-9)
		within(t, "loudest, Hz", r.Loudest, float64(which*n)*2900/60, 1e-9)
		if n == 2 && which < 2 {
			t.Error("with two blades a higher harmonic is louder than the first at this speed")
		}
	}
}
