package carry

import "backspan/model/stack"

// Machine is what is carried, from an empty to a full tank.
type Machine struct {
	Ready, Full, Empty Load
	Items              []stack.Item // of the ready machine
}

// Burden is what carrying costs beyond standing upright.
type Burden struct {
	Full, Empty End

	BeltWeight float64 // on the hip belt, N

	Upright, Leaning, Unloaded Disc // of the low back; leaning at the balanced lean by the hip
	Leans                      bool // there is such a lean

	WalkLow, WalkHigh float64 // metabolic power of the walk, W

	LiftLimit float64 // recommended weight limit, kg; 0 out of reach
	LiftIndex float64 // true mass over limit

	Depths []Thickness // the dearest first
}

// End is the machine at one end of its tank.
type End struct {
	Mass           float64 // true, kg
	HipMoment      float64 // upright, N·m
	EquivalentMass float64 // kg
}

// Bear finds what the machine asks of the pilot who stands as r says.
func Bear(p Pilot, r *Result, m Machine) Burden {
	b := Burden{
		Full: p.end(m.Full), Empty: p.end(m.Empty),
		BeltWeight: p.HipBeltShare * m.Ready.Mass * gravity,
		Upright:    p.Back.At(p.Mass, m.Ready, 0), Unloaded: p.Back.At(p.Mass, Load{}, 0),
		Leans:     r.Balances,
		LiftLimit: p.Lift.Hardest(m.Ready.CGAft),
		Depths:    p.Thicknesses(m.Items),
	}
	if b.Leans {
		b.Leaning = p.Back.At(p.Mass, m.Ready, r.Lean)
	}
	b.WalkLow, b.WalkHigh = p.Walk.Band(p.Mass, m.Ready.Mass)
	if b.LiftLimit > 0 {
		b.LiftIndex = m.Ready.Mass / b.LiftLimit
	}
	return b
}

func (p Pilot) end(l Load) End {
	moment := l.Mass * (p.BackBehindHip + l.CGAft)
	return End{l.Mass, gravity * moment, moment / (p.BackBehindHip + p.ReferenceDepth)}
}
