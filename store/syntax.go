package store

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/BurntSushi/toml"

	"backspan/store/report"
)

// mostSyntax bounds how often a broken file is read again.
const mostSyntax = 25

// parsed is a file as far as it could be read.
type parsed struct {
	values  map[string]any
	lines   *outline
	faults  Problems
	whole   bool // nothing had to be left out
	useless bool // too broken to say anything about what it holds
}

// parse reads src. A line that is not TOML is noted, left out and the rest
// read again, so that one comma does not hide the next mistake.
func parse(file, src string) parsed {
	src, controls := withoutControls(src)
	p := parsed{lines: outlineOf(src), whole: len(controls) == 0}
	if p.lines.deep > 0 {
		p.faults = Problems{{File: file, Line: p.lines.deep, Text: "is nested deeper than any study; give a study's own file"}}
		p.whole, p.useless = false, true
		return p
	}
	p.noteControls(file, controls)
	for range mostSyntax {
		var values map[string]any
		err := decodeTOML(src, &values)
		if err == nil {
			p.values = values
			return p
		}
		p.whole = false
		st, fault := p.explain(file, src, err)
		if !slices.ContainsFunc(controls, func(c controlled) bool { return c.line == fault.Line }) { // else it may follow from that
			p.faults = append(p.faults, fault)
		}
		alone := st.line == st.end && st.line > 0 && st.kind != table && st.kind != arrayTable
		if !alone || strings.HasPrefix(src[st.from:], "[") {
			break
		}
		src = src[:st.from] + strings.Repeat(" ", st.to-st.from) + src[st.to:]
	}
	p.useless = true
	return p
}

// decodeTOML turns a fault of the TOML library itself into an error: a file
// must never end the program.
func decodeTOML(src string, into *map[string]any) (err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("cannot be read as TOML: %v", r)
		}
	}()
	_, err = toml.Decode(src, into)
	return err
}

// explain finds the statement that a TOML error is about and words the error.
func (p *parsed) explain(file, src string, err error) (statement, Problem) {
	var pe toml.ParseError
	if !errors.As(err, &pe) {
		return statement{}, Problem{File: file, Text: report.Printable(err.Error())}
	}
	// The library's line and column are those of the character after the
	// fault when that is a line end; its offset is right.
	offset := min(max(pe.Position.Start, 0), len(src))
	before := src[:offset]
	line := 1 + strings.Count(before, "\n")
	column := 1 + utf8.RuneCountInString(before[strings.LastIndexByte(before, '\n')+1:])
	st, ok := p.lines.at(offset)
	if !ok {
		st = statement{}
	}
	fault := Problem{File: file, Line: line, Text: fmt.Sprintf("%s (column %d)", p.advice(st, src, line, pe.Message), column)}
	if st.kind != junk {
		fault.Key = st.path.String()
	}
	return st, fault
}
