package coupling

import (
	"math"

	"backspan/model/param"
)

// ShoeTorque is what shoes of a mass, kg, with their centre of gravity at a
// radius, m, carry on a drum's inside radius, m, at a speed, rad/s, when they
// touch it from a take-up speed on, N·m; 0 below that. Shoes are taken to move
// straight out. Source: Budynas & Nisbett, Shigley's Mechanical Engineering
// Design, chapter 16, from memory: n μ m r R (ω² − ω1²).
func ShoeTorque(shoes int, mass, radius, drum, friction, speed, takeUp float64) float64 {
	return float64(shoes) * friction * mass * radius * drum * math.Max(0, speed*speed-takeUp*takeUp)
}

// Heat is what one take-up of a clutch makes of motion, J: two inertias, kg·m²,
// whose speeds differ by so much, rad/s, and nothing else drives or holds them.
// Source: Budynas & Nisbett, Shigley's Mechanical Engineering Design, chapter
// 16, energy considerations, from memory.
func Heat(first, second, difference float64) float64 {
	return first * second / (first + second) * difference * difference / 2
}

const (
	noClutch  = "there is no clutch"
	noTorque  = "neither Clutch torque nor Mass of one shoe is given"
	fewerTurn = "Speed of the clutch torque must lie above that at which the clutch takes hold"
)

// grip is a clutch's torque over speed.
type grip struct {
	takeUp    float64
	perSquare float64 // torque over ω² − ω1², kg·m²
	why       string  // why the torque is not known, empty when it is
}

func (s *Spec) grip() grip {
	g := grip{takeUp: s.TakeUp}
	switch {
	case s.Kind != Clutch:
		g.why = noClutch
	case s.Torque.Known && s.TorqueSpeed <= s.TakeUp:
		g.why = fewerTurn
	case s.Torque.Known:
		g.perSquare = s.Torque.Value / (s.TorqueSpeed*s.TorqueSpeed - s.TakeUp*s.TakeUp)
	case s.ShoeMass.Known:
		g.perSquare = ShoeTorque(s.Shoes, s.ShoeMass.Value, s.ShoeRadius, s.Drum/2, s.Friction, 1, 0)
	default:
		g.why = noTorque
	}
	return g
}

// torque is what the clutch carries at a speed; known below take-up whatever
// the clutch.
func (g grip) torque(speed float64) param.Slot {
	switch {
	case g.why == noClutch:
		return param.Slot{}
	case speed <= g.takeUp:
		return param.Known(0)
	case g.why != "":
		return param.Slot{}
	}
	return param.Known(g.perSquare * (speed*speed - g.takeUp*g.takeUp))
}

// locks is the speed from which the clutch carries a load whose torque goes
// with the square of speed and has a value at a speed; empty where it never
// does or its torque is not known.
func (g grip) locks(torque, speed float64) param.Slot {
	load := torque / (speed * speed)
	if g.why != "" || !(g.perSquare > load) {
		return param.Slot{}
	}
	return param.Finite(g.takeUp * math.Sqrt(g.perSquare/(g.perSquare-load)))
}

// slipSteps is how many speeds between take-up and grip are looked at; the heat
// is smooth and its top flat.
const slipSteps = 48

// slipHeat is the most heat of a clutch that slips at a steady speed, W, and
// that speed: the propeller turns as fast as the clutch's torque drives it.
func (g grip) slipHeat(torque, speed float64) (heat param.Slot, at float64) {
	if g.why != "" || !(torque > 0) || !(speed > g.takeUp) {
		return param.Slot{}, 0
	}
	load, to := torque/(speed*speed), speed
	if l := g.locks(torque, speed); l.Known && l.Value < to {
		to = l.Value
	}
	heat = param.Known(0)
	for i := 1; i < slipSteps; i++ {
		w := g.takeUp + (to-g.takeUp)*float64(i)/slipSteps
		carried := g.perSquare * (w*w - g.takeUp*g.takeUp)
		if h := carried * (w - math.Sqrt(carried/load)); h > heat.Value {
			heat.Value, at = h, w
		}
	}
	return heat, at
}

// GripsFrom is the crank speed, rad/s, from which the coupling turns as one
// along a load whose torque goes with the square of speed and has a value at a
// speed: 0 without a clutch, and the take-up speed where nothing more is known
// of the clutch.
func (s *Spec) GripsFrom(torque, speed float64) float64 {
	if s.Kind != Clutch {
		return 0
	}
	if l := s.grip().locks(torque, speed); l.Known {
		return l.Value
	}
	return s.TakeUp
}
