package explore

import (
	"context"
	"errors"
	"fmt"
	"math"
	"reflect"
	"testing"

	"backspan/model"
	"backspan/model/param"
)

// seen keeps what was looked at, because looking takes a while.
var seen = map[string]func() (*model.Study, *model.Variant, *Survey){}

// surveyed looks at a variant of the sample.
func surveyed(t testing.TB, name string, change ...[2]string) (*model.Study, *model.Variant, *Survey) {
	t.Helper()
	key := fmt.Sprint(name, change)
	if known, ok := seen[key]; ok {
		return known()
	}
	s, v, y := survey(t, name, change)
	seen[key] = func() (*model.Study, *model.Variant, *Survey) { return s, v, y }
	return s, v, y
}

func survey(t testing.TB, name string, change [][2]string) (*model.Study, *model.Variant, *Survey) {
	t.Helper()
	s := model.Sample()
	v := &s.Variants[s.Index(name)]
	for _, c := range change {
		p, ok := param.Find(v.Sections(), c[0])
		if !ok {
			t.Fatal("no parameter ", c[0])
		}
		if err := p.Set(c[1]); err != nil {
			t.Fatal(err)
		}
	}
	y, err := Look(context.Background(), s, v, nil)
	if err != nil {
		t.Fatal(err)
	}
	return s, v, y
}

func mover(t *testing.T, a Answer, path string) (Mover, int) {
	t.Helper()
	for i, m := range a.Movers {
		if m.Path == path {
			return m, i
		}
	}
	t.Fatalf("%s is not among the %d movers", path, len(a.Movers))
	return Mover{}, 0
}

// Masses and depths add up, and a ratio is one diameter over the other: what a
// hundredth of a part does follows from the sums.
func TestMoversOfSums(t *testing.T) {
	_, v, y := surveyed(t, "Belt 190")
	mass, _ := y.Before().Reading("stack.mass_ready")
	depth, _ := y.Before().Reading("stack.depth")
	crank, driven := v.Drive.RibbedBelt.CrankDiameter, v.Drive.RibbedBelt.DrivenDiameter
	// The belt runs on pitch diameters, which exceed the effective ones by as much
	// on both pulleys.
	ratio, _ := y.Before().Reading("drive.ratio")
	above := (driven - ratio.Value*crank) / (ratio.Value - 1)
	for _, tc := range []struct {
		reading, path string
		more, less    float64 // as shares
		tolerance     float64
	}{
		{"stack.mass_ready", "engine.mass", 0.01 * v.Engine.Mass / mass.Value, -0.01 * v.Engine.Mass / mass.Value, 1e-9},
		{"stack.depth", "frame.frame_depth", 0.01 * v.Frame.FrameDepth / depth.Value, -0.01 * v.Frame.FrameDepth / depth.Value, 1e-9},
		{"drive.ratio", "drive.ribbed_belt.driven_pulley_effective_diameter", 0.01 * driven / (driven + above), -0.01 * driven / (driven + above), 1e-9},
		{"drive.ratio", "drive.ribbed_belt.crank_pulley_effective_diameter",
			-0.01 * crank / (1.01*crank + above), 0.01 * crank / (0.99*crank + above), 1e-9},
	} {
		a := y.Movers(Subject{Key: tc.reading})
		if a.Terms != Shares {
			t.Errorf("%s is told in terms %d", tc.reading, a.Terms)
		}
		m, _ := mover(t, a, tc.path)
		if m.Step != "1 %" || math.Abs(m.More.Change.Value-tc.more) > tc.tolerance || math.Abs(m.Less.Change.Value-tc.less) > tc.tolerance {
			t.Errorf("%s by %s: %s moves it by %+.6f and %+.6f, want %+.6f and %+.6f", tc.reading, tc.path, m.Step,
				m.More.Change.Value, m.Less.Change.Value, tc.more, tc.less)
		}
	}
	if ratio.Value <= 1 {
		t.Fatal("not a reduction")
	}
	if _, i := mover(t, y.Movers(Subject{Key: "drive.ratio"}), "drive.ribbed_belt.driven_pulley_effective_diameter"); i > 1 {
		t.Errorf("the driven pulley ranks %d for the ratio", i+1)
	}
}

