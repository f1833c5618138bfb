package store

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"backspan/store/report"
)

// Problem is one fault at a place a person can go to.
type Problem struct {
	File string
	Line int    // 0 when the fault has no line, such as something missing
	Key  string // as it stands in the file, with its table; empty when there is none
	Text string // what is wrong and what to do
}

func (p Problem) String() string {
	s := report.Printable(p.File)
	if p.Line > 0 {
		s += ":" + strconv.Itoa(p.Line)
	}
	if p.Key != "" {
		s += ": " + p.Key
	}
	return s + ": " + p.Text
}

// Problems is everything wrong with a file, in the order of its lines.
type Problems []Problem

func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.String()
	}
	return strings.Join(lines, "\n")
}

// mostProblems keeps the answer to a file of another kind readable.
const mostProblems = 100

// inOrder sorts by line, what has none last, and keeps every text to a length
// a person reads, whatever the file holds.
func (ps Problems) inOrder() Problems {
	slices.SortStableFunc(ps, func(a, b Problem) int {
		if (a.Line == 0) != (b.Line == 0) {
			return b.Line - a.Line
		}
		return a.Line - b.Line
	})
	if n := len(ps) - mostProblems; n > 0 {
		rest := Problem{File: ps[0].File, Text: fmt.Sprintf("and %d more problems", n)}
		if n == 1 {
			rest.Text = "and one more problem"
		}
		ps = append(ps[:mostProblems:mostProblems], rest)
	}
	for i := range ps {
		ps[i].Key, ps[i].Text = brief(ps[i].Key, 120), brief(ps[i].Text, 400)
	}
	return ps
}

func brief(s string, most int) string {
	if len(s) <= most {
		return s
	}
	if runes := []rune(s); len(runes) > most {
		return string(runes[:most]) + "…"
	}
	return s
}

// excerpt is s in quotes, escaped and cut to a length that fits a message.
func excerpt(s string) string {
	return strconv.Quote(brief(s, 40))
}
