package tui

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"

	"backspan/model"
	"backspan/tui/pages/bench"
)

// click points at the first cell of a text on the screen.
func click(t *testing.T, m Model, text string) Model {
	t.Helper()
	for y, row := range strings.Split(ansi.Strip(m.View()), "\n") {
		if at := strings.Index(row, text); at >= 0 {
			return send(m, tea.MouseMsg{X: ansi.StringWidth(row[:at]), Y: y, Button: tea.MouseButtonLeft, Action: tea.MouseActionPress})
		}
	}
	t.Fatalf("%q is not on the screen:\n%s", text, m.View())
	return m
}

func wheel(m Model, b tea.MouseButton) Model {
	return send(m, tea.MouseMsg{X: 1, Y: 10, Button: b, Action: tea.MouseActionPress})
}

func sampled(w, h int) Model {
	o := plateau()
	o.Study = model.Sample()
	return begin(o, w, h)
}

func TestPointingOnTheBench(t *testing.T) {
	for _, size := range [][2]int{{80, 24}, {120, 40}, {200, 60}} {
		m := sampled(size[0], size[1])
		m = click(t, m, "Gear 190 open")
		has(t, m, "/ Gear 190 open")
		m = click(t, m, "Cooling ")
		has(t, m, "Cooling of Gear 190 open")
		m = click(t, m, "Inflow that reaches")
		has(t, m, "> Inflow that reaches")
		if m.bench.Focus() != bench.Form {
			t.Errorf("at %v the focus is %d after pointing at a value", size, m.bench.Focus())
		}
		if m = click(t, m, "Inflow that reaches"); !m.bench.Busy() {
			t.Errorf("at %v pointing at the value under the cursor does not begin to set it:\n%s", size, m.View())
		}
	}
}

func TestPointingAtReadingsAndChecks(t *testing.T) {
	for _, size := range [][2]int{{120, 40}, {200, 60}} {
		m := click(t, sampled(size[0], size[1]), "Displacement")
		has(t, m, "> Displacement")
		m = click(t, m, "No strong span resonance here")
		if m.bench.Focus() != bench.Checks || !strings.Contains(m.bench.Text(), "No strong span resonance here") {
			t.Errorf("at %v the cursor is on %q", size, m.bench.Text())
		}
	}
}

// The wheel walks through the pane under the pointer, wherever the focus was; of
// the variants one a notch.
func TestWheelWalksUnderThePointer(t *testing.T) {
	turn := func(m Model, x, y int) Model {
		return send(m, tea.MouseMsg{X: x, Y: y, Button: tea.MouseButtonWheelDown, Action: tea.MouseActionPress})
	}
	m := turn(sampled(120, 40), 80, 8)
	if m.bench.Focus() != bench.Readings {
		t.Errorf("the focus is on pane %d", m.bench.Focus())
	}
	has(t, turn(m, 3, 5), "/ Gear 190 ")
}

func TestPointingSideBySide(t *testing.T) {
	m := click(t, press(sampled(120, 40), "c"), "Gear 190")
	has(t, m, "/ Gear 190 ")
	m = wheel(m, tea.MouseButtonWheelDown)
	before := m.View()
	if m = wheel(m, tea.MouseButtonWheelUp); m.View() == before {
		t.Error("the wheel does nothing")
	}
}

func TestPointingAtExplorations(t *testing.T) {
	for _, size := range [][2]int{{80, 24}, {120, 40}} {
		m := press(sized(onSample(), size[0], size[1]), "e")
		m = click(t, m, "Standing thrust, installed")
		has(t, m, "> ")
		if row := marked(m.View()); len(row) != 1 || !strings.Contains(row[0], "Standing thrust, installed") {
			t.Errorf("at %v the cursor is on %q", size, row)
		}
		m = click(t, click(t, m, "work it out"), "work it out")
		has(t, m, "designs pass every check")
	}
}

// What is typed or asked is for the keyboard.
func TestPointingLeavesWhatIsTyped(t *testing.T) {
	m := press(sampled(80, 24), "down", "down", "enter", "7")
	before := m.View()
	if m = wheel(click(t, m, "Cooling"), tea.MouseButtonWheelDown); m.View() != before {
		t.Errorf("the mouse changed what was being typed:\n%s", m.View())
	}
}

func TestMouseIsTheTerminalsUntilAskedFor(t *testing.T) {
	m := press(sampled(80, 24), "M")
	has(t, m, "the mouse points and scrolls here now")
	has(t, press(m, "M"), "the mouse is the terminal's again")
}
