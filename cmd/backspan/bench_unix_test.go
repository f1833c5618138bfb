//go:build unix

package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"backspan/store"
	"backspan/tui/screentest"
)

// built compiles the program once for the tests that need it whole.
func built(t *testing.T) string {
	t.Helper()
	bin := filepath.Join(t.TempDir(), "backspan")
	if out, err := exec.Command("go", "build", "-o", bin, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	return bin
}

// The main job, typed as a user types it: open the sample, change a pulley,
// see it felt, undo, duplicate, compare, save, open again.
func TestMainJobInATerminal(t *testing.T) {
	bin := built(t)
	for _, tc := range []struct {
		name       string
		cols, rows int
		env        []string
	}{
		{"80x24", 80, 24, nil},
		{"120x40", 120, 40, nil},
		{"200x60 without colour", 200, 60, []string{"NO_COLOR=1"}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			dir := t.TempDir()
			w := screentest.Window{Cols: tc.cols, Rows: tc.rows, Env: screentest.Env("xterm-256color", tc.env...), Dir: dir, Mute: true}
			s := screentest.Start(t, w, bin)
			s.WaitFor("Saddle Meadow trials / Belt 190")
			s.WaitFor("in no file yet")
			s.Type(")))") // engine, cooling, drive, ribbed belt
			s.WaitFor("Ribbed belt of Belt 190")
			s.Press("down", "down")
			s.WaitFor("> Crank pulley, e")
			s.Press("enter")
			s.WaitFor("Enter accepts")
			s.Type("2 7/8 in")
			s.WaitFor("7/8 in")
			s.Press("enter")
			s.WaitFor("68 mm → 73.025 mm")
			s.WaitFor("NOT SAVED")
			s.Press("u")
			s.WaitFor("undone")
			s.Press("right")
			s.WaitFor("68 mm → 69 mm")

			s.Press("shift+tab", "shift+tab")
			s.WaitFor("d duplicate")
			s.Press("d")
			s.WaitFor("Belt 190 2")
			s.Press("c")
			s.WaitFor("Side by side")
			s.Press("b", "S")
			s.WaitFor("le name") // the prompt for a file name
			s.Type("mine")
			s.Press("enter")
			s.WaitFor("mine.toml")
			s.WaitUntil("the study to be saved", func(text string) bool { return !strings.Contains(text, "NOT SAVED") })
			s.Press("q")
			if code := s.End(); code != 0 || s.Alternate() {
				t.Errorf("exit status %d, alternate screen %v", code, s.Alternate())
			}

			study, err := store.NewFolder(dir).Open(filepath.Join(dir, "mine.toml"))
			if err != nil {
				t.Fatal(err)
			}
			if i := study.Index("Belt 190 2"); i < 0 || study.Variants[i].Drive.RibbedBelt.CrankDiameter != 0.069 {
				t.Errorf("the duplicate was not kept: %d", i)
			}
			again := screentest.Start(t, w, bin)
			again.WaitFor("Belt 190 2")
			again.Press("q")
			if code := again.End(); code != 0 {
				t.Errorf("exit status %d", code)
			}
		})
	}
}

