package toothedbelt

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
)

// shaking is an engine whose torque has the harmonics given, as shares of the
// mean.
type shaking []part.Harmonic

func (s shaking) Power(float64) float64                 { return 15e3 }
func (s shaking) SpeedRange() (lowest, highest float64) { return 200, 1000 }
func (s shaking) IdleSpeed() float64                    { return 200 }
func (s shaking) Pulsation(power, speed float64) part.Pulsation {
	p := part.Pulsation{Mean: power / speed, Count: len(s)}
	for i, h := range s {
		p.Harmonics[i] = part.Harmonic{Order: h.Order, Cos: h.Cos * p.Mean, Sin: h.Sin * p.Mean}
	}
	return p
}

func train(crankInertia, propellerInertia float64, hs ...part.Harmonic) part.Train {
	return part.Train{Crank: shaking(hs), CrankInertia: crankInertia, PropellerInertia: propellerInertia}
}

func TestPeakIsUnratedWithoutItsGivens(t *testing.T) {
	b := build(t, asIs)
	idle := rated()
	idle.Power = 0
	for _, tc := range []struct {
		at    part.Duty
		train part.Train
		says  string
	}{
		{rated(), part.Train{CrankInertia: 1, PropellerInertia: 1}, noPulsation},
		{rated(), train(0, 1), noInertia},
		{idle, train(1, 1), noPull},
	} {
		r := b.Examine(tc.at, tc.train)
		if c := anyspec.Check(t, r.Checks(nil, 0.1), "toothedbelt.slack_side_peak"); c.Verdict != reading.NotRated || c.Why != tc.says {
			t.Errorf("%s: %+v", tc.says, c)
		}
		if x, _ := reading.Find(r.Readings(nil), "toothedbelt.peak_pull"); x.Why != tc.says {
			t.Errorf("%s: %+v", tc.says, x)
		}
	}
}

// A rigid belt carries the propeller side's share of the torque's swing.
func TestRigidBeltCarriesTheShareOfInertia(t *testing.T) {
	b, at := build(t, asIs), rated()
	tr := train(1.2e-3, 0.035, part.Harmonic{Order: 1, Cos: 1.5, Sin: 2})
	far := (0.035 + b.SpinningInertia()) / (b.Ratio() * b.Ratio())
	share := far / (far + 1.2e-3 + b.CrankInertia())
	r := b.Examine(at, tr)
	near(t, "peak pull", r.Swing.Most, r.Pull*(1+2.5*share), 1e-3*r.Pull)
	near(t, "least pull", r.Swing.Least, r.Pull*(1-2.5*share), 1e-3*r.Pull)
	need, _ := reading.Find(r.Readings(nil), "toothedbelt.tension_for_peak")
	near(t, "tension to stay taut", need.Value, r.Swing.Most/2+r.Tensions.Centrifugal, 1e-9)
	if c := anyspec.Check(t, r.Checks(nil, 0), "toothedbelt.slack_side_peak"); c.Verdict != reading.NotRated {
		t.Errorf("a belt without a stiffness is held against the rigid one's peaks: %+v", c)
	}
	stiff := func(tension float64) func(*Spec) {
		return func(s *Spec) { s.StandingTension, s.StiffnessPerMillimetre = param.Known(tension), param.Known(1e12) }
	}
	above, below := build(t, stiff(need.Value+1)), build(t, stiff(need.Value-1))
	for b, want := range map[*Belt]reading.Verdict{&above: reading.Holds, &below: reading.Fails} {
		if c := anyspec.Check(t, b.Examine(at, tr).Checks(nil, 0), "toothedbelt.slack_side_peak"); c.Verdict != want {
			t.Errorf("%+v", c)
		}
	}
}

// Where the propeller drives the crank hard, the other span slackens.
func TestKickBackSlackensTheTightSpan(t *testing.T) {
	b, at := build(t, asIs), rated()
	var hs []part.Harmonic
	for order := 1.0; order <= 4; order++ {
		hs = append(hs, part.Harmonic{Order: order, Cos: -2})
	}
	r := b.Examine(at, train(1e-3, 0.1, hs...))
	if !(-r.Swing.Least > r.Swing.Most) {
		t.Fatal("the backward pull is the greater one here")
	}
	near(t, "least span", r.leastSpan(), r.StandingTension+r.Swing.Least/2, 1e-9)
}

func TestHarmonicsAddInTheirPhases(t *testing.T) {
	b, at := build(t, asIs), rated()
	// cos θ + cos 2θ peaks at 2 and dips to −9/8.
	r := b.Examine(at, train(1e-9, 1e6, part.Harmonic{Order: 1, Cos: 1}, part.Harmonic{Order: 2, Cos: 1}))
	near(t, "peak", r.Swing.Most/r.Pull, 3, 1e-3)
	near(t, "dip", r.Swing.Least/r.Pull, 1-9.0/8, 1e-3)
	// A four-stroke's half orders repeat after two turns.
	half := b.Examine(at, train(1e-9, 1e6, part.Harmonic{Order: 0.5, Sin: -1}))
	near(t, "peak", half.Swing.Most/r.Pull, 2, 1e-3)
}

// A soft belt passes little, a stiff one as much as a rigid one, and at
// resonance only the damping bounds it.
func TestStiffnessShapesTheSwing(t *testing.T) {
	at := rated()
	tr := train(1.2e-3, 0.035, part.Harmonic{Order: 1, Cos: 1})
	swing := func(perMillimetre float64) (amplitude, first float64) {
		r := build(t, func(s *Spec) { s.StiffnessPerMillimetre = param.Known(perMillimetre) }).Examine(at, tr)
		return r.Swing.Most/r.Pull - 1, r.Swing.First
	}
	rigid := build(t, asIs).Examine(at, tr)
	stiff, _ := swing(1e8)
	near(t, "stiff belt", stiff, rigid.Swing.Most/rigid.Pull-1, 1e-3)
	soft, _ := swing(10)
	if !(soft < 0.05) {
		t.Errorf("a soft belt passes %g", soft)
	}
	_, first := swing(1000)
	firing := at.CrankSpeed / (2 * math.Pi)
	tuning := firing / first
	resonant, f := swing(1000 * tuning * tuning)
	near(t, "tuned frequency", f, firing, 1e-6)
	near(t, "at resonance", resonant, (rigid.Swing.Most/rigid.Pull-1)*math.Hypot(1, 0.12)/0.12, 1e-2)
	if x, _ := reading.Find(rigid.Readings(nil), "toothedbelt.torsional_frequency"); x.Known() || !strings.Contains(x.Why, "stiffness") {
		t.Errorf("%+v", x)
	}
}
