package toothedbelt

import "math"

// DrivenFor is the whole number of driven teeth that gives the ratio of crank
// over propeller speed nearest to the one asked; the crank pulley stays.
func (s *Spec) DrivenFor(ratio float64) int {
	return int(math.Round(ratio * float64(s.CrankTeeth)))
}

// KeepAxles lays the stage out by the centre distance that it has, so that
// other pulleys take another belt and leave the axles where they are. It
// reports false when the stage as it is cannot be laid out.
func (s *Spec) KeepAxles() bool {
	run, _, err := s.layOut(s.section())
	if err == nil {
		s.LaidOutBy, s.CentreDistance = ByCentreDistance, run.CentreDistance
	}
	return err == nil
}
