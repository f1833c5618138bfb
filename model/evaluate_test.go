package model

import (
	"slices"
	"strings"
	"testing"

	"backspan/model/drive"
	"backspan/model/param"
	"backspan/model/reading"
)

func evaluated(t *testing.T, change [][2]string) Outcome {
	t.Helper()
	s := Sample()
	v := s.Variants[0].Clone()
	for _, c := range change {
		p, ok := param.Find(v.Sections(), c[0])
		if !ok {
			t.Fatalf("no parameter %s", c[0])
		}
		if err := p.Set(c[1]); err != nil {
			t.Fatal(err)
		}
	}
	return Evaluate(s, &v)
}

// Machines that cannot be built or flown say so in words, and what depends on
// the missing part is missing with the same words.
func TestImpossibleMachinesSayWhy(t *testing.T) {
	for _, tc := range []struct {
		name    string
		change  [][2]string
		check   string
		verdict reading.Verdict
		says    string // in the check's advice or reason
		missing string // a reading that must have no value
	}{
		{"pulleys touch", [][2]string{{"drive.ribbed_belt.centre_distance", "120 mm"}}, "drive.possible", reading.Fails, "Centre distance", "stack.depth"},
		{"ratio below one", [][2]string{{"drive.ribbed_belt.driven_pulley_effective_diameter", "66 mm"}}, "drive.ratio", reading.Fails, "driven pulley larger", ""},
		{"pulley under its least", [][2]string{{"drive.ribbed_belt.crank_pulley_effective_diameter", "40 mm"}}, "belt.crank_diameter", reading.Fails, "Crank pulley, effective diameter", ""},
		{"propeller wider than the guard", [][2]string{{"propeller.diameter", "1500 mm"}}, "stack.tip_clearance", reading.Fails, "Guard diameter", ""},
		{"load far too heavy", [][2]string{{"propeller.pitch", "1100 mm"}, {"propeller.diameter", "1700 mm"}}, "match.static", reading.Fails, "pitch", ""},
		{"load far too light", [][2]string{{"propeller.pitch", "300 mm"}, {"propeller.diameter", "900 mm"}}, "match.static_light", reading.Fails, "pitch", ""},
		{"boss past the root", [][2]string{{"propeller.boss_diameter", "240 mm"}}, "propeller.possible", reading.Fails, "Boss diameter", "propeller.static_thrust"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			o := evaluated(t, tc.change)
			found := false
			for _, c := range o.Checks {
				if c.Key == tc.check {
					found = true
					if c.Verdict != tc.verdict || !strings.Contains(c.Cure+c.Why, tc.says) {
						t.Errorf("%s is %s: %s %s", c.Key, c.Verdict, c.Cure, c.Why)
					}
				}
			}
			if !found {
				t.Errorf("no check %s", tc.check)
			}
			if tc.missing != "" {
				if r, ok := o.Reading(tc.missing); !ok || r.Known() || r.Why == "" {
					t.Errorf("%s is %+v", tc.missing, r)
				}
			}
		})
	}
}

// Edits must move what they move in the workshop.
func TestEditsMoveTheRightReadings(t *testing.T) {
	base := evaluated(t, nil)
	for _, tc := range []struct {
		name   string
		change [2]string
		moves  map[string]int // sign of the change
	}{
		{"larger crank pulley", [2]string{"drive.ribbed_belt.crank_pulley_effective_diameter", "72 mm"},
			map[string]int{"drive.ratio": -1, "belt.static_tension": -1, "engine.speed": -1, "propeller.static_thrust": -1, "stack.depth": 0}},
		{"one rib more", [2]string{"drive.ribbed_belt.ribs", "13"},
			map[string]int{"drive.depth": 1, "stack.depth": 1, "drive.mass": 1, "belt.load_per_rib": -1, "carry.hip_moment": 1}},
		{"deeper pad", [2]string{"frame.pad_depth", "45 mm"},
			map[string]int{"stack.depth": 1, "stack.drive_depth": 0, "stack.mass_ready": 0, "carry.hip_moment": 1, "carry.equivalent_mass": 1,
				"flight.gyroscopic_couple": 0, "flight.torque_reaction": 0, "flight.static_moment": 1, "flight.pitch_inertia": 1,
				"flight.yaw_inertia": 1, "flight.net_couple": 0, "flight.angular_acceleration": -1, "flight.yaw_acceleration": -1, "flight.hang_load_difference": 0}},
		{"half the fuel", [2]string{"tank.fill", "40"},
			map[string]int{"stack.mass_ready": -1, "stack.mass_dry": 0, "flight.climb_rate": 1, "flight.endurance": -1, "flight.range": -1, "flight.ceiling": 1, "flight.take_off_run": -1}},
		{"fan", [2]string{"cooling.kind", "fan"},
			map[string]int{"stack.depth": 1, "propeller.static_thrust": -1, "cooling.power_taken": 1}},
	} {
		o := evaluated(t, [][2]string{tc.change})
		for key, want := range tc.moves {
			d := value(t, o, key) - value(t, base, key)
			got := 0
			switch {
			case d > 1e-9:
				got = 1
			case d < -1e-9:
				got = -1
			}
			if got != want {
				t.Errorf("%s: %s moved by %g, want sign %+d", tc.name, key, d, want)
			}
		}
	}
}

