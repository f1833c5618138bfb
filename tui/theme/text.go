package theme

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// plain spells for an ASCII terminal what the model writes with other
// characters; units become what a form takes back.
var plain = map[rune]string{
	'°': "deg", '²': "2", '³': "3", '·': "*", 'µ': "u", 'μ': "u", '×': "x", '±': "+/-", '−': "-", '–': "-", '—': "-",
	'→': "->", '…': "...", '≤': "<=", '≥': ">=", '≈': "~", '≠': "/=", '’': "'", '‘': "'", '“': `"`, '”': `"`,
	'½': "1/2", '¼': "1/4", '¾': "3/4", '€': "EUR", 'Ω': "ohm", 'π': "pi", 'ρ': "rho", 'η': "eta", 'Δ': "delta", '\u00a0': " ",
	'ß': "ss", 'Ø': "O", 'ø': "o", 'Æ': "AE", 'æ': "ae", 'Ł': "L", 'ł': "l", 'Đ': "D", 'đ': "d",
}

// Clean makes any text fit to be shown on one line: control characters,
// whatever a file holds, are spelt out and never reach the terminal; on an
// ASCII terminal other characters are spelt as well as they can be. Every text
// that the bench did not write itself passes through here before it is
// measured.
func (t *Theme) Clean(s string) string {
	if printableASCII(s) {
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
		case r != '\u00a0' && !unicode.IsPrint(r):
			b.WriteString(escaped(r))
		case t.ASCII && r >= utf8.RuneSelf:
			b.WriteString(spelt(r))
		default:
			b.WriteRune(r)
		}
		s = s[n:]
	}
	return b.String()
}

func escaped(r rune) string {
	if r < 0x100 {
		return fmt.Sprintf(`\x%02x`, r)
	}
	return fmt.Sprintf(`\u%04x`, r)
}

// spelt is r in ASCII: its own spelling, its letter without accents, or "?".
func spelt(r rune) string {
	if s, ok := plain[r]; ok {
		return s
	}
	if unicode.Is(unicode.Mn, r) {
		return ""
	}
	if d := norm.NFD.String(string(r)); d[0] < utf8.RuneSelf {
		return d[:1]
	}
	return "?"
}

func printableASCII(s string) bool {
	for i := 0; i < len(s); i++ {
		if s[i] < ' ' || s[i] >= 0x7f {
			return false
		}
	}
	return true
}
