package match

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/part"
	"backspan/model/propeller"
	"backspan/model/reading"
	"backspan/model/unit"
)

// curve is an engine whose power is peak times a shape of relative speed.
type curve struct {
	peak, speed     float64
	lowest, highest float64
	shape           func(x float64) float64
}

func (c curve) Power(w float64) float64 {
	if w < c.lowest || w > c.highest {
		return 0
	}
	return c.peak * c.shape(w/c.speed)
}
func (c curve) SpeedRange() (float64, float64) { return c.lowest, c.highest }
func (c curve) SpeedLimit() float64            { return c.highest }
func (c curve) Peak() (float64, float64)       { return c.peak, c.speed }
func (c curve) FuelFlow(power, _ float64) float64 {
	return (0.1*c.peak + power) * unit.GramPerKilowattHour.SI(400)
}

func smooth(x float64) float64 { return x + x*x - x*x*x }

// piped is flat and weak below its pipe and comes on late.
func piped(x float64) float64 {
	off := (x - 1) / 0.12
	return x * (0.35 + 0.65*math.Exp(-off*off))
}

func engine(kilowatts float64, shape func(float64) float64) curve {
	return curve{kilowatts * 1000, unit.RPM.SI(8200), unit.RPM.SI(2500), unit.RPM.SI(9500), shape}
}

// slipping is a drive with a fixed and a proportional loss and some slip.
type slipping struct{ ratio, share, fixed, slip float64 }

func (d slipping) Ratio() float64 { return d.ratio }
func (d slipping) Transmit(power, speed float64) part.Transmission {
	out := math.Max(power*(1-d.share)-d.fixed*speed/900, 0)
	return part.Transmission{PowerIn: power, SpeedIn: speed, PowerOut: out, SpeedOut: speed / d.ratio * (1 - d.slip*power/15000)}
}

func belt(ratio float64) slipping { return slipping{ratio, 0.03, 120, 0.006} }

func blade(t testing.TB) *propeller.Propeller {
	t.Helper()
	p, err := propeller.New(propeller.Default())
	if err != nil {
		t.Fatal(err)
	}
	return &p
}

func air(airspeed float64) propeller.Flow {
	return propeller.Flow{Airspeed: airspeed, Density: 1.225, SoundSpeed: 340.294, Viscosity: 1.78938e-5}
}

func fullAt(e Engine, d Drive, p *propeller.Propeller, flow propeller.Flow) Point {
	m := machine{e, d, p, flow, fine}
	s := m.survey()
	return s.fullThrottle(propeller.Point{})
}

func levelAt(e Engine, d Drive, p *propeller.Propeller, flow propeller.Flow, thrust float64) Point {
	m := machine{e, d, p, flow, fine}
	return m.level(thrust, Point{})
}

func near(t testing.TB, what string, got, want, relative float64) {
	t.Helper()
	if !(math.Abs(got-want) <= relative*math.Abs(want)) {
		t.Errorf("%s is %.9g, want %.9g", what, got, want)
	}
}

func TestFullThrottleBalances(t *testing.T) {
	e, d, p := engine(14, smooth), belt(3.2), blade(t)
	for _, v := range []float64{0, 4, 11, 18} {
		pt := fullAt(e, d, p, air(v))
		if pt.Status != Matched || pt.Deficit {
			t.Fatalf("at %g m/s: %v", v, pt.Status)
		}
		near(t, "power absorbed", pt.Propeller.Power, pt.Transmission.PowerOut, 2e-6)
		near(t, "engine power", pt.EnginePower, e.Power(pt.CrankSpeed), 1e-12)
		near(t, "throttle", pt.Throttle, 1, 1e-12)
		near(t, "installed thrust", pt.InstalledThrust, 0.92*pt.Propeller.Thrust, 1e-12)
		near(t, "propeller speed", pt.PropellerSpeed, pt.CrankSpeed/3.2, 0.01)
	}
}

