package headline

import (
	"io"
	"strings"
	"testing"

	"github.com/charmbracelet/lipgloss"
	"github.com/muesli/termenv"

	"backspan/model"
	"backspan/model/reading"
	"backspan/model/unit"
	"backspan/tui/theme"
)

func plain() *theme.Theme {
	r := lipgloss.NewRenderer(io.Discard)
	r.SetColorProfile(termenv.Ascii)
	return theme.New(r, false)
}

func held(key, label string, value float64) reading.Check {
	return reading.AtLeast(key, label, value, 100, 0.1, unit.Newton)
}

func unrated(n int) []reading.Check {
	var cs []reading.Check
	for range n {
		cs = append(cs, reading.Unrated("u", "Felt mass", "nobody knows"))
	}
	return cs
}

func TestJudgement(t *testing.T) {
	const long = "Pitch-line speed for dip oiling"
	sound := append(unrated(5), held("a", "Standing tension per rib is usual", 120), held("b", "Room", 150))
	thin := append(unrated(5), held("a", long, 104), held("b", "Room", 150))
	fails := append(unrated(5), held("a", long, 104), held("b", "Standing tension per rib is usual", 90))
	for _, tc := range []struct {
		name         string
		w            int
		now, earlier []reading.Check
		want         string
	}{
		{"sound", 120, sound, nil, "▁ nothing fails or is thin; closest: Standing tension per rib is usual +20 %"},
		{"sound, tally", 120, sound, nil, "0 fail, 0 thin, 2 hold, 5 not rated"},
		{"sound, narrow", 80, sound, nil, "▁ nothing fails or is thin; closest: Standing ten…ib is usual +20 %  5 not rated"},
		{"sound, closest changed", 120, sound, []reading.Check{held("b", "Room", 140)}, "is usual +20 %   "},
		{"thin", 120, thin, nil, "▄ worst check thin: " + long},
		{"thin, narrow", 80, thin, nil, "▄ thin: " + long + "      0 fail, 1 thin, 1 hold, 5 not rated"},
		{"now fails", 120, fails, thin, "(was thin: Pitch-line"},
		{"now fails, narrow", 80, fails, thin, "(was thin: "},
		{"now fails, narrow, tally", 80, fails, thin, "1 fail, 1 thin, "},
		{"same check, now thin", 80, thin, append(unrated(5), held("a", long, 150)), "(was holds)"},
		{"nothing rated", 80, unrated(3), nil, "? no check can be rated"},
		{"no checks", 80, nil, nil, "no checks"},
		{"a condition alone", 80, []reading.Check{reading.Condition("c", "Teeth share no factor", true)}, nil, "▁ nothing fails or is thin   "},
	} {
		j := judge(plain(), tc.now, tc.earlier)
		line := j.line(plain(), tc.w)
		if !strings.Contains(line+"   ", tc.want) {
			t.Errorf("%s: %q lacks %q", tc.name, line, tc.want)
		}
		for w := 60; w < 200; w++ {
			if n := theme.Width(j.line(plain(), w)); n > w {
				t.Errorf("%s: %d cells in %d", tc.name, n, w)
			}
		}
	}
}

func TestFiguresKeepTheirUnits(t *testing.T) {
	now := model.Outcome{Variant: "A", Readings: []reading.Reading{
		reading.New("stack.depth", "Depth", 0.317, unit.Millimetre).Lower(),
		reading.New("stack.mass_ready", "Mass", 31.9, unit.Kilogram).Lower(),
		reading.New("carry.equivalent_mass", "Feels like", 29.3, unit.Kilogram).Lower(),
		reading.New("propeller.static_thrust", "Thrust", 715, unit.Newton).Higher(),
		reading.New("flight.climb_rate", "Climb", -0.0376, unit.MetrePerSecond).Higher(),
	}}
	earlier := model.Outcome{Variant: "A", Readings: []reading.Reading{reading.New("stack.depth", "Depth", 0.309, unit.Millimetre).Lower()}}
	for _, w := range []int{80, 100, 120, 200} {
		view := strings.Join(New(plain(), now, earlier).View(w), "\n")
		for _, want := range []string{"317 mm", "31.9 kg", "29.3 kg", "715 N", "-0.0376 m/s", "+8 ◇"} {
			if !strings.Contains(view, want) {
				t.Errorf("%d wide lacks %q:\n%s", w, want, view)
			}
		}
	}
	for w := 60; w < 240; w++ {
		for _, l := range New(plain(), now, earlier).View(w) {
			if theme.Width(l) > w {
				t.Errorf("%q is wider than %d", l, w)
			}
		}
	}
	if view := strings.Join(New(plain(), model.Outcome{}, model.Outcome{}).View(80), "\n"); !strings.Contains(view, "depth not rated") {
		t.Error(view)
	}
}
