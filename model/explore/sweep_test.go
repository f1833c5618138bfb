package explore

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"backspan/model"
	"backspan/model/param"
)

func swept(t testing.TB, s Sweep, span Span) []Finding {
	t.Helper()
	var fs []Finding
	if err := s.Run(t.Context(), span, func(f Finding) error { fs = append(fs, f); return nil }); err != nil {
		t.Fatal(err)
	}
	return fs
}

// The designs of a sweep are those that a person gets who sets the values by
// hand in a study and evaluates it.
func TestSweepIsEvaluateByHand(t *testing.T) {
	b := base(t, "Belt 190")
	sweep, err := NewSweep(b, []string{"drive.kind", "propeller.pitch=600 mm..700 mm/3"}, []string{"stack.depth", "propeller.static_thrust", "drive.ratio"})
	if err != nil {
		t.Fatal(err)
	}
	fs := swept(t, sweep, Span{0, sweep.Total()})
	if len(fs) != 12 {
		t.Fatalf("%d designs", len(fs))
	}
	failing, missing := 0, 0
	for i, f := range fs {
		s := model.Sample()
		v := &s.Variants[0]
		for path, text := range map[string]string{"drive.kind": sweep.Axes[0].Options[i/3], "propeller.pitch": []string{"600 mm", "650 mm", "700 mm"}[i%3]} {
			p, _ := param.Find(v.Sections(), path)
			if err := p.Set(text); err != nil {
				t.Fatal(err)
			}
		}
		o := model.Evaluate(s, v)
		first := ""
		for _, c := range o.Checks {
			if c.Verdict == "fails" && first == "" {
				first = c.Label
			}
		}
		if f.First != first || f.Sound() != (first == "") {
			t.Errorf("design %d: first failing %q, by hand %q", i, f.First, first)
		}
		for k, r := range sweep.Readings {
			by, _ := o.Reading(r.Key)
			if f.Figures[k].Known != by.Known() || f.Figures[k].Value != by.Value {
				t.Errorf("design %d: %s is %v, by hand %s", i, r.Key, f.Figures[k], by.Text())
			}
			if !by.Known() {
				missing++
			}
		}
		failing += f.Fails
	}
	if failing == 0 || missing == 0 {
		t.Errorf("%d failing checks and %d missing readings show nothing", failing, missing)
	}
}

// A design does not depend on the designs before it, on the processors, or on
// the part it is in.
func TestSweepIsTheSameHoweverItIsSplit(t *testing.T) {
	sweep, err := NewSweep(base(t, "Gear 190"), []string{"drive.kind", "drive.gear.wheel_teeth=60..100/9"}, []string{"stack.depth", "flight.climb_rate"})
	if err != nil {
		t.Fatal(err)
	}
	var whole, parts []Finding
	on(1, func() { whole = swept(t, sweep, Span{0, sweep.Total()}) })
	on(3, func() {
		for k := 5; k >= 1; k-- {
			parts = append(swept(t, sweep, Part(k, 5, sweep.Total())), parts...)
		}
	})
	if d := cmp.Diff(whole, parts); d != "" {
		t.Error(d)
	}
}

func TestSweepLeavesTheStudyAlone(t *testing.T) {
	s := model.Sample()
	sweep, err := NewSweep(NewBase(s, &s.Variants[0]), []string{"site.altitude=0..3000/4", "engine.bore=60..70/2"}, []string{"propeller.static_thrust"})
	if err != nil {
		t.Fatal(err)
	}
	fs := swept(t, sweep, Span{0, 8})
	if d := cmp.Diff(model.Sample(), s); d != "" {
		t.Error(d)
	}
	if !(fs[0].Figures[0].Value > fs[6].Figures[0].Value) {
		t.Error("thrust does not fall with the altitude of the whole study")
	}
}

func TestPricesAreInTheStudysCurrency(t *testing.T) {
	s := model.Sample()
	s.Currency = "CHF"
	b := NewBase(s, &s.Variants[0])
	sweep, err := NewSweep(b, []string{"drive.ribbed_belt.price=300, 400 CHF"}, []string{"drive.price", "drive.upkeep"})
	if err != nil {
		t.Fatal(err)
	}
	f := swept(t, sweep, Span{1, 2})[0]
	if got := sweep.Axes[0].Text(f.At[0]); got != "400 CHF" {
		t.Error(got)
	}
	if got := sweep.Readings[1].Unit.Text(f.Figures[1].Value); !strings.HasSuffix(got, " CHF/h") {
		t.Error(got)
	}
	if q, err := NewSolve(b, "drive.ribbed_belt.price=300..400", "drive.upkeep", "1 CHF/h", 0); err != nil || q.Target != 1.0/3600 {
		t.Errorf("%g %v", q.Target, err)
	}
}

func TestSweepRefuses(t *testing.T) {
	b := base(t, "Belt 190")
	for _, over := range [][]string{nil, {"drive.kind", "drive.kind"}, {"drive.kind", "engine.bore", "engine.stroke"}, {crank + "=55..80/10000", "engine.bore=60..70/10000"}} {
		if _, err := NewSweep(b, over, nil); err == nil {
			t.Errorf("%v is taken", over)
		}
	}
	if _, err := NewSweep(b, []string{"drive.kind"}, []string{"stack.nothing"}); err == nil {
		t.Error("a reading that does not exist is taken")
	}
}

// A thousand designs of a real question.
func BenchmarkSweep(b *testing.B) {
	sweep, err := NewSweep(base(b, "Belt 190"), []string{crank + "=55..80/40", "drive.ribbed_belt.centre_distance=150..200/25"}, []string{"stack.depth", "flight.climb_rate"})
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		swept(b, sweep, Span{0, sweep.Total()})
	}
	b.ReportMetric(float64(sweep.Total()*b.N)/b.Elapsed().Seconds(), "designs/s")
}
