package toothedbelt

import "backspan/model/pulley"

// What the spans' contact tensions should be at the design power, as shares of
// the pull there. Source: Chinese mechanical design handbook, arc-tooth belt
// drives: F1 = 1250 Pd/v, F2 = 250 Pd/v with Pd in kW, F in N.
const (
	tightShare = 1.25
	slackShare = 0.25
)

// atDesign is the tensions, N, the stage should run at under its design pull.
func atDesign(pull, centrifugal float64) pulley.Tensions {
	return pulley.Tensions{
		TightSide:   centrifugal + tightShare*pull,
		SlackSide:   centrifugal + slackShare*pull,
		Centrifugal: centrifugal,
	}
}
