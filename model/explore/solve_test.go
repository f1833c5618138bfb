package explore

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"

	"backspan/model"
	"backspan/model/param"
)

func solved(t testing.TB, s Solve, span Span) (sts []Stretch, found []Solution) {
	t.Helper()
	if err := s.Run(t.Context(), span, func(st Stretch) error { sts = append(sts, st); return nil }); err != nil {
		t.Fatal(err)
	}
	for _, st := range sts {
		found = append(found, st.Found...)
	}
	return sts, found
}

func ask(t testing.TB, variant, change, key, to string) Solve {
	t.Helper()
	s, err := NewSolve(base(t, variant), change, key, to, 0)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// Every solution, set by hand in a study, gives the target.
func TestSolutionsGiveTheTarget(t *testing.T) {
	for _, tc := range []struct {
		change, key, to string
		roots           int
	}{
		{"propeller.pitch=300..900", "propeller.static_thrust", "70 kgf", 2},
		{crank + "=55..80", "drive.ratio", "3", 1},
		{crank + "=55..80", "flight.climb_rate", "3.5 m/s", 2},
		{"site.altitude=0 m..4 km", "propeller.static_thrust", "600 N", 1},
	} {
		q := ask(t, "Belt 190", tc.change, tc.key, tc.to)
		_, found := solved(t, q, Span{0, q.Total()})
		if len(found) != tc.roots {
			t.Errorf("%s: %d solutions, want %d", tc.change, len(found), tc.roots)
		}
		for _, sol := range found {
			s := model.Sample()
			p, _ := param.Find(append(s.Sections(), s.Variants[0].Sections()...), q.Dial.Path)
			if err := p.SetNumber(sol.At[0]); err != nil {
				t.Fatal(err)
			}
			r, _ := model.Evaluate(s, &s.Variants[0]).Reading(tc.key)
			if sol.Past || math.Abs(r.Value/q.Target-1) > 1e-6 {
				t.Errorf("%s: %s gives %s, want %s", tc.change, q.Dial.Text(sol.At[0]), r.Text(), tc.to)
			}
		}
	}
}

func TestWholeNumbersAreScanned(t *testing.T) {
	q := ask(t, "Gear 190", "drive.gear.wheel_teeth=45..75", "drive.ratio", "3")
	if _, found := solved(t, q, Span{0, q.Total()}); len(found) != 1 || found[0].Past || found[0].At[0] != 57 {
		t.Errorf("57 over 19 teeth: %+v", found)
	}
	q = ask(t, "Gear 190", "drive.gear.wheel_teeth=45..75", "drive.ratio", "3.02")
	if _, found := solved(t, q, Span{0, q.Total()}); len(found) != 1 || !found[0].Past || found[0].At[0] != 57 || found[0].Other.At[0] != 58 {
		t.Errorf("between 57 and 58 over 19 teeth: %+v", found)
	}
	q = ask(t, "Gear 190", "drive.gear.wheel_teeth=57..75", "drive.ratio", "3")
	if _, found := solved(t, q, Span{0, q.Total()}); len(found) != 1 || found[0].Past {
		t.Errorf("at the first value: %+v", found)
	}
	q = ask(t, "Gear 190", "drive.gear.wheel_teeth=45..57", "drive.ratio", "3")
	if _, found := solved(t, q, Span{0, q.Total()}); len(found) != 1 || found[0].Past {
		t.Errorf("at the last value: %+v", found)
	}
}

// The next shorter belt on the shelf is 750 mm long or 800 mm, never between.
func TestJumpIsNotCalledASolution(t *testing.T) {
	q := ask(t, "Belt 190", "drive.ribbed_belt.centre_distance=150..200", "belt.length_below", "780 mm")
	_, found := solved(t, q, Span{0, q.Total()})
	if len(found) != 1 || !found[0].Past {
		t.Fatalf("%+v", found)
	}
	f := found[0]
	gap := math.Abs(f.At[0] - f.Other.At[0])
	if gap > 1e-9 || math.Abs(f.Figures[0].Value-0.8) > 1e-12 || math.Abs(f.Other.Figures[0].Value-0.75) > 1e-12 {
		t.Errorf("%+v, %g m apart", f, gap)
	}
}

func TestNoSolutionNamesTheNearest(t *testing.T) {
	q := ask(t, "Belt 190", crank+"=55..80", "flight.climb_rate", "9")
	sts, found := solved(t, q, Span{0, q.Total()})
	nearest, ok := q.Nearest(sts)
	if len(found) != 0 || !ok {
		t.Fatal(found, ok)
	}
	for _, st := range sts {
		for _, f := range st.Ends {
			if f.Figures[0].Value > nearest.Figures[0].Value {
				t.Errorf("%g climbs better than the nearest", f.At[0])
			}
		}
	}
}

func TestSolveIsTheSameHoweverItIsSplit(t *testing.T) {
	q := ask(t, "Belt 190", "propeller.pitch=300..900", "propeller.static_thrust", "70 kgf")
	whole, _ := solved(t, q, Span{0, q.Total()})
	var parts []Stretch
	on(1, func() {
		for k := 1; k <= 7; k++ {
			sts, _ := solved(t, q, Part(k, 7, q.Total()))
			parts = append(parts, sts...)
		}
	})
	if d := cmp.Diff(whole, parts); d != "" {
		t.Error(d)
	}
}

func TestSolveRefuses(t *testing.T) {
	b := base(t, "Belt 190")
	for _, tc := range [][3]string{
		{"drive.kind", "drive.ratio", "3"}, {crank, "drive.rat", "3"}, {crank, "drive.ratio", "3 mm"}, {crank, "drive.ratio", "many"}, {"engine.bor", "drive.ratio", "3"},
	} {
		if _, err := NewSolve(b, tc[0], tc[1], tc[2], 0); err == nil {
			t.Errorf("%v is taken", tc)
		}
	}
	if _, err := NewSolve(b, crank, "drive.ratio", "3", -1); err == nil {
		t.Error("-1 stretches are taken")
	}
}
