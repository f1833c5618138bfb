package match

import (
	"testing"

	"backspan/model/internal/published"
	"backspan/model/unit"
)

func TestPublished(t *testing.T) {
	published.Run(t, "match", map[string]published.Runner{
		"fixed_geometry": func(t testing.TB, c published.Case) map[string]float64 {
			var l load
			l.cubic = c.Num(t, "cp") * c.Num(t, "density") * pow5(c.Num(t, "diameter")) / cube(2*3.141592653589793)
			return map[string]float64{"power": l.power(unit.RPM.SI(c.Num(t, "speed")))}
		},
	})
}

func cube(x float64) float64 { return x * x * x }
func pow5(x float64) float64 { return cube(x) * x * x }
