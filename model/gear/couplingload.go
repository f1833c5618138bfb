package gear

import (
	"backspan/model/coupling"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/torsion"
)

// stiffJoint stands for a coupling that does not give, N·m/rad: ten thousand
// times the teeth.
const stiffJoint = 1e9

// couplingRise is how far the torque through the coupling rises above its mean,
// N·m.
func (t *twist) couplingRise(torque *part.Pulsation, speed float64) float64 {
	chain := t.chain
	if chain.Count == 2 {
		chain = torsion.Row(t.crank, torsion.Spring{Stiffness: stiffJoint}, t.pinion, t.mesh, t.propeller)
	}
	wave := chain.Through(0, torque, speed)
	most, _ := wave.Extremes()
	return most
}

// examineCoupling is the coupling at a duty, with what turns on either side. On
// the run-up its swing is taken from that in the teeth, which are far stiffer;
// the mean is the same in both.
func (g *Gear) examineCoupling(at part.Duty, train part.Train, p *MeshPulsation) coupling.Result {
	l := coupling.Load{Peak: p.CouplingPeak, DampingHeat: p.CouplingHeat, Speed: at.CrankSpeed}
	if p.Why == "" {
		l.RunUpPeak = param.Finite(p.PeakMean + (p.Peak-p.PeakMean)*p.CouplingRise)
	}
	if at.CrankSpeed > standstill && at.Power/at.CrankSpeed > leastTorque {
		l.Torque = at.Power / at.CrankSpeed
	}
	if train.Crank != nil {
		idle := train.Crank.IdleSpeed()
		l.IdleSpeed = param.Slot{Value: idle, Known: idle > 0}
	}
	if train.CrankInertia > 0 && train.PropellerInertia > 0 {
		t := g.twist(train)
		_, drive := g.spec.Coupling.Inertias()
		l.EngineInertia, l.DriveInertia = train.CrankInertia, t.pinion-drive+t.propeller
	}
	return g.spec.Coupling.Examine(l)
}
