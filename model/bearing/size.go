package bearing

import (
	"math"

	"backspan/model/param"
)

// Size is the designation of a single-row deep-groove ball bearing.
type Size string

// DeepGroove is a single-row deep-groove ball bearing of normal clearance:
// boundary dimensions in m (ISO 15), typical ratings in N.
type DeepGroove struct {
	Designation  Size
	Bore         float64
	Outside      float64
	Width        float64
	Rating       float64 // basic dynamic, C
	StaticRating float64 // basic static, C0
}

// RatingOrigin says how far the table's figures may be trusted.
const RatingOrigin = "from memory: usual handbook ratings, suppliers differ by -1 to +10 %; boundary dimensions ISO 15"

const (
	steelDensity = 7850.0 // kg/m³
	metalFill    = 0.6    // metal over the ring between bore and outside; estimate
)

// Sizes lists the designations offered, light series first.
func Sizes() []Size {
	all := sizes()
	list := make([]Size, len(all))
	for i := range all {
		list[i] = all[i].Designation
	}
	return list
}

// DeepGroove gives the bearing of that size; ok is false for an unknown one.
func (s Size) DeepGroove() (b DeepGroove, ok bool) {
	all := sizes()
	for i := range all {
		if all[i].Designation == s {
			return all[i], true
		}
	}
	return DeepGroove{}, false
}

// WithRatings is the bearing with the ratings of a maker's data sheet, N, in
// place of the table's; an empty one leaves the table's.
func (b DeepGroove) WithRatings(dynamic, static param.Slot) DeepGroove {
	if dynamic.Known {
		b.Rating = dynamic.Value
	}
	if static.Known {
		b.StaticRating = static.Value
	}
	return b
}

// MeanDiameter is halfway between bore and outside, nearly the pitch circle of
// the balls, m.
func (b DeepGroove) MeanDiameter() float64 { return (b.Bore + b.Outside) / 2 }

// Mass is that of rings, balls and cage, kg; an estimate.
func (b DeepGroove) Mass() float64 {
	return metalFill * steelDensity * math.Pi / 4 * (b.Outside*b.Outside - b.Bore*b.Bore) * b.Width
}
