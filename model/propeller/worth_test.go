package propeller

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/reading"
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

// The low end reaches down to the figure of merit of real propellers, and no
// further where the model gives less itself.
func TestBandReachesRealPropellers(t *testing.T) {
	p := made(t, nothing)
	pt := p.At(standard(0, 2550))
	r := p.Report(pt, pt)
	low := r.ThrustLow / p.Installed(1)
	merit := low * math.Sqrt(low/(2*pt.Flow.Density*p.DiscArea())) / pt.Power
	if math.Abs(merit-0.60) > 1e-9 || math.Abs(r.ThrustBand-(1-low/pt.Thrust)) > 1e-12 {
		t.Errorf("low thrust has figure of merit %g, band %g", merit, r.ThrustBand)
	}
	coarse := made(t, func(s *Spec) { s.Pitch = 1.2 })
	pt = coarse.At(standard(0, 2000))
	most, _ := thrustWorth()
	if r := coarse.Report(pt, pt); pt.FigureOfMerit > 0.60 || math.Abs(r.ThrustLow*(1+most)/r.StaticInstalled-1) > 1e-9 {
		t.Errorf("figure of merit %g, low %g N of %g N", pt.FigureOfMerit, r.ThrustLow, r.StaticInstalled)
	}
	for _, key := range []string{"propeller.thrust_band", "propeller.static_thrust_low", "propeller.static_thrust_high"} {
		if x, _ := reading.Find(r.Readings(nil), key); !strings.Contains(x.Method, "no flat-bottomed section") {
			t.Errorf("%s: %s", key, x.Method)
		}
	}
}
