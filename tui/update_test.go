package tui

import (
	"reflect"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
)

func trimmed(s string) string {
	rows := strings.Split(s, "\n")
	for i := range rows {
		rows[i] = strings.TrimRight(rows[i], " ")
	}
	return strings.Join(rows, "\n")
}

// toMargin leads to the field "Margin asked" of the study, which stands at
// 10 %.
func toMargin(m Model) Model {
	for range 60 {
		if strings.Contains(m.View(), "Margin asked") {
			break
		}
		m = press(m, ")")
	}
	return press(m, "home", "down", "down", "down")
}

func margin(m Model) float64 { s, _, _ := m.Study(); return s.MarginAsked }

func TestEditByTyping(t *testing.T) {
	for _, tc := range []struct {
		name string
		keys []string
		want float64
		says string
	}{
		{"replaces", []string{"enter", "25", "enter"}, 0.25, "Margin asked 10 % → 25 %"},
		{"begins with a figure", []string{"1", "5", "enter"}, 0.15, "10 % → 15 %"},
		{"decimal comma", []string{"enter", "12,5", "enter"}, 0.125, "12.5 %"},
		{"unit typed", []string{"enter", "8", "space", "%", "enter"}, 0.08, "8 %"},
		{"appends after a move", []string{"enter", "end", ".5", "enter"}, 0.105, "10.5 %"},
		{"esc leaves the old", []string{"enter", "77", "esc"}, 0.1, "10 %"},
		{"fine step", []string{"right"}, 0.101, ""},
		{"fine step back", []string{"left"}, 0.099, ""},
	} {
		t.Run(tc.name, func(t *testing.T) {
			m := press(toMargin(begin(plateau(), 120, 40)), tc.keys...)
			if d := margin(m) - tc.want; d > 1e-12 || d < -1e-12 {
				t.Errorf("the margin is %g, want %g", margin(m), tc.want)
			}
			has(t, m, tc.says)
		})
	}
}

func TestRefusalKeepsTextAndValue(t *testing.T) {
	m := press(toMargin(begin(plateau(), 80, 24)), "enter", "5 kg", "enter")
	has(t, m, "[5 kg", "! Margin asked")
	if margin(m) != 0.1 {
		t.Errorf("the margin became %g", margin(m))
	}
	m = press(m, "backspace", "backspace", "backspace", "enter")
	if margin(m) != 0.05 {
		t.Errorf("after mending the text the margin is %g", margin(m))
	}
}

func TestTypingSurvivesResizing(t *testing.T) {
	m := press(toMargin(begin(plateau(), 120, 40)), "enter", "4", "2")
	for _, s := range [][2]int{{80, 24}, {50, 10}, {200, 60}, {60, 16}} {
		m = send(m, tea.WindowSizeMsg{Width: s[0], Height: s[1]})
		fits(t, m.View(), s[0], s[1])
	}
	has(t, m, "[42")
	if m = press(m, "enter"); margin(m) != 0.42 {
		t.Errorf("the margin is %g", margin(m))
	}
}

func TestKeysThatArriveTogether(t *testing.T) {
	one := press(begin(plateau(), 80, 24), "j", "j", "j")
	if all := press(begin(plateau(), 80, 24), "jjj"); all.View() != one.View() {
		t.Errorf("jjj in one read:\n%s\nwant\n%s", all.View(), one.View())
	}
}

func TestPasteIsText(t *testing.T) {
	m := paste(begin(plateau(), 80, 24), "q")
	has(t, m, "a paste is taken only where something is typed")
	m = paste(press(toMargin(m), "enter"), "12.5\r\n")
	if m = press(m, "enter"); margin(m) != 0.125 {
		t.Errorf("the margin is %g", margin(m))
	}
}

func TestNotesKeepLineEnds(t *testing.T) {
	m := toMargin(begin(plateau(), 120, 40))
	m = press(m, "end", "enter")
	m = paste(m, "first line\r\nsecond \\ line\n")
	m = press(m, "enter")
	s, _, _ := m.Study()
	const want = "first line\nsecond \\ line"
	if s.Notes != want {
		t.Errorf("the notes are %q", s.Notes)
	}
	m = press(m, "enter", "end", "!", "enter")
	if s, _, _ := m.Study(); s.Notes != want+"!" {
		t.Errorf("edited again the notes are %q", s.Notes)
	}
}

func TestUndoLeadsToThePlaceAndSaysSo(t *testing.T) {
	m := press(toMargin(begin(plateau(), 120, 40)), "enter", "20", "enter", "(", "(", "(", "u")
	has(t, m, "undone: Margin asked 10 % → 20 %", "> Margin asked")
	if _, _, unsaved := m.Study(); unsaved {
		t.Error("all undone, and yet unsaved")
	}
	m = press(m, "U")
	has(t, m, "done again: Margin asked 10 % → 20 %")
	if margin(m) != 0.2 {
		t.Errorf("the margin is %g", margin(m))
	}
}

func TestFileTextNeverReachesTheTerminal(t *testing.T) {
	o := plateau()
	o.Study.Name = "bad\x1b]0;owned\x07\u202e"
	o.Study.Notes = "x\x1b[2Jy\u009b"
	o.Study.Variants[0].Name = "A\x1b[31m\r\nB\xff"
	o.Study.Variants[0].Notes = "\x1b[H"
	o.Study.Currency = "\x1bE"
	for _, keys := range [][]string{nil, {"(", "tab"}, {"c"}, {"?"}, {"x"}, {"esc", "esc", "x"}, {"esc", "esc", "n"}, {"S"}, {"right", "q"}} {
		m := press(begin(o, 120, 40), keys...)
		for _, r := range m.View() {
			if r != '\n' && (r < ' ' || r >= 0x7f && r < 0xa0 || r == '\u202e' || r == '\ufffd') {
				t.Fatalf("keys %v: %q is on the screen", keys, r)
			}
		}
	}
	has(t, begin(o, 120, 40), `bad\x1b]0;owned\x07\u202e`)
}

func TestShownOnBenchWhatIsMissing(t *testing.T) {
	has(t, begin(plateau(), 120, 40), "depth", "mass", "feels", "thrust", "climb", "not rated")
}

func TestUntouchedValueIsNoEdit(t *testing.T) {
	m := begin(plateau(), 80, 24)
	s := m.desk.Study()
	for range 12 {
		m = press(m, "enter", "enter", "down")
	}
	if m.desk.Study() != s || !reflect.DeepEqual(m.desk.Study(), s) {
		t.Errorf("Enter twice made an edit: %s", m.desk.Last())
	}
}
