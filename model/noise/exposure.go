package noise

import "math"

const (
	workday  = 8 * 3600.0
	day      = 24 * 3600.0
	exchange = 3.0 // dB that halve the time
)

// permitted is how long in a day an ear may be in a level, dB(A), s, when it
// may be in the criterion's level for 8 h; a whole day where that is longer.
// Source: NIOSH 98-126; the same rule as the energy mean of ISO 1999 to 0.3 %.
func permitted(level, criterion float64) float64 {
	return min(workday*math.Pow(2, (criterion-level)/exchange), day)
}

// daily is the level that over 8 h brings the same energy as a level over a
// time, s. Source: ISO 1999, as in directive 2003/10/EC.
func daily(level, time float64) float64 {
	return max(level+10*math.Log10(max(time, 1)/workday), 0)
}
