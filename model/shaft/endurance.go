package shaft

import "math"

// Surface is how the axle was finished.
type Surface string

// The finishes for which a surface factor is known.
const (
	Ground    Surface = "ground"
	Machined  Surface = "machined or cold drawn"
	HotRolled Surface = "hot rolled"
	Forged    Surface = "as forged"
)

const megapascal = 1e6 // Pa

// factor is ka = a Sut^b with Sut in MPa; the tensile strength is in Pa. An
// unlisted finish counts as machined. Source: Shigley's Mechanical Engineering
// Design, chapter 6, from memory.
func (s Surface) factor(tensile float64) float64 {
	rows := finishes()
	found := &rows[0]
	for i := range rows {
		if rows[i].surface == s || found.surface != s && rows[i].surface == Machined {
			found = &rows[i]
		}
	}
	return found.factor * math.Pow(tensile/megapascal, found.exponent)
}

// EnduranceLimit is the amplitude of reversed bending that a steel section of
// a diameter from 2.79 to 51 mm stands for ever, Pa: half the tensile
// strength, at most 700 MPa, times the factors of surface, size and
// reliability. Source: Marin's factors, Shigley's Mechanical Engineering
// Design, chapter 6, from memory.
func EnduranceLimit(tensile, diameter float64, s Surface, reliabilityFactor float64) float64 {
	size := 1.24 * math.Pow(diameter*1000, -0.107)
	return s.factor(tensile) * size * reliabilityFactor * math.Min(tensile/2, 700*megapascal)
}

// NotchFactor is the fatigue notch factor of a stress concentration and a
// notch sensitivity from 0 to 1: 1 + q (Kt - 1).
func NotchFactor(concentration, sensitivity float64) float64 {
	return 1 + sensitivity*(concentration-1)
}
