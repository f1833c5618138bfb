//go:build unix

package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// editing runs edit with a shell script as the editor.
func editing(t *testing.T, dir, script string) said {
	t.Helper()
	editor := write(t, t.TempDir(), "editor", "#!/bin/sh\n"+script)
	if err := os.Chmod(editor, 0o700); err != nil {
		t.Fatal(err)
	}
	t.Setenv("TMPDIR", t.TempDir())
	state := t.TempDir()
	env := func(name string) string {
		return map[string]string{"EDITOR": editor + " --wait", "XDG_STATE_HOME": state}[name]
	}
	var out, err bytes.Buffer
	status := program{out: &out, err: &err, env: env, dir: dir}.run([]string{"edit", filepath.Join(dir, "trials.toml")})
	return said{status, out.String(), err.String()}
}

func TestEditInOnesOwnEditor(t *testing.T) {
	for _, tc := range []struct {
		name, script string
		status       int
		says         string
		changed      bool
	}{
		{"a sound change", `sed -i.x 's/^margin_asked_percent = 10/margin_asked_percent = 20/' "$2"`, 0, "saved in", true},
		{"nothing", "true", 0, "nothing was changed", false},
		{"a value out of range", `sed -i.x 's/^margin_asked_percent = 10/margin_asked_percent = 2000/' "$2"`, 2, "not saved; what was edited is in", false},
		{"no TOML any more", `echo '[[[' >> "$2"`, 2, "not saved; what was edited is in", false},
		{"quotes in the editor's own words", `echo "$1" | grep -q -- --wait && sed -i.x 's/^margin_asked_percent = 10/margin_asked_percent = 20/' "$2"`, 0, "saved in", true},
		{"an editor that is interrupted", `kill -INT $$; sleep 1; sed -i.x 's/^margin_asked_percent = 10/margin_asked_percent = 20/' "$2"`, 2, "failed", false},
		{"an editor that removes the copy", `rm "$2"`, 2, "left no copy", false},
		{"an editor that fails", "exit 3", 2, "failed", false},
		{"an editor that fails after a change", `echo '# mine' >> "$2"; exit 3`, 2, "what was edited is in", false},
	} {
		dir := t.TempDir()
		path := write(t, dir, "trials.toml", sampleText())
		s := editing(t, dir, tc.script)
		if s.status != tc.status || !strings.Contains(s.err, tc.says) {
			t.Errorf("%s: %+v", tc.name, s)
		}
		if tc.script == "exit 3" && strings.Contains(s.err, "was edited") {
			t.Errorf("nothing was edited, yet %q", s.err)
		}
		now, err := os.ReadFile(path)
		if err != nil || (string(now) != sampleText()) != tc.changed {
			t.Errorf("%s: changed %v, %v", tc.name, string(now) != sampleText(), err)
		}
		if i := strings.Index(s.err, "is in "); i >= 0 {
			if kept, err := os.ReadFile(strings.TrimSpace(s.err[i+6:])); err != nil || len(kept) == 0 {
				t.Errorf("%s: what was edited is lost, %v", tc.name, err)
			}
		}
	}
}

// A broken study is mended here, of all places.
// An editor that goes on in a window of its own keeps its file.
func TestEditInAWindow(t *testing.T) {
	late := filepath.Join(t.TempDir(), "late")
	s := editing(t, folderWith(t, sampleText()), `echo "$2" > `+late)
	name, err := os.ReadFile(late)
	if err != nil {
		t.Fatal(err)
	}
	if kept, err := os.ReadFile(strings.TrimSpace(string(name))); err != nil || string(kept) != sampleText() || !strings.Contains(s.err, "--wait") {
		t.Errorf("%v, %q", err, s.err)
	}
	s = editing(t, folderWith(t, sampleText()), `sleep 1; echo "$2" > `+late)
	if name, err = os.ReadFile(late); err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(strings.TrimSpace(string(name))); err == nil || s.err == "" || strings.Contains(s.err, "--wait") {
		t.Errorf("a copy that nobody needs is left: %q", s.err)
	}
}

func folderWith(t *testing.T, study string) string {
	t.Helper()
	dir := t.TempDir()
	write(t, dir, "trials.toml", study)
	return dir
}

func TestEditMendsABrokenStudy(t *testing.T) {
	dir := t.TempDir()
	path := write(t, dir, "trials.toml", strings.Replace(sampleText(), "margin_asked_percent = 10", "margin_asked_percent = 1000", 1))
	s := editing(t, dir, `sed -i.x 's/^margin_asked_percent = 1000/margin_asked_percent = 20/' "$2"`)
	if now, err := os.ReadFile(path); s.status != 0 || err != nil || !strings.Contains(string(now), "margin_asked_percent = 20") {
		t.Errorf("%+v, %v", s, err)
	}
}

func TestEditWithABlankEditor(t *testing.T) {
	dir := t.TempDir()
	var out, err bytes.Buffer
	p := program{out: &out, err: &err, dir: dir, env: func(name string) string {
		return map[string]string{"VISUAL": " ", "EDITOR": "true", "XDG_STATE_HOME": dir}[name]
	}}
	if status := p.run([]string{"edit", write(t, dir, "trials.toml", sampleText())}); status != 0 || !strings.Contains(err.String(), "nothing was changed") {
		t.Errorf("status %d, %s", status, err.String())
	}
}
