package shaft

import (
	"maps"
	"math"
	"testing"

	"backspan/model/internal/published"
)

const psi = 4.4482216152605 / (0.0254 * 0.0254)

func TestPublished(t *testing.T) {
	runners := map[string]published.Runner{
		"safety":    safetyCase,
		"endurance": enduranceCase,
		"simply_supported": func(t testing.TB, c published.Case) map[string]float64 {
			p := Places{0, c.Num(t, "span")}
			load := Load{At: c.Num(t, "at"), Force: Vector{Along: c.Num(t, "force")}}
			return statical(p, load)
		},
		"overhung": func(t testing.TB, c published.Case) map[string]float64 {
			p := Places{c.Num(t, "overhang"), c.Num(t, "overhang") + c.Num(t, "span")}
			return statical(p, Load{Force: Vector{Across: c.Num(t, "force")}})
		},
		"notch": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"factor": NotchFactor(c.Num(t, "concentration"), c.Num(t, "sensitivity"))}
		},
		"hollow": func(t testing.TB, c published.Case) map[string]float64 {
			m := Strength{Tensile: 1, Yield: 1, Endurance: 1}
			s := Section{Diameter: 1, Bore: c.Num(t, "bore"), BendingNotch: 1, TorsionNotch: 1}
			solid := s
			solid.Bore = 0
			x := Stressing{BendingAmplitude: 1}
			return map[string]float64{"times": s.FatigueUse(Goodman, x, m) / solid.FatigueUse(Goodman, x, m)}
		},
	}
	maps.Copy(runners, seatRunners())
	published.Run(t, "shaft", runners)
}

func statical(p Places, l Load) map[string]float64 {
	r := p.Reactions(l)
	held := r.Loads(p)
	largest := 0.0
	for _, at := range []float64{l.At, p.PropSide, p.EngineSide} {
		largest = math.Max(largest, BendingMoment(at, l, held[0], held[1]))
	}
	along := func(v Vector) float64 { return v.Along + v.Across }
	return map[string]float64{"near": along(r.PropSide), "far": along(r.EngineSide), "moment": largest}
}

// safetyCase works in the units of the source: inches, lbf·in and ksi.
func safetyCase(t testing.TB, c published.Case) map[string]float64 {
	s := Section{Diameter: c.Num(t, "diameter"), BendingNotch: c.Num(t, "kf"), TorsionNotch: c.Num(t, "kfs")}
	x := Stressing{BendingAmplitude: c.Num(t, "bending_amplitude"), MeanTorque: c.Num(t, "mean_torque")}
	m := Strength{Tensile: 1000 * c.Num(t, "sut"), Yield: 1000 * c.Num(t, "sy"), Endurance: 1000 * c.Num(t, "se")}
	of := func(criterion Criterion) float64 { return 1 / s.FatigueUse(criterion, x, m) }
	return map[string]float64{"goodman": of(Goodman), "soderberg": of(Soderberg), "gerber": of(Gerber), "asme_elliptic": of(ASMEElliptic), "yield": 1 / s.YieldUse(x, m)}
}

func enduranceCase(t testing.TB, c published.Case) map[string]float64 {
	tensile := c.Num(t, "sut") * 1000 * psi
	limit := EnduranceLimit(tensile, c.Num(t, "diameter")*0.0254, Surface(c.Word(t, "surface")), c.Num(t, "reliability_factor"))
	return map[string]float64{"surface_factor": Surface(c.Word(t, "surface")).factor(tensile), "endurance": limit / psi / 1000}
}
