// Package theme is the look of the bench in one place: the few colours, the
// shapes and rules, and what becomes of text before it may reach a terminal.
package theme

import (
	"strings"

	"github.com/charmbracelet/lipgloss"
	"github.com/muesli/termenv"
)

// Theme is the look of one session.
type Theme struct {
	ASCII bool // no character outside ASCII
	Bare  bool // the terminal takes no colour, bold or reverse
	Marks Marks

	Strong Ink // names and headings
	Quiet  Ink // column heads, units, what is there when needed
	Accent Ink // the pane with the focus, the mark of the cursor
	Cursor Ink // the row under the cursor
	Better Ink
	Worse  Ink
	Fails  Ink
	Thin   Ink
	Lines  []Ink // of charts, one a machine
}

// Ink paints text. The zero Ink leaves it as it is.
type Ink struct{ open, close string }

// Paint wraps s, which must be plain text of one line.
func (k Ink) Paint(s string) string {
	if s == "" || k.open == "" {
		return s
	}
	return k.open + s + k.close
}

// New makes the look for a renderer's terminal. The colours are of middle
// brightness and so are readable on light and on dark; terminals of 16 colours
// get the nearest that are.
func New(r *lipgloss.Renderer, ascii bool) *Theme {
	colour := func(of256, of16 string) lipgloss.Style {
		return r.NewStyle().Foreground(lipgloss.CompleteColor{TrueColor: of256, ANSI256: of256, ANSI: of16})
	}
	t := &Theme{ASCII: ascii, Bare: r.ColorProfile() == termenv.Ascii, Marks: drawn}
	if ascii {
		t.Marks = typed
	}
	t.Strong = ink(r.NewStyle().Bold(true))
	t.Quiet = ink(colour("244", "8"))
	if r.ColorProfile() == termenv.ANSI {
		t.Quiet = Ink{} // bright black is invisible on too many palettes
	}
	t.Accent = ink(colour("31", "6").Bold(true))
	t.Cursor = ink(r.NewStyle().Reverse(true))
	t.Better = ink(colour("28", "2"))
	t.Worse = ink(colour("166", "5"))
	t.Thin = ink(colour("166", "5").Bold(true))
	t.Fails = ink(colour("160", "1").Bold(true))
	for _, c := range [][2]string{{"31", "6"}, {"133", "5"}, {"64", "2"}, {"136", "3"}, {"62", "4"}} {
		t.Lines = append(t.Lines, ink(colour(c[0], c[1])))
	}
	return t
}

// ink finds what a style writes around a text.
func ink(s lipgloss.Style) Ink {
	before, after, _ := strings.Cut(s.Render("x"), "x")
	return Ink{before, after}
}

// Merit is the ink for a change: better (+1), worse (−1) or neither.
func (t *Theme) Merit(sign int) Ink {
	switch {
	case sign > 0:
		return t.Better
	case sign < 0:
		return t.Worse
	}
	return Ink{}
}
