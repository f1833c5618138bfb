package flight

import (
	"math"

	"backspan/model/air"
	"backspan/model/unit"
)

const (
	gravity         = unit.StandardGravity
	standardDensity = air.SeaLevelDensity
)

// AllUp is the mass in the air, kg, of a pilot with the ready machine.
func AllUp(w Wing, s Seat, pilotMass, unitMass float64) float64 {
	return pilotMass + s.ClothingMass + unitMass + w.Mass
}

// airspeed is the trim airspeed, m/s, at which the wing lifts lift, N: the
// lift coefficient at trim is fixed.
func (w Wing) airspeed(lift, density float64) float64 {
	return w.TrimSpeed * math.Sqrt(lift/(w.ReferenceMass*gravity)*standardDensity/density)
}

// Level is the true airspeed, m/s, and the thrust, N, of steady level flight
// at trim: allUp kg, density kg/m³.
//
//	T = W / ((L/D) cos τ + sin τ),  V = V_ref √(L / W_ref · ρ₀/ρ),  L = W − T sin τ
//
// Source: mechanics of flight.
func Level(w Wing, allUp, density float64) (airspeed, thrust float64) {
	weight := allUp * gravity
	sin, cos := math.Sincos(w.ThrustTilt)
	thrust = weight / (w.GlideRatio*cos + sin)
	return w.airspeed(weight-thrust*sin, density), thrust
}

// Climb is the angle of the flight path, rad, and the true airspeed, m/s, in
// steady flight with thrust, N. With too little thrust the angle is negative.
// ok is false when the thrust is too great for steady flight at trim.
//
//	L = W cos γ − T sin τ,  T cos τ = L/(L/D) + W sin γ
//
// which is solved exactly by sin(γ + ε) = T (cos τ + tan ε sin τ) cos ε / W
// with tan ε = D/L. Source: mechanics of flight.
func Climb(w Wing, allUp, thrust, density float64) (angle, airspeed float64, ok bool) {
	weight := allUp * gravity
	sin, cos := math.Sincos(w.ThrustTilt)
	glide := math.Atan(1 / w.GlideRatio)
	s := thrust * (cos + sin/w.GlideRatio) * math.Cos(glide) / weight
	if !(math.Abs(s) <= 1) {
		return 0, 0, false
	}
	angle = math.Asin(s) - glide
	lift := weight*math.Cos(angle) - thrust*sin
	if lift <= 0 {
		return 0, 0, false
	}
	return angle, w.airspeed(lift, density), true
}

// sinkOff is how fast the craft goes down at trim with the engine stopped, m/s.
func sinkOff(w Wing, allUp, density float64) float64 {
	angle, airspeed, _ := Climb(w, allUp, 0, density)
	return -airspeed * math.Sin(angle)
}
