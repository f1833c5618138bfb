package bolt

import (
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"pgregory.net/rapid"
)

func drawSpec(t *rapid.T) Spec {
	s := Default()
	anyspec.Set(t, s.Params(), nil)
	return s
}

func drawLoad(t *rapid.T) Load {
	number := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	l := Load{Torque: number("torque", -50, 300), Thrust: number("thrust", -500, 2000),
		HubDiameter: number("hub", 0, 0.25), HubThickness: number("thickness", 0, 0.1)}
	if rapid.Bool().Draw(t, "swing known") {
		l.TorqueAmplitude = param.Known(number("swing", 0, 1000))
	}
	return l
}

func TestRandomJointsStayFinite(t *testing.T) {
	const notFinite = "the sum has no finite answer for these parameters"
	rapid.Check(t, func(t *rapid.T) {
		r := Clamp(drawSpec(t), drawLoad(t))
		anyspec.Finite(t, "result", r)
		for _, x := range r.Readings(nil) {
			if x.Why == notFinite || x.Value < 0 {
				t.Fatalf("%+v", x)
			}
		}
		for _, c := range r.Checks(nil, 0.1) {
			anyspec.Finite(t, c.Key, c.Value, c.Margin)
			if c.Why == notFinite {
				t.Fatalf("%+v", c)
			}
		}
		if r.LeastPreload > r.Preload {
			t.Fatalf("least preload %g above the greatest %g", r.LeastPreload, r.Preload)
		}
	})
}

// Tightening harder holds more, and presses and stresses more.
func TestTighterHoldsMoreAndCrushesMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, l := drawSpec(t), drawLoad(t)
		s.TighteningTorque = param.Known(rapid.Float64Range(0.5, 100).Draw(t, "tightening"))
		loose := Clamp(s, l)
		s.TighteningTorque.Value *= 1.2
		tight := Clamp(s, l)
		if tight.SlipTorque < loose.SlipTorque || tight.StressShare <= loose.StressShare || tight.CrushPressure.Value < loose.CrushPressure.Value {
			t.Fatalf("loose %+v, tight %+v", loose, tight)
		}
	})
}

func TestReadingsOfNothing(t *testing.T) {
	if n := len(Result{}.Readings(nil)); n != len(Clamp(Default(), Load{}).Readings(nil)) {
		t.Errorf("%d readings of nothing", n)
	}
}