// With the geometry fixed, n = (ηP/(ρ CP D⁵))^⅓ and T = CT CP^(−⅔) ρ^⅓ (ηP)^⅔ D^⅔.
func TestStaticPointObeysTheFixedGeometryFormula(t *testing.T) {
	p := blade(t)
	pt := fullAt(engine(14, smooth), belt(3.2), p, air(0))
	d, arriving := p.Diameter(), pt.Transmission.PowerOut
	n := math.Cbrt(arriving / (1.225 * pt.Propeller.CP * math.Pow(d, 5)))
	near(t, "speed", pt.PropellerSpeed, 2*math.Pi*n, 1e-6)
	near(t, "thrust", pt.Propeller.Thrust, pt.Propeller.CT*math.Pow(pt.Propeller.CP, -2.0/3)*math.Cbrt(1.225*arriving*arriving*d*d), 1e-6)
}

func TestEngineGainsSpeedInFlight(t *testing.T) {
	e, d, p := engine(14, smooth), belt(3.2), blade(t)
	last := fullAt(e, d, p, air(0))
	for v := 2.0; v <= 20; v += 2 {
		pt := fullAt(e, d, p, air(v))
		if pt.Propeller.Thrust >= last.Propeller.Thrust {
			t.Errorf("thrust does not fall with airspeed at %g m/s", v)
		}
		if v > 6 && pt.CrankSpeed <= last.CrankSpeed {
			t.Errorf("engine does not gain speed at %g m/s", v)
		}
		last = pt
	}
}

func TestOverSpeedIsHeldToTheLimit(t *testing.T) {
	e, d, p := engine(14, smooth), belt(4.5), blade(t)
	pt := fullAt(e, d, p, air(0))
	if pt.Status != OverSpeed {
		t.Fatal(pt.Status)
	}
	near(t, "crank speed", pt.CrankSpeed, e.highest, 1e-12)
	near(t, "power absorbed", pt.Propeller.Power, pt.Transmission.PowerOut, 1e-6)
	if pt.Throttle <= 0 || pt.Throttle >= 1 {
		t.Errorf("throttle %g", pt.Throttle)
	}
}

func TestLuggingIsSaidInWords(t *testing.T) {
	e, d := engine(3, smooth), belt(1.2)
	e.lowest = unit.RPM.SI(5000)
	pt := fullAt(e, d, blade(t), air(0))
	r := NewReport(e, pt, pt, levelAt(e, d, blade(t), air(11), 900))
	if pt.Status != Lugging {
		t.Fatal(pt.Status)
	}
	for _, c := range r.Checks(nil, 0.1) {
		if c.Key == checkStatic && (c.Verdict != reading.Fails || !strings.Contains(c.Text(), "load too heavy") || !strings.Contains(c.Cure, "pitch")) {
			t.Errorf("%+v", c)
		}
	}
	for _, x := range r.Readings(nil) {
		if x.Known() {
			t.Errorf("%s has the value %s", x.Key, x.Text())
		}
	}
}

func TestTwoWorkingPointsAreFlagged(t *testing.T) {
	e, p := engine(15, piped), blade(t)
	flagged := false
	for ratio := 2.6; ratio < 3.8; ratio += 0.05 {
		pt := fullAt(e, belt(ratio), p, air(0))
		if pt.Status != Matched {
			continue
		}
		near(t, "power absorbed", pt.Propeller.Power, pt.Transmission.PowerOut, 2e-6)
		if !stable(e, belt(ratio), p, pt) {
			t.Errorf("ratio %.2f: the point at %.0f rpm is not stable", ratio, unit.RPM.From(pt.CrankSpeed))
		}
		flagged = flagged || pt.Deficit
	}
	if !flagged {
		t.Error("no ratio shows two working points")
	}
}

