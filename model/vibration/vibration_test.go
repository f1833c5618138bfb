package vibration

import (
	"math"
	"strings"
	"testing"
	"unicode/utf8"

	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/unit"
)

// standing is an invented belt machine of 190 cm³.
func standing() Duty {
	d := Duty{
		Parts: []Part{
			{Mass: 9.6, X: 0.18, Z: 0.2, Roll: 0.08, Pitch: 0.07, Yaw: 0.07}, {Mass: 1.8, X: 0.29, Z: 0.33, Roll: 0.02, Pitch: 0.01, Yaw: 0.01},
			{Mass: 0.7, X: 0.33, Z: 0.34, Pitch: 0.03, Yaw: 0.03}, {Mass: 1.6, X: 0.17, Z: 0.02},
		},
		MountFace: 0.09, CrankAxis: 0.164, Cylinder: 0.178, Plate: 0.32, PropellerAxis: 0.34, PropellerRadius: 0.65, TipGap: 0.075, GuardAhead: 0.1,
		Thrust: 714, Torque: 55, Cylinders: 1, Reciprocating: 0.2, CrankRadius: 0.02775, Rod: 0.105, CrankSign: 1,
		Working: unit.RPM.SI(7700), Idle: unit.RPM.SI(1900),
		Pulsation: part.Pulsation{Mean: 20, Count: 1},
	}
	d.Pulsation.Harmonics[0] = part.Harmonic{Order: 1, Cos: 20, Sin: 50}
	return d
}

func drawBody(t *rapid.T) (body, []mount) {
	f := func(lo, hi float64, name string) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	parts := make([]Part, rapid.IntRange(1, 6).Draw(t, "parts"))
	for i := range parts {
		parts[i] = Part{f(0.1, 20, "mass"), f(-0.3, 0.5, "x"), f(-0.3, 0.5, "z"), f(0.001, 0.2, "roll"), f(0.001, 0.2, "pitch"), f(0.001, 0.2, "yaw")}
	}
	b := gather(parts)
	var mounts []mount
	for _, s := range [][2]float64{{-1, -1}, {1, -1}, {-1, 1}, {1, 1}} {
		mounts = append(mounts, mount{place{f(-0.1, 0.1, "aft"), s[0] * f(0.05, 0.2, "right"), s[1] * f(0.05, 0.2, "up")}.from(b.centre),
			[3]float64{f(1e4, 1e6, "axial"), f(1e4, 1e6, "side"), f(1e4, 1e6, "rise")}})
	}
	return b, mounts
}

// Every mode must answer the equation of motion, K·φ = ω²·M·φ, and weigh 1.
func TestModesSolveTheEquationOfMotion(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, mounts := drawBody(t)
		modes, ok := b.modes(mounts)
		if !ok {
			t.Fatal("not held")
		}
		k := stiffness(mounts)
		for _, m := range modes {
			weighed := b.weigh(&m.shape)
			if w := m.shape.dot(&weighed); math.Abs(w-1) > 1e-8 {
				t.Fatalf("modal mass %g", w)
			}
			var left mat.VecDense
			left.MulVec(k, mat.NewVecDense(freedoms, m.shape[:]))
			scale := mat.Norm(k, 1) * mat.Norm(mat.NewVecDense(freedoms, m.shape[:]), 1)
			for i := range freedoms {
				if d := left.AtVec(i) - m.speed*m.speed*weighed[i]; math.Abs(d) > 1e-9*scale {
					t.Fatalf("row %d is off by %g of %g", i, d, scale)
				}
			}
		}
	})
}

// A steady load is carried by the springs alone: K·q = F.
func TestShiftCarriesTheLoad(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, mounts := drawBody(t)
		s := system{body: b, damping: 0.1}
		s.modes, _ = b.modes(mounts)
		load := push(place{100, -20, 300}, place{0.1, 0.05, 0.2})
		q := s.shift(load)
		var back mat.VecDense
		back.MulVec(stiffness(mounts), mat.NewVecDense(freedoms, q[:]))
		through := s.passed(wave{cos: load}, 1e-6)
		for i := range freedoms {
			if math.Abs(back.AtVec(i)-load[i]) > 1e-6*300 || math.Abs(real(through[i])-load[i]) > 1e-6*300 {
				t.Fatalf("%d: %g and %g, want %g", i, back.AtVec(i), real(through[i]), load[i])
			}
		}
	})
}

