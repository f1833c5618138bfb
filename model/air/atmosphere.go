// Package air is the air of the site: the standard atmosphere at the site's
// altitude, moved by the day's temperature and its humidity.
package air

import (
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

// SeaLevelDensity is that of the dry standard air at sea level, kg/m³.
const SeaLevelDensity = seaLevelPressure / (gasConstant * seaLevelTemperature)

// Highest is the geopotential altitude, m, at which the troposphere ends and
// with it what this package knows.
const Highest = 11000.0

const pressureExponent = unit.StandardGravity / (lapseRate * gasConstant)

func standardTemperature(geopotential float64) float64 {
	return seaLevelTemperature - lapseRate*geopotential
}

func standardPressure(geopotential float64) float64 {
	return seaLevelPressure * math.Pow(standardTemperature(geopotential)/seaLevelTemperature, pressureExponent)
}

// densityAltitude is the altitude, m, at which the standard atmosphere has the
// density, kg/m³.
func densityAltitude(density float64) float64 {
	return Thinner(seaLevelTemperature, density/SeaLevelDensity)
}

// Thinner is how far above a place with a temperature, K, the density has
// fallen to a share (> 0) of that of the place, m: the troposphere's law solved
// for the height.
func Thinner(temperature, share float64) float64 {
	return temperature / lapseRate * (1 - math.Pow(share, 1/(pressureExponent-1)))
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
