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

// Making is how the bolts are tightened to a torque in N·m.
func (s Spec) Making(torque float64) []part.Allowed {
	list := []part.Allowed{part.Said("bolt.sequence", "Sequence of the bolts, counted round", sequence(s.Count)).
		How("each next to the one across").Source("common practice, no source")}
	for _, p := range passes {
		at := p.share * torque
		list = append(list, part.Between(p.key, p.label, at*(1-s.WrenchError), at*(1+s.WrenchError), unit.NewtonMetre, 1).
			How(fmt.Sprintf("%.0f %% of the tightening torque, within what the wrench may be off", 100*p.share)).Source("common practice, no source"))
	}
	return list
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
