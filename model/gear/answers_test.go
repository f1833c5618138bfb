package gear

import (
	"strings"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

func checkOf(t testing.TB, r Result, key string) reading.Check {
	t.Helper()
	for _, c := range r.Checks(nil, 0.1) {
		if c.Key == key {
			return c
		}
	}
	t.Fatalf("no check %s", key)
	return reading.Check{}
}

// What the bench answers to a pinion of ten teeth without shift.
func TestTenUnshiftedTeeth(t *testing.T) {
	s := Default()
	s.PinionTeeth, s.PinionShift, s.HelixAngle, s.PinionBearings = 10, 0, 0, "6002"
	r := newGear(t, s).Examine(rated(), part.Train{})
	undercut := checkOf(t, r, "gear.undercut_pinion")
	if undercut.Verdict != reading.Fails || !strings.Contains(undercut.Text(), "0, at least 0.4151") ||
		undercut.Cure != "Raise Pinion profile shift or Pinion teeth." {
		t.Errorf("%s, %s, %s", undercut.Verdict, undercut.Text(), undercut.Cure)
	}
	meets := checkOf(t, r, "gear.interference_pinion")
	if meets.Verdict != reading.Fails || meets.Cure != "Raise Pinion profile shift or Pinion teeth, or lower the other gear's profile shift." {
		t.Errorf("%s, %s, %s", meets.Verdict, meets.Text(), meets.Cure)
	}
	t.Logf("%s: %s. %s\n%s: %s. %s", undercut.Label, undercut.Text(), undercut.Cure, meets.Label, meets.Text(), meets.Cure)
	if least, _ := reading.Find(r.Readings(nil), "gear.least_pinion_teeth"); least.Value < 15 {
		t.Errorf("least teeth %s", least)
	}
	if why := r.Strength.Why; why == "" {
		t.Error("such teeth are rated for strength")
	}
	t.Log(r.Strength.Why)
	s.PinionShift = 0.42
	r = newGear(t, s).Examine(rated(), part.Train{})
	if c := checkOf(t, r, "gear.undercut_pinion"); c.Verdict == reading.Fails {
		t.Error(c.Text())
	}
}

func TestBacklashCannotBeTypedNegativeAndRunsNegativeOnlyWithWarning(t *testing.T) {
	s := Default()
	for _, p := range s.Params() {
		if p.Key != "backlash" {
			continue
		}
		err := p.Set("-0.05")
		if err == nil || err.Error() != "Normal backlash: -0.05 mm is outside 0 to 1 mm; kept 0.14 mm" {
			t.Errorf("%v", err)
		}
	}
	s.Backlash = param.Known(0.02e-3)
	at := rated()
	at.AirTemperature = 233.15
	g := newGear(t, s)
	r := g.Examine(at, part.Train{})
	c := checkOf(t, r, "gear.backlash_least")
	if c.Verdict != reading.Fails || !strings.HasPrefix(c.Text(), "-0.0") || c.Cure != "Raise Normal backlash." {
		t.Errorf("%s, %s, %s", c.Verdict, c.Text(), c.Cure)
	}
	t.Logf("%s: %s, %s. %s", c.Label, c.Verdict, c.Text(), c.Cure)
}
