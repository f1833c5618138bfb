package bolt

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/reading"
)

// The bolts press on what flange, plate and boss all cover. By hand: six M8 at
// 11.5 N·m clamp with 72 975 N; on 95 mm less a bore of 25 mm and six holes of
// 9 mm that is 11.7 MPa, and friction acts at 66.8 mm.
func TestLeastOfFlangePlateAndBossGoverns(t *testing.T) {
	s, l := Default(), strong()
	s.Plate, s.TighteningTorque, l.HubDiameter = 0.130, param.Known(11.5), 0.130
	for _, tc := range []struct {
		name                string
		flange, plate, boss float64
		face                float64
		says                string
	}{
		{"flange", 0.095, 0.130, 0.130, 0.095, "drive's flange"},
		{"plate", 0.130, 0.095, 0.130, 0.095, "the plate"},
		{"boss", 0.130, 0.130, 0.095, 0.095, "propeller's boss"},
		{"no flange of its own", 0, 0.110, 0.130, 0.110, "the plate"},
	} {
		s.Plate, l.HubDiameter, l.Flange = tc.plate, tc.boss, Flange{}
		if tc.flange > 0 {
			l.Flange = Flange{param.Known(tc.flange), "Propeller flange diameter"}
		}
		r := Clamp(s, l)
		area := math.Pi/4*(tc.face*tc.face-0.025*0.025) - 6*math.Pi/4*0.009*0.009
		if r.Face != tc.face || math.Abs(r.CrushPressure.Value/(r.ClampingForce/area)-1) > 1e-9 {
			t.Errorf("%s: face %g m, %g Pa", tc.name, r.Face, r.CrushPressure.Value)
		}
		if tc.face == 0.095 && math.Abs(r.CrushPressure.Value-11.7e6) > 0.05e6 {
			t.Errorf("%s: %g Pa", tc.name, r.CrushPressure.Value)
		}
		for _, key := range []string{"bolt.slip_torque", "bolt.crush_pressure"} {
			if x, _ := reading.Find(r.Readings(nil), key); !strings.Contains(x.Method, tc.says) {
				t.Errorf("%s: %s says %q", tc.name, key, x.Method)
			}
		}
	}
	if got := faceCircle(0.095, 0.025); math.Abs(got-0.0668) > 5e-5 {
		t.Errorf("friction acts at %g m", got)
	}
}

func TestBoltsOutsideTheFlange(t *testing.T) {
	s, l := Default(), strong()
	l.Flange = Flange{param.Known(0.080), "Propeller flange diameter"}
	c := anyspec.Check(t, Clamp(s, l).Checks(nil, 0.1), "bolt.circle")
	if c.Verdict != reading.Fails || !strings.Contains(c.Cure, "Propeller flange diameter") || !strings.Contains(c.Origin, "flange") {
		t.Errorf("%+v", c)
	}
}
