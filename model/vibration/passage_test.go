package vibration

import (
	"math"
	"strings"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

// even is an engine whose first two orders of torque are the same at any speed.
type even struct{}

func (even) Power(float64) float64          { return 0 }
func (even) SpeedRange() (float64, float64) { return 0, 1000 }
func (even) IdleSpeed() float64             { return 200 }
func (even) Pulsation(float64, float64) part.Pulsation {
	p := part.Pulsation{Count: 2}
	p.Harmonics[0], p.Harmonics[1] = part.Harmonic{Order: 1, Sin: 30}, part.Harmonic{Order: 2, Cos: 10}
	return p
}

// square mounts about the centre of a ball: every mode is known by hand.
func ball() (Spec, Duty) {
	s := Default()
	s.Axial, s.Shear, s.Damping = 100e3, 50e3, 0.1
	s.Places = [][]float64{{0, -0.1, -0.1}, {0, 0.1, -0.1}, {0, -0.1, 0.1}, {0, 0.1, 0.1}}
	return s, Duty{Parts: []Part{{10, 0, 0, 0.1, 0.1, 0.1}}, Plate: 0.2, PropellerAxis: 0.15, PropellerRadius: 0.6, TipGap: 0.05, GuardAhead: 0.1,
		Cylinders: 1, CrankSign: 1, Working: 800, Idle: 200}
}

// By hand: a couple of 30 N·m dwells at the roll mode of 4·50·(0.1² + 0.1²) kN·m
// and swings 1/(2·0.1) times as far as it would push at rest.
func TestPulsesSwingTheHub(t *testing.T) {
	s, d := ball()
	d.Crank = even{}
	p := Swing(&s, d).Passage
	want := 30 / (4 * 50e3 * 0.02) / 0.2 * 0.15
	if math.Abs(p.InPlane/want-1) > 1e-9 || math.Abs(p.Hub/want-1) > 1e-9 || p.Axial > 1e-12 {
		t.Errorf("%+v, want %g across", p, want)
	}
	s.StartingCouple = param.Known(60)
	if twice := Swing(&s, d).Passage; math.Abs(twice.InPlane/want-2) > 1e-9 {
		t.Errorf("a pulse twice as high gives %g of the swing", twice.InPlane/want)
	}
	d.Crank = nil
	if alone := Swing(&s, d).Passage; math.Abs(alone.InPlane/want-2) > 1e-9 {
		t.Errorf("without an engine's pulsation the pulse set gives %g of the swing", alone.InPlane/want)
	}
}

// By hand: an upright force ahead of the centre rocks the disc about the pitch
// mode, and lifts the body in another.
func TestRockingReachesTheTips(t *testing.T) {
	s, d := ball()
	d.Cylinder, d.Reciprocating, d.CrankRadius, d.Rod, s.Counterweight = -0.1, 0.2, 0.03, 0.1, 0
	r := Swing(&s, d)
	k := 4 * 100e3 * 0.01
	speed := math.Sqrt(k / 0.1)
	first, second := 0.2*0.03*speed*speed, 0.2*0.03*0.03/0.1*speed*speed/4
	tilt := 0.1 * math.Max(first, second) / (0.2 * k)
	if want := tilt * (0.15 + 0.6); math.Abs(r.Passage.Axial/want-1) > 1e-9 {
		t.Errorf("tips swing %g m along, want %g", r.Passage.Axial, want)
	}
	if want := d.GuardAhead - r.HubForward - 0.6*r.Tilt - r.Passage.Axial; math.Abs(r.AheadLeft-want) > 1e-12 {
		t.Errorf("ahead %g m, want %g", r.AheadLeft, want)
	}
	if want := d.TipGap - math.Hypot(r.HubDrop, r.HubAside) - r.Passage.InPlane; math.Abs(r.TipLeft-want) > 1e-12 || !(r.Passage.InPlane > 0) {
		t.Errorf("tip %g m, want %g", r.TipLeft, want)
	}
}

func TestWhatIsCountedIsSaid(t *testing.T) {
	s, d := ball()
	for _, tc := range []struct {
		crank part.Crank
		want  string
	}{{nil, "inertia forces alone"}, {even{}, "torque pulses without load"}} {
		d.Crank = tc.crank
		if x, _ := reading.Find(Swing(&s, d).Readings(nil), "vibration.passage_swing"); !strings.Contains(x.Method, tc.want) {
			t.Errorf("%s", x.Method)
		}
	}
}

// Blades that reach the guard fail; short of what is asked is thin.
func TestBladesReachTheGuard(t *testing.T) {
	s, d := ball()
	for _, tc := range []struct {
		ahead float64
		want  reading.Verdict
	}{{-0.001, reading.Fails}, {0.010, reading.Thin}, {0.1, reading.Holds}} {
		r := Swing(&s, d)
		r.AheadLeft = tc.ahead
		found := false
		for _, c := range r.Checks(nil, 0.1) {
			if c.Key == "vibration.guard_ahead" {
				found = true
				if c.Verdict != tc.want {
					t.Errorf("%g m: %s", tc.ahead, c.Verdict)
				}
			}
		}
		if !found {
			t.Fatal("no such check")
		}
	}
}
