package carry

import (
	"cmp"
	"slices"

	"backspan/model/stack"
)

// Thickness is what one piece of the stack costs by its depth along the thrust
// axis.
type Thickness struct {
	Key, Label string
	Depth      float64 // m
	Pushed     float64 // mass that moves with its rear face, its own by the share of its depth, kg
	PerDepth   float64 // equivalent mass per depth, kg/m
	Felt       float64 // equivalent mass of the whole depth, kg
}

// Thicknesses ranks the pieces of the stack by the equivalent mass that their
// whole depth costs, the dearest first; of equals the front one comes first. A thinner piece brings everything placed from its rear face closer,
// and its own centre of gravity in proportion; its mass is held. Source:
// statics, Σm·Δx / (b + d_ref).
func (p Pilot) Thicknesses(items []stack.Item) []Thickness {
	reference := p.BackBehindHip + p.ReferenceDepth
	ts := make([]Thickness, 0, len(items))
	for i := range items {
		it := &items[i]
		if it.Depth <= 0 {
			continue
		}
		t := Thickness{Key: it.Key, Label: it.Label, Depth: it.Depth, Pushed: it.Mass * (it.X - it.Front) / it.Depth}
		for j := range items {
			if items[j].Ahead > it.Ahead {
				t.Pushed += items[j].Mass
			}
		}
		t.PerDepth = t.Pushed / reference
		t.Felt = t.PerDepth * t.Depth
		ts = append(ts, t)
	}
	slices.SortStableFunc(ts, func(a, b Thickness) int { return cmp.Compare(b.Felt, a.Felt) })
	return ts
}

// worst is the piece that costs most by its whole depth, of those that a
// builder can thin; engine and propeller come as they are. ok is false when
// there is none.
func worst(ranked []Thickness) (t Thickness, ok bool) {
	for _, t := range ranked {
		if t.Key != "engine" && t.Key != "propeller" {
			return t, true
		}
	}
	return Thickness{}, false
}
