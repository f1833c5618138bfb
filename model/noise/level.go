package noise

import "math"

// reference is the square of 20 µPa, Pa².
const reference = 4e-10

// level is a mean square sound pressure, Pa², in dB; 0 for what lies below the
// threshold of hearing.
func level(square float64) float64 {
	return 10 * math.Log10(max(square/reference, 1))
}

// square is the mean square sound pressure of a level, Pa².
func square(decibel float64) float64 { return reference * math.Pow(10, decibel/10) }

// The corner frequencies of the A-weighting, Hz, and the factor that makes it 1
// at 1000 Hz, 1.99966 dB. Source: IEC 61672-1, annex E.
const (
	corner1 = 20.598997
	corner2 = 107.65265
	corner3 = 737.86223
	corner4 = 12194.217
	atOneK  = 1.5847674901546138
)

// weight is the A-weighting at a frequency (≥ 0, Hz) as a factor on the mean
// square. Source: IEC 61672-1, annex E.
func weight(frequency float64) float64 {
	f2 := frequency * frequency
	low, high := f2+corner1*corner1, f2+corner4*corner4
	const c4 = corner4 * corner4 * corner4 * corner4
	return atOneK * c4 * f2 * f2 * f2 * f2 / (low * low * (f2 + corner2*corner2) * (f2 + corner3*corner3) * high * high)
}
