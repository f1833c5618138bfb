package tui

import (
	"strings"
	"testing"

	"backspan/tui/pages/bench"
)

func TestVariants(t *testing.T) {
	names := func(m Model) string {
		s, _, _ := m.Study()
		var n []string
		for i, v := range s.Variants {
			if i == s.ReferenceIndex() {
				v.Name += "!"
			}
			n = append(n, v.Name)
		}
		return strings.Join(n, ", ")
	}
	for _, tc := range []struct {
		name string
		keys []string
		want string
	}{
		{"duplicate", []string{"d"}, "A belt!, A belt 2, B more of it, C most of it"},
		{"add", []string{"down", "a"}, "A belt!, B more of it, New variant, C most of it"},
		{"rename the reference", []string{"n", "Z", "enter"}, "Z!, B more of it, C most of it"},
		{"rename to a name that is taken", []string{"n", "C most of it", "enter"}, "A belt!, B more of it, C most of it"},
		{"delete", []string{"down", "x", "d"}, "A belt!, C most of it"},
		{"delete the reference", []string{"x", "d"}, "B more of it!, C most of it"},
		{"delete, thought better", []string{"x", "enter"}, "A belt!, B more of it, C most of it"},
		{"move down", []string{"J"}, "B more of it, A belt!, C most of it"},
		{"move up at the top", []string{"K"}, "A belt!, B more of it, C most of it"},
		{"make reference", []string{"down", "r"}, "A belt, B more of it!, C most of it"},
		{"delete all", []string{"x", "d", "x", "d", "x", "d"}, ""},
		{"delete all, then add", []string{"x", "d", "x", "d", "x", "d", "a"}, "New variant!"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			m := press(begin(plateau(), 80, 24), "esc", "esc")
			before, _, _ := m.Study()
			m = press(m, tc.keys...)
			if got := names(m); got != tc.want {
				t.Errorf("variants are %q, want %q", got, tc.want)
			}
			fits(t, m.View(), 80, 24)
			m = press(m, "esc", "u", "u", "u", "u")
			if after, _, _ := m.Study(); after != before {
				t.Errorf("undo led to %q", names(m))
			}
		})
	}
}

func TestNoVariants(t *testing.T) {
	o := plateau()
	o.Study = small("Bare")
	m := begin(o, 80, 24)
	for _, k := range []string{"tab", "tab", "tab", "tab", "tab", "enter", "right", "d", "x", "n", "r", "J", "c", "right", "enter", "<", ">", "m", "esc"} {
		m = press(m, k)
		fits(t, m.View(), 80, 24)
	}
	has(t, m, "no variant")
}

func TestBenchFollowsSideBySide(t *testing.T) {
	m := press(begin(plateau(), 80, 24), "c", "right", "right", "enter")
	has(t, m, "C most of it")
	if m.desk.Selected != 2 || m.bench.Focus() != bench.Form {
		t.Errorf("variant %d, pane %d", m.desk.Selected, m.bench.Focus())
	}
}
