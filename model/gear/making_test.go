package gear

import (
	"math"
	"strings"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
)

func made(t *testing.T, s Spec, key string) part.Allowed {
	t.Helper()
	for _, a := range s.Making(param.Known(0.2e-3)) {
		if a.Key == key {
			return a
		}
	}
	t.Fatalf("no %s", key)
	return part.Allowed{}
}

// The base tangent length of a spur gear of module 1 without shift: from memory
// of the tables in mechanical engineering handbooks, which print 7.6464 over 3
// teeth of 19 and 10.7246 over 4 of 28.
func TestBaseTangentOfUnshiftedSpurTeeth(t *testing.T) {
	s := Default()
	s.Module, s.HelixAngle, s.PinionShift, s.WheelShift = 1e-3, 0, 0, 0
	for _, tc := range []struct {
		teeth, over int
		want        float64 // mm
	}{{19, 3, 7.6464}, {28, 4, 10.7246}} {
		s.PinionTeeth = tc.teeth
		g, err := Solve(s)
		if err != nil {
			t.Fatal(err)
		}
		if over, got := s.tangent(g, g.Pinion); over != tc.over || math.Abs(got*1000-tc.want) > 5e-4 {
			t.Errorf("%d teeth: %.4f mm over %d, want %.4f over %d", tc.teeth, got*1000, over, tc.want, tc.over)
		}
	}
}

// The tangent touches flanks of base pitches and one tooth's thickness on the
// base cylinder: found from the tooth instead of from the formula.
func TestBaseTangentIsPitchesAndATooth(t *testing.T) {
	s := Default()
	g, err := Solve(s)
	if err != nil {
		t.Fatal(err)
	}
	for _, w := range []Wheel{g.Pinion, g.Driven} {
		over, got := s.tangent(g, w)
		transverse := s.Module / math.Cos(s.HelixAngle) * (math.Pi/2 + 2*w.Shift*math.Tan(s.PressureAngle))
		onBase := w.BaseDiameter * (transverse/w.ReferenceDiameter + Involute(g.TransversePressureAngle))
		want := (float64(over-1)*g.BasePitch + onBase) * math.Cos(g.BaseHelixAngle)
		if math.Abs(got-want) > 1e-9 {
			t.Errorf("%d teeth: %g m, want %g", w.Teeth, got, want)
		}
	}
}

// Cut to their greatest, with the shafts at their nearest, the teeth keep the
// backlash as drawn: what each base tangent is shorter adds up to it.
func TestBacklashStaysAtTheLimits(t *testing.T) {
	s := Default()
	g, err := Solve(s)
	if err != nil {
		t.Fatal(err)
	}
	_, pinion := s.tangent(g, g.Pinion)
	_, wheel := s.tangent(g, g.Driven)
	p, w := made(t, s, "gear.pinion_span"), made(t, s, "gear.wheel_span")
	left := pinion - p.Most + wheel - w.Most - s.nearer(g)
	if math.Abs(left-s.Backlash.Value) > 1e-12 || p.Most-p.Least-s.SpanTolerance > 1e-12 {
		t.Errorf("%g m of play left, %g asked", left, s.Backlash.Value)
	}
	limits := made(t, s, "gear.backlash_limits")
	most := pinion - p.Least + wheel - w.Least + s.nearer(g)
	swing := s.eccentric(g)
	if math.Abs(limits.Least-(s.Backlash.Value-swing)) > 1e-12 || math.Abs(limits.Most-(most+swing)) > 1e-12 {
		t.Errorf("limits %g to %g, want %g to %g, less and more by %g", limits.Least, limits.Most, s.Backlash.Value, most, swing)
	}
	warm := made(t, s, "gear.backlash_running_limits")
	if grown := 0.2e-3 - s.Backlash.Value; math.Abs(warm.Least-limits.Least-grown) > 1e-12 || math.Abs(warm.Most-limits.Most-grown) > 1e-12 {
		t.Errorf("running %g to %g, cold %g to %g", warm.Least, warm.Most, limits.Least, limits.Most)
	}
}

