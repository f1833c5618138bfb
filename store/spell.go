package store

import (
	"fmt"
	"strconv"
	"strings"
	"unicode"

	"backspan/model/param"
	"backspan/model/unit"
)

// settled spells a number so that what a file gives back is spelt the same
// again: a value that no decimal number in its unit reaches moves to the
// nearest that one does.
func settled(l param.Literal, u unit.Unit) string {
	x, err := strconv.ParseFloat(string(l), 64)
	if err != nil {
		return float(l)
	}
	return float(param.Literal(u.Exact(u.SI(x))))
}

// float spells a number as a TOML float: with a point or an exponent.
func float(l param.Literal) string {
	s := strings.ToLower(string(l))
	switch s {
	case "-0":
		return "0.0"
	case "+inf":
		return "inf"
	}
	if strings.ContainsAny(s, ".en") { // "n": nan and inf, which Decode refuses by name
		return s
	}
	return s + ".0"
}

// quote spells a text as a TOML basic string, over several lines when it has
// several. Bytes that are not UTF-8 become the replacement character.
func quote(s string) string {
	s = strings.ToValidUTF8(s, "\uFFFD")
	lines := strings.Contains(s, "\n")
	var b strings.Builder
	open := `"`
	if lines {
		open = `"""`
		b.WriteString(open + "\n")
	} else {
		b.WriteString(open)
	}
	quotes := 0 // in a row, so far
	for i, r := range s {
		if r != '"' {
			quotes = 0
		}
		switch {
		case r == '"':
			quotes++
			if !lines || quotes == 3 || i == len(s)-1 {
				b.WriteByte('\\')
				quotes = 0
			}
			b.WriteRune(r)
		case r == '\\':
			b.WriteString(`\\`)
		case r == '\n' && lines:
			b.WriteRune(r)
		case r == '\t':
			b.WriteString(`\t`)
		case r == '\r':
			b.WriteString(`\r`)
		case unseen(r):
			fmt.Fprintf(&b, `\u%04X`, r)
		default:
			b.WriteRune(r)
		}
	}
	b.WriteString(open)
	return b.String()
}

// unseen is true for what an editor or a terminal would not show as it is:
// controls, line separators, marks that turn the direction of writing, and
// the byte order mark.
func unseen(r rune) bool {
	switch {
	case unicode.IsControl(r), r == 0x2028, r == 0x2029, r == 0xFEFF, r == 0x200E, r == 0x200F:
		return true
	}
	return r >= 0x202A && r <= 0x202E || r >= 0x2066 && r <= 0x2069
}
