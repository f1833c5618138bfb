package flight

import (
	"math"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

// steady is a thrust that airspeed leaves alone.
func steady(thrust float64) ThrustLine { return Thrust(thrust, 0, thrust, 0, 0) }

func sample() Input {
	return Input{
		Wing: DefaultWing(), Seat: DefaultSeat(), AirDensity: standardDensity,
		PilotMass: 85, UnitMass: 27, UnitAft: 0.16, UnitUp: 0.22, UnitPitchInertia: 4.5,
		ThrustHeight: 0.3, HangAft: -0.17, HangUp: 0.44, HangSpacing: 0.45,
		Line: steady(480), LevelFuelFlow: param.Known(0.7e-3), FuelMass: 8, FuelDensity: 745,
		ShaftTorque: 36, PropellerInertia: 0.077, PropellerSpeed: 267, DrivenInertia: 0.002,
		CrankInertia: 0.0025, CrankSpeed: 828, CrankTurn: part.Clockwise, Turn: 1,
	}
}

func draw(t *rapid.T) Input {
	in := sample()
	anyspec.Set(t, in.Wing.Params(), nil)
	anyspec.Set(t, in.Seat.Params(), nil)
	f := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	in.AirDensity = f("density", 0.7, 1.4)
	in.PilotMass, in.UnitMass = f("pilot", 40, 160), f("unit", 5, 80)
	in.UnitAft, in.UnitUp, in.UnitPitchInertia = f("aft", -0.3, 0.8), f("up", -0.3, 0.7), f("inertia", 0, 30)
	in.ThrustHeight, in.HangAft, in.HangUp = f("thrust height", -0.2, 0.7), f("hang aft", -0.5, 0.3), f("hang up", 0.05, 0.9)
	in.HangSpacing, in.Line = f("spacing", 0.2, 0.9), steady(f("thrust", 0, 3000))
	in.LevelFuelFlow = param.Slot{Value: f("flow", 1e-6, 0.01), Known: rapid.Bool().Draw(t, "level")}
	in.Line = Thrust(in.Line.At(0), 11, in.Line.At(0)*f("kept at trim", 0.3, 1.1), 14, in.Line.At(0)*f("kept at top speed", -0.2, 1))
	in.LightFuelFlow = param.Slot{Value: in.LevelFuelFlow.Value * f("light", 0.5, 1.2), Known: rapid.Bool().Draw(t, "light known")}
	in.UnitYawInertia = f("yaw inertia", 0, 30)
	in.CrankTurn = rapid.SampledFrom([]part.Turn{part.Clockwise, part.Anticlockwise}).Draw(t, "crank turn")
	in.FuelMass, in.ShaftTorque = f("fuel", 0, 25), f("torque", 0, 300)
	in.PropellerInertia, in.PropellerSpeed = f("propeller", 0, 0.5), f("speed", 0, 500)
	in.CrankInertia, in.CrankSpeed = f("crank", 0, 0.02), f("crank speed", 0, 1500)
	in.Turn = rapid.SampledFrom([]int{-1, 1}).Draw(t, "turn")
	return in
}

func TestForcesBalanceInTheClimb(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := draw(t)
		w, m := in.Wing, AllUp(in.Wing, in.Seat, in.PilotMass, in.UnitMass)
		angle, v, ok := Climb(w, m, in.Line.At(0), in.AirDensity)
		if !ok {
			return
		}
		lift := w.ReferenceMass * gravity * (v / w.TrimSpeed) * (v / w.TrimSpeed) * in.AirDensity / standardDensity
		weight := m * gravity
		across := lift + in.Line.At(0)*math.Sin(w.ThrustTilt) - weight*math.Cos(angle)
		along := in.Line.At(0)*math.Cos(w.ThrustTilt) - lift/w.GlideRatio - weight*math.Sin(angle)
		if math.Abs(across) > 1e-9*weight || math.Abs(along) > 1e-9*weight {
			t.Fatalf("%g N across and %g N along the path left over", across, along)
		}
	})
}

func TestLevelThrustIsTheThrustThatDoesNotClimb(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := draw(t)
		m := AllUp(in.Wing, in.Seat, in.PilotMass, in.UnitMass)
		v, thrust := Level(in.Wing, m, in.AirDensity)
		angle, climbing, ok := Climb(in.Wing, m, thrust, in.AirDensity)
		if !ok || math.Abs(angle) > 1e-9 || math.Abs(climbing-v) > 1e-9*v {
			t.Fatalf("angle %g, %g m/s against %g m/s, ok %v", angle, climbing, v, ok)
		}
	})
}

func TestMomentsBalanceUnderTheHangPoints(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := draw(t)
		b := in.hung()
		drag := rapid.Float64Range(0, 300).Draw(t, "drag")
		lean, ok := b.angle(in.Line.At(0), drag)
		if !ok {
			return
		}
		// Leaning back by lean carries the centre of gravity forward.
		aft := b.aft*math.Cos(lean) - b.below*math.Sin(lean)
		if m := b.weight*aft + in.Line.At(0)*b.thrust - drag*b.below; math.Abs(m) > 1e-9*b.weight {
			t.Fatalf("%g N·m left over", m)
		}
	})
}

