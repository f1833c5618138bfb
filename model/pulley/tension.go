package pulley

import "math"

// Centrifugal is the tension that turning the belt's own mass round the
// pulleys takes, N: mass per length kg/m, speed m/s.
func Centrifugal(massPerLength, speed float64) float64 { return massPerLength * speed * speed }

// Tensions are the total tensions of the two free spans, N.
type Tensions struct {
	TightSide   float64
	SlackSide   float64
	Centrifugal float64 // part of both, which presses on no pulley
}

// Locked is the tensions under a pull at a locked centre distance, N: the loop
// keeps its length, so the spans keep the sum set at standstill.
func Locked(standing, pull, centrifugal float64) Tensions {
	return Tensions{standing + pull/2, standing - pull/2, centrifugal}
}

// Standing is the tension per strand that must be set at standstill so that
// the spans run at these tensions at a locked centre. It contains the
// centrifugal tension, since the loop does not grow when it starts to turn.
func (t Tensions) Standing() float64 { return (t.TightSide + t.SlackSide) / 2 }

// Contact is the tensions that press on the pulleys.
func (t Tensions) Contact() (tight, slack float64) {
	return t.TightSide - t.Centrifugal, t.SlackSide - t.Centrifugal
}

// ShaftLoad is the belt's force on a pulley, N, in the pulley's plane.
type ShaftLoad struct {
	Along  float64 // along the line of centres, towards the other pulley
	Across float64 // at right angles, towards the tight span
}

// Size is the magnitude of the load, N.
func (l ShaftLoad) Size() float64 { return math.Hypot(l.Along, l.Across) }

// Angle is the direction of the load from the line of centres, rad.
func (l ShaftLoad) Angle() float64 { return math.Atan2(l.Across, l.Along) }

// ShaftLoad is what the contact tensions put on each shaft when the spans are
// tilted to the line of centres, rad.
func (t Tensions) ShaftLoad(tilt float64) ShaftLoad {
	tight, slack := t.Contact()
	return ShaftLoad{Along: (tight + slack) * math.Cos(tilt), Across: (tight - slack) * math.Sin(tilt)}
}
