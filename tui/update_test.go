package tui

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/pages/bench"
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

func TestVariants(t *testing.T) {
	names := func(m Model) string {
		s, _, _ := m.Study()
		var n []string
		for i, v := range s.Variants {
			if i == s.ReferenceIndex() {
				v.Name += "!"
			}
			n = append(n, v.Name)
		}
		return strings.Join(n, ", ")
	}
	for _, tc := range []struct {
		name string
		keys []string
		want string
	}{
		{"duplicate", []string{"d"}, "A belt!, A belt 2, B more of it, C most of it"},
		{"add", []string{"down", "a"}, "A belt!, B more of it, New variant, C most of it"},
		{"rename the reference", []string{"n", "Z", "enter"}, "Z!, B more of it, C most of it"},
		{"rename to a name that is taken", []string{"n", "C most of it", "enter"}, "A belt!, B more of it, C most of it"},
		{"delete", []string{"down", "x", "d"}, "A belt!, C most of it"},
		{"delete the reference", []string{"x", "d"}, "B more of it!, C most of it"},
		{"delete, thought better", []string{"x", "enter"}, "A belt!, B more of it, C most of it"},
		{"move down", []string{"J"}, "B more of it, A belt!, C most of it"},
		{"move up at the top", []string{"K"}, "A belt!, B more of it, C most of it"},
		{"make reference", []string{"down", "r"}, "A belt, B more of it!, C most of it"},
		{"delete all", []string{"x", "d", "x", "d", "x", "d"}, ""},
		{"delete all, then add", []string{"x", "d", "x", "d", "x", "d", "a"}, "New variant!"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			m := press(begin(plateau(), 80, 24), "esc", "esc")
			before, _, _ := m.Study()
			m = press(m, tc.keys...)
			if got := names(m); got != tc.want {
				t.Errorf("variants are %q, want %q", got, tc.want)
			}
			fits(t, m.View(), 80, 24)
			m = press(m, "esc", "u", "u", "u", "u")
			if after, _, _ := m.Study(); after != before {
				t.Errorf("undo led to %q", names(m))
			}
		})
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

func TestSave(t *testing.T) {
	o := plateau()
	sh := o.Shelf.(*shelf)
	m := press(toMargin(begin(o, 80, 24)), "3", "0", "enter")
	has(t, m, "NOT SAVED")
	sh.full = true
	m = press(m, "s")
	has(t, m, "NOT SAVED", "no space left on the disk", "another disk", "esc puts this away")
	m = press(m, "down", "up")
	has(t, m, "no space left on the disk")
	sh.full = false
	m = press(m, "ctrl+s")
	has(t, m, "saved in plateau.toml")
	lacks(t, m, "NOT SAVED", "no space left")
	if sh.files["plateau.toml"].MarginAsked != 0.3 {
		t.Errorf("the file holds %g", sh.files["plateau.toml"].MarginAsked)
	}
}

func TestSaveAcceptsWhatIsBeingTyped(t *testing.T) {
	o := plateau()
	m := press(toMargin(begin(o, 80, 24)), "enter", "35", "ctrl+s")
	if f := o.Shelf.(*shelf).files["plateau.toml"]; f == nil || f.MarginAsked != 0.35 {
		t.Error("not in the file")
	}
	m = press(m, "enter", "999", "ctrl+s")
	has(t, m, "outside 0 to 100 %", "[999")
}

func TestSaveAs(t *testing.T) {
	o := plateau()
	o.Path = ""
	m := press(begin(o, 80, 24), "s")
	has(t, m, "Save under which file name?", "plateau-trials.toml")
	m = press(m, "valley", "enter")
	has(t, m, "valley.toml exists already", "[valley.toml")
	m = press(m, "ctrl+u", "enter")
	has(t, m, "needs a name")
	m = press(m, "ctrl+u", "ridge", "enter")
	has(t, m, "saved in ridge.toml")
	if _, path, unsaved := m.Study(); path != "ridge.toml" || unsaved {
		t.Errorf("the study is in %q, unsaved %v", path, unsaved)
	}
}

func TestLeave(t *testing.T) {
	quits := func(m Model, keys ...string) bool {
		for _, k := range keys[:len(keys)-1] {
			m = press(m, k)
		}
		n, cmd := m.Update(keyOf(keys[len(keys)-1]))
		for cmd != nil {
			msg := cmd()
			if _, ok := msg.(tea.QuitMsg); ok {
				return true
			}
			n, cmd = n.Update(msg)
		}
		return false
	}
	for _, tc := range []struct {
		name string
		keys []string
		full bool
		want bool
	}{
		{name: "nothing edited", keys: []string{"q"}, want: true},
		{name: "nothing edited, ctrl+c", keys: []string{"ctrl+c"}, want: true},
		{name: "asks", keys: []string{"right", "q"}},
		{name: "stay", keys: []string{"right", "q", "esc"}},
		{name: "save and leave", keys: []string{"right", "q", "s"}, want: true},
		{name: "the disk is full, so it stays", keys: []string{"right", "q", "s"}, full: true},
		{name: "leave without saving", keys: []string{"right", "q", "w"}, want: true},
		{name: "by arrow", keys: []string{"right", "q", "right", "enter"}, want: true},
		{name: "while typing", keys: []string{"enter", "5", "ctrl+c"}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			o := plateau()
			o.Shelf.(*shelf).full = tc.full
			if got := quits(toMargin(begin(o, 80, 24)), tc.keys...); got != tc.want {
				t.Errorf("left: %v", got)
			}
		})
	}
}

func TestStudies(t *testing.T) {
	o := plateau()
	o.ChooseFirst = true
	m := begin(o, 80, 24)
	has(t, m, "Studies in this folder", "Valley trials", "cannot be opened", "2026-03-14 09:26")
	m = press(m, "down", "down", "enter")
	has(t, m, "line 12: unknown key ribz")
	m = press(m, "up", "enter")
	has(t, m, "opened valley.toml", "Valley trials / One")
	m = press(toMargin(m), "right", "o", "up", "enter")
	has(t, m, "has edits that are not saved", "open another without saving")
	m = press(m, "w")
	has(t, m, "not opened: plateau.toml: there is no such file", "NOT SAVED")
	o.Shelf.(*shelf).listErr = errors.New("read .: permission denied")
	has(t, press(m, "esc", "o", "r"), "permission denied")
}

func TestNoVariants(t *testing.T) {
	o := plateau()
	o.Study = small("Bare")
	m := begin(o, 80, 24)
	for _, k := range []string{"tab", "tab", "tab", "tab", "tab", "enter", "right", "d", "x", "n", "r", "J", "c", "right", "enter", "<", ">", "m", "esc"} {
		m = press(m, k)
		fits(t, m.View(), 80, 24)
	}
	has(t, m, "no variant")
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

func TestBenchFollowsSideBySide(t *testing.T) {
	m := press(begin(plateau(), 80, 24), "c", "right", "right", "enter")
	has(t, m, "C most of it")
	if m.desk.Selected != 2 || m.bench.Focus() != bench.Form {
		t.Errorf("variant %d, pane %d", m.desk.Selected, m.bench.Focus())
	}
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
