package gear

import (
	"math"
	"strings"
	"testing"

	"backspan/model/coupling"
	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

// pulsing is a crank whose torque has one harmonic.
type pulsing struct{ share, order float64 }

func (p pulsing) Power(float64) float64                 { return 15000 }
func (p pulsing) SpeedRange() (lowest, highest float64) { return 300, 1000 }
func (p pulsing) IdleSpeed() float64                    { return 200 }
func (p pulsing) Pulsation(power, speed float64) part.Pulsation {
	out := part.Pulsation{Mean: power / speed, Count: 1}
	out.Harmonics[0] = part.Harmonic{Order: p.order, Cos: 0.6 * p.share * out.Mean, Sin: 0.8 * p.share * out.Mean}
	return out
}

func trainOf(share float64) part.Train {
	return part.Train{Crank: pulsing{share, 1}, CrankInertia: 2e-3, PropellerInertia: 0.045}
}

// inertias of the train at the crank: before the coupling, behind it and the
// propeller's.
func inertias(g *Gear, train part.Train) (crank, pinion, propeller float64) {
	engine, _ := g.spec.Coupling.Inertias()
	u := g.Ratio()
	return train.CrankInertia + engine, g.CrankInertia() - engine, (train.PropellerInertia + g.SpinningInertia()) / (u * u)
}

func TestPulsationThroughTheMesh(t *testing.T) {
	s := Default()
	s.LoadFactor = FromPulsation
	at, train := rated(), trainOf(0.8)
	g := newGear(t, s)
	rigid := g.Examine(at, train)
	je, jp, jr := inertias(&g, train)
	if want := 1 + 0.8*jr/(je+jp+jr); math.Abs(rigid.Strength.Load.Application/want-1) > 0.02 {
		t.Errorf("application factor %g, about %g when the teeth do not give", rigid.Strength.Load.Application, want)
	}
	natural := func(f float64) float64 { w := at.CrankSpeed * f; return w * w / (1/je + 1/(jp+jr)) }
	for _, tc := range []struct {
		name   string
		factor float64 // natural frequency over the exciting one
		raises bool
	}{{"soft", 0.3, false}, {"in resonance", 1, true}, {"stiff", 3, true}} {
		s.Coupling.Stiffness = param.Known(natural(tc.factor))
		x := newGear(t, s).Examine(at, train).Strength.Load.Application
		if (x > rigid.Strength.Load.Application) != tc.raises {
			t.Errorf("%s coupling: %g against %g rigid", tc.name, x, rigid.Strength.Load.Application)
		}
	}
	s.Coupling.Stiffness = param.Known(natural(1000))
	if x := newGear(t, s).Examine(at, train).Strength.Load.Application; math.Abs(x-rigid.Strength.Load.Application) > 1e-2 {
		t.Errorf("a very stiff coupling gives %g, a rigid one %g", x, rigid.Strength.Load.Application)
	}
}

// The load factor is chosen or comes from the pulsation, never both.
func TestLoadFactorIsChosenOrPulsating(t *testing.T) {
	s := Default()
	at, train := rated(), trainOf(0.8)
	chosen := newGear(t, s).Examine(at, train)
	if k := chosen.Strength.Load.Application; k != s.ApplicationFactor {
		t.Errorf("chosen %g, got %g", s.ApplicationFactor, k)
	}
	s.LoadFactor = FromPulsation
	low := newGear(t, s).Examine(at, train)
	s.ApplicationFactor *= 2
	high := newGear(t, s).Examine(at, train)
	if a, b := low.Strength.Load.Application, high.Strength.Load.Application; a != b || a != low.Pulsation.Factor || a == Default().ApplicationFactor {
		t.Errorf("from pulsation %g, with twice the chosen factor %g", a, b)
	}
}

// The teeth twist at their own frequency, which is the higher one; stiffness
// and inertias from the readings.
func TestSecondFrequencyIsTheTeeths(t *testing.T) {
	s := Default()
	at, train := rated(), trainOf(0.8)
	g := newGear(t, s)
	stiff := g.Examine(at, train)
	je, jp, jr := inertias(&g, train)
	line := stiff.Strength.Load
	// Under a light load the rating takes teeth as softer, which the train does
	// not.
	full := line.MeshStiffness * math.Pow(math.Max(1, 100/line.lineLoad), 0.25)
	r := g.geometry.Pinion.BaseDiameter / 2
	k := full * s.FaceWidth * r * r
	want := math.Sqrt(k*(1/(je+jp)+1/jr)) / (2 * math.Pi)
	if got := stiff.TorsionalSecond(); stiff.Torsional().Known || math.Abs(got.Value/want-1) > 1e-9 {
		t.Errorf("rigid coupling: %v, want %g; first %v", got, want, stiff.Torsional())
	}
	s.Coupling.Stiffness = param.Known(100)
	soft := newGear(t, s).Examine(at, train)
	want = math.Sqrt(k*(1/jp+1/jr)) / (2 * math.Pi)
	if got := soft.TorsionalSecond().Value; math.Abs(got/want-1) > 1e-2 {
		t.Errorf("soft coupling: %g, want %g", got, want)
	}
	s.Coupling.Kind = coupling.Rigid
	if x := newGear(t, s).Examine(at, train); x.Torsional().Known || x.Pulsation.Factor != stiff.Pulsation.Factor {
		t.Errorf("a rigid coupling gives: %+v", x.Pulsation)
	}
}

func TestTeethPartWhenPulsationExceedsTheMean(t *testing.T) {
	for _, tc := range []struct {
		train part.Train
		want  reading.Verdict
	}{{trainOf(0.5), reading.Holds}, {trainOf(3), reading.Thin}, {part.Train{}, reading.NotRated}, {part.Train{Crank: pulsing{1, 1}}, reading.NotRated}} {
		for _, c := range newGear(t, Default()).Examine(rated(), tc.train).Checks(nil, 0.1) {
			if c.Key == "gear.contact_kept" && c.Verdict != tc.want {
				t.Errorf("%+v: %s, want %s", tc.train, c.Verdict, tc.want)
			}
		}
	}
}

// A soft coupling lets little through at speed, yet resonates on the way up.
func TestRunUpFindsTheResonance(t *testing.T) {
	s := Default()
	at, train := rated(), trainOf(3)
	g := newGear(t, s)
	je, jp, jr := inertias(&g, train)
	natural := at.CrankSpeed * 0.5
	s.Coupling.Stiffness = param.Known(natural * natural / (1/je + 1/(jp+jr)))
	p := newGear(t, s).Examine(at, train).Pulsation
	if math.Abs(p.PeakSpeed/natural-1) > 0.1 || p.Peak <= p.Mean {
		t.Errorf("peak %g N·m at %g of the resonance", p.Peak, p.PeakSpeed/natural)
	}
	if math.Abs(p.Torsional.Value*2*math.Pi/natural-1) > 3e-3 {
		t.Errorf("torsional %v, want %g", p.Torsional, natural/(2*math.Pi))
	}
	// At resonance the harmonic is raised to √(1+4ζ²)/(2ζ) of its rigid share,
	// which is near the peak; that at the working speed is far off.
	mean := p.Mean * (p.PeakSpeed / at.CrankSpeed) * (p.PeakSpeed / at.CrankSpeed)
	z := s.Coupling.Damping
	rise := 3 * mean * (jp + jr) / (je + jp + jr) * math.Sqrt(1+4*z*z) / (2 * z)
	if got := p.Peak - mean; math.Abs(got/rise-1) > 0.15 {
		t.Errorf("rise %g N·m, about %g", got, rise)
	}
	if r := p.RunUp; !r.Parts || r.PartsFrom > natural || r.PartsTo < natural || r.PartsTo >= at.CrankSpeed || r.From != 200 {
		t.Errorf("parting %+v about %g", r, natural)
	}
}

// A resonance narrower than the even steps is met all the same.
func TestRunUpMeetsANarrowResonance(t *testing.T) {
	s := Default()
	s.Coupling.Stiffness, s.Coupling.Damping = param.Known(500), 0.005
	p := newGear(t, s).Examine(rated(), trainOf(1)).Pulsation
	natural := p.Torsional.Value * 2 * math.Pi
	if math.Abs(p.PeakSpeed/natural-1) > 1e-3 {
		t.Errorf("peak at %g of the resonance", p.PeakSpeed/natural)
	}
}

// A resonance just below the working speed that does not part the teeth is
// found as the peak, though the torque there hardly swings.
func TestRunUpPeakWhileTheTeethStayInContact(t *testing.T) {
	s := Default()
	at := rated()
	je, jp, jr := inertias(ptr(newGear(t, s)), trainOf(1))
	natural := 0.9 * at.CrankSpeed
	s.Coupling.Stiffness, s.Coupling.Damping = param.Known(natural*natural/(1/je+1/(jp+jr))), 0.02
	p := newGear(t, s).Examine(at, trainOf(0.03)).Pulsation
	if p.RunUp.Parts || math.Abs(p.PeakSpeed/natural-1) > 0.01 || p.Peak < 1.05*p.Most {
		t.Errorf("peak %g N·m at %g of the resonance, %g at work, parts %t", p.Peak, p.PeakSpeed/natural, p.Most, p.RunUp.Parts)
	}
}

func ptr(g Gear) *Gear { return &g }

// A chosen factor is held against the working point too.
func TestLoadFactorCoversTheWorkingPoint(t *testing.T) {
	x := newGear(t, Default()).Examine(rated(), trainOf(0.5))
	x.Pulsation.Most = 1.8 * x.Pulsation.Mean
	if c := x.coverCheck(); !c.Past {
		t.Errorf("%s %s", c.Verdict, c.Text())
	}
}

// flat is a crank whose pulsation does not fall with the load.
type flat struct{ height, second float64 }

func (p flat) Power(float64) float64                 { return 15000 }
func (p flat) SpeedRange() (lowest, highest float64) { return 300, 1000 }
func (p flat) IdleSpeed() float64                    { return 200 }
func (p flat) Pulsation(power, speed float64) part.Pulsation {
	out := part.Pulsation{Mean: power / speed, Count: 2}
	out.Harmonics[0] = part.Harmonic{Order: 1, Sin: p.height}
	out.Harmonics[1] = part.Harmonic{Order: 2, Sin: p.second}
	return out
}

func flatTrain(height, second float64) part.Train {
	return part.Train{Crank: flat{height, second}, CrankInertia: 2e-3, PropellerInertia: 0.045}
}

// The load at idle is the working torque times the square of speed; what
// pulsates above it parts the teeth.
func TestTeethRattleAtIdle(t *testing.T) {
	at := rated()
	g := newGear(t, Default())
	je, jp, jr := inertias(&g, flatTrain(1, 0))
	n := 200 / at.CrankSpeed
	load := at.Power / at.CrankSpeed * n * n * (je + jp + jr) / jr
	for _, tc := range []struct {
		share float64
		want  reading.Verdict
	}{{0.9, reading.Holds}, {1.1, reading.Thin}} {
		x := g.Examine(at, flatTrain(tc.share*load, 0))
		c := anyspec.Check(t, x.Checks(nil, 0.1), "gear.idle_contact")
		if c.Verdict != tc.want || math.Abs(x.Pulsation.Idle.Drop()/tc.share-1) > 0.02 {
			t.Errorf("%g of the load: %s, drop %g", tc.share, c.Verdict, x.Pulsation.Idle.Drop())
		}
		if tc.want == reading.Thin && !strings.Contains(c.Cure, "0.14 mm") && !strings.Contains(c.Cure, "Normal backlash") {
			t.Errorf("the backlash is not named: %s", c.Cure)
		}
		if r := x.Pulsation.RunUp; r.Parts != (tc.want == reading.Thin) || r.Parts && r.PartsFrom != 200 {
			t.Errorf("%g of the load: run-up %+v", tc.share, r)
		}
	}
}

// A clutch that is out passes nothing at idle, and nothing but friction until it
// grips; one that takes hold below idle is none.
func TestClutchAtIdle(t *testing.T) {
	s := Default()
	s.Coupling.Kind = coupling.Clutch
	s.Coupling.TakeUp, s.Coupling.Torque, s.Coupling.TorqueSpeed = 300, param.Known(60), 600
	at, train := rated(), flatTrain(20, 0)
	g := newGear(t, s)
	x := g.Examine(at, train)
	c := anyspec.Check(t, x.Checks(nil, 0.1), "gear.idle_contact")
	swing, _ := reading.Find(x.Readings(nil), "gear.idle_swing")
	if g.TurnsAt(200) || !g.TurnsAt(301) || c.Verdict != reading.Holds || !swing.Absent || x.Pulsation.RunUp.From < 300 {
		t.Errorf("%s, %+v, from %g", c.Verdict, swing, x.Pulsation.RunUp.From)
	}
	if grips := x.Coupling.Locks.Value; x.Pulsation.RunUp.From != grips || !(grips > 300 && grips < 400) {
		t.Errorf("run-up from %g, grips at %g", x.Pulsation.RunUp.From, grips)
	}
	s.Coupling.TakeUp = 190
	g = newGear(t, s)
	x = g.Examine(at, train)
	if c = anyspec.Check(t, x.Checks(nil, 0.1), "gear.idle_contact"); !g.TurnsAt(200) || c.Verdict != reading.Thin {
		t.Errorf("below idle: %s", c.Verdict)
	}
	s.Coupling.Kind = coupling.Elastic
	if !newGear(t, s).TurnsAt(1) {
		t.Error("an elastic coupling lets the propeller stand")
	}
}

// Two harmonics that peak apart reach less than both heights added, and the
// factor follows the wave. Its extremes: sin x + sin 2x reaches 1.7602.
func TestFactorFollowsThePhases(t *testing.T) {
	at := rated()
	mean := at.Power / at.CrankSpeed
	g := newGear(t, Default())
	je, jp, jr := inertias(&g, flatTrain(1, 1))
	share := jr / (je + jp + jr)
	p := g.Examine(at, flatTrain(mean/4, mean/4)).Pulsation
	if want := 1 + 1.7602/4*share; math.Abs(p.Factor/want-1) > 0.02 {
		t.Errorf("factor %g, about %g", p.Factor, want)
	}
	if want := 1 + 2./4*share; math.Abs((1+p.Swing/mean)/want-1) > 0.02 || p.Most > p.Mean+p.Swing {
		t.Errorf("bound %g, about %g", 1+p.Swing/mean, want)
	}
}

// What passes the coupling accelerates the pinion too.
func TestCouplingBearsThePinionsShareToo(t *testing.T) {
	at, train := rated(), trainOf(2)
	s := Default()
	g := newGear(t, s)
	je, jp, jr := inertias(&g, train)
	p := g.Examine(at, train).Pulsation
	if want := p.Mean * (1 + 2*(jp+jr)/(je+jp+jr)); math.Abs(p.CouplingPeak.Value/want-1) > 0.02 {
		t.Errorf("rigid: %g, about %g", p.CouplingPeak.Value, want)
	}
	s.Coupling.Stiffness = param.Known(100)
	p = newGear(t, s).Examine(at, train).Pulsation
	if want := p.Mean + (p.Most-p.Mean)*(jp+jr)/jr; math.Abs(p.CouplingPeak.Value/want-1) > 0.01 {
		t.Errorf("soft: %g, about %g", p.CouplingPeak.Value, want)
	}
}

// Where the greatest torque is that at the working point, the run-up says so
// of the coupling too, give or take the mean's share.
func TestCouplingOverTheRunUp(t *testing.T) {
	p := newGear(t, Default()).Examine(rated(), trainOf(2))
	if over := p.Coupling.Load.RunUpPeak.Value / p.Pulsation.CouplingPeak.Value; p.Pulsation.PeakSpeed < rated().CrankSpeed || math.Abs(over-1) > 2e-3 {
		t.Errorf("run-up %+v over %+v", p.Coupling.Load.RunUpPeak, p.Pulsation.CouplingPeak)
	}
}

// A soft coupling whose resonance lies in the run-up: the teeth bear far more
// there than the load factor covers, chosen or taken from the pulsation of the
// working point.
func TestRunUpPeakIsHeldAgainstTheTeeth(t *testing.T) {
	at, train := rated(), trainOf(3)
	s := Default()
	g := newGear(t, s)
	je, jp, jr := inertias(&g, train)
	natural := at.CrankSpeed * 0.5
	s.Coupling.Stiffness = param.Known(natural * natural / (1/je + 1/(jp+jr)))
	for _, from := range []LoadFactorSource{FromChoice, FromPulsation} {
		s.LoadFactor = from
		x := newGear(t, s).Examine(at, train)
		if c := anyspec.Check(t, x.Checks(nil, 0.1), "gear.application_factor"); c.Verdict != reading.Thin || !c.Past || c.Limit < 0.99*x.Pulsation.Peak {
			t.Errorf("%s: %s %s", from, c.Verdict, c.Text())
		}
		c := anyspec.Check(t, x.Checks(nil, 0.1), "gear.run_up_bending")
		if !strings.Contains(c.Cure, "pass through quickly") {
			t.Errorf("%s: %q", from, c.Cure)
		}
		// The same as a steady torque of that size at that speed.
		steady, there := s, at
		steady.LoadFactor, steady.ApplicationFactor = FromChoice, 1
		there.CrankSpeed, there.Power = x.Pulsation.PeakSpeed, x.Pulsation.Peak*x.Pulsation.PeakSpeed
		alone := newGear(t, steady).Examine(there, part.Train{})
		want := alone.Strength.BendingSafety()
		if math.Abs(c.Value/want-1) > 1e-9 || !(c.Value < x.Strength.BendingSafety()) {
			t.Errorf("%s: root safety at the peak %g, want %g", from, c.Value, want)
		}
	}
	s.Coupling.Stiffness = param.Slot{}
	s.LoadFactor = FromPulsation
	x := newGear(t, s).Examine(at, trainOf(0.3))
	if c := anyspec.Check(t, x.Checks(nil, 0.1), "gear.application_factor"); c.Verdict != reading.Holds {
		t.Errorf("a peak at the working point: %s %s", c.Verdict, c.Text())
	}
	if c := anyspec.Check(t, x.Checks(nil, 0.1), "gear.run_up_bending"); c.Verdict != reading.Holds || math.Abs(c.Value/x.Strength.BendingSafety()-1) > 1e-6 {
		t.Errorf("root at a peak at the working point: %s %s, %g", c.Verdict, c.Text(), x.Strength.BendingSafety())
	}
	if c := anyspec.Check(t, x.Checks(nil, 0.1), "gear.run_up_bending"); strings.Contains(c.Cure, "pass through") {
		t.Errorf("the working point cannot be passed through: %q", c.Cure)
	}
	s.BendingAsked = 3 * x.Strength.BendingSafety()
	if c := anyspec.Check(t, newGear(t, s).Examine(at, trainOf(0.3)).Checks(nil, 0.1), "gear.run_up_bending"); !c.Past {
		t.Errorf("more asked than there is: %s %s", c.Verdict, c.Text())
	}
	s.LoadFactor = FromChoice
	if c := anyspec.Check(t, newGear(t, s).Examine(at, part.Train{}).Checks(nil, 0.1), "gear.run_up_bending"); c.Verdict != reading.NotRated || c.Why == "" {
		t.Errorf("without a train: %s %q", c.Verdict, c.Why)
	}
}

// The cubic mean of one harmonic is that of a sine.
func TestWearOfOneHarmonic(t *testing.T) {
	p := newGear(t, Default()).Examine(rated(), trainOf(0.8)).Pulsation
	swing := p.Swing / p.Mean
	if want := math.Cbrt(1 + 1.5*swing*swing); math.Abs(p.Wear/want-1) > 1e-6 {
		t.Errorf("wear %g, want %g", p.Wear, want)
	}
}

// Work of a damper: half of c ω² θ².
func TestHeatOfTheCoupling(t *testing.T) {
	at, train := rated(), trainOf(1)
	s := Default()
	s.Coupling.Stiffness = param.Known(100)
	g := newGear(t, s)
	p := g.Examine(at, train)
	je, jp, jr := inertias(&g, train)
	twist := (p.Pulsation.CouplingPeak.Value - p.Pulsation.Mean) / 100
	damping := 2 * s.Coupling.Damping * 100 / math.Sqrt(100*(1/je+1/(jp+jr)))
	want := damping * at.CrankSpeed * at.CrankSpeed * twist * twist / 2
	if got := p.Coupling.Load.DampingHeat.Value; got < 0.7*want || got > want {
		t.Errorf("%g W, at most %g and not far from it", got, want)
	}
}

func BenchmarkExamineShaken(b *testing.B) {
	for name, stiffness := range map[string]param.Slot{"rigid": {}, "soft": param.Known(100)} {
		b.Run(name, func(b *testing.B) {
			s := Default()
			s.Coupling.Stiffness = stiffness
			g, at, train := newGear(b, s), rated(), part.Train{Crank: shaking{}, CrankInertia: 2e-3, PropellerInertia: 0.045}
			b.ReportAllocs()
			for b.Loop() {
				g.Examine(at, train)
			}
		})
	}
}

// shaking has every harmonic.
type shaking struct{ flat }

func (shaking) Pulsation(power, speed float64) part.Pulsation {
	out := part.Pulsation{Mean: power / speed, Count: part.Orders}
	for i := range out.Harmonics {
		n := float64(i + 1)
		out.Harmonics[i] = part.Harmonic{Order: n, Cos: 3 * out.Mean / n, Sin: 10 / n}
	}
	return out
}
