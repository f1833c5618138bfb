package belt

import "math"

// wedge is the friction that acts on a belt seated in grooves of the given
// included angle, rad, for a plain friction coefficient.
// Source: Theory of Machines texts, V-belt drives: f = µ / sin(angle/2).
func wedge(friction, angle float64) float64 { return friction / math.Sin(angle/2) }

// traction is the ratio of tight to slack contact tension at the limit of
// friction over a wrap in rad. Source: Euler-Eytelwein, exp(f·wrap).
func traction(friction, wrap float64) float64 { return math.Exp(friction * wrap) }

// designFriction is the friction that gives the ratio at 180° of wrap.
func designFriction(ratioAt180 float64) float64 { return math.Log(ratioAt180) / math.Pi }

// arcFactor is the pull a belt may carry at a wrap in rad, as a share of that
// at 180°, for the same tight side. 1.25(1−5^(−θ/π)) for the classical 5:1.
func arcFactor(ratioAt180, wrap float64) float64 {
	return (1 - math.Pow(ratioAt180, -wrap/math.Pi)) * ratioAt180 / (ratioAt180 - 1)
}

// centrifugal is the tension that turning the belt's own mass round the
// pulleys takes, N: mass per length kg/m, speed m/s.
func centrifugal(massPerLength, speed float64) float64 { return massPerLength * speed * speed }

// Tensions are the total tensions of the two free spans, N.
type Tensions struct {
	TightSide   float64
	SlackSide   float64
	Centrifugal float64 // part of both, which presses on no pulley
}

// atTraction is the tensions that just carry a pull, N, when the contact
// tensions stand in the given ratio.
func atTraction(pull, ratio, centrifugal float64) Tensions {
	return Tensions{
		TightSide:   centrifugal + pull*ratio/(ratio-1),
		SlackSide:   centrifugal + pull/(ratio-1),
		Centrifugal: centrifugal,
	}
}

// locked is the tensions under a pull at a locked centre distance: the loop
// keeps its length, so the spans keep the sum set at standstill.
func locked(standing, pull, centrifugal float64) Tensions {
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

// demand is the friction these tensions ask for over a wrap, and whether the
// slack side still presses on the pulley at all.
func (t Tensions) demand(wrap float64) (friction float64, ok bool) {
	tight, slack := t.Contact()
	if !(slack > 0) {
		return 0, false
	}
	return math.Log(tight/slack) / wrap, true
}

// skidPull is the greatest pull a belt set to a standing tension at a locked
// centre carries before it slips as a whole, N. It is zero when the belt's own
// mass has taken all of the tension.
func skidPull(standing, centrifugal, ratio float64) float64 {
	return 2 * math.Max(0, standing-centrifugal) * (ratio - 1) / (ratio + 1)
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
