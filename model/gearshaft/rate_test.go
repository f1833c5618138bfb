package gearshaft

import (
	"math"
	"strings"
	"testing"

	"backspan/model/gear"
	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/shaft"
)

const rpm = math.Pi / 30

// duty is full throttle standing of an engine of about 15 kW.
func duty() part.Duty {
	return part.Duty{Power: 15000, CrankSpeed: 8000 * rpm, AirTemperature: 298.15, AirDensity: 1.18, Inflow: 10}
}

func shafting(t testing.TB, s gear.Spec) gear.Shafting {
	t.Helper()
	g, err := gear.New(s, duty())
	if err != nil {
		t.Fatal(err)
	}
	return g.Examine(duty(), part.Train{}).Shafting()
}

func known(t *testing.T, r Result, key string) float64 {
	t.Helper()
	x, ok := reading.Find(r.Readings(nil), key)
	if !ok || !x.Known() {
		t.Fatalf("%s: %+v", key, x)
	}
	return x.Value
}

func near(t *testing.T, what string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-9*math.Max(1, math.Abs(want)) {
		t.Errorf("%s is %g, want %g", what, got, want)
	}
}

func TestDefaultHolds(t *testing.T) {
	l := threeToOneLoads()
	l.Speed = 8000 * rpm * 19 / 56
	r := Rate(Default(), shafting(t, gear.Default()), part.Clockwise, l)
	for _, c := range r.Checks(nil, 0.1) {
		if c.Verdict == reading.Fails || c.Verdict == reading.NotRated || c.Past {
			t.Errorf("%s: %s %s", c.Key, c.Verdict, c.Text())
		}
	}
	s := Default()
	anyspec.HoldDefaults(t, s.Params(false))
}

// The bearings stand where the gear's own pieces leave them.
func TestPlacesFollowFromThePieces(t *testing.T) {
	s := gear.Default()
	g, err := gear.New(s, duty())
	if err != nil {
		t.Fatal(err)
	}
	x := g.Examine(duty(), part.Train{}).Shafting()
	depth := map[string]float64{}
	total := 0.0
	for _, p := range g.Pieces() {
		depth[p.Key] = total + p.Depth/2
		total += p.Depth
	}
	near(t, "drive face", x.Places.DriveFace, total)
	near(t, "gears", x.Places.Gears, total-depth["drive.gears"])
	near(t, "flange front", x.Places.FlangeFront, s.FlangeThickness)
	near(t, "prop-side bearing", x.Places.WheelPropBearing, x.Places.Gears-s.FaceWidth/2-s.SideGap-x.WheelProp.Width/2)
	near(t, "engine-side bearing", x.Places.WheelEngineBearing, x.Places.Gears+s.FaceWidth/2+s.SideGap+x.WheelEngine.Width/2)
	near(t, "pinion span", x.Places.PinionEngineBearing-x.Places.PinionPropBearing, s.FaceWidth+2*s.SideGap+x.Pinion.Width)
	s.PinionPlace, s.PinionOffset, s.PinionSpan = gear.Overhung, 0.02, param.Known(0.05)
	x = shafting(t, s)
	near(t, "nearer bearing of an overhung pinion", x.Places.PinionPropBearing-x.Places.Gears, 0.02)
	near(t, "farther one", x.Places.PinionEngineBearing-x.Places.Gears, 0.07)
}

// A pinion of 1000 N tangential force midway between its bearings.
func TestSpurPinionLoadsItsBearingsAlike(t *testing.T) {
	g := threeToOne(t)
	g.Axial, g.Helical = 0, false
	r := Rate(Default(), g, part.Clockwise, threeToOneLoads())
	want := math.Hypot(500, g.Radial/2)
	near(t, "pinion, propeller side", known(t, r, "bearing.load_pinion_prop_side"), want)
	near(t, "pinion, engine side", known(t, r, "bearing.load_pinion_engine_side"), want)
	near(t, "push with thrust", known(t, r, "gearshaft.axial_with_thrust"), 0)
	for _, c := range r.Checks(nil, 0.1) {
		if c.Key == "gearshaft.helix_hand" {
			t.Errorf("spur teeth have a hand: %+v", c)
		}
	}
}

