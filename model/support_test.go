package model

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/reading"
)

// changed is a variant of the sample with other settings.
func changed(t *testing.T, name string, change ...[2]string) Outcome {
	t.Helper()
	s := Sample()
	v := s.Variants[s.Index(name)].Clone()
	for _, c := range change {
		p, ok := param.Find(v.Sections(), c[0])
		if !ok {
			t.Fatalf("no parameter %s", c[0])
		}
		if err := p.Set(c[1]); err != nil {
			t.Fatal(err)
		}
	}
	return Evaluate(s, &v)
}

var bearingKeys = []string{"prop_side", "engine_side", "pinion_prop_side", "pinion_engine_side"}

func TestEveryBearingIsListedAndRated(t *testing.T) {
	for name, o := range sampleOutcomes(t) {
		want := 2
		if strings.HasPrefix(name, "Gear") {
			want = 4
		}
		if len(o.Bearings) != want {
			t.Fatalf("%s: %d bearings", name, len(o.Bearings))
		}
		for i, b := range o.Bearings {
			if got := value(t, o, "bearing.life_"+bearingKeys[i]); math.Abs(got-b.Life.Value/3600) > 1e-9*got || b.Size == "" || b.Name == "" {
				t.Errorf("%s: %+v, life %g h", name, b, got)
			}
			// Imbalance, of any direction, is in the reading and not in the table.
			if got := value(t, o, "bearing.load_"+bearingKeys[i]); b.Radial() > got+1e-9 || b.Radial() < 0.9*got {
				t.Errorf("%s: %s: %g N in the table, %g N read", name, b.Name, b.Radial(), got)
			}
			if !(b.SpeedShare.Value > 0 && b.SpeedShare.Value < 1) {
				t.Errorf("%s: %s at %g of its speed", name, b.Name, b.SpeedShare.Value)
			}
		}
	}
}

func TestOnlyLocatingBearingsPushBack(t *testing.T) {
	o := changed(t, "Gear 190")
	thrust, push := value(t, o, "propeller.static_thrust_isolated"), value(t, o, "gearshaft.axial_with_thrust")
	if push >= 0 || math.Abs(push+value(t, o, "gear.axial_force")) > 1e-9 {
		t.Errorf("the sample's helix pushes %g N with the thrust", push)
	}
	for i, want := range []float64{thrust + push, 0, 0, -push} {
		if got := o.Bearings[i].Axial; math.Abs(got-want) > 1e-6 {
			t.Errorf("%s takes %g N forward, want %g", o.Bearings[i].Name, got, want)
		}
	}
}

// Hand and turn each turn the push round; both together leave it.
func TestHandOfTheHelix(t *testing.T) {
	const left, anticlockwise = "left hand", "anticlockwise"
	for _, tc := range []struct {
		change [][2]string
		with   bool
	}{
		{nil, false},
		{[][2]string{{"drive.gear.pinion_hand", left}}, true},
		{[][2]string{{"engine.turns", anticlockwise}}, true},
		{[][2]string{{"drive.gear.pinion_hand", left}, {"engine.turns", anticlockwise}}, false},
	} {
		o := changed(t, "Gear 190", tc.change...)
		if push := value(t, o, "gearshaft.axial_with_thrust"); push > 0 != tc.with {
			t.Errorf("%v: push %g", tc.change, push)
		}
		if c := checked(t, o, "gearshaft.helix_hand"); (c.Verdict == reading.Thin) != tc.with || c.Verdict == reading.Fails {
			t.Errorf("%v: %s", tc.change, c.Verdict)
		}
	}
	for _, c := range changed(t, "Gear 190", [2]string{"drive.gear.helix_angle", "0"}, [2]string{"drive.gear.pinion_hand", left}).Checks {
		if c.Key == "gearshaft.helix_hand" {
			t.Errorf("spur teeth: %s", c.Verdict)
		}
	}
}

func checked(t *testing.T, o Outcome, key string) reading.Check {
	t.Helper()
	for _, c := range o.Checks {
		if c.Key == key {
			return c
		}
	}
	t.Fatalf("%s: no check %s", o.Variant, key)
	return reading.Check{}
}

