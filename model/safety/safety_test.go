package safety

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

func TestDefaults(t *testing.T) {
	s := Default()
	anyspec.HoldDefaults(t, s.Params())
}

func TestCautions(t *testing.T) {
	hot := func(c float64) param.Slot { return param.Known(unit.Celsius.SI(c)) }
	for _, tc := range []struct {
		name   string
		change func(*Spec)
		gap    float64
		check  string
		want   reading.Verdict
	}{
		{"hoop stays off", func(*Spec) {}, 0.06, "safety.tip_gap", reading.Holds},
		{"hoop reaches the blades", func(*Spec) {}, 0.02, "safety.tip_gap", reading.Thin},
		{"net far enough", func(*Spec) {}, 0.06, "safety.net_to_blade", reading.Holds},
		{"net close", func(s *Spec) { s.NetToBlade = 0.05 }, 0.06, "safety.net_to_blade", reading.Thin},
		{"an arm passes", func(*Spec) {}, 0.06, "safety.fingers", reading.NotRated},
		{"the widest that is rated", func(s *Spec) { s.Opening = 0.04 }, 0.06, "safety.fingers", reading.Thin},
		{"fingers kept out", func(s *Spec) { s.Opening, s.NetToBlade = 0.01, 0.1 }, 0.06, "safety.fingers", reading.Holds},
		{"slots let the hand farther", func(s *Spec) { s.Opening, s.Shape = 0.01, Slot }, 0.06, "safety.fingers", reading.Thin},
		{"a pressed net", func(s *Spec) { s.Opening, s.NetGive = 0.01, 0.08 }, 0.06, "safety.fingers", reading.Thin},
		{"energy", func(*Spec) {}, 0.06, "safety.spin_energy", reading.NotRated},
		{"nothing measured", func(*Spec) {}, 0.06, "safety.surface", reading.NotRated},
		{"warm", func(s *Spec) { s.ExhaustSurface = hot(60) }, 0.06, "safety.surface", reading.Holds},
		{"one of the two burns", func(s *Spec) { s.ExhaustSurface, s.HeadSurface = hot(60), hot(180) }, 0.06, "safety.surface", reading.Thin},
	} {
		s := Default()
		tc.change(&s)
		c := anyspec.Check(t, Examine(s, Input{TipClearance: tc.gap}).Checks(nil, 0.1), tc.check)
		if c.Verdict != tc.want {
			t.Errorf("%s: %s %s, want %s", tc.name, c.Verdict, c.Text(), tc.want)
		}
	}
}

// What the propeller travels in its mounts is taken from both gaps; one that
// comes back adds none.
func TestTravelTakesFromTheGaps(t *testing.T) {
	s := Default()
	still := Examine(s, Input{TipClearance: 0.06})
	moved := Examine(s, Input{TipClearance: 0.06, TipForward: param.Known(0.012), TipShift: param.Known(0.007), Swings: true})
	back := Examine(s, Input{TipClearance: 0.06, TipForward: param.Known(-0.012)})
	for _, tc := range []struct {
		name      string
		got, want float64
	}{
		{"net", moved.PressedNet, s.NetToBlade - s.NetGive - 0.012}, {"tip", moved.TipGap, still.TipGap - 0.007}, {"net behind", back.PressedNet, still.PressedNet},
	} {
		if d := tc.got - tc.want; d > 1e-12 || d < -1e-12 {
			t.Errorf("%s: %g m, want %g", tc.name, tc.got, tc.want)
		}
	}
	for _, tc := range []struct {
		r    Result
		want string
	}{{still, "is not known and not counted"}, {moved, "swing while crossing a mode"}, {back, "sag alone"}} {
		if x, _ := reading.Find(tc.r.Readings(nil), "safety.net_gap"); !strings.Contains(x.Method, tc.want) {
			t.Errorf("%s", x.Method)
		}
	}
}

func TestNothingTurnsWithoutAWorkingPoint(t *testing.T) {
	r := Examine(Default(), Input{PropellerDiameter: 1.3, PropellerInertia: 0.06})
	for _, key := range []string{"safety.spin_energy", "safety.tip_speed", "safety.chip_energy"} {
		if got, _ := reading.Find(r.Readings(nil), key); got.Known() || got.Why != standsStill {
			t.Errorf("%s is %s: %s", key, got.Text(), got.Why)
		}
	}
}

func TestEveryGuardIsFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Default()
		anyspec.Set(t, s.Params(), nil)
		r := Examine(s, Input{
			TipClearance:      rapid.Float64Range(-0.5, 0.5).Draw(t, "gap"),
			PropellerDiameter: rapid.Float64Range(0.5, 2).Draw(t, "diameter"),
			PropellerInertia:  rapid.Float64Range(0, 1).Draw(t, "inertia"),
			TipForward:        param.Known(rapid.Float64Range(-0.1, 0.5).Draw(t, "forward")),
			TipShift:          param.Known(rapid.Float64Range(0, 0.5).Draw(t, "shift")),
			PropellerSpeed:    param.Known(rapid.Float64Range(0, 600).Draw(t, "speed")),
		})
		anyspec.Finite(t, "result", r)
		seen := map[string]bool{}
		for _, rd := range r.Readings(nil) {
			if seen[rd.Key] || len([]rune(rd.Label)) > 34 {
				t.Errorf("%s: label %q", rd.Key, rd.Label)
			}
			seen[rd.Key] = true
		}
		for _, c := range r.Checks(nil, 0.1) {
			if c.Verdict == reading.Fails {
				t.Errorf("%s fails: a caution never says more than it knows", c.Key)
			}
		}
	})
}

var sink Result

func BenchmarkExamine(b *testing.B) {
	s, in := Default(), Input{TipClearance: 0.07, PropellerDiameter: 1.3, PropellerInertia: 0.06, PropellerSpeed: param.Known(280)}
	b.ReportAllocs()
	for b.Loop() {
		sink = Examine(s, in)
	}
}
