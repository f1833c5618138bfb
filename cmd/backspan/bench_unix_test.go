//go:build unix

package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"backspan/model"
	"backspan/store"
	"backspan/tui/screentest"
)

// whole holds the compiled program for the length of the tests.
var whole string

func TestMain(m *testing.M) {
	var err error
	if whole, err = os.MkdirTemp("", "backspan"); err != nil {
		panic(err)
	}
	status := m.Run()
	_ = os.RemoveAll(whole)
	os.Exit(status)
}

var compile = sync.OnceValues(func() ([]byte, error) {
	return exec.Command("go", "build", "-o", filepath.Join(whole, "backspan"), ".").CombinedOutput()
})

// built compiles the program once for the tests that need it whole.
func built(t testing.TB) string {
	t.Helper()
	if out, err := compile(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	return filepath.Join(whole, "backspan")
}

// The main job, typed as a user types it: open the sample, change a pulley,
// see it felt, undo, duplicate, compare, save, open again.
func TestMainJobInATerminal(t *testing.T) {
	t.Parallel()
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
			t.Parallel()
			dir := t.TempDir()
			w := screentest.Window{Cols: tc.cols, Rows: tc.rows, Env: screentest.Env("xterm-256color", tc.env...), Dir: dir, Mute: true}
			s := screentest.Start(t, w, bin)
			s.WaitFor("Saddle Meadow trials / Belt 190")
			s.WaitFor("in no file yet")
			s.Type("))))") // engine, cooling, cylinder and head, drive, ribbed belt
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

// edited starts the bench, sets the margin asked to 33 % and perhaps goes on
// typing.
func edited(t *testing.T, w screentest.Window, typed string, argv ...string) *screentest.Screen {
	t.Helper()
	s := screentest.Start(t, w, argv...)
	s.WaitFor("Saddle Meadow trials")
	shared := model.NewStudy("").Sections()
	s.Type(strings.Repeat(")", 80))
	s.WaitFor(shared[len(shared)-1].Label + " ┣")
	s.Type(strings.Repeat("(", len(shared)-1))
	s.WaitFor("Margin asked")
	s.Type("jjj33")
	s.WaitFor("[33")
	s.Press("enter")
	s.WaitFor("NOT SAVED")
	if typed != "" {
		s.Type(typed)
		s.WaitFor("[" + typed)
	}
	return s
}

func endedWith(t *testing.T, s *screentest.Screen, words ...string) {
	t.Helper()
	if code := s.End(); code != 0 || s.Alternate() {
		t.Errorf("exit status %d, alternate screen %v", code, s.Alternate())
	}
	raw := s.Raw()
	last := raw[strings.LastIndex(raw, "\x1b[?1049l")+1:]
	for _, w := range words {
		if !strings.Contains(last, w) {
			t.Errorf("not told %q: %q", w, last)
		}
	}
}

func margin(t *testing.T, path string) float64 {
	t.Helper()
	study, err := store.NewFolder(filepath.Dir(path)).Open(path)
	if err != nil {
		t.Fatal(err)
	}
	return study.MarginAsked
}

// A lost line or a kill costs nothing: what was edited, and where there was
// time what was being typed when it is valid, is offered by the next bench on
// the study.
func TestEndedFromOutsideIsOfferedNextTime(t *testing.T) {
	t.Parallel()
	bin := built(t)
	for _, tc := range []struct {
		name   string
		signal syscall.Signal
		file   bool
		typed  string // still in the editor
		margin float64
	}{
		{"told to end", syscall.SIGTERM, true, "", 0.33},
		{"killed", syscall.SIGKILL, true, "44", 0.33},
		{"hang-up while typing", syscall.SIGHUP, true, "44", 0.44},
		{"hang-up while typing nonsense", syscall.SIGHUP, true, "4x", 0.33},
		{"hang-up in no file yet", syscall.SIGHUP, false, "", 0.33},
		{"killed in no file yet", syscall.SIGKILL, false, "", 0.33},
	} {
		t.Run(tc.name, func(t *testing.T) {
			t.Parallel()
			dir := t.TempDir()
			w := screentest.Window{Cols: 120, Rows: 40, Dir: dir, Mute: true, Env: screentest.Env("xterm-256color", "XDG_STATE_HOME="+t.TempDir())}
			argv, path := []string{bin}, filepath.Join(dir, "taken.toml")
			if tc.file {
				path = write(t, dir, "trials.toml", sampleText())
				argv = append(argv, "open", path)
			}
			s := edited(t, w, tc.typed, argv...)
			if tc.signal == syscall.SIGKILL {
				time.Sleep(time.Second) // what is promised to be kept
				s.Signal(tc.signal)
				s.End()
			} else {
				s.Signal(tc.signal)
				endedWith(t, s, "are kept")
			}

			s = screentest.Start(t, w, argv...)
			s.WaitFor("ended without being saved")
			s.Press("t")
			s.WaitFor("NOT SAVED")
			s.Press("s")
			if !tc.file {
				s.WaitFor("le name")
				s.Press("ctrl+u")
				s.Type("taken")
				s.Press("enter")
			}
			s.WaitUntil("the study to be saved", func(text string) bool { return strings.Contains(text, "saved in") })
			s.Press("q")
			endedWith(t, s)
			if got := margin(t, path); got != tc.margin {
				t.Errorf("the margin kept is %g, want %g", got, tc.margin)
			}
			s = screentest.Start(t, w, bin, "open", path)
			s.WaitFor("? keys")
			if strings.Contains(s.Text(), "ended without") {
				t.Error("offered again after it was saved")
			}
			s.Press("q")
			endedWith(t, s)
		})
	}
}

// Edits that nobody takes up go into a file of their own, and over none.
func TestEditsNotTakenUpArePutAside(t *testing.T) {
	t.Parallel()
	bin := built(t)
	for name, want := range map[string]string{"trials.toml": "trials.rescued2.toml", "trials.rescued.toml": "trials.rescued2.toml"} {
		dir := t.TempDir()
		w := screentest.Window{Cols: 120, Rows: 40, Dir: dir, Mute: true, Env: screentest.Env("xterm-256color", "XDG_STATE_HOME="+t.TempDir())}
		write(t, dir, "trials.rescued.toml", sampleText())
		path := write(t, dir, name, sampleText())
		s := edited(t, w, "", bin, "open", path)
		s.Signal(syscall.SIGTERM)
		endedWith(t, s, "are kept")
		s = screentest.Start(t, w, bin, "open", path)
		s.WaitFor("ended without being saved")
		s.Press("p")
		s.WaitFor(want)
		s.Press("q")
		endedWith(t, s)
		if got := margin(t, filepath.Join(dir, want)); got != 0.33 {
			t.Errorf("%s: the margin put aside is %g", name, got)
		}
		if got := margin(t, path); got == 0.33 {
			t.Errorf("%s: the file changed", name)
		}
	}
}

// When the folder goes away, what was not saved is kept elsewhere.
func TestFolderGoneWhenEnded(t *testing.T) {
	t.Parallel()
	dir, state := t.TempDir(), t.TempDir()
	w := screentest.Window{Cols: 120, Rows: 40, Dir: dir, Mute: true, Env: screentest.Env("xterm-256color", "XDG_STATE_HOME="+state)}
	s := edited(t, w, "", built(t), "open", write(t, dir, "trials.toml", sampleText()))
	if err := os.Rename(dir, dir+".gone"); err != nil {
		t.Fatal(err)
	}
	s.Signal(syscall.SIGTERM)
	endedWith(t, s, "kept in", "trials.rescued.toml")
	if got := margin(t, filepath.Join(state, "backspan", "trials.rescued.toml")); got != 0.33 {
		t.Errorf("the margin kept is %g", got)
	}
}

// A second bench on a study gets a copy and is told who has it.
func TestSecondBenchGetsACopy(t *testing.T) {
	t.Parallel()
	bin, dir := built(t), t.TempDir()
	w := screentest.Window{Cols: 120, Rows: 40, Dir: dir, Mute: true, Env: screentest.Env("xterm-256color", "XDG_STATE_HOME="+t.TempDir())}
	path := write(t, dir, "trials.toml", sampleText())
	one := edited(t, w, "", bin, "open", path)
	two := screentest.Start(t, w, bin, "open", path)
	two.WaitFor("has it open on")
	two.WaitFor("in no file yet")
	two.Press("esc")
	two.WaitUntil("the notice to go", func(text string) bool { return !strings.Contains(text, "has it open on") })
	two.Press("q")
	endedWith(t, two)
	one.Press("s")
	one.WaitFor("saved in")
	one.Press("q")
	endedWith(t, one)
	if got := margin(t, path); got != 0.33 {
		t.Errorf("the margin saved is %g", got)
	}
}

// A file that somebody else changed is never written over: both are kept, or
// theirs is taken in hand and mine is a step back.
func TestFileChangedByAnotherProgram(t *testing.T) {
	t.Parallel()
	bin := built(t)
	theirs := strings.Replace(sampleText(), "ribs = 12", "ribs = 14", 1)
	for _, again := range []bool{true, false} {
		dir := t.TempDir()
		path := write(t, dir, "trials.toml", sampleText())
		s := edited(t, screentest.Window{Cols: 120, Rows: 40, Dir: dir, Mute: true, Env: screentest.Env("xterm-256color")}, "", bin, "open", path)
		write(t, dir, "trials.toml", theirs)
		s.Press("s")
		s.WaitFor("was changed by another program")
		s.WaitFor("here 12, there 14")
		s.Press("l")
		s.WaitFor("on the bench")
		s.WaitFor("Ribbed belt: Ribs")
		s.Press("esc")
		s.WaitFor("keep both")
		if again {
			s.Press("r")
			s.WaitFor("again")
			s.WaitUntil("theirs to be in hand", func(text string) bool { return !strings.Contains(text, "NOT SAVED") })
			s.Press("u")
			s.WaitFor("NOT SAVED")
			s.Press("s")
			s.WaitFor("saved in")
			path = filepath.Join(dir, "trials.toml")
		} else {
			s.Press("b")
			s.WaitFor("le name")
			s.Press("ctrl+u")
			s.Type("mine")
			s.Press("enter")
			s.WaitFor("saved in mine.toml")
			if b, err := os.ReadFile(path); err != nil || string(b) != theirs {
				t.Errorf("theirs was changed, %v", err)
			}
			path = filepath.Join(dir, "mine.toml")
		}
		s.Press("q")
		endedWith(t, s)
		if got := margin(t, path); got != 0.33 {
			t.Errorf("again %v: the margin saved is %g", again, got)
		}
	}
}

// Who leaves without saving means it.
func TestLeavingOnPurposeKeepsNothing(t *testing.T) {
	t.Parallel()
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
	t.Parallel()
	s := screentest.Start(t, screentest.Window{Cols: 80, Rows: 24, Env: screentest.Env("dumb"), Dir: t.TempDir(), Mute: true}, built(t), "open")
	s.WaitFor("set TERM")
	if code := s.End(); code != 2 {
		t.Errorf("exit status %d", code)
	}
}

func TestBrokenStudyIsToldBeforeTheBenchOpens(t *testing.T) {
	t.Parallel()
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

// A file of a newer Backspan is shown as far as it goes, and never changed.
func TestNewerFormatInTheBench(t *testing.T) {
	t.Parallel()
	dir := t.TempDir()
	text := strings.Replace(sampleText(), "format = 1", "format = 2\nmoon_phase = 3", 1)
	path := write(t, dir, "trials.toml", text)
	s := screentest.Start(t, screentest.Window{Cols: 120, Rows: 40, Dir: dir, Mute: true, Env: screentest.Env("xterm-256color")}, built(t), "open", path)
	s.WaitFor("is in format 2")
	s.WaitFor("in no file yet")
	s.Press("s")
	s.WaitFor("le name")
	s.Press("ctrl+u")
	s.Type("mine")
	s.Press("enter")
	s.WaitFor("saved in mine.toml")
	s.Press("q")
	endedWith(t, s)
	if b, err := os.ReadFile(path); err != nil || string(b) != text {
		t.Errorf("the file was changed, %v", err)
	}
}

// The mouse is taken only when asked for, and given back at the end.
func TestMouseInATerminal(t *testing.T) {
	const taken, given = "\x1b[?1002h", "\x1b[?1002l"
	s := screentest.Start(t, screentest.Window{Cols: 80, Rows: 24, Env: screentest.Env("xterm-256color"), Dir: t.TempDir(), Mute: true}, built(t))
	s.WaitFor("Saddle Meadow trials / Belt 190")
	if strings.Contains(s.Raw(), taken) {
		t.Error("the mouse is taken from the terminal at the start")
	}
	s.Press("M")
	s.WaitFor("the mouse points and scrolls here now")
	if !strings.Contains(s.Raw(), taken) {
		t.Error("the terminal was not asked for the mouse")
	}
	s.Type("\x1b[<0;5;7M\x1b[<0;5;7m") // the second variant, in the fifth column of the seventh row
	s.WaitFor("/ Gear 190")
	s.Press("q")
	if code := s.End(); code != 0 || strings.LastIndex(s.Raw(), given) < strings.LastIndex(s.Raw(), taken) {
		t.Errorf("exit status %d, or the mouse was not given back", code)
	}
}
