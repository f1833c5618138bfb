package flight

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/part"
	"backspan/model/reading"
)

func TestLevelThrustAtTrimIsThatOfTrim(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := draw(t)
		m := AllUp(in.Wing, in.Seat, in.PilotMass, in.UnitMass)
		v, want := Level(in.Wing, m, in.AirDensity)
		if got := LevelThrust(in.Wing, m, in.AirDensity, v); math.Abs(got-want) > 1e-6*want {
			t.Fatalf("%g N, want %g N", got, want)
		}
	})
}

func TestLevelSpeedsEndWhereTheySay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := draw(t)
		r := Fly(&in)
		s, w := r.Speeds, in.Wing
		if !s.Level {
			if in.Line.At(r.TrimSpeed) >= r.Thrust*(1+1e-6) {
				t.Fatal("level flight at trim, but no range of speeds")
			}
			return
		}
		spare := func(v float64) float64 { return in.Line.At(v) - LevelThrust(w, r.AllUp, in.AirDensity, v) }
		if spare(r.TrimSpeed) >= 0 && (s.Slowest > r.TrimSpeed || s.Fastest < r.TrimSpeed) {
			t.Fatalf("%+v leaves out trim", s)
		}
		for v, short := range map[float64]bool{s.Slowest: s.ShortSlow, s.Fastest: s.ShortFast} {
			if left := spare(v); left < -1e-6*r.Thrust || short && left > 1e-2*r.Thrust {
				t.Fatalf("%g N to spare at %g m/s, bounded by thrust: %v", left, v, short)
			}
		}
		if s.Slowest < s.Stall*(1-1e-9) || s.Slowest > s.Fastest || s.Fastest > r.TrimSpeed*w.TopSpeed*(1+1e-9) {
			t.Fatalf("%+v about %g m/s", s, r.TrimSpeed)
		}
	})
}

func TestThrustLinePassesThroughItsPoints(t *testing.T) {
	l := Thrust(570, 11, 470, 14, 420)
	for v, want := range map[float64]float64{0: 570, 11: 470, 14: 420} {
		if got := l.At(v); math.Abs(got-want) > 1e-9 {
			t.Errorf("at %g m/s %g N, want %g N", v, got, want)
		}
	}
	if got := Thrust(570, 11, 470, 0, 0).At(5.5); math.Abs(got-520) > 1e-9 {
		t.Errorf("a straight line gives %g N halfway", got)
	}
}

func TestRunsOfTheTakeOff(t *testing.T) {
	w, line := DefaultWing(), falling(550, 10)
	still := TakeOff(w, 125, standardDensity, line)
	for _, tc := range []struct {
		name    string
		set     func(*Wing)
		density float64
		longer  bool
	}{
		{"headwind", func(w *Wing) { w.Headwind = 4 }, standardDensity, false},
		{"legs push", func(w *Wing) { w.LegsPush = 50 }, standardDensity, false},
		{"more brake", func(w *Wing) { w.LiftOffSpeed = 0.8 }, standardDensity, false},
		{"thin air", func(*Wing) {}, 1, true},
		{"poor glide", func(w *Wing) { w.GlideRatio = 5 }, standardDensity, true},
	} {
		changed := w
		tc.set(&changed)
		if r := TakeOff(changed, 125, tc.density, line); !r.Lifts || r.Distance > still.Distance != tc.longer {
			t.Errorf("%s: %.2f m, was %.2f m", tc.name, r.Distance, still.Distance)
		}
	}
	w.Headwind = 20
	if r := TakeOff(w, 125, standardDensity, line); !r.Lifts || r.Distance != 0 || r.GroundSpeed != 0 {
		t.Errorf("in a gale: %+v", r)
	}
	if got := 1 - still.ThrustLeft; math.Abs(got-10*still.Airspeed/550) > 1e-9 {
		t.Errorf("%g of the thrust is gone at %g m/s", got, still.Airspeed)
	}
}

func TestCeilings(t *testing.T) {
	curved := func(h float64) (float64, bool) { return 4 - h/1500 - h*h/4e7, true }
	c := FindCeiling(0, 4, 4000, curved)
	left, _ := curved(c.Absolute.Value)
	service, _ := curved(c.Service.Value)
	if math.Abs(left) > 0.005 || math.Abs(service-ServiceClimb) > 0.005 || c.Why != "" {
		t.Errorf("%+v leaves %g and %g m/s", c, left, service)
	}
	for _, tc := range []struct {
		name  string
		rate  float64
		climb func(h float64) (float64, bool)
		says  string
	}{
		{"sinks", -0.1, curved, "does not climb at this site"},
		{"rocket", 4, func(h float64) (float64, bool) { return 4 - h/5000, true }, "11000 m"},
		{"engine gives up", 4, func(h float64) (float64, bool) { return 4 - h/1500, h < 30 }, "further up"},
		{"never tires", 4, func(float64) (float64, bool) { return 4, true }, "do not settle"},
	} {
		if c := FindCeiling(0, tc.rate, 4000, tc.climb); c.Absolute.Known || !strings.Contains(c.Why, tc.says) {
			t.Errorf("%s: %+v", tc.name, c)
		}
	}
	weak := FindCeiling(500, 0.4, 1500, func(h float64) (float64, bool) { return 0.4 - (h-500)/2000, true })
	in := sample()
	in.Ceiling = weak
	if r, _ := reading.Find(Fly(&in).Readings(nil), "flight.service_ceiling"); r.Known() || r.Why != noService || math.Abs(weak.Absolute.Value-1300) > 1 {
		t.Errorf("%+v, %s", weak, r.Why)
	}
}

