package store

import (
	"bytes"
	"errors"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"backspan/model/param"
)

// Every mistake of a file is named in one go, in the order of the lines.
func TestAllProblemsAtOnce(t *testing.T) {
	full, _ := shown(t, func(p param.Param) bool { return p.Kind == param.KindNumber && !p.Optional && p.Min >= 0 })
	table, key := cutLast(full)
	src := "format = 1\nnamee = \"x\"\nreference = \"nowhere\"\nmargin_asked_percent = nan\n\n" +
		"[[variant]]\nname = \"A\"\n[variant." + table + "]\n" + key + " = -1\n\n[[variant]]\nname = \"A\"\n[variant." + table + "]\n" + key + " = -2\npurple = 1\n"
	var lines []int
	for _, p := range problems(t, src) {
		lines = append(lines, p.Line)
	}
	if want := []int{2, 3, 4, 9, 12, 14, 15}; !reflect.DeepEqual(lines, want) {
		t.Errorf("problems in lines %v, want %v:\n%v", lines, want, problems(t, src))
	}
}

func TestNotText(t *testing.T) {
	whole := string(Encode(sound()))
	for _, tc := range []struct {
		name, src, says string
		line            int
	}{
		{"zeros", strings.Repeat("\x00", 4096), "is not a text file", 0},
		{"a zero", whole + "\x00", "is not a text file", 0},
		{"program", "\x7fELF\x02\x01\x01\x00\x00", "is not a text file", 0},
		{"UTF-16 little", "\xff\xfef\x00o\x00", "UTF-16", 0},
		{"UTF-16 big", "\xfe\xff\x00f\x00o", "UTF-16", 0},
		{"Latin-1", "format = 1\nname = \"Fl\xfcgel\"\n", "UTF-8", 2},
		{"empty", "", "is empty", 0},
		{"blank", "\xef\xbb\xbf \r\n\n", "is empty", 0},
		{"big", strings.Repeat("#", mostBytes+1), "8 MiB", 0},
	} {
		ps := problems(t, tc.src)
		if len(ps) != 1 || ps[0].Line != tc.line || !strings.Contains(ps[0].Text, tc.says) {
			t.Errorf("%s: %v, want line %d and %q", tc.name, ps, tc.line, tc.says)
		}
	}
}

func TestCutAnywhere(t *testing.T) {
	s := sound()
	s.Notes = "two\nlines"
	whole := Encode(s)
	const stride = 41 // a prime, so that cuts fall on every kind of place
	for n := 0; n < len(whole); n++ {
		if n > 1200 {
			n += stride - 1
		}
		_, err := Decode("cut.toml", whole[:min(n, len(whole))])
		if err == nil {
			continue // cut between two values, or in a comment
		}
		var ps Problems
		if !errors.As(err, &ps) {
			t.Fatalf("cut at %d: %v", n, err)
		}
		if last := 1 + bytes.Count(whole[:min(n, len(whole))], []byte("\n")); ps[0].Line > last {
			t.Errorf("cut in line %d, problem in line %d", last, ps[0].Line)
		}
	}
}

func TestManyProblemsAreCapped(t *testing.T) {
	ps := problems(t, "format = 1\n[[variant]]\nname = \"A\"\n"+many("x%d = 1\n", 5000))
	if last := ps[len(ps)-1]; len(ps) != mostProblems+1 || last.Text != "and 4900 more problems" {
		t.Errorf("%d problems, the last %v", len(ps), last)
	}
	if ps := problems(t, "format = 1\n"+many("[[variant]]\nname = \"v%d\"\n", mostVariants+1)); !strings.Contains(ps[0].Text, "at most") {
		t.Error(ps)
	}
	if ps := problems(t, "format = 1\n"+strings.Repeat("k", 1<<20)+" = 1\n[[variant]]\nname = \"A\"\n"); len(ps.Error()) > 1000 {
		t.Errorf("a problem of %d bytes", len(ps.Error()))
	}
}

func many(format string, n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, format, i)
	}
	return b.String()
}

func problems(t *testing.T, src string) Problems {
	t.Helper()
	s, err := Decode("x.toml", []byte(src))
	var ps Problems
	if s != nil || !errors.As(err, &ps) || len(ps) == 0 {
		t.Fatalf("got %v and %v from\n%.300s", s, err, src)
	}
	checkShowable(t, ps)
	return ps
}

func expect(t *testing.T, src string, line int, key string, says ...string) {
	t.Helper()
	ps := problems(t, src)
	p := ps[0]
	if len(ps) != 1 || p.File != "x.toml" || p.Line != line || p.Key != key {
		t.Errorf("got %v, want one problem in line %d at %s", ps, line, key)
	}
	for _, s := range says {
		if !strings.Contains(p.Text, s) {
			t.Errorf("%q does not say %q", p.Text, s)
		}
	}
}
