package theme

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"

	"backspan/store/report"
)

// plain spells for an ASCII terminal what the model writes with other
// characters; units become what a form takes back.
var plain = map[rune]string{
	'°': "deg", '²': "2", '³': "3", '·': "*", 'µ': "u", 'μ': "u", '×': "x", '±': "+/-", '−': "-", '–': "-", '—': "-",
	'→': "->", '←': "<-", '…': "...", '≤': "<=", '≥': ">=", '≈': "~", '≠': "/=", '’': "'", '‘': "'", '“': `"`, '”': `"`,
	'½': "1/2", '¼': "1/4", '¾': "3/4", '€': "EUR", 'Ω': "ohm", 'π': "pi", 'ρ': "rho", 'η': "eta", 'Δ': "delta", '\u00a0': " ",
	'ß': "ss", 'Ø': "O", 'ø': "o", 'Æ': "AE", 'æ': "ae", 'Ł': "L", 'ł': "l", 'Đ': "D", 'đ': "d",
}

// Clean makes any text fit to be shown on one line: control characters,
// whatever a file holds, are spelt out and never reach the terminal; on an
// ASCII terminal other characters are spelt as well as they can be. Every text
// that the bench did not write itself passes through here before it is
// measured.
func (t *Theme) Clean(s string) string {
	s = report.Printable(s)
	if !t.ASCII || printableASCII(s) {
		return s
	}
	var b strings.Builder
	for _, r := range s {
		if r < utf8.RuneSelf {
			b.WriteRune(r)
		} else {
			b.WriteString(spelt(r))
		}
	}
	return b.String()
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
