package carry

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/part"
	"backspan/model/stack"
)

// drawStack is any machine: a drive of few or many pieces, with and without
// depth, a fan or none, fuel or none.
func drawStack(t *rapid.T, name string) stack.Result {
	number := func(what string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name+" "+what) }
	piece := func(key string, deep bool) part.Piece {
		p := part.Piece{Key: key, Label: key, Mass: number(key+" mass", 0, 15), CGAft: number(key+" aft", -0.1, 0.2), CGUp: number(key+" up", -0.3, 0.3)}
		if deep {
			p.Depth = number(key+" depth", 0.001, 0.3)
		}
		return p
	}
	s, tank := stack.Default(), stack.DefaultTank()
	s.PadDepth, s.FrameDepth, s.FrameMass, s.GuardAhead = number("pad", 0, 0.1), number("frame", 0.005, 0.2), number("frame mass", 0.5, 9), number("guard ahead", -0.3, 0.3)
	tank.Fill, tank.Aft = number("fill", 0, 1), number("tank aft", -0.3, 0.3)
	parts := stack.Parts{Engine: piece("engine", true), Propeller: piece("propeller", true), FuelDensity: 745, AxisOffset: 0.1, PropellerDiameter: 1.2}
	if rapid.Bool().Draw(t, name+" fan") {
		parts.Cooling = append(parts.Cooling, piece("cooling.fan", rapid.Bool().Draw(t, name+" fan deep")))
	}
	for i := range rapid.IntRange(0, 6).Draw(t, name+" pieces") {
		parts.Drive = append(parts.Drive, piece(fmt.Sprintf("drive.%d", i), rapid.Bool().Draw(t, fmt.Sprintf("%s deep %d", name, i))))
	}
	return stack.Build(s, tank, parts)
}

func ready(r stack.Result) Load { return Load{r.MassReady, r.CGAft, r.CGUp} }

const close9 = 1e-9

func TestPiecewiseSplitIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, a, b := drawPilot(t), drawStack(t, "a"), drawStack(t, "b")
		s := p.SplitPieces(a.Items, b.Items)
		want := Stand(p, ready(b)).HipMoment - Stand(p, ready(a)).HipMoment
		if math.Abs(s.Total-want) > close9 {
			t.Fatalf("%g in all, not %g", s.Total, want)
		}
		mass, place, by := 0.0, 0.0, 0.0
		for _, q := range s.Pieces {
			mass, place, by = mass+q.FromMass, place+q.FromPlace, by+q.ByDepth
		}
		if math.Abs(mass-s.FromMass) > close9 || math.Abs(place-s.FromDepth) > close9 || math.Abs(by-s.FromDepth) > close9 {
			t.Fatalf("%g from mass of %g; %g by place and %g by depth of %g", mass, s.FromMass, place, by, s.FromDepth)
		}
		m, d := p.Split(ready(a), ready(b))
		if math.Abs(s.FromMass-s.OfMassAft-m) > close9 || math.Abs(s.FromDepth+s.OfMassAft-d) > close9 {
			t.Fatalf("as one point %g and %g, not %g and %g", s.FromMass-s.OfMassAft, s.FromDepth+s.OfMassAft, m, d)
		}
	})
}

func TestPiecewiseSplitRunsBackwards(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, a, b := drawPilot(t), drawStack(t, "a"), drawStack(t, "b")
		there, back := p.SplitPieces(a.Items, b.Items), p.SplitPieces(b.Items, a.Items)
		if math.Abs(there.FromMass+back.FromMass) > close9 || math.Abs(there.FromDepth+back.FromDepth) > close9 {
			t.Fatalf("%+v there, %+v back", there, back)
		}
		if self := p.SplitPieces(a.Items, a.Items); self.FromMass != 0 || self.FromDepth != 0 {
			t.Fatalf("a machine differs from itself by %+v", self)
		}
	})
}

func machine(t *testing.T, change func(*stack.Spec, *stack.Parts)) []stack.Item {
	t.Helper()
	s := stack.Default()
	parts := stack.Parts{
		Engine: part.Piece{Key: "engine", Depth: 0.16, Mass: 9, CGAft: 0.08}, FuelDensity: 745,
		Drive: []part.Piece{
			{Key: "drive.belt", Mass: 0.2, CGAft: 0.02}, {Key: "drive.driven_pulley", Depth: 0.05, Mass: 1, CGAft: 0.025},
		},
		Propeller: part.Piece{Key: "propeller", Mass: 1, Depth: 0.03, CGAft: 0.015}, PropellerDiameter: 1.2,
	}
	change(&s, &parts)
	return stack.Build(s, stack.DefaultTank(), parts).Items
}

