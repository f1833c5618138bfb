package propeller

import (
	"math"
	"testing"

	"backspan/model/internal/published"
)

// recorded is the share of deviation that the table of comparisons keeps.
const recorded = 0.0005

// hold tests that the table of comparisons says what the model now gives of a
// measured propeller standing still, and leaves none out.
func hold(t testing.TB, seen map[string]bool, c published.Case, load, thrust, power float64) {
	t.Helper()
	if load < workingLoad {
		return
	}
	for _, row := range compared {
		if row.name == c.Name {
			seen[c.Name] = true
			if math.Abs(row.thrust-thrust) > recorded*1.01 || math.Abs(row.power-power) > recorded*1.01 {
				t.Errorf("compared says %+.3f of thrust and %+.3f of power, the model gives %+.4f and %+.4f", row.thrust, row.power, thrust, power)
			}
			return
		}
	}
	t.Errorf("not among the comparisons: {%q, %.3f, %.3f},", c.Name, thrust, power)
}

// The band shown beside a thrust is the range of the comparisons, and a
// thrust measured anywhere in them lies between the low and the high reading.
func TestBandIsTheRangeOfTheComparisons(t *testing.T) {
	most, least := thrustWorth()
	t.Logf("at equal power the model gives %+.1f to %+.1f %% of the measured thrust, %d comparisons", 100*least, 100*most, len(compared))
	p := made(t, nothing)
	pt := p.At(standard(0, 2550))
	r := p.Report(pt, pt)
	if r.ThrustLow >= r.StaticInstalled || r.ThrustHigh <= r.StaticInstalled {
		t.Errorf("%g N is not inside %g to %g N", r.StaticInstalled, r.ThrustLow, r.ThrustHigh)
	}
	for _, c := range compared {
		real := r.StaticInstalled * math.Pow(1+c.power, 2.0/3) / (1 + c.thrust)
		if real < r.ThrustLow-1e-9 || real > r.ThrustHigh+1e-9 {
			t.Errorf("%s: %g N is outside %g to %g N", c.name, real, r.ThrustLow, r.ThrustHigh)
		}
		if off := math.Abs(r.StaticInstalled/real - 1); off > r.ThrustBand+1e-9 {
			t.Errorf("%s: off by %g, the band is %g", c.name, off, r.ThrustBand)
		}
	}
}
