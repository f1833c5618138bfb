package explore

import (
	"context"
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"backspan/model/reading"
)

func searched(t testing.TB, s Search, span Span) []Run {
	t.Helper()
	var runs []Run
	if err := s.Run(t.Context(), span, func() {}, func(r Run) error { runs = append(runs, r); return nil }); err != nil {
		t.Fatal(err)
	}
	return runs
}

func wish(t testing.TB, w Wishes, e Effort) Search {
	t.Helper()
	s, err := NewSearch(base(t, "Belt 190"), w, e)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// Every design of a grid, tried one by one, gives the same best compromises as
// the search that sees only some of them.
func TestSearchFindsWhatAFullGridFinds(t *testing.T) {
	free := []string{"propeller.diameter=1100..1340/25", "propeller.pitch=500..740/25", "drive.kind=ribbed belt, direct"}
	s := wish(t, Wishes{Free: free, Goals: []string{"noise.level_at_150m", "flight.climb_rate"}, AtLeast: []string{"propeller.static_thrust=500 N"}},
		Effort{Population: 60, Generations: 11, Runs: 1, Seed: 1})
	var all [][]float64
	for _, d := range s.Free[0].Levels {
		for _, pitch := range s.Free[1].Levels {
			for _, kind := range s.Free[2].Levels {
				all = append(all, []float64{d, pitch, kind})
			}
		}
	}
	found, err := gather(t.Context(), Span{0, len(all)}, func() func(int) Candidate {
		m := newMachine(s.Base.study, s.Base.variant).bind(s.Dials())
		return func(i int) Candidate { return s.judge(m, all[i]) }
	})
	if err != nil {
		t.Fatal(err)
	}
	grid := Run{Found: found}
	barred := 0
	for _, c := range grid.Found {
		if c.Violation > 0 {
			barred++
		}
	}
	want, allowed := s.Best([]Run{grid})
	runs := searched(t, s, Span{0, 1})
	got, _ := s.Best(runs)
	if !allowed || len(want) < 10 || barred < 650 || runs[0].Evaluations > len(grid.Found)*6/10 {
		t.Fatalf("%d best of %d, %d barred, %d tried: too easy", len(want), len(grid.Found), barred, runs[0].Evaluations)
	}
	t.Logf("%d best of %d, %d barred, %d tried", len(want), len(grid.Found), barred, runs[0].Evaluations)
	if d := cmp.Diff(want, got); d != "" {
		t.Error(d)
	}
	for i, c := range got {
		if !c.Sound() || c.Figures[2].Value < 500 {
			t.Errorf("%+v is not allowed", c)
		}
		if i > 0 && !(c.Figures[0].Value > got[i-1].Figures[0].Value && c.Figures[1].Value > got[i-1].Figures[1].Value) {
			t.Errorf("%v does not trade quiet for climb against %v", c.Figures, got[i-1].Figures)
		}
	}
}

var mixed = Wishes{
	Free:  []string{"drive.kind", crank + "=55..80", "drive.ribbed_belt.ribs=6..16", "propeller.pitch"},
	Goals: []string{"stack.depth", "flight.climb_rate=more"},
}

// The seed alone decides, on any number of processors and in any parts.
func TestSearchIsTheSameHoweverItIsSplit(t *testing.T) {
	s := wish(t, mixed, Effort{Population: 12, Generations: 4, Runs: 3, Seed: 7})
	var whole, parts []Run
	on(1, func() { whole = searched(t, s, Span{0, 3}) })
	on(3, func() { parts = append(searched(t, s, Span{0, 2}), searched(t, s, Span{2, 3})...) })
	if d := cmp.Diff(whole, parts); d != "" {
		t.Error(d)
	}
	if cmp.Equal(whole[0], whole[1]) {
		t.Error("two runs found the same")
	}
	s.Effort.Seed++
	if cmp.Equal(whole, searched(t, s, Span{0, 3})) {
		t.Error("another seed found the same")
	}
}

// More looking never makes the answer worse than the base, which is looked at.
func TestSearchIsNoWorseThanTheBase(t *testing.T) {
	s := wish(t, Wishes{Free: mixed.Free, Goals: []string{"flight.climb_rate"}}, Effort{Population: 8, Generations: 3, Runs: 1})
	best, allowed := s.Best(searched(t, s, Span{0, 1}))
	now, _ := s.Base.Reading("flight.climb_rate")
	if !allowed || len(best) != 1 || best[0].Figures[0].Value < now.Value {
		t.Errorf("%+v, base %s", best, now.Text())
	}
	twice := Run{Found: append(best, best...)}
	if again, _ := s.Best([]Run{twice, twice}); !cmp.Equal(best, again) {
		t.Errorf("one design found four times is given %d times", len(again))
	}
}

func TestSearchSaysWhenNothingIsAllowed(t *testing.T) {
	w := mixed
	w.AtLeast = []string{"propeller.static_thrust=5000 N"}
	s := wish(t, w, Effort{Population: 8, Generations: 2, Runs: 2})
	best, allowed := s.Best(searched(t, s, Span{0, 2}))
	if allowed || len(best) != 1 || best[0].Fails != 0 {
		t.Errorf("%v %+v", allowed, best)
	}
}

func TestSearchEndsAtOnce(t *testing.T) {
	s := wish(t, mixed, Effort{Population: 50, Generations: 1000, Runs: 1})
	ctx, cancel := context.WithCancel(t.Context())
	tried := 0
	err := s.Run(ctx, Span{0, 1}, func() {
		if tried++; tried == 20 {
			cancel()
		}
	}, func(Run) error { return nil })
	if !errors.Is(err, context.Canceled) || tried > 20 {
		t.Errorf("%v after %d", err, tried)
	}
}

func TestWithMakesTheDesignThatWasFound(t *testing.T) {
	s := wish(t, mixed, Effort{Population: 8, Generations: 2, Runs: 1})
	best, _ := s.Best(searched(t, s, Span{0, 1}))
	v, err := s.Base.With(s.Dials(), best[0].At)
	if err != nil {
		t.Fatal(err)
	}
	again := NewBase(s.Base.study, &v)
	if r, _ := again.Reading("flight.climb_rate"); r.Value != best[0].Figures[1].Value {
		t.Errorf("%s, found %v", r.Text(), best[0].Figures[1])
	}
	if _, err := s.Base.With([]Dial{{Path: "site.altitude", Label: "Site altitude"}}, []float64{0}); err == nil {
		t.Error("a variant holds what belongs to the study")
	}
}

func TestSearchRefuses(t *testing.T) {
	b, fine := base(t, "Belt 190"), Effort{Population: 8, Generations: 2, Runs: 1}
	for _, tc := range []struct {
		w    Wishes
		e    Effort
		says string
	}{
		{Wishes{}, fine, "1 to 40 parameters"},
		{Wishes{Free: mixed.Free}, fine, "at least one goal"},
		{mixed, Effort{}, "designs in the population"},
		{Wishes{Free: []string{crank, crank}, Goals: mixed.Goals}, fine, "given twice"},
		{Wishes{Free: mixed.Free, Goals: []string{"stack.depth=less", "stack.depth=more"}}, fine, "given twice"},
		{Wishes{Free: mixed.Free, Goals: []string{"stack.dept"}}, fine, "did you mean stack.depth"},
		{Wishes{Free: mixed.Free, Goals: []string{"stack.depth=deep"}}, fine, "neither less nor more"},
		{Wishes{Free: mixed.Free, Goals: []string{"drive.ratio"}}, fine, "write drive.ratio=less"},
		{Wishes{Free: mixed.Free, Goals: mixed.Goals, AtMost: []string{"stack.depth=3 kg"}}, fine, "at most"},
	} {
		if _, err := NewSearch(b, tc.w, tc.e); err == nil || !strings.Contains(err.Error(), tc.says) {
			t.Errorf("%+v: %v", tc.w, err)
		}
	}
	f, err := b.Free(crank + "=55..80/6")
	if err != nil || len(f.Levels) != 6 || !slices.IsSorted(f.Levels) {
		t.Errorf("%+v %v", f, err)
	}
}

func TestLimitsAreChargedByHowFarTheyAreBroken(t *testing.T) {
	least, most := Limit{Side: reading.Least, Value: 10}, Limit{Side: reading.Most, Value: 10}
	for _, tc := range []struct {
		l       Limit
		x, want float64
	}{{least, 10, 0}, {least, 9, 1.1}, {least, -100, 2}, {most, 10, 0}, {most, 9, 0}, {most, 12, 1.2}, {Limit{Side: reading.Most}, 1, 2}} {
		if got := tc.l.broken(tc.x); got != tc.want {
			t.Errorf("%+v at %g: %g", tc.l, tc.x, got)
		}
	}
}

// A thousand designs of a search.
func BenchmarkSearch(b *testing.B) {
	s := wish(b, mixed, Effort{Population: 100, Generations: 9, Runs: 1})
	n := 0
	for b.Loop() {
		for _, r := range searched(b, s, Span{0, 1}) {
			n += r.Evaluations
		}
	}
	b.ReportMetric(float64(n)/b.Elapsed().Seconds(), "designs/s")
}

// Designs that cannot be set, or have no figure for a goal, are never allowed.
func TestDesignsWithoutFiguresAreBarred(t *testing.T) {
	s := wish(t, mixed, Effort{Population: 8, Generations: 2, Runs: 1})
	m := newMachine(s.Base.study, s.Base.variant).bind(s.Dials())
	if c := s.judge(m, []float64{0, 5, 12, 0.65}); c.Refused == "" || c.Violation != noDesign {
		t.Errorf("a crank pulley of 5 m: %+v", c)
	}
	sound := s.judge(m, []float64{0, 0.068, 12, 0.66})
	if sound.Violation != 0 {
		t.Fatalf("the sample: %+v", sound)
	}
	sound.Figures[1].Known = false
	if v := s.violation(s.Base.outcome, sound); v != noFigure {
		t.Errorf("without its climb rate: %g", v)
	}
}
