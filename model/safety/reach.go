package safety

// row is one line of the reach table: openings up to e need at least these
// distances, m.
type row struct{ e, slot, square, round float64 }

// For people of 14 years and older. Source: ISO 13857, table 4: the distances as
// reprinted by a safety consultant, the ranges of the openings from memory.
var reachTable = [...]row{
	{0.004, 0.002, 0.002, 0.002},
	{0.006, 0.010, 0.005, 0.005},
	{0.008, 0.020, 0.015, 0.005},
	{0.010, 0.080, 0.025, 0.020},
	{0.012, 0.100, 0.080, 0.080},
	{0.020, 0.120, 0.120, 0.120},
	{0.030, 0.850, 0.120, 0.120},
	{0.040, 0.850, 0.200, 0.120},
	{0.120, 0.850, 0.850, 0.850},
}

// armPasses is the opening from which on a whole arm passes, m.
const armPasses = 0.040

// Reach is how far beyond an opening fingers, hand or arm get, m: the least
// distance that ISO 13857 asks for. Openings beyond 120 mm count as 120 mm. The
// easement for short slots is left out.
func Reach(s Shape, opening float64) float64 {
	r := reachTable[len(reachTable)-1]
	for _, candidate := range reachTable {
		if opening <= candidate.e {
			r = candidate
			break
		}
	}
	switch s {
	case Slot:
		return r.slot
	case Round:
		return r.round
	}
	return r.square
}
