package checks

import (
	"io"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"
	"github.com/muesli/termenv"

	"backspan/model/reading"
	"backspan/model/unit"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

func made(cs ...reading.Check) Model {
	r := lipgloss.NewRenderer(io.Discard)
	r.SetColorProfile(termenv.Ascii)
	m := New(theme.New(r, false), keymap.Default().Walk)
	m.Set(cs, nil, "EUR")
	m.Size(24, true)
	return m
}

func some(ribs float64) []reading.Check {
	return []reading.Check{
		reading.AtLeast("a", "Room for the belt", 12, 10, 0, unit.Millimetre),
		reading.Unrated("b", "Power rating", "no rating is published"),
		reading.AtMost("c", "Tension per rib", ribs, 90, 0.1, unit.Newton).Advice("more Ribs").Source("a handbook"),
		reading.AtLeast("d", "Far from its limit indeed it is so", 5, 1e-6, 0, unit.One),
	}
}

func TestWhatIsShown(t *testing.T) {
	for _, w := range []int{39, 55, 58, 80, 120} {
		m := made(some(108)...)
		lines := m.View(w)
		view := strings.Join(lines, "\n")
		for _, want := range []string{"fails", "not rated", "holds", "Tension", "-20 %", "+20 %", "over+999%", "what helps: more Ribs", "limit from: a handbook"} {
			if !strings.Contains(view, want) {
				t.Errorf("%d wide lacks %q:\n%s", w, want, view)
			}
		}
		for _, l := range lines {
			if theme.Width(l) > w {
				t.Errorf("%q is wider than %d", l, w)
			}
		}
		if i, j := strings.Index(view, "fails"), strings.Index(view, "holds"); i > j {
			t.Errorf("the worst is not first:\n%s", view)
		}
	}
}

func TestTheCursorStaysOnItsCheck(t *testing.T) {
	m := made(some(80)...)
	for m.at().Key != "c" {
		was := m.at().Key
		if m.Update(tea.KeyMsg{Type: tea.KeyDown}); m.at().Key == was {
			t.Fatal("not reached")
		}
	}
	m.Set(some(108), some(80), "EUR")
	if m.at().Key != "c" {
		t.Errorf("it went to %s", m.at().Key)
	}
	if view := strings.Join(m.View(60), "\n"); !strings.Contains(view, "; holds before") || !strings.Contains(view, "◇ Tension") {
		t.Errorf("what it was is not told:\n%s", view)
	}
}

func TestEmpty(t *testing.T) {
	m := made()
	if view := strings.Join(m.View(40), "\n"); !strings.Contains(view, "no checks") {
		t.Error(view)
	}
}
