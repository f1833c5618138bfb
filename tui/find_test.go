package tui

import (
	"os"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/pages/bench"
)

func TestFindLeadsToValuesReadingsAndChecks(t *testing.T) {
	for _, pane := range []int{0, 1, 2, 3, 4} {
		m := begin(onSample(), 80, 24)
		for range pane {
			m = press(m, "tab")
		}
		m = press(m, "/", "nompi", "enter")
		if m.bench.Path() != "propeller.pitch" || m.bench.Focus() != bench.Form {
			t.Errorf("from pane %d: %s, pane %d", pane, m.bench.Path(), m.bench.Focus())
		}
		has(t, m, "> Nominal pitch")
		m = press(m, "/", "pilot mass", "enter")
		if !strings.HasPrefix(m.bench.Path(), "pilot.") {
			t.Errorf("from pane %d: %s", pane, m.bench.Path())
		}
		m = toCheck(m, "climb rate")
		has(t, m, "> Climb rate")
		m = press(m, "/", "zzz")
		has(t, m, "nothing has these letters")
		m = press(m, "esc")
		has(t, m, "> Climb rate")
	}
	m := press(begin(onSample(), 80, 24), "tab", "m", "/", "stan thr", "enter")
	has(t, m, "> Standing thrust")
	m = press(m, "/", "q", "U", "7")
	has(t, m, "[qU7")
	if m.desk.CanUndo() != "" || m.left {
		t.Error("letters of what is looked for are commands")
	}
}

func TestCopy(t *testing.T) {
	for _, tc := range []struct {
		name, want string
		keys       []string
	}{
		{"value", "660 mm", []string{"/", "nominal pitch", "enter"}},
		{"reading", " N", []string{"/", "stan thr", "enter"}},
		{"check", "Axle safety against fatigue thin: ", []string{"/", "axle saf fat", "down", "enter"}},
		{"variant", "Belt 190", []string{"esc", "esc"}},
		{"row", "Bore\t\t66 mm\t66 mm", []string{"c"}},
		{"table", "\n", []string{"t"}},
		{"mover", "+1 % of ", []string{"/", "stan thr", "enter", "w"}},
	} {
		got := ""
		o := onSample()
		o.Clipboard = func(text string) error { got = text; return nil }
		m := press(press(quick(begin(o, 120, 40)), tc.keys...), "y")
		if !strings.Contains(got, tc.want) {
			t.Errorf("%s: %q is copied, want %q", tc.name, got, tc.want)
		}
		has(t, m, "handed to the terminal's clipboard: ")
	}
	o := onSample()
	o.Study.Notes = strings.Repeat("long ", 2000)
	o.Clipboard = func(string) error { t.Error("copied all the same"); return nil }
	has(t, press(begin(o, 80, 24), "esc", "y"), "nothing to copy")
	has(t, press(toMargin(begin(o, 80, 24)), "end", "y"), "not copied: 10000 bytes")
	o.Clipboard = func(string) error { return os.ErrClosed }
	has(t, press(begin(o, 80, 24), "y"), "not copied: file already closed")
	o.Clipboard = nil
	has(t, press(begin(o, 80, 24), "y"), "no terminal whose clipboard")
}

func TestTheTourIsOfferedOnTheSample(t *testing.T) {
	greeted := 0
	o := onSample()
	o.Greet, o.Greeted, o.Path = true, func() { greeted++ }, ""
	m := begin(o, 80, 24)
	has(t, m, "first time here? ? and then tab is a tour")
	if greeted != 1 {
		t.Errorf("%d times told", greeted)
	}
	lacks(t, press(m, "down"), "first time here?")
	m = press(m, "?", "tab")
	for _, title := range []string{"1 of 5", "2 of 5", "3 of 5", "4 of 5", "5 of 5", "5 of 5"} {
		has(t, m, title)
		m = press(m, "right")
	}
	has(t, press(m, "tab"), "Words of the trade", "absorbed power")
	has(t, press(m, "tab"), "Keys: values of a part")
	o.Path = "mine.toml"
	lacks(t, begin(o, 80, 24), "first time here?")
}

func TestWeights(t *testing.T) {
	m := press(begin(onSample(), 80, 24), "W")
	has(t, m, "Order by your weights", "Weights of what counts", "> Standing thrust, installed               1", "  1 Toothed 190")
	m = press(m, "0", "down", "0", "down", "0", "down", "0", "down", "0")
	has(t, m, "nothing counts: give a reading a weight")
	m = press(m, "left", "left", "right", "right")
	has(t, m, "2 ●●", "100")
	lacks(t, m, "nothing counts")
	m = press(m, "m", ")", ")")
	has(t, m, "Weights of all readings, 0 does not count")
	if m.desk.CanUndo() != "" {
		t.Error("a weight is an edit of the study")
	}
	m = press(m, "m", "b", "W")
	has(t, m, "2 ●●")
	o := plateau()
	o.Study = small("Alone", "A")
	has(t, press(begin(o, 80, 24), "W"), "a study needs two variants")
}

func TestPasteIntoFind(t *testing.T) {
	m := paste(press(begin(onSample(), 80, 24), "/"), "nominal\npitch")
	has(t, m, "[nominal pitch", "> Nominal pitch")
	if n, cmd := m.Update(tea.KeyMsg{Type: tea.KeyCtrlC}); cmd == nil || !n.(Model).left {
		t.Error("ctrl+c does not leave")
	}
}
