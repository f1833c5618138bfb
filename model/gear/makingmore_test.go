package gear

import (
	"math"
	"testing"

	"backspan/model/param"
)

// The ball in the middle of a space of spur teeth touches the flank: its centre
// is half its diameter away from the nearest point of the involute, walked along
// instead of taken from the formula.
func TestMeasuringBallTouchesTheFlank(t *testing.T) {
	s := Default()
	s.HelixAngle = 0
	g, err := Solve(s)
	if err != nil {
		t.Fatal(err)
	}
	for _, w := range []Wheel{g.Pinion, g.Driven} {
		thickness, ball, z := s.Module*(math.Pi/2+2*w.Shift*math.Tan(s.PressureAngle))-0.1e-3, s.ball(), float64(w.Teeth)
		m, ok := s.over(g, w, ball, thickness)
		if !ok {
			t.Fatal("no ball fits")
		}
		centre := (m - ball) / 2
		if w.Teeth%2 == 1 {
			centre /= math.Cos(math.Pi / (2 * z))
		}
		// The tooth's middle at 0, the space's at π/z; the flank bends towards the
		// tooth's middle from its base.
		base := thickness/w.ReferenceDiameter + Involute(s.PressureAngle)
		sin, cos := math.Sincos(math.Pi / z)
		nearest := math.Inf(1)
		for i := range 200001 {
			a := float64(i) / 200000
			r, at := w.BaseDiameter/2/math.Cos(a), base-Involute(a)
			fs, fc := math.Sincos(at)
			nearest = math.Min(nearest, math.Hypot(centre*cos-r*fc, centre*sin-r*fs))
		}
		if math.Abs(nearest-ball/2) > 1e-8 {
			t.Errorf("%d teeth: the flank is %g m from the ball's middle, want %g", w.Teeth, nearest, ball/2)
		}
	}
}

// From the definitions: at the begin of the active profile the radius of
// curvature is what the path of contact leaves, and a helix of 15° on a
// reference circle d climbs π d / tan 15° in a turn.
func TestFlanksBeginAndClimb(t *testing.T) {
	s := Default()
	s.HelixAngle = math.Pi / 12
	g, err := Solve(s)
	if err != nil {
		t.Fatal(err)
	}
	if got, want := made(t, s, "gear.pinion_lead").Most, math.Pi*g.Pinion.ReferenceDiameter/math.Tan(math.Pi/12); math.Abs(got-want) > 1e-12 {
		t.Errorf("lead %g m, want %g", got, want)
	}
	d := made(t, s, "gear.wheel_active").Most
	if math.Abs(rollLengthAt(d, g.Driven.BaseDiameter)-g.Driven.StartRollLength) > 1e-12 || d <= g.Driven.RootDiameter || d >= g.Driven.TipDiameter {
		t.Errorf("active from %g m", d)
	}
	if made(t, s, "gear.wheel_clearance").Most != g.Driven.BottomClearance {
		t.Error("clearance")
	}
	s.HelixAngle = 0
	for _, a := range s.Making(param.Slot{}) {
		if a.Key == "gear.pinion_lead" {
			t.Error("spur teeth have a lead")
		}
	}
}

// Two bearings of the wheel stand flush with the gap beside the gears: half the
// face, the gap and half a bearing away from the middle.
func TestBearingsStandBesideTheGears(t *testing.T) {
	s := Default()
	found, err := s.findBearings()
	if err != nil {
		t.Fatal(err)
	}
	want := s.FaceWidth/2 + s.SideGap + found.wheelEngine.Width/2
	if got := made(t, s, "gear.place_wheel_engine"); math.Abs(got.Most-want) > 1e-12 {
		t.Errorf("%s %g m, want %g", got.Label, got.Most, want)
	}
	s.PinionPlace, s.Held.OnCrank = Overhung, true
	for _, a := range s.Making(param.Slot{}) {
		if a.Key == "gear.place_pinion_prop" {
			t.Error("a pinion on the crank has bearings")
		}
	}
}
