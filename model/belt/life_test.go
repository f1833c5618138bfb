package belt

import (
	"math"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/unit"
)

func TestMinerSumsTheUse(t *testing.T) {
	alone := func(use Use) float64 {
		return build(t, func(s *Spec) { s.Use, s.CrankDiameter = use, 0.055 }).Examine(rated(), part.Train{}).Life.Fatigue
	}
	powers := Use{ClimbPower: 0.8, LevelPower: 0.5}
	full, climb, level := powers, powers, powers
	full.Full, climb.Climb, level.Level = 1, 1, 1
	mixed := powers
	mixed.Full, mixed.Climb, mixed.Level = 0.2, 0.3, 0.5
	want := 1 / (0.2/alone(full) + 0.3/alone(climb) + 0.5/alone(level))
	near(t, "mixed use", alone(mixed), want, 1e-9*want)
	if !(alone(level) > alone(climb) && alone(climb) > alone(full)) {
		t.Error("less power does not last longer")
	}
	s := Default()
	s.Use.Full = 0.5
	if _, err := New(s, rated(), 0, part.Train{}); err == nil {
		t.Error("took more time than there is")
	}
}

func TestIdlingWearsTheBeltToo(t *testing.T) {
	b := build(t, func(s *Spec) { s.Use = Use{Level: 0.01, LevelPower: 0.5} })
	at := rated()
	idle, without := b.Examine(at, single()).Life.Fatigue, b.Examine(at, part.Train{}).Life.Fatigue
	if !(idle < without) {
		t.Errorf("%g with idling, %g without", idle, without)
	}
}

// A belt calibrated on itself lasts as long as it lasted.
func TestCalibrationGivesTheKnownLifeBack(t *testing.T) {
	change := func(s *Spec) { s.Use, s.Fatigue.Exponent = Use{Full: 1, ClimbPower: 1, LevelPower: 1}, 11 }
	b := build(t, change)
	r := b.Examine(rated(), part.Train{})
	known := func(s *Spec) {
		change(s)
		s.Fatigue.Known = KnownLife{
			param.Known(123 * 3600), param.Known(r.Life.Peak), param.Known(s.CrankDiameter), param.Known(s.DrivenDiameter),
			param.Known(rated().CrankSpeed), param.Known(r.EffectiveLength),
		}
	}
	again := build(t, known).Examine(rated(), part.Train{})
	near(t, "life", unit.Hour.From(again.Life.Fatigue), 123, 1e-6)
	if !again.Life.Calibrated || again.Life.Unfinished {
		t.Errorf("%+v", again.Life)
	}
	partly := build(t, func(s *Spec) { known(s); s.Fatigue.Known.Length = param.Slot{} }).Examine(rated(), part.Train{})
	if partly.Life.Calibrated || !partly.Life.Unfinished || partly.Life.Fatigue != r.Life.Fatigue {
		t.Errorf("%+v", partly.Life)
	}
}

func TestLifeIsClaimedCarefully(t *testing.T) {
	l := build(t, asIs).Examine(rated(), part.Train{}).Life
	if !(l.Fatigue > l.Claim) || l.Claim != 500*3600 || l.Change != 100*3600 || l.Dependable != math.Min(l.Fatigue/10, 500*3600) {
		t.Errorf("%+v", l)
	}
	small := build(t, func(s *Spec) { s.Ribs, s.CrankDiameter = 6, 0.05 }).Examine(rated(), part.Train{}).Life
	if small.Change != small.Dependable || small.Dependable != small.Fatigue/10 {
		t.Errorf("%+v", small)
	}
	worn := build(t, func(s *Spec) { s.Fatigue.Wear = param.Known(60 * 3600) }).Examine(rated(), part.Train{}).Life
	if worn.Change != 60*3600 {
		t.Errorf("%+v", worn)
	}
}

func TestPeaksTireTheBelt(t *testing.T) {
	s := Default()
	s.Pulsing.LoadFactor = ByPulsation
	s.StandingTension = param.Known(1200)
	b, err := New(s, rated(), 0, single())
	if err != nil {
		t.Fatal(err)
	}
	r := b.Examine(rated(), single())
	near(t, "peak per rib", r.Life.Peak, r.Pulsation.Surge.Tight/12, 1e-9)
	if r := b.Examine(rated(), part.Train{}); r.Life.Why != noTorque {
		t.Errorf("%+v", r.Life)
	}
}

func TestRatingIsBilinear(t *testing.T) {
	r := grid("a report")
	for _, tc := range []struct{ mm, rpm float64 }{{50, 4000}, {55, 5000}, {60, 8000}, {73, 8999}, {80, 9000}} {
		got, why := r.power(tc.mm/1000, unit.RPM.SI(tc.rpm))
		if why != "" {
			t.Errorf("%v: %s", tc, why)
		}
		near(t, "power", got, 1000*(0.03*tc.mm+tc.rpm/1e4), 1e-9)
	}
	for _, tc := range []struct{ mm, rpm float64 }{{49, 5000}, {81, 5000}, {60, 3999}, {60, 9001}} {
		if _, why := r.power(tc.mm/1000, unit.RPM.SI(tc.rpm)); why != outsideRating {
			t.Errorf("%v: %q", tc, why)
		}
	}
	r.Source = ""
	if _, why := r.power(0.06, 600); why != noSource {
		t.Error(why)
	}
}
