//go:build unix

package main

import (
	"fmt"
	"os/exec"
	"strings"
	"testing"

	"backspan/tui/screentest"
)

// completed are beginnings of command lines and what completes their last word.
var completed = []struct{ line, want string }{
	{"backspan comple", "completion"},
	{"backspan check --format j", "json"},
	{"backspan report --format h", "html"},
	{"backspan sheet --format=h", "html"},
	{"backspan sheet --fo", "--fo"}, // --force and --format
	{"backspan open --color al", "always"},
	{"backspan pitch --for th", "thrust"},
	{"backspan completion f", "fish"},
	{"backspan compare sad", "saddle.toml"},
	{"backspan merge pa", "pa1.part"},
	{"backspan polar --csv me", "measured.csv"},
	{"backspan sheet --out no", "notes.txt"},
}

func TestFishCompletes(t *testing.T) {
	fish, err := exec.LookPath("fish")
	if err != nil {
		t.Skip("no fish here")
	}
	dir := completionFolder(t)
	for _, tc := range completed {
		cmd := exec.Command(fish, "--no-config", "-c", "source script; complete -C '"+tc.line+"'")
		cmd.Dir = dir
		out, err := cmd.CombinedOutput()
		if err != nil || !strings.Contains(string(out), tc.want) {
			t.Errorf("%q: %v, %s", tc.line, err, out)
		}
	}
}

// completionFolder holds the files that are completed, and the script of fish.
func completionFolder(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	for _, name := range []string{"saddle.toml", "pa1.part", "measured.csv", "notes.txt"} {
		write(t, dir, name, "")
	}
	write(t, dir, "script", run(t, dir, "completion", "fish").out)
	return dir
}

// Both ways of putting a script of zsh in force are tried: sourced, and from a
// folder of functions.
func TestZshCompletes(t *testing.T) {
	zsh, err := exec.LookPath("zsh")
	if err != nil {
		t.Skip("no zsh here")
	}
	dir := completionFolder(t)
	write(t, dir, "script.zsh", run(t, dir, "completion", "zsh").out)
	functions := t.TempDir()
	write(t, functions, "_backspan", run(t, dir, "completion", "zsh").out)
	for _, setting := range []string{"autoload -U compinit; compinit -D; source ./script.zsh", "fpath=(" + functions + " $fpath); autoload -U compinit; compinit -u -D"} {
		s := screentest.Start(t, screentest.Window{Cols: 160, Rows: 24, Env: screentest.Env("xterm", "PS1=at the ready> "), Dir: dir, Mute: true}, zsh, "-f", "-i")
		s.WaitFor("ready>")
		s.Type(setting + "; clear; echo set${:-up}\n")
		s.WaitFor("setup")
		for i, tc := range completed {
			want := tc.line[:strings.LastIndexAny(tc.line, " =")+1] + tc.want
			s.Type(fmt.Sprintf("\x15%s\t", tc.line))
			s.WaitUntil(fmt.Sprintf("%q to become %q", tc.line, want), func(text string) bool { return strings.Contains(text, "ready> "+want) })
			s.Type(fmt.Sprintf("\x15clear; echo set${:-up}%d\n", i))
			s.WaitFor(fmt.Sprintf("setup%d", i))
		}
		s.Type("\x15exit\n")
		s.End()
	}
}

// man itself has nothing to complain of.
func TestManReadsTheManual(t *testing.T) {
	man, err := exec.LookPath("man")
	if err != nil {
		t.Skip("no man here")
	}
	cmd := exec.Command(man, "--warnings", "-E", "UTF-8", "-l", "-")
	cmd.Env = screentest.Env("dumb", "MANWIDTH=100", "LC_ALL=C.UTF-8")
	cmd.Stdin = strings.NewReader(run(t, t.TempDir(), "manual").out)
	var out, complaints strings.Builder
	cmd.Stdout, cmd.Stderr = &out, &complaints
	if err := cmd.Run(); err != nil {
		t.Skipf("this man is another one: %v, %s", err, complaints.String())
	}
	if complaints.Len() > 0 {
		t.Error(complaints.String())
	}
	for _, want := range []string{".NAME.toml.journal", "XDG_STATE_HOME", "EXIT STATUS", "--variant"} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("%q is not on the page", want)
		}
	}
}
