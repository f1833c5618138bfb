package engine

import (
	"math"

	"backspan/model/air"
)

// Correction is the standard by which power is carried from its reference air
// to another.
type Correction string

// The correction standards.
const (
	SAEJ1349 Correction = "SAE J1349"
	ISO1585  Correction = "ISO 1585"
)

// correctionBand is how far from 1 the factor may lie for the standards to
// stand by it.
const correctionBand = 0.07

// The reference air of both standards, dry. Its density follows from the law
// of gases.
const (
	ReferencePressure    = 99000.0 // Pa
	ReferenceTemperature = 298.15  // K
	ReferenceDensity     = ReferencePressure / (287.05287 * ReferenceTemperature)
)

// factor is reference power over power in that air. The reference is 99 kPa
// of dry air at 25 °C.
//
// SAE J1349 (June 1990): 1.180 (99 kPa/p_dry) √(T/298) − 0.18, where T is the
// temperature in °C plus 273. ISO 1585: (99 kPa/p_dry)^1.2 (T/298)^0.6.
func (c Correction) factor(at air.State) float64 {
	pressure := ReferencePressure / (at.Pressure - at.VapourPressure)
	temperature := (at.Temperature - 0.15) / 298
	if c == ISO1585 {
		return math.Pow(pressure, 1.2) * math.Pow(temperature, 0.6)
	}
	return 1.180*pressure*math.Sqrt(temperature) - 0.18
}

func (c Correction) source() string {
	if c == ISO1585 {
		return "from memory: ISO 1585, spark-ignition engines"
	}
	return "SAE J1349, June 1990, spark-ignition engines"
}
