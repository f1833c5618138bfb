package output

import (
	"strings"
	"unicode/utf8"

	"github.com/charmbracelet/x/ansi"
)

// cell is one character and the ink it is written in.
type cell struct {
	ink  string // the sequences in force, empty for none
	text string
}

var blank = cell{text: " "}

// cellsOf splits a line into cells. It is false for a line that holds anything
// but inks and characters of one cell each: such a line is sent whole.
func cellsOf(line string) ([]cell, bool) {
	cells := make([]cell, 0, len(line))
	ink := ""
	for len(line) > 0 {
		if line[0] == 0x1b {
			n := inkLength(line)
			if n == 0 {
				return nil, false
			}
			if seq := line[:n]; seq == "\x1b[0m" || seq == "\x1b[m" {
				ink = ""
			} else {
				ink += seq
			}
			line = line[n:]
			continue
		}
		r, n := utf8.DecodeRuneInString(line)
		if r < ' ' || r == utf8.RuneError || r >= 0x7f && ansi.StringWidth(line[:n]) != 1 {
			return nil, false
		}
		c := cell{ink, line[:n]}
		if r == ' ' && !seenOnBlanks(ink) {
			c = blank
		}
		cells = append(cells, c)
		line = line[n:]
	}
	for len(cells) > 0 && cells[len(cells)-1] == blank {
		cells = cells[:len(cells)-1]
	}
	return cells, true
}

// inkLength is the length of the sequence at the start of s that sets colour,
// weight or reverse; 0 when it is another one.
func inkLength(s string) int {
	if !strings.HasPrefix(s, "\x1b[") {
		return 0
	}
	for i := 2; i < len(s); i++ {
		switch c := s[i]; {
		case c >= '0' && c <= '9' || c == ';':
		case c == 'm':
			return i + 1
		default:
			return 0
		}
	}
	return 0
}

// seenOnBlanks is false for an ink of weight and letter colour alone: a blank
// written in it looks like any other.
func seenOnBlanks(ink string) bool {
	for _, seq := range strings.Split(ink, "m") {
		params := strings.Split(strings.TrimPrefix(seq, "\x1b["), ";")
		for i := 0; i < len(params); i++ {
			switch p := params[i]; {
			case p == "", p == "1", p == "2", len(p) == 2 && (p[0] == '3' || p[0] == '9') && p[1] <= '7':
			case p == "38" && i+1 < len(params) && params[i+1] == "5":
				i += 2
			case p == "38" && i+1 < len(params) && params[i+1] == "2":
				i += 4
			default:
				return true
			}
		}
	}
	return false
}
