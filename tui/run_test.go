//go:build unix

package tui

import (
	"context"
	"fmt"
	"os"
	"os/exec"
	"regexp"
	"strings"
	"syscall"
	"testing"

	"backspan/model"
	"backspan/tui/screentest"
)

// The test binary runs the bench itself when it is asked to, so that a test
// can put it into a real terminal.
func TestMain(m *testing.M) {
	if os.Getenv("BENCH_HERE") == "" {
		os.Exit(m.Run())
	}
	o := plateau()
	o.Renderer = nil
	o.ASCII = os.Getenv("BENCH_ASCII") != ""
	if os.Getenv("BENCH_SAMPLE") != "" {
		o.Study = model.Sample()
	}
	if os.Getenv("BENCH_FAULT") != "" {
		o.Shelf = faulty{newShelf()}
	}
	o.Ended = func(e Ending) {
		fmt.Printf("ended with %s at %.3f, unsaved %v\n", e.Path, e.Study.MarginAsked, e.Unsaved)
		if e.Fault != nil {
			fmt.Printf("fault %q, stack of %d lines, first at fault %v\n", e.Fault.What, strings.Count(e.Fault.Stack, "\n"), strings.Contains(e.Fault.Stack, "faulty.Save"))
		}
	}
	if err := Run(context.Background(), o, os.Stdin, os.Stdout); err != nil {
		fmt.Println("fault:", err)
		os.Exit(1)
	}
	os.Exit(0)
}

// faulty is a shelf that breaks down when something is saved.
type faulty struct{ *shelf }

func (faulty) Save(string, *model.Study) (string, error) { panic("the shelf fell") }

func inTerminal(t *testing.T, cols, rows int, term string, env ...string) *screentest.Screen {
	t.Helper()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	return screentest.Start(t, screentest.Window{Cols: cols, Rows: rows, Env: screentest.Env(term, append(env, "BENCH_HERE=1")...), Mute: true}, self)
}

func TestInATerminal(t *testing.T) {
	s := inTerminal(t, 80, 24, "xterm-256color")
	s.WaitFor("Plateau trials / A belt")
	s.Press(">")
	s.WaitFor("/ B more of it")
	s.Press("tab")
	s.WaitFor("last edit")
	s.Press("c")
	s.WaitFor("Side by side")
	s.Resize(120, 40)
	s.WaitFor("enter work on it")
	s.Press("q")
	if code := s.End(); code != 0 || s.Alternate() {
		t.Errorf("exit status %d, alternate screen %v", code, s.Alternate())
	}
}

// A terminal that answers no question must not be asked one.
func TestAsksTheTerminalNothing(t *testing.T) {
	s := inTerminal(t, 80, 24, "xterm-256color")
	s.WaitFor("Plateau trials")
	if raw := s.Raw(); strings.Contains(raw, "\x1b]11;?") || strings.Contains(raw, "\x1b[6n") {
		t.Errorf("it asked: %.60q", raw)
	}
}

// The question is put while packages are initialised; see package quiet.
func TestQuietComesBeforeBubbleTea(t *testing.T) {
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(self, "-test.run=^$")
	cmd.Env = append(os.Environ(), "GODEBUG=inittrace=1")
	out, err := cmd.CombinedOutput()
	if err != nil {
		t.Fatal(err)
	}
	quiet, tea := strings.Index(string(out), "init backspan/tui/quiet "), strings.Index(string(out), "init github.com/charmbracelet/bubbletea ")
	if quiet < 0 || tea < 0 || quiet > tea {
		t.Errorf("quiet at %d, Bubble Tea at %d of the order of initialisation", quiet, tea)
	}
}

func TestSplitArrowInsideAnEdit(t *testing.T) {
	s := inTerminal(t, 80, 24, "xterm-256color")
	s.WaitFor("Plateau trials")
	s.Press("down", "enter")
	s.WaitFor("Enter accepts")
	s.Type("\x1b")
	s.Type("[D")
	s.WaitUntil("the edit to go on", func(text string) bool {
		return strings.Contains(text, "Enter accepts") && !strings.Contains(text, "typing replaces")
	})
}

