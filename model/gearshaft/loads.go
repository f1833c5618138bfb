package gearshaft

import (
	"math"

	"backspan/model/gear"
	"backspan/model/shaft"
	"backspan/model/unit"
)

// twist is the torque on the pinion at the working point and where it peaks
// between idle and there, N·m.
type twist struct {
	mean, swing, most   float64 // the swing the larger way
	peakMean, peakSwing float64
	peakSpeed           float64 // over the working speed
}

// newTwist takes what the engine's pulsation leaves at the mesh. Where it is
// not known, the swing is what the application factor of the teeth adds.
func newTwist(g *gear.Shafting, crankSpeed float64) twist {
	t := twist{mean: g.Torque, swing: (g.Application - 1) * g.Torque, peakSpeed: 1}
	p := &g.Pulsation
	if p.Why == "" {
		t.swing = p.Departure()
	}
	if t.most = t.mean + t.swing; p.Why == "" {
		t.most = p.Most
	}
	t.peakMean, t.peakSwing = t.mean, t.most-t.mean
	if p.Why == "" && p.Peak > t.greatest() && crankSpeed > 0 {
		t.peakSpeed = math.Min(1, p.PeakSpeed/crankSpeed)
		t.peakMean = math.Min(t.mean*t.peakSpeed*t.peakSpeed, p.Peak)
		t.peakSwing = p.Peak - t.peakMean
	}
	return t
}

// greatest is the greatest torque on the pinion, N·m.
func (t *twist) greatest() float64 { return math.Max(t.most, t.peakMean+t.peakSwing) }

// leastTorque is the mean, N·m, below which nothing is worth comparing with it.
const leastTorque = 1e-3

// over is a torque over the mean of the working point, 0 where none passes.
func (t *twist) over(torque float64) float64 {
	if !(t.mean > leastTorque) {
		return 0
	}
	return torque / t.mean
}

// share is one part of the load on a shaft and how its bearings hold it.
type share struct {
	load shaft.Load
	held shaft.Reactions
}

// bending is what one part does at a section, N·m.
func (p *share) bending(at float64, places shaft.Places) float64 {
	held := p.held.Loads(places)
	return shaft.BendingMoment(at, p.load, held[0], held[1])
}

// line is one shaft with the parts of its load. The pinion has the mesh only.
type line struct {
	places         shaft.Places
	mesh, weight   share // at the working point
	imbalance      share
	gyro, gyroWear share // mean and cubic mean
	gyroPeak       share
	steady         shaft.Reactions // mesh and weight together
	axial          float64         // on the locating bearing, N, positive forward
	meshAxial      float64
}

// fixed is the bending at a section by what keeps its direction in space, the
// mesh force grown by a factor, N·m.
func (x *line) fixed(at, mesh float64) float64 {
	m, w := x.mesh.held.Loads(x.places), x.weight.held.Loads(x.places)
	return shaft.BendingMoment(at, x.mesh.load.Times(mesh), m[0].Times(mesh), m[1].Times(mesh), x.weight.load, w[0], w[1])
}

func balanced(p shaft.Places, l shaft.Load) share { return share{l, p.Reactions(l)} }

// meshes gives the forces of the mesh on the wheel and on the pinion. The
// wheel is pushed away from the crank's axis and in its own direction of turn;
// the axial force acts at the working circles. Source: statics.
func meshes(g *gear.Shafting, crankTurn float64) (wheel, pinion shaft.Load) {
	axial := g.WheelAxial(crankTurn)
	force := shaft.Vector{Along: -g.Radial, Across: -crankTurn * g.Tangential}
	wheel = shaft.Load{At: g.Places.Gears, Force: force, Couple: shaft.Vector{Along: axial * g.WheelWorking / 2}}
	pinion = shaft.Load{At: g.Places.Gears, Force: shaft.Vector{Along: -force.Along, Across: -force.Across},
		Couple: shaft.Vector{Along: axial * g.PinionWorking / 2}}
	return wheel, pinion
}

func wheelLine(s *Spec, g *gear.Shafting, mesh shaft.Load, crankTurn float64, l *shaft.Loads) line {
	p := shaft.Places{PropSide: g.Places.WheelPropBearing, EngineSide: g.Places.WheelEngineBearing}
	hub := -l.PropellerOverhang
	mass := math.Abs(l.PropellerWeight) / unit.StandardGravity
	along := func(force, couple float64) share {
		return balanced(p, shaft.Load{At: hub, Force: shaft.Vector{Along: force}, Couple: shaft.Vector{Along: couple}})
	}
	x := line{
		places: p, mesh: balanced(p, mesh), weight: along(l.PropellerWeight, 0),
		imbalance: along(mass*s.CentreOffset*l.Speed*l.Speed, 0), gyro: along(0, l.GyroCouple),
		gyroWear:  along(0, math.Max(math.Abs(l.GyroCouple), math.Abs(l.GyroWear))),
		gyroPeak:  along(0, math.Max(math.Abs(l.GyroCouple), math.Abs(l.GyroPeak))),
		meshAxial: g.WheelAxial(crankTurn),
	}
	x.axial = x.meshAxial + l.Thrust
	x.steady = p.Reactions(x.mesh.load, x.weight.load)
	return x
}

func pinionLine(g *gear.Shafting, mesh shaft.Load, crankTurn float64) line {
	p := shaft.Places{PropSide: g.Places.PinionPropBearing, EngineSide: g.Places.PinionEngineBearing}
	axial := -g.WheelAxial(crankTurn)
	x := line{places: p, mesh: balanced(p, mesh), meshAxial: axial, axial: axial}
	x.steady = x.mesh.held
	return x
}
