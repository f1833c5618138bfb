package store

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// withSteps puts two formats behind the first for one test: in the second the
// margin has another key, in the third the currency.
func withSteps(t *testing.T) {
	t.Helper()
	rename := func(from, to string) formatStep {
		return func(text string) string {
			var b strings.Builder
			end := 0
			for _, st := range outlineOf(text).statements {
				if st.kind == pair && st.path.String() == from {
					b.WriteString(text[end:st.from] + to)
					end = st.from + len(from)
				}
			}
			return b.String() + text[end:]
		}
	}
	formatSteps = []formatStep{rename("margin", "margin_wanted"), rename("margin_wanted", "margin_asked_percent")}
	t.Cleanup(func() { formatSteps = nil })
}

const firstFormat = `# my own words
format = 1 # first of all
name = "margin"
margin = 25.0 # measured twice
[[variant]]
name = "A"
# at the end
`

func TestOlderFormatsAreBroughtForward(t *testing.T) {
	withSteps(t)
	for name, src := range map[string]string{
		"two steps": firstFormat,
		"one step":  strings.NewReplacer("format = 1", "format = 2", "margin =", "margin_wanted =").Replace(firstFormat),
		"none":      strings.NewReplacer("format = 1", "format = 3", "margin =", "margin_asked_percent =").Replace(firstFormat),
	} {
		s, err := Decode("a.toml", []byte(src))
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		out := string(Encode(s))
		if s.MarginAsked != 0.25 || s.Name != "margin" || !strings.Contains(out, "\nformat = 3 ") {
			t.Errorf("%s: margin %g, name %q\n%.300s", name, s.MarginAsked, s.Name, out)
		}
		for _, comment := range []string{"# my own words", "# first of all", "# measured twice", "# at the end"} {
			if !strings.Contains(out, comment) {
				t.Errorf("%s: the comment %q is lost", name, comment)
			}
		}
	}
}

// What is wrong in an older file is told with its line there, and no key of
// another format is passed over.
func TestProblemsOfOlderFormats(t *testing.T) {
	withSteps(t)
	for _, tc := range []struct{ from, to, says string }{
		{"margin = 25.0", "margin = 2500.0", "a.toml:4: margin_asked_percent: "},
		{"margin = 25.0", "margin_asked = 25.0", "a.toml:4: margin_asked: there is no such key"},
		{`name = "A"`, `name = "A`, "a.toml:6: "},
		{"format = 1", "format = 0", "a.toml:2: format: there is no format 0; write format = 3"},
		{"format = 1", "format = 4", "a.toml:2: format: the file is in format 4, but this Backspan reads up to format 3"},
	} {
		_, err := Decode("a.toml", []byte(strings.Replace(firstFormat, tc.from, tc.to, 1)))
		var ps Problems
		if !errors.As(err, &ps) || !strings.Contains(ps[0].String(), tc.says) {
			t.Errorf("%s: %v; want %s", tc.to, err, tc.says)
		}
	}
}

// The original is kept once, before the first save in the new format, and the
// person is told.
func TestMigratedFileIsKeptOnce(t *testing.T) {
	withSteps(t)
	path := filepath.Join(t.TempDir(), "a.toml")
	put(t, path, firstFormat)
	f := NewFolder(filepath.Dir(path))
	s, err := f.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	if string(get(t, path)) != firstFormat || exists(path+".bak") {
		t.Error("opening changed something")
	}
	for i, wants := range []string{"a.toml.bak, which is in an older format", ""} {
		s.MarginAsked += 0.01
		note, err := f.Save(path, s)
		if err != nil || !strings.Contains(note, wants) || wants == "" && note != "" {
			t.Errorf("save %d: %q, %v", i, note, err)
		}
	}
	if string(get(t, path+".bak")) != firstFormat || exists(path+".bak2") {
		t.Error("not exactly one backup of the original")
	}
	if s, err = NewFolder(".").Open(path); err != nil || s.MarginAsked != 0.27 {
		t.Errorf("%v, %v", s, err)
	}
}

// A migrated file keeps its backup whatever step of the save fails.
func TestMigrationWithAFaultAtEveryStep(t *testing.T) {
	withSteps(t)
	for fail := 1; fail < 40; fail++ {
		path := filepath.Join(t.TempDir(), "a.toml")
		put(t, path, firstFormat)
		f := NewFolder(filepath.Dir(path))
		d := &faultyDisk{fail: fail, cause: os.ErrPermission}
		f.disk = d
		s, err := f.Open(path)
		must(t, err)
		_, err = f.Save(path, s)
		original, _ := os.ReadFile(path + ".bak")
		if now := string(get(t, path)); now != firstFormat && string(original) != firstFormat {
			t.Errorf("step %d: the original is nowhere, %v", fail, err)
		}
		if len(d.steps) < fail {
			return
		}
	}
	t.Error("the save never got through")
}

// Work that was left by a Backspan of an older format is offered.
func TestWorkLeftInAnOlderFormat(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.toml")
	put(t, path, string(Encode(sound())))
	j := Journals{State: func() (string, error) { return t.TempDir(), nil }}
	session, _, err := j.Begin(path)
	must(t, err)
	edited := sound()
	edited.Name = "edited then"
	session.Edited("rename", edited)
	must(t, session.End(true))
	withSteps(t)
	next, lefts, err := j.Begin(path)
	must(t, err)
	if len(lefts) != 1 || lefts[0].Study.Name != "edited then" {
		t.Errorf("%d are left", len(lefts))
	}
	must(t, next.End(false))
}

func TestFaultsOfTheFormatLine(t *testing.T) {
	for line, want := range map[string]string{
		"format = 0":    "a.toml:1: format: there is no format 0; write format = 1",
		"format = -1":   "a.toml:1: format: there is no format -1; write format = 1",
		"format = 1.5":  "a.toml:1: format: must be a whole number; write format = 1",
		`format = "1"`:  "a.toml:1: format: must be a whole number; write format = 1",
		"format = true": "a.toml:1: format: must be a whole number; write format = 1",
		"format =":      "a.toml:1: format: has no value; write one after the equals sign",
		"":              `a.toml:1: format: the file does not say its format; add the line "format = 1" at its top`,
		"Format = 1":    "or write the Format of line 1 in small letters",
	} {
		_, err := Decode("a.toml", []byte(line+"\n[[variant]]\nname = \"A\"\n"))
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v; want %s", line, err, want)
		}
	}
}
