//go:build unix

package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"backspan/tui/screentest"
)

const raisesMargin = `sed -i.x 's/^margin_asked_percent = 10/margin_asked_percent = 20/' "$1"`

// editors are two: one changes the copy and stays open, the other ends at once.
func editors(t *testing.T) (staying, idle string) {
	t.Helper()
	dir := t.TempDir()
	staying = write(t, dir, "staying", "#!/bin/sh\n"+raisesMargin+"\necho is open\nexec sleep 60\n")
	idle = write(t, dir, "idle", "#!/bin/sh\n")
	for _, name := range []string{staying, idle} {
		if err := os.Chmod(name, 0o700); err != nil {
			t.Fatal(err)
		}
	}
	return staying, idle
}

// A window that is closed over an editor loses nothing: the next edit offers
// what was typed.
func TestEditGoesOnAfterItsWindowWasClosed(t *testing.T) {
	staying, idle := editors(t)
	for _, tc := range []struct {
		name   string
		signal syscall.Signal
		later  bool // the study is changed before the next edit
		asks   string
		key    string
		saved  bool
	}{
		{"closed", syscall.SIGHUP, false, "Go on with it? [Y/n]", "enter", true},
		{"ended", syscall.SIGTERM, false, "Go on with it? [Y/n]", "enter", true},
		{"changed since", syscall.SIGHUP, true, "Go on with it? [y/N]", "enter", false},
	} {
		t.Run(tc.name, func(t *testing.T) {
			dir, state := folderWith(t, sampleText()), t.TempDir()
			begin := func(editor string) *screentest.Screen {
				w := screentest.Window{Cols: 160, Rows: 24, Env: screentest.Env("xterm", "EDITOR="+editor, "XDG_STATE_HOME="+state), Dir: dir, Mute: true}
				return screentest.Start(t, w, built(t), "edit", "trials.toml")
			}
			s := begin(staying)
			s.WaitFor("is open")
			s.Signal(tc.signal)
			s.WaitFor("ended from outside; what was edited is in")
			s.End()
			if left, err := filepath.Glob(filepath.Join(dir, ".*journal*")); err != nil || len(left) > 0 {
				t.Errorf("the study is held still: %v", left)
			}
			study := sampleText()
			if tc.later {
				study += "# later\n"
				write(t, dir, "trials.toml", study)
			}
			s = begin(idle)
			s.WaitFor("left a copy with changes")
			s.WaitFor(tc.asks)
			s.Press(tc.key)
			if tc.saved {
				s.WaitFor("saved in trials.toml")
			} else {
				s.WaitFor("it stays")
			}
			s.End()
			now, err := os.ReadFile(filepath.Join(dir, "trials.toml"))
			if err != nil || strings.Contains(string(now), "margin_asked_percent = 20") != tc.saved {
				t.Errorf("%v, saved %v", err, !tc.saved)
			}
			left, err := filepath.Glob(filepath.Join(state, "backspan", copyStart+"*", "trials.toml"))
			if want := map[bool]int{true: 0, false: 2}[tc.saved]; err != nil || len(left) != want {
				t.Errorf("%d copies are left: %v", len(left), left)
			}
		})
	}
}

// edits runs edit without a terminal.
func edits(dir, state, editor string) said {
	var out, err bytes.Buffer
	env := func(name string) string {
		return map[string]string{"EDITOR": editor, "XDG_STATE_HOME": state}[name]
	}
	status := program{out: &out, err: &err, env: env, dir: dir}.run([]string{"edit", filepath.Join(dir, "trials.toml")})
	return said{status, out.String(), err.String()}
}

// Without a terminal what is left is named, and also where the study is gone.
func TestCopiesOfAnEditAreNamed(t *testing.T) {
	dir, state := folderWith(t, sampleText()), t.TempDir()
	if s := edits(dir, state, `f() { echo '# mine' >> "$1"; exit 3; }; f`); s.status != statusCannot {
		t.Fatalf("%+v", s)
	}
	if s := edits(dir, state, "true"); s.status != statusFine || !strings.Contains(s.err, "left a copy with changes") || !strings.Contains(s.err, "it stays") {
		t.Errorf("%+v", s)
	}
	if err := os.Remove(filepath.Join(dir, "trials.toml")); err != nil {
		t.Fatal(err)
	}
	if s := edits(dir, state, "true"); s.status != statusCannot || !strings.Contains(s.err, "left a copy with changes") {
		t.Errorf("%+v", s)
	}
	write(t, dir, "trials.toml", sampleText()+"# mine\n")
	if s := edits(dir, state, "true"); s.status != statusFine || strings.Contains(s.err, "left a copy") {
		t.Errorf("the study holds it: %+v", s)
	}
}

// A format that cannot be saved is not handed to the editor.
func TestEditRefusesANewerFormatAtOnce(t *testing.T) {
	dir := folderWith(t, strings.Replace(sampleText(), "format = 1", "format = 99", 1))
	if s := edits(dir, t.TempDir(), "echo edited"); s.status != statusCannot || !strings.Contains(s.err, "use a newer Backspan") || s.out != "" {
		t.Errorf("%+v", s)
	}
}

// Where nothing may be written, neither beside the study nor at home, it is
// said in words.
func TestEditWhereNothingMayBeWritten(t *testing.T) {
	const nobodys = "/proc/version"
	if _, err := os.Stat(nobodys); err != nil {
		t.Skip("no folder here in which nobody may write")
	}
	dir := t.TempDir()
	if err := os.Symlink(nobodys, filepath.Join(dir, "trials.toml")); err != nil {
		t.Fatal(err)
	}
	t.Setenv("HOME", "")
	t.Setenv("XDG_CONFIG_HOME", "")
	s := edits(dir, "", "echo edited")
	if s.status != statusCannot || !strings.Contains(s.err, "set XDG_STATE_HOME") || strings.Contains(s.err, "open /") || s.out != "" {
		t.Errorf("%+v", s)
	}
}

// What an editor that was ended keeps beside the copy is not swept away with
// it.
func TestEditKeepsWhatTheEditorKept(t *testing.T) {
	dir, state := folderWith(t, sampleText()), t.TempDir()
	s := edits(dir, state, `f() { echo typed > "$1.kept"; exit 1; }; f`)
	if s.status != statusCannot || !strings.Contains(s.err, "left files of its own") || strings.Contains(s.err, "was edited") {
		t.Errorf("%+v", s)
	}
	if s := edits(dir, state, "true"); s.status != statusFine || !strings.Contains(s.err, "left files of the editor beside its copy") {
		t.Errorf("%+v", s)
	}
	if kept, err := filepath.Glob(filepath.Join(state, "backspan", copyStart+"*", "trials.toml.kept")); err != nil || len(kept) != 1 {
		t.Errorf("%v, %v", kept, err)
	}
}
