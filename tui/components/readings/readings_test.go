package readings

import (
	"io"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"
	"github.com/muesli/termenv"

	"backspan/model"
	"backspan/model/reading"
	"backspan/model/unit"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

const longest = "Depth, engine mount to plate front" // as long as labels get

func outcome(name string, depth, thrust float64) model.Outcome {
	return model.Outcome{Variant: name, Readings: []reading.Reading{
		reading.New("stack.depth", longest, depth, unit.Millimetre).Lower().How("sum of the pieces").Source("geometry"),
		reading.New("stack.inertia", "Inertia", 0.0001604, unit.KilogramSquareMetre),
		reading.New("propeller.thrust", "Standing thrust", thrust, unit.Newton).Higher(),
		reading.Missing("noise.level", "Noise", unit.One, "no measurement"),
	}}
}

func made(f Facts) Model {
	r := lipgloss.NewRenderer(io.Discard)
	r.SetColorProfile(termenv.Ascii)
	m := New(theme.New(r, false), keymap.Default().Walk)
	m.Size(24, true)
	m.Set(f)
	m.roll.To(0)
	return m
}

func TestWhatIsShown(t *testing.T) {
	m := made(Facts{Now: outcome("B", 0.238, 614), Earlier: outcome("B", 0.230, 614), Reference: outcome("A", 0.240, 600)})
	for _, tc := range []struct {
		w     int
		wants []string
	}{
		{39, []string{"238 mm"}},
		{55, []string{"238 mm", "+8 ◇", "Depth, engine m…to plate front", "0.000160 kg·m²", "614 N", "not rated", "230 mm before the last edit, now worse", "-2 against A, better"}},
		{65, []string{"Depth, engine m…to plate front", "+8 ◇", "-2 ◆", "reference"}},
		{80, []string{longest, "+8 ◇", "-2 ◆", "reference", "how: sum of the pieces"}},
		{120, []string{longest, "+8 ◇ worse", "-2 ◆", "reference", "last edit"}},
	} {
		lines := m.View(tc.w)
		view := strings.Join(lines, "\n")
		for _, want := range tc.wants {
			if !strings.Contains(view, want) {
				t.Errorf("%d wide lacks %q:\n%s", tc.w, want, view)
			}
		}
		for _, l := range lines {
			if theme.Width(l) > tc.w {
				t.Errorf("%q is wider than %d", l, tc.w)
			}
		}
		if strings.Index(view, "moved by the last edit") > strings.Index(view, "Propeller") {
			t.Errorf("what moved is not first:\n%s", view)
		}
	}
}

func TestOnlyWhatMoved(t *testing.T) {
	m := made(Facts{Now: outcome("B", 0.238, 614), Earlier: outcome("B", 0.230, 614)})
	m.MovedOnly()
	if view := strings.Join(m.View(80), "\n"); strings.Contains(view, "thrust") || !strings.Contains(view, "Depth") {
		t.Error(view)
	}
	m.Set(Facts{Now: outcome("B", 0.238, 614)})
	if view := strings.Join(m.View(80), "\n"); !strings.Contains(view, "moved none") {
		t.Error(view)
	}
}

func TestTheCursorStaysOnItsReading(t *testing.T) {
	m := made(Facts{Now: outcome("B", 0.238, 614)})
	m.Update(tea.KeyMsg{Type: tea.KeyDown})
	m.Update(tea.KeyMsg{Type: tea.KeyDown})
	was := m.at().r.Key
	m.Set(Facts{Now: outcome("B", 0.230, 620), Earlier: outcome("B", 0.238, 614)})
	if was != "propeller.thrust" || m.at().r.Key != was {
		t.Errorf("from %s to %s", was, m.at().r.Key)
	}
}
