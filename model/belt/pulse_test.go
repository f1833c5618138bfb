package belt

import (
	"math"
	"testing"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

// One harmonic on a taut belt swings each span by half the belt torque over
// the radius.
func TestOneHarmonicHasAClosedForm(t *testing.T) {
	b, at := build(t, func(s *Spec) { s.StandingTension.Known, s.StandingTension.Value = true, 4000 }), rated()
	train := single()
	train.Crank = shaken{lowest: 200, highest: 900, shares: []part.Harmonic{{Order: 1, Cos: 0.6, Sin: 0.8}}}
	r, w := b.Examine(at, train), b.twin(train)
	torque := at.Power / at.CrankSpeed
	n := at.CrankSpeed / w.natural(2)
	gain := w.driven / (w.crank + w.driven) * math.Sqrt((1+0.12*0.12)/((1-n*n)*(1-n*n)+0.12*0.12))
	half := gain * torque / b.Run().Crank
	near(t, "amplification", r.Pulsation.Amplification, gain, 1e-12)
	near(t, "tight side", r.Pulsation.Surge.Tight, r.Tensions.TightSide+half, 2e-4*half)
	near(t, "slack side", r.Pulsation.Surge.Slack, r.Tensions.SlackSide-half, 2e-4*half)
	near(t, "need", r.Pulsation.Surge.Need, r.Tensions.Centrifugal+r.Pull/2+half, 2e-4*half)
	if r.Pulsation.Surge.Open != 0 {
		t.Error("the slack side opened")
	}
}

func TestHarmonicsAreSummedWithTheirPhase(t *testing.T) {
	b, at := build(t, asIs), rated()
	train := single()
	w := b.twin(train)
	for _, shares := range [][]part.Harmonic{
		train.Crank.(shaken).shares,
		{{Order: 0.5, Cos: 1}, {Order: 1, Sin: 2}, {Order: 1.5, Cos: 0.4, Sin: -0.3}},
	} {
		p := shaken{shares: shares}.Pulsation(at.Power, at.CrankSpeed)
		s := w.swing(&p, at.CrankSpeed, 2)
		want := mostOf(func(angle float64) float64 {
			sum := 0.0
			for _, h := range p.Harmonics[:p.Count] {
				g := w.transfer(h.Order * at.CrankSpeed / w.natural(2))
				sin, cos := math.Sincos(2 * h.Order * angle)
				sum += real(complex(h.Cos, -h.Sin) * g * complex(cos, sin))
			}
			return sum / (2 * w.radius)
		})
		near(t, "highest", s.highest(), want, 0.005*want)
		bound := 0.0
		for _, h := range p.Harmonics[:p.Count] {
			g := w.transfer(h.Order * at.CrankSpeed / w.natural(2))
			bound += h.Amplitude() * math.Hypot(real(g), imag(g)) / (2 * w.radius)
		}
		if !(s.highest() < bound) {
			t.Errorf("%g is above the sum of the amplitudes %g", s.highest(), bound)
		}
	}
}

// integrated follows the two inertias step by step until the cycle repeats:
// the belt pulls by its stretch and by a viscous part of the same loss factor
// at the excited order, each strand only while it presses on its pulley.
func integrated(w twin, order, torque, speed, pull, room float64) (tight, open float64) {
	stiff, frequency := w.stiffness, order*speed
	damping := stiff * w.lossFactor / frequency
	relative := w.radius * w.radius * (1/w.crank + 1/w.driven)
	drive := torque * w.radius / w.crank
	// Without the mean, which the propeller takes: acceleration of the stretch
	// u/stiff = radius times the angle between the inertias.
	x, v := pull/2/stiff, 0.0
	slope := func(x, v, phase float64) float64 {
		u := stiff*x + damping*v
		return drive*math.Cos(phase) - relative*(pulled(u, room)-pull)
	}
	const perCycle, cycles = 2000, 120
	h := 2 * math.Pi / frequency / perCycle
	for i := range perCycle * cycles {
		phase := frequency * h * float64(i)
		d := frequency * h
		a1 := slope(x, v, phase)
		a2 := slope(x+h/2*v, v+h/2*a1, phase+d/2)
		a3 := slope(x+h/2*v+h*h/4*a1, v+h/2*a2, phase+d/2)
		a4 := slope(x+h*v+h*h/2*a2, v+h*a3, phase+d)
		x, v = x+h*v+h*h/6*(a1+a2+a3), v+h/6*(a1+2*a2+2*a3+a4)
		if i >= perCycle*(cycles-10) {
			u := stiff*x + damping*v
			tight = math.Max(tight, u)
			if u > room {
				open += 1.0 / (10 * perCycle)
			}
		}
	}
	return tight, open
}

// The equivalent stiffness stays near a step-by-step solution of the branched
// loop, above and below its resonance.
func TestSlackBranchAgainstIntegration(t *testing.T) {
	b := build(t, asIs)
	w := b.twin(single())
	for _, tc := range []struct {
		name                 string
		speed, room, torque  float64
		within, withinOpened float64
	}{
		{"taut throughout", 500, 900, 10, 0.005, 0.001},
		{"opens a little", 300, 420, 20, 0.02, 0.02},
		{"half open below resonance", 700, 420, 20, 0.06, 0.02},
		{"on the slackened resonance", 1000, 420, 20, 0.04, 0.02},
		{"on the taut resonance", 1250, 420, 20, 0.04, 0.02},
		{"above resonance", 1700, 260, 40, 0.02, 0.02},
	} {
		p := shaken{fixed: tc.torque, shares: []part.Harmonic{{Order: 1, Cos: 1}}}.Pulsation(0, tc.speed)
		s := b.held(w, &p, tc.speed, 450, tc.room, 0)
		u, open := integrated(w, 1, tc.torque, tc.speed, 450, tc.room)
		t.Logf("%s: tight %.0f, integrated %.0f; open %.3f, integrated %.3f", tc.name, s.Tight, tc.room+u, s.Open, open)
		near(t, tc.name, s.Tight, tc.room+u, tc.within*(tc.room+u))
		near(t, tc.name+", open", s.Open, open, tc.withinOpened)
		if tight, slack := s.Tight, s.Slack; math.Abs(tight-slack-s.Pull) > 1e-9 {
			t.Errorf("%s: %g − %g is not %g", tc.name, tight, slack, s.Pull)
		}
	}
}

// A dry belt skids before its slack side lifts, and the skid caps what the
// shafts bear; a belt that is not asked for more keeps its swing.
func TestSkidCapsThePeak(t *testing.T) {
	hard := build(t, func(s *Spec) { s.StandingTension = param.Known(600) })
	r := hard.Examine(rated(), single())
	s, tc := r.Pulsation.Surge, r.Tensions.Centrifugal
	if !(s.HeldPull > s.Pull) || !(s.HeldTight > s.Tight) {
		t.Fatalf("this belt should skid: %+v", s)
	}
	near(t, "ratio of contact tensions", (s.Tight-tc)/(s.Slack-tc), hard.skidRatio, 1e-9)
	near(t, "sum of the spans", s.Tight+s.Slack, 2*600, 1e-9)
	easy := build(t, func(s *Spec) { s.StandingTension = param.Known(3000) }).Examine(rated(), single()).Pulsation.Surge
	if easy.Tight != easy.HeldTight || easy.Pull != easy.HeldPull {
		t.Errorf("this belt should hold: %+v", easy)
	}
}

func TestBranchedPullKeepsItsMean(t *testing.T) {
	w := build(t, asIs).twin(single())
	p := single().Crank.Pulsation(15e3, 890)
	s, mean := w.branched(w.swing(&p, 890, 2), &p, 890, 480, 300)
	sum := 0.0
	for _, x := range s {
		sum += pulled(mean+x, 300) / samples
	}
	near(t, "mean pull", sum, 480, 0.5)
}

func TestPulsationSetsTheTension(t *testing.T) {
	s := Default()
	s.Pulsing.LoadFactor = ByPulsation
	if _, err := New(s, rated(), 0, part.Train{}); err == nil || err.Error() != `Load factor: the engine's torque pulsation is not known, so it cannot set the belt; choose "service factor"` {
		t.Error(err)
	}
	b, err := New(s, rated(), 0, single())
	if err != nil {
		t.Fatal(err)
	}
	r := b.Examine(rated(), single())
	near(t, "standing tension", r.StandingTension, 1.15*r.Pulsation.Surge.Need, 1e-9)
	if r.Pulsation.Surge.Open != 0 || r.Pulsation.Sweep.Need < r.Pulsation.Surge.Need*(1-1e-3) {
		t.Errorf("%+v", r.Pulsation)
	}
	s.ServiceFactor = 2
	if again, err := New(s, rated(), 0, single()); err != nil || again.standing != b.standing {
		t.Error("the service factor was multiplied in")
	}
}

func TestUnknownTrainLeavesReadingsOut(t *testing.T) {
	r := build(t, asIs).Examine(rated(), part.Train{})
	for _, key := range []string{"belt.torsional", "belt.tight_side_peak", "belt.pulsation_need_sweep", "belt.bands", "belt.slip_reserve_peak"} {
		if x, ok := reading.Find(r.Readings(nil), key); !ok || x.Known() || x.Why == "" {
			t.Errorf("%s: %+v", key, x)
		}
	}
	known := build(t, asIs).Examine(rated(), single())
	for _, x := range known.Readings(nil) {
		if !x.Known() && x.Key != "belt.rated_power" && x.Key != "belt.band_nearest" {
			t.Errorf("%s: %s", x.Key, x.Why)
		}
	}
	if f := known.Torsional(); !f.Known || math.Abs(f.Value/known.Pulsation.TorsionalOpen.Value-math.Sqrt2) > 1e-12 {
		t.Errorf("torsional %v, open %v", f, known.Pulsation.TorsionalOpen)
	}
}

func BenchmarkExamineShaken(bb *testing.B) {
	for _, tc := range []struct {
		name string
		set  float64
	}{{"taut", 4000}, {"as set", 0}, {"slack", 400}} {
		bb.Run(tc.name, func(bb *testing.B) {
			b := build(bb, func(s *Spec) { s.StandingTension.Known, s.StandingTension.Value = tc.set > 0, tc.set })
			at, train := rated(), single()
			for bb.Loop() {
				b.Examine(at, train)
			}
		})
	}
}

func BenchmarkNewByPulsation(bb *testing.B) {
	s, at, train := Default(), rated(), single()
	s.Pulsing.LoadFactor = ByPulsation
	for bb.Loop() {
		if _, err := New(s, at, 0, train); err != nil {
			bb.Fatal(err)
		}
	}
}
