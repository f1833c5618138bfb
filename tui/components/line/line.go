// Package line is a text of one line being typed.
package line

import (
	"strings"

	"github.com/charmbracelet/bubbles/cursor"
	"github.com/charmbracelet/bubbles/key"
	"github.com/charmbracelet/bubbles/textinput"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/theme"
)

// Break says what a line end becomes that is pasted or was in the text.
type Break string

// The kinds of break.
const (
	Blank Break = " "
	Rows  Break = "; " // a table's rows
	Spelt Break = `\n` // spelt out, and a line end again when accepted
)

// Model is the line. Its text is chosen whole at first: the first character
// typed replaces it, any move of the caret keeps it. A table is too much work
// to lose by one key and is never chosen whole.
type Model struct {
	input textinput.Model
	lines Break
	first string
	whole bool
}

// New begins to edit text.
func New(text string, lines Break) Model {
	in := textinput.New()
	in.Prompt = ""
	in.Cursor.SetMode(cursor.CursorStatic)
	in.KeyMap.Paste = key.NewBinding(key.WithDisabled())              // of the machine the program runs on, not the person's
	in.KeyMap.DeleteBeforeCursor = key.NewBinding(key.WithDisabled()) // it clears, wherever the caret is
	in.Focus()
	if lines == Spelt {
		text = strings.NewReplacer(`\`, `\\`, "\n", `\n`).Replace(text)
	}
	in.SetValue(text)
	in.CursorEnd()
	return Model{input: in, lines: lines, first: in.Value(), whole: in.Value() != "" && lines != Rows}
}

// Update takes a key or a paste.
func (m Model) Update(msg tea.KeyMsg) Model {
	if msg.Paste {
		msg.Runes = []rune(m.oneLine(string(msg.Runes)))
	}
	if m.lines == Rows && (msg.Type == tea.KeyUp || msg.Type == tea.KeyDown) {
		m.climb(map[tea.KeyType]int{tea.KeyUp: -1, tea.KeyDown: 1}[msg.Type])
		return m
	}
	typed := msg.Type == tea.KeyRunes && !msg.Alt || msg.Type == tea.KeySpace
	clear := msg.String() == "ctrl+u"
	if m.whole && typed || clear {
		m.input.SetValue("")
	}
	m.whole = false
	if clear {
		return m
	}
	m.input, _ = m.input.Update(msg)
	return m
}

func (m Model) oneLine(s string) string {
	s = strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(s)
	s = strings.TrimRight(s, "\n")
	return strings.ReplaceAll(s, "\n", string(m.lines))
}

// Value is the text as it would be taken.
func (m Model) Value() string {
	if m.lines != Spelt {
		return m.input.Value()
	}
	return unspell(m.input.Value())
}

// Touched reports whether the text differs from what it was at first.
func (m Model) Touched() bool { return m.input.Value() != m.first }

// Whole reports whether the next character typed replaces the text.
func (m Model) Whole() bool { return m.whole }

func unspell(s string) string {
	var b strings.Builder
	for i := 0; i < len(s); i++ {
		if s[i] == '\\' && i+1 < len(s) && (s[i+1] == 'n' || s[i+1] == '\\') {
			i++
			if s[i] == 'n' {
				b.WriteByte('\n')
				continue
			}
		}
		b.WriteByte(s[i])
	}
	return b.String()
}

// View shows the text between brackets in w cells. The caret is a reversed
// cell, and a stroke between the characters where the terminal has no reverse.
func (m Model) View(t *theme.Theme, w int) string {
	room := w - 2
	if room < 1 {
		return t.Cut("[]", w)
	}
	runes := []rune(m.input.Value())
	pos := min(m.input.Position(), len(runes))
	if m.whole && !t.Bare {
		return "[" + frame(t, "", t.Clean(string(runes)), "", t.Cursor, room) + "]"
	}
	return framed(t, runes[:pos], runes[pos:], w)
}

// framed is the text before and after the caret between brackets, in w cells.
func framed(t *theme.Theme, left, right []rune, w int) string {
	before, after, room := t.Clean(string(left)), t.Clean(string(right)), w-2
	if t.Bare {
		return "[" + frame(t, before, t.Marks.Caret, after, theme.Ink{}, room) + "]"
	}
	caret := " "
	if rest := []rune(after); len(rest) > 0 {
		caret, after = string(rest[:1]), string(rest[1:])
	}
	return "[" + frame(t, before, caret, after, t.Cursor, room) + "]"
}

// frame shows before, caret and after in exactly w cells, the caret always.
func frame(t *theme.Theme, before, caret, after string, ink theme.Ink, w int) string {
	caret = t.Cut(caret, w)
	room := w - theme.Width(caret)
	if theme.Width(before) > room {
		r := []rune(before)
		for len(r) > 0 && theme.Width(string(r))+1 > room {
			r = r[1:]
		}
		before = string(r)
		if room > 0 {
			before = t.Marks.Cut + before
		}
	}
	return before + ink.Paint(caret) + t.Fit(after, room-theme.Width(before))
}
