package toothedbelt

import (
	"math"
	"strings"
	"testing"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/unit"
)

func rated() part.Duty {
	return part.Duty{Power: 15e3, CrankSpeed: unit.RPM.SI(8500), AirTemperature: 303, AirDensity: 1.165, Inflow: 12}
}

func build(t testing.TB, change func(*Spec)) Belt {
	t.Helper()
	s := Default()
	change(&s)
	b, err := New(s, rated(), 0, part.Train{})
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func asIs(*Spec) {}

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s is %.9g, want %.9g", what, got, want)
	}
}

func TestDefaultStageHolds(t *testing.T) {
	b := build(t, asIs)
	for _, c := range b.Examine(rated(), part.Train{}).Checks(nil, 0.1) {
		if c.Verdict.Worse(reading.NotRated) {
			t.Errorf("%s: %s, %s", c.Key, c.Verdict, c.Text())
		}
	}
}

func TestImpossibleStagesAreRefused(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Spec)
		says   string
	}{
		{"belt too short", func(s *Spec) { s.BeltTeeth = 90 }, "Belt teeth: with 90 teeth the pulleys touch; give 94 or more"},
		{"pulleys touch", func(s *Spec) { s.LaidOutBy, s.CentreDistance = ByCentreDistance, 0.120 }, "Centre distance wanted: the pulleys touch at 120.0 mm; give 142.2 mm or more"},
		{"bore through the rim", func(s *Spec) { s.CrankBore = 0.058 }, "Crank pulley bore: 58.0 mm leaves no metal"},
		{"bearing through the rim", func(s *Spec) { s.DrivenTeeth = 22 }, "Bearing seat in driven pulley: 47.0 mm leaves no metal"},
		{"efficiency beyond windage", func(s *Spec) { s.BeltWidth, s.CrankTeeth, s.BeltTeeth, s.RatedEfficiency = 0.13, 80, 400, 0.995 },
			"Efficiency at rated power: windage alone loses"},
	} {
		s := Default()
		tc.change(&s)
		if _, err := New(s, rated(), 0, part.Train{}); err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: %v", tc.name, err)
		}
	}
	if _, err := New(Default(), part.Duty{}, 0, part.Train{}); err == nil {
		t.Error("took an engine without power")
	}
}

// The fewest belt teeth the refusal names can be built; one fewer cannot.
func TestFewestBeltTeethCanBeBuilt(t *testing.T) {
	r := build(t, func(s *Spec) { s.BeltTeeth = 94 }).Examine(rated(), part.Train{})
	if r.CentreShorter.Known || !r.CentreLonger.Known {
		t.Errorf("shorter %+v, longer %+v", r.CentreShorter, r.CentreLonger)
	}
}

func TestWantedCentreDistanceTakesTheNearestBelt(t *testing.T) {
	for wanted, teeth := range map[float64]int{0.1711: 100, 0.1731: 100, 0.1733: 101, 0.1689: 100, 0.1687: 99, 0.1422: 94} {
		b := build(t, func(s *Spec) { s.LaidOutBy, s.CentreDistance, s.BeltTeeth = ByCentreDistance, wanted, 20 })
		r := b.Examine(rated(), part.Train{})
		if r.BeltTeeth != teeth {
			t.Errorf("%g m took %d teeth, want %d", wanted, r.BeltTeeth, teeth)
		}
		near(t, "length", r.Geometry.Length(), float64(teeth)*8e-3, 1e-12)
		if r.CentreShorter.Known && r.CentreShorter.Value >= b.AxisOffset() || r.CentreLonger.Value <= b.AxisOffset() {
			t.Errorf("neighbours %+v, %+v of %g", r.CentreShorter, r.CentreLonger, b.AxisOffset())
		}
	}
}

func TestTeethDoNotSlip(t *testing.T) {
	b, at := build(t, asIs), rated()
	if b.Ratio() != 80.0/28 || b.Turn() != 1 {
		t.Errorf("ratio %g, turn %d", b.Ratio(), b.Turn())
	}
	for _, share := range []float64{0, 0.3, 1, 2} {
		if got := b.Transmit(share*at.Power, at.CrankSpeed).SpeedOut; got != at.CrankSpeed/b.Ratio() {
			t.Errorf("at %g of the power the propeller turns at %g", share, got)
		}
	}
}

func TestRatedEfficiencyIsMetAndPartLoadIsWorse(t *testing.T) {
	b, at := build(t, asIs), rated()
	near(t, "efficiency at the rated point", b.Transmit(at.Power, at.CrankSpeed).Efficiency(), 0.98, 1e-12)
	if part := b.Transmit(at.Power/4, at.CrankSpeed).Efficiency(); !(part < 0.98) {
		t.Errorf("efficiency at part load %.4f", part)
	}
	r := b.Examine(at, part.Train{})
	near(t, "parts of the loss", r.MeshingLoss+r.BendingLoss+r.WindageLoss, r.Transmission.Loss(), 1e-9)
	near(t, "the load's share", r.MeshingLoss, r.BendingLoss, 1e-9)
	if still := b.Transmit(at.Power, 0); still.PowerOut != 0 || still.SpeedOut != 0 {
		t.Errorf("at standstill %+v arrives", still)
	}
}