// Every effect told is what the bench shows after the step is typed.
func TestEffectsAreThoseOfTheStepTyped(t *testing.T) {
	s, v, y := surveyed(t, "Gear 190")
	thrust, _ := y.Before().Reading("propeller.static_thrust")
	a := y.Movers(Subject{Key: "propeller.static_thrust"})
	if len(a.Movers) < 5 {
		t.Fatalf("%d movers", len(a.Movers))
	}
	for _, m := range a.Movers {
		s2, v2 := *s, v.Clone()
		p, _ := param.Find(sections(&s2, &v2, m.Shared), m.Path)
		x, _ := p.Number()
		step := m.number.size
		if m.Step == "1 %" {
			step = p.Unit.From(x) / 100
		}
		if err := p.SetNumber(p.Unit.SI(p.Unit.From(x) + step)); err != nil {
			if m.More.Why == "" {
				t.Errorf("%s: %v, and yet an effect is told", m.Path, err)
			}
			continue
		}
		r, _ := model.Evaluate(&s2, &v2).Reading("propeller.static_thrust")
		want := (r.Value - thrust.Value) / thrust.Value
		if math.Abs(m.More.Change.Value-want) > 1e-9 {
			t.Errorf("%s: %+.6f is told, typed it does %+.6f", m.Path, m.More.Change.Value, want)
		}
	}
}

func TestMoversRankTheStrongestFirst(t *testing.T) {
	_, _, y := surveyed(t, "Belt 190")
	for _, r := range y.Before().Readings {
		last := math.Inf(1)
		for _, m := range y.Movers(Subject{Key: r.Key}).Movers {
			if m.weight > last {
				t.Errorf("%s: %s is stronger than the one before", r.Key, m.Path)
			}
			last = m.weight
			for _, e := range []Effect{m.More, m.Less} {
				if e.Change.Known == (e.Why != "") || math.IsNaN(e.Change.Value) || math.IsInf(e.Change.Value, 0) {
					t.Errorf("%s by %s: %+v", r.Key, m.Path, e)
				}
			}
		}
		if !r.Known() && !math.IsInf(last, 1) {
			t.Errorf("%s has no value and yet movers", r.Key)
		}
	}
}

func TestStepsStayInRangeAndCountsWhole(t *testing.T) {
	_, _, y := surveyed(t, "Belt 190", [2]string{"drive.ribbed_belt.ribs", "20"})
	a := y.Movers(Subject{Check: true, Key: "belt.slack_side_peak"})
	m, _ := mover(t, a, "drive.ribbed_belt.ribs")
	if m.Step != "1" || m.More.Why != "the range ends" || !m.Less.Change.Known {
		t.Errorf("%+v", m)
	}
	if a.Terms != Points {
		t.Errorf("terms %d", a.Terms)
	}
	// A place that may be on either side of zero has no hundredth.
	hang, _ := mover(t, y.Movers(Subject{Key: "flight.static_moment"}), "frame.hang_aft")
	if hang.Step == "1 %" {
		t.Errorf("%+v", hang)
	}
}

// A machine that can hardly be built: a step one way leaves no figure, and the
// figure itself may be nought.
func TestStepsThatLeaveNoFigure(t *testing.T) {
	_, _, y := surveyed(t, "Belt 190", [2]string{"drive.ribbed_belt.centre_distance", "141"})
	broken := 0
	for _, r := range y.Before().Readings {
		for _, m := range y.Movers(Subject{Key: r.Key}).Movers {
			for _, e := range []Effect{m.More, m.Less} {
				if math.IsNaN(e.Change.Value) || math.IsInf(e.Change.Value, 0) {
					t.Errorf("%s by %s: %+v", r.Key, m.Path, e)
				}
			}
			if m.breaks() {
				broken++
			}
		}
	}
	if broken == 0 {
		t.Error("no step breaks anything: the test tests nothing")
	}
}

func TestNothingToMove(t *testing.T) {
	_, _, y := surveyed(t, "Belt 190")
	for _, of := range []Subject{{Key: "no.such"}, {Check: true, Key: "no.such"}, {Key: "gear.pitch_diameter"}} {
		if a := y.Movers(of); len(a.Movers) != 0 {
			t.Errorf("%v: %d movers", of, len(a.Movers))
		}
	}
}

func TestLookingLeavesTheStudyAndStopsWhenTold(t *testing.T) {
	s := model.Sample()
	v := &s.Variants[0]
	was := s.Clone()
	ctx, stop := context.WithCancel(context.Background())
	if _, err := Look(ctx, s, v, nil); err != nil || !reflect.DeepEqual(s, was) {
		t.Fatalf("%v, study changed: %v", err, !reflect.DeepEqual(s, was))
	}
	_, err := Look(ctx, s, v, func(done, total int) {
		if done == 5 {
			stop()
		}
		if done > 5+64 {
			t.Errorf("goes on after %d of %d", done, total)
		}
	})
	if !errors.Is(err, context.Canceled) {
		t.Errorf("stopped, and yet %v", err)
	}
}

func BenchmarkMovers(b *testing.B) {
	s := model.Sample()
	for _, name := range []string{"Belt 190", "Gear 190"} {
		v := &s.Variants[s.Index(name)]
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				y, err := Look(context.Background(), s, v, nil)
				if err != nil || len(y.Movers(Subject{Key: "propeller.static_thrust"}).Movers) == 0 {
					b.Fatal(err)
				}
			}
		})
	}
}
