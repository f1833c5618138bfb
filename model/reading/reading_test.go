package reading

import (
	"math"
	"testing"

	"backspan/model/unit"
)

func TestNotFiniteBecomesMissing(t *testing.T) {
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if r := New("a.b", "x", x, unit.Newton); r.Known() || r.Value != 0 || r.Text() != "not rated" {
			t.Errorf("New(%v) = %+v", x, r)
		}
		if c := AtLeast("a.b", "x", x, 1, 0, unit.Newton); c.Verdict != NotRated || c.Value != 0 {
			t.Errorf("AtLeast(%v) = %+v", x, c)
		}
	}
}

func TestVerdicts(t *testing.T) {
	for _, tc := range []struct {
		name string
		c    Check
		want Verdict
	}{
		{"well above", AtLeast("k", "l", 1.5, 1, 0.1, unit.One), Holds},
		{"just above", AtLeast("k", "l", 1.05, 1, 0.1, unit.One), Thin},
		{"on the limit", AtLeast("k", "l", 1, 1, 0, unit.One), Holds},
		{"below", AtLeast("k", "l", 0.99, 1, 0.1, unit.One), Fails},
		{"at most, well below", AtMost("k", "l", 0.5, 1, 0.1, unit.One), Holds},
		{"at most, near", AtMost("k", "l", 0.95, 1, 0.1, unit.One), Thin},
		{"at most, over", AtMost("k", "l", 1.01, 1, 0.1, unit.One), Fails},
		{"warm, in °C not K", AtMost("k", "l", 273.15+95, 273.15+100, 0.1, unit.Celsius), Thin},
		{"condition", Condition("k", "l", false), Fails},
		{"warned", Condition("k", "l", false).Warn(), Thin},
	} {
		if tc.c.Verdict != tc.want {
			t.Errorf("%s: %s, want %s (margin %g)", tc.name, tc.c.Verdict, tc.want, tc.c.Margin)
		}
	}
}

func TestMarginText(t *testing.T) {
	for _, tc := range []struct {
		c    Check
		want string
	}{
		{AtLeast("k", "l", 1.254, 1, 0, unit.One), "+25 %"}, {AtMost("k", "l", 1.1, 1, 0, unit.One), "-10 %"},
		{AtMost("k", "l", 1.06, 1, 0, unit.One).Warn(), "past 6 %"}, {AtLeast("k", "l", 5, 0, 0, unit.One), ""}, {Condition("k", "l", true), ""},
		{AtLeast("k", "l", 5, 1e-6, 0, unit.One), "over +999 %"}, {AtLeast("k", "l", 5, 5e-324, 0, unit.One), "+0 %"}, {AtLeast("k", "l", 0.998, 1, 0, unit.One), "-0.2 %"},
	} {
		if got := tc.c.MarginText(); got != tc.want {
			t.Errorf("%s: %q, want %q", tc.c.Text(), got, tc.want)
		}
	}
}

func TestWorstPrefersFailureThenSmallestMargin(t *testing.T) {
	cs := []Check{
		AtLeast("a", "", 1.05, 1, 0.1, unit.One), AtLeast("b", "", 1.01, 1, 0.1, unit.One),
		Unrated("c", "", "no limit"), Condition("d", "", true),
	}
	if w, ok := Worst(cs); !ok || w.Key != "b" {
		t.Errorf("worst is %s, want b", w.Key)
	}
	if w, _ := Worst(append(cs, Condition("e", "", false))); w.Key != "e" {
		t.Errorf("worst is %s, want e", w.Key)
	}
	if _, ok := Worst(nil); ok {
		t.Error("no checks have no worst")
	}
}

func TestChangeShowsOnlyWhatShows(t *testing.T) {
	at := func(x float64) Reading { return New("k", "", x, unit.Newton) }
	for _, tc := range []struct {
		from, to Reading
		want     string
	}{
		{at(600), at(614), "+14"}, {at(600), at(600.2), ""}, {at(600), at(600), ""}, {at(0), at(0.02), "+0.0200"},
		{at(600), Missing("k", "", unit.Newton, "gone"), ""},
		{at(1).Sided(), at(-1).Sided(), "turned"}, {at(1).Sided(), at(1).Sided(), ""},
	} {
		if got := tc.from.Change(tc.to); got != tc.want {
			t.Errorf("%v to %v: %q, want %q", tc.from, tc.to, got, tc.want)
		}
	}
}

func TestImproves(t *testing.T) {
	lo, hi := New("k", "", 1, unit.One), New("k", "", 2, unit.One)
	if lo.Higher().Improves(hi) != 1 || lo.Lower().Improves(hi) != -1 || lo.Improves(hi) != 0 || lo.Higher().Improves(lo) != 0 {
		t.Error("improvement has the wrong sign")
	}
}
