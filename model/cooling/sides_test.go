package cooling

import (
	"math"
	"strings"
	"testing"

	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

func near(t *testing.T, what string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-9*math.Abs(want) {
		t.Errorf("%s is %g, want %g", what, got, want)
	}
}

// The gas gives the stated share of the power to a head at the stated
// temperature, less what goes other ways, and grows with a power of the power.
func TestGasSide(t *testing.T) {
	s, d := Default(), standing()
	m := newMachine(&s, &d)
	near(t, "heat at the stated head", m.gasSide(d.Power)*(s.GasTemperature-s.StatedAt), 0.55*0.6*16e3)
	near(t, "heat at half power over that", m.gasSide(d.Power/2)/m.gasSide(d.Power), math.Pow(0.5, 0.64))
}

// By hand: 2 % of 16 kW at 45 % against 900 Pa is 0.16 m³/s, which passes a
// free area of 2·40 mm·150 mm at three quarters.
func TestFanByHand(t *testing.T) {
	s, d := Default(), standing()
	s.Kind = Fan
	s.FinHeight.Value, s.FinHeight.Known = 0.04, true
	s.FinnedLength.Value, s.FinnedLength.Known = 0.15, true
	m := newMachine(&s, &d)
	x := m.as(d.Power, d.AirDensity)
	near(t, "air speed", x.speed, 0.16/(2*0.04*0.15*0.75))
	surface := m.fins.conductance(x.speed, d.AirDensity, s.BaffleGain)
	stream := 0.16 * d.AirDensity * airHeat
	near(t, "conductance to warming air", x.air, stream*(1-math.Exp(-surface/stream)))
	if !(x.air < surface && x.air < stream) {
		t.Errorf("%g W/K, with a surface of %g and a stream of %g", x.air, surface, stream)
	}
}

// By hand: a radiator of 0.06 m² and a jacket of π·39.6 mm·(2·55.5+39.6) mm
// stand behind one another.
func TestLiquidByHand(t *testing.T) {
	s, d := Default(), standing()
	s.Kind = Liquid
	m := newMachine(&s, &d)
	x := m.as(d.Power, d.AirDensity)
	face := 0.06 * (1 - math.Exp(-math.Sqrt(5/x.speed))) * d.AirDensity * x.speed * airHeat
	wall := 6000 * math.Pi * 0.0396 * (2*0.0555 + 0.0396)
	near(t, "conductance", x.air, 1/(1/face+1/wall))
}

// An ideal propeller's inflow goes with the third root of its power over the
// air's density.
func TestInflowGrowsWithPower(t *testing.T) {
	s, d := Default(), standing()
	m := newMachine(&s, &d)
	near(t, "air speed at eight times the power", m.as(8*d.Power, d.AirDensity).speed/m.as(d.Power, d.AirDensity).speed, 2)
	near(t, "air speed in an eighth of the density", m.as(d.Power, d.AirDensity/8).speed/m.as(d.Power, d.AirDensity).speed, 2)
}

// The hot day has the engine's own power and its own density.
func TestHotDay(t *testing.T) {
	s, d := Default(), standing()
	m := newMachine(&s, &d)
	x := m.as(d.Hot.Power, d.Hot.Density)
	r := Work(s, d)
	near(t, "head on the hot day", r.HotHead.Mid, x.head(s.GasTemperature, s.HotDay))
	if !(r.HotHead.Mid > r.Head.Mid) {
		t.Errorf("%g K on the hot day, %g K today", r.HotHead.Mid, r.Head.Mid)
	}
}

// A reading on a cold day is weighed with that day's air and power.
func TestMeasurementBelongsToItsDay(t *testing.T) {
	d := standing()
	d.Measured = Day{16.8e3, 1.25}
	s := calibrated(Default(), 187, 0)
	then := d
	then.Power, then.AirDensity, then.AirTemperature, then.Induced = d.Measured.Power, d.Measured.Density, s.MeasuredAir.Value, 14.5*math.Cbrt(16.8/16*1.15/1.25)
	then.HeatShare *= math.Pow(then.Power/d.Power, s.PowerExponent) * d.Power / then.Power
	near(t, "head that day", Work(s, then).Head.Mid, s.MeasuredHead.Value)
	near(t, "correction", Work(s, d).Correction.Value, Work(s, then).Correction.Value)
}

// By hand: a pulley that covers all or none of the fins, or the upper half of
// them less the corners.
func TestPulleyCovers(t *testing.T) {
	s, d := Default(), standing()
	f := fins{root: 0.04, height: 0.02, length: 0.1}
	for _, tc := range []struct {
		name                string
		radius, rise, share float64
	}{
		{"none", 0, 0.12, 0}, {"out of the way", 0.1, -0.1, 0}, {"all", 0.2, 0.12, 1}, {"a disc within", 0.05, 0.12, math.Pi * 0.25 * 0.1 / 0.12},
		{"half a disc at the upper end", 0.05, 0.17, math.Pi * 0.125 * 0.1 / 0.12},
	} {
		d.PulleyRadius, d.AxisRise = tc.radius, tc.rise
		if got := f.behind(&s, &d); math.Abs(got-tc.share) > 0.003 {
			t.Errorf("%s: %g covered, want %g", tc.name, got, tc.share)
		}
	}
	d.PulleyRadius, d.AxisRise = 0.1, 0.176
	up := f.behind(&s, &d)
	s.CylinderLean = math.Pi
	if down := f.behind(&s, &d); up == 0 || down != 0 {
		t.Errorf("%g covered upright, %g hanging down", up, down)
	}
	s.CylinderLean, d.AxisRise = math.Pi/2, 0.01
	side := f.behind(&s, &d)
	s.CylinderLean, d.AxisRise = -math.Pi/2, 0.01
	if other := f.behind(&s, &d); side == 0 || math.Abs(side-other) > 1e-12 {
		t.Errorf("%g covered to the right, %g to the left", side, other)
	}
	// Lying down, a pulley high above the crank covers nothing.
	if d.AxisRise = 0.25; f.behind(&s, &d) != 0 {
		t.Errorf("%g covered lying down, far below the pulley", f.behind(&s, &d))
	}
}

// What the drive keeps off is said where it counts.
func TestShadeIsSaid(t *testing.T) {
	for _, tc := range []struct {
		kind                Kind
		gear                bool
		pulley              float64
		temperature, inflow string
	}{
		{FreeAir, true, 0, "gear case keeps off 35", "gear case keeps off 35"}, {FreeAir, false, 0.1, "driven pulley covers", "driven pulley covers"},
		{FreeAir, false, 0, "stands clear", "stands clear"}, {Fan, true, 0, "off a fan", "gear case keeps off 35"},
	} {
		s, d := Default(), standing()
		s.Kind, d.GearCase, d.PulleyRadius, d.AxisRise = tc.kind, tc.gear, tc.pulley, 0.176
		rs := Work(s, d).Readings(nil)
		for key, want := range map[string]string{"cooling.head_hot_day": tc.temperature, "cooling.inflow_share": tc.inflow} {
			if x, _ := reading.Find(rs, key); !strings.Contains(x.Method, want) {
				t.Errorf("%+v: %s: %s", tc, key, x.Method)
			}
		}
	}
}

// Unmeasured, a head fails only where even the low end is too hot; measured,
// where the middle is.
func TestHeadFailsWhenTheWholeBandDoes(t *testing.T) {
	for _, tc := range []struct {
		low, mid float64
		measured bool
		want     reading.Verdict
	}{{251, 300, false, reading.Fails}, {249, 300, false, reading.Thin}, {180, 220, false, reading.Holds}, {249, 251, true, reading.Fails}} {
		r := Result{Solved: true, Limit: unit.Celsius.SI(250), HotHead: Band{unit.Celsius.SI(tc.low), unit.Celsius.SI(tc.mid), unit.Celsius.SI(400)}}
		if tc.measured {
			r.Correction = param.Known(1)
		}
		if c := r.headCheck(0.1); c.Verdict != tc.want {
			t.Errorf("%+v: %s", tc, c.Verdict)
		}
	}
}

// A measurement behind a fan tells nothing of free air.
func TestFanMeasurementLeavesFreeAirAlone(t *testing.T) {
	s := Default()
	s.Kind = Fan
	before, after := Work(s, standing()), Work(calibrated(s, 150, 20), standing())
	if before.FreePower != after.FreePower {
		t.Errorf("%+v became %+v", before.FreePower, after.FreePower)
	}
	s.Kind = FreeAir
	if before, after := Work(s, standing()), Work(calibrated(s, 150, 20), standing()); before.FreePower == after.FreePower {
		t.Error("a measurement in free air must count")
	}
}

// The share of the sum over the rim must not hang on the number of steps.
func TestInflowHasSettled(t *testing.T) {
	for _, off := range []float64{0, 0.05, 0.09, 0.2, 0.6} {
		for _, ahead := range []float64{0.05, 0.1, 0.3} {
			sum, steps := 0.0, 4000
			for i := range steps {
				angle := math.Pi * (float64(i) + 0.5) / float64(steps)
				far := math.Sqrt(ahead*ahead + 0.65*0.65 + off*off - 2*0.65*off*math.Cos(angle))
				sum += (0.65*0.65 - off*0.65*math.Cos(angle)) / (far * (far + ahead)) / float64(steps)
			}
			if got := solidAngle(ahead, off, 0.65); math.Abs(got-sum) > 1e-3 {
				t.Errorf("%g ahead, %g off: %g, want %g", ahead, off, got, sum)
			}
		}
	}
}
