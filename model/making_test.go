package model

import (
	"math"
	"testing"

	"backspan/model/part"
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