// stable reports whether a little more speed lacks power and a little less has
// some to spare.
func stable(e Engine, d Drive, p *propeller.Propeller, pt Point) bool {
	m := machine{e, d, p, air(pt.Airspeed), fine}
	spare := func(by float64) float64 {
		tr := m.full(pt.CrankSpeed * by)
		return tr.PowerOut - m.at(tr.SpeedOut).Power
	}
	return spare(0.999) > 0 && spare(1.001) < 0
}

func TestLevelGivesTheThrustAsked(t *testing.T) {
	e, d, p := engine(14, smooth), belt(3.2), blade(t)
	last := Point{}
	for _, thrust := range []float64{60, 120, 170, 250, 350} {
		pt := levelAt(e, d, p, air(11), thrust)
		if pt.Status != Matched {
			t.Fatalf("%g N: %v", thrust, pt.Status)
		}
		near(t, "thrust", pt.InstalledThrust, thrust, 1e-6)
		near(t, "power arriving", pt.Transmission.PowerOut, pt.Propeller.Power, 1e-8)
		near(t, "speed arriving", pt.Transmission.SpeedOut, pt.Propeller.Flow.Speed, 1e-8)
		if pt.EnginePower <= last.EnginePower || pt.Throttle <= last.Throttle || pt.FuelFlow <= last.FuelFlow {
			t.Errorf("%g N takes no more than less thrust", thrust)
		}
		last = pt
	}
}

func TestLevelImpossibleIsFullThrottle(t *testing.T) {
	e, d, p := engine(14, smooth), belt(3.2), blade(t)
	pt, full := levelAt(e, d, p, air(11), 900), fullAt(e, d, p, air(11))
	if pt.Status != Impossible || pt.InstalledThrust != full.InstalledThrust {
		t.Errorf("%v, %g N", pt.Status, pt.InstalledThrust)
	}
}

func TestLevelBelowTheEnginesRange(t *testing.T) {
	e := engine(14, smooth)
	e.lowest = unit.RPM.SI(6000)
	if pt := levelAt(e, belt(3.2), blade(t), air(8), 60); pt.Status != BelowRange || pt.EnginePower <= 0 {
		t.Errorf("%v", pt.Status)
	} else if x, ok := reading.Find(NewReport(e, pt, pt, pt).Readings(nil), "match.level_throttle"); !ok || x.Known() {
		t.Errorf("throttle below the range is %s", x.Text())
	}
}

func TestNothingToMatch(t *testing.T) {
	p := blade(t)
	if pt := fullAt(engine(14, smooth), slipping{}, p, air(0)); pt.Status != Unsolved {
		t.Error(pt.Status)
	}
	if pt := levelAt(engine(14, smooth), belt(3), p, air(11), 0); pt.Status != Unsolved {
		t.Error(pt.Status)
	}
	for _, x := range (Report{}).Readings(nil) {
		if x.Known() {
			t.Errorf("%s has a value without an engine", x.Key)
		}
	}
	(Report{}).Checks(nil, 0.1)
}

func TestVerdicts(t *testing.T) {
	p := blade(t)
	for _, tc := range []struct {
		name  string
		ratio float64
		want  map[string]reading.Verdict
	}{
		{"well matched", 3.15, map[string]reading.Verdict{"match.static": reading.Holds, "match.static_light": reading.Holds, "match.one_point": reading.Holds, "match.trim": reading.Holds, "match.level": reading.Holds}},
		{"heavy", 2.0, map[string]reading.Verdict{"match.static": reading.Fails}},
		{"light", 4.5, map[string]reading.Verdict{"match.static_light": reading.Fails, "match.trim": reading.Fails}},
	} {
		e, d := engine(14, smooth), belt(tc.ratio)
		r := NewReport(e, fullAt(e, d, p, air(0)), fullAt(e, d, p, air(11)), levelAt(e, d, p, air(11), 170))
		got := map[string]reading.Check{}
		for _, c := range r.Checks(nil, 0.1) {
			got[c.Key] = c
		}
		for key, want := range tc.want {
			if c := got[key]; c.Verdict != want {
				t.Errorf("%s, %s: %s, want %s (%s)", tc.name, key, c.Verdict, want, c.Text())
			}
		}
	}
}