func TestHandAndTurnSettleThePush(t *testing.T) {
	for _, tc := range []struct {
		hand gear.Hand
		turn part.Turn
		push float64
		want reading.Verdict
	}{
		{gear.RightHand, part.Clockwise, -270, reading.Holds}, {gear.LeftHand, part.Clockwise, 270, reading.Thin},
		{gear.RightHand, part.Anticlockwise, 270, reading.Thin}, {gear.LeftHand, part.Anticlockwise, -270, reading.Holds},
	} {
		g := threeToOne(t)
		g.Hand = tc.hand
		r := Rate(Default(), g, tc.turn, threeToOneLoads())
		near(t, "push with thrust", known(t, r, "gearshaft.axial_with_thrust"), tc.push)
		near(t, "net", known(t, r, "gearshaft.axial_net"), 650+tc.push)
		near(t, "locating bearing", r.Bearings[wheelProp].Axial, 650+tc.push)
		c := anyspec.Check(t, r.Checks(nil, 0.1), "gearshaft.helix_hand")
		if c.Verdict != tc.want || tc.want == reading.Thin && !strings.Contains(c.Cure, "Hand of the pinion's helix") {
			t.Errorf("%s, %s: %+v", tc.hand, tc.turn, c)
		}
	}
}

func TestOnlyLocatingBearingsTakeThrust(t *testing.T) {
	s := Default()
	s.WheelLocating, s.PinionLocating = shaft.EngineSide, shaft.PropSide
	r := Rate(s, threeToOne(t), part.Clockwise, threeToOneLoads())
	for i, want := range []float64{0, 380, 270, 0} {
		near(t, names[i], r.Bearings[i].Axial, want)
	}
	rows := r.Rows()
	near(t, "forward on the wheel", rows[wheelEngine].Axial, 380)
	near(t, "forward on the pinion", rows[pinionProp].Axial, 270)
}

// The peak of the torque from idle up counts where it passes the working
// point's, and an unknown pulsation as the application factor.
func TestTorqueThatIsCounted(t *testing.T) {
	g := threeToOne(t)
	g.Pulsation.Peak, g.Pulsation.PeakSpeed = 60, 8400*rpm/4
	x := newTwist(&g, 8400*rpm)
	for what, v := range map[string][2]float64{"mean": {x.mean, 20}, "swing": {x.swing, 5}, "greatest": {x.greatest(), 60}, "mean there": {x.peakMean, 20.0 / 16}, "swing there": {x.peakSwing, 60 - 20.0/16}} {
		near(t, what, v[0], v[1])
	}
	r := Rate(Default(), g, part.Clockwise, threeToOneLoads())
	near(t, "flange torque", r.Flange.Torque, 180)
	if calm := Rate(Default(), threeToOne(t), part.Clockwise, threeToOneLoads()); !(r.Wheel.Fatigue.Value < calm.Wheel.Fatigue.Value) {
		t.Error("a peak below the working point tires nothing")
	}
	g.Pulsation.Why = "not known"
	x = newTwist(&g, 8400*rpm)
	near(t, "unknown swing", x.swing, 15)
	near(t, "unknown greatest", x.greatest(), 35)
}

