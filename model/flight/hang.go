package flight

import "math"

// hung is the body below the hang points: pilot and machine.
type hung struct {
	weight   float64 // N
	aft      float64 // centre of gravity behind the hang points, m, as built
	below    float64 // centre of gravity below the hang points, m
	thrust   float64 // thrust line below the hang points, m
	inertia  float64 // in pitch about the hang points, kg·m²
	yaw      float64 // inertia in yaw about the same, kg·m²
	unitMass float64 // kg
	unitAft  float64 // machine's centre of gravity behind the hang points, m
}

func (in *Input) hung() hung {
	pilot := in.PilotMass + in.Seat.ClothingMass
	mass := pilot + in.UnitMass
	x := (pilot*in.Seat.Aft + in.UnitMass*in.UnitAft) / mass
	z := (pilot*in.Seat.Up + in.UnitMass*in.UnitUp) / mass
	aft, below := in.Seat.Aft-in.HangAft, in.HangUp-in.Seat.Up
	k := in.Seat.Gyration
	return hung{
		weight: mass * gravity,
		aft:    x - in.HangAft, below: in.HangUp - z, thrust: in.HangUp - in.ThrustHeight,
		inertia:  pilot*(k*k+aft*aft+below*below) + in.UnitPitchInertia,
		yaw:      pilot*(in.Seat.YawGyration*in.Seat.YawGyration+aft*aft) + in.UnitYawInertia,
		unitMass: in.UnitMass, unitAft: in.UnitAft - in.HangAft,
	}
}

// angle is how far the body leans back from upright, rad, under a thrust and a
// drag at its centre of gravity, both N.
//
//	θ = atan(x/z) + asin((T·z_t − D·z_d) / (W·l))
//
// ok is false when the moment exceeds what the weight can balance, or when the
// centre of gravity is not below the hang points. Source: statics.
func (h hung) angle(thrust, drag float64) (lean float64, ok bool) {
	s := (thrust*h.thrust - drag*h.below) / (h.weight * math.Hypot(h.aft, h.below))
	if h.below <= 0 || !(math.Abs(s) <= 1) {
		return 0, false
	}
	return math.Atan2(h.aft, h.below) + math.Asin(s), true
}

// twistStiffness is what turns the body back in line with the wing per angle
// of yaw, N·m/rad: weight N, hang point spacing, spread of the lines at the
// canopy and height of the lines, m. Source: two strings of fixed length,
// torque W·a·b·sin ψ/(4h).
func twistStiffness(weight, spacing, spread, height float64) float64 {
	return weight * spacing * spread / (4 * height)
}
