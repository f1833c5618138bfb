package shaft

import (
	"math"
	"testing"
)

// A steady belt tires a turning axle and not one that stands.
func TestStandingAxleDoesNotTireOfASteadyPull(t *testing.T) {
	s := Default()
	s.CentreOffset, s.Held, s.AxleDiameter = 0, 0, 0.025
	l := Loads{Along: 1000, At: 0.010, Speed: 270} // overhung behind the propeller-side bearing
	still := Support(s, l)
	s.Axle = Turns
	turning := Support(s, l)
	if !(turning.LargestBending > 0 && still.LargestBending > 0) {
		t.Fatal("no bending")
	}
	perMoment := func(r Result) float64 { return r.FatigueSafety.Value * r.LargestBending }
	if ratio := perMoment(still) / perMoment(turning); math.Abs(ratio-s.Tensile/turning.EnduranceLimit) > 1e-9 {
		t.Errorf("safety at equal moment: still over turning %g, want tensile over endurance %g", ratio, s.Tensile/turning.EnduranceLimit)
	}
}

// Hand sums on a bearing spacing of 30 mm, the wheel midway: what pulsates and
// the gyroscopic peak count as amplitude, the steady pull as mean.
func TestStandingAxleTiresOfWhatChanges(t *testing.T) {
	s := Default()
	s.CentreOffset, s.Held = 0, 0
	l := Loads{Along: 1000, At: s.PropSidePlace + s.Spacing/2, Pulsating: Vector{Across: 200}, GyroCouple: 3, GyroPeak: 6, Speed: 270}
	c := casesOf(s, l)
	x := c.stressing(StandsStill, c.places.EngineSide)
	// 500 N and 100 N over 30 mm; the couple passes whole.
	if math.Abs(x.MeanBending-15) > 1e-9 || math.Abs(x.BendingAmplitude-(3+6)) > 1e-9 {
		t.Errorf("%+v", x)
	}
	// 1.2·(500 + 100 + 6/0.030) against nothing standing.
	if p := Support(s, l).PropSide.StaticEquivalent; math.Abs(p-960) > 1e-9 {
		t.Errorf("static load %g", p)
	}
	l.Standing.Along = 4000
	if p := Support(s, l).PropSide.StaticEquivalent; math.Abs(p-2000) > 1e-9 {
		t.Errorf("static load, engine stopped, %g", p)
	}
}

func TestTorqueRunsFromWheelToPlateOnly(t *testing.T) {
	s := Default()
	s.Axle, s.CentreOffset = Turns, 0
	l := Loads{At: 0.036, Torque: 50, TorqueAmplitude: 70, Speed: 270}
	r := Support(s, l)
	if !r.FatigueSafety.Known {
		t.Fatal("the torque stresses nothing")
	}
	s.Axle = StandsStill
	if r := Support(s, l); r.FatigueSafety.Known {
		t.Errorf("a standing axle carries torque: safety %g", r.FatigueSafety.Value)
	}
	c := casesOf(s, l)
	if ahead := c.stressing(Turns, c.places.EngineSide); ahead.MeanTorque != 0 || ahead.TorqueAmplitude != 0 {
		t.Errorf("torque ahead of the wheel: %+v", ahead)
	}
}

// Imbalance of 1 kg, 1 mm off, at 100 rad/s is 10 N on an overhang of 40 mm:
// 0.4 N·m at the propeller-side seat, steady on an axle that turns with it; a
// standing axle held 30 mm ahead of its engine-side bearing, 100 mm from the
// propeller, feels 1 N·m to and fro.
func TestImbalanceIsSteadyOnlyOnATurningAxle(t *testing.T) {
	s := Default()
	s.CentreOffset, s.Held = 1e-3, 0.030
	c := casesOf(s, Loads{PropellerWeight: 9.80665, PropellerOverhang: 0.018, Speed: 100})
	weight := 9.80665
	x := c.stressing(Turns, c.places.PropSide)
	if math.Abs(x.MeanBending-0.4) > 1e-12 || math.Abs(x.BendingAmplitude-0.04*weight) > 1e-12 {
		t.Errorf("turning: %+v", x)
	}
	x = c.stressing(StandsStill, c.places.EngineSide+s.Held)
	if math.Abs(x.BendingAmplitude-1) > 1e-12 || math.Abs(x.MeanBending-0.1*weight) > 1e-12 {
		t.Errorf("standing: %+v", x)
	}
}
