package belt

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/unit"
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
		{"less than a right angle", func(s *Spec) { s.CrankDiameter, s.DrivenDiameter, s.CentreDistance = 0.05, 0.33, 0.197 }, "belt.wrap", reading.Fails},
		{"worn belt skids", func(s *Spec) { s.StandingTension, s.WornLoss = param.Known(600), 0.3 }, "belt.slip_reserve_worn", reading.Fails},
		{"slack span flutters", func(s *Spec) { s.StandingTension = param.Known(480) }, "belt.slack_stiffness", reading.Thin},
		{"little travel", func(s *Spec) { s.Setting.EccentricOffset = 0.002 }, "belt.eccentric_travel", reading.Thin},
		{"no eccentric", func(s *Spec) { s.Setting.EccentricOffset = 0 }, "belt.eccentric_travel", reading.NotRated},
		{"no torque known", asIs, "belt.slack_side_peak", reading.NotRated},
		{"no law for PL", func(s *Spec) { s.Profile = PL }, "belt.replacement", reading.NotRated},
		{"worn before the change", func(s *Spec) { s.Profile, s.Fatigue.Wear = PL, param.Known(50*3600) }, "belt.replacement", reading.Fails},
		{"tired before the change", func(s *Spec) { s.Ribs, s.CrankDiameter = 6, 0.05 }, "belt.replacement", reading.Thin},
		{"rating without a source", func(s *Spec) { s.Rating = grid(""); s.CentreDistance = 0.2 }, "belt.power_rating", reading.NotRated},
		{"rated", func(s *Spec) { s.Rating = grid("a report") }, "belt.power_rating", reading.Holds},
		{"rated, few ribs", func(s *Spec) { s.Rating, s.Ribs = grid("a report"), 5 }, "belt.power_rating", reading.Fails},
		{"outside the rating", func(s *Spec) { s.Rating, s.CrankDiameter = grid("a report"), 0.082 }, "belt.power_rating", reading.NotRated},
	} {
		cs := build(t, tc.change).Examine(rated(), part.Train{}).Checks(nil, 0.1)
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

// grid is an invented rating table: kW per rib = 30·diameter in m + rpm/10000.
func grid(source string) Rating {
	r := Rating{Source: source}
	for _, d := range []float64{0.05, 0.06, 0.08} {
		for _, n := range []float64{4000, 7000, 9000} {
			r.Rows = append(r.Rows, [3]float64{d, unit.RPM.SI(n), 1000 * (30*d + n/1e4)})
		}
	}
	return r
}

func TestPulsationChecks(t *testing.T) {
	examined := func(set float64) []reading.Check {
		return build(t, func(s *Spec) { s.StandingTension = param.Known(set) }).Examine(rated(), single()).Checks(nil, 0.1)
	}
	for _, tc := range []struct {
		set                          float64
		here, anywhere, skids, bands reading.Verdict
	}{
		{900, reading.Thin, reading.Thin, reading.Thin, reading.Thin},
		{1400, reading.Holds, reading.Holds, reading.Holds, reading.Thin},
	} {
		cs := examined(tc.set)
		for key, want := range map[string]reading.Verdict{
			"belt.slack_side_peak": tc.here, "belt.slack_side_sweep": tc.anywhere, "belt.slip_reserve_peak": tc.skids, "belt.resonance_range": tc.bands,
		} {
			if c := anyspec.Check(t, cs, key); c.Verdict != want {
				t.Errorf("set to %g N, %s: %s, want %s (%s)", tc.set, key, c.Verdict, want, c.Text())
			}
		}
	}
	if c := anyspec.Check(t, examined(900), "belt.slack_side_sweep"); !strings.Contains(c.Cure, "the worst is at 6") {
		t.Errorf("says %q", c.Cure)
	}
}

func TestPeakAdviceFitsTheSetting(t *testing.T) {
	for want, r := range map[string]Result{
		"raise Standing tension per strand":           {TensionGiven: true, LoadFactor: ByPulsation},
		"raise Reserve on the pulsation demand":       {LoadFactor: ByPulsation},
		"set Load factor to pulsation, or raise Serv": {LoadFactor: ByServiceFactor},
	} {
		if got := r.peakAdvice(); !strings.HasPrefix(got, want) {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// A belt set 40 % low fails, and the check says what it still carries.
func TestSlackBeltSaysWhatItMeans(t *testing.T) {
	required := build(t, asIs).required
	b := build(t, func(s *Spec) { s.StandingTension = param.Known(0.6 * required) })
	c := anyspec.Check(t, b.Examine(rated(), part.Train{}).Checks(nil, 0.1), "belt.standing_tension")
	if c.Verdict != reading.Fails || !strings.Contains(c.Cure, "set so, it carries 10.3 kW at the design tension ratio and skids worn at 15.1 kW") {
		t.Errorf("%s: %s", c.Verdict, c.Cure)
	}
}

func TestHotBeltSaysWhatItCosts(t *testing.T) {
	r := build(t, func(s *Spec) { s.RatedEfficiency = 0.9435 }).Examine(rated(), part.Train{})
	near(t, "temperature", r.Temperature, 273.15+110, 1)
	c := anyspec.Check(t, r.Checks(nil, 0.1), "belt.temperature")
	if c.Verdict != reading.Thin || !strings.Contains(c.Cure, "times as fast as when cool") {
		t.Errorf("%s: %s", c.Verdict, c.Cure)
	}
	near(t, "wear rate", r.Life.Heat, math.Exp2((r.Temperature-353.15)/12), 1e-12)
}

func TestCoarseProfileAtHighSpeedFails(t *testing.T) {
	b := build(t, func(s *Spec) {
		s.Profile, s.Ribs, s.CrankDiameter, s.DrivenDiameter, s.CentreDistance = PM, 4, 0.18, 0.4, 0.32
	})
	if c := anyspec.Check(t, b.Examine(rated(), part.Train{}).Checks(nil, 0.1), "belt.speed"); c.Verdict != reading.Fails {
		t.Errorf("%s", c.Text())
	}
}