func TestAnyMachineHasAnAnswerInNumbers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := propeller.Default()
		s.Blades = rapid.IntRange(2, 6).Draw(t, "blades")
		s.Diameter = rapid.Float64Range(0.9, 1.6).Draw(t, "diameter")
		s.Pitch = rapid.Float64Range(0.2, 1.2).Draw(t, "pitch")
		p, err := propeller.New(s)
		if err != nil {
			t.Skip(err)
		}
		e := engine(rapid.Float64Range(3, 40).Draw(t, "power"), rapid.SampledFrom([]func(float64) float64{smooth, piped}).Draw(t, "shape"))
		d := belt(rapid.Float64Range(1, 5).Draw(t, "ratio"))
		v := rapid.SampledFrom([]float64{0, 3, 11, 20, 30}).Draw(t, "airspeed")
		full := fullAt(e, d, &p, air(v))
		if full.Status == Unsolved {
			t.Fatal("full throttle: ", full.Status)
		}
		if full.Status == Matched && math.Abs(full.Propeller.Power/full.Transmission.PowerOut-1) > 2e-6 {
			t.Fatalf("%g W absorbed, %g W arriving", full.Propeller.Power, full.Transmission.PowerOut)
		}
		thrust := rapid.Float64Range(10, 1000).Draw(t, "thrust")
		level := levelAt(e, d, &p, air(v), thrust)
		if level.Status == Unsolved {
			t.Fatal("level: ", level.Status)
		}
		if level.Status == Matched && math.Abs(level.InstalledThrust/thrust-1) > 2e-6 {
			t.Fatalf("gives %g N for %g N", level.InstalledThrust, thrust)
		}
		for _, pt := range []Point{full, level} {
			withinEnergy(t, &p, pt)
			for _, x := range []float64{pt.CrankSpeed, pt.PropellerSpeed, pt.EnginePower, pt.Throttle, pt.FuelFlow, pt.InstalledThrust, pt.Transmission.PowerOut} {
				if math.IsNaN(x) || math.IsInf(x, 0) {
					t.Fatalf("%+v", pt)
				}
			}
		}
		r := Find(e, d, &p, air(0), Ask{Trim: v, Level: thrust})
		if r.Trim.Status != full.Status || r.Level.Status != level.Status {
			t.Fatalf("together %v and %v, alone %v and %v", r.Trim.Status, r.Level.Status, full.Status, level.Status)
		}
		if math.Abs(r.Trim.CrankSpeed-full.CrankSpeed) > 1e-4*full.CrankSpeed || math.Abs(r.Level.CrankSpeed-level.CrankSpeed) > 1e-4*level.CrankSpeed {
			t.Fatalf("together %v and %v, alone %v and %v", r.Trim, r.Level, full, level)
		}
		r.Readings(nil)
		r.Checks(nil, 0.1)
	})
}

// withinEnergy holds a point against Rankine and Froude: no propeller needs less
// power than the ideal disc at its thrust.
func withinEnergy(t *rapid.T, p *propeller.Propeller, pt Point) {
	if pt.Propeller.Status != propeller.Valid || pt.Propeller.Thrust <= 0 {
		return
	}
	least := pt.Propeller.Thrust * (pt.Airspeed + propeller.DiscSpeed(pt.Propeller.Thrust, pt.Airspeed, 1.225, p.DiscArea()))
	if pt.Propeller.Power < least*(1-1e-9) || pt.Transmission.PowerOut > pt.EnginePower*(1+1e-9) {
		t.Fatalf("%g W ideal, %g W absorbed, %g W arriving of %g W", least, pt.Propeller.Power, pt.Transmission.PowerOut, pt.EnginePower)
	}
}

