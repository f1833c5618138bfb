package keymap

import (
	"strings"
	"testing"
)

func places() []Place {
	m := Default()
	return []Place{m.AtVariants(), m.AtParts(), m.AtForm(), m.AtReadings(), m.AtChecks(), m.AtEditor(), m.AtPicker(),
		m.AtSideBySide(), m.AtDrawing(), m.AtCurves(), m.AtStudies(), m.AtKeys(), m.AtQuestion()}
}

func TestNoKeyMeansTwoThingsInOnePlace(t *testing.T) {
	for _, p := range everyPlace() {
		meaning := map[string]string{}
		for _, k := range p.All() {
			if k.Help().Desc == "" {
				t.Errorf("%s: the key %v says nothing", p.Name, k.Keys())
			}
			for _, name := range k.Keys() {
				if was, taken := meaning[name]; taken {
					t.Errorf("%s: %s means %q and %q", p.Name, name, was, k.Help().Desc)
				}
				meaning[name] = k.Help().Desc
			}
		}
	}
}

func TestFooterFits(t *testing.T) {
	more := Default().Everywhere.Keys
	for _, p := range everyPlace() {
		for w := 60; w < 220; w++ {
			f := p.Footer(w, more)
			if len([]rune(f)) > w {
				t.Errorf("%s: %d cells in %d: %s", p.Name, len([]rune(f)), w, f)
			}
			if p.Too != nil && !strings.HasSuffix(f, "? keys") {
				t.Errorf("%s: the footer does not end with where the rest is: %s", p.Name, f)
			}
		}
	}
}

// What nobody should have to look up is in the footer of an ordinary terminal.
func TestFooterShowsTheWayOutAndBack(t *testing.T) {
	m := Default()
	for _, tc := range []struct {
		place Place
		w     int
		wants []string
	}{
		{m.AtForm(), 80, []string{"enter set", "← → [ ] step", "tab pane", "s save", "u undo", "c compare", "q leave", "? keys"}},
		{m.AtVariants(), 80, []string{"enter parts", "d duplicate", "tab pane", "s save", "u undo", "c compare", "q leave", "? keys"}},
		{m.AtParts(), 80, []string{"enter values", "tab pane", "s save", "u undo", "c compare", "q leave", "? keys"}},
		{m.AtReadings(), 80, []string{"m only what moved", "tab pane", "s save", "u undo", "c compare", "q leave", "? keys"}},
		{m.AtChecks(), 80, []string{"esc back", "tab pane", "s save", "u undo", "c compare", "q leave", "? keys"}},
		{m.AtSideBySide(), 80, []string{"← → variant", "d only what differs", "b bench", "s save", "u undo", "q leave", "? keys"}},
		{m.AtDrawing(), 80, []string{"tab side or behind", "z near or whole", "b bench", "s save", "u undo", "q leave", "? keys"}},
		{m.AtCurves(), 80, []string{"tab next chart", "← → [ ] reading line", "b bench", "s save", "u undo", "q leave", "? keys"}},
		{m.AtStudies(), 80, []string{"enter open", "N new study", "esc back", "q leave", "? keys"}},
		{m.AtForm(), 60, []string{"enter set", "tab pane", "s save", "u undo", "q leave", "? keys"}},
		{m.AtForm(), 120, []string{"( ) part", "< > variant"}},
	} {
		f := tc.place.Footer(tc.w, m.Everywhere.Keys)
		for _, want := range tc.wants {
			if !strings.Contains(f, want) {
				t.Errorf("%s, %d cells: %q lacks %q", tc.place.Name, tc.w, f, want)
			}
		}
	}
}
