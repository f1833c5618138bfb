package explore

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat"
)

// First outputs of the reference program for the seed 1234567, as several
// independent ports state them.
func TestRandomNumbersAreSplitMix64(t *testing.T) {
	d := draw{1234567}
	for i, want := range []uint64{6457827717110365317, 3203168211198807973, 9817491932198370423} {
		if got := d.next(); got != want {
			t.Errorf("number %d is %d, want %d", i, got, want)
		}
	}
}

// Moments and tails of the shapes against their formulas, on the streams as
// samples take them: a new one for each number.
func TestShapesHaveTheirMoments(t *testing.T) {
	const n = 200_000
	for _, tc := range []struct {
		shape           Shape
		kurtosis, reach float64 // excess kurtosis; the farthest, in Half
	}{{Even, -1.2, 1}, {Triangular, -0.6, 1}, {Normal, 0, 6}} {
		s := Spread{Shape: tc.shape, Middle: 5, Half: 0.5}
		xs, lag := make([]float64, n), make([]float64, n)
		for i := range xs {
			d := drawOf(3, uint64(i), 0)
			xs[i] = s.take(&d)
			d = drawOf(3, uint64(i), 1)
			lag[i] = s.take(&d)
			if math.Abs(xs[i]-5) > tc.reach*0.5 {
				t.Fatalf("%s: %g", tc.shape, xs[i])
			}
		}
		mean, sd := stat.MeanStdDev(xs, nil)
		if math.Abs(mean-5) > 4*sd/math.Sqrt(n) || math.Abs(sd/s.Deviation()-1) > 0.01 {
			t.Errorf("%s: mean %g, deviation %g, want %g", tc.shape, mean, sd, s.Deviation())
		}
		if k := stat.ExKurtosis(xs, nil); math.Abs(k-tc.kurtosis) > 0.05 {
			t.Errorf("%s: kurtosis %g, want %g", tc.shape, k, tc.kurtosis)
		}
		if r := stat.Correlation(xs, lag, nil); math.Abs(r) > 4/math.Sqrt(n) {
			t.Errorf("%s: two spreads of one sample are related, %g", tc.shape, r)
		}
		if r := stat.Correlation(xs[1:], xs[:n-1], nil); math.Abs(r) > 4/math.Sqrt(n) {
			t.Errorf("%s: two samples are related, %g", tc.shape, r)
		}
	}
}

func TestSharesNeverReachTheirEnds(t *testing.T) {
	for _, word := range []uint64{0, math.MaxUint64} {
		if u := (float64(word>>12) + 0.5) / (1 << 52); !(u > 0 && u < 1) {
			t.Error(u)
		}
	}
	d := drawOf(1)
	for range 100_000 {
		if z := d.normal(); math.IsInf(z, 0) || math.IsNaN(z) {
			t.Fatal(z)
		}
	}
}
