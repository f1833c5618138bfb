package cooling

import "backspan/model/param"

// Result is what the cooling costs at one crank power, and what it achieves.
type Result struct {
	PowerTaken float64 // from the crank, W
	Mass       float64 // kg
	Depth      float64 // along the thrust axis, m

	Kind   Kind
	Solved bool // what follows means something

	Head    Band    // today, standing at full throttle, K
	HotHead Band    // the same on the hot day, K
	Speed   float64 // of the air at the fins or the radiator, m/s
	Share   float64 // of the inflow that reaches the cylinder, without a fan
	AirSide float64 // conductance, W/K
	Heat    float64 // carried away, W
	Power   float64 // of the engine, W

	FreePower [3]param.Slot // that free air can cool on the hot day, W: least, middle, most

	Correction param.Slot // of K from the measurement
	Asked      bool       // a measurement is given
	HotDay     float64    // K
	Limit      float64    // K
	Gap        float64    // between fins, m

	GearCase  bool
	Covered   float64 // share of the fins behind a driven pulley
	Shade     float64 // of the inflow that the drive keeps off the cylinder, share
	OtherWays float64 // share of the heat that does not pass the fins

	Coolant, CoolantLimit  float64 // on the hot day, K
	FaceNeeded, MassNeeded float64 // m² and kg
}

// Cost is what the cooling s costs when the crank delivers power, W.
func Cost(s Spec, power float64) Result {
	r := Result{PowerTaken: s.PowerTaken(power), Kind: s.Kind}
	switch s.Kind {
	case Baffled:
		r.Mass = s.BaffleMass
	case Fan:
		r.Mass, r.Depth = s.FanMass, s.FanDepth
	case Liquid:
		r.Mass = s.LiquidMass
	}
	return r
}

// Work finds the head's temperature standing at full throttle, today and on
// the hot day, and the power that free air alone could cool.
func Work(s Spec, d Duty) Result {
	r := Cost(s, d.Power)
	m := newMachine(&s, &d)
	r.Solved, r.Power, r.Share, r.Gap = true, d.Power, m.cylinderInflow, m.fins.gap()
	r.HotDay, r.Limit, r.CoolantLimit = s.HotDay, s.HeadLimit, s.CoolantLimit
	r.GearCase, r.Covered, r.Shade, r.OtherWays = d.GearCase, m.covered, m.shade, s.OtherWays
	r.Asked = s.MeasuredHead.Known || s.MeasuredAir.Known
	r.Correction = m.measured()
	correction, scatter := 1.0, s.Scatter
	if r.Correction.Known {
		correction, scatter = r.Correction.Value, s.ScatterLeft
	}
	today := m.as(d.Power, d.AirDensity)
	r.Speed, r.AirSide = today.speed, today.air
	r.Head = m.band(today, correction, scatter, d.AirTemperature)
	r.Heat = today.air * (r.Head.Mid - d.AirTemperature)

	thin := d.Hot.Density
	hot := m.as(d.Hot.Power, thin)
	r.HotHead = m.band(hot, correction, scatter, s.HotDay)
	if s.Kind == Liquid {
		r.Coolant, r.FaceNeeded = m.coolant(hot, r.HotHead.Mid, s.HotDay, thin)
		r.MassNeeded = s.RadiatorMassPerFace*r.FaceNeeded + s.CircuitMass
	}
	if !s.Kind.inAir() {
		correction, scatter = 1, s.Scatter // the measurement tells nothing of free air
	}
	r.FreePower = [3]param.Slot{m.freePower(correction*(1+scatter), thin), m.freePower(correction, thin), m.freePower(correction/(1+scatter), thin)}
	return r
}
