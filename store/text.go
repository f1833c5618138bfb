package store

import (
	"bytes"
	"fmt"
	"unicode/utf8"
)

// mostBytes is far above any study; a file beyond it is something else.
const mostBytes = 8 << 20

const tooBig = "is larger than 8 MiB, so it is not a Backspan study; give the study's own file"

// textOf returns the text of a file with LF line ends and without a byte
// order mark. The problem says why it is no text.
func textOf(file string, src []byte) (string, *Problem) {
	fault := func(line int, text string) (string, *Problem) {
		return "", &Problem{File: file, Line: line, Text: text}
	}
	switch {
	case len(src) > mostBytes:
		return fault(0, tooBig)
	case bytes.HasPrefix(src, []byte("\xff\xfe")), bytes.HasPrefix(src, []byte("\xfe\xff")):
		return fault(0, "is saved as UTF-16; save it as UTF-8 with your editor, then open it again")
	}
	src = bytes.TrimPrefix(src, []byte("\xef\xbb\xbf"))
	if len(bytes.TrimSpace(src)) == 0 {
		return fault(0, "is empty; look for a backup beside it, or make a new study under another name")
	}
	if i := bytes.IndexByte(src, 0); i >= 0 {
		return fault(0, fmt.Sprintf("is not a text file: byte %d is zero; look for a backup beside it, or give a study's own file", i+1))
	}
	if i := firstNotUTF8(src); i >= 0 {
		return fault(1+bytes.Count(src[:i], []byte("\n")), "is not a text file in UTF-8: this line holds other bytes; save it as UTF-8 with your editor")
	}
	return string(bytes.ReplaceAll(src, []byte("\r\n"), []byte("\n"))), nil
}

// firstNotUTF8 is the offset of the first byte that is not UTF-8; −1 when
// there is none.
func firstNotUTF8(src []byte) int {
	if utf8.Valid(src) {
		return -1
	}
	for i := 0; i < len(src); {
		r, n := utf8.DecodeRune(src[i:])
		if r == utf8.RuneError && n == 1 {
			return i
		}
		i += n
	}
	return -1
}
