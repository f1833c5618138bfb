package cooling

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// standing is an invented engine of 190 cm³.
func standing() Duty {
	return Duty{
		Power: 16e3, HeatShare: 0.55, AirTemperature: unit.Celsius.SI(20), AirDensity: 1.15, Induced: 14.5,
		PropellerRadius: 0.65, HubRadius: 0.09, CylinderAhead: 0.15, CylinderOff: 0.1, RadiatorAhead: 0.15, RadiatorOff: 0.3,
		Bore: 0.066, Stroke: 0.0555, Cylinders: 1,
		Hot: Day{15.4e3, 1.08}, Measured: Day{16e3, 1.15},
	}
}

func drawDuty(t *rapid.T) Duty {
	f := func(lo, hi float64, name string) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	return Duty{
		Power: f(500, 60e3, "power"), HeatShare: f(0.2, 1.5, "share"), AirTemperature: f(230, 320, "air"), AirDensity: f(0.5, 1.6, "density"), Induced: f(0, 40, "induced"),
		PropellerRadius: f(0.3, 1, "tip"), HubRadius: f(0.03, 0.2, "hub"), CylinderAhead: f(-0.2, 0.6, "ahead"), CylinderOff: f(0, 0.5, "off"),
		RadiatorAhead: f(-0.3, 0.6, "radiator ahead"), RadiatorOff: f(-0.8, 0.8, "radiator off"),
		Bore: f(0.03, 0.11, "bore"), Stroke: f(0.025, 0.11, "stroke"), Cylinders: rapid.IntRange(1, 4).Draw(t, "cylinders"), GearCase: rapid.Bool().Draw(t, "gear"),
		Hot: Day{f(500, 60e3, "hot power"), f(0.5, 1.6, "hot density")}, Measured: Day{f(500, 60e3, "then power"), f(0.5, 1.6, "then density")},
		PulleyRadius: f(0, 0.3, "pulley"), AxisRise: f(-0.3, 0.3, "rise"),
	}
}

func calibrated(s Spec, head, air float64) Spec {
	s.MeasuredHead, s.MeasuredAir = param.Known(unit.Celsius.SI(head)), param.Known(unit.Celsius.SI(air))
	return s
}

// A machine measured on a day like this one must be found at that temperature,
// however it is cooled, and in a narrower band.
func TestOneMeasurementIsGivenBack(t *testing.T) {
	for _, kind := range []Kind{FreeAir, Baffled, Fan, Liquid} {
		s := Default()
		s.Kind = kind
		wide, r := Work(s, standing()).Head, Work(calibrated(s, 187, 20), standing())
		if got := unit.Celsius.From(r.Head.Mid); math.Abs(got-187) > 1e-9 {
			t.Errorf("%s: %g °C", kind, got)
		}
		if r.Head.High-r.Head.Low >= wide.High-wide.Low {
			t.Errorf("%s: the band is %+v after, %+v before", kind, r.Head, wide)
		}
	}
}

func TestSenselessMeasurementIsRefused(t *testing.T) {
	for _, s := range []Spec{calibrated(Default(), 60, 70), {}, Default()} {
		if s.Kind == "" {
			s = Default()
			s.MeasuredHead = param.Known(unit.Celsius.SI(200))
		}
		r := Work(s, standing())
		if r.Correction.Known {
			t.Errorf("took %+v", s.MeasuredHead)
		}
		failed := false
		for _, c := range r.Checks(nil, 0.1) {
			failed = failed || c.Key == "cooling.calibration" && c.Verdict == reading.Fails
		}
		if failed != (s.MeasuredHead.Known || s.MeasuredAir.Known) {
			t.Errorf("calibration fails: %v", failed)
		}
	}
}

// At the power that free air cools the head stands at its limit on the hot day.
func TestFreeAirPowerHoldsTheLimit(t *testing.T) {
	s, d := Default(), standing()
	r := Work(s, d)
	for i, factor := range []float64{1 + s.Scatter, 1, 1 / (1 + s.Scatter)} {
		m := newMachine(&s, &d)
		x := m.inAir(r.FreePower[i].Value, d.Hot.Density, 1)
		if got := (sides{gas: x.gas * factor, air: x.air}).head(s.GasTemperature, s.HotDay); math.Abs(got-s.HeadLimit) > 1e-3 {
			t.Errorf("%d: head at %g K, limit %g", i, got, s.HeadLimit)
		}
	}
	if !(r.FreePower[0].Value < r.FreePower[1].Value && r.FreePower[1].Value < r.FreePower[2].Value) {
		t.Errorf("%+v", r.FreePower)
	}
}