// By hand: thrust and torque on a body whose mounts stand about its centre.
func TestSagByHand(t *testing.T) {
	s := Default()
	s.Axial, s.Shear, s.StaticShare = 100e3/0.8, 50e3/0.8, 0.8
	s.Places = [][]float64{{0, -0.1, -0.1}, {0, 0.1, -0.1}, {0, -0.1, 0.1}, {0, 0.1, 0.1}}
	d := Duty{Parts: []Part{{10, 0, 0, 0.1, 0.1, 0.1}}, Thrust: 400, Torque: 40, Plate: 0.2, PropellerRadius: 0.6, TipGap: 0.05, GuardAhead: 0.1,
		Cylinders: 2, Working: 800, Idle: 200}
	r := Swing(&s, d)
	twist := 40 / (4 * 50e3 * (0.01 + 0.01))
	for _, tc := range []struct {
		name      string
		got, want float64
	}{
		{"forward", r.HubForward, 400.0 / 400e3}, {"drop", r.HubDrop, 98.0665 / 200e3}, {"twist", r.Twist, twist}, {"tilt", r.Tilt, 0},
		{"tip", r.TipLeft, 0.05 - 98.0665/200e3}, {"ahead", r.AheadLeft, 0.1 - 0.001}, {"overhang", r.Overhang, 0},
	} {
		if math.Abs(tc.got-tc.want) > 1e-12 {
			t.Errorf("%s = %g, want %g", tc.name, tc.got, tc.want)
		}
	}
	d.PropellerAxis = 0.15 // thrust above the mounts leans the body forward
	r = Swing(&s, d)
	lean := 400 * 0.15 / (4 * 100e3 * 0.01)
	if math.Abs(r.Tilt-lean) > 1e-12 || math.Abs(r.HubForward-(0.001+0.15*lean)) > 1e-12 || !(r.HubDrop < 0) || math.Abs(r.HubAside+0.15*twist) > 1e-12 {
		t.Errorf("tilt %g want %g, forward %g, drop %g, aside %g", r.Tilt, lean, r.HubForward, r.HubDrop, r.HubAside)
	}
}

func TestPartsAddUp(t *testing.T) {
	b := gather([]Part{{2, 0.1, 0.2, 0.01, 0.02, 0.03}, {1, 0.4, -0.1, 0.1, 0.2, 0.3}})
	if b.mass != 3 || math.Abs(b.centre.x-0.2) > 1e-15 || math.Abs(b.centre.z-0.1) > 1e-15 {
		t.Errorf("%+v", b)
	}
	for _, tc := range []struct{ got, want float64 }{
		{b.roll, 0.11 + 2*0.01 + 0.04}, {b.pitch, 0.22 + 2*0.02 + 0.08}, {b.yaw, 0.33 + 2*0.01 + 0.04}, {b.rollYaw, -2*0.01 - 0.04},
	} {
		if math.Abs(tc.got-tc.want) > 1e-12 {
			t.Errorf("%g, want %g", tc.got, tc.want)
		}
	}
}

func TestCounterweightTurnsTheShaking(t *testing.T) {
	light, heavy := Cylinder{0.2, 0.027, 0.105, 0.2}.At(800), Cylinder{0.2, 0.027, 0.105, 0.7}.At(800)
	if sum := light.Along + light.Across; math.Abs(sum-heavy.Along-heavy.Across) > 1e-9 || !(heavy.Across > light.Across) || light.Second != heavy.Second {
		t.Errorf("%+v and %+v", light, heavy)
	}
}

// The pin of a clockwise crank, seen from behind, goes right of an upright
// bore, so its counterweight pushes left.
func TestCounterweightPushesOppositeThePin(t *testing.T) {
	d := standing()
	for _, sign := range []float64{1, -1} {
		d.CrankSign = sign
		first, second := d.waves(Shake{Along: 3, Across: 5, Second: 7}, place{})
		if first.cos[2] != 3 || first.sin[1] != -5*sign || second.cos[2] != 7 {
			t.Errorf("%+v", first)
		}
	}
	d.CrankSign, d.Lean = 1, math.Pi/2 // lying to the right: the pin goes down
	if first, _ := d.waves(Shake{Along: 3, Across: 5}, place{}); math.Abs(first.cos[1]-3) > 1e-12 || math.Abs(first.sin[2]-5) > 1e-12 {
		t.Errorf("%+v", first)
	}
}

func TestMountsInOneLineDoNotHold(t *testing.T) {
	s := Default()
	s.Places = [][]float64{{0, 0, -0.1}, {0, 0, 0}, {0, 0, 0.1}}
	r := Swing(&s, standing())
	if r.Held {
		t.Error("three mounts in one line hold")
	}
	if c := r.Checks(nil, 0.1); len(c) != 1 || c[0].Verdict != reading.Fails {
		t.Errorf("%+v", c)
	}
	held := Default()
	want := Swing(&held, standing())
	for _, key := range []string{"vibration.shake_along", "vibration.shake_across", "vibration.shake_second", "vibration.firing_couple"} {
		got, _ := reading.Find(r.Readings(nil), key)
		if firm, _ := reading.Find(want.Readings(nil), key); !(got.Value > 0) || got.Value != firm.Value {
			t.Errorf("%s is %s without hold, %s with", key, got.Text(), firm.Text())
		}
	}
	for _, x := range r.Readings(nil) {
		if x.Key == "vibration.mode_1" && (x.Known() || !strings.Contains(x.Why, "Places of the mounts")) {
			t.Errorf("%+v", x)
		}
	}
}