// A lost line or a kill costs nothing: what was edited, and what was being
// typed when it is valid, is in a file of its own, and its name is told once
// the terminal is as it was.
func TestEndedFromOutsideKeepsUnsavedEdits(t *testing.T) {
	bin := built(t)
	for _, tc := range []struct {
		name   string
		signal syscall.Signal
		file   bool
		as     string // the file's name, when not trials.toml
		there  string // a file that must not be overwritten
		shut   bool   // the folder cannot be written
		typed  string // still in the editor
		kept   string
		margin float64
	}{
		{name: "kill", signal: syscall.SIGTERM, file: true, kept: "trials.rescued.toml", margin: 0.33},
		{name: "hang-up while typing", signal: syscall.SIGHUP, file: true, typed: "44", kept: "trials.rescued.toml", margin: 0.44},
		{name: "hang-up while typing nonsense", signal: syscall.SIGHUP, file: true, typed: "4x", kept: "trials.rescued.toml", margin: 0.33},
		{name: "one rescued before", signal: syscall.SIGTERM, file: true, there: "trials.rescued.toml", kept: "trials.rescued2.toml", margin: 0.33},
		{name: "rescued again", signal: syscall.SIGTERM, file: true, as: "trials.rescued.toml", kept: "trials.rescued2.toml", margin: 0.33},
		{name: "in no file yet", signal: syscall.SIGHUP, kept: "unsaved.rescued.toml", margin: 0.33},
		{name: "folder cannot be written", signal: syscall.SIGTERM, file: true, shut: true, kept: "state/backspan/trials.rescued.toml", margin: 0.33},
	} {
		t.Run(tc.name, func(t *testing.T) {
			dir, state := t.TempDir(), t.TempDir()
			argv := []string{bin}
			if tc.file {
				if tc.as == "" {
					tc.as = "trials.toml"
				}
				argv = append(argv, "open", write(t, dir, tc.as, sampleText()))
			}
			if tc.there != "" {
				write(t, dir, tc.there, "mine\n")
			}
			s := screentest.Start(t, screentest.Window{Cols: 120, Rows: 40, Dir: dir, Mute: true,
				Env: screentest.Env("xterm-256color", "XDG_STATE_HOME="+filepath.Join(state, "state"))}, argv...)
			s.WaitFor("Saddle Meadow trials")
			s.Type(strings.Repeat(")", 30))
			s.WaitFor("Wing ┣")
			s.Type("(((((((")
			s.WaitFor("Margin asked")
			s.Type("jjj33")
			s.WaitFor("[33")
			s.Press("enter")
			s.WaitFor("NOT SAVED")
			if tc.typed != "" {
				s.Type(tc.typed)
				s.WaitFor("[" + tc.typed)
			}
			if tc.shut {
				// In a folder that is gone nothing can be created, even by the
				// superuser.
				if err := os.Rename(dir, dir+".gone"); err != nil {
					t.Fatal(err)
				}
			}
			s.Signal(tc.signal)
			if code := s.End(); code != 0 || s.Alternate() {
				t.Errorf("exit status %d, alternate screen %v", code, s.Alternate())
			}
			path := filepath.Join(dir, tc.kept)
			if tc.shut {
				path = filepath.Join(state, tc.kept)
			}
			if raw := s.Raw(); !strings.Contains(raw[strings.LastIndex(raw, "\x1b[?1049l")+1:], "kept in") || !strings.Contains(raw, filepath.Base(tc.kept)) {
				t.Errorf("not told: %q", raw[max(0, len(raw)-300):])
			}
			study, err := store.NewFolder(dir).Open(path)
			if err != nil {
				t.Fatal(err)
			}
			if study.MarginAsked != tc.margin {
				t.Errorf("the margin kept is %g, want %g", study.MarginAsked, tc.margin)
			}
			if tc.there != "" {
				if b, err := os.ReadFile(filepath.Join(dir, tc.there)); err != nil || string(b) != "mine\n" {
					t.Errorf("what was there became %q, %v", b, err)
				}
			}
		})
	}
}

// Who leaves without saving means it.
func TestLeavingOnPurposeKeepsNothing(t *testing.T) {
	dir := t.TempDir()
	s := screentest.Start(t, screentest.Window{Cols: 80, Rows: 24, Env: screentest.Env("xterm-256color"), Dir: dir, Mute: true}, built(t))
	s.WaitFor("Saddle Meadow trials")
	s.Press("down", "right")
	s.WaitFor("NOT SAVED")
	s.Press("q", "w")
	if code := s.End(); code != 0 {
		t.Errorf("exit status %d", code)
	}
	if left, err := os.ReadDir(dir); err != nil || len(left) != 0 {
		t.Errorf("left behind: %v, %v", left, err)
	}
}

func TestDumbTerminalIsToldTheCure(t *testing.T) {
	s := screentest.Start(t, screentest.Window{Cols: 80, Rows: 24, Env: screentest.Env("dumb"), Dir: t.TempDir(), Mute: true}, built(t), "open")
	s.WaitFor("set TERM")
	if code := s.End(); code != 2 {
		t.Errorf("exit status %d", code)
	}
}

func TestBrokenStudyIsToldBeforeTheBenchOpens(t *testing.T) {
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "bad.toml"), []byte("format = 1\n[[variant]]\nname = \"A\"\n[variant.engine]\nbore_mm = nan\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	s := screentest.Start(t, screentest.Window{Cols: 120, Rows: 24, Env: screentest.Env("xterm"), Dir: dir, Mute: true}, built(t), "open", "bad.toml")
	s.WaitFor("bad.toml:5: variant.engine.bore_mm")
	if code := s.End(); code != 2 {
		t.Errorf("exit status %d", code)
	}
}
