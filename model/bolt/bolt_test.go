package bolt

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/reading"
)

// A hub as large as the plate, on a machine of about 25 kW.
func strong() Load {
	return Load{Torque: 82, Thrust: 1050, HubDiameter: 0.110, HubThickness: 0.030}
}

func verdict(t *testing.T, r Result, key string) reading.Verdict {
	t.Helper()
	return anyspec.Check(t, r.Checks(nil, 0.1), key).Verdict
}

func TestDefaultsAreTypical(t *testing.T) {
	s := Default()
	anyspec.HoldDefaults(t, s.Params())
}

func TestVerdicts(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Spec, *Load)
		check  string
		want   reading.Verdict
	}{
		{"default does not slip by far", func(_ *Spec, l *Load) { l.TorqueAmplitude = param.Known(20) }, "bolt.slip_safety", reading.Holds},
		{"default does not crush", func(*Spec, *Load) {}, "bolt.crush_pressure", reading.Holds},
		{"default is not overtightened", func(*Spec, *Load) {}, "bolt.stress_share", reading.Holds},
		{"a wooden hub under full M8 is crushed", func(s *Spec, _ *Load) { s.TighteningTorque = param.Slot{} }, "bolt.crush_pressure", reading.Fails},
		{"full preload is just allowed", func(s *Spec, _ *Load) { s.TighteningTorque = param.Slot{} }, "bolt.stress_share", reading.Holds},
		{"30 N·m on M8 8.8", func(s *Spec, _ *Load) { s.TighteningTorque = param.Known(30) }, "bolt.stress_share", reading.Fails},
		{"25 N·m on M8 10.9", func(s *Spec, _ *Load) { s.TighteningTorque, s.Class = param.Known(25), Class10 }, "bolt.stress_share", reading.Holds},
		{"more swing is thin", func(_ *Spec, l *Load) { l.TorqueAmplitude = param.Known(60) }, "bolt.slip_safety", reading.Thin},
		{"a stiff drive that is not known makes it slip", func(*Spec, *Load) {}, "bolt.slip_safety", reading.Fails},
		{"far too loose", func(s *Spec, _ *Load) { s.TighteningTorque = param.Known(3) }, "bolt.slip_safety", reading.Fails},
		{"no torque at all", func(_ *Spec, l *Load) { l.Torque = 0 }, "bolt.slip_safety", reading.NotRated},
		{"a known swing of four times the mean", func(_ *Spec, l *Load) { l.TorqueAmplitude = param.Known(246) }, "bolt.slip_safety", reading.Fails},
		{"a small hub", func(_ *Spec, l *Load) { l.HubDiameter = 0.095 }, "bolt.crush_pressure", reading.Fails},
		{"a hub inside the bolt circle", func(_ *Spec, l *Load) { l.HubDiameter = 0.080 }, "bolt.circle", reading.Fails},
		{"nor is its slip rated", func(_ *Spec, l *Load) { l.HubDiameter = 0.080 }, "bolt.slip_safety", reading.NotRated},
		{"nor where the bolts yield", func(s *Spec, _ *Load) { s.TighteningTorque = param.Known(60) }, "bolt.slip_safety", reading.NotRated},
		{"heads just over the edge", func(_ *Spec, l *Load) { l.HubDiameter = 0.0865 }, "bolt.circle", reading.Fails},
		{"heads just inside the edge", func(_ *Spec, l *Load) { l.HubDiameter = 0.0867 }, "bolt.circle", reading.Holds},
		{"heads just touch", func(s *Spec, _ *Load) { s.BoltCircle = 0.0287 }, "bolt.heads", reading.Fails},
		{"heads just clear", func(s *Spec, _ *Load) { s.BoltCircle = 0.0289 }, "bolt.heads", reading.Holds},
		{"bolts bend if it slips", func(_ *Spec, l *Load) { l.TorqueAmplitude = param.Known(300) }, "bolt.after_slip", reading.Thin},
		{"nor is its pressure rated", func(_ *Spec, l *Load) { l.HubDiameter = 0.080 }, "bolt.crush_pressure", reading.NotRated},
		{"a bore that meets the holes", func(s *Spec, _ *Load) { s.Bore = 0.070 }, "bolt.circle", reading.Fails},
		{"sixteen M12 on a small circle", func(s *Spec, _ *Load) { s.Count, s.Size, s.BoltCircle = 16, M12, 0.060 }, "bolt.heads", reading.Fails},
		{"composite without a limit", func(s *Spec, _ *Load) { s.Hub = Composite }, "bolt.crush_pressure", reading.NotRated},
		{"metal with a limit", func(s *Spec, _ *Load) { s.Hub, s.OtherCrush = Metal, param.Known(100e6) }, "bolt.crush_pressure", reading.Holds},
		{"wood wants its caution", func(*Spec, *Load) {}, "bolt.retighten", reading.NotRated},
	} {
		t.Run(tc.name, func(t *testing.T) {
			s, l := Default(), strong()
			tc.change(&s, &l)
			if got := verdict(t, Clamp(s, l), tc.check); got != tc.want {
				t.Errorf("%s is %s, want %s", tc.check, got, tc.want)
			}
		})
	}
}

