package gear

import "math"

// Oil is a lubricant by its two kinematic viscosities, m²/s.
type Oil struct {
	ViscosityAt40  float64 // at 40 °C
	ViscosityAt100 float64 // at 100 °C
}

const (
	celsiusZero  = 273.15
	waltherShift = 0.7 // mm²/s
	mm2          = 1e6 // mm²/s in a m²/s
)

// Viscosity is the kinematic viscosity at a temperature in K, m²/s. Source:
// Walther's equation in the form of ASTM D341, lg lg(ν + 0.7) = A − B lg T,
// good from 2 mm²/s up.
func (o Oil) Viscosity(temperature float64) float64 {
	low, high := doubleLog(o.ViscosityAt40), doubleLog(o.ViscosityAt100)
	t40, t100 := math.Log10(40+celsiusZero), math.Log10(100+celsiusZero)
	slope := (low - high) / (t100 - t40)
	double := low - slope*(math.Log10(temperature)-t40)
	return (math.Pow(10, math.Pow(10, double)) - waltherShift) / mm2
}

func doubleLog(viscosity float64) float64 {
	return math.Log10(math.Log10(viscosity*mm2 + waltherShift))
}
