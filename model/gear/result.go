package gear

import (
	"math"

	"backspan/model/bearing"
	"backspan/model/coupling"
	"backspan/model/part"
)

// Result is the reduction examined at one duty, with the oil as warm as that
// duty makes it.
type Result struct {
	Geometry         Geometry
	Forces           Forces
	Losses           Losses
	LeanMeshLoss     float64 // by the other report, W
	Sump             Sump
	PitchLineSpeed   float64 // m/s
	SlidingSpeed     float64 // greatest, m/s
	MeshFrequency    float64 // Hz
	LeastPinionTeeth float64 // unshifted, for this ratio
	Backlash         Backlash
	SealSpeed        float64 // greatest under a lip, m/s
	SeatWall         float64 // least metal between two bearing seats, m
	Pulsation        MeshPulsation
	Coupling         coupling.Result
	Strength         Strength
	CaseDepth        CaseDepth
	Power            float64 // at the crank, W
	TiltedDip        float64 // of the dipping gear with the case tilted, m
	DipVolume        float64 // of oil that the dip at rest asks for, m³

	spec     Spec
	bearings bearings
}

// Backlash is the play between the flanks in the normal section, m.
type Backlash struct {
	Known   bool
	Drawn   float64 // at 20 °C
	Running float64 // with case and gears as warm as the oil
	Least   float64 // the smaller of cold start, 20 °C and running
	Asked   float64 // what the standard recommends at least
}

// Examine computes everything about the reduction at a duty, with what turns
// on either side of it.
func (g Gear) Examine(at part.Duty, train part.Train) Result {
	m := &g.geometry
	r := Result{
		Geometry:         *m,
		Sump:             g.solveSump(at),
		PitchLineSpeed:   m.pitchLineSpeed(at.CrankSpeed),
		SlidingSpeed:     m.slidingSpeed(at.CrankSpeed),
		MeshFrequency:    m.meshFrequency(at.CrankSpeed),
		LeastPinionTeeth: LeastPinionTeeth(m.Ratio(), g.spec.Rack.Rack().Addendum, g.spec.PressureAngle, m.HelixAngle),
		SealSpeed:        g.sealSpeed(at.CrankSpeed),
		SeatWall:         g.seatWall(),
		CaseDepth:        g.hardDepth(),
		Power:            at.Power,
		TiltedDip:        g.tiltedDip(g.spec.OilTilt),
		DipVolume:        g.dipVolume(),
		spec:             g.spec,
		bearings:         g.bearings,
	}
	r.Pulsation = MeshPulsation{Why: noTorque}
	if at.CrankSpeed > standstill && at.Power/at.CrankSpeed > leastTorque {
		r.Pulsation = g.meshPulsation(at, train)
	}
	r.Coupling = g.examineCoupling(at, train, &r.Pulsation)
	r.Strength = g.strength(at, r.Pulsation)
	if at.CrankSpeed > standstill && at.Power > 0 {
		torque := at.Power / at.CrankSpeed
		law := g.lossLaw(r.Sump.Temperature)
		r.Forces = m.forces(torque)
		r.Losses = law.at(at.Power, at.CrankSpeed)
		r.LeanMeshLoss = m.leanMeshLoss(torque, at.CrankSpeed, r.Sump.Viscosity)
	}
	r.Backlash = g.backlash(at.AirTemperature, r.Sump.Temperature)
	return r
}

func (g *Gear) sealSpeed(speed float64) float64 {
	slow := g.bearings.wheelPropeller.Bore / 2 * speed / g.geometry.Ratio()
	if !g.spec.PinionSeal {
		return slow
	}
	return math.Max(slow, g.bearings.pinion.Bore/2*speed)
}

func (g *Gear) seatWall() float64 {
	wheel := math.Max(g.bearings.wheelEngine.Outside, g.bearings.wheelPropeller.Outside)
	pinion := g.bearings.pinion.Outside
	if g.spec.Held.OnCrank {
		pinion = g.bearings.pinion.Bore
	}
	return g.geometry.CentreDistance - (pinion+wheel)/2
}

// backlash grows with temperature, because the aluminium case spreads the
// shafts more than the steel gears grow. The least asked is ISO/TR 10064-2's,
// from memory.
func (g *Gear) backlash(air, oil float64) Backlash {
	m := &g.geometry
	b := Backlash{Known: g.spec.Backlash.Known, Drawn: g.spec.Backlash.Value}
	b.Asked = 2.0 / 3 * (0.06e-3 + 0.0005*m.CentreDistance + 0.03*m.Module)
	if !b.Known {
		return b
	}
	perKelvin := 2 * m.CentreDistance * (bearing.AluminiumExpansion - bearing.SteelExpansion) *
		math.Sin(m.WorkingPressureAngle) * math.Cos(m.BaseHelixAngle)
	b.Running = b.Drawn + perKelvin*(oil-bearing.DrawnTemperature)
	cold := b.Drawn + perKelvin*(air-bearing.DrawnTemperature)
	b.Least = math.Min(math.Min(b.Drawn, b.Running), cold)
	return b
}
