package main

import (
	"strings"
	"testing"

	"github.com/charmbracelet/x/ansi"
)

// A long note is folded in the table, and whole in every format.
func TestDiffFoldsALongNote(t *testing.T) {
	dir := t.TempDir()
	a := write(t, dir, "a.toml", sampleText())
	long := strings.Repeat("it shook at half throttle ", 12) + "夜夜夜"
	d := write(t, dir, "d.toml", strings.Replace(sampleText(), `notes = ""`, `notes = "`+long+`"`, 1))
	s := run(t, dir, "diff", a, d)
	for line := range strings.Lines(s.out) {
		if w := ansi.StringWidth(line); w > len(a)+len(d)+80 {
			t.Errorf("%d cells: %q", w, line)
		}
	}
	said := strings.Join(strings.Fields(s.out), " ")
	if strings.Count(said, "shook") != 12 || !strings.Contains(said, "夜夜夜") {
		t.Errorf("the note is not whole\n%s", s.out)
	}
	for _, format := range []string{"markdown", "csv", "json"} {
		if s := run(t, dir, "diff", a, d, "--format", format); !strings.Contains(s.out, long) {
			t.Errorf("%s is folded\n%s", format, s.out)
		}
	}
}

// Decisions are no parameters.
func TestDiffHeadsDecisionsAsSuch(t *testing.T) {
	dir := t.TempDir()
	a := write(t, dir, "a.toml", sampleText())
	b := write(t, dir, "b.toml", strings.Replace(sampleText(), "[[variant]]", "[[decision]]\ndate = 2026-11-03\ntext = \"three blades\"\n\n[[variant]]", 1))
	_, log, found := strings.Cut(run(t, dir, "diff", a, b).out, "\nDecisions\n")
	if !found || !strings.HasPrefix(log, " decision ") {
		t.Errorf("%q", log)
	}
}