func TestColourOnlyWhereItIsWanted(t *testing.T) {
	colour := regexp.MustCompile(`\x1b\[[0-9;]*(3[0-9]|9[0-7]|38;5;[0-9]+)m`)
	for _, tc := range []struct {
		term, env string
		want      bool
	}{{"xterm-256color", "A=", true}, {"xterm", "A=", true}, {"xterm-256color", "NO_COLOR=1", false}, {"vt100", "A=", false}} {
		s := inTerminal(t, 80, 24, tc.term, tc.env)
		s.WaitFor("Plateau trials")
		s.WaitFor("? keys")
		if got := colour.MatchString(s.Raw()); got != tc.want {
			t.Errorf("%s %s: colour %v", tc.term, tc.env, got)
		}
		if !strings.Contains(s.Text(), "> A belt") {
			t.Errorf("%s %s: the selection is no text:\n%s", tc.term, tc.env, s.Text())
		}
	}
}

// walkToMargin walks the parts to the last one and back to the study's first.
func walkToMargin(s *screentest.Screen) {
	shared := model.NewStudy("").Sections()
	s.Type(strings.Repeat(")", 80))
	s.WaitFor(shared[len(shared)-1].Label + " ┣")
	s.Type(strings.Repeat("(", len(shared)-1))
	s.WaitFor("Margin asked")
}

func TestSignalsHandOverUnsavedEdits(t *testing.T) {
	for _, sig := range []syscall.Signal{syscall.SIGINT, syscall.SIGTERM, syscall.SIGHUP} {
		s := inTerminal(t, 120, 40, "xterm-256color")
		s.WaitFor("Plateau trials")
		walkToMargin(s)
		s.Type("jjj")
		s.Type("33")
		s.WaitFor("[33")
		s.Press("enter")
		s.WaitFor("NOT SAVED")
		s.Signal(sig)
		if code := s.End(); code != 0 || !strings.Contains(s.Raw(), "ended with plateau.toml at 0.330, unsaved true") || s.Alternate() {
			t.Errorf("%v: exit status %d, alternate screen %v, last output %q", sig, code, s.Alternate(), s.Raw()[max(0, len(s.Raw())-200):])
		}
	}
}

// A fault of the program takes the same way: edits outlive it, also what is
// being typed when it is valid.
func TestAFaultHandsOverUnsavedEdits(t *testing.T) {
	s := inTerminal(t, 120, 40, "xterm-256color", "BENCH_FAULT=1")
	s.WaitFor("Plateau trials")
	walkToMargin(s)
	s.Type("jjj")
	s.Type("33")
	s.WaitFor("[33")
	s.Press("ctrl+s")
	if code := s.End(); code != 1 || !strings.Contains(s.Raw(), "ended with plateau.toml at 0.330, unsaved true") ||
		!strings.Contains(s.Raw(), `fault "the shelf fell"`) || !strings.Contains(s.Raw(), "first at fault true") || s.Alternate() {
		t.Errorf("exit status %d, alternate screen %v, last output %q", code, s.Alternate(), s.Raw()[max(0, len(s.Raw())-300):])
	}
}

// What is copied goes to the person's terminal between two frames and changes
// nothing that it shows.
func TestCopyReachesTheTerminal(t *testing.T) {
	s := inTerminal(t, 80, 24, "xterm-256color", "BENCH_SAMPLE=1")
	s.WaitFor("? keys")
	s.Press("down", "y")
	s.WaitFor("clipboard: 1")
	if want := "\x1b]52;c;MQ==\x07"; !strings.Contains(s.Raw(), want) {
		t.Errorf("%q was not sent", want)
	}
	s.Press("down", "y")
	s.WaitFor("clipboard: 66 mm")
	s.WaitFor("> Bore")
	s.Press("q")
	if code := s.End(); code != 0 {
		t.Errorf("exit status %d", code)
	}
}