// past is an engine whose highest allowed speed lies inside its curve.
type past struct {
	curve
	limit float64
}

func (p past) SpeedLimit() float64 { return p.limit }

func TestSpeedAtTheWingsTopWarns(t *testing.T) {
	e, d, p := engine(14, smooth), belt(3.2), blade(t)
	fast := fullAt(e, d, p, air(14)).CrankSpeed
	for limit, want := range map[float64]reading.Verdict{fast * 1.3: reading.Holds, fast * 1.05: reading.Thin, fast * 0.95: reading.Thin} {
		r := Find(past{e, limit}, d, p, air(0), Ask{11, 170, 14, 10.7, 160})
		for _, c := range r.Checks(nil, 0.1) {
			if c.Key == "match.fast" && (c.Verdict != want || c.Past != (limit < fast)) {
				t.Errorf("limit %.2f of the speed: %s (%s)", limit/fast, c.Verdict, c.Text())
			}
		}
	}
	r := Find(e, d, p, air(0), Ask{Trim: 11, Level: 170})
	for _, c := range r.Checks(nil, 0.1) {
		if c.Key == "match.fast" && c.Verdict != reading.NotRated {
			t.Errorf("nothing was asked, yet %s", c.Text())
		}
	}
}

// The quick search for curves against the fine one.
func TestRoughPointsAreClose(t *testing.T) {
	e, d, p := engine(14, smooth), belt(3.2), blade(t)
	static, trim := fullAt(e, d, p, air(0)), fullAt(e, d, p, air(11))
	r := Find(e, d, p, air(0), Ask{11, 170, 14, 10.7, 160})
	for _, tc := range []struct {
		name        string
		rough, fine Point
	}{
		{"fast", r.Fast, fullAt(e, d, p, air(14))},
		{"light", r.Light, levelAt(e, d, p, air(10.7), 160)},
		{"fast from standing", FullThrottleNear(e, d, p, air(14), static), fullAt(e, d, p, air(14))},
		{"thin air", FullThrottleNear(e, d, p, thin(13), trim), fullAt(e, d, p, thin(13))},
	} {
		if tc.rough.Status != Matched || tc.fine.Status != Matched {
			t.Errorf("%s: %v, %v", tc.name, tc.rough.Status, tc.fine.Status)
		}
		near(t, tc.name+", thrust", tc.rough.InstalledThrust, tc.fine.InstalledThrust, 0.002)
		near(t, tc.name+", speed", tc.rough.CrankSpeed, tc.fine.CrankSpeed, 0.001)
		near(t, tc.name+", fuel", tc.rough.FuelFlow, tc.fine.FuelFlow, 0.002)
	}
}

func thin(airspeed float64) propeller.Flow {
	f := air(airspeed)
	f.Density = 0.9
	return f
}

func TestReadingsAreNamedOnceAndShort(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range (Report{}).Readings(nil) {
		if seen[r.Key] || len([]rune(r.Label)) > 34 || !strings.HasPrefix(r.Key, "match.") {
			t.Errorf("%s %q", r.Key, r.Label)
		}
		seen[r.Key] = true
	}
	for _, c := range (Report{}).Checks(nil, 0.1) {
		if len([]rune(c.Label)) > 34 {
			t.Errorf("%s %q", c.Key, c.Label)
		}
	}
}

func BenchmarkFullThrottleStanding(b *testing.B) { benchmarkFull(b, 0) }
func BenchmarkFullThrottleTrim(b *testing.B)     { benchmarkFull(b, 11) }

func benchmarkFull(b *testing.B, v float64) {
	var e Engine = engine(14, smooth)
	var d Drive = belt(3.2)
	p := blade(b)
	b.ReportAllocs()
	for b.Loop() {
		fullAt(e, d, p, air(v))
	}
}

