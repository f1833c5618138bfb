package input

import "unicode/utf8"

// longest is the longest sequence that is waited for, in bytes.
const longest = 32

// unfinished reports whether b ends inside an escape sequence or inside a
// character of several bytes.
func unfinished(b []byte) bool { return insideEscape(b) || insideRune(b) }

func insideEscape(b []byte) bool {
	for i := len(b) - 1; i >= 0 && i >= len(b)-longest; i-- {
		if b[i] != 0x1b {
			continue
		}
		rest := b[i+1:]
		switch {
		case len(rest) == 0:
			return true
		case rest[0] == 'O':
			return len(rest) == 1
		case rest[0] == '[':
			return !closed(rest[1:])
		}
		return false
	}
	return false
}

// closed reports whether a control sequence has its final byte.
func closed(b []byte) bool {
	for _, c := range b {
		if c >= 0x40 && c <= 0x7e {
			return true
		}
	}
	return false
}

func insideRune(b []byte) bool {
	for back := 1; back < utf8.UTFMax && back <= len(b); back++ {
		if c := b[len(b)-back]; utf8.RuneStart(c) {
			return c >= utf8.RuneSelf && !utf8.FullRune(b[len(b)-back:])
		}
	}
	return false
}