func TestChecksFailWhenTheyShould(t *testing.T) {
	for _, tc := range []struct {
		key    string
		change func(*Spec, *gear.Shafting, *shaft.Loads)
		want   reading.Verdict
		says   string
	}{
		{"bearing.life_prop_side", func(s *Spec, _ *gear.Shafting, l *shaft.Loads) { l.Thrust = 6000 }, reading.Fails, "Wheel bearing, propeller side"},
		{"bearing.life_engine_side", func(s *Spec, g *gear.Shafting, l *shaft.Loads) { s.LifeAsked, l.GyroCouple = 20000*3600, 200 }, reading.Fails, "Wheel bearing, engine side"},
		{"bearing.life_pinion_prop_side", func(s *Spec, g *gear.Shafting, _ *shaft.Loads) { g.Tangential = 9000 }, reading.Fails, "Pinion bearings"},
		{"bearing.life_pinion_engine_side", func(s *Spec, g *gear.Shafting, _ *shaft.Loads) { g.Axial = 5000 }, reading.Fails, "Pinion bearings"},
		{"bearing.static_safety", func(_ *Spec, _ *gear.Shafting, l *shaft.Loads) { l.GyroPeak = 600 }, reading.Fails, "Wheel bearing"},
		{"bearing.speed_pinion", func(_ *Spec, _ *gear.Shafting, l *shaft.Loads) { l.Speed *= 3 }, reading.Fails, "Pinion bearings"},
		{"bearing.speed_prop_side", func(_ *Spec, _ *gear.Shafting, l *shaft.Loads) { l.Speed *= 6 }, reading.Fails, "Wheel bearing, propeller side"},
		{"bearing.speed_engine_side", func(_ *Spec, _ *gear.Shafting, l *shaft.Loads) { l.Speed *= 7 }, reading.Fails, "Wheel bearing, engine side"},
		{"bearing.least_load", func(_ *Spec, g *gear.Shafting, _ *shaft.Loads) { g.Tangential, g.Radial, g.Axial = 50, 20, 0 }, reading.Thin, ""},
		{"bearing.axial_load", func(_ *Spec, _ *gear.Shafting, l *shaft.Loads) { l.Thrust = 7000 }, reading.Thin, "propeller side"},
		{"bearing.axial_load_pinion", func(_ *Spec, g *gear.Shafting, _ *shaft.Loads) { g.Axial = 4000 }, reading.Thin, "Pinion bearings"},
		{"gearshaft.pinion_room", func(_ *Spec, g *gear.Shafting, _ *shaft.Loads) { g.FaceWidth = 0.030 }, reading.Fails, "Pinion bearing span"},
		{"gearshaft.fatigue_safety_pinion", func(s *Spec, g *gear.Shafting, _ *shaft.Loads) { g.Pulsation.Most = 170 }, reading.Fails, "seat"},
		{"gearshaft.fatigue_safety_wheel", func(s *Spec, g *gear.Shafting, _ *shaft.Loads) { s.FlangeStep = 0.015 }, reading.Fails, "flange seat"},
		{"gearshaft.yield_safety_pinion", func(s *Spec, g *gear.Shafting, _ *shaft.Loads) { s.PinionYield, g.Pulsation.Most = 200e6, 80 }, reading.Fails, "Yield"},
		{"gearshaft.yield_safety_wheel", func(s *Spec, g *gear.Shafting, _ *shaft.Loads) { g.Pulsation.Most = 420 }, reading.Fails, "Yield"},
		{"gearshaft.mesh_slope", func(_ *Spec, g *gear.Shafting, l *shaft.Loads) { l.GyroPeak = 4000 }, reading.Thin, "Crowned"},
		{"gearshaft.shift", func(_ *Spec, g *gear.Shafting, _ *shaft.Loads) { g.Tangential = 3e6 }, reading.Thin, "bores"},
		{"gearshaft.bearing_slope_wheel", func(_ *Spec, _ *gear.Shafting, l *shaft.Loads) { l.GyroPeak = 2000 }, reading.Thin, "Wheel bearing"},
		{"gearshaft.bearing_slope_pinion", func(_ *Spec, g *gear.Shafting, _ *shaft.Loads) { g.Tangential = 9e4 }, reading.Thin, "Pinion bearings"},
		{"gearshaft.coupling_seat", func(s *Spec, _ *gear.Shafting, _ *shaft.Loads) { s.Coupling.NutForce = 3000 }, reading.Fails, "Taper nut's force, coupling"},
		{"gearshaft.wheel_seat", func(s *Spec, _ *gear.Shafting, _ *shaft.Loads) { s.Wheel.Fit, s.Wheel.Pressure = Keyed, 50e6 }, reading.Fails, "Wheel held by"},
		{"gearshaft.flange_seat_room", func(s *Spec, _ *gear.Shafting, _ *shaft.Loads) { s.FlangeSeatLength = 0.0221 }, reading.Fails, "Flange seat, length"},
		{"gearshaft.coupling_seat_room", func(s *Spec, _ *gear.Shafting, _ *shaft.Loads) { s.CouplingSeatLength = 0.0571 }, reading.Fails, "Coupling depth"},
		{"gearshaft.flange_seat", func(s *Spec, _ *gear.Shafting, _ *shaft.Loads) { s.FlangeSeatLength = 0.003 }, reading.Fails, "Flange seat, length"},
		{"gearshaft.flange_seat", func(s *Spec, _ *gear.Shafting, _ *shaft.Loads) { s.SplineModule = 0.005 }, reading.NotRated, ""},
		{"gearshaft.flange_seat", func(s *Spec, _ *gear.Shafting, _ *shaft.Loads) { s.Flange.Fit, s.FlangeSeatLength = Keyed, 0.005 }, reading.NotRated, ""},
	} {
		s, g, l := Default(), threeToOne(t), threeToOneLoads()
		tc.change(&s, &g, &l)
		c := anyspec.Check(t, Rate(s, g, part.Clockwise, l).Checks(nil, 0.1), tc.key)
		if c.Verdict != tc.want || !strings.Contains(c.Cure, tc.says) {
			t.Errorf("%s: %s %s %q, want %s", tc.key, c.Verdict, c.Text(), c.Cure, tc.want)
		}
	}
}

