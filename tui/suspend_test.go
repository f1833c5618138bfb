//go:build unix

package tui

import (
	"os"
	"reflect"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/screentest"
)

func TestSuspendIsAskedForWhereverOneStands(t *testing.T) {
	for name, keys := range map[string][]string{
		"bench": nil, "typing": {"down", "enter", "7"}, "asked": {"down", "down", "right", "q"}, "looking": {"/", "b"}, "keys": {"?"},
	} {
		m := press(begin(plateau(), 80, 24), keys...)
		before := m.View()
		m.mayStop = func() bool { return true }
		_, cmd := m.Update(tea.KeyMsg{Type: tea.KeyCtrlZ})
		if cmd == nil || !holds(cmd(), tea.Suspend()) {
			t.Errorf("%s: no suspension", name)
		}
		if m.View() != before {
			t.Errorf("%s: the screen became\n%s", name, m.View())
		}
		m.mayStop = func() bool { return false }
		if _, cmd = m.Update(tea.KeyMsg{Type: tea.KeyCtrlZ}); cmd != nil && holds(cmd(), tea.Suspend()) {
			t.Errorf("%s: suspended with no shell to bring it back", name)
		}
	}
}

func holds(msg, want tea.Msg) bool { return reflect.DeepEqual(msg, want) }

// Without a shell the system would not stop the program, and the bench would
// hang with its terminal given up.
func TestCtrlZWithoutAShell(t *testing.T) {
	s := inTerminal(t, 80, 24, "xterm-256color")
	s.WaitFor("? keys")
	s.Press("ctrl+z")
	s.WaitFor("no shell waits")
	s.Press(">")
	s.WaitFor("/ B more of it")
}

// A shell with job control runs the bench, gets its terminal back as it was,
// and brings the bench back with every cell of it.
func TestToTheShellAndBack(t *testing.T) {
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	const script = `set -m; "$0"; echo back at the shell; stty -a; read line; echo read "$line"; read line; fg >/dev/null`
	s := screentest.Start(t, screentest.Window{Cols: 80, Rows: 24, Env: screentest.Env("xterm-256color", "BENCH_HERE=1"), Mute: true}, "sh", "-c", script, self)
	s.WaitFor("? keys")
	s.Press(">")
	s.WaitFor("/ B more of it")
	s.Press("down", "enter", "7")
	s.WaitFor("[7")
	const frameEnd = "\x1b[24;H"
	s.WaitForLast(frameEnd)
	was := s.Text()
	s.Press("ctrl+z")
	s.WaitFor("back at the shell")
	s.WaitFor("icanon")
	if s.Alternate() {
		t.Error("the shell stands on the alternate screen")
	}
	if text := s.Text(); strings.Contains(text, "-icanon") || strings.Contains(text, "-echo ") || strings.Contains(text, "-isig") {
		t.Errorf("the shell gets a terminal in another mode:\n%s", text)
	}
	s.Type("a line\r")
	s.WaitFor("read a line")
	s.Type("\r")
	s.WaitUntil("the bench as it was", func(text string) bool { return text == was })
	if !s.Alternate() {
		t.Error("the bench is back on the shell's screen")
	}
	s.Press("5")
	s.WaitFor("[75")
	s.Press("esc")
	s.WaitFor("q leave")
	s.Press("q")
	if code := s.End(); code != 0 || s.Alternate() {
		t.Errorf("exit status %d, alternate screen %v", code, s.Alternate())
	}
}
