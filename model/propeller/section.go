package propeller

import (
	"math"

	"backspan/model/unit"
)

// Section is the generic polar of a blade section, without data files. Angles
// rad, coefficients at a Reynolds number of one million and low Mach number.
type Section struct {
	ZeroLiftAngle  float64
	LiftSlope      float64 // per rad; 6.016 is 0.105 a degree
	GreatestLift   float64
	LeastLift      float64
	LeastDrag      float64
	LeastDragLift  float64 // lift coefficient of least drag
	DragRise       float64 // times the square of lift away from LeastDragLift
	DragReynolds   float64 // exponent of Re/1e6 on LeastDrag
	SeparationDrag float64 // times the square of potential lift above GreatestLift − 0.4
}

// flatBottomed is a cambered flat-bottomed section, 12 % thick. Estimate.
func flatBottomed() Section {
	return Section{
		ZeroLiftAngle: degrees(-4), LiftSlope: 6.016, GreatestLift: 1.45, LeastLift: -0.9,
		LeastDrag: 0.0088, LeastDragLift: 0.5, DragRise: 0.0085, DragReynolds: -0.4, SeparationDrag: 0.14,
	}
}

// thinSection is a thin section for low Reynolds numbers. Estimate.
func thinSection() Section {
	return Section{
		ZeroLiftAngle: degrees(-3), LiftSlope: 0.95 * 2 * math.Pi, GreatestLift: 1.35, LeastLift: -0.7,
		LeastDrag: 0.009, LeastDragLift: 0.4, DragRise: 0.012, DragReynolds: -0.4, SeparationDrag: 0.14,
	}
}

func degrees(x float64) float64 { return unit.Degree.SI(x) }

const (
	leastReynolds, greatestReynolds = 2e4, 2e7
	greatestMach                    = 0.85 // of Prandtl and Glauert's rule
	softness                        = 20.0 // of the rounding at greatest and least lift
	pastLinear                      = 2 * math.Pi / 180
	leastStallAngle                 = 4 * math.Pi / 180 // keeps the post-stall formula off its pole at 0
)

// polar is a Section at one Reynolds and Mach number, on one blade station.
type polar struct {
	zeroLift, slope    float64
	clMax, clMin       float64
	cdLeast            float64
	clLeastDrag        float64
	dragRise           float64
	separation         float64
	stall, lowerStall  float64 // angles of attack beyond which flow is separated
	delay              float64 // share of the lift kept by rotation
	flatPlate          float64 // drag coefficient at 90°
	above, below       plate
	aboveSet, belowSet bool
	table              tabled // of a measured polar; empty for a generic one
}

// fix sets p to the section at a Reynolds and a Mach number, in place: a copy
// would cost as much as the figures. delay and flatPlate belong to the station.
func (s *Section) fix(p *polar, reynolds, mach, delay, flatPlate float64) {
	re := math.Log(min(max(reynolds, leastReynolds), greatestReynolds) / 1e6)
	subsonic := min(mach, greatestMach)
	shock := max(0, mach-0.75)
	p.zeroLift, p.slope = s.ZeroLiftAngle, s.LiftSlope/math.Sqrt(1-subsonic*subsonic)
	p.clMax, p.clMin = s.GreatestLift*min(max(1+0.12/math.Ln10*re, 0.55), 1.15), s.LeastLift
	p.cdLeast = s.LeastDrag * (math.Exp(s.DragReynolds*re) + 20*shock*shock)
	p.clLeastDrag, p.dragRise, p.separation = s.LeastDragLift, s.DragRise, s.SeparationDrag
	p.delay, p.flatPlate = delay, flatPlate
	p.stall = max(p.zeroLift+p.clMax/p.slope+pastLinear, leastStallAngle)
	p.lowerStall = min(p.zeroLift+p.clMin/p.slope-pastLinear, -leastStallAngle)
	p.aboveSet, p.belowSet = false, false
}

// coefficients gives lift and drag at an angle of attack from −180° to 180°.
func (p *polar) coefficients(alpha float64) (cl, cd float64) {
	switch {
	case p.table.low != nil:
		cl, cd = p.measured(alpha)
	case alpha > p.stall:
		if !p.aboveSet {
			cl, cd = p.attached(p.stall)
			p.above, p.aboveSet = platePast(p.stall, cl, cd, p.flatPlate), true
		}
		cl, cd = p.above.coefficients(alpha)
	case alpha < p.lowerStall:
		if !p.belowSet {
			cl, cd = p.attached(p.lowerStall)
			p.below, p.belowSet = platePast(-p.lowerStall, -cl, cd, p.flatPlate), true
		}
		cl, cd = p.below.coefficients(-alpha)
		cl = -cl
	default:
		cl, cd = p.attached(alpha)
	}
	if regained := p.regained(alpha, cl); regained > 0 {
		return cl + regained, cd + regained*math.Tan(max(alpha, 0))
	}
	return cl, cd
}

// attached is the polar below stall: linear lift with rounded ends, and drag
// that grows with lift and again as separation creeps forward.
func (p *polar) attached(alpha float64) (cl, cd float64) {
	linear := p.slope * (alpha - p.zeroLift)
	cl = linear - softPast(linear-p.clMax) + softPast(p.clMin-linear)
	off := cl - p.clLeastDrag
	cd = p.cdLeast + p.dragRise*off*off
	if creep := linear - (p.clMax - 0.4); creep > 0 {
		cd += p.separation * creep * creep
	}
	return cl, cd
}

// softPast is max(0, x) with a rounded corner, ln(1+exp(kx))/k; it is
// negligible below −1.
func softPast(x float64) float64 {
	if x < -1 {
		return 0
	}
	return softCorner(x)
}

// softCorner is softPast where it is not negligible.
func softCorner(x float64) float64 {
	if x > 0 {
		return x + softPast(-x)
	}
	// ln(1+e) = 2 artanh z as a series; z ≤ 1/3.
	e := math.Exp(softness * x)
	z := e / (2 + e)
	y := z * z
	return 2 / softness * z * (1 + y*(1.0/3+y*(1.0/5+y*(1.0/7+y*(1.0/9+y*(1.0/11+y*(1.0/13)))))))
}

const delayCap, delayEnd = 30 * math.Pi / 180, 50 * math.Pi / 180

// regained is the lift that rotation keeps on the inner blade beyond its
// two-dimensional stall, as Snel et al. (1993) have it, from memory. What is
// regained of separated flow is pressure across the chord, so it comes with
// its share of drag: Lindenburg, ECN-C--03-025 (2003), from memory.
func (p *polar) regained(alpha, cl float64) float64 {
	if alpha <= p.zeroLift || alpha >= delayEnd || p.delay == 0 {
		return 0
	}
	potential, fade := p.slope*(alpha-p.zeroLift), 1.0
	if alpha > delayCap {
		potential = p.slope * (delayCap - p.zeroLift)
		fade = (delayEnd - alpha) / (delayEnd - delayCap)
	}
	return p.delay * fade * max(0, potential-cl)
}
