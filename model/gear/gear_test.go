package gear

import (
	"math"
	"strings"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

func rated() part.Duty {
	return part.Duty{Power: 15000, CrankSpeed: 8500 * rpm, AirTemperature: 298.15, AirDensity: 1.18, Inflow: 10}
}

func newGear(t testing.TB, s Spec) Gear {
	t.Helper()
	g, err := New(s, rated())
	if err != nil {
		t.Fatal(err)
	}
	return g
}

func TestDefaultIsASensibleUnit(t *testing.T) {
	s := Default()
	for _, p := range s.Params() {
		if si, ok := p.Number(); ok {
			if err := p.SetNumber(si); err != nil {
				t.Errorf("default of %s: %v", p.Key, err)
			}
		}
		if len([]rune(p.Label)) > 34 {
			t.Errorf("label %q is too long", p.Label)
		}
	}
	g := newGear(t, s)
	t.Logf("depth %.1f mm, mass %.2f kg, inertia %.5f", part.Depth(g.Pieces())*1000, part.Mass(g.Pieces()), g.SpinningInertia())
	for _, p := range g.Pieces() {
		t.Logf("  %-42s %5.1f mm %6.3f kg up %5.1f mm", p.Label, p.Depth*1000, p.Mass, p.CGUp*1000)
	}
	r := g.Examine(rated(), part.Train{})
	for _, x := range r.Readings(nil) {
		if len([]rune(x.Label)) > 34 {
			t.Errorf("label %q is too long", x.Label)
		}
		t.Logf("  %s", x)
	}
	for _, c := range r.Checks(nil, 0.1) {
		if len([]rune(c.Label)) > 34 {
			t.Errorf("label %q is too long", c.Label)
		}
		t.Logf("  %-36s %-10s %s", c.Label, c.Verdict, c.Text())
		if c.Verdict == reading.Fails {
			t.Errorf("the default fails %s: %s", c.Label, c.Text())
		}
	}
	x := g.Transmit(15000, 8500*rpm)
	t.Logf("efficiency %.4f", x.Efficiency())
	if e := x.Efficiency(); e < 0.96 || e > 0.995 {
		t.Errorf("efficiency at the rated duty is %g", e)
	}
}

func TestImpossibleTeethAreRefusedByName(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Spec)
		names  string
	}{
		{"centre distance inside the base circles", func(s *Spec) { s.CentreDistance = param.Known(60e-3) }, "Centre distance"},
		{"centre distance far too large", func(s *Spec) { s.CentreDistance = param.Known(120e-3) }, "Centre distance"},
		{"pointed pinion", func(s *Spec) { s.PinionTeeth, s.PinionShift = 9, 1.2 }, "Pinion profile shift"},
		{"no working angle", func(s *Spec) {
			s.PinionTeeth, s.WheelTeeth, s.PinionShift, s.WheelShift = 9, 12, -0.6, -1
		}, "profile shift"},
		{"dip beyond the pinion", func(s *Spec) { s.Module, s.PinionTeeth, s.DipDepth = 1e-3, 17, 40e-3 }, "Dip depth"},
		{"oil that thickens", func(s *Spec) { s.ViscosityAt40 = s.ViscosityAt100 }, "Oil viscosity"},
		{"unlisted bearing", func(s *Spec) { s.PinionBearings = "x" }, "Pinion bearings"},
	} {
		s := Default()
		tc.change(&s)
		if _, err := New(s, rated()); err == nil || !strings.Contains(err.Error(), tc.names) {
			t.Errorf("%s: error is %v, want one naming %q", tc.name, err, tc.names)
		}
	}
}

func TestChecksCatchFaults(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Spec)
		key    string
		want   reading.Verdict
	}{
		{"few teeth unshifted", func(s *Spec) { s.PinionTeeth, s.PinionShift, s.PinionBearings = 12, 0, "6002" }, "gear.undercut_pinion", reading.Fails},
		{"common factor", func(s *Spec) { s.WheelTeeth = 57 }, "gear.hunting", reading.Thin},
		{"no backlash given", func(s *Spec) { s.Backlash = param.Slot{} }, "gear.backlash", reading.NotRated},
		{"backlash below the standard", func(s *Spec) { s.Backlash = param.Known(0.05e-3) }, "gear.backlash", reading.Fails},
		{"fast seal", func(s *Spec) { s.SealMaterial, s.PinionBearings = NBR, "6308" }, "gear.seal_speed", reading.Fails},
		{"hot oil", func(s *Spec) { s.FinFactor, s.StreamCooling, s.MountConductance = 1, 15, 0 }, "gear.oil_temperature", reading.Fails},
		{"shallow dip", func(s *Spec) { s.DipDepth = 1e-3 }, "gear.dip_depth", reading.Thin},
		{"bearings touch", func(s *Spec) { s.WheelPropellerBearing, s.PinionTeeth, s.WheelTeeth = "6308", 17, 41 }, "gear.bearing_seats", reading.Fails},
	} {
		s := Default()
		tc.change(&s)
		found := false
		for _, c := range newGear(t, s).Examine(rated(), part.Train{}).Checks(nil, 0.1) {
			if c.Key == tc.key {
				found = true
				if c.Verdict != tc.want {
					t.Errorf("%s: %s is %s, want %s (%s)", tc.name, tc.key, c.Verdict, tc.want, c.Text())
				}
			}
		}
		if !found {
			t.Errorf("%s: no check %s", tc.name, tc.key)
		}
	}
}

