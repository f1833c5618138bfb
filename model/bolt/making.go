package bolt

import (
	"fmt"
	"strings"

	"backspan/model/part"
	"backspan/model/unit"
)

// passes are the shares of the torque in which the bolts are tightened one
// after the other.
var passes = []struct {
	key, label string
	share      float64
}{
	{"bolt.first_pass", "First pass, all bolts", 0.5}, {"bolt.second_pass", "Second pass, all bolts", 0.8}, {"bolt.last_pass", "Last pass, twice round", 1},
}

// oilyBelow is the friction below which threads must be oiled for it to hold.
// Source: from memory, VDI 2230: lightly oiled 0.08 to 0.16, dry 0.14 and more.
const oilyBelow = 0.14

// Making is how the bolts are tightened to a torque in N·m.
func (s Spec) Making(torque float64) []part.Allowed {
	list := []part.Allowed{s.state(torque), part.Said("bolt.sequence", "Sequence of the bolts, counted round", sequence(s.Count)).
		How("each next to the one across").Source("common practice, no source")}
	for _, p := range passes {
		at := p.share * torque
		list = append(list, part.Between(p.key, p.label, at, at, unit.NewtonMetre, 1).
			How(fmt.Sprintf("%.0f %% of the tightening torque; set the wrench to this, it may be off by %.0f %%", 100*p.share, 100*s.WrenchError)).
			Source("common practice, no source"))
	}
	return list
}

// state is how threads and heads must be for the torque to give the preload it
// was worked out for.
func (s Spec) state(torque float64) part.Allowed {
	const dry = oilyBelow
	a := part.Said("bolt.state", "Threads and under the heads", "clean and dry").Source("from memory: VDI 2230")
	t := s.Size.thread()
	lever := t.Lever(s.ThreadFriction, s.HeadFriction)
	how := fmt.Sprintf("the torque supposes a friction of %.2f in the thread and %.2f under the head, and gives %.0f N; ", s.ThreadFriction, s.HeadFriction, torque/lever)
	if s.ThreadFriction >= dry && s.HeadFriction >= dry {
		return a.How(how + "oil raises the preload: it may crush the hub or yield the bolts")
	}
	a.Text = "oiled"
	return a.How(how + fmt.Sprintf("dry, at %.2f, the same torque gives %.0f %% less", dry, 100*(1-lever/t.Lever(dry, dry))))
}

// sequence goes from each bolt to one across, and never to a neighbour where
// there is another left.
func sequence(bolts int) string {
	var order []string
	step := (bolts + 1) / 2
	for i := range step {
		for _, n := range []int{i, i + step} {
			if n < bolts {
				order = append(order, fmt.Sprint(n+1))
			}
		}
	}
	return strings.Join(order, "-")
}
