package tui

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"pgregory.net/rapid"
)

var anyKey = rapid.SampledFrom([]string{
	"w", "/", "y", "W", "e", "e", "r", "enter", "enter", "esc", "tab", "tab", "shift+tab", "backspace", "up", "down", "down", "left", "right", "home", "end", "pgup", "pgdown",
	"ctrl+s", "ctrl+u", "ctrl+d", "shift+left", "shift+right", "[", "]", "+", "-", ".", ",", "(", ")", "<", ">", "0", "7", "5.5", "a", "b", "c", "d", "g", "G",
	"h", "j", "k", "l", "m", "n", "o", "r", "s", "u", "u", "x", "J", "K", "N", "S", "U", "H", "Z", "ctrl+z", "?", "v", "v", "w", "z", "space", "é", "漢字", "99999999999999999999", "kg",
})

var anySize = rapid.SampledFrom([][2]int{{80, 24}, {120, 40}, {60, 16}, {111, 30}, {112, 25}, {168, 50}, {200, 60}, {59, 15}, {20, 5}, {75, 17}, {1, 1}, {300, 100}})

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
		m = brief(m)
		for range rapid.IntRange(1, 60).Draw(t, "keys") {
			switch rapid.IntRange(0, 12).Draw(t, "what") {
			case 0:
				size = anySize.Draw(t, "size")
				m = send(m, tea.WindowSizeMsg{Width: size[0], Height: size[1]})
			case 1:
				m = paste(m, rapid.String().Draw(t, "paste"))
			default:
				m = press(m, anyKey.Draw(t, "key"))
			}
			view := m.View()
			fits(t, view, size[0], size[1])
			if o.ASCII {
				for _, r := range view {
					if r > 0x7f {
						t.Fatalf("%q is not ASCII", r)
					}
				}
			}
		}
	})
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
