package cooling

import (
	"math"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/unit"
)

const mm = 1e-3

func given(t testing.TB, c published.Case) fins {
	return fins{root: c.Num(t, "root") * mm, height: c.Num(t, "height") * mm, thickness: c.Num(t, "thickness") * mm, pitch: c.Num(t, "pitch") * mm, conductivity: c.Num(t, "conductivity")}
}

func TestPublished(t *testing.T) {
	published.Run(t, "cooling", map[string]published.Runner{
		"fins": func(t testing.TB, c published.Case) map[string]float64 {
			f := given(t, c)
			f.length = c.Num(t, "length") * mm
			h, over := c.Num(t, "surface"), c.Num(t, "over")
			return map[string]float64{"finned": f.base() * f.BaseCoefficient(h) * over, "bare": f.base() * h * over}
		},
		"base": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"base": given(t, c).BaseCoefficient(c.Num(t, "surface"))}
		},
		"surface": func(t testing.TB, c published.Case) map[string]float64 {
			at := func(name string) float64 {
				return SurfaceCoefficient(c.Num(t, "length")*mm, c.Num(t, "gap")*mm, unit.KilometrePerHour.SI(c.Num(t, name)), gibsonDensity)
			}
			return map[string]float64{"slow": at("slow"), "fast": at("fast")}
		},
		"inflow": func(t testing.TB, c published.Case) map[string]float64 {
			at := func(ahead float64) float64 {
				return Inflow(ahead*mm, c.Num(t, "off")*mm, c.Num(t, "tip")*mm, c.Num(t, "hub")*mm)
			}
			return map[string]float64{"near": at(60), "middle": at(100), "far": at(200)}
		},
		"scaling": scalingCase,
	})
}

func scalingCase(t testing.TB, c published.Case) map[string]float64 {
	gas, power, speed := c.Num(t, "gas"), c.Num(t, "power"), c.Num(t, "speed")
	s := Default()
	s.PowerExponent, s.OtherWays = c.Num(t, "power_exponent"), 0
	s.GasTemperature, s.StatedAt = unit.Celsius.SI(gas), unit.Celsius.SI(c.Num(t, "head"))
	s.MeasuredHead.Value, s.MeasuredAir.Value = unit.Celsius.SI(c.Num(t, "head")), unit.Celsius.SI(c.Num(t, "air"))
	m := machine{spec: &s, duty: &Duty{Power: power, HeatShare: 1, Cylinders: 1}}
	air := m.gasSide(power) * (gas - c.Num(t, "head")) / (c.Num(t, "head") - c.Num(t, "air"))
	at := func(p, u, ambient float64) float64 {
		x := sides{gas: m.gasSide(p), air: air * math.Pow(u/speed, c.Num(t, "speed_exponent"))}
		return unit.Celsius.From(m.band(x, 1, 0, unit.Celsius.SI(ambient)).Mid)
	}
	return map[string]float64{"at_10_kw": at(10, speed, c.Num(t, "air")), "at_10_m_s": at(power, 10, c.Num(t, "air")), "at_35_c": at(power, speed, 35)}
}
