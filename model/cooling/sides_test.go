package cooling

import (
	"math"
	"testing"
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

// An ideal propeller's inflow goes with the third root of its power.
func TestInflowGrowsWithPower(t *testing.T) {
	s, d := Default(), standing()
	m := newMachine(&s, &d)
	near(t, "air speed at eight times the power", m.as(8*d.Power, 1.2).speed/m.as(d.Power, 1.2).speed, 2)
}

// The hot day thins the air: the engine gives less and the air takes less, and
// the propeller draws as before.
func TestHotDay(t *testing.T) {
	s, d := Default(), standing()
	m := newMachine(&s, &d)
	thin := d.AirTemperature / s.HotDay
	x := m.as(d.Power*thin, d.AirDensity*thin)
	r := Work(s, d)
	near(t, "head on the hot day", r.HotHead.Mid, x.head(s.GasTemperature, s.HotDay))
	if !(r.HotHead.Mid > r.Head.Mid) {
		t.Errorf("%g K on the hot day, %g K today", r.HotHead.Mid, r.Head.Mid)
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
