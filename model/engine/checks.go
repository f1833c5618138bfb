package engine

import (
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

// Checks holds the operating point against the engine's limits; marginAsked is
// the share of a limit below which a check is thin.
func (r Running) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	return append(cs,
		reading.AtMost("engine.speed_limit", "Engine speed allowed, standing", r.Speed, r.SpeedLimit, marginAsked, unit.RPM).
			Source("Highest allowed speed, as set").
			Advice("Raise Nominal pitch or Pitch trim, or Diameter, or correct Highest allowed speed."),
		reading.AtMost("engine.air_correction_valid", "Air correction within its standard",
			math.Abs(r.CorrectionFactor-1), correctionBand, 0, unit.One).Warn().
			Source(r.Correction.source()+"; stated for factors of 0.93 to 1.07").
			Advice("Take the power as a guess here: Site altitude and Warmer than standard by lie far from the reference air."),
		r.pressureTypical(),
	)
}

// pressureTypical tells whether the curve is believable: mean effective
// pressure at peak power, in the reference air, within the usual band.
func (r *Running) pressureTypical() reading.Check {
	const key, label = "engine.pressure_typical", "Mean pressure at peak is usual"
	low, high := r.Cycle.typicalPressure()
	p := r.PeakEffectivePressure
	c := reading.AtMost(key, label, p, high, 0, unit.Bar)
	if p < (low+high)/2 {
		c = reading.AtLeast(key, label, p, low, 0, unit.Bar)
	}
	return c.Warn().Source("from memory: Heywood; Blair").
		Advice("Check Bore, Stroke, Cylinders and Working cycle against Power curve, or Mean pressure at peak power.")
}
