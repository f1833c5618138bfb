package model

import "backspan/model/carry"

// PieceFeel is the difference in upright hip moment between two variants,
// piece by piece. It is not Known when one of the machines could not be built.
type PieceFeel struct {
	Known bool
	carry.Split
}

// SplitFeel divides the difference in upright hip moment on the way from one
// outcome of the study to another.
func SplitFeel(s *Study, from, to *Outcome) PieceFeel {
	if from.Load.Mass <= 0 || to.Load.Mass <= 0 {
		return PieceFeel{}
	}
	return PieceFeel{Known: true, Split: s.Pilot.Measured().SplitPieces(from.Stack.Items, to.Stack.Items)}
}