func TestBlameFallsOnWhatChanged(t *testing.T) {
	plain := func(*stack.Spec, *stack.Parts) {}
	for _, tc := range []struct {
		name               string
		change             func(*stack.Spec, *stack.Parts)
		cause              string // the only piece that moved things by its depth
		heavier            string // the only piece that counts by mass
		movedWith, stayPut string
	}{
		{"deeper pad", func(s *stack.Spec, _ *stack.Parts) { s.PadDepth += 0.02 }, "stack.pad", "", "stack.guard", "stack.tank"},
		{"deeper pulley", func(_ *stack.Spec, p *stack.Parts) { p.Drive[1].Depth += 0.02 }, "drive.driven_pulley", "", "propeller", "drive.belt"},
		{"deeper engine", func(_ *stack.Spec, p *stack.Parts) { p.Engine.Depth += 0.02 }, "engine", "", "drive.belt", "stack.exhaust"},
		{"heavier guard", func(s *stack.Spec, _ *stack.Parts) { s.GuardMass += 1 }, "", "stack.guard", "", "propeller"},
		{"guard farther ahead", func(s *stack.Spec, _ *stack.Parts) { s.GuardAhead += 0.02 }, "stack.guard", "", "stack.guard", "propeller"},
		{"a fan", func(_ *stack.Spec, p *stack.Parts) {
			p.Cooling = []part.Piece{{Key: "cooling.fan", Depth: 0.04, Mass: 1, CGAft: 0.02}}
		}, "cooling.fan", "cooling.fan", "propeller", "stack.exhaust"},
	} {
		s := DefaultPilot().SplitPieces(machine(t, plain), machine(t, tc.change))
		for _, q := range s.Pieces {
			if (math.Abs(q.ByDepth) > close9) != (q.Key == tc.cause) {
				t.Errorf("%s: %s counts %g by its depth", tc.name, q.Key, q.ByDepth)
			}
			if (math.Abs(q.FromMass) > close9) != (q.Key == tc.heavier) {
				t.Errorf("%s: %s counts %g by its mass", tc.name, q.Key, q.FromMass)
			}
			if moved := math.Abs(q.FromPlace) > close9; moved && q.Key == tc.stayPut || !moved && q.Key == tc.movedWith {
				t.Errorf("%s: %s counts %g by its place", tc.name, q.Key, q.FromPlace)
			}
		}
	}
}

func TestPiecesKeepTheirOrder(t *testing.T) {
	plain := machine(t, func(*stack.Spec, *stack.Parts) {})
	fanned := machine(t, func(_ *stack.Spec, p *stack.Parts) {
		p.Cooling = []part.Piece{{Key: "cooling.fan", Depth: 0.04, Mass: 1}, {Key: "cooling.radiator", Mass: 2}}
	})
	for _, items := range [][2][]stack.Item{{plain, fanned}, {fanned, plain}} {
		var keys []string
		for _, q := range DefaultPilot().SplitPieces(items[0], items[1]).Pieces {
			keys = append(keys, q.Key)
		}
		at := slices.Index(keys, "engine")
		if at < 0 || !slices.Equal(keys[at:at+4], []string{"engine", "cooling.fan", "cooling.radiator", "drive.belt"}) {
			t.Errorf("%v", keys)
		}
	}
}

func TestAnotherKindOfDriveIsOnePiece(t *testing.T) {
	gear := machine(t, func(_ *stack.Spec, p *stack.Parts) {
		p.Drive = []part.Piece{{Key: "drive.case", Depth: 0.06, Mass: 3, CGAft: 0.03}, {Key: "drive.driven_pulley", Depth: 0.04, Mass: 1, CGAft: 0.02}}
	})
	s := DefaultPilot().SplitPieces(machine(t, func(*stack.Spec, *stack.Parts) {}), gear)
	drives := 0
	for _, q := range s.Pieces {
		if q.Key != "drive" {
			continue
		}
		drives++
		if !q.InFrom || !q.InTo || math.Abs(q.MassFrom-1.2) > 1e-12 || math.Abs(q.MassTo-4) > 1e-12 || math.Abs(q.DepthTo-0.10) > 1e-12 {
			t.Errorf("%+v", q)
		}
	}
	if drives != 1 {
		t.Errorf("%d drives in %+v", drives, s.Pieces)
	}
}

func BenchmarkSplitPieces(b *testing.B) {
	p := DefaultPilot()
	var t testing.T
	x := machine(&t, func(*stack.Spec, *stack.Parts) {})
	y := machine(&t, func(s *stack.Spec, _ *stack.Parts) { s.PadDepth += 0.02 })
	b.ReportAllocs()
	for b.Loop() {
		p.SplitPieces(x, y)
	}
}
