package tui

import (
	"testing"

	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"

	"backspan/model"
)

func TestScreens(t *testing.T) {
	for _, tc := range []struct {
		name  string
		w, h  int
		keys  []string
		ascii bool
	}{
		{name: "bench-80x24", w: 80, h: 24},
		{name: "bench-edited-80x24", w: 80, h: 24, keys: []string{")", ")", ")", "down", "down", "right"}},
		{name: "bench-typing-80x24", w: 80, h: 24, keys: []string{"down", "enter", "9 apples", "enter"}},
		{name: "bench-readings-80x24", w: 80, h: 24, keys: []string{">", "down", "down", "]", "tab"}},
		{name: "bench-checks-80x24", w: 80, h: 24, keys: []string{"tab", "tab"}},
		{name: "bench-ascii-80x24", w: 80, h: 24, keys: []string{">", "down", "down", "]"}, ascii: true},
		{name: "bench-60x16", w: 60, h: 16, keys: []string{"down"}},
		{name: "bench-120x40", w: 120, h: 40, keys: []string{">", "down", "down", "]"}},
		{name: "bench-checks-120x40", w: 120, h: 40, keys: []string{">", "tab", "tab"}},
		{name: "bench-200x60", w: 200, h: 60, keys: []string{">", "down", "down", "]"}},
		{name: "sidebyside-80x24", w: 80, h: 24, keys: []string{"c", "right"}},
		{name: "sidebyside-120x40", w: 120, h: 40, keys: []string{"c", ")"}},
		{name: "sidebyside-ascii-80x24", w: 80, h: 24, keys: []string{"c", "d", ")"}, ascii: true},
		{name: "tables-80x24", w: 80, h: 24, keys: []string{"t"}},
		{name: "tables-further-80x24", w: 80, h: 24, keys: []string{"t", "tab", "pgdown", "down"}},
		{name: "tables-120x40", w: 120, h: 40, keys: []string{">", "t", "right"}},
		{name: "studies-80x24", w: 80, h: 24, keys: []string{"o", "down", "down"}},
		{name: "keys-80x24", w: 80, h: 24, keys: []string{"?"}},
		{name: "keys-120x40", w: 120, h: 40, keys: []string{"c", "?"}},
		{name: "quit-80x24", w: 80, h: 24, keys: []string{"down", "down", "right", "q"}},
		{name: "too-small-59x15", w: 59, h: 15},
	} {
		t.Run(tc.name, func(t *testing.T) {
			o := plateau()
			o.Study, o.ASCII = model.Sample(), tc.ascii
			view := press(begin(o, tc.w, tc.h), tc.keys...).View()
			fits(t, view, tc.w, tc.h)
			if tc.ascii {
				for _, r := range view {
					if r > 0x7f {
						t.Fatalf("%q is not ASCII", r)
					}
				}
			}
			golden(t, tc.name, view)
		})
	}
}

// Colour must add nothing that the words and shapes do not say.
func TestColourChangesNoText(t *testing.T) {
	for _, keys := range [][]string{{">", "down", "down", "]"}, {"c"}, {"t"}, {"v"}, {">", "v", "tab", "z"}, {">", "g", "a"}, {"g", "tab", "tab", "tab"}, {"o"}, {"?"}, {"right", "q"}} {
		bare := press(begin(plateau(), 120, 40), keys...).View()
		for _, p := range []termenv.Profile{termenv.ANSI, termenv.ANSI256, termenv.TrueColor} {
			o := plateau()
			o.Renderer = renderer(p)
			coloured := press(begin(o, 120, 40), keys...).View()
			if coloured == bare {
				t.Errorf("profile %v, keys %v: no colour at all", p, keys)
			}
			if got := trimmed(ansi.Strip(coloured)); got != trimmed(bare) {
				t.Errorf("profile %v, keys %v: the text differs\n%s\n--- without colour\n%s", p, keys, got, bare)
			}
		}
	}
}