func TestBurningFuelLengthensTheFlight(t *testing.T) {
	in := sample()
	flat := Fly(&in)
	if got, want := flat.Endurance.Value, in.FuelMass/in.LevelFuelFlow.Value; math.Abs(got-want) > 1e-9*want {
		t.Errorf("one known flow: %g s, want %g s", got, want)
	}
	in.LightFuelFlow.Known, in.LightFuelFlow.Value = true, 0.93*in.LevelFuelFlow.Value
	r := Fly(&in)
	if r.Endurance.Value <= flat.Endurance.Value || r.Endurance.Value >= in.FuelMass/in.LightFuelFlow.Value {
		t.Errorf("endurance %g s is not between the two flows'", r.Endurance.Value)
	}
	if v := r.Range.Value / r.Endurance.Value; v >= r.TrimSpeed || v <= r.TrimSpeed*math.Sqrt(1-in.FuelMass/r.AllUp) {
		t.Errorf("mean speed %g m/s at %g m/s ready", v, r.TrimSpeed)
	}
}

// Clockwise from behind: torque on the air turns its right side down, so the
// craft's left side goes down. Mechanics, action and reaction.
func TestSides(t *testing.T) {
	for _, tc := range []struct {
		crank   part.Turn
		drive   int
		side    float64
		forward string
	}{
		{part.Clockwise, 1, -1, "a turn to the right tips the body forward"}, {part.Clockwise, -1, 1, "a turn to the left tips the body forward"},
		{part.Anticlockwise, 1, 1, "a turn to the left tips the body forward"}, {part.Anticlockwise, -1, -1, "a turn to the right tips the body forward"},
	} {
		in := sample()
		in.CrankTurn, in.Turn = tc.crank, tc.drive
		rs := Fly(&in).Readings(nil)
		for key, want := range map[string]float64{"flight.torque_side": tc.side, "flight.propeller_turn": -tc.side} {
			if r, _ := reading.Find(rs, key); r.Value != want {
				t.Errorf("%s, %+d: %s is %g", tc.crank, tc.drive, key, r.Value)
			}
		}
		to := map[float64]string{-1: "left", 1: "right"}[tc.side]
		for key, says := range map[string]string{
			"flight.torque_side": "wants to turn " + to, "flight.hang_load_difference": "more on the " + to,
			"flight.bank_unopposed": "to the " + to, "flight.net_couple": tc.forward,
		} {
			if r, _ := reading.Find(rs, key); !strings.Contains(r.Method, says) {
				t.Errorf("%s, %+d: %s says %q, want %q", tc.crank, tc.drive, key, r.Method, says)
			}
		}
		if r, _ := reading.Find(rs, "flight.weight_shift"); strings.Contains(r.Method, "pilot's "+to) {
			t.Errorf("weight goes to the side that is heavy already: %s", r.Method)
		}
	}
}

// A crank that outweighs the propeller turns the couple round.
func TestCrankMayOutweighThePropeller(t *testing.T) {
	in := sample()
	in.Turn, in.CrankInertia = -1, 0.05
	r := Fly(&in)
	c, _ := reading.Find(r.Readings(nil), "flight.net_couple")
	if r.AngularMomentum >= 0 || r.CrankMomentum >= 0 || r.NetCouple <= 0 || !strings.Contains(c.Method, "a turn to the right tips the body forward") {
		t.Errorf("momentum %g, %s", r.AngularMomentum, c.Method)
	}
}

func TestThrottleLeansTheBodyBack(t *testing.T) {
	in := sample()
	r := Fly(&in)
	if !(r.HangOff < r.HangLevel && r.HangLevel < r.HangFull) {
		t.Errorf("%g, %g, %g rad", r.HangOff, r.HangLevel, r.HangFull)
	}
	in.ThrustHeight = in.HangUp
	if r := Fly(&in); math.Abs(r.HangFull-r.HangOff) > 1e-12 {
		t.Errorf("thrust through the hang points leans the body by %g rad", r.HangFull-r.HangOff)
	}
}

// A steep climb is flown slower and so with more thrust than trim's.
func TestClimbFindsItsOwnThrust(t *testing.T) {
	in := sample()
	in.Line = falling(600, 12)
	r := Fly(&in)
	_, v, _ := Climb(in.Wing, r.AllUp, in.Line.At(r.ClimbRate/math.Sin(r.ClimbAngle)), in.AirDensity)
	if math.Abs(v*math.Sin(r.ClimbAngle)-r.ClimbRate) > 1e-4*r.ClimbRate || v >= r.TrimSpeed {
		t.Errorf("%g m/s up at %g m/s", r.ClimbRate, v)
	}
}

func TestCautionsDeferToTraining(t *testing.T) {
	in := sample()
	n := 0
	for _, c := range Fly(&in).Checks(nil, 0.1) {
		if strings.Contains(c.Why, "instructor") {
			n++
		}
	}
	if n != 4 {
		t.Errorf("%d cautions send the pilot to an instructor", n)
	}
}
