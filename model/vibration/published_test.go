package vibration

import (
	"fmt"
	"math"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/unit"
)

const mm = 1e-3

// four mounts of 12, 12 and 30 kN/m, 100 mm and 80 mm off, below the centre.
func four(below float64) []mount {
	var found []mount
	for _, x := range []float64{-0.1, 0.1} {
		for _, y := range []float64{-0.08, 0.08} {
			found = append(found, mount{place{x, y, -below}, [3]float64{12e3, 12e3, 30e3}})
		}
	}
	return found
}

func dozen() body { return body{mass: 12, roll: 0.10, pitch: 0.14, yaw: 0.16} }

func TestPublished(t *testing.T) {
	published.Run(t, "vibration", map[string]published.Runner{
		"balance": func(t testing.TB, c published.Case) map[string]float64 {
			k := Cylinder{c.Num(t, "reciprocating"), c.Num(t, "stroke") * mm / 2, 1, c.Num(t, "balanced")}.At(unit.RPM.SI(c.Num(t, "rpm")))
			angle := unit.Degree.SI(c.Num(t, "angle"))
			return map[string]float64{"along": k.Along * math.Cos(angle), "residual": k.First(angle)}
		},
		"shake": func(t testing.TB, c published.Case) map[string]float64 {
			k := Cylinder{c.Num(t, "reciprocating"), c.Num(t, "radius") * mm, c.Num(t, "rod") * mm, 0}.At(unit.RPM.SI(c.Num(t, "rpm")))
			return map[string]float64{"first": k.Along, "second": k.Second}
		},
		"transmissibility": func(t testing.TB, c published.Case) map[string]float64 {
			s := system{body: dozen(), damping: c.Num(t, "damping")}
			s.modes, _ = s.body.modes(four(0))
			w := wave{cos: vector{2: 1}}
			through := s.passed(w, c.Num(t, "ratio")*math.Sqrt(4*30e3/12))
			return map[string]float64{"passed": through.force()}
		},
		"modes": func(t testing.TB, c published.Case) map[string]float64 {
			b := dozen()
			modes, _ := b.modes(four(c.Num(t, "below") * mm))
			found := map[string]float64{}
			for i, m := range modes {
				found[fmt.Sprintf("m%d", i+1)] = m.speed / (2 * math.Pi)
			}
			return found
		},
	})
}
