package model

import (
	"strings"
	"testing"

	"backspan/model/reading"
	"backspan/model/shaft"
)

// Few blades make the gyroscopic couple swing about its mean, on the axle and on
// the craft; behind a gear the swing may pass the mean.
func TestFewBladesSwing(t *testing.T) {
	s := Sample()
	for _, tc := range []struct {
		name   string
		blades int
		peak   float64 // over the mean, at the axle
		says   string
	}{
		{"Belt 190", 2, 2, "net 3.81 N·m to 67.1 N·m"},
		{"Gear 190", 2, 2, "turns round for moments"},
		{"Belt 190", 1, 2, "swings between none and twice"},
		{"Belt 190", 3, 1, ""},
	} {
		v := s.Variants[s.Index(tc.name)].Clone()
		v.Propeller.Blades = tc.blades
		c, m := built(t, &v)
		if l := c.axleLoads(m, shaft.Loads{}); l.GyroPeak != tc.peak*l.GyroCouple || l.GyroCouple <= 0 {
			t.Errorf("%s, %d blades: %g N·m mean, %g N·m peak", tc.name, tc.blades, l.GyroCouple, l.GyroPeak)
		}
		o := Evaluate(s, &v)
		r, _ := reading.Find(o.Readings, "flight.net_couple")
		if !strings.Contains(r.Method, tc.says) || tc.says == "" && strings.Contains(r.Method, "swings") {
			t.Errorf("%s, %d blades: %s", tc.name, tc.blades, r.Method)
		}
	}
}

// On the sample the torque twists to one side when the throttle is opened and to
// the other, or hardly at all, once the wing has fallen behind.
func TestTwistOfTheSample(t *testing.T) {
	for name, o := range sampleOutcomes(t) {
		climb, opening, side := value(t, o, "flight.twist"), value(t, o, "flight.twist_opening"), value(t, o, "flight.torque_side")
		if opening*side >= 0 {
			t.Errorf("%s: opening the throttle twists by %g with the torque to side %g", name, opening, side)
		}
		if climb*side < opening*side {
			t.Errorf("%s: %g in the climb, %g at opening, torque to side %g", name, climb, opening, side)
		}
	}
}
