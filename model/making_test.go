package model

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"backspan/model/part"
	"backspan/model/unit"
)

// madeOf is what the workshop is told of a sample machine after changes to it.
func madeOf(t *testing.T, name string, change ...[2]string) (Outcome, []part.Allowed) {
	t.Helper()
	s := Sample()
	i := s.Index(name)
	if i < 0 {
		t.Fatalf("no %s in the sample", name)
	}
	v := s.Variants[i].Clone()
	tune(v.Sections(), change)
	o := Evaluate(s, &v)
	return o, Making(&v, &o)
}

func allowed(t *testing.T, list []part.Allowed, key string) part.Allowed {
	t.Helper()
	for _, a := range list {
		if a.Key == key {
			return a
		}
	}
	t.Fatalf("no %s", key)
	return part.Allowed{}
}

// A belt set within its limits is never slacker than slip and life are reckoned
// with, and there is a step of the adjuster inside them.
func TestTensionLimitsEndAtTheStandingTension(t *testing.T) {
	for _, change := range [][][2]string{nil, {{"drive.ribbed_belt.run_in_setting", "1.4"}}, {{"drive.ribbed_belt.run_in_setting", "0.8"}}} {
		o, list := madeOf(t, "Belt 190", change...)
		standing, step := value(t, o, "belt.standing_tension"), value(t, o, "belt.tension_step")
		for _, when := range []string{"new", "run_in"} {
			set, at := value(t, o, "belt.setting_"+when), value(t, o, "belt.frequency_"+when)
			tension, frequency := allowed(t, list, "belt.setting_"+when+"_limits"), allowed(t, list, "belt.frequency_"+when+"_limits")
			if want := math.Max(standing, set-step/2); math.Abs(tension.Least-want) > 1e-6 || tension.Most-tension.Least < step*(1-1e-9) {
				t.Errorf("%v, %s: %g to %g N, standing %g, a step is %g", change, when, tension.Least, tension.Most, standing, step)
			}
			if want := at * math.Sqrt(tension.Least/set); math.Abs(frequency.Least-want) > 1e-6 {
				t.Errorf("%v, %s: from %g Hz, want %g", change, when, frequency.Least, want)
			}
		}
	}
}

// From the definition: G 6.3 at 9500 rpm over the ratio, or what the bearings
// are rated for where that is less; a hub on the crank has only the grade.
func TestImbalanceIsTheLessOfGradeAndBearings(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change [][2]string
		um     func(rpm float64) float64
		says   string
	}{
		{"Belt 190", nil, func(rpm float64) float64 { return 6300 / (rpm * math.Pi / 30) }, "grade G 6.3 leaves"},
		{"Belt 190", [][2]string{{"drive.support.centre_offset", "10"}}, func(float64) float64 { return 10 }, "bearings are rated"},
		{"Gear 190", nil, func(rpm float64) float64 { return 6300 / (rpm * math.Pi / 30) }, "grade G 6.3 leaves"},
		{"Gear 190", [][2]string{{"drive.gear_shafts.centre_offset", "10"}}, func(float64) float64 { return 10 }, "bearings are rated"},
		{"Belt 190", [][2]string{{"drive.kind", "direct"}, {"propeller.diameter", "750 mm"}, {"propeller.pitch", "300 mm"}, {"propeller.balance_grade", "G 2.5"}},
			func(rpm float64) float64 { return 2500 / (rpm * math.Pi / 30) }, "grade G 2.5 leaves"},
	} {
		o, list := madeOf(t, tc.name, tc.change...)
		a := allowed(t, list, "propeller.imbalance")
		rpm := 9500 / value(t, o, "drive.ratio")
		want := fmt.Sprintf("at most %.0f g·mm", value(t, o, "propeller.mass")*tc.um(rpm))
		if !strings.Contains(a.Text, want) || !strings.Contains(a.Method, tc.says) || !strings.Contains(a.Method, "spigot") || !strings.Contains(a.Origin, "21940-11") {
			t.Errorf("%s %v: %q, %q, want %s", tc.name, tc.change, a.Text, a.Method, want)
		}
	}
}

// ISO 286-1, IT7 from memory: js7 is ±15 µm above 50 mm up to 80 and ±17.5 µm
// above that up to 120.
func TestSampleCentreTolerancesAreTheirSizes(t *testing.T) {
	for name, want := range map[string]float64{"Gear 80": 15, "Gear 190": 15, "Gear 300": 17.5} {
		o, list := madeOf(t, name)
		centre, a := value(t, o, "gear.centre_distance"), allowed(t, list, "gear.centre_limits")
		if over := centre > 80; over != (want > 15) {
			t.Errorf("%s: centre distance %g mm", name, centre)
		}
		if got := 1e6 * (a.Most - a.Least) / 2; math.Abs(got-want) > 1e-6 {
			t.Errorf("%s: ± %g µm, want %g", name, got, want)
		}
	}
}

