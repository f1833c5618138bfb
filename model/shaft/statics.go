package shaft

import "math"

// Vector is a force, N, or a moment, N·m, across the axle. A moment's
// components are those of the plane in which it bends.
type Vector struct {
	Along  float64 // the line from the propeller's axis to the crank's
	Across float64 // at right angles to it
}

// Size is the magnitude.
func (v Vector) Size() float64 { return math.Hypot(v.Along, v.Across) }

func (v Vector) plus(w Vector, times float64) Vector {
	return Vector{v.Along + times*w.Along, v.Across + times*w.Across}
}

// Load is a force and a couple at a place on the axle, m ahead of the
// propeller plate. The couple has the sense of the moment that a positive
// force behind a section puts on it.
type Load struct {
	At     float64
	Force  Vector
	Couple Vector
}

// Places are those of the two bearings, m ahead of the propeller plate; they
// must differ.
type Places struct{ PropSide, EngineSide float64 }

// Reactions are the forces with which the two bearings hold the axle, N.
type Reactions struct{ PropSide, EngineSide Vector }

// Reactions balances the loads, wherever they stand, overhung ends included.
// Source: statics.
func (p Places) Reactions(loads ...Load) Reactions {
	var force, moment Vector
	for i := range loads {
		l := &loads[i]
		force = force.plus(l.Force, 1)
		moment = moment.plus(l.Couple, 1).plus(l.Force, p.PropSide-l.At)
	}
	far := Vector{}.plus(moment, 1/(p.EngineSide-p.PropSide))
	return Reactions{PropSide: Vector{}.plus(force, -1).plus(far, -1), EngineSide: far}
}

// Loads are the reactions as loads at their places.
func (r Reactions) Loads(p Places) [2]Load {
	return [2]Load{{At: p.PropSide, Force: r.PropSide}, {At: p.EngineSide, Force: r.EngineSide}}
}

// Times is the load, or what holds it, grown by a factor.
func (l Load) Times(x float64) Load {
	return Load{At: l.At, Force: Vector{}.plus(l.Force, x), Couple: Vector{}.plus(l.Couple, x)}
}

// Minus is the vector from w to v.
func (v Vector) Minus(w Vector) Vector { return v.plus(w, -1) }

// BendingMoment is the larger of those on either side of a section, N·m.
func BendingMoment(at float64, loads ...Load) float64 {
	var behind, ahead Vector
	for i := range loads {
		l := &loads[i]
		if l.At <= at {
			ahead = ahead.plus(l.Force, at-l.At).plus(l.Couple, 1)
		}
		if l.At < at {
			behind = behind.plus(l.Force, at-l.At).plus(l.Couple, 1)
		}
	}
	return math.Max(behind.Size(), ahead.Size())
}