func TestOilBalancesAtTheRatedDuty(t *testing.T) {
	g := newGear(t, Default())
	if !g.sump.Balanced {
		t.Fatal("no balance")
	}
	if e := g.excess(g.cooling(rated()), rated(), g.sump.Temperature); math.Abs(e) > 0.5 {
		t.Errorf("heat shed and losses differ by %g W", e)
	}
	slow := rated()
	slow.Inflow = 0
	if r := g.Examine(slow, part.Train{}); r.Sump.Temperature <= g.sump.Temperature {
		t.Error("the oil must be hotter without a stream of air")
	}
}

func TestWithoutCoolingThereIsNoBalanceAndItSaysSo(t *testing.T) {
	s := Default()
	s.MountConductance, s.FinFactor, s.StillCooling = 0, 1, 5
	at := rated()
	at.Inflow, at.Power = 0, 40000
	g, err := New(s, at)
	if err != nil {
		t.Fatal(err)
	}
	r := g.Examine(at, part.Train{})
	x, _ := reading.Find(r.Readings(nil), "gear.oil_temperature")
	if r.Sump.Balanced || x.Known() {
		t.Errorf("balanced at %g K", r.Sump.Temperature)
	}
	if c, _ := reading.Worst(r.Checks(nil, 0.1)); c.Verdict != reading.Fails {
		t.Error("nothing fails")
	}
}

func TestTransmitIsWellBehaved(t *testing.T) {
	g := newGear(t, Default())
	for _, tc := range []struct{ power, speed float64 }{{0, 0}, {0, 200}, {1000, 0}, {1, 1000}, {-100, 300}, {200, 150}, {20000, 1300}} {
		x := g.Transmit(tc.power, tc.speed)
		if x.PowerOut < 0 || x.PowerOut > math.Max(tc.power, 0) || math.IsNaN(x.PowerOut) || math.IsNaN(x.SpeedOut) {
			t.Errorf("%v: %+v", tc, x)
		}
	}
	at := rated()
	x, r := g.Transmit(at.Power, at.CrankSpeed), g.Examine(at, part.Train{})
	if d := x.Loss() - r.Losses.Total(); math.Abs(d) > 0.1 {
		t.Errorf("transmission and examination differ by %g W", d)
	}
	if n := testing.AllocsPerRun(100, func() { g.Transmit(15000, 900) }); n != 0 {
		t.Errorf("Transmit allocates %g times", n)
	}
}

func TestLossesGrowWithSpeedAndTorque(t *testing.T) {
	g := newGear(t, Default())
	last := 0.0
	for n := 100.0; n < 1300; n += 50 {
		if l := g.law.at(10*n, n).Total(); l <= last {
			t.Fatalf("loss at %g rad/s is %g after %g", n, l, last)
		} else {
			last = l
		}
	}
	if g.law.at(20000, 900).Total() <= g.law.at(10000, 900).Total() {
		t.Error("more torque must lose more")
	}
}

func TestHullOfTwoCircles(t *testing.T) {
	equal := hull(1, 1, 2)
	if math.Abs(equal.area-(math.Pi+4)) > 1e-12 || math.Abs(equal.perimeter-(2*math.Pi+4)) > 1e-12 || math.Abs(equal.centreHeight-1) > 1e-12 {
		t.Errorf("equal circles: %+v", equal)
	}
	if inside := hull(0.1, 2, 1); inside.area != math.Pi*4 || inside.centreHeight != 1 {
		t.Errorf("small circle inside the large one: %+v", inside)
	}
}

func TestZeroResultDeclaresEverything(t *testing.T) {
	full := newGear(t, Default()).Examine(rated(), part.Train{}).Readings(nil)
	blank := reading.Blank(Result{}.Readings(nil), "no gear")
	if len(full) != len(blank) {
		t.Fatalf("%d readings against %d", len(full), len(blank))
	}
	for i := range full {
		if full[i].Key != blank[i].Key || full[i].Origin == "" && full[i].Known() {
			t.Errorf("reading %s, blank %s, source %q", full[i].Key, blank[i].Key, full[i].Origin)
		}
	}
	Result{}.Checks(nil, 0.1)
}

func TestSpinningInertiaCountsTheWheelMost(t *testing.T) {
	s := Default()
	light := newGear(t, s).SpinningInertia()
	s.WebFactor = 1
	solid := newGear(t, s).SpinningInertia()
	d := newGear(t, s).geometry.Driven.ReferenceDiameter
	disc := steelDensity * math.Pi / 32 * math.Pow(d, 4) * s.FaceWidth
	if !(disc < solid && light < solid && light > solid/2) {
		t.Errorf("light %g, solid %g, bare disc %g", light, solid, disc)
	}
}

