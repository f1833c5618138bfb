// Package air is the air of the site: the standard atmosphere at the site's
// altitude, moved by the day's temperature and its humidity.
package air

import (
	"fmt"
	"math"

	"backspan/model/unit"
)

// Constants of the standard atmosphere. Source: ISO 2533 (ICAO Doc 7488), from
// memory.
const (
	seaLevelPressure    = 101325.0  // Pa
	seaLevelTemperature = 288.15    // K
	lapseRate           = 0.0065    // K/m, troposphere
	gasConstant         = 287.05287 // J/(kg·K), dry air
	heatCapacityRatio   = 1.4
)

// Constants of the law of viscosity. Source: ISO 2533, from memory.
const (
	sutherlandFactor      = 1.458e-6 // kg/(m·s·√K)
	sutherlandTemperature = 110.4    // K
)

// The heights between which Standard answers, geopotential, m.
const (
	lowest  = -500.0
	highest = 11000.0
)

const pressureExponent = unit.StandardGravity / (lapseRate * gasConstant)

// Standard returns the dry standard air at a geopotential altitude, m. It is
// an error outside −500 to 11 000 m. Source: ISO 2533, troposphere.
func Standard(geopotential float64) (State, error) {
	if !(geopotential >= lowest && geopotential <= highest) {
		return State{}, fmt.Errorf("the standard atmosphere is given from %g to %g m, not at %g m", lowest, highest, geopotential)
	}
	return Spec{Altitude: geopotential}.State(), nil
}

func standardTemperature(geopotential float64) float64 {
	return seaLevelTemperature - lapseRate*geopotential
}

func standardPressure(geopotential float64) float64 {
	return seaLevelPressure * math.Pow(standardTemperature(geopotential)/seaLevelTemperature, pressureExponent)
}

// densityAltitude is the altitude, m, at which the standard atmosphere has the
// density, kg/m³: the troposphere's law solved for the height.
func densityAltitude(density float64) float64 {
	const seaLevelDensity = seaLevelPressure / (gasConstant * seaLevelTemperature)
	return seaLevelTemperature / lapseRate * (1 - math.Pow(density/seaLevelDensity, 1/(pressureExponent-1)))
}

// soundSpeed is that of dry air, m/s. Humidity would add less than half a
// percent in saturated air at 25 °C.
func soundSpeed(temperature float64) float64 {
	return math.Sqrt(heatCapacityRatio * gasConstant * temperature)
}

// Viscosity is the dynamic viscosity of air at a temperature, K, in Pa·s.
// Source: Sutherland's law as in ISO 2533.
func Viscosity(temperature float64) float64 {
	return sutherlandFactor * temperature * math.Sqrt(temperature) / (temperature + sutherlandTemperature)
}
