package line

import (
	"io"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"
	"github.com/muesli/termenv"

	"backspan/tui/theme"
)

func plain() *theme.Theme {
	r := lipgloss.NewRenderer(io.Discard)
	r.SetColorProfile(termenv.Ascii)
	return theme.New(r, false)
}

var special = map[string]tea.KeyMsg{
	"left": {Type: tea.KeyLeft}, "up": {Type: tea.KeyUp}, "down": {Type: tea.KeyDown}, "home": {Type: tea.KeyHome}, "end": {Type: tea.KeyEnd},
	"ctrl+u": {Type: tea.KeyCtrlU}, "backspace": {Type: tea.KeyBackspace},
}

func after(m Model, keys ...string) Model {
	for _, k := range keys {
		if msg, ok := special[k]; ok {
			m = m.Update(msg)
			continue
		}
		if text, ok := strings.CutPrefix(k, "paste:"); ok {
			m = m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(text), Paste: true})
			continue
		}
		m = m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(k)})
	}
	return m
}

func TestTyping(t *testing.T) {
	for _, tc := range []struct {
		name  string
		text  string
		lines Break
		keys  []string
		want  string
	}{
		{"the first character replaces", "62", Blank, []string{"7"}, "7"},
		{"a move keeps", "62", Blank, []string{"end", "7"}, "627"},
		{"cleared", "62", Blank, []string{"ctrl+u"}, ""},
		{"cleared with the caret inside", "62", Blank, []string{"end", "left", "ctrl+u", "7"}, "7"},
		{"pasted lines become blanks", "", Blank, []string{"paste:1\r\n2\n"}, "1 2"},
		{"line ends of notes are kept", "a\nb", Spelt, []string{"end", "!"}, "a\nb!"},
		{"a backslash stays one", `a\b`, Spelt, []string{"end", "!"}, `a\b!`},
		{"a table is not replaced", "1 2; 3 4", Rows, []string{"5"}, "1 2; 3 45"},
		{"a table is cleared on purpose", "1 2; 3 4", Rows, []string{"ctrl+u"}, ""},
		{"pasted rows", "", Rows, []string{"paste:1 2\n3 4\n"}, "1 2; 3 4"},
		{"up a row, same column", "1 2; 3 4", Rows, []string{"up", "9"}, "1 29; 3 4"},
		{"up to a shorter row", "1; 345", Rows, []string{"up", "9"}, "19; 345"},
		{"up and down again", "1 2; 3 4; 5 6", Rows, []string{"up", "up", "home", "down", "9"}, "1 2; 93 4; 5 6"},
		{"down at the end", "1 2; 3 4", Rows, []string{"down", "9"}, "1 2; 3 49"},
	} {
		if got := after(New(tc.text, tc.lines), tc.keys...).Value(); got != tc.want {
			t.Errorf("%s: %q, want %q", tc.name, got, tc.want)
		}
	}
}

func TestView(t *testing.T) {
	for _, tc := range []struct {
		name string
		m    Model
		w    int
		want string
	}{
		{"caret at the end", after(New("", Blank), "62"), 8, "[62▏   ]"},
		{"caret inside", after(New("62", Blank), "end", "left"), 8, "[6▏2   ]"},
		{"long text shows the caret", after(New("", Blank), "abcdefghij"), 8, "[…ghij▏]"},
		{"no room", New("62", Blank), 2, "[]"},
	} {
		if got := tc.m.View(plain(), tc.w); got != tc.want {
			t.Errorf("%s: %q, want %q", tc.name, got, tc.want)
		}
	}
}

func TestTable(t *testing.T) {
	m := New("1 2; 3 4; 5 6", Rows)
	for _, tc := range []struct {
		name string
		m    Model
		h    int
		want string
	}{
		{"all rows", m, 5, "   1 2|   3 4|> [5 6▏  ]"},
		{"the row with the caret is in sight", m, 2, "   3 4|> [5 6▏  ]"},
		{"after climbing", after(m, "up", "up"), 2, "> [1 2▏  ]|   3 4"},
		{"a new row", after(m, ";"), 4, "   1 2|   3 4|   5 6|> [▏     ]"},
		{"empty", after(m, "ctrl+u"), 4, "> [▏     ]"},
	} {
		if got := strings.Join(tc.m.Table(plain(), 10, tc.h), "|"); got != tc.want {
			t.Errorf("%s: %q, want %q", tc.name, got, tc.want)
		}
	}
}
