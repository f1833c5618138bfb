package store

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"

	"backspan/store/report"
)

var (
	decimalComma = regexp.MustCompile(`^[+-]?\d+,\d+$`)
	leadingDot   = regexp.MustCompile(`^[+-]?\.\d+$`)
	trailingDot  = regexp.MustCompile(`^[+-]?\d+\.$`)
	leadingZero  = regexp.MustCompile(`^[+-]?0+[1-9]\d*$`)
	numberUnit   = regexp.MustCompile(`^([+-]?\d+(?:[.,]\d+)?)\s*([\p{L}%°µ][^=\s]*)$`)
	wordsOnly    = regexp.MustCompile(`^\p{L}[^="'\[\]{}]*$`)
	truthWord    = regexp.MustCompile(`(?i)^(yes|no|on|off|true|false)$`)
	conflictMark = regexp.MustCompile(`^(<{7}|={7}|>{7}|\|{7})`)
)

const cutShort = "it may have been cut short: look for a backup beside it"

// advice words a TOML error: what is wrong on that line and what to write
// instead; the library's own words when nothing better is known.
func (p *parsed) advice(st statement, src string, line int, message string) string {
	text := strings.TrimSpace(src[st.from:st.to])
	atEnd := strings.HasPrefix(message, "unexpected EOF")
	if st.end > st.line {
		if atEnd {
			return fmt.Sprintf("the value that begins in line %d is not closed before the file ends; %s", st.line, cutShort)
		}
		return fmt.Sprintf("the value that begins in line %d does not end as it should: %s", st.line, report.Printable(message))
	}
	switch {
	case conflictMark.MatchString(text):
		return "this is the mark of a merge conflict; keep one of the two versions and take the marks out"
	case strings.Contains(message, "already"):
		return p.twice(st, line, message)
	case strings.Contains(message, "newlines") || strings.Contains(message, "expected '\"'") || strings.Contains(message, "expected \"'\""):
		return "the text is not closed; put a quote at its end, on the same line"
	case strings.Contains(message, "escape"):
		return `a backslash in text must be written twice, \\`
	case strings.Contains(message, "out of range"), strings.Contains(message, "out of the safe"):
		return "the number is too large"
	case atEnd:
		return "the file ends in the middle of this line; " + cutShort
	case st.kind == junk && strings.Contains(text, ":") && !strings.Contains(text, "="):
		return `between key and value stands "=", not ":"`
	case st.kind == pair:
		if s := valueAdvice(st); s != "" {
			return s
		}
	case st.kind == junk:
		return fmt.Sprintf("%s is neither [table] nor key = value: %s", excerpt(text), report.Printable(message))
	}
	return report.Printable(message)
}

func (p *parsed) twice(st statement, line int, message string) string {
	first := p.lines.first[st.path.id()]
	switch {
	case st.kind == table && len(st.path) == 2 && st.path[0] == variantKey:
		return "write [[variant]] with two brackets on either side"
	case st.kind == arrayTable && len(st.path) == 2:
		return fmt.Sprintf("the %s in line %d is another kind of thing; write [[%[1]s]] there too, with two brackets on either side", st.path, p.lines.first[st.path[:1].id()])
	case st.kind != junk && first > 0 && first != line:
		return fmt.Sprintf("stands twice, first in line %d; keep one", first)
	}
	return report.Printable(message)
}

func valueAdvice(st statement) string {
	v := strings.TrimSpace(withoutComment(st.value))
	key := st.path[len(st.path)-1]
	switch {
	case v == "":
		return "has no value; write one after the equals sign"
	case decimalComma.MatchString(v):
		return fmt.Sprintf("%s is not a number; write it with a decimal point: %s", v, strings.Replace(v, ",", ".", 1))
	case leadingDot.MatchString(v):
		return fmt.Sprintf("%s is not a number; write %s", v, strings.Replace(v, ".", "0.", 1))
	case trailingDot.MatchString(v):
		return fmt.Sprintf("%s is not a number; write %s0", v, v)
	case leadingZero.MatchString(v):
		return fmt.Sprintf("%s is not a number; write it without zeros in front", v)
	case strings.HasPrefix(v, "\u2212"):
		return "the minus sign is not the one of the keyboard; write -"
	case truthWord.MatchString(v):
		return fmt.Sprintf("write true or false, or text in quotes, not %s", v)
	case numberUnit.MatchString(v):
		m := numberUnit.FindStringSubmatch(v)
		return fmt.Sprintf("%s: the unit is part of the key; write only the number, %s", excerpt(v), strings.Replace(m[1], ",", ".", 1))
	case wordsOnly.MatchString(v):
		return fmt.Sprintf("text stands in quotes: %s = %s", path{key}, strconv.Quote(v))
	}
	return ""
}

// withoutComment cuts a one-line value at its comment.
func withoutComment(v string) string {
	s := scanner{src: v}
	for s.pos < len(v) {
		switch v[s.pos] {
		case '#':
			return v[:s.pos]
		case '"', '\'':
			s.text()
		default:
			s.pos++
		}
	}
	return v
}
