package sidebyside

import (
	"math"
	"strings"

	"backspan/model/reading"
)

// barCells is the length of the bar of the largest difference in a row, and
// leastForBars the width of a column that has room for bars.
const (
	barCells     = 5
	leastForBars = 23
)

// scale gives every cell its share of the row's largest difference from the
// reference; false when there is no difference to show.
func scale(r *row, reference int, cells []reading.Reading) bool {
	ref := cells[reference]
	if ref.Key == "" || !ref.Known() {
		return false
	}
	largest := 0.0
	for i, v := range cells {
		if r.cells[i].change != "" && v.Known() {
			r.cells[i].share = math.Abs(v.Value - ref.Value)
			largest = max(largest, r.cells[i].share)
		}
	}
	if largest == 0 {
		return false
	}
	for i := range r.cells {
		r.cells[i].share /= largest
	}
	return true
}

// bar is drawn in steps of half a cell; what differs has one step at least.
func (m *Model) bar(share float64) string {
	if share <= 0 {
		return ""
	}
	halves := max(int(math.Round(share*2*barCells)), 1)
	return strings.Repeat(m.th.Marks.Bar, halves/2) + strings.Repeat(m.th.Marks.HalfBar, halves%2)
}
