package cooling

import (
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/part"
	"backspan/model/reading"
)

func draw(t *rapid.T) Spec {
	s := Default()
	anyspec.Set(t, append(s.Params(), s.HeadParams()...), nil)
	return s
}

func TestCost(t *testing.T) {
	for _, tc := range []struct {
		kind                 Kind
		taken, mass, depth   float64
		pieces               int
		stackDepthOfThePiece float64
	}{
		{FreeAir, 0, 0, 0, 0, 0},
		{Baffled, 0, 0.15, 0, 1, 0},
		{Fan, 200, 1.1, 0.045, 1, 0.045},
		{Liquid, 30, 2.2, 0, 1, 0},
	} {
		t.Run(string(tc.kind), func(t *testing.T) {
			s := Default()
			s.Kind = tc.kind
			if got, want := Cost(s, 10e3), (Result{PowerTaken: tc.taken, Mass: tc.mass, Depth: tc.depth, Kind: tc.kind}); got != want {
				t.Errorf("Cost = %+v, want %+v", got, want)
			}
			ps := s.AppendPieces(nil)
			if len(ps) != tc.pieces || part.Mass(ps) != tc.mass || part.Depth(ps) != tc.stackDepthOfThePiece {
				t.Errorf("pieces are %+v", ps)
			}
		})
	}
}

func TestParametersOfOtherKindsAreHidden(t *testing.T) {
	for kind, own := range map[Kind][]string{
		FreeAir: nil, Baffled: {"baffle_mass", "baffle_gain"},
		Fan:    {"baffle_gain", "fan_depth", "fan_mass", "fan_power_share", "fan_pressure", "fan_efficiency"},
		Liquid: {"liquid_mass", "radiator_face", "pump_power_share"},
	} {
		s := Default()
		s.Kind = kind
		shown := map[string]bool{}
		for _, p := range s.Params() {
			shown[p.Key] = !p.Hidden
		}
		for _, key := range []string{"baffle_mass", "baffle_gain", "fan_depth", "fan_mass", "fan_power_share", "fan_pressure", "fan_efficiency", "liquid_mass", "radiator_face", "pump_power_share"} {
			want := false
			for _, k := range own {
				want = want || k == key
			}
			if shown[key] != want {
				t.Errorf("%s: %s is shown: %v", kind, key, shown[key])
			}
		}
	}
}

func TestTemperatureIsMissingWithAReason(t *testing.T) {
	for _, r := range [...]Result{{}, Cost(Default(), 12e3)} {
		got, ok := reading.Find(r.Readings(nil), "cooling.head_temperature")
		if !ok || got.Known() || got.Why == "" {
			t.Errorf("head temperature is %+v", got)
		}
		if c := r.Checks(nil, 0.1); c[0].Verdict != reading.NotRated || c[0].Why == "" {
			t.Errorf("check is %+v", c)
		}
	}
}

func TestDeclarations(t *testing.T) {
	s := Default()
	for _, p := range append(s.Params(), s.HeadParams()...) {
		if err := p.Set(p.Editable()); err != nil {
			t.Error(err)
		}
		if utf8.RuneCountInString(p.Label) > 34 || p.Guidance == "" {
			t.Errorf("%s: label %q, help %q", p.Key, p.Label, p.Guidance)
		}
	}
	for _, r := range Work(s, standing()).Readings(nil) {
		if utf8.RuneCountInString(r.Label) > 34 {
			t.Errorf("%s: label %q is too long", r.Key, r.Label)
		}
	}
}

func TestEveryCoolingIsFiniteAndPiecesAgreeWithCost(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, d := draw(t), drawDuty(t)
		r, ps := Work(s, d), s.AppendPieces(nil)
		if part.Mass(ps) != r.Mass || part.Depth(ps) != r.Depth {
			t.Fatalf("pieces %+v against %+v", ps, r)
		}
		if r.PowerTaken < 0 || r.PowerTaken > d.Power {
			t.Fatalf("takes %g W of %g W", r.PowerTaken, d.Power)
		}
		const round = 1e-9
		if b := r.Head; !(b.Low <= b.Mid+round && b.Mid <= b.High+round && b.High <= s.GasTemperature+1e-9 && b.Low >= d.AirTemperature-1e-9) {
			t.Fatalf("the band is %+v", b)
		}
		for _, x := range r.Readings(nil) {
			anyspec.Finite(t, x.Key, x.Value)
		}
		for _, x := range r.Checks(nil, 0.1) {
			anyspec.Finite(t, x.Key, x.Value)
			anyspec.Finite(t, x.Key+" margin", x.Margin)
		}
	})
}

func BenchmarkWork(b *testing.B) {
	for _, kind := range []Kind{FreeAir, Fan, Liquid} {
		b.Run(string(kind), func(b *testing.B) {
			s, d := Default(), standing()
			s.Kind = kind
			b.ReportAllocs()
			for b.Loop() {
				sink = Work(s, d)
			}
		})
	}
}

var sink Result