func BenchmarkFind(b *testing.B) {
	var e Engine = engine(14, smooth)
	var d Drive = belt(3.2)
	p := blade(b)
	b.ReportAllocs()
	for b.Loop() {
		Find(e, d, p, air(0), Ask{11, 170, 14, 10.7, 160})
	}
}

func BenchmarkLevel(b *testing.B) {
	var e Engine = engine(14, smooth)
	var d Drive = belt(3.2)
	p := blade(b)
	b.ReportAllocs()
	for b.Loop() {
		levelAt(e, d, p, air(11), 170)
	}
}

// An engine is held at the lower of its highest allowed speed and the end of its
// curve, and the words say at which.
func TestHeldAtTheLowerOfTwoSpeeds(t *testing.T) {
	e, p := engine(14, smooth), blade(t)
	for _, tc := range []struct {
		name        string
		ratio       float64
		limit, held float64 // rpm
		status      Status
		key, cure   string
	}{
		{"allowed speed first", 3.6, 8000, 8000, OverSpeed, "match.static_light", "the engine over-speeds: raise Nominal pitch or Pitch trim"},
		{"allowed speed first, in flight", 3.6, 8000, 8000, OverSpeed, "match.trim", "the engine over-speeds: raise Nominal pitch or Pitch trim"},
		{"allowed speed first, fast", 3.6, 8000, 8000, OverSpeed, "match.fast", "throttle back at speed"},
		{"curve ends first", 4.6, 12000, 9500, PastCurve, "match.static_light", "extend Power curve"},
		{"curve ends first, in flight", 4.6, 12000, 9500, PastCurve, "match.trim", "extend Power curve"},
		{"allowed speed far below the peak", 3.6, 6000, 6000, OverSpeed, "match.static", "keeps the engine from its speed of greatest power"},
		{"allowed speed below the curve", 3.6, 2400, 0, Forbidden, "match.static", "Highest allowed speed is not above"},
		{"level needs more than the held engine gives", 3.6, 5000, 5000, OverSpeed, "match.level", "the engine over-speeds: raise"},
	} {
		r := Find(past{e, unit.RPM.SI(tc.limit)}, belt(tc.ratio), p, air(0), Ask{11, 400, 14, 10.7, 160})
		if r.Static.Status != tc.status || r.Trim.Status != tc.status {
			t.Errorf("%s: %v, %v", tc.name, r.Static.Status, r.Trim.Status)
		}
		near(t, tc.name, unit.RPM.From(r.Static.CrankSpeed), tc.held, 1e-9)
		found := false
		for _, c := range r.Checks(nil, 0.1) {
			if c.Key == tc.key {
				found = c.Past || c.Verdict == reading.Fails
				if !strings.Contains(c.Cure, tc.cure) {
					t.Errorf("%s: %s says %q", tc.name, c.Key, c.Cure)
				}
			}
		}
		if !found {
			t.Errorf("%s: %s says nothing", tc.name, tc.key)
		}
	}
}

// What cures a lugging engine is not what cures one that the air drives.
func TestLevelFlightIsCuredByItsCause(t *testing.T) {
	for status, want := range map[Status]string{Lugging: "the engine lugs: lower", Windmilling: "the air drives the propeller: raise", Impossible: "more engine power"} {
		r := Report{Level: Point{Status: status}}
		c := r.level(0.1)
		if c.Verdict != reading.Fails || !strings.HasPrefix(c.Cure, want) {
			t.Errorf("%v: %s %q", status, c.Verdict, c.Cure)
		}
	}
}

func TestStatesAreFoundByTheirWords(t *testing.T) {
	for s := Unsolved; s <= Forbidden; s++ {
		if got := Said(s.String()); got != s {
			t.Errorf("%d is taken for %d", s, got)
		}
	}
	if Said("it rains") != Unsolved || Matched.Short() != "" || Lugging.Short() == OverSpeed.Short() {
		t.Error("words that bar")
	}
}