// What is built does not change with the day; what it does, does.
func TestHardwareIsTheSameOnAnyDay(t *testing.T) {
	at := func(altitude string) Outcome {
		s := Sample()
		p, ok := param.Find(s.Sections(), "site.altitude")
		if !ok {
			t.Fatal("no altitude")
		}
		if err := p.Set(altitude); err != nil {
			t.Fatal(err)
		}
		return Evaluate(s, &s.Variants[0])
	}
	low, high := at("0 m"), at("2500 m")
	for _, key := range []string{"belt.static_tension", "belt.shaft_load_standing", "stack.mass_dry", "stack.depth"} {
		if a, b := value(t, low, key), value(t, high, key); a != b {
			t.Errorf("%s is %g low and %g high", key, a, b)
		}
	}
	if a, b := value(t, low, "propeller.static_thrust"), value(t, high, "propeller.static_thrust"); b >= a {
		t.Errorf("thrust is %g low and %g high", a, b)
	}
}

// Figures from outside the propeller's model must not come back as a climb.
func TestNoFlightFromOutsideThePropellerModel(t *testing.T) {
	o := evaluated(t, [][2]string{{"propeller.pitch", "300 mm"}, {"propeller.pitch_trim", "-8"}, {"drive.ribbed_belt.driven_pulley_effective_diameter", "100 mm"}})
	thrust, ok := o.Reading("propeller.thrust_at_trim")
	if !ok || thrust.Known() {
		t.Fatalf("this propeller should be outside its model at trim: %+v", thrust)
	}
	for _, key := range []string{"flight.climb_rate", "flight.hang_full", "flight.torque_reaction"} {
		if r, _ := o.Reading(key); r.Known() {
			t.Errorf("%s is %s all the same", key, r.Text())
		}
	}
}

// An engine that cannot turn its propeller stands still: the reason is the
// load, and nothing pretends to a working point.
func TestLuggingSaysSoEverywhere(t *testing.T) {
	o := evaluated(t, [][2]string{{"drive.kind", "direct"}})
	for _, key := range []string{"engine.power", "drive.efficiency", "drive.output_speed", "propeller.static_thrust", "flight.climb_rate"} {
		if r, _ := o.Reading(key); r.Known() || !strings.Contains(r.Why, "load too heavy") {
			t.Errorf("%s is %s: %s", key, r.Text(), r.Why)
		}
	}
	if r, _ := o.Reading("stack.depth"); !r.Known() {
		t.Error("the stack stands whether the engine turns or not")
	}
}

func TestNoFeelWithoutAMachine(t *testing.T) {
	s := Sample()
	unbuilt := s.Index("Belt 80")
	s.Variants[unbuilt].Drive.RibbedBelt.CentreDistance = 0.06
	if c := Compare(s, EvaluateAll(s)); c.Feel[unbuilt].Known || !c.Feel[unbuilt+1].Known {
		t.Errorf("%+v", c.Feel)
	}
}

func TestEngineThroughThePropellerFails(t *testing.T) {
	o := evaluated(t, [][2]string{{"engine.depth_to_rear_end", "330 mm"}})
	for _, c := range o.Checks {
		if c.Key == "stack.engine_clear" && c.Verdict != reading.Fails {
			t.Errorf("%s: %s", c.Verdict, c.Text())
		}
	}
}

func TestBelowTheCrankMirrorsTheDrive(t *testing.T) {
	above, below := evaluated(t, nil), evaluated(t, [][2]string{{"drive.propeller_axis", "below crank"}})
	if a, b := above.Stack.CGUp, below.Stack.CGUp; b <= a {
		t.Errorf("with the propeller below the crank the machine's centre goes from %.3f to %.3f m", a, b)
	}
	if a, b := above.Stack.Depth, below.Stack.Depth; a != b {
		t.Errorf("depth %.3f became %.3f m", a, b)
	}
}

func BenchmarkEvaluate(b *testing.B) {
	s := Sample()
	for i := range s.Variants {
		b.Run(s.Variants[i].Name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if o := Evaluate(s, &s.Variants[i]); len(o.Readings) == 0 {
					b.Fatal("nothing found")
				}
			}
		})
	}
}

func BenchmarkCompare(b *testing.B) {
	s := Sample()
	outcomes := EvaluateAll(s)
	b.ReportAllocs()
	for b.Loop() {
		Compare(s, outcomes)
	}
}

// A machine that finds no working point is built of an engine and bolts all the
// same: what does not hang on the load is told.
func TestUnmatchedMachineKeepsWhatItKnows(t *testing.T) {
	s := Sample()
	v := s.Variants[s.Index("Belt 190")]
	matched := Evaluate(s, &v)
	v.Drive.Kind = drive.Direct
	o := Evaluate(s, &v)
	for _, key := range append(slices.Clone(engineAlone), boltsAlone...) {
		got, ok := o.Reading(key)
		want, _ := matched.Reading(key)
		if !ok || got.Text() != want.Text() {
			t.Errorf("%s: %s, matched %s", key, got.Text(), want.Text())
		}
	}
	for _, key := range []string{"engine.speed", "engine.power", "bolt.slip_safety", "bolt.shear_force", "bolt.thrust_share"} {
		if got, _ := o.Reading(key); got.Known() {
			t.Errorf("%s is %s without a working point", key, got.Text())
		}
	}
}
