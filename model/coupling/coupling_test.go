package coupling

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/internal/published"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

func TestPublished(t *testing.T) {
	published.Run(t, "coupling", map[string]published.Runner{
		"shoes": func(t testing.TB, c published.Case) map[string]float64 {
			speed := unit.RPM.SI(c.Num(t, "speed"))
			torque := c.Num(t, "power") * 1000 / speed
			perKilogram := ShoeTorque(int(c.Num(t, "shoes")), 1, c.Num(t, "shoe_radius")/1000, c.Num(t, "drum_radius")/1000,
				c.Num(t, "friction"), speed, c.Num(t, "start")*speed)
			return map[string]float64{"mass": torque / perKilogram, "torque": torque}
		},
		"take_up": func(t testing.TB, c published.Case) map[string]float64 {
			return map[string]float64{"heat": Heat(c.Num(t, "first"), c.Num(t, "second"), unit.RPM.SI(c.Num(t, "difference")))}
		},
	})
}

func TestDefaults(t *testing.T) {
	for _, k := range []Kind{Rigid, Elastic, Clutch} {
		s := Default()
		s.Kind = k
		anyspec.HoldDefaults(t, s.Params())
	}
}

// clutch carries 60 N·m at 6000 rpm and takes hold at 3000.
func clutch() Spec {
	s := Default()
	s.Kind, s.Torque, s.Stiffness, s.TorqueAllowed = Clutch, param.Known(60), param.Known(200), param.Known(80)
	return s
}

// load is 20 N·m at 8000 rpm.
func load() Load {
	return Load{Torque: 20, Peak: param.Known(50), RunUpPeak: param.Known(70), DampingHeat: param.Known(4), Speed: unit.RPM.SI(8000), IdleSpeed: param.Known(unit.RPM.SI(1900)),
		EngineInertia: 2e-3, DriveInertia: 6e-3}
}

func near(t *testing.T, what string, got, want, share float64) {
	t.Helper()
	if math.Abs(got-want) > share*math.Abs(want) {
		t.Errorf("%s: %g, want %g", what, got, want)
	}
}

// The figures come from a script of its own that searches two hundred thousand
// speeds.
func TestClutchAtWork(t *testing.T) {
	s := clutch()
	r := s.Examine(load())
	near(t, "capacity", r.Capacity.Value, 60*(64.-9)/(36-9), 1e-12)
	near(t, "grips at", unit.RPM.From(r.Locks.Value), 3236.16, 1e-5)
	near(t, "slip heat", r.SlipHeat.Value, 144.694, 2e-3)
	near(t, "slip heat at", unit.RPM.From(r.SlipAt), 3105.4, 1e-2)
	engine, drive := 2e-3+r.EngineInertia, 6e-3+r.DriveInertia
	near(t, "take-up", r.Heat.Value, engine*drive/(engine+drive)*r.Locks.Value*r.Locks.Value/2, 1e-12)
}

// Where it grips, its torque is the load's; a hair below, it is less.
func TestGripMeetsTheLoad(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := clutch()
		s.TakeUp = rapid.Float64Range(60, 600).Draw(t, "take-up")
		torque, speed := rapid.Float64Range(1, 200).Draw(t, "torque"), rapid.Float64Range(100, 1200).Draw(t, "speed")
		g := s.grip()
		l := g.locks(torque, speed)
		if !l.Known {
			if c := g.torque(1e6); c.Known && c.Value > 1.001*torque*(1e6/speed)*(1e6/speed) {
				t.Fatalf("carries %g and never grips", c.Value)
			}
			return
		}
		n := l.Value / speed
		if got := g.torque(l.Value).Value; math.Abs(got-torque*n*n) > 1e-6*torque*n*n {
			t.Fatalf("at the grip %g, load %g", got, torque*n*n)
		}
		if at := s.GripsFrom(torque, speed); at != l.Value || at < s.TakeUp {
			t.Fatalf("grips from %g, want %g above %g", at, l.Value, s.TakeUp)
		}
	})
}

func TestShoesStandForTheTorque(t *testing.T) {
	s := clutch()
	s.Torque, s.ShoeMass = param.Slot{}, param.Known(0.15)
	r := s.Examine(load())
	near(t, "capacity", r.Capacity.Value, ShoeTorque(2, 0.15, 0.035, 0.045, 0.3, load().Speed, s.TakeUp), 1e-12)
}

func verdict(t *testing.T, s Spec, l Load, key string) reading.Verdict {
	t.Helper()
	return anyspec.Check(t, s.Examine(l).Checks(nil, 0.1), key).Verdict
}

