package upkeep

import (
	"math"

	"gonum.org/v1/gonum/mathext"

	"backspan/model/param"
)

// Age is age replacement of a part whose life follows Weibull's distribution:
// it is changed at a set age for a planned cost, or at a failure, which costs
// more. Ages and scale in s.
type Age struct {
	Shape, Scale    float64
	Planned, Failed float64 // cost of each, money
}

// Survival is the share of parts that reach an age.
func (a Age) Survival(age float64) float64 { return math.Exp(-math.Pow(age/a.Scale, a.Shape)) }

// mean is the mean age at a change, over the scale, for a set age of x scales.
func (a Age) mean(x float64) float64 {
	inverse := 1 / a.Shape
	return math.Gamma(inverse) * inverse * mathext.GammaIncReg(inverse, math.Pow(x, a.Shape))
}

// Rate is the expected cost in the long run, money/s, of changing at an age, s.
// Source: Barlow and Proschan, Mathematical Theory of Reliability, from memory.
func (a Age) Rate(age float64) float64 {
	alive := a.Survival(age)
	return (a.Planned*alive + a.Failed*(1-alive)) / (a.Scale * a.mean(age/a.Scale))
}

// RunRate is the same for a part that is run until it fails, money/s.
func (a Age) RunRate() float64 { return a.Failed / (a.Scale * math.Gamma(1+1/a.Shape)) }

// latest is the greatest set age looked for, in scales. Hardly a part that
// wears out lives that long.
const latest = 10.0

// Best is the age at which the expected cost is least, s; empty where running
// to failure is cheapest: a part that does not wear out, or a failure that
// costs no more than a change. The condition is that the rate of failing times
// the mean age at a change, less the share that failed, is the planned cost
// over what a failure costs more; its left side rises with the age.
// Source: Barlow and Proschan, Mathematical Theory of Reliability, from memory.
func (a Age) Best() param.Slot {
	if !(a.Shape > 1 && a.Failed > a.Planned && a.Planned > 0) {
		return param.Slot{}
	}
	want := a.Planned / (a.Failed - a.Planned)
	// Early failures alone, (shape − 1)·x^shape, give the first guess.
	x := math.Min(latest, math.Pow(want/(a.Shape-1), 1/a.Shape))
	const steps, near, leap = 30, 1e-10, 3
	for range steps {
		mean, hazard := a.mean(x), a.Shape*math.Pow(x, a.Shape-1)
		over := hazard*mean + math.Expm1(-math.Pow(x, a.Shape)) - want
		if x >= latest && over <= 0 {
			break
		}
		// The slope of the left side is that of the rate times the mean age.
		next := x - over*x/((a.Shape-1)*hazard*mean)
		next = math.Min(latest, math.Min(leap*x, math.Max(x/leap, next)))
		if math.Abs(next-x) <= near*x {
			return param.Finite(a.Scale * next)
		}
		x = next
	}
	return param.Slot{}
}

// worth is the share above the least cost from which another age is worth a
// change.
const worth = 0.05

// around are the ages on both sides of the best between which the cost stays
// within worth of the least, s. late is empty where running to failure does too.
func (a Age) around(best float64) (early, late param.Slot) {
	limit := (1 + worth) * a.Rate(best)
	early = a.crossing(limit, 0, best)
	if a.RunRate() > limit {
		late = a.crossing(limit, latest*a.Scale, best)
	}
	return early, late
}

// crossing is the age between one that costs more than a limit and one that
// costs less at which the cost meets it, s. Halving finds it to a part in a
// million of the scale.
func (a Age) crossing(limit, dear, cheap float64) param.Slot {
	const halvings = 24
	for range halvings {
		if middle := (dear + cheap) / 2; a.Rate(middle) > limit {
			dear = middle
		} else {
			cheap = middle
		}
	}
	return param.Finite(cheap)
}
