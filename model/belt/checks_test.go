package belt

import (
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

func TestVerdicts(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Spec)
		key    string
		want   reading.Verdict
	}{
		{"crank pulley too small", func(s *Spec) { s.CrankDiameter = 0.044 }, "belt.crank_diameter", reading.Fails},
		{"driven pulley too small", func(s *Spec) { s.Profile, s.DrivenDiameter = PM, 0.175 }, "belt.driven_diameter", reading.Fails},
		{"little wrap", func(s *Spec) { s.CrankDiameter, s.DrivenDiameter = 0.05, 0.25 }, "belt.wrap", reading.Thin},
		{"fast belt", func(s *Spec) { s.CrankDiameter = 0.115; s.CentreDistance = 0.2 }, "belt.speed", reading.Fails},
		{"PL is long", func(s *Spec) { s.Profile = PL }, "belt.length", reading.Thin},
		{"set too slack", func(s *Spec) { s.StandingTension = param.Known(700) }, "belt.standing_tension", reading.Fails},
		{"slack side lifts off", func(s *Spec) { s.StandingTension = param.Known(400) }, "belt.slack_side", reading.Fails},
		{"skids when wet", func(s *Spec) { s.StandingTension = param.Known(500) }, "belt.slip_reserve_wet", reading.Thin},
		{"skids when dry", func(s *Spec) { s.DryFriction = 0.1 }, "belt.slip_reserve_dry", reading.Fails},
		{"few ribs", func(s *Spec) { s.Ribs = 5 }, "belt.tension_per_rib", reading.Thin},
		{"no usual tension for PJ", func(s *Spec) { s.Profile = PJ }, "belt.tension_per_rib", reading.NotRated},
		{"hot belt", func(s *Spec) { s.RatedEfficiency = 0.93 }, "belt.temperature", reading.Fails},
		{"no rating table", asIs, "belt.power_rating", reading.NotRated},
	} {
		cs := build(t, tc.change).Examine(rated(), part.Train{}).Checks(0.1)
		found := false
		for _, c := range cs {
			if c.Key != tc.key {
				continue
			}
			found = true
			if c.Verdict != tc.want {
				t.Errorf("%s: %s, want %s (%s)", tc.name, c.Verdict, tc.want, c.Text())
			}
		}
		if !found {
			t.Errorf("%s: no check %s", tc.name, tc.key)
		}
	}
}
