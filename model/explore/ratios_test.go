package explore

import (
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"backspan/model"
	"backspan/model/drive"
	"backspan/model/match"
	"backspan/model/param"
)

func chart(t testing.TB, name string, change [][2]string, from, to float64, n int) (Chart, error) {
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
	return Ratios(s, v, from, to, n)
}

func TestBestClimbsBestOfWhatIsAllowed(t *testing.T) {
	for _, v := range model.Sample().Variants {
		c, err := chart(t, v.Name, nil, 0, 0, 21)
		if err != nil || c.Best < 0 || len(c.Points) > 21 {
			t.Fatalf("%s: %v, %d of %d points", v.Name, err, c.Best, len(c.Points))
		}
		best, barred, last := c.Points[c.Best], 0, 0.0
		if len(best.Barred) > 0 || !strings.Contains(c.Reason, "neither lugs nor over-speeds") {
			t.Errorf("%s: best is barred by %v: %s", v.Name, best.Barred, c.Reason)
		}
		for _, p := range c.Points {
			if len(p.Barred) > 0 {
				barred++
			} else if p.Climb.Value > best.Climb.Value {
				t.Errorf("%s: %g climbs better than the best", v.Name, p.Ratio.Value)
			}
			if p.Ratio.Known && (p.Ratio.Value <= last || math.Abs(p.Ratio.Value/p.Asked-1) > 0.02) {
				t.Errorf("%s: ratio %g after %g, asked %g", v.Name, p.Ratio.Value, last, p.Asked)
			}
			last = p.Ratio.Value
		}
		if barred == 0 || c.Best == 0 || c.Best == len(c.Points)-1 {
			t.Errorf("%s: %d barred, best is point %d", v.Name, barred, c.Best)
		}
	}
}

// A point of the chart is what the bench shows when the builder types the value.
func TestPointIsTheMachineAsTyped(t *testing.T) {
	for name, path := range map[string]string{
		"Belt 190":    "drive.ribbed_belt.driven_pulley_effective_diameter",
		"Gear 190":    "drive.gear.wheel_teeth",
		"Toothed 190": "drive.toothed_belt.driven_teeth",
	} {
		c, err := chart(t, name, nil, 2.6, 3, 3)
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range c.Points {
			s := model.Sample()
			v := &s.Variants[s.Index(name)]
			v.Drive.FreeRatio()
			typed, _ := param.Find(v.Sections(), path)
			if err := typed.Set(p.Set); err != nil {
				t.Fatal(err)
			}
			o := model.Evaluate(s, v)
			for key, got := range map[string]param.Slot{"drive.ratio": p.Ratio, "propeller.static_thrust": p.Thrust, "flight.climb_rate": p.Climb, "propeller.tip_mach": p.TipMach} {
				if r, _ := o.Reading(key); !got.Known || math.Abs(r.Value-got.Value) > 1e-9*math.Abs(got.Value) {
					t.Errorf("%s with %s: %s is %g, the chart says %g", name, p.Set, key, r.Value, got.Value)
				}
			}
		}
	}
}

// Standing the engine keeps within its speeds, in flight it does not: barred.
func TestOverSpeedInFlightBars(t *testing.T) {
	c, err := chart(t, "Belt 190", [][2]string{{"engine.speed_limit", "9000"}}, 3.4, 3.56, 12)
	if err != nil {
		t.Fatal(err)
	}
	found := false
	for _, p := range c.Points {
		if p.Static.Value < p.Trim.Value && p.Trim.Value > 942.47 {
			found = true
			if len(p.Barred) != 1 || p.Barred[0] != match.OverSpeed.Short() {
				t.Errorf("%.3f: %v", p.Ratio.Value, p.Barred)
			}
		}
	}
	if !found {
		t.Error("no ratio over-speeds in flight alone")
	}
}

// An engine that lugs is not said to over-speed, standing or in flight.
func TestLuggingIsNotCalledOverSpeed(t *testing.T) {
	c, err := chart(t, "Belt 190", nil, 1.4, 1.8, 4)
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range c.Points {
		if len(p.Barred) != 1 || p.Barred[0] != match.Lugging.Short() {
			t.Errorf("%.3f: %v", p.Ratio.Value, p.Barred)
		}
	}
}

func TestGearCentreDistanceFollowsTheTeeth(t *testing.T) {
	free, err := chart(t, "Gear 190", nil, 2.8, 3, 3)
	held, err2 := chart(t, "Gear 190", [][2]string{{"drive.gear.centre_distance", "76.5 mm"}}, 2.8, 3, 3)
	if err != nil || err2 != nil {
		t.Fatal(err, err2)
	}
	if d := cmp.Diff(free.Points, held.Points); d != "" {
		t.Error("a centre distance given for one pair of wheels was kept for others:\n", d)
	}
}

