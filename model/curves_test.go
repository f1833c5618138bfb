package model

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
)

func curveOf(t *testing.T, cs []Curve, chart, key string) Curve {
	t.Helper()
	for _, c := range cs {
		if c.Chart == chart && c.Key == key {
			return c
		}
	}
	t.Fatalf("no curve %s of %s", key, chart)
	return Curve{}
}

// at reads a curve between its points.
func at(t *testing.T, c Curve, x float64) float64 {
	t.Helper()
	for i := 1; i < len(c.Points); i++ {
		a, b := c.Points[i-1], c.Points[i]
		if x >= a.X && x <= b.X {
			return a.Y + (b.Y-a.Y)*(x-a.X)/(b.X-a.X)
		}
	}
	t.Fatalf("%s of %s does not reach %g", c.Key, c.Chart, x)
	return 0
}

func near(t *testing.T, what string, got, want, share float64) {
	t.Helper()
	if !(math.Abs(got-want) <= share*math.Abs(want)) {
		t.Errorf("%s: %g, want %g", what, got, want)
	}
}

// The lines and the readings are two ways to the same figures: at the match the
// readings give, full throttle and absorbed power cross.
func TestCurvesMeetTheReadings(t *testing.T) {
	s := Sample()
	for i := range s.Variants {
		v := &s.Variants[i]
		o, cs := Evaluate(s, v), Curves(s, v)
		value := func(key string) float64 {
			r, ok := o.Reading(key)
			if !ok || !r.Known() {
				t.Fatalf("%s: no %s", v.Name, key)
			}
			return r.Value
		}
		speed := value("engine.speed")
		near(t, v.Name+" full throttle at the match", at(t, curveOf(t, cs, "power", "full"), speed), value("engine.power")*(1-v.Cooling.PowerTaken(1)), 2e-3)
		near(t, v.Name+" absorbed at the match", at(t, curveOf(t, cs, "power", "absorbed"), speed), value("engine.power")*(1-v.Cooling.PowerTaken(1)), 5e-3)
		near(t, v.Name+" efficiency at the match", at(t, curveOf(t, cs, "efficiency", "standing"), speed), value("drive.efficiency"), 1e-3)
		full, level := curveOf(t, cs, "thrust", "full"), curveOf(t, cs, "thrust", "level")
		near(t, v.Name+" thrust standing", full.Points[0].Y, value("propeller.static_thrust"), 1e-3)
		trim := level.Spots[0]
		near(t, v.Name+" level thrust at trim", at(t, level, trim.X), trim.Y, 5e-3)
		if !(at(t, full, trim.X) > trim.Y) {
			t.Errorf("%s climbs and yet has no thrust to spare at trim", v.Name)
		}
	}
}

// A machine that cannot be built keeps its curves, empty, with the reason.
// At the highest speed of its curve an engine still pulls: rounding must not
// lead past it.
func TestPowerCurveEndsWithPower(t *testing.T) {
	s := Sample()
	for i := range s.Variants {
		points := curveOf(t, Curves(s, &s.Variants[i]), "power", "full").Points
		if last := points[len(points)-1]; !(last.Y > 0) {
			t.Errorf("%s: %g W at %g rad/s", s.Variants[i].Name, last.Y, last.X)
		}
	}
}

func TestCurvesOfNothingSayWhy(t *testing.T) {
	s := Sample()
	v := &s.Variants[0]
	v.Drive.RibbedBelt.CentreDistance = 0.12
	why := Evaluate(s, v)
	r, _ := why.Reading("stack.depth")
	for _, c := range Curves(s, v) {
		if len(c.Points) > 0 || c.Why != r.Why {
			t.Errorf("%s of %s: %d points, %q", c.Key, c.Chart, len(c.Points), c.Why)
		}
	}
}

// Any machine: every figure of lines and layout is finite, speeds rise, and no
// line is without points and without a reason.
func TestAnyMachineHasCurves(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := NewStudy("random")
		s.Variants = []Variant{NewVariant("any")}
		v := &s.Variants[0]
		randomize(t, s.Sections()[1:])
		randomize(t, v.Sections())
		for _, c := range Curves(s, v) {
			if len(c.Points) == 0 && c.Why == "" {
				t.Fatalf("%s of %s: nothing, and no word why", c.Key, c.Chart)
			}
			for i, p := range c.Points {
				anyspec.Finite(t, c.Chart+" x", p.X)
				anyspec.Finite(t, c.Chart+" y", p.Y)
				if i > 0 && !(p.X > c.Points[i-1].X) {
					t.Fatalf("%s of %s: speeds do not rise", c.Key, c.Chart)
				}
			}
		}
		o := Evaluate(s, v)
		for _, b := range o.Layout.Bodies {
			for _, x := range []float64{b.Front, b.Depth, b.Low.Up, b.Low.Radius, b.High.Up, b.High.Radius} {
				anyspec.Finite(t, b.Key, x)
			}
		}
	})
}

func BenchmarkCurves(b *testing.B) {
	s := Sample()
	for b.Loop() {
		Curves(s, &s.Variants[1])
	}
}
