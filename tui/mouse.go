package tui

import (
	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/components/headline"
	"backspan/tui/pages/bench"
)

// notch is how many rows one click of the wheel goes.
const notch = 3

// pointed is a page whose rows can be pointed at. Point takes the cell of the
// page; again says that it holds the row under the cursor already.
type pointed interface{ Point(x, y int) (again bool) }

// turnMouse begins or ends taking what the mouse does. Until then it is the
// terminal's own, to select text with.
func (r *root) turnMouse() tea.Cmd {
	r.mouse = !r.mouse
	if r.mouse {
		r.say("the mouse points and scrolls here now; " + r.keys.Everywhere.Mouse.Help().Key + " gives it back to the terminal")
		return tea.EnableMouseCellMotion
	}
	r.say("the mouse is the terminal's again")
	return tea.DisableMouse
}

// pointedAt takes what the mouse does: the wheel walks, a click goes to a row,
// and one on the row under the cursor is Enter. What is being typed or asked is
// for the keyboard.
func (r *root) pointedAt(msg tea.MouseMsg) tea.Cmd {
	if msg.Action != tea.MouseActionPress || !r.fits() || r.asked() != nil || r.typing() != nil {
		return nil
	}
	x, y := msg.X, msg.Y-1-headline.Height(r.w)
	switch msg.Button {
	case tea.MouseButtonWheelUp:
		return r.walk(x, y, tea.KeyUp)
	case tea.MouseButtonWheelDown:
		return r.walk(x, y, tea.KeyDown)
	case tea.MouseButtonLeft:
		return r.click(x, y)
	}
	return nil
}

// walk turns the wheel: on the bench it walks through the pane under the pointer.
func (r *root) walk(x, y int, key tea.KeyType) tea.Cmd {
	rows := notch
	if r.page == atBench && r.bench.Face(x, y) == bench.Variants {
		rows = 1 // each is taken in hand
	}
	var cmds []tea.Cmd
	for range rows {
		cmds = append(cmds, r.onPage(tea.KeyMsg{Type: key}))
	}
	return tea.Batch(cmds...)
}

func (r *root) click(x, y int) tea.Cmd {
	page, ok := r.sight().(pointed)
	if !ok || y < 0 || y >= r.body() {
		return nil
	}
	again := false
	r.edit(func() tea.Msg { again = page.Point(x, y); return nil }, nil)
	if again {
		return r.press(tea.KeyMsg{Type: tea.KeyEnter})
	}
	return nil
}
