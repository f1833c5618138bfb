package gear

import "math"

// BearingSize is the designation of a single-row deep-groove ball bearing.
type BearingSize string

// DeepGroove is a deep-groove ball bearing: boundary dimensions in m and the
// usual static rating in N.
type DeepGroove struct {
	Bore         float64
	Outside      float64
	Width        float64
	StaticRating float64
}

// deepGroove lists the sizes offered. Dimensions: ISO 15, in mm; static
// ratings in kN: from memory, usual handbook values.
var deepGroove = [...]struct {
	size                         BearingSize
	bore, outside, width, static float64
}{
	{"6002", 15, 32, 9, 2.8}, {"6003", 17, 35, 10, 3.25}, {"6004", 20, 42, 12, 5.0}, {"6005", 25, 47, 12, 5.85},
	{"6006", 30, 55, 13, 8.25}, {"6007", 35, 62, 14, 10.3}, {"6008", 40, 68, 15, 11.5},
	{"6202", 15, 35, 11, 3.7}, {"6203", 17, 40, 12, 4.75}, {"6204", 20, 47, 14, 6.6}, {"6205", 25, 52, 15, 7.8},
	{"6206", 30, 62, 16, 11.2}, {"6207", 35, 72, 17, 15.3}, {"6208", 40, 80, 18, 18.0},
	{"6302", 15, 42, 13, 5.4}, {"6303", 17, 47, 14, 6.5}, {"6304", 20, 52, 15, 7.9}, {"6305", 25, 62, 17, 11.5},
	{"6306", 30, 72, 19, 15.0}, {"6307", 35, 80, 21, 19.0}, {"6308", 40, 90, 23, 23.9},
}

func bearingSizes() []BearingSize {
	sizes := make([]BearingSize, len(deepGroove))
	for i, b := range deepGroove {
		sizes[i] = b.size
	}
	return sizes
}

// DeepGroove gives the bearing of that size; ok is false for an unknown one.
func (s BearingSize) DeepGroove() (b DeepGroove, ok bool) {
	for _, row := range deepGroove {
		if row.size == s {
			return DeepGroove{row.bore / 1000, row.outside / 1000, row.width / 1000, row.static * 1000}, true
		}
	}
	return DeepGroove{}, false
}

// MeanDiameter is halfway between bore and outside, m.
func (b DeepGroove) MeanDiameter() float64 { return (b.Bore + b.Outside) / 2 }

// Mass is that of rings, balls and cage, kg.
func (b DeepGroove) Mass() float64 {
	return bearingFill * steelDensity * math.Pi / 4 * (b.Outside*b.Outside - b.Bore*b.Bore) * b.Width
}

const (
	loadFactor    = 0.0009 // f1 of a deep-groove ball bearing, upper of 0.0006 to 0.0009
	bearingOrigin = "from memory: Palmgren's bearing friction, f1 = 0.0009"
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
func newBearingDrag(b DeepGroove, radial, axial, oilFactor, viscosity, speedShare float64) bearingDrag {
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
