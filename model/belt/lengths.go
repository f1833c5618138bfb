package belt

import (
	"fmt"
	"math"
	"slices"

	"backspan/model/param"
)

// preferred are the forty steps of a decade. Source: ISO 3, series R40.
var preferred = [...]float64{
	1.00, 1.06, 1.12, 1.18, 1.25, 1.32, 1.40, 1.50, 1.60, 1.70, 1.80, 1.90, 2.00, 2.12, 2.24, 2.36, 2.50, 2.65, 2.80, 3.00,
	3.15, 3.35, 3.55, 3.75, 4.00, 4.25, 4.50, 4.75, 5.00, 5.30, 5.60, 6.00, 6.30, 6.70, 7.10, 7.50, 8.00, 8.50, 9.00, 9.50,
}

// Offer is a belt that can be had and the centre distance it asks for.
type Offer struct {
	Length         param.Slot // effective, m
	CentreDistance float64    // m, meaningful only with a length
}

// offers are the nearest lengths on offer, not above and above the wanted
// effective length, m. A length that does not go round the pulleys as they
// stand clear of one another is no offer.
func (b Belt) offers(wanted float64) (below, above Offer) {
	var under, over param.Slot
	take := func(length float64) {
		switch {
		case length <= wanted && (!under.Known || length > under.Value):
			under = param.Known(length)
		case length > wanted && (!over.Known || length < over.Value):
			over = param.Known(length)
		}
	}
	if len(b.spec.Stock) > 0 {
		for _, length := range b.spec.Stock {
			take(length)
		}
	} else {
		decade := math.Pow(10, math.Floor(math.Log10(wanted)))
		for _, step := range preferred {
			// A step's neighbours may stand in the decade before or after.
			for _, length := range [3]float64{step * decade / 10, step * decade, step * decade * 10} {
				if length >= b.profile.shortest*(1-1e-9) && length <= b.profile.longest*(1+1e-9) {
					take(length)
				}
			}
		}
	}
	return b.offer(under), b.offer(over)
}

func (b Belt) offer(length param.Slot) Offer {
	if !length.Known {
		return Offer{}
	}
	o, ok := b.Run().WithLength(length.Value + 2*math.Pi*b.profile.lineDifferential)
	if !ok || o.CentreDistance <= b.spec.leastCentre() {
		return Offer{}
	}
	return Offer{length, o.CentreDistance}
}

func (s *Spec) stockRows() [][]float64 {
	rows := make([][]float64, len(s.Stock))
	for i, length := range s.Stock {
		rows[i] = []float64{length}
	}
	return rows
}

func (s *Spec) setStock(rows [][]float64) {
	s.Stock = nil
	for _, row := range rows {
		s.Stock = append(s.Stock, row[0])
	}
}

func risingLengths(rows [][]float64) error {
	if !slices.IsSortedFunc(rows, func(a, b []float64) int { return order(a[0], b[0]) }) {
		return fmt.Errorf("give the lengths from the shortest to the longest")
	}
	return nil
}

func order(a, b float64) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}
