package air

import "math"

// saturationPressure is the vapour pressure over plane liquid water, Pa, at a
// temperature in K; made for −40 to 50 °C, there within 0.2 %. Source: Buck,
// New equations for computing vapor pressure and enhancement factor, Journal
// of Applied Meteorology 20 (1981) 1527–1532, eq. 8.
func saturationPressure(temperature float64) float64 {
	t := temperature - 273.15
	return 611.21 * math.Exp(17.502*t/(240.97+t))
}

// enhancement is how much more vapour saturated air holds than the space over
// pure water, at a pressure in Pa. Source: Buck 1981, eq. 8.
func enhancement(pressure float64) float64 { return 1.0007 + 3.46e-8*pressure }

// vapourShare is 1 − M_water/M_air: how much lighter vapour is than the air it
// displaces.
const vapourShare = 0.378

// density of humid air, kg/m³: a mixture of ideal gases.
func density(pressure, vapourPressure, temperature float64) float64 {
	return (pressure - vapourShare*vapourPressure) / (gasConstant * temperature)
}