func TestDepthOfThePropeller(t *testing.T) {
	near := sample()
	far := near
	far.UnitAft += 0.1
	far.UnitPitchInertia += 1.5
	far.UnitYawInertia += 1.5
	a, b := Fly(&near), Fly(&far)
	if a.GyroscopicCouple != b.GyroscopicCouple || a.NetCouple != b.NetCouple || a.TorqueReaction != b.TorqueReaction ||
		a.HangLoadDifference != b.HangLoadDifference {
		t.Error("a couple changed with depth")
	}
	if b.StaticMoment <= a.StaticMoment || b.PitchInertia <= a.PitchInertia || b.AngularAcceleration >= a.AngularAcceleration ||
		b.TurnPull <= a.TurnPull || b.YawAcceleration >= a.YawAcceleration || b.HangOff <= a.HangOff {
		t.Error("depth must enlarge moment, inertia, pull and lean, and slow the nodding")
	}
}

func TestVerdicts(t *testing.T) {
	for _, tc := range []struct {
		name  string
		set   func(*Input)
		check string
		want  reading.Verdict
	}{
		{"climbs", func(*Input) {}, "flight.climb_rate", reading.Holds},
		{"climbs too slowly", func(in *Input) { in.Line = steady(200) }, "flight.climb_rate", reading.Fails},
		{"sinks at full throttle", func(in *Input) { in.Line = steady(100) }, "flight.level_thrust", reading.Fails},
		{"thrust beyond any climb", func(in *Input) { in.Line = steady(3000) }, "flight.climb_rate", reading.NotRated},
		{"hangs", func(*Input) {}, "flight.hang", reading.Holds},
		{"low thrust line", func(in *Input) { in.ThrustHeight, in.Line = -0.2, steady(600) }, "flight.hang", reading.Fails},
		{"lines hold", func(*Input) {}, "flight.riser_twist", reading.Holds},
		{"torque winds the lines up", func(in *Input) { in.ShaftTorque, in.ThrustHeight = 300, 0.1 }, "flight.riser_twist", reading.Fails},
		{"no lean, no twist", func(in *Input) { in.HangUp = 0.1 }, "flight.riser_twist", reading.NotRated},
		{"short run", func(*Input) {}, "flight.take_off_run", reading.Holds},
		{"long run", func(in *Input) { in.Line = steady(190) }, "flight.take_off_run", reading.Fails},
		{"never lifts", func(in *Input) { in.Line = steady(120) }, "flight.take_off_run", reading.Fails},
		{"hung below its weight", func(in *Input) { in.HangUp = 0.1 }, "flight.hang", reading.Fails},
	} {
		in := sample()
		tc.set(&in)
		found := false
		for _, c := range Fly(&in).Checks(nil, 0.05) {
			found = found || c.Key == tc.check
			if c.Key == tc.check && c.Verdict != tc.want {
				t.Errorf("%s: %s %s (%s), want %s", tc.name, c.Key, c.Verdict, c.Text(), tc.want)
			}
		}
		if !found {
			t.Errorf("%s: there is no check %s", tc.name, tc.check)
		}
	}
}

func TestMissingFuelSaysWhy(t *testing.T) {
	in := sample()
	in.LevelFuelFlow = param.Slot{}
	for thrust, why := range map[float64]string{100: noLevel, 480: noFlow} {
		in.Line = steady(thrust)
		for _, key := range []string{"flight.level_fuel", "flight.endurance"} {
			if r, ok := reading.Find(Fly(&in).Readings(nil), key); !ok || r.Why != why {
				t.Errorf("%g N: %s says %q", thrust, key, r.Why)
			}
		}
	}
}

func TestEveryFlightIsFiniteOrSaysWhy(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := draw(t)
		r := Fly(&in)
		for _, rd := range r.Readings(nil) {
			if strings.Contains(rd.Why, "no finite answer") {
				t.Fatalf("%s: %s", rd.Key, rd.Why)
			}
		}
		for _, c := range r.Checks(nil, 0.1) {
			if strings.Contains(c.Why, "no finite answer") {
				t.Fatalf("%s: %s", c.Key, c.Why)
			}
		}
	})
}

func TestDeclarations(t *testing.T) {
	w, s := DefaultWing(), DefaultSeat()
	for _, p := range append(w.Params(), s.Params()...) {
		if err := p.Set(p.Editable()); err != nil {
			t.Error(err)
		}
		if utf8.RuneCountInString(p.Label) > 34 {
			t.Errorf("label %q is too long", p.Label)
		}
	}
	keys := map[string]bool{}
	in := sample()
	for _, r := range Fly(&in).Readings(nil) {
		if keys[r.Key] || utf8.RuneCountInString(r.Label) > 34 || r.Method == "" || r.Origin == "" {
			t.Errorf("reading %+v", r)
		}
		keys[r.Key] = true
	}
	for _, r := range (Result{}).Readings(nil) {
		if !keys[r.Key] {
			t.Errorf("%s is declared by the empty result only", r.Key)
		}
	}
}

var sink Result

func BenchmarkFly(b *testing.B) {
	in := sample()
	b.ReportAllocs()
	for b.Loop() {
		sink = Fly(&in)
	}
}
