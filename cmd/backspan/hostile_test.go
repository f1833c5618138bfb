package main

import (
	"strings"
	"testing"
	"unicode"
)

// hostileStudy is the sample with texts that would command a terminal.
func hostileStudy() string {
	const text = `E\u009b2J\u202e`
	s := strings.NewReplacer(`"Belt 190"`, `"`+text+`"`, `name = "Saddle Meadow trials"`, `name = "\u001b]0;owned\u0007`+text+`"`,
		`currency = "EUR"`, `currency = "\u001b[1m€"`, `notes = ""`, `notes = "\u001b[2J\u009b\n\u001b[H"`).Replace(sampleText())
	return strings.Replace(s, "[[variant]]", "[[decision]]\ndate = \"2026-11-01\"\ntext = \"t\\u001b[31m\\u0007\\u009b\"\n\n[[variant]]", 1)
}

// No text of a file, of a file's name or of the command line reaches the
// terminal as a command, whatever is asked for.
func TestNoTextCommandsTheTerminal(t *testing.T) {
	const evil = "x\x1b[31m\x07\u009b\u202e.toml"
	dir := t.TempDir()
	study := write(t, dir, "e.toml", hostileStudy())
	other := write(t, dir, "o.toml", sampleText())
	broken := write(t, dir, evil, "format = 1\nname = \"\x1b[31m\"\n\x1b[2J\n[[variant]]\nname = \"\u009b\n\"\u009b\" = 1\n")
	var asked [][]string
	for _, format := range []string{"table", "json", "csv", "markdown"} {
		for _, args := range [][]string{{"compare", study}, {"check", study}, {"split", study}, {"diff", study, other}, {"diff", other, study},
			{"sweep", study, "--over", "propeller.pitch=600,650"}} {
			asked = append(asked, append(args, "--format", format))
		}
	}
	asked = append(asked, [][]string{
		{"tables", study}, {"sheet", study}, {"sheet", study, "--format", "html"}, {"check", broken}, {"compare", evil + "/none"}, {"diff", study, broken},
		{"check", study, "--variant", evil}, {"check", study, "--format", evil}, {"check", "--" + evil}, {"check", "a", "b", evil}, {evil}, {"help", evil},
		{"sweep", study, "--over", evil + "=1,2"}, {"sweep", study, "--over", "propeller.pitch=" + evil}, {"sweep", study, "--over", "propeller.pitch=600,650", "--part", evil},
		{"sweep", study, "--over", "propeller.pitch=600,650", "--part", "1/2", "--out", evil + "/x"}, {"solve", study, "--change", "propeller.pitch", "--reading", evil, "--to", evil},
		{"search", study, "--free", evil, "--goal", evil}, {"tolerance", study, "--spread", evil + "=1"}, {"polar", study, "--variant", evil, "--csv", evil},
		{"blade", study, "--save-as", evil}, {"pitch", study, "--for", evil}, {"teeth", study, "--ratio", evil}, {"merge", evil}, {"completion", evil},
		{"new", evil + "/x"}, {"sheet", study, "--out", evil}, {"report", study, "--out", "r" + evil}, {"report", study, "--out", dir + "/r" + evil + ".html"},
	}...)
	for _, args := range asked {
		s := run(t, dir, args...)
		raw := func(r rune) bool {
			return r != '\n' && r != '\t' && (unicode.IsControl(r) || unicode.Is(unicode.Cf, r))
		}
		if strings.ContainsFunc(s.out+s.err, raw) {
			t.Errorf("%q, status %d: raw in %.300q %.300q", args, s.status, s.out, s.err)
		}
		if s.out+s.err == "" {
			t.Errorf("%q says nothing", args)
		}
	}
	if s := run(t, dir, "compare", study); s.status != statusFine || !strings.Contains(s.out, `E\x9b2J\u202e`) {
		t.Errorf("status %d, %s: the names are not spelt out", s.status, s.err)
	}
}
