package gear

import (
	"math"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"pgregory.net/rapid"
)

func randomSpec(t *rapid.T) Spec {
	s := Default()
	anyspec.Set(t, s.Params(), nil)
	return s
}

// ratableSpec is a random one whose hardnesses suit the materials and whose
// proportions are such that most of them can be rated.
func ratableSpec(t *rapid.T) Spec {
	s := randomSpec(t)
	for _, m := range []struct {
		class    MaterialClass
		hardness *float64
	}{{s.PinionMaterial, &s.PinionHardness}, {s.WheelMaterial, &s.WheelHardness}} {
		c := materials().classes[m.class]
		*m.hardness = rapid.Float64Range(c.least[2], c.most).Draw(t, "hardness of "+string(m.class))
	}
	s.PinionTeeth, s.WheelTeeth = rapid.IntRange(15, 30).Draw(t, "pinion"), rapid.IntRange(35, 100).Draw(t, "wheel")
	s.PressureAngle = rapid.Float64Range(0.34, 0.44).Draw(t, "pressure angle")
	s.PinionShift, s.WheelShift = rapid.Float64Range(0, 0.5).Draw(t, "x1"), rapid.Float64Range(-0.3, 0.3).Draw(t, "x2")
	s.CentreDistance = param.Slot{}
	s.PinionOffset = rapid.Float64Range(0, 3e-3).Draw(t, "offset")
	return s
}

func must(t *rapid.T, err error) {
	if err != nil {
		t.Fatal(err)
	}
}

func randomDuty(t *rapid.T) part.Duty {
	return part.Duty{
		Power:          rapid.Float64Range(0, 40000).Draw(t, "power"),
		CrankSpeed:     rapid.Float64Range(0, 1400).Draw(t, "speed"),
		AirTemperature: rapid.Float64Range(240, 325).Draw(t, "air"),
		AirDensity:     rapid.Float64Range(0.6, 1.5).Draw(t, "density"),
		Inflow:         rapid.Float64Range(0, 30).Draw(t, "inflow"),
	}
}

func TestRandomDesignsStayFinite(t *testing.T) {
	solved := 0
	rapid.Check(t, func(t *rapid.T) {
		s := randomSpec(t)
		if rapid.Bool().Draw(t, "ratable") {
			s = ratableSpec(t)
		}
		at := randomDuty(t)
		g, err := New(s, at)
		if err != nil {
			return
		}
		solved++
		anyspec.Finite(t, "sump", g.sump.Temperature, g.sump.Viscosity, g.SpinningInertia(), g.AxisOffset())
		for _, p := range g.Pieces() {
			anyspec.Finite(t, p.Key, p.Depth, p.Mass, p.CGAft, p.CGUp, p.PitchInertia, p.YawInertia)
			if p.Mass < 0 || p.PitchInertia < 0 || p.YawInertia < 0 {
				t.Fatalf("%+v", p)
			}
		}
		if g.SpinningInertia() <= 0 {
			t.Fatal("no inertia")
		}
		if e := g.excess(g.cooling(at), at, g.sump.Temperature); g.sump.Balanced && math.Abs(e) > 1+0.01*at.Power {
			t.Fatalf("heat shed and losses differ by %g W at %g K", e, g.sump.Temperature)
		}
		x := g.Transmit(at.Power, at.CrankSpeed)
		anyspec.Finite(t, "transmission", x.PowerOut, x.SpeedOut)
		if x.PowerOut < 0 || x.PowerOut > x.PowerIn {
			t.Fatalf("%+v", x)
		}
		r := g.Examine(at, trainOf(rapid.Float64Range(0, 3).Draw(t, "pulsation")))
		for _, rd := range r.Readings(nil) {
			if rd.Why == "the sum has no finite answer for these parameters" {
				t.Fatalf("%s is not finite", rd.Key)
			}
		}
		for _, c := range r.Checks(nil, 0.1) {
			anyspec.Finite(t, c.Key, c.Value, c.Limit, c.Margin)
			if c.Why == "the sum has no finite answer for these parameters" {
				t.Fatalf("%s is not finite", c.Key)
			}
		}
	})
	if solved == 0 {
		t.Error("no random design was solved")
	}
	t.Logf("%d random designs were solved", solved)
}

func TestInvoluteAndAngleAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(0.01, 1.5).Draw(t, "angle")
		if b := InvoluteAngle(Involute(a)); math.Abs(a-b) > 1e-9 {
			t.Fatalf("%g comes back as %g", a, b)
		}
	})
	if InvoluteAngle(0) != 0 || InvoluteAngle(-1) != 0 {
		t.Error("no involute has no angle")
	}
}

func TestCentreDistanceAndShiftsAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Default()
		s.PinionTeeth = rapid.IntRange(14, 30).Draw(t, "pinion")
		s.WheelTeeth = rapid.IntRange(31, 120).Draw(t, "wheel")
		s.HelixAngle = rapid.Float64Range(0, 0.5).Draw(t, "helix")
		s.PinionShift = rapid.Float64Range(0, 0.5).Draw(t, "x1")
		s.WheelShift = rapid.Float64Range(-0.3, 0.5).Draw(t, "x2")
		from, err := Solve(s)
		must(t, err)
		s.CentreDistance, s.WheelShift = param.Known(from.CentreDistance), 9
		back, err := Solve(s)
		must(t, err)
		if math.Abs(back.Driven.Shift-from.Driven.Shift) > 1e-7 || math.Abs(back.ContactRatio-from.ContactRatio) > 1e-7 {
			t.Fatalf("shift %g came back as %g", from.Driven.Shift, back.Driven.Shift)
		}
	})
}