// What a builder can do must move the head the right way.
func TestWhatCoolsTheHead(t *testing.T) {
	base := Work(Default(), standing()).Head.Mid
	for _, tc := range []struct {
		name   string
		change func(*Spec, *Duty)
		hotter bool
	}{
		{"baffles", func(s *Spec, _ *Duty) { s.Kind = Baffled }, false},
		{"out of the hub's shadow", func(_ *Spec, d *Duty) { d.CylinderOff = 0.3 }, false},
		{"into the hub's shadow", func(_ *Spec, d *Duty) { d.CylinderOff = 0; d.CylinderAhead = 0.05 }, true},
		{"gear case", func(_ *Spec, d *Duty) { d.GearCase = true }, true},
		{"a pulley before the fins", func(_ *Spec, d *Duty) { d.PulleyRadius, d.AxisRise = 0.1, 0.176 }, true},
		{"shorter fins", func(s *Spec, _ *Duty) { s.FinHeight = param.Known(0.02) }, true},
		{"hotter air", func(_ *Spec, d *Duty) { d.AirTemperature += 15 }, true},
		{"iron", func(s *Spec, _ *Duty) { s.FinConductivity = 50 }, true},
		{"two cylinders share the heat", func(_ *Spec, d *Duty) { d.Cylinders = 2 }, false},
		{"a standing fan", func(s *Spec, _ *Duty) { s.Kind = Fan; s.FanPowerShare = 1e-6 }, true},
		{"a fan", func(s *Spec, _ *Duty) { s.Kind = Fan }, false},
		{"liquid", func(s *Spec, _ *Duty) { s.Kind = Liquid }, false},
	} {
		s, d := Default(), standing()
		tc.change(&s, &d)
		if got := Work(s, d).Head.Mid; (got > base) != tc.hotter {
			t.Errorf("%s: head goes from %.0f to %.0f K", tc.name, base, got)
		}
	}
}

func TestRadiatorOfTheFaceNeededHoldsTheCoolant(t *testing.T) {
	s, d := Default(), standing()
	s.Kind, s.JacketCoefficient, s.RadiatorFace = Liquid, 30000, 0.01
	for range 60 {
		s.RadiatorFace = Work(s, d).FaceNeeded
	}
	if got := Work(s, d).Coolant; math.Abs(got-s.CoolantLimit) > 0.01 {
		t.Errorf("coolant at %g K, limit %g", got, s.CoolantLimit)
	}
}

// Briggs and Young measured banks of finned tubes: Nu = 0.134 Re^0.681 Pr^⅓
// (s/l)^0.2 (s/t)^0.1134; the exponents were seen in a handbook, 0.134 is from
// memory. A single cylinder in a free stream must come near.
func TestGibsonIsNearBriggsAndYoung(t *testing.T) {
	const d, l, s, th, conductivity, viscosity, prandtl = 0.062, 0.025, 0.008, 0.002, 0.0263, 15.9e-6, 0.707
	for _, u := range []float64{5, 10, 15, 20, 25} {
		bank := conductivity / d * 0.134 * math.Pow(u*d/viscosity, 0.681) * math.Cbrt(prandtl) * math.Pow(s/l, 0.2) * math.Pow(s/th, 0.1134)
		if got := SurfaceCoefficient(l, s, u, gibsonDensity) / bank; got < 0.80 || got > 1.0 {
			t.Errorf("%g m/s: %.2f of the bank's %.1f W/m²K", u, got, bank)
		}
	}
}

func TestHotDayCheckWarnsUntilMeasured(t *testing.T) {
	s, d := Default(), standing()
	s.HeadLimit = unit.Celsius.SI(240)
	if c := Work(s, d).Checks(nil, 0.1)[0]; c.Verdict != reading.Thin || !c.Past {
		t.Errorf("not measured: %+v", c)
	}
	s.HeadLimit = unit.Celsius.SI(150)
	if c := Work(calibrated(s, 190, 20), d).Checks(nil, 0.1)[0]; c.Verdict != reading.Fails {
		t.Errorf("measured: %+v", c)
	}
}

// A limit inside the band is neither safe nor proof of the opposite.
func TestLimitInsideTheBandIsThin(t *testing.T) {
	s, d := Default(), standing()
	s.Kind = Fan
	hot := Work(s, d).HotHead
	for _, tc := range []struct {
		limit float64
		mid   reading.Verdict
		high  reading.Verdict
	}{
		{(hot.Low + hot.Mid) / 2, reading.Thin, reading.Thin}, {(hot.Mid + hot.High) / 2, reading.Holds, reading.Thin}, {hot.High + 1, reading.Holds, reading.Holds},
	} {
		s.HeadLimit = tc.limit
		cs := Work(s, d).Checks(nil, 0)
		if cs[0].Verdict != tc.mid || cs[1].Key != "cooling.head_band" || cs[1].Verdict != tc.high {
			t.Errorf("limit %g K: %s and %s", tc.limit, cs[0].Verdict, cs[1].Verdict)
		}
	}
}
