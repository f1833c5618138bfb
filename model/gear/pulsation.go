package gear

import (
	"math"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/torsion"
)

// MeshPulsation is what the engine's pulsation makes of the torque in the mesh,
// torques at the pinion.
type MeshPulsation struct {
	Why    string  // why it is not known, empty when it is
	Mean   float64 // N·m
	Swing  float64 // sum of the heights of the harmonics that pass the mesh, N·m
	Most   float64 // greatest, each harmonic with its phase, N·m
	Least  float64 // least; below 0 the teeth part, N·m
	Factor float64 // greatest torque over the mean
	Wear   float64 // cubic mean of the torque over the mean: what wears bearings

	CouplingPeak param.Slot // greatest torque through the coupling, N·m
	CouplingHeat param.Slot // what its damping turns to heat, W
	CouplingRise float64    // swing of the torque through the coupling over that through the teeth, about

	Torsional param.Slot // frequency of crank against propeller over the coupling, Hz
	Second    param.Slot // frequency of pinion against wheel over the teeth, Hz

	RunUp RunUp
	Idle  IdleMesh

	// The greatest torque from idle, or from where a clutch grips, up to this
	// point, each harmonic with its phase.
	Peak      float64 // N·m
	PeakMean  float64 // of the torque at that speed, N·m
	PeakSpeed float64 // of the crank, rad/s
}

// Departure is how far the torque strays from its mean, the larger way, N·m.
func (p *MeshPulsation) Departure() float64 { return max(p.Most-p.Mean, p.Mean-p.Least) }

// Torsional is the frequency of crank against propeller over the coupling, Hz,
// unknown without its stiffness.
func (r Result) Torsional() param.Slot { return r.Pulsation.Torsional }

// TorsionalSecond is the frequency of pinion against wheel over the teeth, Hz,
// unknown without the inertias.
func (r Result) TorsionalSecond() param.Slot { return r.Pulsation.Second }

// TurnsAt reports whether the propeller turns with the crank at a speed of the
// crank, rad/s: always, unless a clutch is out.
func (g Gear) TurnsAt(crankSpeed float64) bool { return !g.spec.Coupling.OutAt(crankSpeed) }

// twist is the train as a row of inertias seen from the crank: crank and the
// coupling's engine half, its drive half with the pinion, and the wheel with
// the propeller. The mesh is the last spring.
type twist struct {
	crank, pinion, propeller float64 // kg·m²
	mesh                     torsion.Spring
	chain                    torsion.Chain
}

func (t *twist) last() int { return t.chain.Count - 2 }

// twist joins the train. Without a coupling's stiffness crank and pinion are
// one. Shafts, bearings and case are taken as stiff: the true mesh swings
// slower.
func (g *Gear) twist(train part.Train) twist {
	engine, drive := g.spec.Coupling.Inertias()
	u := g.geometry.Ratio()
	t := twist{
		crank:     train.CrankInertia + engine,
		pinion:    drive + g.pinionInertia(),
		propeller: (train.PropellerInertia + g.SpinningInertia()) / (u * u),
	}
	give, damping := g.spec.Coupling.Spring(), g.spec.MeshDamping
	k := g.meshSpring()
	if !give.Known {
		t.mesh = torsion.Damped(k, damping, torsion.Alone(t.crank+t.pinion, k, t.propeller))
		t.chain = torsion.Pair(t.crank+t.pinion, t.mesh, t.propeller)
		return t
	}
	soft := torsion.Alone(t.crank, give.Value, t.pinion+t.propeller)
	t.mesh = torsion.Damped(k, damping, torsion.Alone(t.pinion, k, t.propeller))
	t.chain = torsion.Row(t.crank, torsion.Damped(give.Value, g.spec.Coupling.Damping, soft), t.pinion, t.mesh, t.propeller)
	return t
}

// usualMesh is the mean mesh stiffness per width of steel gears where these
// teeth lie outside the method, N/(m·m). Source: ISO 6336-1, from memory.
const usualMesh = 20e9

// meshSpring is the teeth's stiffness against twist at the pinion's base
// circle under a full load, N·m/rad. Source: ISO 6336-1, method B, from memory.
func (g *Gear) meshSpring() float64 {
	perWidth := usualMesh
	if c := g.teeth.toothStiffness; c > 0 && g.geometry.ContactRatio >= 1 {
		perWidth = c * (0.75*g.geometry.ContactRatio + 0.25) * 1e9
	}
	r := g.geometry.Pinion.BaseDiameter / 2
	return perWidth * g.geometry.FaceWidth * r * r
}

// meshPulsation carries the harmonics of the crank's torque through the mesh.
//
// The load factor is the greatest over the mean torque with the phases as they
// arrive. The pinion's teeth meet the same angles of the crank in every turn,
// so one of them bears that peak every time: a sum over a spectrum of loads
// would only flatter it.
func (g *Gear) meshPulsation(at part.Duty, train part.Train) MeshPulsation {
	switch {
	case !(at.Power > 0) || !(at.CrankSpeed > 0):
		return MeshPulsation{Why: noTorque}
	case train.Crank == nil:
		return MeshPulsation{Why: "the engine's torque through a turn is not known"}
	case !(train.CrankInertia > 0) || !(train.PropellerInertia > 0):
		return MeshPulsation{Why: "the inertias of crank and propeller are not known"}
	}
	t := g.twist(train)
	p := MeshPulsation{Mean: at.Power / at.CrankSpeed}
	torque := train.Crank.Pulsation(at.Power, at.CrankSpeed)
	wave := t.chain.Through(t.last(), &torque, at.CrankSpeed)
	most, least := wave.Extremes()
	p.Swing, p.Most, p.Least = wave.Heights(), p.Mean+most, p.Mean+least
	p.Factor, p.Wear = p.Most/p.Mean, wave.CubicMean(p.Mean)/p.Mean
	p.CouplingPeak = param.Known(p.Mean + t.couplingRise(&torque, at.CrankSpeed))
	p.CouplingRise = 1 + t.pinion/t.propeller
	if t.chain.Count > 2 {
		p.CouplingHeat = param.Finite(t.chain.Heat(0, &torque, at.CrankSpeed))
	}
	t.frequencies(&p)
	p.Idle = g.idleMesh(at, train.Crank, &t)
	g.runUp(&p, at, train.Crank, &t)
	return p
}

// frequencies fills in the natural ones. The mesh is the stiffer spring: its
// mode is the highest.
func (t *twist) frequencies(p *MeshPulsation) {
	natural := t.chain.Natural()
	p.Second = param.Known(natural[t.last()] / (2 * math.Pi))
	if t.chain.Count > 2 {
		p.Torsional = param.Known(natural[0] / (2 * math.Pi))
	}
}
