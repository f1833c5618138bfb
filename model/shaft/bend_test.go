package shaft

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func drawSteps(t *rapid.T) []Step {
	at := rapid.Float64Range(-0.2, 0).Draw(t, "start")
	steps := make([]Step, rapid.IntRange(1, 5).Draw(t, "steps"))
	for i := range steps {
		to := at + rapid.Float64Range(0, 0.1).Draw(t, "length")
		d := rapid.Float64Range(0.01, 0.05).Draw(t, "diameter")
		steps[i] = Step{at, to, d, d * rapid.Float64Range(0, 0.8).Draw(t, "bore")}
		at = to
	}
	return steps
}

func size(slope, sag Vector) float64 { return slope.Size() + sag.Size() }

// Any shaft rests in its bearings, bends twice as far under twice the load,
// stays smooth, and answers the same from either of two ends of a load's work
// (the theorem of Maxwell and Betti).
func TestRandomShaftsBendAsBeamsDo(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		near := rapid.Float64Range(-0.1, 0.1).Draw(t, "near")
		p := Places{near, near + rapid.Float64Range(0.01, 0.2).Draw(t, "spacing")}
		steps := drawSteps(t)
		place := func(name string) float64 { return rapid.Float64Range(-0.3, 0.4).Draw(t, name) }
		a, b := Load{At: place("a"), Force: drawVector(t, "force", 5000), Couple: drawVector(t, "couple", 50)}, Load{At: place("b"), Force: Vector{Along: 1000}}
		line, twice := p.Bend(steps, SteelModulus, a), p.Bend(steps, SteelModulus, a.Times(2))
		for _, at := range []float64{a.At, b.At, p.PropSide, p.EngineSide, steps[0].To} {
			s1, d1 := line.At(at)
			s2, d2 := twice.At(at)
			if off := size(s2.Minus(s1).Minus(s1), d2.Minus(d1).Minus(d1)); !(off <= 1e-9*(1e-6+size(s1, d1))) {
				t.Fatalf("at %g not twice: off by %g", at, off)
			}
			below, _ := line.At(at - 1e-9)
			above, _ := line.At(at + 1e-9)
			if kink := above.Minus(below).Size(); kink > 1e-3*(1e-6+s1.Size()+line.steepest()) {
				t.Fatalf("kink of %g at %g", kink, at)
			}
		}
		for _, at := range []float64{p.PropSide, p.EngineSide} {
			if _, d := line.At(at); d.Size() > 1e-12 {
				t.Fatalf("lifts by %g off its bearing", d.Size())
			}
		}
		own := Load{At: a.At, Force: Vector{Along: 1000}}
		lineA, lineB := p.Bend(steps, SteelModulus, own), p.Bend(steps, SteelModulus, b)
		_, atB := lineA.At(b.At)
		_, atA := lineB.At(own.At)
		if math.Abs(atB.Along-atA.Along) > 1e-9*(math.Abs(atB.Along)+lineA.steepest()+lineB.steepest()) {
			t.Fatalf("%g at b from a, %g at a from b", atB.Along, atA.Along)
		}
	})
}

// steepest is the greatest slope at a node, rad.
func (l *BentLine) steepest() float64 {
	most := 0.0
	for i := range l.nodes {
		most = math.Max(most, l.nodes[i].slope.Size())
	}
	return most
}

// A couple at an overhung end: M a (2 L + 3 a)/(6 E I) at the end, M L/(3 E I)
// of slope at the bearing: Roark's Formulas for Stress and Strain, from memory.
func TestOverhungCouple(t *testing.T) {
	const couple, a, l, d = 20.0, 0.04, 0.06, 0.025
	p := Places{a, a + l}
	line := p.Bend([]Step{{From: 0, To: a + l, Diameter: d}}, SteelModulus, Load{Couple: Vector{Along: couple}})
	ei := SteelModulus * math.Pi / 64 * d * d * d * d
	slope, _ := line.At(a)
	_, tip := line.At(0)
	if want := couple * l / (3 * ei); math.Abs(slope.Size()-want) > 1e-9*want {
		t.Errorf("slope %g, want %g", slope.Size(), want)
	}
	if want := couple * a * (2*l + 3*a) / (6 * ei); math.Abs(tip.Size()-want) > 1e-9*want {
		t.Errorf("tip %g, want %g", tip.Size(), want)
	}
}

// Outside the steps given the nearest one goes on, and beyond all loads the
// line is straight.
func TestBendBeyondTheEnds(t *testing.T) {
	p := Places{0, 0.1}
	line := p.Bend([]Step{{From: 0.04, To: 0.06, Diameter: 0.02}}, SteelModulus, Load{At: 0.05, Force: Vector{Along: 100}})
	whole := p.Bend([]Step{{From: 0, To: 0.1, Diameter: 0.02}}, SteelModulus, Load{At: 0.05, Force: Vector{Along: 100}})
	_, a := line.At(0.05)
	_, b := whole.At(0.05)
	if math.Abs(a.Along-b.Along) > 1e-12 {
		t.Errorf("%g with the middle given, %g with all", a.Along, b.Along)
	}
	slope, at := whole.At(0.1)
	far, there := whole.At(0.15)
	if far != slope || math.Abs(there.Along-at.Along-0.05*slope.Along) > 1e-15 {
		t.Errorf("not straight beyond the end: %v %v", slope, far)
	}
}

func TestSeatsThatHoldNothing(t *testing.T) {
	for _, d := range []float64{0.006, 0.059} {
		if _, ok := KeyFor(d, 0.05); ok {
			t.Errorf("a key for %g m", d)
		}
	}
	if _, ok := KeyFor(0.025, 0.008); ok {
		t.Error("a key as wide as its seat is long")
	}
	if _, ok := (Spline{Diameter: 0.01, Module: 0.002, Length: 0.02, Share: 0.5}).Pressure(10); ok {
		t.Error("a spline of three teeth")
	}
	flat := Taper{Diameter: 0.02, Ratio: 20, NutForce: 1e4, Friction: 0.1}
	steep := flat
	steep.Ratio = 5
	if flat.Torque() <= steep.Torque() {
		t.Error("a steep taper holds more")
	}
}

func TestCrankForcesUnknown(t *testing.T) {
	f := CrankForces{Why: "not given"}
	if f.Bearings() != nil || len(f.Readings(nil)) != len(CrankForces{}.Readings(nil)) {
		t.Error("forces that are not known are listed")
	}
	for _, r := range f.Readings(nil) {
		if r.Known() {
			t.Errorf("%+v", r)
		}
	}
	g := CrankPull{Steady: Vector{Across: 100}, Axial: 40, Greatest: 200, Behind: 0.02}.Crank(0.04)
	rows := g.Bearings()
	if rows[0].Across != 150 || rows[1].Across != -50 || rows[0].Axial != 40 || rows[1].Axial != 0 || g.NearGreatest != 300 || g.FarGreatest != 100 {
		t.Errorf("%+v %+v", g, rows)
	}
}

func BenchmarkBend(b *testing.B) {
	p := Places{0.03, 0.08}
	steps := []Step{{0, 0.02, 0.03, 0}, {0.02, 0.05, 0.034, 0}, {0.05, 0.09, 0.025, 0}}
	l := Load{At: 0.05, Force: Vector{900, 400}}
	b.ReportAllocs()
	for b.Loop() {
		p.Bend(steps, SteelModulus, l)
	}
}
