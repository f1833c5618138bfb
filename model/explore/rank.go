package explore

import "slices"

// beats is constrained domination: an allowed design beats one that is not;
// among those that are not the lesser violation does; among allowed ones the
// one that is nowhere worse and somewhere better.
func (s score) beats(o score) bool {
	if s.violation > 0 || o.violation > 0 {
		return s.violation < o.violation
	}
	better := false
	for k, g := range s.goals {
		if g > o.goals[k] {
			return false
		}
		better = better || g < o.goals[k]
	}
	return better
}

// ranked sorts a population into fronts, in its own order within each.
func ranked(ps []individual) (fronts [][]int) {
	beaten, beats := make([]int, len(ps)), make([][]int, len(ps))
	var now []int
	for i := range ps {
		for j := range ps {
			switch {
			case ps[i].score.beats(ps[j].score):
				beats[i] = append(beats[i], j)
			case ps[j].score.beats(ps[i].score):
				beaten[i]++
			}
		}
		if beaten[i] == 0 {
			now = append(now, i)
		}
	}
	for len(now) > 0 {
		var next []int
		for _, i := range now {
			ps[i].rank = len(fronts)
			for _, j := range beats[i] {
				if beaten[j]--; beaten[j] == 0 {
					next = append(next, j)
				}
			}
		}
		slices.Sort(next)
		fronts = append(fronts, now)
		now = next
	}
	return fronts
}
