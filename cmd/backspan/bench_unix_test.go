//go:build unix

package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
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
			s.WaitFor("> Crank pulley, effective")
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

func TestDumbTerminalIsToldWhatToDo(t *testing.T) {
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
