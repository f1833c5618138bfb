package shaft

import "math"

// Key is a parallel key in a shaft: lengths in m. Length is what bears, without
// rounded ends.
type Key struct{ Width, Height, ShaftDepth, Length float64 }

// keys lists the sections of parallel keys by the shaft diameter up to which
// they serve, in mm. Source: DIN 6885-1 (ISO/R 773), seen in a reprint of its
// table.
var keys = [...]struct{ most, width, height, depth float64 }{
	{8, 2, 2, 1.2}, {10, 3, 3, 1.8}, {12, 4, 4, 2.5}, {17, 5, 5, 3}, {22, 6, 6, 3.5}, {30, 8, 7, 4},
	{38, 10, 8, 5}, {44, 12, 8, 5}, {50, 14, 9, 5.5}, {58, 16, 10, 6},
}

// KeyFor is the key for a shaft diameter above 6 and up to 58 mm, in a seat of
// a length, m; its ends are rounded. ok is false outside, or where the seat is
// shorter than the key is wide.
func KeyFor(diameter, seat float64) (k Key, ok bool) {
	d := diameter * 1000
	if d <= 6 {
		return Key{}, false
	}
	for _, row := range keys {
		if d <= row.most+1e-9 {
			k = Key{row.width / 1000, row.height / 1000, row.depth / 1000, seat - row.width/1000}
			return k, k.Length > 0
		}
	}
	return Key{}, false
}

// Shear is the mean shear stress of the key under a torque, N·m, Pa. Source:
// Shigley's Mechanical Engineering Design, section 7-7.
func (k Key) Shear(torque, diameter float64) float64 {
	return 2 * torque / (diameter * k.Width * k.Length)
}

// Pressure is the mean pressure on the flank of key and hub, Pa, on the
// shallower of the two depths. Source: Shigley's Mechanical Engineering Design,
// section 7-7, where both are half the height.
func (k Key) Pressure(torque, diameter float64) float64 {
	return 2 * torque / (diameter * math.Min(k.ShaftDepth, k.Height-k.ShaftDepth) * k.Length)
}

// Spline is an involute spline of 30°; lengths in m.
type Spline struct {
	Diameter, Module, Length float64
	Share                    float64 // of the flanks that carry
}

// Teeth is the number that the diameter holds: diameter = module (teeth + 1.1 +
// 2 shift) with a shift from -0.05 to 0.45, and the even number where two will
// do. Source: DIN 5480, from memory.
func (s Spline) Teeth() int {
	const rounding = 1e-9
	most := s.Diameter/s.Module - 1 + rounding
	z := math.Floor(most)
	if math.Mod(z, 2) == 1 && z-1 >= most-1-2*rounding {
		z--
	}
	return int(z)
}

// Pressure is the mean pressure on the flanks that carry under a torque, N·m,
// Pa; ok is false for fewer than six teeth. The flanks touch over a depth of
// one module about the mean diameter. Source: statics; DIN 5480 from memory.
func (s Spline) Pressure(torque float64) (pressure float64, ok bool) {
	if s.Teeth() < 6 {
		return 0, false
	}
	mean := s.Diameter - 1.1*s.Module
	return 2 * torque / (mean * s.Module * s.Length * float64(s.Teeth()) * s.Share), true
}

// Taper is a cone pulled into its seat by a nut.
type Taper struct {
	Diameter float64 // in the middle of the seat, m
	Ratio    float64 // length over which the diameter grows by 1
	NutForce float64 // N
	Friction float64
}

// Torque is what the taper carries by friction before it slips, N·m. The nut's
// force also overcomes the friction along the cone. Source: statics of a cone,
// as for the cone clutch in Shigley's Mechanical Engineering Design, chapter 16.
func (t Taper) Torque() float64 {
	half := math.Atan(1 / (2 * t.Ratio))
	normal := t.NutForce / (math.Sin(half) + t.Friction*math.Cos(half))
	return t.Friction * normal * t.Diameter / 2
}
