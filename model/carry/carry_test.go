package carry

import (
	"math"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/reading"
)

func drawPilot(t *rapid.T) Pilot {
	p := DefaultPilot()
	for _, sec := range p.Sections() {
		for _, q := range sec.Params {
			anyspec.One(t, sec.Path(q), q)
		}
	}
	return p.Measured()
}

func drawLoad(t *rapid.T, name string) Load {
	return Load{
		Mass:  rapid.Float64Range(0, 100).Draw(t, name+" mass"),
		CGAft: rapid.Float64Range(-0.5, 1).Draw(t, name+" aft"),
		CGUp:  rapid.Float64Range(-0.6, 0.9).Draw(t, name+" up"),
	}
}

// tilt gives the moment of all weights about the ankle, over g, with the legs
// leaning by legs and the trunk by trunk.
func tilt(p Pilot, l Load, legs, trunk float64) float64 {
	s := Of(p.Segments)
	hip := (s.Hip - s.Ankle) * p.Stature
	upper := s.UpperMass * p.Mass
	legMoment := p.Mass*(s.Centre-s.Ankle)*p.Stature - upper*(hip+s.UpperCentre*p.Stature)
	at := func(aft, up float64) float64 { return hip*math.Sin(legs) - aft*math.Cos(trunk) + up*math.Sin(trunk) }
	return legMoment*math.Sin(legs) + upper*at(0, s.UpperCentre*p.Stature) + l.Mass*at(p.BackBehindHip+l.CGAft, l.CGUp)
}

func TestEveryBalancedPostureBalances(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, l := drawPilot(t), drawLoad(t, "load")
		r := Stand(p, l)
		if !r.Balances {
			return
		}
		for _, posture := range []struct {
			name        string
			legs, trunk float64
		}{
			{"hip", 0, r.Lean}, {"ankle", r.LeanAnkle, r.LeanAnkle},
			{"shared", (1 - p.HipShare) * r.LeanAnkle, r.LeanShared},
		} {
			if m := tilt(p, l, posture.legs, posture.trunk); math.Abs(m) > 1e-9 {
				t.Errorf("%s: %g kg·m left over", posture.name, m)
			}
		}
	})
}

func TestLeanEquivalentCallsForTheSameLean(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, l := drawPilot(t), drawLoad(t, "load")
		r := Stand(p, l)
		if !r.LeanEquivalent || r.EquivalentMassLean < 0 || r.EquivalentMassLean > 1e3 {
			return
		}
		e := Stand(p, Load{Mass: r.EquivalentMassLean, CGAft: p.ReferenceDepth, CGUp: l.CGUp})
		if e.Balances && math.Abs(e.Lean-r.Lean) > 1e-9 {
			t.Fatalf("leans %g against %g", e.Lean, r.Lean)
		}
	})
}

func TestSplitSumsToTheDifference(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, a, b := drawPilot(t), drawLoad(t, "a"), drawLoad(t, "b")
		m, d := p.Split(a, b)
		want := Stand(p, b).HipMoment - Stand(p, a).HipMoment
		if math.Abs(m+d-want) > 1e-9 {
			t.Fatalf("%g from mass and %g from depth, together not %g", m, d, want)
		}
		back, deep := p.Split(b, a)
		if math.Abs(back+m) > 1e-9 || math.Abs(deep+d) > 1e-9 {
			t.Fatal("the way back is not the way there reversed")
		}
	})
}

func TestSplitNamesTheRightCause(t *testing.T) {
	p, a := DefaultPilot(), Load{Mass: 25, CGAft: 0.15, CGUp: 0.2}
	for _, tc := range []struct {
		name        string
		b           Load
		mass, depth bool
	}{
		{"heavier", Load{27, 0.15, 0.2}, true, false},
		{"deeper", Load{25, 0.18, 0.2}, false, true},
		{"higher", Load{25, 0.15, 0.4}, false, false},
	} {
		if m, d := p.Split(a, tc.b); (m > 0) != tc.mass || (d > 0) != tc.depth {
			t.Errorf("%s: %g from mass, %g from depth", tc.name, m, d)
		}
	}
}

func TestFeetVerdicts(t *testing.T) {
	for _, tc := range []struct {
		name string
		l    Load
		want reading.Verdict
	}{
		{"light and close", Load{22, 0.1, 0.2}, reading.Holds},
		{"deep", Load{35, 0.26, 0.2}, reading.Thin},
		{"heavy and deep", Load{45, 0.4, 0.2}, reading.Fails},
	} {
		if c := Stand(DefaultPilot(), tc.l).Checks(nil, 0.1); c[0].Verdict != tc.want {
			t.Errorf("%s: %s %s, want %s", tc.name, c[0].Verdict, c[0].Text(), tc.want)
		}
	}
}

func TestEveryLoadIsFiniteOrSaysWhy(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := Stand(drawPilot(t), drawLoad(t, "load"))
		for _, rd := range r.Readings(nil) {
			if !rd.Known() && rd.Why != noBalance && rd.Why != noEquivalent {
				t.Fatalf("%s: %s", rd.Key, rd.Why)
			}
		}
		for _, c := range r.Checks(nil, 0.1) {
			if c.Key == "carry.cg_shift" && !c.Valued {
				t.Fatal(c.Why)
			}
		}
	})
}

func TestDeclarations(t *testing.T) {
	p := DefaultPilot()
	for _, sec := range p.Sections() {
		anyspec.HoldDefaults(t, sec.Params)
	}
	keys := map[string]bool{}
	for _, r := range append(Result{}.Readings(nil), Burden{}.Readings(nil)...) {
		if keys[r.Key] || utf8.RuneCountInString(r.Label) > 34 {
			t.Errorf("reading %+v", r)
		}
		keys[r.Key] = true
	}
}

var sink Result

func BenchmarkStand(b *testing.B) {
	p, l := DefaultPilot(), Load{Mass: 26, CGAft: 0.2, CGUp: 0.25}
	b.ReportAllocs()
	for b.Loop() {
		sink = Stand(p, l)
	}
}
