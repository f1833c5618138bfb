package engine

import (
	"fmt"
	"math"
	"testing"

	"backspan/model/internal/published"
	"backspan/model/part"
	"backspan/model/unit"
)

func piston(t testing.TB, c published.Case) map[string]float64 {
	sin, cos := math.Sincos(c.Num(t, "angle") * degree)
	below, rate := sliderCrank(c.Num(t, "radius")/c.Num(t, "rod")).travel(sin, cos)
	return map[string]float64{"travel": 2 * c.Num(t, "radius") * below, "rate": 2 * rate}
}

// inertiaTorque is what a reciprocating mass adds to the pulsation.
func inertiaTorque(t testing.TB, c published.Case) map[string]float64 {
	s := Default()
	s.Stroke, s.RodLength = 2*c.Num(t, "radius")/1000, c.Num(t, "rod")/1000
	s.ReciprocatingMass = c.Num(t, "mass")
	with, speed := build(t, s), perMinute(c.Num(t, "speed"))
	s.ReciprocatingMass = 0
	without := build(t, s)
	got := map[string]float64{}
	a, b := with.Pulsation(0, speed), without.Pulsation(0, speed)
	for k := range part.Orders {
		got[fmt.Sprintf("order_%d", k+1)] = a.Harmonics[k].Sin - b.Harmonics[k].Sin
	}
	return got
}

// cycleOf is a single cylinder of a case, without friction, and its indicated
// pressure, Pa.
func cycleOf(t testing.TB, c published.Case) (s Spec, pressure float64) {
	s = Default()
	s.Cycle = Cycle(c.Word(t, "cycle"))
	s.CompressionRatio = c.Num(t, "compression_ratio")
	s.BurnStart, s.BurnDuration = unit.Degree.SI(c.Num(t, "burn_start")), unit.Degree.SI(c.Num(t, "burn_duration"))
	s.FrictionPressure, s.ReciprocatingMass = 0, 0
	return s, c.Num(t, "indicated_pressure") * 1e5
}

func gasTorque(t testing.TB, c published.Case) map[string]float64 {
	s, pressure := cycleOf(t, c)
	got := amplitudes(build(t, s), pressure, 700)
	w := wholeWave(s, pressure)
	got["highest_pressure"], got["peak"], got["least"], got["energy"] = w.pressure/1e5, w.peak, w.least, w.energy
	printDeviations(t, c, got)
	return got
}

func gasAndInertia(t testing.TB, c published.Case) map[string]float64 {
	s, pressure := cycleOf(t, c)
	s.ReciprocatingMass = c.Num(t, "mass")
	s.Stroke, s.RodLength = 2*c.Num(t, "radius")/1000, c.Num(t, "rod")/1000
	s.Bore = math.Sqrt(c.Num(t, "displacement") * 1e-6 / (math.Pi / 4 * s.Stroke))
	e, speed := build(t, s), perMinute(c.Num(t, "speed"))
	got := amplitudes(e, pressure, speed)
	r := e.At(e.workRate(pressure, speed), speed)
	got["peak"], got["least"] = r.PeakTorqueShare, r.LeastTorqueShare
	printDeviations(t, c, got)
	return got
}

func amplitudes(e Engine, pressure, speed float64) map[string]float64 {
	got := map[string]float64{}
	p := e.Pulsation(e.workRate(pressure, speed), speed)
	for _, h := range p.Harmonics {
		got[fmt.Sprintf("order_%g", h.Order)] = h.Amplitude() / p.Mean
	}
	return got
}

func printDeviations(t testing.TB, c published.Case, got map[string]float64) {
	for name, printed := range c.Want {
		var want float64
		if _, err := fmt.Sscan(printed, &want); err != nil {
			t.Fatal(err)
		}
		t.Logf("%s: %s %.3g, other sum %s: %+.0f %%", c.Name, name, got[name], printed, 100*(got[name]-want)/math.Abs(want))
	}
}

// wave is the gas torque of one cylinder with all its orders.
type wave struct {
	pressure            float64 // highest, Pa
	peak, least, energy float64 // torques over the mean, swing of energy over the work of a cycle
}

func wholeWave(s Spec, pressure float64) wave {
	const charge = 101325.0
	var g gasCycle
	g.build(&s)
	work := 0.0
	for i := range g.active {
		work += (g.burningAfter[i] - g.burningBefore[i]) * g.rate[i] * degree
	}
	w, heat := wave{}, pressure/work
	// A mean torque is the work per swept volume over the cycle's angle.
	angle := 2 * math.Pi * s.Cycle.Revolutions()
	mean := pressure / angle
	sum, low, high := 0.0, 0.0, 0.0
	for n := -halfTurn; n < halfTurn; n++ {
		i, burning, sign := n, &g.burningAfter, 1.0
		if n < 0 {
			i, burning, sign = -n-1, &g.burningBefore, -1.0
		}
		p := charge*g.compression[i] + heat*burning[i]
		torque := sign * p * g.rate[i] / mean
		w.pressure = max(w.pressure, p+charge)
		w.peak, w.least = max(w.peak, torque), min(w.least, torque)
		sum += (torque - 1) * degree / angle
		low, high = min(low, sum), max(high, sum)
	}
	w.energy = high - low
	return w
}

// constantVolume is the efficiency of a burning as fast as may be.
func constantVolume(t testing.TB, c published.Case) map[string]float64 {
	s := Default()
	s.CompressionRatio, s.BurnStart, s.BurnDuration = c.Num(t, "compression_ratio"), -0.5*degree, degree
	var g gasCycle
	g.build(&s)
	work := 0.0
	for i := range g.closed {
		work += (g.burningAfter[i] - g.burningBefore[i]) * g.rate[i] * degree
	}
	sin, cos := math.Sincos(float64(g.closed) * degree)
	below, _ := s.sliderCrank().travel(sin, cos)
	trapped := 1 + below*(s.CompressionRatio-1)
	return map[string]float64{"share_of_ideal": (gasExponent - 1) * work / (1 - math.Pow(trapped, 1-gasExponent))}
}
