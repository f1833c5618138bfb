package store

import (
	"slices"
	"strconv"
	"strings"
)

// outline knows on which line each key of a file stands. It is built without
// judging the file, so that it also helps to explain a broken one.
type outline struct {
	statements []statement
	first      map[string]int // line of a path's first statement
	deep       int            // line of a nesting no study has; 0 when there is none
}

// statement is one header or one "key = value" of a file, or a line that is
// neither.
type statement struct {
	kind      kind
	path      path
	line, end int    // first and last
	from, to  int    // byte offsets
	value     string // what stands after the equals sign, with its comment
}

type kind int

const (
	junk kind = iota
	pair
	table
	arrayTable
)

// path leads to a value: keys, and marked numbers for the elements of an array
// of tables.
type path []string

const elementMark = "\x00"

func element(i int) string { return elementMark + strconv.Itoa(i) }

func (p path) id() string { return strings.Join(p, "\x00") }

func (p path) with(parts ...string) path { return append(slices.Clip(p), parts...) }

// String is the path as it stands in the file: table elements left out, keys
// quoted where TOML wants them quoted.
func (p path) String() string {
	var parts []string
	for _, s := range p {
		if strings.HasPrefix(s, elementMark) {
			continue
		}
		if s == "" || strings.ContainsFunc(s, func(r rune) bool { return !bareKeyRune(r) }) {
			s = excerpt(s)
		}
		parts = append(parts, s)
	}
	return strings.Join(parts, ".")
}

// line is where the value at p stands, or the nearest thing around it; 0 when
// unknown.
func (o *outline) line(p path) int {
	for n := len(p); n > 0; n-- {
		if l, ok := o.first[p[:n].id()]; ok {
			return l
		}
	}
	return 0
}

// at is the statement that covers the byte offset.
func (o *outline) at(offset int) (statement, bool) {
	for _, st := range slices.Backward(o.statements) {
		if st.from <= offset {
			return st, offset <= st.to
		}
	}
	return statement{}, false
}

// note keeps the line of a statement for its path, and for the tables around
// it that have no header of their own.
func (o *outline) note(st statement) {
	for n := len(st.path); n > 0; n-- {
		id := st.path[:n].id()
		if _, ok := o.first[id]; ok {
			return
		}
		o.first[id] = st.line
	}
}

// outlineOf reads src, which has LF line ends.
func outlineOf(src string) *outline {
	o := &outline{first: map[string]int{}}
	s := scanner{src: src, line: 1}
	elements := map[string]int{}
	var under path
	for s.toStatement() {
		st := s.statement()
		switch st.kind {
		case table:
			st.path = elementPath(st.path, elements)
			under = st.path
		case arrayTable:
			array := elementPath(st.path[:len(st.path)-1], elements).with(st.path[len(st.path)-1])
			n := elements[array.id()]
			elements[array.id()]++
			st.path = array.with(element(n))
			under = st.path
		case pair:
			st.path = under.with(st.path...)
		}
		if st.kind != junk {
			o.note(st)
		}
		o.statements = append(o.statements, st)
	}
	o.deep = s.deep
	return o
}

// elementPath leads through the latest element of every array of tables on
// the way.
func elementPath(parts path, elements map[string]int) path {
	var p path
	for _, part := range parts {
		p = p.with(part)
		if n := elements[p.id()]; n > 0 {
			p = p.with(element(n - 1))
		}
	}
	return p
}
