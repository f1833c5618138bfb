package input

import "unicode/utf8"

// longest is the longest sequence that is waited for, in bytes.
const longest = 32

// unfinished is how many bytes at the end of b begin an escape sequence or a
// character of several bytes that goes on beyond it.
func unfinished(b []byte) int { return max(insideEscape(b), insideRune(b)) }

func insideEscape(b []byte) int {
	for i := len(b) - 1; i >= 0 && i >= len(b)-longest; i-- {
		if b[i] != 0x1b {
			continue
		}
		rest := b[i+1:]
		if len(rest) == 0 || rest[0] == 'O' && len(rest) == 1 || rest[0] == '[' && !closed(rest[1:]) {
			return len(b) - i
		}
		return 0
	}
	return 0
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

func insideRune(b []byte) int {
	for back := 1; back < utf8.UTFMax && back <= len(b); back++ {
		if c := b[len(b)-back]; utf8.RuneStart(c) {
			if c >= utf8.RuneSelf && !utf8.FullRune(b[len(b)-back:]) {
				return back
			}
			return 0
		}
	}
	return 0
}
