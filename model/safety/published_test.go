package safety

import (
	"fmt"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/param"
	"backspan/model/unit"
)

func TestPublished(t *testing.T) {
	published.Run(t, "safety", map[string]published.Runner{
		"reach": func(t testing.TB, c published.Case) map[string]float64 {
			got := map[string]float64{}
			for _, e := range c.List(t, "openings") {
				got[fmt.Sprintf("e%.0f", e)] = 1000 * Reach(Shape(c.Word(t, "shape")), e/1000)
			}
			return got
		},
		"propeller": func(t testing.TB, c published.Case) map[string]float64 {
			gyration := 0.23 * c.Num(t, "diameter")
			r := Examine(Default(), Input{PropellerDiameter: c.Num(t, "diameter"), PropellerInertia: c.Num(t, "mass") * gyration * gyration,
				PropellerSpeed: param.Known(unit.RPM.SI(c.Num(t, "speed")))})
			return map[string]float64{"kilojoules": r.SpinEnergy.Value / 1000, "tip": r.TipSpeed.Value, "piece": r.ChipEnergy.Value}
		},
		"hoop": func(t testing.TB, c published.Case) map[string]float64 {
			s := Default()
			s.HoopPush, s.HoopStiffness = c.Num(t, "push"), 1000*c.Num(t, "stiffness")
			r := Examine(s, Input{TipClearance: c.Num(t, "gap") / 1000})
			return map[string]float64{"gives": 1000 * r.HoopGive, "left": 1000 * r.TipGap}
		},
	})
}
