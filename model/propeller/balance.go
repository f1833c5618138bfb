package propeller

// BalanceGrade is a quality grade of ISO 21940-11: how fast the centre of mass
// of a rotor may run round its axis.
type BalanceGrade string

// The grades offered.
const (
	G1  BalanceGrade = "G 1"
	G2  BalanceGrade = "G 2.5"
	G6  BalanceGrade = "G 6.3"
	G16 BalanceGrade = "G 16"
	G40 BalanceGrade = "G 40"
)

// BalanceStandard is where the grades are from.
const BalanceStandard = "from memory: ISO 21940-11"

// Eccentricity is how far off its axis the centre may lie at a speed in rad/s,
// m; 0 at standstill, where the grade sets no limit.
func (g BalanceGrade) Eccentricity(speed float64) float64 {
	if !(speed > 0) {
		return 0
	}
	millimetres := map[BalanceGrade]float64{G1: 1, G2: 2.5, G6: 6.3, G16: 16, G40: 40}[g] // a second
	return millimetres * 1e-3 / speed
}