func TestChecks(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Spec, *Load)
		key    string
		want   reading.Verdict
	}{
		{"well above idle", func(*Spec, *Load) {}, "coupling.take_up", reading.Holds},
		{"near idle", func(s *Spec, _ *Load) { s.TakeUp = unit.RPM.SI(2200) }, "coupling.take_up", reading.Thin},
		{"below idle", func(s *Spec, _ *Load) { s.TakeUp = unit.RPM.SI(1800) }, "coupling.take_up", reading.Fails},
		{"idle unknown", func(_ *Spec, l *Load) { l.IdleSpeed = param.Slot{} }, "coupling.take_up", reading.NotRated},
		{"strong", func(*Spec, *Load) {}, "coupling.clutch_mean", reading.Holds},
		{"weak", func(s *Spec, _ *Load) { s.Torque = param.Known(5) }, "coupling.clutch_mean", reading.Fails},
		{"out at work", func(s *Spec, _ *Load) { s.TakeUp = unit.RPM.SI(8100) }, "coupling.clutch_mean", reading.Fails},
		{"no torque given", func(s *Spec, _ *Load) { s.Torque = param.Slot{} }, "coupling.clutch_mean", reading.NotRated},
		{"its speed too low", func(s *Spec, _ *Load) { s.TorqueSpeed = s.TakeUp }, "coupling.clutch_mean", reading.NotRated},
		{"peaks carried", func(*Spec, *Load) {}, "coupling.clutch_peak", reading.Holds},
		{"peaks slip", func(_ *Spec, l *Load) { l.Peak = param.Known(130) }, "coupling.clutch_peak", reading.Thin},
		{"peaks unknown", func(_ *Spec, l *Load) { l.Peak = param.Slot{} }, "coupling.clutch_peak", reading.NotRated},
		{"coupling strong", func(*Spec, *Load) {}, "coupling.torque", reading.Holds},
		{"coupling weak", func(s *Spec, _ *Load) { s.TorqueAllowed = param.Known(69) }, "coupling.torque", reading.Fails},
		{"coupling unknown", func(s *Spec, _ *Load) { s.TorqueAllowed = param.Slot{} }, "coupling.torque", reading.NotRated},
		{"run-up unknown", func(_ *Spec, l *Load) { l.RunUpPeak = param.Slot{} }, "coupling.torque", reading.NotRated},
		{"always", func(*Spec, *Load) {}, "coupling.creep", reading.NotRated},
	} {
		s, l := clutch(), load()
		tc.change(&s, &l)
		if got := verdict(t, s, l, tc.key); got != tc.want {
			t.Errorf("%s: %s is %s, want %s", tc.name, tc.key, got, tc.want)
		}
	}
}

func TestOnlyAClutchIsOut(t *testing.T) {
	for _, k := range []Kind{Rigid, Elastic, Clutch} {
		s := clutch()
		s.Kind = k
		if s.OutAt(s.TakeUp*0.99) != (k == Clutch) || s.OutAt(s.TakeUp) {
			t.Errorf("%s", k)
		}
		if k == Clutch {
			continue
		}
		r := s.Examine(load())
		x, ok := reading.Find(r.Readings(nil), "coupling.slip_below")
		if !ok || !x.Absent || s.GripsFrom(20, 800) != 0 || has(r.Checks(nil, 0.1), "coupling.creep") {
			t.Errorf("%s: %+v", k, x)
		}
	}
}

func has(cs []reading.Check, key string) bool {
	return slices.ContainsFunc(cs, func(c reading.Check) bool { return c.Key == key })
}

func TestTwistIsTorqueOverStiffness(t *testing.T) {
	s := clutch()
	for key, want := range map[string]float64{"coupling.twist": 50. / 200, "coupling.run_up_twist": 70. / 200} {
		x, _ := reading.Find(s.Examine(load()).Readings(nil), key)
		near(t, key, x.Value, want, 1e-12)
	}
	s.Kind = Rigid
	r := s.Examine(load())
	x, _ := reading.Find(r.Readings(nil), "coupling.twist")
	if x.Known() || has(r.Checks(nil, 0.1), "coupling.torque") {
		t.Errorf("a rigid coupling twists: %+v", x)
	}
}

func TestStiffnessOfARigidCouplingIsIgnored(t *testing.T) {
	s := Default()
	s.Stiffness = param.Known(100)
	if !s.Spring().Known {
		t.Error("an elastic coupling is stiff")
	}
	if s.Kind = Rigid; s.Spring().Known {
		t.Error("a rigid coupling gives")
	}
}

func TestHalvesAreADiscUnlessGiven(t *testing.T) {
	s := Default()
	engine, drive := s.Inertias()
	near(t, "both", engine+drive, s.Mass*Radius*Radius/2, 1e-12)
	s.EngineInertia, s.DriveInertia = param.Known(3e-4), param.Known(5e-4)
	if engine, drive = s.Inertias(); engine != 3e-4 || drive != 5e-4 {
		t.Errorf("%g, %g", engine, drive)
	}
}

func TestZeroResultListsTheKeys(t *testing.T) {
	s := clutch()
	zero := Result{}.Readings(nil)
	for _, r := range s.Examine(load()).Readings(nil) {
		if !r.Known() {
			t.Errorf("%s: %s", r.Key, r.Why)
		}
		if z, ok := reading.Find(zero, r.Key); !ok || len([]rune(r.Label)) > 34 || z.Absent {
			t.Errorf("%s: %+v", r.Key, z)
		}
	}
}

func TestAnyCouplingIsFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Default()
		anyspec.Set(t, s.Params(), nil)
		l := load()
		l.Torque, l.Speed = rapid.Float64Range(-1, 200).Draw(t, "torque"), rapid.Float64Range(0, 1500).Draw(t, "speed")
		r := s.Examine(l)
		anyspec.Finite(t, "coupling", r)
		anyspec.Finite(t, "readings", r.Readings(nil))
		anyspec.Finite(t, "checks", r.Checks(nil, 0.1))
	})
}
