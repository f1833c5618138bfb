package carry

import (
	"math"
	"math/cmplx"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/reading"
	"backspan/model/stack"
)

func bear(p Pilot, r stack.Result) (Result, Burden) {
	s := Stand(p, ready(r))
	return s, Bear(p, &s, Machine{Ready: ready(r), Items: r.Items,
		Full: Load{r.MassFull, r.CGAftFull, r.CGUpFull}, Empty: Load{r.MassDry, r.CGAftDry, r.CGUpDry}})
}

// Piece by piece, in both postures, the weights turn the body as the whole
// machine does: upright with the hip moment, at the lean not at all.
func TestMomentsOfThePiecesClose(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, machine := drawPilot(t), drawStack(t, "machine")
		r := Stand(p, ready(machine))
		seg := Of(p.Segments)
		upper := seg.UpperMass * p.Mass * gravity
		about := func(lean float64) float64 {
			sin, cos := math.Sincos(lean)
			m := upper * seg.UpperCentre * p.Stature * sin
			for _, it := range machine.Items {
				m += it.Mass * gravity * (it.Z*sin - (p.BackBehindHip+it.X)*cos)
			}
			return m
		}
		if m := about(0) + r.HipMoment; math.Abs(m) > close9 {
			t.Errorf("upright %g N·m left over", m)
		}
		if m := about(r.Lean); r.Balances && math.Abs(m) > close9 {
			t.Errorf("leaning %g N·m left over", m)
		}
	})
}

// The machine alone: weight, straps, lumbar pad and hip belt hold it.
func TestStrapsAndBeltHoldTheMachine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, machine := drawPilot(t), drawStack(t, "machine")
		r, b := bear(p, machine)
		weight := machine.MassReady * gravity
		if m := r.StrapPull*p.StrapHeight - weight*machine.CGAft; math.Abs(m) > close9 {
			t.Errorf("%g N·m about the pad left over", m)
		}
		shoulders := 2 * math.Sqrt(math.Max(0, r.ShoulderForce*r.ShoulderForce-r.StrapPull*r.StrapPull/4))
		if f := b.BeltWeight + shoulders - weight; math.Abs(f) > 1e-6*(1+weight) {
			t.Errorf("%g N of %g N left over", f, weight)
		}
	})
}

// The body turned as a whole about the disc: each weight's place, rotated.
func TestLeaningTurnsEveryWeightAboutTheDisc(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, l, lean := drawPilot(t), drawLoad(t, "load"), rapid.Float64Range(-0.5, 1.5).Draw(t, "lean")
		b, turn := p.Back, cmplx.Rect(1, -lean) // ahead + i·up, leaning towards ahead
		body := complex(b.UpperAhead, b.UpperAbove) * turn
		load := complex(-b.BehindDisc-l.CGAft, l.CGUp-b.DiscAboveHip) * turn
		want := gravity * (b.UpperShare*p.Mass*real(body) + l.Mass*real(load))
		if d := b.At(p.Mass, l, lean); math.Abs(d.Moment-want) > close9 {
			t.Errorf("%g N·m, not %g", d.Moment, want)
		}
	})
}

// A piece made thinner in the stack brings the felt mass down by what its rate
// says.
func TestThinnerPieceFeelsLighterByItsRate(t *testing.T) {
	p, spec, tank := DefaultPilot(), stack.Default(), stack.DefaultTank()
	parts := stack.Parts{FuelDensity: 745, PropellerDiameter: 1.2}
	parts.Engine.Key, parts.Engine.Depth, parts.Engine.Mass, parts.Engine.CGAft = "engine", 0.16, 9, 0.08
	parts.Propeller.Key, parts.Propeller.Mass = "propeller", 1
	felt := func() float64 { return Stand(p, ready(stack.Build(spec, tank, parts))).EquivalentMass }
	before := felt()
	rate := map[string]float64{}
	for _, x := range p.Thicknesses(stack.Build(spec, tank, parts).Items) {
		rate[x.Key] = x.PerDepth
	}
	const cm = 0.01
	for _, tc := range []struct {
		key   string
		depth *float64
	}{{"stack.pad", &spec.PadDepth}, {"stack.frame", &spec.FrameDepth}, {"stack.mount", &spec.MountDepth}} {
		*tc.depth -= cm
		if got := (before - felt()) / cm; math.Abs(got-rate[tc.key]) > close9 {
			t.Errorf("%s: %g kg/m, its rate says %g", tc.key, got, rate[tc.key])
		}
		*tc.depth += cm
	}
	parts.Engine.CGAft *= (parts.Engine.Depth - cm) / parts.Engine.Depth
	parts.Engine.Depth -= cm
	if got := (before - felt()) / cm; math.Abs(got-rate["engine"]) > close9 {
		t.Errorf("engine: %g kg/m, its rate says %g", got, rate["engine"])
	}
}

