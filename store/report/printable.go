package report

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Printable makes any text fit to be shown on one line: control characters,
// broken bytes and the marks that turn the direction of text are spelt out, so
// that a name from a file cannot command the terminal or read as something
// else than it says.
func Printable(s string) string {
	if !strings.ContainsFunc(s, unprintable) {
		return s
	}
	var b strings.Builder
	for len(s) > 0 {
		r, n := utf8.DecodeRuneInString(s)
		switch {
		case r == utf8.RuneError && n == 1:
			fmt.Fprintf(&b, `\x%02x`, s[0])
		case r == '\n':
			b.WriteString(`\n`)
		case r == '\t':
			b.WriteString(" ")
		case unprintable(r) && r < 0x100:
			fmt.Fprintf(&b, `\x%02x`, r)
		case unprintable(r):
			fmt.Fprintf(&b, `\u%04x`, r)
		default:
			b.WriteRune(r)
		}
		s = s[n:]
	}
	return b.String()
}

func unprintable(r rune) bool {
	return r == utf8.RuneError || r != '\u00a0' && !unicode.IsPrint(r)
}
