package carry

import "backspan/model/stack"

// Share is what one piece does to the difference in upright hip moment
// between two machines. Masses in kg, places and depths in m, moments in N·m.
type Share struct {
	Key, Label         string
	InFrom, InTo       bool // which of the machines have it
	MassFrom, MassTo   float64
	PlaceFrom, PlaceTo float64 // of its centre of gravity behind the back plane
	DepthFrom, DepthTo float64 // along the thrust axis; 0 beside the stack

	FromMass  float64 // because it is heavier, or is there at all
	FromPlace float64 // because it sits farther aft
	ByDepth   float64 // what its own depth does to the place of all pieces
}

// Split is the difference in upright hip moment between two machines, piece by
// piece. FromMass and FromDepth sum to Total.
type Split struct {
	Pieces    []Share
	FromMass  float64 // N·m
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
// Against Pilot.Split, which takes each machine as one point, mass added far
// aft is all mass here and partly depth there; the totals are the same.
func (p Pilot) SplitPieces(a, b []stack.Item) Split {
	twins := pair(lumps(a, b), lumps(b, a))
	s := Split{Pieces: make([]Share, len(twins))}
	for i := range twins {
		s.Pieces[i] = twins[i].share(p.BackBehindHip)
	}
	blame(twins, s.Pieces)
	for i := range s.Pieces {
		s.FromMass += s.Pieces[i].FromMass
		s.FromDepth += s.Pieces[i].FromPlace
	}
	s.Total = s.FromMass + s.FromDepth
	return s
}

func (t *twin) share(back float64) Share {
	s := Share{Key: t.key(), Label: t.label(), InFrom: t.a != nil, InTo: t.b != nil}
	if t.a != nil {
		s.MassFrom, s.PlaceFrom, s.DepthFrom = t.a.mass, t.a.x, t.a.depth
	}
	if t.b != nil {
		s.MassTo, s.PlaceTo, s.DepthTo = t.b.mass, t.b.x, t.b.depth
	}
	switch {
	case t.a == nil:
		s.FromMass = gravity * s.MassTo * (back + s.PlaceTo)
	case t.b == nil:
		s.FromMass = -gravity * s.MassFrom * (back + s.PlaceFrom)
	default:
		s.FromMass = gravity * (s.MassTo - s.MassFrom) * (back + (s.PlaceFrom+s.PlaceTo)/2)
		s.FromPlace = t.weight() * (s.PlaceTo - s.PlaceFrom)
	}
	return s
}

// blame hands what every piece's move does to the pieces whose depth moved it.
func blame(twins []twin, shares []Share) {
	for j := range twins {
		moved := &twins[j]
		if moved.a == nil || moved.b == nil {
			continue
		}
		own := moved.b.x - moved.a.x
		for i := range twins {
			pushed := twins[i].b.push(moved.b) - twins[i].a.push(moved.a)
			own -= pushed
			shares[i].ByDepth += moved.weight() * pushed
		}
		shares[j].ByDepth += moved.weight() * own
	}
}
