package upkeep

import (
	"math"
	"slices"
)

// Change is one change of one part on the line of running time.
type Change struct {
	At     float64 // running time, s
	Part   string
	Parts  float64 // money; what a drive's change costs stands here whole
	Labour float64 // money
	Stands float64 // time the machine stands still, s
}

// Cost of the change, money.
func (c Change) Cost() float64 { return c.Parts + c.Labour }

// scheduled is a part with what one change of it costs.
type scheduled struct {
	part                            string
	parts, labour, stands, interval float64
}

// longest is the most changes that one line lists; a line beyond it would be
// of no use to anybody.
const longest = 20000

// line lists whole changes until the horizon, at most longest of them. One that
// falls due at the horizon itself is left to the next owner.
func line(items []scheduled, horizon float64) []Change {
	count := 0
	for i := range items {
		count += items[i].times(horizon)
	}
	changes := make([]Change, 0, min(count, longest))
	for i := range items {
		it := &items[i]
		for k := 1; k <= it.times(horizon) && len(changes) < longest; k++ {
			changes = append(changes, Change{float64(k) * it.interval, it.part, it.parts, it.labour, it.stands})
		}
	}
	slices.SortStableFunc(changes, func(a, b Change) int {
		switch {
		case a.At < b.At:
			return -1
		case a.At > b.At:
			return 1
		}
		return 0
	})
	return changes
}

// rounding is how near a horizon an interval's multiple counts as due at it.
const rounding = 1e-9

// times is how often the part is changed before the horizon.
func (s *scheduled) times(horizon float64) int {
	if !s.kept() {
		return 0
	}
	const most = 1e9 // keeps an interval of nothing countable
	return max(0, int(math.Min(most, math.Ceil(horizon/s.interval*(1-rounding))))-1)
}

// due reports whether the part falls due at the horizon itself.
func (s *scheduled) due(horizon float64) bool {
	if !s.kept() || !(horizon > 0) {
		return false
	}
	whole := math.Round(horizon / s.interval)
	return math.Abs(horizon/s.interval-whole) <= rounding*whole
}

func (s *scheduled) kept() bool { return s.interval > 0 && s.parts+s.labour+s.stands > 0 }
