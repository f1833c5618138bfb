package output

import (
	"fmt"
	"strings"
)

// frame is what Bubble Tea's renderer writes at once.
type frame struct {
	lines []string // from the top of the screen, empty where one stays as it was
	tail  string   // where the cursor goes
	anew  bool     // nothing is known of the screen: the first frame, another size
}

// parse is false for anything that is not a frame.
func parse(s string) (f frame, ok bool) {
	if s, ok = strings.CutPrefix(s, home); !ok {
		return f, false
	}
	s, f.anew = strings.CutPrefix(s, "\r")
	end := strings.LastIndex(s, "\x1b[")
	if end < 0 || !strings.HasSuffix(s, "H") || strings.Contains(s, "\x1b[J") {
		return f, false
	}
	f.lines, f.tail = strings.Split(s[:end], "\n"), s[end:]
	for i := range f.lines {
		f.lines[i] = strings.TrimSuffix(f.lines[i], "\r")
		if strings.Contains(f.lines[i], "\r") {
			return f, false
		}
	}
	return f, true
}

func position(row int) string { return fmt.Sprintf("\x1b[%d;1H", row) }

// harmless is true of sequences after which the screen shows what it showed.
func harmless(p []byte) bool {
	switch string(p) {
	case "\x1b[?25l", "\x1b[?25h":
		return true
	}
	return isCopy(p)
}
