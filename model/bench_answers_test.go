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

// What the bench answers to a builder's blunders, word for word. A check that is
// not there fails the test.
func TestBenchAnswers(t *testing.T) {
	const (
		lugging  = "the engine lugs, load too heavy: at full throttle it does not reach its lowest usable speed; too little reduction, or too large a propeller"
		racing   = "over-speed, load too light: at full throttle the engine would run past Highest allowed speed, so it is throttled back to it; too much reduction, or too small a propeller"
		curveEnd = "past the end of its Power curve; extend it: at full throttle the load is too light to keep the engine on it, so it is throttled back to its last speed; too much reduction, or too small a propeller"
		lighten  = "the engine lugs: lower Nominal pitch or Pitch trim, Diameter or the chords, or raise the reduction: a smaller crank pulley or pinion, or a larger driven pulley or wheel"
		heavier  = "raise Nominal pitch or Pitch trim, Diameter or the chords, or lower the reduction: a larger crank pulley or pinion, or a smaller driven pulley or wheel"
		loadUp   = "the engine over-speeds: " + heavier
		extend   = "the engine runs past the end of its Power curve: extend Power curve if the engine goes on further; or " + heavier
		guard    = "choose a smaller propeller Diameter or a larger Guard diameter"
		shocks   = "shocks on the tips add drag and noise that this model does not know: thrust and power here stand for nothing; " +
			"reduce more: a smaller crank pulley or pinion, or a larger driven pulley or wheel; or lower Diameter"
		tooFast = "outside the model: the tips turn faster than Mach number 0.85, where shocks set in that it does not know"
		unstall = "lower Nominal pitch or Pitch trim, or raise the chords or Blades"
		stalled = "the working blade is stalled: it takes much power for little thrust and is loud; " + unstall
		unheard = "the blade stands stalled: its noise follows no formula used here and is louder than theirs; " + unstall
		single  = "a single blade pulls beside the shaft, at about 0.7 of the radius: its thrust bends the shaft once a turn, " +
			"and neither axle, bearings, bolts nor mounts are rated for that here; set Blades to 2 or more to have them rated"
	)
	driven := func(d string, more ...[2]string) [][2]string {
		return append(more, [2]string{"drive.ribbed_belt.driven_pulley_effective_diameter", d})
	}
	limit := [2]string{"engine.speed_limit", "8500"}
	fast := driven("100 mm", [2]string{"propeller.pitch", "200 mm"}, [2]string{"propeller.diameter", "1400 mm"},
		[2]string{"propeller.greatest_chord", "50 mm"}, [2]string{"propeller.root_chord", "50 mm"}, [2]string{"propeller.tip_chord", "25 mm"})
	rows := func(blades, rows string) [][2]string {
		return [][2]string{{"propeller.blades", blades}, {"propeller.shape", "stations"}, {"propeller.stations", rows}}
	}
	forty := rows("2", "0.15 90 75; 0.4 76 57.5; 0.75 55 40; 1 40 32.2")
	narrow := rows("4", "0.15 20 43; 0.4 20 19.5; 0.7 20 11.4; 1 20 8")
	for _, tc := range []struct {
		name, check     string
		change          [][2]string
		verdict         reading.Verdict
		text, why, cure string
	}{
		{"ratio far too low", "match.static", driven("100 mm"), reading.Fails, lugging, lugging, lighten},
		{"ratio far too low, in flight", "match.trim", driven("100 mm"), reading.Fails, lugging, lugging, lighten},
		{"ratio far too low, level", "match.level", driven("100 mm"), reading.Fails, lugging, lugging, lighten},
		{"ratio too low", "match.static", driven("165 mm"), reading.Fails, " %, at least 85.0 %", "", lighten},
		{"ratio far too high", "match.static_light", driven("268 mm", limit), reading.Fails, racing, racing, loadUp},
		{"ratio far too high, in flight", "match.trim", driven("268 mm", limit), reading.Fails, racing, racing, loadUp},
		{"ratio far too high for the curve", "match.static_light", driven("268 mm"), reading.Fails, curveEnd, curveEnd, extend},
		{"ratio far too high for the curve, in flight", "match.trim", driven("268 mm"), reading.Fails, curveEnd, curveEnd, extend},
		{"no reduction", "match.static", [][2]string{{"drive.kind", "direct"}}, reading.Fails, lugging, lugging, lighten},
		{"propeller wider than the guard", "stack.tip_clearance", [][2]string{{"propeller.diameter", "1500 mm"}}, reading.Fails, "-25.0 mm, at least 60.0 mm", "", guard},
		{"tip Mach 0.9", "propeller.tip_mach", fast, reading.Fails, "0.9143, at most 0.8500", "", shocks},
		{"tip Mach 0.9, model", "propeller.model", fast, reading.Fails, "fails", "", shocks},
		{"tip Mach 0.9, bolts", "bolt.slip_safety", fast, reading.NotRated, tooFast, tooFast, ""},
		{"four blades of 2 cm", "propeller.stall_margin", narrow, reading.Thin, "1.22°, at least 3.00°", "", unstall},
		{"four blades of 2 cm, too light", "match.static_light", narrow, reading.Fails, curveEnd, curveEnd, extend},
		{"40° standing", "propeller.stall_margin", forty, reading.Thin, "-32.3°, at least 3.00°", "", stalled},
		{"40° standing, engine", "match.static", forty, reading.Fails, "49.0 %, at least 85.0 %", "", lighten},
		{"40° standing, noise", "noise.daily_exposure", forty, reading.NotRated, unheard, unheard, "wear a hearing protector and measure the noise at the ear"},
		{"single blade", "propeller.single_blade", oneBlade, reading.NotRated, single, single, ""},
		{"single blade, bearing", "bearing.life_prop_side", oneBlade, reading.NotRated, single, single, ""},
		{"single blade, bolts", "bolt.slip_safety", oneBlade, reading.NotRated, single, single, ""},
	} {
		c := checkOf(t, evaluated(t, tc.change), tc.check)
		if c.Verdict != tc.verdict || !strings.HasSuffix(c.Text(), tc.text) || c.Why != tc.why || c.Cure != tc.cure {
			t.Errorf("%s: %s %q, why %q, cure %q", tc.name, c.Verdict, c.Text(), c.Why, c.Cure)
		}
	}
}

