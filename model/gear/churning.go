package gear

import (
	"math"

	"backspan/model/unit"
)

// Dipping says which gear reaches into the oil.
type Dipping string

// The gears that can dip.
const (
	DipPinion Dipping = "pinion"
	DipWheel  Dipping = "wheel"
)

const (
	slowChurning   = 6000             // Reynolds number of the dipping gear below which inertia does not rule
	fastChurning   = 9000             // and above which it does
	slowPower      = 3 - 2*0.6 - 0.21 // of the speed, from the Froude and Reynolds numbers
	fastPower      = 3 - 2*0.88
	churningOrigin = "from memory: Changenet & Velex, J. Mech. Des. 2007, and ISO/TR 14179-1, the larger"
)

// churning is the drag of the dipping gear in the oil as a function of the
// crank's speed. Published methods differ by a factor of ten at these sizes,
// so the larger of two is taken and a factor of three either way belongs to it.
type churning struct {
	report           float64 // W at 1 rad/s, rising with the cube
	slow, fast       float64 // W at 1 rad/s, rising with slowPower and fastPower
	reynoldsPerSpeed float64
}

// newChurning sets up the drag of a gear that dips to a depth in m into a
// volume of oil in m³ of a kinematic viscosity in m²/s. speedShare is its speed
// over the crank's.
func newChurning(g *Geometry, w Wheel, speedShare, depth, volume, viscosity, density float64) churning {
	c := churning{}
	if depth <= 0 {
		return c
	}
	c.report = reportChurning(g, w, speedShare, depth, viscosity)
	c.slow, c.fast, c.reynoldsPerSpeed = flowChurning(g, w, speedShare, depth, volume, viscosity, density)
	return c
}

// reportChurning is the loss in W at 1 rad/s of the crank; it rises with the
// cube. A gear dipped to its axis counts as fully dipped. Source: ISO/TR
// 14179-1; its helix angle is taken as at least 10°.
func reportChurning(g *Geometry, w Wheel, speedShare, depth, viscosity float64) float64 {
	diameter, width := w.TipDiameter*1000, g.FaceWidth*1000
	dipped := math.Min(depth/(w.TipDiameter/2), 1)
	rough := 7.93 - 4.648/(g.Module/math.Cos(g.HelixAngle)*1000)
	helix := math.Max(g.HelixAngle, math.Pi/18)
	rpm := speedShare * 30 / math.Pi
	sides := 1.474 * math.Pow(diameter, 5.7)
	teeth := 7.37 * math.Pow(diameter, 4.7) * width * math.Max(rough, 0) / math.Sqrt(math.Tan(helix))
	return 1000 * dipped * viscosity * mm2 * rpm * rpm * rpm * (sides + teeth) / 0.2e26
}

// flowChurning is the loss in W at 1 rad/s of the crank by the two flow
// regimes, and the Reynolds number there. Source: Changenet and Velex 2007.
func flowChurning(g *Geometry, w Wheel, speedShare, depth, volume, viscosity, density float64) (slow, fast, reynolds float64) {
	diameter := w.TipDiameter
	radius := diameter / 2
	froude := speedShare * speedShare * radius / unit.StandardGravity
	angle := math.Acos(math.Max(1-depth/radius, -1))
	wetted := radius*radius*(2*angle-math.Sin(2*angle)) + diameter*g.FaceWidth*angle
	head := 0.5 * density * speedShare * speedShare * speedShare * radius * radius * radius * wetted
	dip, filling := depth/diameter, volume/(diameter*diameter*diameter)

	slow = head * 1.366 * math.Pow(dip, 0.45) * math.Pow(filling, 0.1) * math.Pow(froude, -0.6) *
		math.Pow(speedShare*radius*radius/viscosity, -0.21)
	fast = head * 3.644 * math.Pow(dip, 0.1) * math.Pow(filling, -0.35) * math.Pow(froude, -0.88) *
		math.Pow(g.FaceWidth/radius, 0.85)
	return slow, fast, speedShare * radius * g.FaceWidth / viscosity
}

// power is the loss in W at a speed of the crank in rad/s.
func (c churning) power(speed, logSpeed float64) float64 {
	reynolds := speed * c.reynoldsPerSpeed
	share := math.Min(math.Max((reynolds-slowChurning)/(fastChurning-slowChurning), 0), 1)
	flow := 0.0
	if share < 1 {
		flow += (1 - share) * c.slow * math.Exp(slowPower*logSpeed)
	}
	if share > 0 {
		flow += share * c.fast * math.Exp(fastPower*logSpeed)
	}
	return math.Max(flow, c.report*speed*speed*speed)
}
