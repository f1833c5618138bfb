//go:build unix

package tui

import (
	"testing"
)

// What a key press may cost on the line, in bytes as they are sent, in a window
// of 120x40 with the sample study.
func TestBytesPerKey(t *testing.T) {
	s := inTerminal(t, 120, 40, "xterm-256color", "BENCH_SAMPLE=1")
	s.WaitFor("Saddle Meadow trials")
	s.WaitFor("? keys")
	const frameEnd = "\x1b[40;H"
	s.WaitForLast(frameEnd)
	for _, tc := range []struct {
		name string
		key  string
		most int
		wait string
	}{
		{"cursor down", "down", 600, "> Cylinders"},
		{"cursor down again", "down", 600, "> Bore"},
		{"step", "right", 2048, "Bore 66 mm → "},
		{"ten steps", "]", 2048, "→ 77 mm"},
		{"begin to type", "enter", 1000, "enter accept"},
		{"a character", "7", 300, "[7 "},
		{"another", "0", 300, "[70"},
		{"accept", "enter", 2048, "→ 70 mm"},
		{"undo", "u", 2048, "undone"},
		{"next pane", "tab", 2048, "┫ Readings"},
		{"next pane again", "tab", 2048, "┫ Checks"},
		{"next part", ")", 2048, "Cooling of Belt 190"},
		{"next variant", ">", 2500, "/ Gear 190"},   // every value of the form, the readings and the checks
		{"side by side", "c", 4500, "Side by side"}, // another page, nearly every cell
	} {
		before := len(s.Raw())
		s.Press(tc.key)
		s.WaitFor(tc.wait)
		s.WaitForLast(frameEnd)
		n := len(s.Raw()) - before
		t.Logf("%-18s %5d bytes", tc.name, n)
		if n > tc.most {
			t.Errorf("%s costs %d bytes, more than %d", tc.name, n, tc.most)
		}
	}
}
