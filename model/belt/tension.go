package belt

import (
	"math"

	"backspan/model/pulley"
)

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

// atTraction is the tensions that just carry a pull, N, when the contact
// tensions stand in the given ratio.
func atTraction(pull, ratio, centrifugal float64) pulley.Tensions {
	return pulley.Tensions{
		TightSide:   centrifugal + pull*ratio/(ratio-1),
		SlackSide:   centrifugal + pull/(ratio-1),
		Centrifugal: centrifugal,
	}
}

// demand is the friction that tensions ask for over a wrap, and whether the
// slack side still presses on the pulley at all.
func demand(t pulley.Tensions, wrap float64) (friction float64, ok bool) {
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
