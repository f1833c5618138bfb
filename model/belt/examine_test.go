package belt

import (
	"math"
	"testing"

	"backspan/model/part"
)

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s is %.8g, want %.8g", what, got, want)
	}
}

// The figures are from a separate script of the same equations: a ten-rib
// 65/175 mm stage at 15 kW and 8500 rpm in air of 303 K and 1.165 kg/m³ flowing
// at 12 m/s.
func TestHeatOfATenRibStage(t *testing.T) {
	b, at := build(t, func(s *Spec) { s.Ribs, s.DrivenDiameter, s.CentreDistance = 10, 0.175, 0.165 }), rated()
	r := b.Examine(at, part.Train{})
	near(t, "belt temperature", r.Temperature, 303+450/8.219836, 1e-4)
	near(t, "windage", r.WindageLoss, 4.432425, 1e-5)
	at.CrankSpeed, at.Power, at.Inflow = 0, 0, 0
	near(t, "temperature at standstill", b.Examine(at, part.Train{}).Temperature, 303, 0)
}

func TestTakeUpFollowsTheSettingRate(t *testing.T) {
	r := build(t, asIs).Examine(rated(), part.Train{})
	// The rate is that of the set belt; the belt's own stretch bends the line
	// by a fraction of a percent.
	near(t, "take-up", r.TakeUp, r.StandingTension/r.SettingRate, 0.01*r.TakeUp)
}

func TestCrankMomentTakesTheGreaterLoad(t *testing.T) {
	b := build(t, asIs)
	r := b.Examine(rated(), part.Train{})
	if !(r.Standing.Size() > r.Running.Size()) || !(r.Adjustment.NewLoad > r.Adjustment.HotLoad) {
		t.Fatal("a new belt, standing, loads the shaft most here")
	}
	near(t, "moment", r.CrankMoment, r.Adjustment.NewLoad*b.Overhang(), 1e-9)
	// With a slack belt and a great pull the running load can be the greater:
	// the spans of a long, widely tilted belt pull across the line of centres.
	steep := build(t, func(s *Spec) {
		s.CrankDiameter, s.DrivenDiameter, s.CentreDistance = 0.02, 0.30, 0.170
		s.CrankBore, s.StandingTension.Known, s.StandingTension.Value = 0.008, true, 100
		s.RatedEfficiency = 0.9
	}).Examine(rated(), part.Train{})
	if !(steep.Running.Size() > steep.Standing.Size()) {
		t.Fatal("the running load is greater than the standing one here")
	}
	near(t, "moment", steep.CrankMoment, steep.greatestShaftLoad()*b.Overhang(), 1e-9)
}

// Fan, clearance and width all move the belt's pull away from the bearing.
func TestOverhangIsASumOfPieces(t *testing.T) {
	plain := build(t, asIs)
	s := Default()
	near(t, "overhang", plain.Overhang(), s.BearingToFace+s.Clearance+s.SideWall+plain.FaceWidth()/2, 1e-12)
	behindFan, err := New(s, rated(), 0.045, part.Train{})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "behind a fan", behindFan.Overhang()-plain.Overhang(), 0.045, 1e-12)
}

func TestPulleysWeighWhatTheirMetalDoes(t *testing.T) {
	plain := build(t, func(s *Spec) { s.WebCutOut = 0 })
	cut := build(t, func(s *Spec) { s.WebCutOut = 0.5 })
	s := Default()
	outer, inner := s.DrivenDiameter/2, s.BearingSeat/2
	web := math.Pi * (outer*outer - inner*inner) * s.WebThickness * s.PulleyDensity
	near(t, "half a web", plain.Pieces()[5].Mass-cut.Pieces()[5].Mass, web/2, 1e-12)
	thick := build(t, func(s *Spec) { s.WebCutOut, s.FlangeThickness = 0, 2*s.FlangeThickness })
	r := s.FlangeDiameter / 2
	plate := math.Pi * r * r * s.FlangeThickness * s.PulleyDensity
	near(t, "a second plate's inertia", thick.SpinningInertia()-plain.SpinningInertia(), plate*r*r/2, 1e-12)
	// The crank pulley: rim and walls as tubes, hub as a tube, web as a disc.
	face := plain.FaceWidth()
	tube := func(inner, outer, length float64) float64 {
		return math.Pi * (outer*outer - inner*inner) * length * s.PulleyDensity
	}
	e := s.CrankDiameter / 2
	want := tube(e-s.RimThickness, e, face) + 2*tube(e-s.RimThickness, e+s.SideWallHeight, s.SideWall) +
		tube(s.CrankBore/2, s.CrankBore/2+s.HubWall, face+2*s.SideWall) +
		tube(s.CrankBore/2+s.HubWall, e-s.RimThickness, s.WebThickness)
	crank := plain.Pieces()[1]
	near(t, "crank pulley", crank.Mass, want, 1e-12)
	near(t, "crank pulley's centre", crank.CGAft, face/2+s.SideWall, 1e-12)
}
