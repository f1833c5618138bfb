package propeller

import "math"

// DiscSpeed is the induced speed at an ideal actuator disc that gives thrust
// (≥ 0, N) at an airspeed (≥ 0), m/s. Source: Rankine and Froude's momentum
// theory.
func DiscSpeed(thrust, airspeed, density, area float64) float64 {
	half := airspeed / 2
	return math.Sqrt(half*half+thrust/(2*density*area)) - half
}

// IdealThrust is what an ideal actuator disc gives standing still for a power
// (≥ 0, W): no propeller of that area gives more. Source: Rankine and Froude's
// momentum theory.
func IdealThrust(power, density, area float64) float64 {
	return math.Cbrt(2 * density * area * power * power)
}
