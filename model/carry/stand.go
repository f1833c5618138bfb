package carry

import (
	"math"

	"backspan/model/unit"
)

const gravity = unit.StandardGravity

// Load is the machine on the pilot's back: mass kg, centre of gravity behind
// the back plane and above the hip axis, m.
type Load struct{ Mass, CGAft, CGUp float64 }

// Result is how the load is carried.
type Result struct {
	Mass float64 // true mass of the load, kg

	HipMoment float64 // upright, N·m

	Lean       float64 // trunk, balanced by bending at the hip alone, rad
	LeanAnkle  float64 // whole body, balanced from the ankles alone, rad
	LeanShared float64 // trunk, balanced with the pilot's share, rad
	Balances   bool    // a forward lean balances the load

	CGShift     float64 // of pilot and load together, aft, upright, m
	HeelReserve float64 // shift at which the pilot tips over the heels, m

	StrapPull     float64 // horizontal, both shoulders, N
	ShoulderForce float64 // on each shoulder, N

	EquivalentMass     float64 // same hip moment at the reference depth, kg
	EquivalentMassLean float64 // same balanced lean at the reference depth, kg
	LeanEquivalent     bool    // there is such a mass
	MassPerDepth       float64 // equivalent mass per depth, kg/m
	ReferenceDepth     float64 // m
}

// Stand puts the load on the standing pilot.
//
// With m the load, b the back plane behind the hip, d and h the load's centre
// of gravity behind the back and above the hip, m_H and c the mass of head,
// arms and trunk and its centre above the hip:
//
//	hip moment, upright        m·g·(b + d)
//	lean at the hip            tan θ = m(b + d) / (m_H·c + m·h)
//	lean at the ankle          tan α = m(b + d) / (M·z_c + m·z_u), heights above the ankle
//	equivalent mass            m(b + d) / (b + d_ref)
//
// Source: statics.
func Stand(p Pilot, l Load) Result {
	seg := Of(p.Segments)
	arm := p.BackBehindHip + l.CGAft
	reference := p.BackBehindHip + p.ReferenceDepth
	upper := seg.UpperMass * p.Mass * seg.UpperCentre * p.Stature // m_H·c

	r := Result{
		Mass:        l.Mass,
		HipMoment:   l.Mass * gravity * arm,
		CGShift:     l.Mass * arm / (p.Mass + l.Mass),
		HeelReserve: p.heelReserve(),

		StrapPull:      l.Mass * gravity * l.CGAft / p.StrapHeight,
		EquivalentMass: l.Mass * arm / reference,
		MassPerDepth:   l.Mass / reference,
		ReferenceDepth: p.ReferenceDepth,
	}
	r.ShoulderForce = math.Hypot(r.StrapPull, (1-p.HipBeltShare)*l.Mass*gravity) / 2
	r.lean(p, l, seg, arm, upper)
	if t := l.Mass * arm / (upper + l.Mass*l.CGUp); r.Balances && t*l.CGUp < reference {
		r.EquivalentMassLean = t * upper / (reference - t*l.CGUp)
		r.LeanEquivalent = true
	}
	return r
}

// lean finds the balanced postures. With a share of the lean at the hip the
// legs tilt by the rest of the ankle lean, and the trunk closes the balance.
func (r *Result) lean(p Pilot, l Load, seg Segments, arm, upper float64) {
	stiff := (seg.Centre - seg.Ankle) * p.Stature * p.Mass // M·z_c
	hip := (seg.Hip - seg.Ankle) * p.Stature
	pull := l.Mass * arm
	atHip := upper + l.Mass*l.CGUp
	atAnkle := stiff + l.Mass*(hip+l.CGUp)
	r.Balances = atHip > 0 && atAnkle > 0
	if !r.Balances {
		return
	}
	r.Lean = math.Atan2(pull, atHip)
	r.LeanAnkle = math.Atan2(pull, atAnkle)
	legs := (stiff - upper + l.Mass*hip) * math.Sin((1-p.HipShare)*r.LeanAnkle)
	r.LeanShared = r.Lean - math.Asin(legs/math.Hypot(atHip, pull))
}

// Split divides the difference in upright hip moment from load a to load b,
// N·m, between their masses and their depths:
//
//	from mass  = g·(m_b − m_a)·½[(b + d_a) + (b + d_b)]
//	from depth = g·(d_b − d_a)·½[m_a + m_b]
//
// The two sum to the whole difference and neither depends on which change is
// made first: it is the Shapley value of the product of two factors.
func (p Pilot) Split(a, b Load) (fromMass, fromDepth float64) {
	fromMass = gravity * (b.Mass - a.Mass) * (p.BackBehindHip + (a.CGAft+b.CGAft)/2)
	fromDepth = gravity * (b.CGAft - a.CGAft) * (a.Mass + b.Mass) / 2
	return fromMass, fromDepth
}