func TestDepthIsTheSumOfItsParts(t *testing.T) {
	s := Default()
	g := newGear(t, s)
	want := s.Coupling.Depth + s.CaseWall + 15e-3 + 2*s.SideGap + s.FaceWidth + 16e-3 + s.SealWidth + s.CoverDepth + s.FlangeThickness
	if d := part.Depth(g.Pieces()); math.Abs(d-want) > 1e-12 {
		t.Errorf("depth is %g, want %g", d, want)
	}
	mass := part.Mass(g.Pieces())
	s.OilVolume += 100e-6
	if more := part.Mass(newGear(t, s).Pieces()) - mass; math.Abs(more-100e-6*s.OilDensity) > 1e-9 {
		t.Errorf("100 cm³ of oil weigh %g kg", more)
	}
}

func TestBacklashOpensWithHeat(t *testing.T) {
	g := newGear(t, Default())
	warm, hot := g.backlash(293.15, 353.15), g.backlash(263.15, 373.15)
	if !(warm.Running > warm.Drawn && hot.Running > warm.Running && warm.Least == warm.Drawn && hot.Least < hot.Drawn) {
		t.Errorf("warm %+v, hot %+v", warm, hot)
	}
}

func TestChurningHasNoStepBetweenRegimes(t *testing.T) {
	g := newGear(t, Default())
	c := g.law.churning
	for _, re := range []float64{slowChurning, fastChurning} {
		n := re / c.reynoldsPerSpeed
		below, above := c.power(n*0.999999, math.Log(n*0.999999)), c.power(n*1.000001, math.Log(n*1.000001))
		if math.Abs(below-above) > 1e-4*above {
			t.Errorf("%g W steps to %g W at Reynolds number %g", below, above, re)
		}
	}
}

func TestOilLifeHalvesEveryTenKelvin(t *testing.T) {
	s := Default()
	for _, tc := range []struct{ celsius, hours float64 }{{60, 2500}, {90, 2500}, {100, 1250}, {110, 625}, {105, 2500 / math.Pow(2, 1.5)}} {
		if got := s.oilLife(tc.celsius+celsiusZero) / 3600; math.Abs(got-tc.hours) > 1e-6 {
			t.Errorf("at %g °C %g h, want %g", tc.celsius, got, tc.hours)
		}
	}
}

// A block of oil 26 mm long and 11 mm deep: up to atan(22/26) it only turns.
func TestDipOfATiltedCase(t *testing.T) {
	s := Default()
	s.TipGap = 5e-3
	g := newGear(t, s)
	for _, tc := range []struct{ degrees, dip float64 }{{0, 6}, {40, 6}, {45, (math.Sqrt(2*11*26)-13)*1 - 5}, {60, (math.Sqrt(2*11*26/math.Sqrt(3))-13)*math.Sqrt(3) - 5}} {
		if got := g.tiltedDip(tc.degrees*degree) * 1000; math.Abs(got-tc.dip) > 1e-9 {
			t.Errorf("at %g degrees %g mm, want %g", tc.degrees, got, tc.dip)
		}
	}
}

func TestCaseDepthAgainstTheRecommendation(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Spec)
		want   reading.Verdict
		says   string
	}{
		{"none given", func(*Spec) {}, reading.NotRated, "Case depth as drawn"},
		{"right", func(s *Spec) { s.CaseDepth = param.Known(0.35e-3) }, reading.Holds, ""},
		{"thin", func(s *Spec) { s.CaseDepth = param.Known(0.25e-3) }, reading.Thin, ""},
		{"deep", func(s *Spec) { s.CaseDepth = param.Known(0.5e-3) }, reading.Thin, ""},
		{"soft", func(s *Spec) {
			s.PinionMaterial, s.PinionHardness, s.WheelMaterial, s.WheelHardness = HardenedAlloy, 300, HardenedAlloy, 280
		}, reading.NotRated, "as hard inside"},
		{"two ways", func(s *Spec) { s.WheelMaterial = Nitrided }, reading.NotRated, "two ways"},
		{"induction", func(s *Spec) {
			s.PinionMaterial, s.PinionHardness, s.WheelMaterial, s.WheelHardness = Induction, 600, Induction, 600
		}, reading.NotRated, "this treatment"},
		{"nitrided", func(s *Spec) {
			s.PinionMaterial, s.WheelMaterial, s.CaseDepth = Nitrided, Nitrided, param.Known(0.3e-3)
		}, reading.Holds, ""},
		{"soft wheel", func(s *Spec) {
			s.WheelMaterial, s.WheelHardness, s.CaseDepth = HardenedAlloy, 280, param.Known(0.29e-3)
		}, reading.Thin, ""},
	} {
		s := Default()
		tc.change(&s)
		r := newGear(t, s).Examine(rated(), part.Train{})
		c := r.depthCheck()
		if c.Verdict != tc.want || !strings.Contains(c.Text(), tc.says) {
			t.Errorf("%s: %s, %s", tc.name, c.Verdict, c.Text())
		}
	}
}