func TestDearestPieceComesFirst(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, machine := drawPilot(t), drawStack(t, "machine")
		ts := p.Thicknesses(machine.Items)
		for i, x := range ts {
			if i > 0 && ts[i-1].Felt < x.Felt {
				t.Fatalf("%+v out of order", x)
			}
			if w, ok := worst(ts); x.Key != "engine" && x.Key != "propeller" && (!ok || w.Felt < x.Felt) {
				t.Fatalf("%+v is worse than %+v", x, w)
			}
		}
	})
}

// Engine and propeller are not to be thinned; the worst of the rest is named.
func TestWorstPieceIsNamed(t *testing.T) {
	ranked := []Thickness{{Key: "engine", Label: "Engine", Depth: 0.16, PerDepth: 45, Felt: 7.4}, {Key: "propeller", Label: "Propeller", Depth: 0.03, PerDepth: 100, Felt: 3}, {Key: "stack.frame", Label: "Frame", Depth: 0.035, PerDepth: 76, Felt: 2.7},
		{Key: "stack.pad", Label: "Pad", Depth: 0.025, PerDepth: 84, Felt: 2.1}}
	for key, want := range map[string]float64{"carry.kg_per_cm_worst": 76, "carry.depth_felt_worst": 2.7} {
		x, _ := reading.Find(Burden{Depths: ranked}.Readings(nil), key)
		if x.Value != want || !strings.HasPrefix(x.Method, "Frame") {
			t.Errorf("%s is %s: %s", key, x.Text(), x.Method)
		}
		if x, _ := reading.Find(Burden{Depths: ranked[:2]}.Readings(nil), key); x.Known() {
			t.Errorf("%s of engine and propeller alone is %s", key, x.Text())
		}
	}
}

func TestTankEnds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, machine := drawPilot(t), drawStack(t, "machine")
		r, b := bear(p, machine)
		full, empty := machine.MassFull*gravity*(p.BackBehindHip+machine.CGAftFull), machine.MassDry*gravity*(p.BackBehindHip+machine.CGAftDry)
		if math.Abs(b.Full.HipMoment-full) > close9 || math.Abs(b.Empty.HipMoment-empty) > close9 {
			t.Errorf("full %g and empty %g N·m, not %g and %g", b.Full.HipMoment, b.Empty.HipMoment, full, empty)
		}
		lo, hi := min(b.Empty.HipMoment, b.Full.HipMoment), max(b.Empty.HipMoment, b.Full.HipMoment)
		if r.HipMoment < lo-close9 || r.HipMoment > hi+close9 {
			t.Errorf("%g N·m is not between %g and %g", r.HipMoment, lo, hi)
		}
		if e := b.Full.HipMoment - b.Full.EquivalentMass*gravity*(p.BackBehindHip+p.ReferenceDepth); math.Abs(e) > close9 {
			t.Errorf("felt mass and moment are %g N·m apart", e)
		}
	})
}

func TestEveryBurdenIsFiniteOrSaysWhy(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, b := bear(drawPilot(t), drawStack(t, "machine"))
		anyspec.Finite(t, "burden", b)
		if b.WalkLow > b.WalkHigh || b.WalkLow <= 0 {
			t.Errorf("the walk takes %g to %g W", b.WalkLow, b.WalkHigh)
		}
		for _, r := range b.Readings(nil) {
			if !r.Known() && r.Why != noBalance && r.Why != outOfReach && r.Why != noPieces {
				t.Errorf("%s: %s", r.Key, r.Why)
			}
		}
	})
}

var burden Burden

func BenchmarkBear(b *testing.B) {
	p := DefaultPilot()
	items := machine(new(testing.T), func(*stack.Spec, *stack.Parts) {})
	m := Machine{Ready: Load{Mass: 26, CGAft: 0.2, CGUp: 0.25}, Items: items}
	r := Stand(p, m.Ready)
	b.ReportAllocs()
	for b.Loop() {
		burden = Bear(p, &r, m)
	}
}

func BenchmarkMeasured(b *testing.B) {
	p := DefaultPilot()
	p.Percentile = Man95
	b.ReportAllocs()
	for b.Loop() {
		p = p.Measured()
	}
}
