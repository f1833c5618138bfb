package store

import (
	"strconv"
	"strings"
)

// mostNested is deeper than any study; a TOML parser may recurse as deep as
// the file asks it to.
const mostNested = 32

// scanner parts a file into statements. It never fails: what it does not
// understand ends with its line.
type scanner struct {
	src  string
	pos  int
	line int
	deep int // line of the first nesting deeper than mostNested
}

// toStatement skips blanks and comments; false at the end of the file.
func (s *scanner) toStatement() bool {
	for s.pos < len(s.src) {
		switch s.src[s.pos] {
		case '\n':
			s.line++
			s.pos++
		case ' ', '\t', '\r':
			s.pos++
		case '#':
			s.toLineEnd()
		default:
			return true
		}
	}
	return false
}

func (s *scanner) statement() statement {
	st := statement{line: s.line, from: s.pos}
	switch {
	case strings.HasPrefix(s.src[s.pos:], "[["):
		s.pos += 2
		st.kind, st.path = arrayTable, s.keys()
		if !strings.HasPrefix(s.src[s.pos:], "]]") {
			st.kind = junk
		}
		s.toLineEnd()
	case s.src[s.pos] == '[':
		s.pos++
		st.kind, st.path = table, s.keys()
		if !strings.HasPrefix(s.src[s.pos:], "]") {
			st.kind = junk
		}
		s.toLineEnd()
	default:
		st.path = s.keys()
		if strings.HasPrefix(s.src[s.pos:], "=") {
			st.kind = pair
			s.pos++
			start := s.pos
			s.value()
			st.value = s.src[start:s.pos]
		}
		s.toLineEnd()
	}
	if len(st.path) == 0 {
		st.kind = junk
	}
	if len(st.path) > mostNested {
		s.tooDeep(st.line)
	}
	st.end, st.to = s.line, s.pos
	return st
}

func (s *scanner) tooDeep(line int) {
	if s.deep == 0 {
		s.deep = line
	}
}

func (s *scanner) toLineEnd() {
	if i := strings.IndexByte(s.src[s.pos:], '\n'); i >= 0 {
		s.pos += i
	} else {
		s.pos = len(s.src)
	}
}

// keys reads a dotted key and the blanks around it; of one that is nested
// deeper than any study the rest is passed over.
func (s *scanner) keys() path {
	var p path
	for {
		s.blanks()
		k, ok := s.key()
		if !ok {
			return p
		}
		if len(p) <= mostNested {
			p = append(p, k)
		}
		s.blanks()
		if !strings.HasPrefix(s.src[s.pos:], ".") {
			return p
		}
		s.pos++
	}
}

func (s *scanner) blanks() {
	for s.pos < len(s.src) && (s.src[s.pos] == ' ' || s.src[s.pos] == '\t') {
		s.pos++
	}
}

func (s *scanner) key() (string, bool) {
	if s.pos < len(s.src) && (s.src[s.pos] == '"' || s.src[s.pos] == '\'') {
		start := s.pos
		s.text()
		raw := s.src[start:s.pos]
		if plain, err := strconv.Unquote(raw); err == nil && raw[0] == '"' {
			return plain, true
		}
		return strings.Trim(raw, raw[:1]), true
	}
	n := strings.IndexFunc(s.src[s.pos:], func(r rune) bool { return !bareKeyRune(r) })
	if n < 0 {
		n = len(s.src) - s.pos
	}
	s.pos += n
	return s.src[s.pos-n : s.pos], n > 0
}

func bareKeyRune(r rune) bool {
	return r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' || r == '_' || r == '-'
}

// value skips to the end of the line on which the value ends.
func (s *scanner) value() {
	depth := 0
	for s.pos < len(s.src) {
		switch c := s.src[s.pos]; c {
		case '\n':
			if depth == 0 {
				return
			}
			s.line++
			s.pos++
		case '#':
			s.toLineEnd()
		case '"', '\'':
			s.text()
		case '[', '{':
			if depth++; depth > mostNested {
				s.tooDeep(s.line)
			}
			s.pos++
		case ']', '}':
			depth = max(depth-1, 0)
			s.pos++
		default:
			s.pos++
		}
	}
}

// text skips a string of any of TOML's four kinds. One that is not closed
// ends with its line or, when it may hold lines, with the file.
func (s *scanner) text() {
	quote := s.src[s.pos : s.pos+1]
	lines := strings.HasPrefix(s.src[s.pos:], strings.Repeat(quote, 3))
	if lines {
		s.pos += 3
	} else {
		s.pos++
	}
	for s.pos < len(s.src) {
		rest := s.src[s.pos:]
		switch {
		case lines && strings.HasPrefix(rest, strings.Repeat(quote, 3)):
			// Up to two quotes may stand right before the closing three.
			n := len(rest) - len(strings.TrimLeft(rest, quote))
			s.pos += min(n, 5)
			return
		case !lines && rest[:1] == quote:
			s.pos++
			return
		case rest[0] == '\n' && !lines:
			return
		case rest[0] == '\n':
			s.line++
			s.pos++
		case rest[0] == '\\' && quote == `"` && len(rest) > 1 && rest[1] != '\n':
			s.pos += 2
		default:
			s.pos++
		}
	}
}
