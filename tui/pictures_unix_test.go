//go:build unix

package tui

import "testing"

// What a key costs on the line on the pages of pictures, in a window of 120x40
// with the sample study.
func TestBytesPerKeyOfPictures(t *testing.T) {
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
		{"drawing", "v", 8000, "Side elevation"},
		{"from behind", "tab", 6000, "From behind"},
		{"next variant", ">", 6000, "Belt 190 ref"},
		{"curves", "g", 8000, "Power over crank speed"},
		{"six more machines", "a", 16000, "H ⠤⠤⠤⠤ Gear 300"}, // in two or three frames, as they are worked
		{"reading line", "]", 4000, "at crank speed 9"},
		{"next chart", "tab", 8000, "chart 2 of 7"},
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