// A key fails in the weaker of shear and pressure; a hub of one piece is not
// rated apart from its shaft and asks for nothing.
func TestKeyAndOnePiece(t *testing.T) {
	s := Default()
	s.Wheel.Fit, s.Coupling.Fit = Keyed, Integral
	r := Rate(s, threeToOne(t), part.Clockwise, threeToOneLoads())
	pressure, shear := known(t, r, "gearshaft.wheel_seat_pressure"), known(t, r, "gearshaft.wheel_key_shear")
	near(t, "safety", known(t, r, "gearshaft.wheel_seat_safety"), math.Min(s.Wheel.Pressure/pressure, 0.577*s.KeyYield/shear))
	if x, _ := reading.Find(r.Readings(nil), "gearshaft.coupling_seat_safety"); x.Why != onePiece {
		t.Errorf("%+v", x)
	}
	for _, c := range r.Checks(nil, 0.1) {
		if strings.HasPrefix(c.Key, "gearshaft.coupling_seat") {
			t.Errorf("%+v", c)
		}
	}
}

// A pinion on the crank leaves two bearings, and its push to the engine's.
func TestPinionOnTheCrank(t *testing.T) {
	s, g := Default(), threeToOne(t)
	s.PinionOn = EngineCrank
	if own := Rate(s, g, part.Clockwise, threeToOneLoads()); len(own.Rows()) != 4 || own.CrankPull() != (shaft.CrankPull{}) {
		t.Error("a pinion between bearings sits on the crank")
	}
	g.Overhung = true
	r := Rate(s, g, part.Clockwise, threeToOneLoads())
	p := r.CrankPull()
	near(t, "pull", p.Steady.Size(), math.Hypot(g.Tangential, g.Radial))
	near(t, "greatest", p.Greatest, 1.25*p.Steady.Size())
	near(t, "behind the drive face", p.Behind, g.Places.DriveFace-g.Places.Gears)
	near(t, "axial", p.Axial, 270)
	if len(r.Rows()) != 2 {
		t.Errorf("%d bearings", len(r.Rows()))
	}
	near(t, "survival", r.Survival, r.Bearings[wheelProp].Survival*r.Bearings[wheelEngine].Survival)
	for _, key := range []string{"bearing.life_pinion_prop_side", "bearing.load_pinion_engine_side", "gearshaft.fatigue_safety_pinion", "gearshaft.mesh_slope", "gearshaft.coupling_seat_safety"} {
		if x, ok := reading.Find(r.Readings(nil), key); !ok || x.Why != onCrank {
			t.Errorf("%s: %+v", key, x)
		}
	}
	for _, c := range r.Checks(nil, 0.1) {
		if rated := c.Verdict != reading.NotRated; rated && strings.Contains(c.Key, "pinion") {
			t.Errorf("%s is rated", c.Key)
		}
	}
}

