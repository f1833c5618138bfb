package air

import (
	"testing"

	"backspan/model/internal/published"
)

func TestPublished(t *testing.T) {
	published.Run(t, "air", map[string]published.Runner{
		"standard": func(t testing.TB, c published.Case) map[string]float64 {
			s := Spec{Altitude: c.Num(t, "altitude")}.State()
			return map[string]float64{
				"temperature": s.Temperature, "pressure": s.Pressure, "density": s.Density,
				"sound_speed": s.SoundSpeed, "viscosity": s.DynamicViscosity * 1e5,
			}
		},
		"saturation": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"pressure": saturationPressure(c.Num(t, "temperature")+273.15) / 1000}
		},
		"density": func(t testing.TB, c published.Case) map[string]float64 {
			temperature, p := c.Num(t, "temperature")+273.15, c.Num(t, "pressure")
			e := c.Num(t, "humidity") * enhancement(p) * saturationPressure(temperature)
			return map[string]float64{"density": density(p, e, temperature)}
		},
		"vapour_ratio": func(t testing.TB, c published.Case) map[string]float64 {
			p := c.Num(t, "pressure")
			return map[string]float64{"ratio": density(p, p, 300) / density(p, 0, 300)}
		},
	})
}
