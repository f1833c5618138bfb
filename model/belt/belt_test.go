package belt

import (
	"math"
	"reflect"
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

func TestDeclarationsHoldTheDefault(t *testing.T) {
	s := Default()
	anyspec.HoldDefaults(t, s.Params())
	if !reflect.DeepEqual(s, Default()) {
		t.Error("setting the default changed it")
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

func TestReadingsOfNothing(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range (Result{}).Readings(nil) {
		if r.Origin == "" {
			t.Errorf("%s names no source", r.Key)
		}
		if seen[r.Key] || !strings.HasPrefix(r.Key, "belt.") || len([]rune(r.Label)) > 34 || r.Method == "" || r.Origin == "" {
			t.Errorf("poor declaration: %+v", r)
		}
		seen[r.Key] = true
	}
	if len((Result{}).Checks(nil, 0.1)) == 0 {
		t.Error("no checks")
	}
}

func TestImpossibleStagesAreRefused(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Spec)
		says   string
	}{
		{"pulleys touch", func(s *Spec) { s.CentreDistance = 0.120 }, "Centre distance: the pulleys touch at 120 mm; give more than 142 mm"},
		{"bore through the rim", func(s *Spec) { s.CrankBore = 0.056 }, "Crank pulley bore: 56.0 mm leaves no metal"},
		{"bearing through the rim", func(s *Spec) { s.DrivenDiameter = 0.056 }, "Bearing seat in driven pulley: 47.0 mm leaves no metal"},
		{"efficiency beyond creep", func(s *Spec) { s.Ribs, s.RatedEfficiency = 2, 0.995 }, "Efficiency at rated power: creep and windage alone lose"},
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

func TestDepthIsTheSumOfItsPieces(t *testing.T) {
	b := build(t, func(s *Spec) { s.Ribs = 8 })
	// Clearance 4, face 7·3.56+5, side walls 3 each, web 4, plate 8.
	if got, want := part.Depth(b.Pieces()), 4e-3+29.92e-3+6e-3+4e-3+8e-3; math.Abs(got-want) > 1e-9 {
		t.Errorf("depth %.6f m, want %.6f", got, want)
	}
	up := 0.0
	for _, p := range b.Pieces() {
		if p.Key == "drive.driven_pulley" {
			up = p.CGUp
		}
	}
	if up != b.AxisOffset() {
		t.Errorf("the driven pulley stands %g m up, its axis %g", up, b.AxisOffset())
	}
}

func TestRatedEfficiencyIsMetAndPartLoadIsWorse(t *testing.T) {
	b := build(t, asIs)
	at := rated()
	full := b.Transmit(at.Power, at.CrankSpeed)
	if e := full.Efficiency(); math.Abs(e-0.97) > 1e-12 {
		t.Errorf("efficiency at the rated point %.6f", e)
	}
	cruise := b.Transmit(at.Power*0.343, at.CrankSpeed*0.7)
	if !(cruise.Efficiency() < full.Efficiency()) {
		t.Errorf("part load %.4f is no worse than full %.4f", cruise.Efficiency(), full.Efficiency())
	}
	if idle := b.Transmit(0, 200); !(idle.PowerOut < 0) || idle.SpeedOut != 200/b.Ratio() {
		t.Errorf("unpowered: %+v", idle)
	}
	if still := b.Transmit(0, 0); still != (part.Transmission{}) {
		t.Errorf("at standstill: %+v", still)
	}
}

func TestExamineAgreesWithTransmit(t *testing.T) {
	b, at := build(t, asIs), rated()
	r := b.Examine(at, part.Train{})
	if r.Transmission != b.Transmit(at.Power, at.CrankSpeed) {
		t.Error("another transmission")
	}
	if sum := r.CreepLoss + r.BendingLoss + r.WindageLoss; math.Abs(sum-r.Transmission.Loss()) > 1e-9 {
		t.Errorf("losses sum to %g, transmission loses %g", sum, r.Transmission.Loss())
	}
}

func TestGivenSectionReplacesTheTable(t *testing.T) {
	b := build(t, func(s *Spec) {
		s.Ribs = 10
		s.LineDifferential, s.MassPerRib, s.StiffnessPerRib = param.Known(0.0016), param.Known(0.02), param.Known(60e3)
	})
	if b.Run().Crank != 0.065+0.0032 || b.MassPerLength() != 0.2 || b.losses.stiffness != 600e3 {
		t.Errorf("took %g, %g, %g", b.Run().Crank, b.MassPerLength(), b.losses.stiffness)
	}
}

func TestUpkeep(t *testing.T) {
	u := build(t, asIs).Upkeep()
	if got := u.CostPerTime() * 3600; math.Abs(got-0.6) > 1e-12 || u.Price != 420 {
		t.Errorf("%g an hour, price %g", got, u.Price)
	}
}

func TestTransmitDoesNotAllocate(t *testing.T) {
	b := build(t, asIs)
	if n := testing.AllocsPerRun(100, func() { b.Transmit(9e3, 700) }); n != 0 {
		t.Errorf("%g allocations", n)
	}
}

func BenchmarkTransmit(bb *testing.B) {
	b := build(bb, asIs)
	for bb.Loop() {
		b.Transmit(9e3, 700)
	}
}

func BenchmarkNew(bb *testing.B) {
	s, at := Default(), rated()
	for bb.Loop() {
		if _, err := New(s, at, 0, part.Train{}); err != nil {
			bb.Fatal(err)
		}
	}
}

func BenchmarkExamine(bb *testing.B) {
	b, at := build(bb, asIs), rated()
	for bb.Loop() {
		b.Examine(at, part.Train{})
	}
}

func BenchmarkReadingsAndChecks(bb *testing.B) {
	r := build(bb, asIs).Examine(rated(), part.Train{})
	for bb.Loop() {
		r.Readings(nil)
		r.Checks(nil, 0.1)
	}
}

func BenchmarkPieces(bb *testing.B) {
	b := build(bb, asIs)
	for bb.Loop() {
		b.Pieces()
	}
}
