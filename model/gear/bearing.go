package gear

import (
	"math"

	"backspan/model/bearing"
)

const (
	loadFactor    = 0.0009 // f1 of a deep-groove ball bearing, upper of 0.0006 to 0.0009
	bearingOrigin = "from memory: Palmgren's bearing friction, f1 = 0.0009 √(P0/C0), whose exponent is 0.55 in some printings"
)

// bearingDrag is the friction of one bearing as a function of the shaft's
// speed and the pinion's torque.
type bearingDrag struct {
	idle     float64 // N·m at 1 (mm²/s·rpm)^(2/3)
	flow     float64 // (ν n)^(2/3) at 1 rad/s of the crank
	load     float64 // N·m per (N·m)^1.5 of pinion torque
	speedFor float64 // shaft speed over the crank's
}

// newBearingDrag sets up a bearing's friction from its share of the forces of
// 1 N·m on the pinion; viscosity in m²/s. Source: Palmgren.
func newBearingDrag(b bearing.DeepGroove, radial, axial, oilFactor, viscosity, speedShare float64) bearingDrag {
	mean := b.MeanDiameter()
	dragLoad := math.Max(3*axial-0.1*radial, radial)
	staticLoad := math.Max(0.6*radial+0.5*axial, radial)
	return bearingDrag{
		idle:     1e-7 * oilFactor * mean * mean * mean * 1e9 / 1000,
		flow:     math.Pow(viscosity*mm2*speedShare*30/math.Pi, 2.0/3),
		load:     loadFactor * math.Sqrt(staticLoad/b.StaticRating) * dragLoad * mean,
		speedFor: speedShare,
	}
}

// power is the loss in W. flowPower is the crank's speed to the power 2/3 and
// loading the torque to the power 3/2. Below ν n = 2000 the oil's part of the
// moment no longer falls with speed.
func (b bearingDrag) power(speed, flowPower, loading float64) float64 {
	moment := b.idle*math.Max(b.flow*flowPower, 160) + b.load*loading
	return moment * speed * b.speedFor
}
