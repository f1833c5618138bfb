package flight

import (
	"math"

	"backspan/model/param"
)

// cruise burns the fuel at trim speed in level flight and still air. Fuel flow
// follows a power of the mass through the two masses at which it is known; with
// one known it stays the same.
//
//	t = ∫ dm/F,  s = ∫ V dm/F,  F = F₀ (m/m₀)^b,  V = V₀ (m/m₀)^½
//
// b = 3/2 is the case of Breguet's formulas.
func (r *Result) cruise(in *Input) {
	flow := in.LevelFuelFlow
	if !flow.Known || flow.Value <= 0 || in.FuelDensity <= 0 {
		return
	}
	r.LevelFuel = param.Known(flow.Value / in.FuelDensity)
	left := 1 - in.FuelMass/r.AllUp
	if !(left > 0) {
		return
	}
	exponent := 0.0
	if light := in.LightFuelFlow; light.Known && light.Value > 0 && left < 1 {
		exponent = math.Log(light.Value/flow.Value) / math.Log(left)
	}
	r.Endurance = param.Known(r.AllUp / flow.Value * burnt(left, 1-exponent))
	r.Range = param.Known(r.TrimSpeed * r.AllUp / flow.Value * burnt(left, 1.5-exponent))
}

// burnt is the integral of x to the power of p−1 from left to 1.
func burnt(left, p float64) float64 {
	grown := p * math.Log(left)
	if math.Abs(grown) < 1e-12 {
		return -math.Log(left)
	}
	return -math.Expm1(grown) / p
}
