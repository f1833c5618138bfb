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

// open are beginnings that nothing completes: any value may stand there, or no
// file here is meant. The shell's own way of files that it knows no better is
// left to zsh.
var open = []struct {
	line   string
	inFish bool
}{
	{"backspan search --variant sa", false}, {"backspan search --variant=sa", false}, {"backspan sweep --over no", false},
	{"backspan compare --brief --format js", false}, {"backspan merge sa", true}, {"backspan merge no", true}, {"backspan check no", true},
}

// The shell itself completes from the script.
func TestBashCompletes(t *testing.T) {
	bash, err := exec.LookPath("bash")
	if err != nil {
		t.Skip("no bash here")
	}
	dir := completionFolder(t)
	script := run(t, dir, "completion", "bash").out
	for _, tc := range []struct{ words, want string }{
		{"backspan comp", "compare completion"},
		{"backspan compare --for", "--format"},
		{"backspan check --format js", "json"},
		{"backspan open --as", "--ascii"},
		{"backspan report --format c", ""}, {"backspan sheet --format m", "markdown"},
		{"backspan sheet --format t", "table"}, {"backspan compare --format h", ""}, {"backspan open --format t", ""},
		{"backspan completion f", "fish"},
		{"backspan report --format h", "html"},
		{"backspan sheet --format = m", "markdown"},
		{"backspan open --color n", "never"},
		{"backspan pitch --for cl", "climb"},
		{"backspan help comple", "completion"},
		{"backspan compare --brief --format ''", "table markdown"},
		{"backspan search --variant ''", ""}, {"backspan search --variant = ''", ""}, {"backspan sweep --over sa", ""},
		{"backspan search sa", "saddle.toml"}, {"backspan merge ''", "pa1.part"}, {"backspan compare --brief ''", "saddle.toml"},
	} {
		words := strings.Fields(tc.words)
		cmd := exec.Command(bash, "-c", script+"\nCOMP_WORDS=("+tc.words+"); COMP_CWORD="+string(rune('0'+len(words)-1))+"\n_backspan; echo ${COMPREPLY[@]}")
		cmd.Dir = dir
		out, err := cmd.CombinedOutput()
		if err != nil || strings.TrimSpace(string(out)) != tc.want {
			t.Errorf("%q: %v, %s, want %q", tc.words, err, out, tc.want)
		}
	}
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
	for _, tc := range open {
		cmd := exec.Command(fish, "--no-config", "-c", "source script; complete -C '"+tc.line+"'")
		cmd.Dir = dir
		if out, err := cmd.CombinedOutput(); err != nil || len(out) > 0 {
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
		for _, tc := range open {
			if tc.inFish {
				continue
			}
			s.Type(fmt.Sprintf("\x15%s\tZ", tc.line))
			s.WaitUntil(fmt.Sprintf("%q to stay as it is", tc.line), func(text string) bool { return strings.Contains(text, "ready> "+tc.line+"Z") })
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
