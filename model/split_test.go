package model

import (
	"math"
	"testing"

	"backspan/model/carry"
)

func TestSplitsOfTheSampleAreExact(t *testing.T) {
	s := Sample()
	c := Compare(s, EvaluateAll(s))
	for i, o := range c.Outcomes {
		want := value(t, o, "carry.hip_moment") - value(t, c.Outcomes[c.Reference], "carry.hip_moment")
		d := c.Splits[i]
		if !d.Known || math.Abs(d.Total-want) > 1e-9 || math.Abs(d.FromMass-d.OfMassAft-c.Feel[i].FromMass) > 1e-9 {
			t.Errorf("%s: %g of %g, mass as one point %g of %g", o.Variant, d.Total, want, d.FromMass-d.OfMassAft, c.Feel[i].FromMass)
		}
		mass, depth := 0.0, 0.0
		for j := range d.Pieces {
			mass, depth = mass+d.Pieces[j].OfMass(), depth+d.Pieces[j].OfDepth()
		}
		if math.Abs(mass-c.Feel[i].FromMass) > 1e-9 || math.Abs(depth-c.Feel[i].FromDepth) > 1e-9 {
			t.Errorf("%s: pieces sum to %g and %g, the comparison says %+v", o.Variant, mass, depth, c.Feel[i])
		}
		// The dearest of all is the engine, which is not to be thinned.
		if len(o.Depths) < 2 || o.Depths[0].Key != "engine" || value(t, o, "carry.kg_per_cm_worst") != o.Depths[1].PerDepth/100 {
			t.Errorf("%s: depths %+v", o.Variant, o.Depths)
		}
	}
	s.Variants[1].Drive.Gear.Module = 0.02
	s.Variants[0].Drive.RibbedBelt.CentreDistance = 0.06
	a, b := Evaluate(s, &s.Variants[0]), Evaluate(s, &s.Variants[3])
	if SplitFeel(s, &a, &b).Known {
		t.Error("a machine that cannot be built has a split")
	}
}

// A pilot from the table counts in the air as on the ground, in the split too.
func TestMeasuredPilotCountsEverywhere(t *testing.T) {
	s := Sample()
	heavy := s.Clone()
	heavy.Pilot.Percentile = carry.Man95
	a, b := Evaluate(s, &s.Variants[0]), Evaluate(heavy, &heavy.Variants[0])
	if heavy.Pilot.Mass != s.Pilot.Mass {
		t.Error("the study's own measures were overwritten")
	}
	for key, sign := range map[string]float64{"flight.climb_rate": -1, "carry.lean": -1, "carry.walk_power_low": 1, "carry.hip_moment": 1, "carry.heel_reserve": 1} {
		if d := value(t, b, key) - value(t, a, key); d*sign <= 0 {
			t.Errorf("%s moved by %g", key, d)
		}
	}
	gear := Evaluate(heavy, &heavy.Variants[1])
	if d := SplitFeel(heavy, &b, &gear).Total; math.Abs(d-value(t, gear, "carry.hip_moment")+value(t, b, "carry.hip_moment")) > 1e-9 {
		t.Errorf("the split's total is %g", d)
	}
}
