package propeller

import (
	"math"
	"testing"
)

// ISO 21940-11, from memory: e = G/ω. 6.3 mm/s leave 60.2 µm at 1000 rpm and
// 20.05 µm at 3000.
func TestGradesGoWithSpeed(t *testing.T) {
	for _, tc := range []struct {
		grade     BalanceGrade
		rpm, want float64 // µm
	}{{G6, 1000, 60.16}, {G6, 3000, 20.05}, {G2, 3000, 7.958}, {G16, 3000, 50.93}, {G1, 3000, 3.183}, {G40, 3000, 127.3}, {G6, 0, 0}} {
		if got := 1e6 * tc.grade.Eccentricity(tc.rpm*math.Pi/30); math.Abs(got-tc.want) > 5e-4*tc.want {
			t.Errorf("%s at %g rpm: %g µm, want %g", tc.grade, tc.rpm, got, tc.want)
		}
	}
}
