package gear

import (
	"math"
	"testing"

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

func TestPulsationThroughTheMesh(t *testing.T) {
	s := Default()
	s.LoadFactor = FromPulsation
	at, train := rated(), trainOf(0.8)
	g := newGear(t, s)
	rigid := g.Examine(at, train)
	je := train.CrankInertia + g.CrankInertia()
	jp := (train.PropellerInertia + g.SpinningInertia()) / (g.Ratio() * g.Ratio())
	if want := 1 + 0.8*jp/(je+jp); math.Abs(rigid.Strength.Load.Application-want) > 1e-12 {
		t.Errorf("application factor %g, want %g", rigid.Strength.Load.Application, want)
	}
	natural := func(f float64) float64 { w := at.CrankSpeed * f; return w * w * je * jp / (je + jp) }
	for _, tc := range []struct {
		name   string
		factor float64 // natural frequency over the exciting one
		raises bool
	}{{"soft", 0.3, false}, {"in resonance", 1, true}, {"stiff", 3, true}} {
		s.CouplingStiffness = param.Known(natural(tc.factor))
		x := newGear(t, s).Examine(at, train).Strength.Load.Application
		if (x > rigid.Strength.Load.Application) != tc.raises {
			t.Errorf("%s coupling: %g against %g rigid", tc.name, x, rigid.Strength.Load.Application)
		}
	}
	s.CouplingStiffness = param.Known(natural(100))
	if x := newGear(t, s).Examine(at, train).Strength.Load.Application; math.Abs(x-rigid.Strength.Load.Application) > 1e-3 {
		t.Errorf("a very stiff coupling gives %g, a rigid one %g", x, rigid.Strength.Load.Application)
	}
}

func TestTeethPartWhenPulsationExceedsTheMean(t *testing.T) {
	for _, tc := range []struct {
		train part.Train
		want  reading.Verdict
	}{{trainOf(0.5), reading.Holds}, {trainOf(3), reading.Thin}, {part.Train{}, reading.NotRated}, {part.Train{Crank: pulsing{1, 1}}, reading.NotRated}} {
		for _, c := range newGear(t, Default()).Examine(rated(), tc.train).Checks(0.1) {
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
	je := train.CrankInertia + g.CrankInertia()
	jp := (train.PropellerInertia + g.SpinningInertia()) / (g.Ratio() * g.Ratio())
	natural := at.CrankSpeed * 0.5
	s.CouplingStiffness = param.Known(natural * natural * je * jp / (je + jp))
	p := newGear(t, s).Examine(at, train).Pulsation
	if math.Abs(p.PeakSpeed/natural-1) > 0.1 || p.Peak <= p.Mean {
		t.Errorf("peak %g N·m at %g of the resonance", p.Peak, p.PeakSpeed/natural)
	}
	if math.Abs(p.Torsional.Value*2*math.Pi/natural-1) > 1e-9 {
		t.Errorf("torsional %v, want %g", p.Torsional, natural/(2*math.Pi))
	}
}
