package shaft

import (
	"math"
	"strings"
	"testing"

	"backspan/model/bearing"
	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// beltLoads is a belt stage of 15 kW with a propeller of 1.5 kg, its axis
// above the crank's.
func beltLoads() Loads {
	l := Loads{
		Along: 990, Across: 230, At: 0.036, Pulsating: Vector{Across: 120},
		PropellerWeight: 1.5 * 9.80665, PropellerOverhang: 0.015, Thrust: 620, GyroCouple: 10, GyroPeak: 20,
		Torque: 55, TorqueAmplitude: 80, Speed: 270, CrankMoment: 38,
	}
	l.Standing.Along = 1216
	return l
}

func slotted(t *testing.T, r Result, key string) float64 {
	t.Helper()
	x, ok := reading.Find(r.Readings(nil), key)
	if !ok || !x.Known() {
		t.Fatalf("%s: %+v", key, x)
	}
	return x.Value
}

func verdict(t *testing.T, r Result, key string) reading.Verdict {
	t.Helper()
	return anyspec.Check(t, r.Checks(nil, 0.1), key).Verdict
}

func TestDefaultSupportHolds(t *testing.T) {
	r := Support(Default(), beltLoads())
	for _, c := range r.Checks(nil, 0.1) {
		if c.Verdict == reading.Fails {
			t.Errorf("%s: %s", c.Key, c.Text())
		}
	}
	for _, x := range r.Readings(nil) {
		t.Log(x.Key, x.Text())
	}
}

// The two readings and checks that a worked-out case by hand gives: belt alone
// in the middle between the bearings, nothing else.
func TestBeltMidwayLoadsBothBearingsAlike(t *testing.T) {
	s := Default()
	l := Loads{Along: 1000, At: s.PropSidePlace + s.Spacing/2, Speed: 270}
	r := Support(s, l)
	for _, b := range []Bearing{r.PropSide, r.EngineSide} {
		if math.Abs(b.Running-500) > 1e-9 || math.Abs(b.Equivalent-600) > 1e-9 || b.Standing != 0 {
			t.Errorf("%+v", b)
		}
	}
	// Held 12 mm ahead of the engine-side bearing: 500·(0.042 + 0.012).
	if got := slotted(t, r, "shaft.bending_moment"); math.Abs(got-27) > 1e-9 {
		t.Errorf("bending at the hold %g", got)
	}
	s.Axle = Turns
	if got := slotted(t, Support(s, l), "shaft.bending_moment"); math.Abs(got-7.5) > 1e-9 {
		t.Errorf("bending of the turning axle at the wheel %g", got)
	}
}

func TestImbalanceGyroAndTurnsLoadTheBearings(t *testing.T) {
	s := Default()
	s.CentreOffset = 1e-3
	l := Loads{PropellerWeight: 9.80665, PropellerOverhang: 0.018, Speed: 100, GyroCouple: 9}
	r := Support(s, l)
	// 1 kg · 1 mm · 100² = 10 N, overhung 40 mm on 30 mm; 9 N·m over 30 mm.
	if want := (9.80665 + 10) * 70 / 30; math.Abs(r.PropSide.Running-want) > 1e-9 {
		t.Errorf("running %g, want %g", r.PropSide.Running, want)
	}
	if more := r.PropSide.Turning - r.PropSide.Running; math.Abs(more-300) > 1e-9 {
		t.Errorf("a turn adds %g N", more)
	}
}

func TestOnlyTheLocatingBearingTakesThrust(t *testing.T) {
	for _, side := range []Side{PropSide, EngineSide} {
		s := Default()
		s.Locating = side
		l := beltLoads()
		l.Thrust = -500
		r := Support(s, l)
		prop, engine := 500.0, 0.0
		if side == EngineSide {
			prop, engine = 0, 500
		}
		if r.PropSide.Axial != prop || r.EngineSide.Axial != engine {
			t.Errorf("%s: %g and %g", side, r.PropSide.Axial, r.EngineSide.Axial)
		}
	}
}

func TestTimeInTurnsIsMeanedCubically(t *testing.T) {
	s := Default()
	s.TurningShare, s.ApplicationFactor, s.CentreOffset = 0.5, 1, 0
	l := Loads{Along: 1000, At: s.PropSidePlace + s.Spacing/2, GyroCouple: 15, Speed: 270}
	if p, want := Support(s, l).PropSide.Equivalent, math.Cbrt((500.0*500*500+1e9)/2); math.Abs(p-want) > 1e-9 {
		t.Errorf("%g, want %g", p, want)
	}
}

func TestLabelsFitTheForm(t *testing.T) {
	s := Default()
	r := Support(s, beltLoads())
	fits := func(key, label string) {
		if n := len([]rune(label)); n == 0 || n > 34 {
			t.Errorf("%s: label %q has %d characters", key, label, n)
		}
	}
	for _, p := range s.Params() {
		fits(p.Key, p.Label)
	}
	for _, x := range r.Readings(nil) {
		fits(x.Key, x.Label)
	}
	for _, c := range r.Checks(nil, 0.1) {
		fits(c.Key, c.Label)
	}
}

func TestChecksFailWhenTheyShould(t *testing.T) {
	for _, tc := range []struct {
		key    string
		change func(*Spec, *Loads)
		want   reading.Verdict
	}{
		{"bearing.life_prop_side", func(s *Spec, _ *Loads) { s.PropSideBearing, s.LifeAsked = "6002", 1000*3600 }, reading.Fails},
		{"bearing.life_engine_side", func(s *Spec, _ *Loads) { s.EngineSideBearing, s.LifeAsked = "6002", 20000*3600 }, reading.Fails},
		{"bearing.static_safety", func(_ *Spec, l *Loads) { l.Standing.Along = 20000 }, reading.Fails},
		{"bearing.static_safety", func(_ *Spec, l *Loads) { l.Standing.Along = 8000 }, reading.Thin},
		{"bearing.speed_parameter", func(_ *Spec, l *Loads) { l.Speed = 1500 }, reading.Fails},
		{"bearing.least_load", func(_ *Spec, l *Loads) { l.Along, l.Across = 0, 0 }, reading.Thin},
		{"bearing.axial_load", func(_ *Spec, l *Loads) { l.Thrust = 1600 }, reading.Thin},
		{"bearing.spacing", func(s *Spec, _ *Loads) { s.Spacing = 0.010 }, reading.Fails},
		{"shaft.wall", func(s *Spec, _ *Loads) { s.AxleBore = 0.025 }, reading.Fails},
		{"shaft.fatigue_safety", func(s *Spec, _ *Loads) { s.AxleDiameter, s.Held = 0.012, 0.05 }, reading.Fails},
		{"shaft.fatigue_safety", func(s *Spec, _ *Loads) { s.AxleBore = 0.030 }, reading.NotRated},
		{"shaft.yield_safety", func(s *Spec, _ *Loads) { s.AxleDiameter, s.Held = 0.012, 0.05 }, reading.Fails},
		{"shaft.crank_bending", func(*Spec, *Loads) {}, reading.NotRated},
	} {
		s, l := Default(), beltLoads()
		tc.change(&s, &l)
		if got := verdict(t, Support(s, l), tc.key); got != tc.want {
			t.Errorf("%s: %s, want %s", tc.key, got, tc.want)
		}
	}
}

func TestNothingLoadedNothingRated(t *testing.T) {
	r := Support(Default(), Loads{})
	for _, key := range []string{"bearing.life_prop_side", "bearing.static_safety", "shaft.fatigue_safety"} {
		if x, _ := reading.Find(r.Readings(nil), key); x.Known() || x.Why == "" {
			t.Errorf("%+v", x)
		}
	}
	if len(Result{}.Readings(nil)) != len(r.Readings(nil)) || len(Result{}.Checks(nil, 0.1)) == 0 {
		t.Error("the zero result declares other readings")
	}
	s := Default()
	s.EngineSideBearing = "x"
	if Support(s, beltLoads()) != (Result{}) {
		t.Error("an unlisted bearing is rated")
	}
}

func TestCriteriaInTheirOrder(t *testing.T) {
	section := Section{0.02, 0.005, 2, 1.8}
	m := Strength{Tensile: 900e6, Yield: 700e6, Endurance: 250e6}
	x := Stressing{MeanBending: 10, BendingAmplitude: 20, MeanTorque: 40, TorqueAmplitude: 30}
	use := func(c Criterion) float64 { return section.FatigueUse(c, x, m) }
	if !(use(Soderberg) > use(Goodman) && use(Goodman) > use(Gerber)) || use(ASMEElliptic) >= use(Soderberg) {
		t.Errorf("Soderberg %g, Goodman %g, Gerber %g, ASME %g", use(Soderberg), use(Goodman), use(Gerber), use(ASMEElliptic))
	}
}

func TestSurfacesInTheirOrder(t *testing.T) {
	last := math.Inf(1)
	for _, f := range []Surface{Ground, Machined, HotRolled, Forged} {
		e := EnduranceLimit(900e6, 0.02, f, 1)
		if e >= last {
			t.Errorf("%s: %g", f, e)
		}
		last = e
	}
	if a, b := EnduranceLimit(1500e6, 0.02, Ground, 1), EnduranceLimit(1800e6, 0.02, Ground, 1); b >= a {
		t.Error("the endurance grows past the bound of 700 MPa")
	}
}

func TestOwnSpeedLimit(t *testing.T) {
	s, l := Default(), Loads{Along: 1000, At: 0.02, Speed: 270}
	for limit, want := range map[float64]reading.Verdict{0: reading.Holds, 0.5: reading.Fails} {
		s.SpeedLimit = param.Slot{Value: limit, Known: limit > 0}
		r := Support(s, l)
		c := anyspec.Check(t, r.Checks(nil, 0.1), "bearing.speed_parameter")
		if c.Verdict != want || strings.Contains(c.Origin, "your own") != (limit > 0) {
			t.Errorf("limit %g: %s, %s", limit, c.Verdict, c.Origin)
		}
	}
}

func TestMillimetrePerMinuteIsAsWritten(t *testing.T) {
	if x := unit.MillimetrePerMinute.From(bearing.Grease.SpeedLimit()); math.Abs(x-5e5) > 1e-6 {
		t.Errorf("%g", x)
	}
}

func BenchmarkSupport(b *testing.B) {
	s, l := Default(), beltLoads()
	b.ReportAllocs()
	for b.Loop() {
		Support(s, l)
	}
}