func TestNothingTurnsNothingRated(t *testing.T) {
	g := threeToOne(t)
	g.Torque, g.Tangential, g.Radial, g.Axial, g.Pulsation = 0, 0, 0, 0, gear.MeshPulsation{Why: "no torque passes at this point"}
	r := Rate(Default(), g, part.Clockwise, shaft.Loads{})
	for _, key := range []string{"bearing.life_prop_side", "bearing.life_pinion_prop_side", "bearing.static_safety", "gearshaft.fatigue_safety_wheel", "gearshaft.flange_seat_safety"} {
		if x, _ := reading.Find(r.Readings(nil), key); x.Known() || x.Why == "" {
			t.Errorf("%+v", x)
		}
	}
	if len(Result{}.Readings(nil)) != len(r.Readings(nil)) {
		t.Error("the zero result declares other readings")
	}
}

// A pane of 46 columns, that of a screen of 120, shows labels of up to 30 beside
// figures, and label and word together up to 43.
func TestParametersFitThePane(t *testing.T) {
	s := Default()
	for _, p := range s.Params(true) {
		label := len([]rune(p.Label))
		if label > 30 {
			t.Errorf("%s: %q is %d long", p.Key, p.Label, label)
		}
		for _, word := range p.Options {
			if whole := label + len([]rune(word)); whole > 43 {
				t.Errorf("%s: %q with %q is %d long", p.Key, p.Label, word, whole)
			}
		}
	}
}

func TestLabelsFitTheForm(t *testing.T) {
	r := Rate(Default(), threeToOne(t), part.Clockwise, threeToOneLoads())
	seen := map[string]bool{}
	for _, x := range r.Readings(nil) {
		if len([]rune(x.Label)) > 34 || seen[x.Label] || x.Method == "" || x.Origin == "" {
			t.Errorf("%s: %q %q %q", x.Key, x.Label, x.Method, x.Origin)
		}
		seen[x.Label] = true
	}
	for _, c := range r.Checks(nil, 0.1) {
		if len([]rune(c.Label)) > 34 || c.Verdict != reading.NotRated && (c.Origin == "" || c.Cure == "") {
			t.Errorf("%s: %q", c.Key, c.Label)
		}
	}
}

// BenchmarkGearBearingShaft is a gear designed and examined with its shafts
// and bearings.
func BenchmarkGearBearingShaft(b *testing.B) {
	spec, own, l, at := gear.Default(), Default(), threeToOneLoads(), duty()
	b.ReportAllocs()
	for b.Loop() {
		g, err := gear.New(spec, at)
		if err != nil {
			b.Fatal(err)
		}
		Rate(own, g.Examine(at, part.Train{}).Shafting(), part.Clockwise, l)
	}
}

// BenchmarkRate is the shafts and bearings alone.
func BenchmarkRate(b *testing.B) {
	own, g, l := Default(), threeToOne(b), threeToOneLoads()
	b.ReportAllocs()
	for b.Loop() {
		Rate(own, g, part.Clockwise, l)
	}
}