// A gear that cannot be built or finds no working point owes the same keys,
// with the reason.
func TestGearShaftsThatCannotBeRatedSayWhy(t *testing.T) {
	whole := changed(t, "Gear 190")
	for what, change := range map[string][][2]string{
		"inside the base circles": {{"drive.gear.centre_distance", "30 mm"}},
		"load far too heavy":      {{"propeller.pitch", "1100 mm"}, {"propeller.diameter", "1700 mm"}},
		"boss past the root":      {{"propeller.boss_diameter", "240 mm"}},
	} {
		o := changed(t, "Gear 190", change...)
		if len(o.Bearings) != 0 {
			t.Errorf("%s: %d bearings listed", what, len(o.Bearings))
		}
		for _, r := range whole.Readings {
			if part, _, _ := strings.Cut(r.Key, "."); part != "bearing" && part != "gearshaft" && part != "crank" {
				continue
			}
			if x, ok := o.Reading(r.Key); !ok || x.Known() || x.Why == "" {
				t.Errorf("%s: %s is %+v", what, r.Key, x)
			}
		}
		for _, c := range o.Checks {
			if part, _, _ := strings.Cut(c.Key, "."); part == "bearing" || part == "gearshaft" {
				t.Errorf("%s: check %s is %s", what, c.Key, c.Verdict)
			}
		}
	}
}

// The belt bends the crank by as much as the farther main bearing holds down:
// its force times the spacing is the overhang moment that the belt tells.
func TestForcesOnTheCranksBearings(t *testing.T) {
	if x, _ := changed(t, "Belt 190").Reading("crank.load_near"); x.Known() || !strings.Contains(x.Why, "not given") {
		t.Errorf("%+v", x)
	}
	for _, name := range []string{"Belt 190", "Toothed 190"} {
		o := changed(t, name, [2]string{"engine.main_bearing_spacing", "60 mm"})
		key := "belt.overhang_moment"
		if strings.HasPrefix(name, "Toothed") {
			key = "toothedbelt.overhang_moment"
		}
		moment := value(t, o, key)
		if far := value(t, o, "crank.load_far_greatest"); far*0.060 < moment*(1-1e-9) || far*0.060 > 1.3*moment {
			t.Errorf("%s: the farther bearing holds %g N·m, the belt bends with %g", name, far*0.060, moment)
		}
		if len(o.Bearings) != 4 || !strings.HasPrefix(o.Bearings[2].Name, "crank") || o.Bearings[2].Life.Known {
			t.Fatalf("%s: %+v", name, o.Bearings)
		}
		// What pulls the axle to the crank pulls the crank to the axle.
		crank := o.Bearings[2].Along + o.Bearings[3].Along
		if axle := o.Bearings[0].Along + o.Bearings[1].Along; crank >= 0 || math.Abs(crank+axle) > 0.05*axle {
			t.Errorf("%s: %g N on the crank's bearings, %g N on the axle's", name, crank, axle)
		}
	}
	if x, _ := changed(t, "Gear 190").Reading("crank.load_near"); !x.Absent {
		t.Errorf("a coupling passes a side force: %+v", x)
	}
}

func TestPinionOnTheCrank(t *testing.T) {
	overhung := [][2]string{{"drive.gear.pinion_place", "overhung"}, {"drive.gear.pinion_span", "60 mm"}, {"drive.gear.pinion_offset", "25 mm"},
		{"drive.gear_shafts.pinion_on", "the engine's crank"}, {"engine.main_bearing_spacing", "60 mm"}}
	o := changed(t, "Gear 190", overhung...)
	if x, _ := o.Reading("crank.load_near"); x.Known() || !strings.Contains(x.Why, "Drive face to nearer main bearing") {
		t.Errorf("%+v", x)
	}
	o = changed(t, "Gear 190", append(overhung, [2]string{"engine.drive_face_to_main_bearing", "10 mm"})...)
	mesh := math.Hypot(value(t, o, "gear.tangential_force"), value(t, o, "gear.radial_force"))
	if off := value(t, o, "crank.load_near") - value(t, o, "crank.load_far"); math.Abs(off/mesh-1) > 0.02 {
		t.Errorf("the two differ by %g N, the mesh presses with %g", off, mesh)
	}
	far := changed(t, "Gear 190", append(overhung, [2]string{"engine.drive_face_to_main_bearing", "40 mm"})...)
	if more := value(t, far, "crank.load_far") - value(t, o, "crank.load_far"); math.Abs(more/(mesh*30/60)-1) > 0.02 {
		t.Errorf("30 mm farther puts %g N more on the farther bearing, the mesh presses with %g", more, mesh)
	}
	if len(o.Bearings) != 4 || o.Bearings[2].Size != "" {
		t.Errorf("%+v", o.Bearings)
	}
	if x, _ := o.Reading("bearing.life_pinion_prop_side"); x.Known() {
		t.Errorf("%+v", x)
	}
}