// A stalled blade shows no noise, one past the Mach limit no thrust or climb,
// and a single blade shows both.
func TestWithheldFigures(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change [][2]string
		hidden map[string]string
		shown  []string
	}{
		{"stalled", [][2]string{{"propeller.shape", "stations"}, {"propeller.stations", "0.15 90 75; 0.4 76 57.5; 0.75 55 40; 1 40 32.2"}},
			map[string]string{"noise.vortex": "stands stalled", "noise.level_at_ear": "stands stalled"}, []string{"propeller.static_thrust", "engine.speed"}},
		{"past the Mach limit", [][2]string{{"propeller.pitch", "200 mm"}, {"propeller.diameter", "1400 mm"}, {"drive.ribbed_belt.driven_pulley_effective_diameter", "100 mm"},
			{"propeller.greatest_chord", "50 mm"}, {"propeller.root_chord", "50 mm"}, {"propeller.tip_chord", "25 mm"}},
			map[string]string{"propeller.static_thrust": "Mach number 0.85", "flight.climb_rate": "Mach number 0.85", "noise.level_at_ear": "Mach number 0.85", "bearing.life_prop_side": "Mach number 0.85"},
			[]string{"propeller.tip_mach"}},
		{"single", oneBlade, map[string]string{"bearing.life_prop_side": "bends the shaft once a turn", "bolt.shear_force": "bends the shaft once a turn"},
			[]string{"propeller.static_thrust", "noise.level_at_ear", "flight.climb_rate"}},
	} {
		o := evaluated(t, tc.change)
		for key, why := range tc.hidden {
			if r, ok := o.Reading(key); !ok || r.Known() || !strings.Contains(r.Why, why) {
				t.Errorf("%s: %s %s: %s", tc.name, key, r.Text(), r.Why)
			}
		}
		for _, key := range tc.shown {
			value(t, o, key)
		}
	}
}

var oneBlade = [][2]string{{"propeller.blades", "1"}}

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
