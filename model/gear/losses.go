package gear

import "math"

// Losses is where the power goes at one point, W.
type Losses struct {
	Mesh     float64
	Churning float64
	Windage  float64
	Bearings float64
	Seals    float64
}

// Total is the sum of the losses, W.
func (l Losses) Total() float64 { return l.Mesh + l.Churning + l.Windage + l.Bearings + l.Seals }

// lossLaw gives the losses at any power and speed for one temperature of the oil.
type lossLaw struct {
	mesh     meshLoss
	churning churning
	windage  float64
	bearings [4]bearingDrag
	seals    float64
}

// standstill is the speed of the crank in rad/s up to which it counts as
// standing: far below any idle, where torque has no meaning.
const standstill = 1.0

// at gives the losses at a power in W above zero and a speed of the crank in
// rad/s above standstill.
func (l *lossLaw) at(power, speed float64) Losses {
	torque := power / speed
	logSpeed := math.Log(speed)
	flow := math.Exp(2.0 / 3 * logSpeed)
	loading := torque * math.Sqrt(torque)
	bearings := 0.0
	for i := range l.bearings {
		bearings += l.bearings[i].power(speed, flow, loading)
	}
	return Losses{
		Mesh:     l.mesh.power(power, torque, logSpeed),
		Churning: l.churning.power(speed, logSpeed),
		Windage:  l.windage * math.Exp(windagePower*logSpeed),
		Bearings: bearings,
		Seals:    l.seals * speed,
	}
}

// lossLaw sets up the losses at a temperature of the oil in K.
func (g *Gear) lossLaw(temperature float64) lossLaw {
	s, m := &g.spec, &g.geometry
	kinematic := s.oil().Viscosity(temperature)
	dynamic := kinematic * s.OilDensity
	slow := 1 / m.Ratio()

	l := lossLaw{mesh: newMeshLoss(m, dynamic, s.Roughness, s.Lubricant)}
	if s.DippingGear == DipWheel {
		l.churning = newChurning(m, m.Driven, slow, s.DipDepth, s.OilVolume, kinematic, s.OilDensity)
	} else {
		l.churning = newChurning(m, m.Pinion, 1, s.DipDepth, s.OilVolume, kinematic, s.OilDensity)
	}
	l.windage = windage(m.Pinion, m.FaceWidth, 1, dynamic) + windage(m.Driven, m.FaceWidth, slow, dynamic)

	perTorque := m.forces(1)
	radial := math.Hypot(perTorque.Tangential, perTorque.Radial) / 2
	b := &g.bearings
	ahead, behind := 0.0, perTorque.Axial
	if s.Held.ThrustAhead {
		ahead, behind = behind, ahead
	}
	l.bearings[0] = newBearingDrag(b.wheelEngine, radial, ahead, s.BearingOilFactor, kinematic, slow)
	l.bearings[1] = newBearingDrag(b.wheelPropeller, radial, behind, s.BearingOilFactor, kinematic, slow)
	if !s.Held.OnCrank {
		l.bearings[2] = newBearingDrag(b.pinion, radial, perTorque.Axial, s.BearingOilFactor, kinematic, 1)
		l.bearings[3] = newBearingDrag(b.pinion, radial, 0, s.BearingOilFactor, kinematic, 1)
	}
	l.seals = sealDrag(b.wheelPropeller.Bore, s.SealMaterial) * slow
	if s.PinionSeal {
		l.seals += sealDrag(b.pinion.Bore, s.SealMaterial)
	}
	return l
}
