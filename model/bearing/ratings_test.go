package bearing

import (
	"math"
	"testing"
)

// The table's ratings against those that ISO 281 gives for the balls usually
// fitted, and the static ones against ISO 76's range of f0. Formulas and ball
// sets from memory: number of balls and their diameter in mm.
func TestRatingsFollowFromTheBalls(t *testing.T) {
	balls := map[Size][2]float64{
		"6002": {9, 4.762}, "6003": {10, 4.762}, "6004": {9, 6.35}, "6005": {10, 6.35}, "6006": {11, 7.144}, "6007": {11, 7.938}, "6008": {12, 7.938},
		"6202": {8, 5.953}, "6203": {8, 6.747}, "6204": {8, 7.938}, "6205": {9, 7.938}, "6206": {9, 9.525}, "6207": {9, 11.112}, "6208": {9, 12},
		"6302": {7, 7.938}, "6303": {7, 8.731}, "6304": {7, 9.525}, "6305": {7, 11.509}, "6306": {8, 12}, "6307": {8, 13.494}, "6308": {8, 15.081},
	}
	for _, size := range Sizes() {
		b, set := listed(t, size), balls[size]
		number, ball := set[0], set[1]
		over := ball / 1000 / b.MeanDiameter()
		inner := math.Pow(1.04*math.Pow((1-over)/(1+over), 1.72), 10.0/3)
		fc := 37.9 * math.Pow(1+inner, -0.3) * math.Pow(over, 0.3) * math.Pow(1-over, 1.39) / math.Cbrt(1+over) * math.Pow(26, 0.41)
		want := 1.3 * fc * math.Pow(number, 2.0/3) * math.Pow(ball, 1.8)
		if math.Abs(b.Rating/want-1) > 0.012 {
			t.Errorf("%s: dynamic %g N, from its balls %.0f N", size, b.Rating, want)
		}
		if f0 := b.StaticRating / (number * ball * ball); f0 < 12 || f0 > 15.5 {
			t.Errorf("%s: static %g N is %g per ball and diameter squared", size, b.StaticRating, f0)
		}
	}
}