// ISO 1328-1:2013, from memory, at class 5: single pitch 0.001 d + 0.4 m + 5,
// total pitch 0.002 d + 0.55 √d + 0.7 m + 12, runout nine tenths of it.
func TestDeviationsOfTheAccuracyClass(t *testing.T) {
	s := Default()
	s.AccuracyClass, s.HelixAngle, s.PinionTeeth, s.Module = 5, 0, 20, 2e-3
	for key, want := range map[string]float64{"gear.pinion_single_pitch": 5.84, "gear.pinion_total_pitch": 0.08 + 0.55*math.Sqrt(40) + 13.4,
		"gear.pinion_runout": 0.9 * (0.08 + 0.55*math.Sqrt(40) + 13.4), "gear.pinion_total_profile": math.Hypot(6.1, 4.84)} {
		if got := made(t, s, key).Most * 1e6; math.Abs(got-want) > 1e-9 {
			t.Errorf("%s: %g µm, want %g", key, got, want)
		}
	}
}

func TestMakingSaysWhatItCannot(t *testing.T) {
	s := Default()
	s.Backlash = param.Slot{}
	if a := made(t, s, "gear.wheel_span"); !strings.Contains(a.Why, "backlash") {
		t.Errorf("%+v", a)
	}
	s = Default()
	s.FaceWidth = 6e-3
	if a := made(t, s, "gear.wheel_span"); !strings.Contains(a.Why, "balls") {
		t.Errorf("%+v", a)
	}
	s.HelixAngle = 0
	if a := made(t, s, "gear.wheel_hand"); a.Text != "none, spur" {
		t.Errorf("%+v", a)
	}
	if s.CentreDistance = param.Known(0.01); s.Making(param.Slot{}) != nil {
		t.Error("teeth that cannot mesh are cut")
	}
}

// DIN 3960, from memory: the wheel's tangent slants over W sin βb; with
// 1.2 mm + 0.018 W of flank at its ends the gauge rests, with less it tips off.
func TestBaseTangentLeavesTheGaugeARest(t *testing.T) {
	s := Default()
	g, err := Solve(s)
	if err != nil {
		t.Fatal(err)
	}
	_, length := s.tangent(g, g.Driven)
	slant, rest := length*math.Sin(g.BaseHelixAngle), (1.2e-3+0.018*length)*math.Cos(g.BaseHelixAngle)
	for _, tc := range []struct {
		face float64
		ok   bool
	}{{slant + 0.9*rest, false}, {slant + 1.1*rest, true}} {
		s.FaceWidth = tc.face
		if a := made(t, s, "gear.wheel_span"); (a.Why == "") != tc.ok {
			t.Errorf("a face of %g m: %+v", tc.face, a)
		}
	}
}

// By hand, class 6 of ISO 1328-1 from memory, 19 and 54 teeth of 2 mm at 15°:
// run-out 21.5 and 24.7 µm. Teeth eccentric by half of it swing the play by
// their sum times sin αw, a little less across the helix: 17 µm.
func TestRunOutSwingsThePlay(t *testing.T) {
	s := Default()
	s.WheelTeeth = 54
	g, err := Solve(s)
	if err != nil {
		t.Fatal(err)
	}
	if got := s.eccentric(g) * 1e6; math.Abs(got-17) > 0.5 {
		t.Errorf("%g µm", got)
	}
	s.Backlash, s.AccuracyClass = param.Known(10e-6), 9
	if a := made(t, s, "gear.backlash_limits"); a.Least != 0 || !strings.Contains(a.Method, "bind") {
		t.Errorf("%+v", a)
	}
}

// A rack that thins teeth goes in deeper: the shift that makes them so thin
// gives the root as well. ISO 21771: s = m(π/2 + 2x tan α), df = d − 2m(hf − x).
func TestRootFollowsTheThinnerTeeth(t *testing.T) {
	s := Default()
	g, err := Solve(s)
	if err != nil {
		t.Fatal(err)
	}
	for key, w := range map[string]Wheel{"pinion": g.Pinion, "wheel": g.Driven} {
		thick, root := made(t, s, "gear."+key+"_thickness"), made(t, s, "gear."+key+"_root")
		for _, tc := range [][2]float64{{thick.Least, root.Least}, {thick.Most, root.Most}} {
			shift := (tc[0]/s.Module - math.Pi/2) / (2 * math.Tan(s.PressureAngle))
			want := w.ReferenceDiameter - 2*s.Module*(s.Rack.Rack().Dedendum-shift)
			if math.Abs(tc[1]-want) > 1e-9 || !(tc[1] < w.RootDiameter) {
				t.Errorf("%s: teeth of %g m have a root of %g, want %g", key, tc[0], tc[1], want)
			}
		}
	}
	s.Backlash = param.Slot{}
	if a := made(t, s, "gear.pinion_root"); a.Why == "" {
		t.Errorf("%+v", a)
	}
}
