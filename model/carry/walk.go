package carry

import (
	"math"

	"backspan/model/param"
	"backspan/model/unit"
)

// Ground is what the pilot walks on.
type Ground string

// The grounds.
const (
	Paved      Ground = "paved"
	DirtRoad   Ground = "dirt road"
	LightBrush Ground = "light brush"
	HeavyBrush Ground = "heavy brush"
	Swamp      Ground = "swamp"
	LooseSand  Ground = "loose sand"
)

// factor is what walking costs more than on a treadmill. Source: Soule &
// Goldman 1972; swamp and sand from memory.
func (g Ground) factor() float64 {
	switch g {
	case DirtRoad:
		return 1.1
	case LightBrush:
		return 1.2
	case HeavyBrush:
		return 1.5
	case Swamp:
		return 1.8
	case LooseSand:
		return 2.1
	}
	return 1
}

// Walk is the way with the machine on the back.
type Walk struct {
	Speed  float64 // m/s
	Grade  float64 // rise over run; not downhill
	Ground Ground
}

func defaultWalk() Walk { return Walk{Speed: 1.2, Ground: LightBrush} }

func (w *Walk) params() []param.Param {
	return []param.Param{
		param.Number(&w.Speed, "speed", "Walking speed", unit.MetrePerSecond).Within(0.3, 2).Typical(0.8, 1.5),
		param.Number(&w.Grade, "grade", "Rise of the way", unit.Percent).Within(0, 25).Typical(0, 10).
			Help("height gained over distance; the formulas here do not hold downhill"),
		param.Choice(&w.Ground, "ground", "Ground", Paved, DirtRoad, LightBrush, HeavyBrush, Swamp, LooseSand).
			From("Soule & Goldman 1972; swamp and sand from memory").Help("a meadow walks about like light brush"),
	}
}

// Pandolf is the metabolic power of a body of that mass with a load, kg, W:
//
//	M = 1.5·W + 2.0·(W + L)·(L/W)² + η·(W + L)·(1.5·V² + 0.35·V·G)
//
// Level or uphill; it is known to read low. Source: Pandolf, Givoni & Goldman,
// J. Applied Physiology 43 (1977).
func (w Walk) Pandolf(body, load float64) float64 {
	all, share := body+load, load/body
	return 1.5*body + 2*all*share*share + w.Ground.factor()*all*(1.5*w.Speed*w.Speed+0.35*w.Speed*100*w.Grade)
}

// Looney is the same after the load carriage equation for walking, W. On soft
// ground the share above standing is raised by the ground's factor: estimate.
// Source: Looney and others, Medicine & Science in Sports & Exercise 51 (2019),
// constants as printed in a worked example.
func (w Walk) Looney(body, load float64) float64 {
	const standing = 1.44
	s, g := w.Speed, 100*w.Grade
	moving := 1.94*math.Pow(s, 0.43) + 0.24*math.Pow(s, 4) + 0.34*s*g*(1-math.Pow(1.05, 1-math.Pow(1.11, g+32)))
	return (body + load) * (standing + w.Ground.factor()*moving)
}

// perKilogram is what every kilogram on the back added to walking at 1.25 m/s
// on the level, W/kg. Source: Huang & Kuo, J. Experimental Biology 217 (2014).
const (
	perKilogram   = 7.6
	measuredSpeed = 1.25 // m/s
)

// rise is what every kilogram on the back adds at the walking speed, W/kg. That
// it goes with the square of the speed, as in Pandolf's equation, is an
// estimate.
func (w Walk) rise() float64 {
	v := w.Speed / measuredSpeed
	return perKilogram * v * v
}

// Band is the least and the greatest that the published ways give, W. The
// measured rise was level and can only lift the top.
func (w Walk) Band(body, load float64) (low, high float64) {
	p, l := w.Pandolf(body, load), w.Looney(body, load)
	measured := w.Pandolf(body, 0) + w.rise()*load
	return min(p, l), max(p, l, measured)
}