func TestDepthIsTheSumOfItsPieces(t *testing.T) {
	b := build(t, asIs)
	// Clearance 4, face 32, side walls 2 each, web 4, plate 8.
	near(t, "depth", part.Depth(b.Pieces()), 52e-3, 1e-12)
	keys := map[string]part.Piece{}
	for _, p := range b.Pieces() {
		keys[p.Key] = p
	}
	for _, key := range []string{"drive.clearance", "drive.crank_pulley", "drive.belt", "drive.carrier", "drive.axle", "drive.driven_pulley", "drive.flange"} {
		if _, ok := keys[key]; !ok {
			t.Errorf("no piece %s", key)
		}
	}
	near(t, "driven pulley's height", keys["drive.driven_pulley"].CGUp, b.AxisOffset(), 0)
	near(t, "belt", keys["drive.belt"].Mass, 5.5*0.030*0.8, 1e-12)
}

// The overhang counts fan, clearance, flange and half the face.
func TestOverhang(t *testing.T) {
	s := Default()
	b, err := New(s, rated(), 0.045, part.Train{})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "overhang", b.Overhang(), 0.010+0.045+0.004+0.002+0.016, 1e-12)
	r := b.Examine(rated(), part.Train{})
	near(t, "moment", r.CrankMoment, math.Max(r.Standing.Size(), r.Running.Size())*b.Overhang(), 1e-9)
}

func TestPulleysWeighWhatTheirMetalDoes(t *testing.T) {
	b, s := build(t, func(s *Spec) { s.WebCutOut = 0 }), Default()
	tube := func(inner, outer, length float64) float64 {
		return math.Pi * (outer*outer - inner*inner) * length * s.PulleyDensity
	}
	e, face := b.row.outsideDiameter(s.CrankTeeth)/2, b.FaceWidth()
	crank := b.Pieces()[1]
	near(t, "crank pulley", crank.Mass, tube(e-s.RimThickness, e, face)+2*tube(e-s.RimThickness, e+s.SideWallHeight, s.SideWall)+
		tube(s.CrankBore/2, s.CrankBore/2+s.HubWall, face+2*s.SideWall)+
		tube(s.CrankBore/2+s.HubWall, e-s.RimThickness, s.WebThickness), 1e-12)
	near(t, "crank pulley's centre", crank.CGAft, face/2+s.SideWall, 1e-12)
	cut := build(t, func(s *Spec) { s.WebCutOut = 0.5 })
	near(t, "half a web", b.Pieces()[5].Mass-cut.Pieces()[5].Mass, tube(s.BearingSeat/2, b.row.outsideDiameter(s.DrivenTeeth)/2, s.WebThickness)/2, 1e-12)
}

func TestGivenTensionIsTakenAndChecked(t *testing.T) {
	b := build(t, func(s *Spec) { s.StandingTension = param.Known(500) })
	r := b.Examine(rated(), part.Train{})
	near(t, "sum of the spans", r.Tensions.TightSide+r.Tensions.SlackSide, 1000, 1e-9)
	if c := anyspec.Check(t, r.Checks(nil, 0.1), "toothedbelt.standing_tension"); c.Verdict != reading.Fails {
		t.Errorf("%+v", c)
	}
}

func TestTakeUpFollowsTheSettingRate(t *testing.T) {
	r := build(t, func(s *Spec) { s.StiffnessPerMillimetre = param.Known(15e3) }).Examine(rated(), part.Train{})
	near(t, "take-up", r.TakeUp.Value, r.StandingTension/r.SettingRate.Value, 0.01*r.TakeUp.Value)
	if plain := build(t, asIs).Examine(rated(), part.Train{}); plain.TakeUp.Known || plain.SettingRate.Known {
		t.Error("a belt of unknown stiffness has a take-up")
	}
}

func TestLeastTeethGuidance(t *testing.T) {
	for rpm, want := range map[float64]int{500: 22, 899: 22, 901: 24, 1199: 24, 1201: 26, 1799: 26, 1801: 28, 9000: 28} {
		if got := leastTeeth(unit.RPM.SI(rpm)); got != want {
			t.Errorf("at %g rpm %d teeth, want %d", rpm, got, want)
		}
	}
	few := build(t, func(s *Spec) { s.CrankTeeth = 26 }).Examine(rated(), part.Train{})
	c := anyspec.Check(t, few.Checks(nil, 0.1), "toothedbelt.least_teeth")
	if c.Verdict != reading.Thin || !strings.Contains(c.Origin, "extrapolated") {
		t.Errorf("%+v", c)
	}
	at := rated()
	at.CrankSpeed = unit.RPM.SI(4000)
	if c := anyspec.Check(t, build(t, asIs).Examine(at, part.Train{}).Checks(nil, 0.1), "toothedbelt.least_teeth"); strings.Contains(c.Origin, "extrapolated") {
		t.Errorf("%+v", c)
	}
}

func TestSpeedLimitIsHeldWhenGiven(t *testing.T) {
	for limit, want := range map[float64]reading.Verdict{30: reading.Fails, 33: reading.Thin, 50: reading.Holds} {
		r := build(t, func(s *Spec) { s.SpeedMax = param.Known(limit) }).Examine(rated(), part.Train{})
		if c := anyspec.Check(t, r.Checks(nil, 0.1), "toothedbelt.speed"); c.Verdict != want {
			t.Errorf("%g m/s: %s", limit, c.Verdict)
		}
	}
}
