package toothedbelt

import "backspan/model/belt"

// What the spans' contact tensions should be at the design power, as shares of
// the pull there. Source: Chinese mechanical design handbook, arc-tooth belt
// drives: F1 = 1250 Pd/v, F2 = 250 Pd/v with Pd in kW, F in N.
const (
	tightShare = 1.25
	slackShare = 0.25
)

// atDesign is the tensions, N, the stage should run at under its design pull.
func atDesign(pull, centrifugal float64) belt.Tensions {
	return belt.Tensions{
		TightSide:   centrifugal + tightShare*pull,
		SlackSide:   centrifugal + slackShare*pull,
		Centrifugal: centrifugal,
	}
}

// locked is the tensions under a pull at a locked centre distance: the loop
// keeps its length, so the spans keep the sum set at standstill.
func locked(standing, pull, centrifugal float64) belt.Tensions {
	return belt.Tensions{TightSide: standing + pull/2, SlackSide: standing - pull/2, Centrifugal: centrifugal}
}
