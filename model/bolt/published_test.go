package bolt

import (
	"testing"

	"backspan/model/internal/published"
	"backspan/model/param"
)

const mm, kN, mpa = 1e-3, 1e3, 1e6

func TestPublished(t *testing.T) {
	published.Run(t, "bolt", map[string]published.Runner{
		"tightening": func(t testing.TB, c published.Case) map[string]float64 {
			x := Thread{c.Num(t, "nominal") * mm, c.Num(t, "pitch") * mm, c.Num(t, "head") * mm, c.Num(t, "hole") * mm, 0}
			friction := c.Num(t, "friction")
			preload := x.Preload(Class(c.Word(t, "class")).yield(), fullUse, friction)
			return map[string]float64{"preload": preload / kN, "torque": preload * x.Lever(friction, friction)}
		},
		"coarse": func(t testing.TB, c published.Case) map[string]float64 {
			s := Default()
			s.Size, s.Class = Size(c.Word(t, "size")), Class(c.Word(t, "class"))
			s.ThreadFriction, s.HeadFriction = c.Num(t, "friction"), c.Num(t, "friction")
			s.TighteningTorque = param.Slot{}
			r := Clamp(s, Load{})
			return map[string]float64{"preload": r.Preload / kN, "torque": r.TighteningTorque}
		},
		"slip": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"torque": SlipTorque(int(c.Num(t, "count")), c.Num(t, "preload")*kN, c.Num(t, "friction"), c.Num(t, "circle")*mm, 1)}
		},
		"joint": jointCase,
	})
}

func jointCase(t testing.TB, c published.Case) map[string]float64 {
	s := Default()
	s.Hub, s.Size, s.Class = Material(c.Word(t, "hub")), Size(c.Word(t, "size")), Class(c.Word(t, "class"))
	s.Count, s.BoltCircle, s.PeakOverMean = int(c.Num(t, "count")), c.Num(t, "circle")*mm, c.Num(t, "factor")
	s.TighteningTorque = param.Slot{}
	s.ThreadFriction, s.HeadFriction, s.TighteningFactor = 0.12, 0.12, 1.6
	r := Clamp(s, Load{Torque: c.Num(t, "mean"), HubDiameter: 0.110, HubThickness: 0.030})
	return map[string]float64{
		"slip_torque": r.SlipTorque, "slip_safety": r.SlipSafety.Value, "preload_least": r.LeastPreload / kN,
		"shear_force": r.ShearForce, "shear_stress": r.ShearStress / mpa, "crush_pressure": r.CrushPressure.Value / mpa,
	}
}
