package noise

import (
	"backspan/model/param"
	"backspan/model/unit"
)

const ultralights = "Acoustics of Ultralight Airplanes, Journal of Aircraft (abstract)"

// Spec is what of a machine's noise is not computed, and what is asked of its
// tip speed.
type Spec struct {
	EngineLevel    param.Slot // measured at full throttle at EngineDistance, dB(A)
	EngineDistance float64    // m
	EngineToEar    float64    // exhaust and intake to the nearer ear, m
	PusherExcess   float64    // of the tones behind body and cage over those in smooth air, dB
	TipMachGuide   float64    // for quiet flying
}

// Default is a machine whose engine has not been measured.
func Default() Spec {
	return Spec{EngineDistance: 7, EngineToEar: 0.6, PusherExcess: 10, TipMachGuide: 0.5}
}

// Params lists what a user may set, in the order a form shows it.
func (s *Spec) Params() []param.Param {
	return []param.Param{
		param.Open(&s.EngineLevel, "engine_level", "Engine noise, measured", unit.Decibel).Within(40, 130).
			Help("exhaust, intake and casing at full throttle, propeller off or screened; leave empty and the propeller alone is reckoned"),
		param.Number(&s.EngineDistance, "engine_distance", "Distance of that measurement", unit.Metre).Within(0.5, 200).Typical(1, 25).
			From("own measurement").Help("from the engine to the meter"),
		param.Number(&s.EngineToEar, "engine_to_ear", "Exhaust to the nearer ear", unit.Metre).Within(0.2, 3).Typical(0.4, 0.9).
			From("estimate").Help("for the engine's share at the pilot's ear"),
		param.Number(&s.PusherExcess, "pusher_excess", "Tones louder for body and cage", unit.PlainDecibel).Within(0, 25).Typical(5, 15).
			From(ultralights + ": pushers measured 5 to 15 dB louder than tractors; the middle, put on the tones alone").
			Help("the blades cut through the wake of pilot and cage; added to the tones of smooth air, 0 shows the theory alone"),
		param.Number(&s.TipMachGuide, "tip_mach_guide", "Tip Mach number for quiet flying", unit.One).Within(0.3, 0.9).Typical(0.4, 0.6).
			From(ultralights + ": well below 0.5 for strict limits").
			Help("a guide: blade tips above it are heard far off"),
	}
}
