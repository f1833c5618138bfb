package explore

import (
	"context"
	"reflect"
	"testing"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/reading"
)

// A cure typed into the form cures, one fine step less does not, and the checks
// it spoils are told.
func TestCuresCure(t *testing.T) {
	const each = 3 // checks of a machine; the search for one takes a while
	total, still := 0, 0
	for _, name := range []string{"Belt 190", "Gear 190"} {
		s, v, y := surveyed(t, name)
		asked := 0
		for _, c := range y.Before().Checks {
			if c.Verdict != reading.Fails && c.Verdict != reading.Thin || asked == each {
				continue
			}
			if len(y.Movers(Subject{Check: true, Key: c.Key}).Movers) == 0 {
				if still++; still > 1 {
					continue // searched along every number, which takes longest
				}
			}
			asked++
			cures, err := y.Cures(context.Background(), c.Key, nil)
			if err != nil {
				t.Fatal(err)
			}
			total += len(cures)
			for _, k := range cures {
				v2 := v.Clone()
				p, ok := param.Find(v2.Sections(), k.Path)
				if !ok || p.Set(k.Text) != nil || p.Show() != k.To {
					t.Fatalf("%s: cannot set %s to %s", c.Key, k.Path, k.Text)
				}
				o := model.Evaluate(s, &v2)
				got, _ := checkOf(o, c.Key)
				if got.Verdict != k.Check.Verdict || !c.Verdict.Worse(got.Verdict) {
					t.Errorf("%s %s with %s %s: %s, told %s", name, c.Key, k.Label, k.To, got.Verdict, k.Check.Verdict)
				}
				if w := worsened(y.Before(), o, c.Key); !reflect.DeepEqual(w, k.Worse) {
					t.Errorf("%s %s: told to spoil %v, spoils %v", name, c.Key, k.Worse, w)
				}
				way := 1
				if x, _ := p.Number(); p.Unit.From(x) > numberNow(t, v, k.Path) {
					way = -1
				}
				if p.Step(way) == nil {
					o := model.Evaluate(s, &v2)
					near, ok := checkOf(o, c.Key)
					if ok && near.Verdict == k.Check.Verdict && k.Steps > 1 && len(y.Movers(Subject{Check: true, Key: c.Key}).Movers) > 0 {
						t.Errorf("%s %s: one step less of %s would do: %s", name, c.Key, k.Label, p.Show())
					}
				}
			}
		}
	}
	if total < 10 {
		t.Errorf("only %d cures in all", total)
	}
}

func numberNow(t *testing.T, v *model.Variant, path string) float64 {
	t.Helper()
	p, ok := param.Find(v.Sections(), path)
	if !ok {
		t.Fatal(path)
	}
	x, _ := p.Number()
	return p.Unit.From(x)
}

// What a person asks for, what is assumed and what all variants share cures
// nothing.
func TestCuresLeaveLimitsAndAssumptionsAlone(t *testing.T) {
	_, _, y := surveyed(t, "Belt 190")
	for _, key := range []string{"shaft.fatigue_safety", "propeller.tip_mach", "noise.tip_mach_guide", "bearing.static_safety"} {
		cures, err := y.Cures(context.Background(), key, nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, c := range cures {
			for _, label := range []string{"Axle safety asked", "Tip Mach number allowed", "Tip Mach number for quiet flying", "Margin asked", "Temperature"} {
				if c.Label == label {
					t.Errorf("%s is cured by %s", key, label)
				}
			}
			if _, ok := param.Find(y.study.Sections(), c.Path); ok {
				t.Errorf("%s is cured by %s, which all variants share", key, c.Label)
			}
		}
	}
}

func BenchmarkCures(b *testing.B) {
	s := model.Sample()
	y, err := Look(context.Background(), s, &s.Variants[0], nil)
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		if _, err := y.Cures(context.Background(), "belt.slack_side_peak", nil); err != nil {
			b.Fatal(err)
		}
	}
}
