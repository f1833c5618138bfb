package figure

import "backspan/model/reading"

// Foremost is the check to look at first: the worst of those that have a
// limit. Checks that nobody can rate are in every study; one of them comes
// first only when nothing else is there.
func Foremost(cs []reading.Check) (reading.Check, bool) {
	var rated []reading.Check
	for _, c := range cs {
		if c.Verdict != reading.NotRated {
			rated = append(rated, c)
		}
	}
	if len(rated) > 0 {
		return reading.Worst(rated)
	}
	return reading.Worst(cs)
}
