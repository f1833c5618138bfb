package shaft

import (
	"math"
	"slices"
)

// SteelModulus is Young's modulus of any steel, Pa. Source: ISO 6336-1,
// 206 000 N/mm², from memory.
const SteelModulus = 206e9

// Step is a length of a shaft of one diameter; places and diameters in m.
type Step struct{ From, To, Diameter, Bore float64 }

// stiffness is E I of a round section, N·m².
func (s *Step) stiffness(modulus float64) float64 {
	d, b := s.Diameter*s.Diameter, s.Bore*s.Bore
	return modulus * math.Pi / 64 * (d*d - b*b)
}

// node is a place where load or section changes.
type node struct {
	at         float64
	slope, sag Vector
}

// BentLine is the line to which loads bend a shaft, held without play and
// without give at its two bearings. Between nodes it is a cubic.
type BentLine struct{ nodes []node }

// Bend integrates M/EI twice along a stepped shaft under loads and the
// reactions to them, in two planes. Where no step is given the nearest one
// before it goes on. There must be at least one step. Source: beam theory of
// Bernoulli and Euler, exact for round steps.
func (p Places) Bend(steps []Step, modulus float64, loads ...Load) BentLine {
	held := p.Reactions(loads...).Loads(p)
	all := make([]Load, 0, len(loads)+len(held))
	all = append(append(all, loads...), held[:]...)
	l := BentLine{p.nodes(steps, all)}
	for i := 1; i < len(l.nodes); i++ {
		from, to := &l.nodes[i-1], &l.nodes[i]
		h := to.at - from.at
		give := 1 / stepAt(steps, (from.at+to.at)/2).stiffness(modulus)
		m, rise := momentAfter(from.at, all)
		to.slope = from.slope.plus(m, h*give).plus(rise, h*h/2*give)
		to.sag = from.sag.plus(from.slope, h).plus(m, h*h/2*give).plus(rise, h*h*h/6*give)
	}
	l.hold(p)
	return l
}

// nodes are the places where something changes, in order, each once.
func (p Places) nodes(steps []Step, loads []Load) []node {
	ns := make([]node, 0, 2*len(steps)+len(loads))
	for i := range steps {
		ns = append(ns, node{at: steps[i].From}, node{at: steps[i].To})
	}
	for i := range loads {
		ns = append(ns, node{at: loads[i].At})
	}
	slices.SortFunc(ns, func(a, b node) int {
		switch {
		case a.at < b.at:
			return -1
		case a.at > b.at:
			return 1
		}
		return 0
	})
	return slices.CompactFunc(ns, func(a, b node) bool { return a.at == b.at })
}

// stepAt is the step that covers a place, or the last one before it, or the
// first of all.
func stepAt(steps []Step, at float64) *Step {
	found := &steps[0]
	for i := range steps {
		if s := &steps[i]; s.From <= at && (s.From > found.From || found.From > at) {
			found = s
		}
	}
	return found
}

// momentAfter is the bending just ahead of a place, N·m, and how it rises from
// there, N.
func momentAfter(at float64, loads []Load) (moment, rise Vector) {
	for i := range loads {
		if l := &loads[i]; l.At <= at {
			moment = moment.plus(l.Force, at-l.At).plus(l.Couple, 1)
			rise = rise.plus(l.Force, 1)
		}
	}
	return moment, rise
}

// hold lays the line through the two bearings.
func (l *BentLine) hold(p Places) {
	_, a := l.At(p.PropSide)
	_, b := l.At(p.EngineSide)
	tilt := Vector{}.plus(b, 1/(p.EngineSide-p.PropSide)).plus(a, -1/(p.EngineSide-p.PropSide))
	for i := range l.nodes {
		n := &l.nodes[i]
		n.slope = n.slope.plus(tilt, -1)
		n.sag = n.sag.plus(a, -1).plus(tilt, -(n.at - p.PropSide))
	}
}

// At is slope, rad, and deflection, m, at a place. Beyond the ends of shaft and
// loads the line is straight.
func (l *BentLine) At(place float64) (slope, deflection Vector) {
	last := len(l.nodes) - 1
	if place <= l.nodes[0].at {
		n := &l.nodes[0]
		return n.slope, n.sag.plus(n.slope, place-n.at)
	}
	for i := 1; i <= last; i++ {
		if place <= l.nodes[i].at {
			return cubic(&l.nodes[i-1], &l.nodes[i], place)
		}
	}
	n := &l.nodes[last]
	return n.slope, n.sag.plus(n.slope, place-n.at)
}

// cubic is the line between two nodes from slope and deflection there, which
// is exact where the moment is linear.
func cubic(a, b *node, place float64) (slope, deflection Vector) {
	h := b.at - a.at
	t := (place - a.at) / h
	u := 1 - t
	deflection = Vector{}.plus(a.sag, u*u*(1+2*t)).plus(b.sag, t*t*(3-2*t)).plus(a.slope, h*t*u*u).plus(b.slope, -h*t*t*u)
	slope = Vector{}.plus(a.sag, -6*t*u/h).plus(b.sag, 6*t*u/h).plus(a.slope, u*(1-3*t)).plus(b.slope, t*(3*t-2))
	return slope, deflection
}
