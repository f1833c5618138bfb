package explore

import (
	"math"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/drive"
	"backspan/model/param"
)

// Whatever the drive, what a question begins with is understood and bears on
// the machine.
func TestUsualQuestionsCanBeAsked(t *testing.T) {
	for _, kind := range []drive.Kind{drive.RibbedBelt, drive.ToothedBelt, drive.Gear, drive.Direct} {
		s := model.Sample()
		v := &s.Variants[0]
		v.Drive.Kind = kind
		b := NewBase(s, v)
		if _, err := NewSweep(b, []string{b.UsualPath()}, UsualReadings()); err != nil {
			t.Errorf("%s: %v", kind, err)
		}
		if _, err := NewSearch(b, Wishes{Free: b.UsualFree(), Goals: UsualGoals()}, Effort{4, 1, 1, 1}); err != nil {
			t.Errorf("%s: %v", kind, err)
		}
		var spreads []string
		for _, u := range b.UsualSpreads() {
			if u.Origin == "" {
				t.Errorf("%s: the spread of %s comes from nowhere", kind, u.Key)
			}
			spreads = append(spreads, u.Key+"="+u.Spread)
		}
		if _, err := NewTolerance(b, spreads, UsualReadings(), leastSamples, 1); err != nil {
			t.Errorf("%s: %v", kind, err)
		}
		for _, path := range append(b.UsualFree(), b.UsualPath()) {
			d, err := b.Dial(path)
			if err != nil || !b.Applies(path) {
				t.Errorf("%s: %s does not bear on it: %v", kind, path, err)
			}
			if a, err := b.Axis(path + "=" + d.UsualRange()); err != nil || a.Levels[0] != d.Usual[0] || a.Levels[len(a.Levels)-1] != d.Usual[1] {
				t.Errorf("%s: %s over %q: %v, %v", kind, path, d.UsualRange(), a.Levels, err)
			}
		}
	}
}

// A gear whose centre distance is given cannot take any wheel.
func TestUsualPathLeavesAGivenCentreDistanceAlone(t *testing.T) {
	s := model.Sample()
	v := &s.Variants[s.Index("Gear 190")]
	if got := NewBase(s, v).UsualPath(); got != "drive.gear.wheel_teeth" {
		t.Error(got)
	}
	v.Drive.Gear.CentreDistance.Known, v.Drive.Gear.CentreDistance.Value = true, 0.08
	if got := NewBase(s, v).UsualPath(); got != "propeller.pitch" {
		t.Error(got)
	}
}

// A reading that no spread moves has no spread: not one from rounding, and no
// share of it.
func TestWhatIsAlikeHasNoSpread(t *testing.T) {
	q, err := NewTolerance(base(t, "Belt 190"), []string{"propeller.pitch=±2 %"}, []string{"stack.depth", "propeller.static_thrust"}, 200, 1)
	if err != nil {
		t.Fatal(err)
	}
	var samples []Sample
	if err := q.Run(t.Context(), Span{0, 200}, func(s Sample) error { samples = append(samples, s); return nil }); err != nil {
		t.Fatal(err)
	}
	r := q.Summary(samples)
	depth, thrust := r.Distributions[0], r.Distributions[1]
	if depth.Deviation != 0 || depth.Bars != nil || len(depth.Contributions) != 0 || depth.Mean != depth.P50 {
		t.Errorf("%+v", depth)
	}
	sum := 0
	for _, n := range thrust.Bars {
		sum += n
	}
	if sum != 200 || !(thrust.Least <= thrust.P5 && thrust.P95 <= thrust.Most) {
		t.Errorf("%d samples in the bars of %+v", sum, thrust)
	}
	if c := thrust.Contributions[0].Share; !(c > 0.9 && c <= 1) || math.IsInf(c, 0) {
		t.Errorf("a share of %g", c)
	}
}

// Each question names what it found and says where it comes from.
func TestFoundVariantsSayWhereTheyComeFrom(t *testing.T) {
	b := base(t, "Belt 190")
	sweep, err := NewSweep(b, []string{"drive.ribbed_belt.ribs=8, 9"}, nil)
	if err != nil {
		t.Fatal(err)
	}
	solve, err := NewSolve(b, "propeller.pitch=500..700 mm", "propeller.static_thrust", "700 N", 2)
	if err != nil {
		t.Fatal(err)
	}
	search := wish(t, Wishes{Free: []string{"propeller.pitch"}, Goals: []string{"propeller.static_thrust", "stack.depth"}}, Effort{4, 1, 1, 1})
	at := func(newtons float64) []Solution {
		return []Solution{{Finding: Finding{At: []float64{0.6}, Figures: []param.Slot{param.Known(newtons)}}}}
	}
	for want, found := range map[string]func() (model.Variant, error){
		"Found by a sweep from Belt 190 over Ribs.":                                                                        func() (model.Variant, error) { return sweep.Found([]float64{9}) },
		"Found from Belt 190 by changing Nominal pitch for Standing thrust, installed of 700 N.":                           func() (model.Variant, error) { return solve.Found(Solved{Shown: at(700), Met: 1}, 0) },
		"Found from Belt 190 by changing Nominal pitch for Standing thrust, installed of 700 N, which it misses by -20 N.": func() (model.Variant, error) { return solve.Found(Solved{Shown: at(680)}, 0) },
		"Found by a search from Belt 190 for more Standing thrust, installed and less Depth, back to propeller plate.":     func() (model.Variant, error) { return search.Found([]float64{0.6}, true) },
	} {
		v, err := found()
		if err != nil || v.Name != "Belt 190 found" || !strings.HasSuffix(v.Notes, want) {
			t.Errorf("%v, %s: %q, want %q", err, v.Name, v.Notes, want)
		}
	}
	shared, err := NewSweep(b, []string{"site.altitude"}, nil)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := shared.Found([]float64{100}); err == nil || !strings.Contains(err.Error(), "belongs to the whole study") {
		t.Error(err)
	}
}

// Who reads how sure the checks are must know which doubts they do not count.
func TestTheNoteSaysThatChecksCountNoMethods(t *testing.T) {
	for spread, want := range map[string]bool{"propeller.pitch=±2 %": false, "propeller.static_thrust=±15 %": true} {
		q, err := NewTolerance(base(t, "Belt 190"), []string{spread}, nil, 100, 1)
		if err != nil {
			t.Fatal(err)
		}
		var samples []Sample
		if err := q.Run(t.Context(), Span{0, 100}, func(s Sample) error { samples = append(samples, s); return nil }); err != nil {
			t.Fatal(err)
		}
		if note := q.Summary(samples).Note(); strings.Contains(note, "no check counts the doubt of a method") != want {
			t.Errorf("%s: %s", spread, note)
		}
	}
}
