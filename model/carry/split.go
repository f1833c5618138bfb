package carry

import (
	"math"

	"backspan/model/stack"
)

// Share is what one piece does to the difference in upright hip moment
// between two machines. Masses in kg, places and depths in m, moments in N·m.
type Share struct {
	Key, Label         string
	InFrom, InTo       bool // which of the machines have it
	MassFrom, MassTo   float64
	PlaceFrom, PlaceTo float64 // of its centre of gravity behind the back plane
	DepthFrom, DepthTo float64 // along the thrust axis; 0 beside the stack

	FromMass  float64 // because it is heavier, or is there at all
	OfMassAft float64 // of FromMass, because that mass sits aft of the machines' mean centre of gravity
	FromPlace float64 // because it sits farther aft
	ByDepth   float64 // what its own depth does to the place of all pieces
}

// OfMass is what the piece brings to the part of a difference that mass alone
// makes, N·m, each machine taken as one point; over all pieces it sums to that
// of Pilot.Split.
func (s *Share) OfMass() float64 { return s.FromMass - s.OfMassAft }

// OfDepth is the same for the part that depth makes: mass added behind the mean
// centre of gravity, and what moved aft.
func (s *Share) OfDepth() float64 { return s.FromPlace + s.OfMassAft }

// Split is the difference in upright hip moment between two machines, piece by
// piece. FromMass and FromDepth sum to Total.
type Split struct {
	Pieces    []Share
	FromMass  float64 // N·m
	OfMassAft float64 // N·m
	FromDepth float64 // N·m
	Total     float64 // N·m
}

// SplitPieces divides the difference in upright hip moment from machine a to
// machine b exactly, piece by piece:
//
//	from mass  = g·(m_b − m_a)·½[(b + x_a) + (b + x_b)]
//	from place = g·(x_b − x_a)·½[m_a + m_b]
//
// A piece that only one machine has has no second place: all of it is mass.
// Drives of different pieces are compared as one body each, with their mass
// and centre of gravity.
//
// The places follow from the depths of what stands ahead. ByDepth hands the
// same moment back to its causes: each piece gets what its own depth, and its
// own centre of gravity in it, moved. FromPlace and ByDepth both sum to
// FromDepth.
//
// Pilot.Split takes each machine as one point: there, mass added aft of the
// centre of gravity is partly depth. OfMassAft is the bridge, exactly:
// FromMass − OfMassAft and FromDepth + OfMassAft are the two parts of the point.
func (p Pilot) SplitPieces(a, b []stack.Item) Split {
	twins := pair(lumps(a, b), lumps(b, a))
	s := Split{Pieces: make([]Share, len(twins))}
	middle := (centre(a) + centre(b)) / 2
	for i := range twins {
		s.Pieces[i] = twins[i].share(p.BackBehindHip, middle)
	}
	blame(twins, s.Pieces)
	for i := range s.Pieces {
		s.FromMass += s.Pieces[i].FromMass
		s.OfMassAft += s.Pieces[i].OfMassAft
		s.FromDepth += s.Pieces[i].FromPlace
	}
	s.Total = s.FromMass + s.FromDepth
	return s
}

func (t *twin) share(back, middle float64) Share {
	s := Share{Key: t.key(), Label: t.label(), InFrom: t.a != nil, InTo: t.b != nil}
	if t.a != nil {
		s.MassFrom, s.PlaceFrom, s.DepthFrom = t.a.mass, t.a.x, t.a.depth
	}
	if t.b != nil {
		s.MassTo, s.PlaceTo, s.DepthTo = t.b.mass, t.b.x, t.b.depth
	}
	place := s.PlaceFrom + s.PlaceTo
	if t.both() {
		place /= 2
		s.FromPlace = t.weight() * (s.PlaceTo - s.PlaceFrom)
	}
	if more := gravity * (s.MassTo - s.MassFrom); more != 0 {
		s.FromMass, s.OfMassAft = more*(back+place), more*(place-middle)
	}
	return s
}

// centre is the common centre of gravity behind the back plane, m.
func centre(items []stack.Item) float64 {
	mass, moment := 0.0, 0.0
	for i := range items {
		mass += items[i].Mass
		moment += items[i].Mass * items[i].X
	}
	if mass <= 0 {
		return 0
	}
	return moment / mass
}

// least is the shortest way that counts as a move, m: below it are the last
// bits of the sums.
const least = 1e-12

// blame hands what every piece's move does to the pieces whose depth moved it.
func blame(twins []twin, shares []Share) {
	for j := range twins {
		moved := &twins[j]
		if !moved.both() {
			continue
		}
		own := moved.b.x - moved.a.x
		for i := range twins {
			pushed := twins[i].b.push(moved.b) - twins[i].a.push(moved.a)
			own -= pushed
			shares[i].ByDepth += moved.weight() * pushed
		}
		if math.Abs(own) > least {
			shares[j].ByDepth += moved.weight() * own
		}
	}
}
