package tui

import (
	"math/rand/v2"
	"os"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"pgregory.net/rapid"

	"backspan/model"
)

var anyKeys = []string{
	"w", "/", "y", "W", "e", "e", "r", "enter", "enter", "esc", "tab", "tab", "shift+tab", "backspace", "up", "down", "down", "left", "right", "home", "end", "pgup", "pgdown",
	"ctrl+s", "ctrl+u", "ctrl+d", "shift+left", "shift+right", "[", "]", "+", "-", ".", ",", "(", ")", "<", ">", "0", "7", "5.5", "a", "b", "c", "d", "g", "G",
	"h", "j", "k", "l", "m", "n", "o", "r", "s", "u", "u", "x", "J", "K", "N", "S", "U", "H", "H", "Z", "ctrl+z", "?", "v", "v", "w", "z", "space", "é", "漢字", "99999999999999999999", "kg",
	"L", "L", "M",
}

var anySizes = [][2]int{{80, 24}, {120, 40}, {60, 16}, {111, 30}, {112, 25}, {168, 50}, {200, 60}, {59, 15}, {20, 5}, {75, 17}, {1, 1}, {300, 100}}

var anyKey, anySize = rapid.SampledFrom(anyKeys), rapid.SampledFrom(anySizes)

// Whatever is pressed at whatever size: nothing breaks, and nothing is painted
// outside the window.
func TestAnyKeysAtAnySize(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := plateau()
		o.ASCII = rapid.Bool().Draw(t, "ascii")
		o.Clipboard = func(string) error { return nil }
		size := anySize.Draw(t, "size")
		m := begin(o, size[0], size[1])
		m.look = lookOnce(m.look)
		m = cheaply(m)
		for range rapid.IntRange(1, 60).Draw(t, "keys") {
			switch rapid.IntRange(0, 12).Draw(t, "what") {
			case 0:
				size = anySize.Draw(t, "size")
				m = send(m, tea.WindowSizeMsg{Width: size[0], Height: size[1]})
			case 2:
				m = send(m, anywhere(rapid.IntRange(0, size[0]-1).Draw(t, "x"), rapid.IntRange(0, size[1]-1).Draw(t, "y")))
			case 1:
				m = paste(m, rapid.String().Draw(t, "paste"))
			default:
				m = press(m, anyKey.Draw(t, "key"))
			}
			sound(t, m, o, size)
		}
	})
}

// anywhere is the mouse: a click, or the wheel.
func anywhere(x, y int) tea.MouseMsg {
	b := []tea.MouseButton{tea.MouseButtonLeft, tea.MouseButtonWheelUp, tea.MouseButtonWheelDown}[(x+y)%3]
	return tea.MouseMsg{X: x, Y: y, Button: b, Action: tea.MouseActionPress}
}

// sound is a frame that stays in the window and shows who has the keys.
func sound(t rapid.TB, m Model, o Options, size [2]int) {
	t.Helper()
	view := m.View()
	fits(t, view, size[0], size[1])
	if o.ASCII {
		for _, r := range view {
			if r > 0x7f {
				t.Fatalf("%q is not ASCII", r)
			}
		}
	}
	want := 1
	if m.asked() != nil {
		want = 2 // the question, and where the person will be again
	}
	tab := m.th.Marks.Heavy + m.th.Marks.TabLeft + " " // at the left of a pane, so that no text that is typed counts
	if n := strings.Count("\n"+view, "\n"+tab) + strings.Count(view, m.th.Marks.Column+tab); m.fits() && n != want {
		t.Fatalf("%d panes have the focus, not %d:\n%s", n, want, view)
	}
}