func TestOrdersAreInTheWordsOfTheTrade(t *testing.T) {
	for _, tc := range []struct{ name, key, want string }{
		{"Belt 190", "belt.order", "12 PK 800"},
		{"Toothed 190", "toothedbelt.order", "H8M, 106 teeth, 30.0 mm wide"},
	} {
		if _, list := madeOf(t, tc.name); allowed(t, list, tc.key).Text != tc.want {
			t.Errorf("%s: %q, want %q", tc.name, allowed(t, list, tc.key).Text, tc.want)
		}
	}
}

func TestPropellerTurnsAsCrankAndDriveSay(t *testing.T) {
	_, belt := madeOf(t, "Belt 190", [2]string{"engine.turns", "anticlockwise"})
	_, plain := madeOf(t, "Belt 190")
	_, gear := madeOf(t, "Gear 190")
	turn := func(list []part.Allowed) string { return allowed(t, list, "propeller.turns").Text }
	if turn(plain) == turn(belt) || turn(plain) == turn(gear) {
		t.Errorf("belt %q, crank the other way %q, gear %q", turn(plain), turn(belt), turn(gear))
	}
}

// A hub on the crank has bolts and propeller, and nothing of a belt or a gear.
func TestMakingOfADirectDrive(t *testing.T) {
	o, list := madeOf(t, "Belt 190", [2]string{"drive.kind", "direct"}, [2]string{"propeller.diameter", "750 mm"}, [2]string{"propeller.pitch", "300 mm"})
	for _, a := range list {
		if !strings.HasPrefix(a.Key, "propeller.") && !strings.HasPrefix(a.Key, "bolt.") {
			t.Errorf("a direct drive has %s", a.Key)
		}
	}
	torque := value(t, o, "bolt.tightening_torque")
	if last := allowed(t, list, "bolt.last_pass"); math.Abs((last.Least+last.Most)/2-torque) > 1e-9 {
		t.Errorf("last pass %g to %g N·m, tightened to %g", last.Least, last.Most, torque)
	}
	allowed(t, list, "bolt.sequence")
	if a := allowed(t, list, "propeller.tracking"); math.Abs(a.Most-0.002) > 1e-12 || a.Param != "propeller.tracking_limit" {
		t.Errorf("%+v", a)
	}
}

// A machine that cannot be built still has its tracking, and no figure of its belt.
func TestMakingOfWhatCannotBeBuilt(t *testing.T) {
	_, list := madeOf(t, "Belt 190", [2]string{"drive.ribbed_belt.centre_distance", "60 mm"})
	for _, a := range list {
		if strings.HasPrefix(a.Key, "belt.") && a.Most != 0 || a.Key == "propeller.imbalance" && a.Why == "" {
			t.Errorf("%+v", a)
		}
	}
	allowed(t, list, "propeller.tracking")
}

// Outer rings are as warm as the oil of a case or the belt on a hub, and the
// hub's metal tells how much it grows.
func TestSeatsAreWarmedByTheirDrive(t *testing.T) {
	for _, tc := range []struct {
		name, where, temperature string
		change                   [][2]string
		warns                    bool
	}{
		{"Belt 190", "hub", "belt.temperature", nil, true},
		{"Belt 190", "case", "belt.temperature", [][2]string{{"drive.support.axle", "turns"}}, false},
		{"Toothed 190", "hub", "toothedbelt.temperature", nil, true},
		{"Gear 190", "case", "gear.oil_temperature", nil, true},
	} {
		s := Sample()
		v := s.Variants[s.Index(tc.name)].Clone()
		tune(v.Sections(), tc.change)
		o := Evaluate(s, &v)
		a := allowed(t, SeatLimits(&v, &o, 0), "bearing.bore_play_running")
		at := unit.Celsius.Text(unit.Celsius.SI(value(t, o, tc.temperature)))
		if !strings.Contains(a.Label, tc.where) || !strings.Contains(a.Method, at) || strings.Contains(a.Method, "warning") != tc.warns {
			t.Errorf("%s %v: %q, %q, want %s", tc.name, tc.change, a.Label, a.Method, at)
		}
	}
	s := Sample()
	v := s.Variants[s.Index("Belt 190")].Clone()
	tune(v.Sections(), [][2]string{{"drive.support.housing_growth", "0.115"}, {"drive.support.bearing_bore_class", "P7"}})
	o := Evaluate(s, &v)
	if a := allowed(t, SeatLimits(&v, &o, 0), "bearing.bore_play_running"); strings.Contains(a.Method, "warning") || !strings.HasPrefix(a.Text, "press") {
		t.Errorf("a steel hub: %q, %q", a.Text, a.Method)
	}
}