func TestWholeTeethComeOnce(t *testing.T) {
	c, err := chart(t, "Gear 190", [][2]string{{"drive.gear.centre_distance", "80 mm"}}, 2.7, 3, 40)
	if err != nil {
		t.Fatal(err)
	}
	// 19 teeth on the pinion: 51 to 57 on the wheel.
	if len(c.Points) != 7 || c.Points[0].Set != "51" || c.Points[6].Set != "57" || !c.Points[6].Climb.Known {
		t.Errorf("%d points, %+v", len(c.Points), c.Points)
	}
}

// A toothed belt keeps its axles and takes the belt that fits; where the pulleys
// meet, the point says so.
func TestAxlesStay(t *testing.T) {
	c, err := chart(t, "Toothed 190", nil, 2.8, 4, 10)
	if err != nil {
		t.Fatal(err)
	}
	last := c.Points[len(c.Points)-1]
	if last.Ratio.Known || len(last.Barred) != 1 || !strings.Contains(last.Barred[0], "pulleys touch") {
		t.Errorf("%+v", last)
	}
	s := model.Sample()
	d := s.Variants[s.Index("Toothed 190")].Drive
	d.FreeRatio()
	if got := d.ToothedBelt.CentreDistance; math.Abs(got-0.177) > 0.001 {
		t.Errorf("axles stand %.4f m apart", got)
	}
}

func TestWhatCannotBeAsked(t *testing.T) {
	for _, tc := range []struct {
		name, says string
		change     [][2]string
		from, to   float64
		n          int
	}{
		{"direct", "no ratio to change", [][2]string{{"drive.kind", "direct"}}, 2, 3, 5},
		{"backwards", "first below the last", nil, 3, 2, 5},
		{"too high", "from 0.5 to 12", nil, 3, 20, 5},
		{"one step", "2 to 400 steps", nil, 2, 3, 1},
		{"unbuilt", "name the ratios", [][2]string{{"drive.ribbed_belt.centre_distance", "100 mm"}}, 0, 0, 5},
	} {
		if _, err := chart(t, "Belt 190", tc.change, tc.from, tc.to, tc.n); err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%s: %v", tc.name, err)
		}
	}
}

func TestNoBestSaysWhatBars(t *testing.T) {
	for _, tc := range []struct {
		name, says string
		change     [][2]string
		from, to   float64
	}{
		{"all too low", "the engine lugs", nil, 1.8, 2.2},
		{"all too high", "the engine over-speeds", [][2]string{{"engine.speed_limit", "8500"}}, 3.6, 3.85},
		{"curve too short", "the engine runs past the end of its Power curve", nil, 3.6, 3.85},
		{"quiet tips asked", "tip Mach", [][2]string{{"propeller.tip_mach_limit", "0.45"}}, 2.7, 3.1},
	} {
		c, err := chart(t, "Belt 190", tc.change, tc.from, tc.to, 4)
		if err != nil || c.Best != -1 || !strings.Contains(c.Reason, tc.says) {
			t.Errorf("%s: %v, best %d: %s", tc.name, err, c.Best, c.Reason)
		}
	}
}

// What climbs better than the best is named with what bars it.
func TestBarredClimbIsNamed(t *testing.T) {
	c, err := chart(t, "Belt 190", [][2]string{{"propeller.tip_mach_limit", "0.54"}}, 2.6, 3.1, 12)
	if err != nil || c.Best < 0 || !strings.Contains(c.Reason, "would climb") || !strings.Contains(c.Reason, "tip Mach") {
		t.Errorf("%v: %s", err, c.Reason)
	}
	c, err = chart(t, "Belt 190", nil, 2.7, 2.8, 3)
	if err != nil || c.Best != 2 || !strings.Contains(c.Reason, "look further") {
		t.Errorf("%v: %s", err, c.Reason)
	}
}

func TestRatioOutsideItsParameterSaysSo(t *testing.T) {
	c, err := chart(t, "Belt 190", nil, 3, 8, 6)
	last := c.Points[len(c.Points)-1]
	if err != nil || len(last.Barred) != 1 || strings.Count(last.Barred[0], "Driven pulley") != 1 || last.Set != "572 mm" || strings.Contains(last.Barred[0], "kept") {
		t.Errorf("%v: %+v", err, last)
	}
	c, err = chart(t, "Gear 190", nil, 3, 12, 6)
	last = c.Points[len(c.Points)-1]
	if err != nil || len(last.Barred) != 1 || strings.Count(last.Barred[0], "Wheel teeth") != 1 || last.Set != "228" {
		t.Errorf("%v: %+v", err, last)
	}
}

func TestTheStudyIsLeftAlone(t *testing.T) {
	s := model.Sample()
	for i := range s.Variants {
		if _, err := Ratios(s, &s.Variants[i], 2.5, 3.5, 4); err != nil {
			t.Fatal(err)
		}
	}
	if d := cmp.Diff(model.Sample(), s); d != "" {
		t.Error(d)
	}
	if s.Variants[0].Drive.Kind != drive.RibbedBelt {
		t.Error("the sample begins with another drive than this test thinks")
	}
}

func BenchmarkRatioChart(b *testing.B) {
	s := model.Sample()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Ratios(s, &s.Variants[0], 2.2, 3.7, 40); err != nil {
			b.Fatal(err)
		}
	}
}