// The couple of two blades wears as much as its cubic mean, 2|cos φ| of the
// mean over a revolution: summed here by steps. In turns throughout, the
// bearing that takes no thrust bears straight flight and that.
func TestTwoBladesWearTheBearings(t *testing.T) {
	const steps = 20000
	sum := 0.0
	for i := range steps {
		x := 2 * math.Abs(math.Cos(2*math.Pi*(float64(i)+0.5)/steps))
		sum += x * x * x / steps
	}
	over := math.Cbrt(sum)
	o := changed(t, "Belt 190", [2]string{"drive.support.turning_share", "100"}, [2]string{"drive.support.application_factor", "1"})
	running, turning := value(t, o, "bearing.load_engine_side"), value(t, o, "bearing.load_turning_engine_side")
	want := running + over*(turning-running)
	if got := value(t, o, "bearing.equivalent_load_engine_side"); math.Abs(got/want-1) > 1e-6 || over < 1.5 {
		t.Errorf("two blades: equivalent load %g N, want %g", got, want)
	}
	o = changed(t, "Belt 190", [2]string{"drive.support.turning_share", "100"}, [2]string{"drive.support.application_factor", "1"}, [2]string{"propeller.blades", "3"})
	if got, want := value(t, o, "bearing.equivalent_load_engine_side"), value(t, o, "bearing.load_turning_engine_side"); math.Abs(got/want-1) > 1e-6 {
		t.Errorf("three blades: equivalent load %g N, want %g", got, want)
	}
}

// A pinion fast on the crank turns the propeller at idle, clutch or no clutch.
func TestNoClutchOnTheCrank(t *testing.T) {
	on := [][2]string{{"drive.gear.pinion_place", "overhung"}, {"drive.gear.pinion_span", "60 mm"}, {"drive.gear.pinion_offset", "25 mm"}}
	own := changed(t, "Gear 190", on...)
	on = append(on, [2]string{"drive.gear_shafts.pinion_on", "the engine's crank"})
	clutched := changed(t, "Gear 190", on...)
	rigid := changed(t, "Gear 190", append(on, [2]string{"drive.gear.coupling_kind", "rigid"})...)
	for _, tc := range []struct {
		o          Outcome
		key        string
		want       reading.Verdict
		whatAnswer string
	}{
		{own, "drive.idle_propeller", reading.Holds, "own shaft"},
		{clutched, "drive.idle_propeller", reading.Thin, "clutch on the crank"},
		{clutched, "drive.crank_coupling", reading.Fails, "clutch on the crank"},
		{rigid, "drive.crank_coupling", reading.Holds, "rigid"},
		{rigid, "drive.idle_propeller", reading.Thin, "rigid"},
	} {
		if c := anyspec.Check(t, tc.o.Checks, tc.key); c.Verdict != tc.want {
			t.Errorf("%s: %s is %s", tc.whatAnswer, tc.key, c.Verdict)
		}
	}
	for _, c := range clutched.Checks {
		if strings.HasPrefix(c.Key, "coupling.clutch") || c.Key == "coupling.level_flight" {
			t.Errorf("%s of a clutch that is not there", c.Key)
		}
	}
	if value(t, clutched, "drive.idle_propeller_speed") == 0 {
		t.Error("the propeller stands at idle")
	}
}

func TestDirectDriveTurnsOnTheEnginesBearings(t *testing.T) {
	o := changed(t, "Belt 190", [2]string{"drive.kind", "direct"}, [2]string{"propeller.diameter", "750 mm"}, [2]string{"propeller.pitch", "300 mm"})
	if x, _ := o.Reading("bearing.life_prop_side"); !x.Absent || len(o.Bearings) != 0 {
		t.Errorf("%+v, %d bearings", x, len(o.Bearings))
	}
}