// Four M6 on a unit of 25 kW at 2650 rpm do not reach the safety asked with
// 8.8; with 10.9 they do, and the wood is at the end of what it bears.
func TestFourM6OnTwentyFiveKilowatts(t *testing.T) {
	s, l := Default(), strong()
	s.Count, s.Size, s.TighteningTorque, s.PeakOverMean = 4, M6, param.Slot{}, 1.5
	s.ThreadFriction, s.HeadFriction, s.TighteningFactor = 0.12, 0.12, 1.6
	l.Torque = 25e3 / (2650 * math.Pi / 30)
	if got := verdict(t, Clamp(s, l), "bolt.slip_safety"); got != reading.Thin {
		t.Errorf("8.8 in wood %s", got)
	}
	s.Class = Class10
	r := Clamp(s, l)
	if slip, crush := verdict(t, r, "bolt.slip_safety"), verdict(t, r, "bolt.crush_pressure"); slip != reading.Holds || crush != reading.Thin {
		t.Errorf("10.9 in wood: slip %s, crush %s", slip, crush)
	}
	s.Class, s.Hub = Class8, Metal
	if got := verdict(t, Clamp(s, l), "bolt.slip_safety"); got != reading.Fails {
		t.Errorf("8.8 in metal %s", got)
	}
}

// The advice for a wooden hub names what is at its end: its bolts, the wood,
// both or neither.
func TestWoodenHubSaysWhatIsAtItsEnd(t *testing.T) {
	for name, tc := range map[string]struct {
		change  func(*Spec, *Load)
		says    string
		saysNot string
	}{
		"loose":           {func(s *Spec, _ *Load) { s.TighteningTorque = param.Known(3) }, "raise Tightening torque", "Propeller bolts"},
		"loose, by yield": {func(s *Spec, _ *Load) { s.TighteningTorque, s.YieldUse = param.Slot{}, 0.15 }, "raise Yield used in tightening", "Tightening torque"},
		"wood at its end": {func(_ *Spec, l *Load) { l.TorqueAmplitude = param.Known(60) }, "Plate diameter", "Bolt size"},
		"bolts at their":  {func(s *Spec, l *Load) { s.Count, s.Size, s.TighteningTorque = 4, M5, param.Known(4) }, "Bolt size", "Plate diameter"},
		"both":            {func(s *Spec, l *Load) { s.TighteningTorque, l.TorqueAmplitude = param.Known(14), param.Known(300) }, "bolts and wood would both", ""},
	} {
		s, l := Default(), strong()
		l.TorqueAmplitude = param.Known(10)
		tc.change(&s, &l)
		r := Clamp(s, l)
		for _, c := range r.Checks(nil, 0.1) {
			if c.Key == "bolt.slip_safety" && (!strings.Contains(c.Cure, tc.says) || tc.saysNot != "" && strings.Contains(c.Cure, tc.saysNot)) {
				t.Errorf("%s: %q; slip %g, yield used %g, crush %g", name, c.Cure, r.SlipSafety.Value, r.StressShare, r.CrushSafety.Value)
			}
		}
	}
}

// The factor is a stand-in for a swing that is not known; both would count the
// peak twice.
func TestPeakIsSwingOrFactorNeverBoth(t *testing.T) {
	s, l := Default(), strong()
	if r := Clamp(s, l); math.Abs(r.PeakTorque-410) > 1e-9 {
		t.Errorf("by factor %g", r.PeakTorque)
	}
	l.TorqueAmplitude = param.Known(10)
	if r := Clamp(s, l); math.Abs(r.PeakTorque-92) > 1e-9 {
		t.Errorf("by swing %g", r.PeakTorque)
	}
}

// From the definitions, by hand: 120 N·m on six M8 at 75 mm, a hub of 30 mm.
func TestWhatTheBoltsBearIfFrictionFails(t *testing.T) {
	s, l := Default(), strong()
	l.Torque, l.TorqueAmplitude = 100, param.Known(20)
	r := Clamp(s, l)
	root := 6.466e-3
	force := 120 / (6 * 0.0375)
	bending := force * 0.030 / 2 / (math.Pi * root * root * root / 32)
	for _, tc := range []struct {
		name      string
		got, want float64
	}{
		{"shear force", r.ShearForce, force}, {"bending", r.BendingStress, bending},
		{"thrust share", r.ThrustShare.Value, 1050 / (6 * r.LeastPreload)},
	} {
		if math.Abs(tc.got/tc.want-1) > 1e-3 {
			t.Errorf("%s %g, want %g", tc.name, tc.got, tc.want)
		}
	}
	s.Surfaces = 2
	if twice := Clamp(s, l).SlipTorque; math.Abs(twice/r.SlipTorque-2) > 1e-12 {
		t.Errorf("two surfaces hold %g, one %g", twice, r.SlipTorque)
	}
	s.ThreadFriction *= 2
	thread := Clamp(s, l).Preload
	s.ThreadFriction, s.HeadFriction = s.ThreadFriction/2, s.HeadFriction*2
	if head := Clamp(s, l).Preload; !(head < thread) {
		t.Errorf("friction under the head, which is wider, leaves %g, in the thread %g", head, thread)
	}
}

func TestOnlyWoodDries(t *testing.T) {
	s := Default()
	wood := Clamp(s, strong()).LeastPreload
	s.Hub = Composite
	if composite := Clamp(s, strong()).LeastPreload; math.Abs(composite/wood-0.9/0.75) > 1e-12 {
		t.Errorf("wood %g, composite %g", wood, composite)
	}
	for _, c := range Clamp(s, strong()).Checks(nil, 0.1) {
		if c.Key == "bolt.retighten" {
			t.Error("a composite hub is told to be retightened as wood")
		}
	}
}

func BenchmarkClamp(b *testing.B) {
	s, l := Default(), strong()
	b.ReportAllocs()
	for b.Loop() {
		_ = Clamp(s, l)
	}
}
