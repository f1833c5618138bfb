package figure

import (
	"testing"

	"backspan/model/reading"
	"backspan/model/unit"
)

func TestBetween(t *testing.T) {
	depth := func(mm float64) reading.Reading {
		return reading.New("stack.depth", "Depth", mm/1000, unit.Millimetre).Lower()
	}
	gone := reading.Missing("stack.depth", "Depth", unit.Millimetre, "cannot be computed")
	for _, tc := range []struct {
		name     string
		from, to reading.Reading
		want     Change
	}{
		{"deeper is worse", depth(230), depth(238), Change{"+8", -1}},
		{"shallower is better", depth(238), depth(230), Change{"-8", 1}},
		{"the same", depth(230), depth(230), Change{}},
		{"too little to show", depth(230), depth(230.1), Change{}},
		{"new", gone, depth(230), Change{"new", 0}},
		{"gone", depth(230), gone, Change{"gone", 0}},
		{"never known", gone, gone, Change{}},
		{"another reading", reading.Reading{}, depth(230), Change{}},
	} {
		if got := Between(tc.from, tc.to); got != tc.want {
			t.Errorf("%s: %+v, want %+v", tc.name, got, tc.want)
		}
	}
}

func TestRounded(t *testing.T) {
	for _, tc := range []struct {
		text string
		w    int
		want string
	}{{"+0.0660", 6, "+0.066"}, {"-0.0002", 6, "-2e-04"}, {"+12.5", 7, "+12.5"}, {"+123456.7", 7, "+123457"}, {"new", 2, "new"}} {
		if got := Rounded(tc.text, tc.w); got != tc.want {
			t.Errorf("%s in %d: %s, want %s", tc.text, tc.w, got, tc.want)
		}
	}
}

func TestLimitSaysOnWhichSide(t *testing.T) {
	for _, tc := range []struct {
		c    reading.Check
		want string
	}{
		{reading.AtMost("k", "l", 108, 90, 0, unit.Newton), "108 N, at most 90.0 N"},
		{reading.AtMost("k", "l", 80, 90, 0, unit.Newton), "80.0 N, at most 90.0 N"},
		{reading.AtLeast("k", "l", 80, 90, 0, unit.Newton), "80.0 N, at least 90.0 N"},
		{reading.AtLeast("k", "l", 108, 90, 0, unit.Newton), "108 N, at least 90.0 N"},
		{reading.AtLeast("k", "l", 90, 90, 0, unit.Newton), "90.0 N, at least 90.0 N"},
		{reading.AtLeast("k", "l", 3, 2, 0, unit.Currency), "3.00 EUR, at least 2.00 EUR"},
	} {
		if got := Limit(tc.c, false, "EUR"); got != tc.want {
			t.Errorf("%q, want %q", got, tc.want)
		}
	}
}

func TestStep(t *testing.T) {
	for _, tc := range []struct {
		si   float64
		u    unit.Unit
		want string
	}{{0.0156, unit.Percent, "+1.56 pt"}, {0, unit.Percent, "0 pt"}, {-0.002, unit.Millimetre, "-2.00 mm"}, {0.5, unit.Currency, "+0.500 CHF"}} {
		if got := Step(tc.si, tc.u, "CHF"); got != tc.want {
			t.Errorf("%g in %s is %q, want %q", tc.si, tc.u.Symbol, got, tc.want)
		}
	}
}
