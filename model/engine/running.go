package engine

import "backspan/model/part"

// Running is the engine at one operating point on site.
type Running struct {
	Power, Speed float64 // at the crank, W and rad/s
	Torque       float64 // N·m

	PeakPower, PeakSpeed      float64 // full throttle on site, W and rad/s
	LowestSpeed, HighestSpeed float64 // of the full-throttle curve, rad/s
	SpeedLimit                float64 // rad/s
	Displacement              float64 // m³

	MeanEffectivePressure float64 // brake, Pa
	MeanPistonSpeed       float64 // m/s

	FuelFlow       float64 // kg/s
	FuelVolumeFlow float64 // m³/s
	IdleFuelFlow   float64 // without load, m³/s
	FuelHeat       float64 // W
	HeatToCylinder float64 // from cylinder and head, W

	Cycle                 Cycle
	PeakEffectivePressure float64 // brake, at peak power in the reference air, Pa
	Correction            Correction
	CorrectionFactor      float64 // reference power over site power

	// Of the pulsation of torque, all over the mean torque.
	PeakTorqueShare, LeastTorqueShare float64
	FiringHarmonicShare               float64 // amplitude at the firing order
}

// At examines the engine at a brake power, W, and a crank speed, rad/s; part
// throttle is allowed.
func (e Engine) At(power, speed float64) Running {
	r := Running{
		Power: power, Speed: speed,
		LowestSpeed: e.lowest, HighestSpeed: e.highest, SpeedLimit: e.spec.SpeedLimit, Displacement: e.displacement,
		MeanPistonSpeed: e.MeanPistonSpeed(speed),
		FuelFlow:        e.FuelFlow(power, speed), FuelHeat: e.FuelHeat(power, speed), HeatToCylinder: e.Heat(power),
		IdleFuelFlow: e.FuelFlow(0, e.spec.IdleSpeed) / e.spec.FuelDensity,
		Cycle:        e.spec.Cycle, Correction: e.spec.Correction, CorrectionFactor: e.factor,
	}
	if speed > 0 {
		r.Torque = power / speed
	}
	r.FuelVolumeFlow = r.FuelFlow / e.spec.FuelDensity
	r.PeakPower, r.PeakSpeed = e.Peak()
	r.MeanEffectivePressure = e.meanEffectivePressure(r.Torque)
	r.PeakEffectivePressure = e.meanEffectivePressure(e.curve.torque(r.PeakSpeed))
	r.pulsate(e.Pulsation(power, speed))
	return r
}

func (r *Running) pulsate(p part.Pulsation) {
	if !(p.Mean > 0) {
		return
	}
	peak, least := extremes(p)
	r.PeakTorqueShare, r.LeastTorqueShare = peak/p.Mean, least/p.Mean
	r.FiringHarmonicShare = p.Harmonics[0].Amplitude() / p.Mean
}