// One long session of keys, pastes and sizes at random: BACKSPAN_TIMES of them,
// or a few.
func TestOneLongSession(t *testing.T) {
	times := 400
	if n, err := strconv.Atoi(os.Getenv("BACKSPAN_TIMES")); err == nil {
		times = n
	}
	random := rand.New(rand.NewPCG(1, 2))
	o := plateau()
	o.Study = model.Sample()
	o.Clipboard = func(string) error { return nil }
	size := [2]int{120, 40}
	m := quick(begin(o, size[0], size[1]))
	resized, ended := 0, 0
	places := map[string]int{}
	for i := range times {
		if random.IntN(10) == 0 {
			size = anySizes[random.IntN(len(anySizes))]
			m = send(m, tea.WindowSizeMsg{Width: size[0], Height: size[1]})
			resized++
		} else {
			k := anyKeys[random.IntN(len(anyKeys))]
			if (m.typing() != nil || m.asked() != nil || m.page == atFind) && random.IntN(4) == 0 {
				k = "esc" // else most of the session would be spent in one text
			}
			m = press(m, k)
			if random.IntN(10) == 0 {
				m = send(m, anywhere(random.IntN(size[0]), random.IntN(size[1])))
			}
		}
		sound(t, m, o, size)
		places[m.place().Name]++
		if len(m.desk.Study().Variants) > 12 || m.left { // what copies add up to, and leaving, would end the test's use
			m = quick(begin(o, size[0], size[1]))
			ended++
		}
		if t.Failed() {
			t.Fatalf("at key %d", i)
		}
	}
	t.Logf("%d keys, %d sizes, %d sessions, in %v", times-resized, resized, ended+1, places)
}

// A change of the window's size changes neither the focus nor the place.
func TestResizingKeepsFocus(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := begin(plateau(), 80, 24)
		m = press(m, rapid.SliceOfN(rapid.SampledFrom([]string{"tab", "down", ")", ">", "end"}), 0, 12).Draw(t, "keys")...)
		before, focus, hand := m.View(), m.bench.Focus(), m.desk.Selected
		for _, s := range rapid.SliceOfN(anySize, 1, 4).Draw(t, "sizes") {
			m = send(m, tea.WindowSizeMsg{Width: s[0], Height: s[1]})
		}
		m = send(m, tea.WindowSizeMsg{Width: 80, Height: 24})
		if m.bench.Focus() != focus || m.desk.Selected != hand {
			t.Fatalf("focus %d → %d, variant %d → %d", focus, m.bench.Focus(), hand, m.desk.Selected)
		}
		if after := m.View(); !sameMarks(before, after) {
			t.Fatalf("the marks moved; before:\n%s\nafter:\n%s", before, after)
		}
	})
}

// sameMarks compares the rows with the cursor; the window on a list may stand
// elsewhere, and so may the rows beside each other.
func sameMarks(a, b string) bool { return reflect.DeepEqual(marked(a), marked(b)) }

func marked(view string) []string {
	var rows []string
	for _, pane := range strings.FieldsFunc(view, func(r rune) bool { return r == '\n' || r == '│' }) {
		if strings.HasPrefix(pane, "> ") {
			rows = append(rows, strings.TrimRight(pane, " "))
		}
	}
	slices.Sort(rows)
	return rows
}

// Undoing every edit leads back to the first state exactly, and doing all
// again leads to the last.
func TestUndoReturnsTheExactStudy(t *testing.T) {
	edits := rapid.SampledFrom([]string{
		"right", "left", "]", "[", "down", "down", "up", ")", "(", ">", "<", "tab", "shift+tab", "d", "a", "J", "K", "r", "x", "enter", "5", "esc", "c", "b",
	})
	rapid.Check(t, func(t *rapid.T) {
		m := begin(plateau(), 120, 40)
		first, _, _ := m.Study()
		kept := first.Clone()
		m = press(m, rapid.SliceOfN(edits, 1, 80).Draw(t, "keys")...)
		m = press(m, "esc", "esc", "esc", "b")
		last, _, _ := m.Study()
		for m.desk.CanUndo() != "" {
			m = press(m, "u")
		}
		if s, _, unsaved := m.Study(); s != first || unsaved || !reflect.DeepEqual(s, kept) {
			t.Fatal("undo led to another study")
		}
		for range 100 {
			m = press(m, "U")
		}
		if s, _, _ := m.Study(); s != last {
			t.Fatal("doing again led to another study")
		}
	})
}
