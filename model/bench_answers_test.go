package model

import (
	"math"
	"strings"
	"testing"

	"backspan/model/propeller"
	"backspan/model/reading"
	"backspan/model/unit"
)

func checkOf(t *testing.T, o Outcome, key string) reading.Check {
	t.Helper()
	for _, c := range o.Checks {
		if c.Key == key {
			return c
		}
	}
	t.Fatalf("no check %s", key)
	return reading.Check{}
}

// What the bench answers to a builder's blunders, word for word.
func TestBenchAnswers(t *testing.T) {
	const (
		lugging = "the engine lugs, load too heavy: at full throttle it does not reach its lowest usable speed; too little reduction, or too large a propeller"
		racing  = "over-speed, load too light: at full throttle the engine would run past its highest speed, so it is throttled back to it; too much reduction, or too small a propeller"
		lighten = "the engine lugs: lower Nominal pitch, Diameter or the chords, or raise the reduction: a smaller crank pulley or pinion, or a larger driven pulley or wheel"
		loadUp  = "the engine over-speeds: raise Nominal pitch, Diameter or the chords, or lower the reduction: a larger crank pulley or pinion, or a smaller driven pulley or wheel"
		guard   = "choose a smaller propeller Diameter or a larger Guard diameter"
	)
	driven := func(d string) [][2]string {
		return [][2]string{{"drive.ribbed_belt.driven_pulley_effective_diameter", d}}
	}
	for _, tc := range []struct {
		name, check     string
		change          [][2]string
		text, why, cure string
	}{
		{"ratio far too low", "match.static", driven("100 mm"), lugging, lugging, lighten},
		{"ratio far too low, in flight", "match.trim", driven("100 mm"), lugging, lugging, lighten},
		{"ratio too low", "match.static", driven("165 mm"), " %, at least 85.0 %", "", lighten},
		{"ratio far too high", "match.static_light", driven("268 mm"), racing, racing, loadUp},
		{"ratio far too high, in flight", "match.trim", driven("268 mm"), racing, racing, loadUp},
		{"no reduction", "match.static", [][2]string{{"drive.kind", "direct"}}, lugging, lugging, lighten},
		{"propeller wider than the guard", "stack.tip_clearance", [][2]string{{"propeller.diameter", "1500 mm"}}, "-25.0 mm, at least 60.0 mm", "", guard},
	} {
		c := checkOf(t, evaluated(t, tc.change), tc.check)
		if c.Verdict != reading.Fails || !strings.HasSuffix(c.Text(), tc.text) || c.Why != tc.why || c.Cure != tc.cure {
			t.Errorf("%s: %s %q, why %q, cure %q", tc.name, c.Verdict, c.Text(), c.Why, c.Cure)
		}
	}
}

// A blade at 40° stands stalled in still air: the match finds the point, and
// everything says that it is a bad one.
func TestBladeAtFortyDegreesStanding(t *testing.T) {
	s := Sample()
	v := s.Variants[0].Clone()
	v.Propeller.Shape, v.Propeller.Rows = propeller.Stations, nil
	for x := 0.15; x < 1; x += 0.05 {
		angle := math.Atan(math.Tan(unit.Degree.SI(40)) * 0.75 / x)
		v.Propeller.Rows = append(v.Propeller.Rows, []float64{x, 0.1 * (1 - 0.6*x), angle})
	}
	o := Evaluate(s, &v)
	within(t, "engine speed standing, rpm", value(t, o, "engine.speed"), 3930, 0.05)
	if thrust, usual := value(t, o, "propeller.static_thrust"), value(t, evaluated(t, nil), "propeller.static_thrust"); thrust > 0.3*usual {
		t.Errorf("a stalled blade pulls %.0f N of %.0f N", thrust, usual)
	}
	for key, want := range map[string]reading.Verdict{"match.static": reading.Fails, "propeller.stall_margin": reading.Thin, "match.level": reading.Fails} {
		if c := checkOf(t, o, key); c.Verdict != want {
			t.Errorf("%s is %s: %s", key, c.Verdict, c.Text())
		}
	}
	if c := checkOf(t, o, "propeller.stall_margin"); !c.Past || unit.Degree.From(c.Value) > -25 {
		t.Errorf("stall margin %s", c.Text())
	}
}

// The side that torque turns to follows crank and drive.
func TestTorqueTurnsAgainstThePropeller(t *testing.T) {
	for _, tc := range []struct {
		kind, turns string
		side        float64
	}{
		{"ribbed belt", "clockwise", -1}, {"ribbed belt", "anticlockwise", 1},
		{"gear", "clockwise", 1}, {"gear", "anticlockwise", -1},
	} {
		o := evaluated(t, [][2]string{{"drive.kind", tc.kind}, {"engine.turns", tc.turns}})
		if got := value(t, o, "flight.torque_side"); got != tc.side {
			t.Errorf("%s, crank %s: torque turns to %g", tc.kind, tc.turns, got)
		}
		if got := value(t, o, "flight.propeller_turn"); got != -tc.side {
			t.Errorf("%s, crank %s: propeller turns %g", tc.kind, tc.turns, got)
		}
		cancels := value(t, o, "flight.crank_momentum") < 0
		if cancels != (tc.kind == "gear") {
			t.Errorf("%s: the crank cancels: %v", tc.kind, cancels)
		}
	}
}

// The craft grows lighter as it burns: it flies longer than its tank at the
// first hour's fuel, and less far than that time at the first hour's speed.
func TestBurningFuelIsCounted(t *testing.T) {
	o := evaluated(t, nil)
	hours, litres := value(t, o, "flight.endurance"), value(t, o, "flight.level_fuel")
	const tank = 8 // litres: 80 % of 10
	if hours <= 1.01*tank/litres || hours >= 1.06*tank/litres {
		t.Errorf("%.3f h with %d L at %.3f L/h", hours, tank, litres)
	}
	if speed := value(t, o, "flight.trim_speed"); value(t, o, "flight.range") >= hours*speed {
		t.Error("the range is flown at ready mass all the way")
	}
}

// The thrust line's three points against the match between them.
func TestThrustLineFollowsTheMatch(t *testing.T) {
	s := Sample()
	for i := range s.Variants {
		c, m := built(t, &s.Variants[i])
		line := thrustLine(m)
		for _, share := range []float64{0.25, 0.5, 0.75, 0.9, 1.12} {
			v := share * m.Trim.Airspeed
			want := c.fullThrottle(v).InstalledThrust
			if got := line.At(v); math.Abs(got/want-1) > 0.015 {
				t.Errorf("%s at %.1f m/s: %.1f N on the line, %.1f N matched", s.Variants[i].Name, v, got, want)
			}
		}
	}
}