func TestWhatMountsDo(t *testing.T) {
	s, d := Default(), standing()
	base := Swing(&s, d)
	soft := s.Clone()
	soft.Axial, soft.Shear = s.Axial/4, s.Shear/4
	r := Swing(&soft, d)
	if !(r.PassedFirst < base.PassedFirst && r.HubForward > base.HubForward && r.TipLeft < base.TipLeft && r.Modes[5] < base.Modes[5]) {
		t.Errorf("softer mounts: %+v against %+v", r, base)
	}
	if math.Abs(r.Modes[0]/base.Modes[0]-0.5) > 1e-9 {
		t.Errorf("a quarter of the stiffness gives %g of the mode", r.Modes[0]/base.Modes[0])
	}
	damped := s.Clone()
	damped.Damping = 2 * s.Damping
	if r := Swing(&damped, d); math.Abs(r.Passage.Hub/base.Passage.Hub-0.5) > 1e-9 || !(r.PassedFirst > base.PassedFirst) {
		t.Errorf("twice the damping gives %g of the swing", r.Passage.Hub/base.Passage.Hub)
	}
	if base.Crossed[0]+base.Crossed[1] != freedoms {
		t.Errorf("crossed %v", base.Crossed)
	}
}

func TestSeveralCylindersAreNotRated(t *testing.T) {
	s, d := Default(), standing()
	d.Cylinders = 2
	r := Swing(&s, d)
	for _, key := range []string{"vibration.shake_along", "vibration.passed_share", "vibration.passage_swing"} {
		if x, _ := reading.Find(r.Readings(nil), key); x.Known() {
			t.Errorf("%s is %s", key, x.Text())
		}
	}
	if r.Passage != (Passage{}) {
		t.Errorf("a swing nobody knows: %+v", r.Passage)
	}
	if x, _ := reading.Find(r.Readings(nil), "vibration.tip_left"); !strings.Contains(x.Method, several) {
		t.Errorf("tip clearance: %s", x.Method)
	}
	if x, _ := reading.Find(r.Readings(nil), "vibration.mode_1"); !x.Known() {
		t.Error("the modes do not hang on the cylinders")
	}
}

func TestDeclarations(t *testing.T) {
	s := Default()
	for _, p := range s.Params() {
		if err := p.Set(p.Editable()); err != nil {
			t.Error(err)
		}
		if utf8.RuneCountInString(p.Label) > 34 || p.Guidance == "" {
			t.Errorf("%s: label %q", p.Key, p.Label)
		}
	}
	c := s.Clone()
	c.Places[0][0] = 9
	if s.Places[0][0] == 9 {
		t.Error("the clone shares its mounts")
	}
	seen := map[string]bool{}
	for _, r := range (Result{}).Readings(nil) {
		if seen[r.Key] || utf8.RuneCountInString(r.Label) > 34 || r.Method == "" || r.Origin == "" || r.Known() {
			t.Errorf("reading %+v", r)
		}
		seen[r.Key] = true
	}
}

func TestAnyMountingIsFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, d := Default(), standing()
		anyspec.Set(t, s.Params(), map[string]anyspec.Own{"places": anyspec.OneOf("", "-15 -110 -110; -15 110 -110; -15 0 110", "0 0 0; 0 0 100; 0 0 200", "0 0 0; 0 0 0; 0 0 0")})
		d.Parts = d.Parts[:rapid.IntRange(0, len(d.Parts)).Draw(t, "parts")]
		d.Cylinders = rapid.IntRange(1, 2).Draw(t, "cylinders")
		d.Working = rapid.Float64Range(1, 2000).Draw(t, "working")
		d.Lean = rapid.Float64Range(-4, 4).Draw(t, "lean")
		r := Swing(&s, d)
		for _, x := range r.Readings(nil) {
			anyspec.Finite(t, x.Key, x.Value)
		}
		for _, x := range r.Checks(nil, 0.1) {
			anyspec.Finite(t, x.Key, x.Value)
			anyspec.Finite(t, x.Key+" margin", x.Margin)
		}
	})
}

func BenchmarkSwing(b *testing.B) {
	s, d := Default(), standing()
	b.ReportAllocs()
	for b.Loop() {
		sink = Swing(&s, d)
	}
}

var sink Result
