package part

import "math"

// Harmonic is one order of a crank's torque: Cos·cos(Order·θ) + Sin·sin(Order·θ)
// with θ the crank angle from the first cylinder's top dead centre, N·m.
type Harmonic struct{ Order, Cos, Sin float64 }

// Amplitude is the height of the harmonic, N·m.
func (h Harmonic) Amplitude() float64 { return math.Hypot(h.Cos, h.Sin) }

// Orders is how many harmonics a Pulsation keeps.
const Orders = 8

// Pulsation is the torque of a crank at one duty: its mean and what it does
// besides. Only the first Count harmonics mean something.
type Pulsation struct {
	Mean      float64 // N·m
	Harmonics [Orders]Harmonic
	Count     int
}

// Crank is what a drive may ask of the engine before it. Powers in W at the
// drive face, speeds in rad/s.
type Crank interface {
	// Power is that at full throttle; 0 outside the usable speeds.
	Power(speed float64) float64
	// SpeedRange is the usable range at full throttle.
	SpeedRange() (lowest, highest float64)
	// IdleSpeed is where the engine turns without load.
	IdleSpeed() float64
	// Pulsation is the torque when power is given at speed; part load allowed.
	Pulsation(power, speed float64) Pulsation
}

// Train is what turns on either side of a drive.
type Train struct {
	Crank            Crank
	CrankInertia     float64 // crank and flywheel, without the drive's own parts, kg·m²
	PropellerInertia float64 // the propeller alone, kg·m²
	CrankTurn        Turn
}
