package bearing

import "math"

// BasicLife is the life that nine bearings of ten reach, in revolutions.
// Source: ISO 281, ball bearings.
func BasicLife(rating, load float64) float64 {
	x := rating / load
	return 1e6 * x * x * x
}

// Reliability is the share of bearings that reach the rated life, as shown.
type Reliability string

// The reliabilities for which ISO 281 gives a factor.
const (
	Reliability90 Reliability = "90 %"
	Reliability95 Reliability = "95 %"
	Reliability96 Reliability = "96 %"
	Reliability97 Reliability = "97 %"
	Reliability98 Reliability = "98 %"
	Reliability99 Reliability = "99 %"
)

// Factor is a1; that of 90 % for an unknown word. Source: ISO 281:2007 table
// 12, from memory.
func (r Reliability) Factor() float64 {
	for _, x := range reliabilities() {
		if x.word == r {
			return x.factor
		}
	}
	return 1
}

// The spread of lives about the basic one, three-parameter Weibull. Source:
// Shigley's Mechanical Engineering Design, chapter 11: x0 = 0.02,
// θ - x0 = 4.439, b = 1.483.
const (
	leastLife    = 0.02
	lifeScale    = 4.439
	weibullSlope = 1.483
)

// Survival is the chance that a bearing outlives a multiple of its basic life.
// Source: Shigley's Mechanical Engineering Design, chapter 11.
func Survival(multiple float64) float64 {
	if multiple <= leastLife {
		return 1
	}
	return math.Exp(-math.Pow((multiple-leastLife)/lifeScale, weibullSlope))
}

// Lubrication is what separates the balls from the races.
type Lubrication struct {
	Viscosity     float64 // kinematic, of the oil or the grease's base oil, running, m²/s
	Contamination float64 // eC, 0 very dirty to 1 clean
	LargestFactor float64 // at which the life modification factor is cut off
}

// Rating is a bearing under one mean load at one speed.
type Rating struct {
	BasicLife      float64 // L10, revolutions
	ViscosityRatio float64 // κ
	LifeFactor     float64 // aISO, cut off at the largest allowed
	Life           float64 // a1 aISO L10, revolutions
}

// Rate works out the life under an equivalent load, N, above 0 and a speed,
// rad/s. Source: ISO 281:2007.
func (b DeepGroove) Rate(load, speed float64, l Lubrication, r Reliability) Rating {
	x := Rating{BasicLife: BasicLife(b.Rating, load), ViscosityRatio: b.ViscosityRatio(l.Viscosity, speed)}
	x.LifeFactor = math.Min(LifeFactor(x.ViscosityRatio, l.Contamination*b.FatigueLoadLimit()/load), l.LargestFactor)
	x.Life = r.Factor() * x.LifeFactor * x.BasicLife
	return x
}
