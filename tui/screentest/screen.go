//go:build unix

// Package screentest runs a terminal program in a pseudo-terminal and reads the
// painted cells back, so that a test sees what a person sees. It waits for
// what is on the screen and never for time to pass.
package screentest

import (
	"io"
	"os"
	"os/exec"
	"slices"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/charmbracelet/x/vt"
	"github.com/creack/pty"
)

// Patience is how long a screen may take to show what is waited for.
const Patience = 15 * time.Second

// Window describes a person's terminal.
type Window struct {
	Cols, Rows int
	Env        []string // the whole environment; nothing is inherited
	Dir        string
	Mute       bool // never answers a question of the program
}

// Env is a small environment for a type of terminal, with further entries.
func Env(term string, more ...string) []string {
	return append([]string{"TERM=" + term, "LANG=C.UTF-8", "HOME=" + os.TempDir(), "PATH=" + os.Getenv("PATH")}, more...)
}

// Screen is a program that runs and what it has painted.
type Screen struct {
	t    testing.TB
	cmd  *exec.Cmd
	tty  *os.File
	over chan struct{} // closed when the program has ended

	mu       sync.Mutex // guards what follows
	changed  *sync.Cond
	emulator *vt.Emulator
	raw      []byte
	ended    bool
}

// Start runs a program in a window. It is killed when the test ends.
func Start(t testing.TB, w Window, argv ...string) *Screen {
	t.Helper()
	cmd := exec.Command(argv[0], argv[1:]...)
	cmd.Env, cmd.Dir = w.Env, w.Dir
	if !slices.ContainsFunc(w.Env, func(e string) bool { return strings.HasPrefix(e, "XDG_STATE_HOME=") }) {
		cmd.Env = append(slices.Clip(w.Env), "XDG_STATE_HOME="+t.TempDir())
	}
	tty, err := pty.StartWithSize(cmd, &pty.Winsize{Cols: uint16(w.Cols), Rows: uint16(w.Rows)})
	if err != nil {
		t.Fatal(err)
	}
	s := &Screen{t: t, cmd: cmd, tty: tty, emulator: vt.NewEmulator(w.Cols, w.Rows), over: make(chan struct{})}
	s.changed = sync.NewCond(&s.mu)
	go s.reply(w.Mute)
	go s.paint()
	t.Cleanup(s.close)
	return s
}

// reply passes the terminal's answers on. They must be read even when they are
// dropped, or the emulator stops taking output.
func (s *Screen) reply(mute bool) {
	buf := make([]byte, 256)
	for {
		n, err := s.emulator.Read(buf)
		if n > 0 && !mute {
			_, _ = s.tty.Write(buf[:n])
		}
		if err != nil {
			return
		}
	}
}

func (s *Screen) paint() {
	buf := make([]byte, 32<<10)
	for {
		n, err := s.tty.Read(buf)
		if n > 0 {
			s.mu.Lock()
			s.raw = append(s.raw, buf[:n]...)
			_, _ = s.emulator.Write(buf[:n])
			s.changed.Broadcast()
			s.mu.Unlock()
		}
		if err != nil { // the program's end of the terminal is closed
			break
		}
	}
	_ = s.cmd.Wait()
	s.mu.Lock()
	s.ended = true
	s.changed.Broadcast()
	s.mu.Unlock()
	close(s.over)
}

func (s *Screen) close() {
	_ = s.cmd.Process.Kill()
	<-s.over
	_ = s.tty.Close()
	// The emulator's own Close writes a flag that reply reads without a lock;
	// closing its pipe ends reply as well.
	if c, ok := s.emulator.InputPipe().(io.Closer); ok {
		_ = c.Close()
	}
}

var keys = map[string]string{
	"enter": "\r", "esc": "\x1b", "tab": "\t", "shift+tab": "\x1b[Z", "backspace": "\x7f", "space": " ",
	"up": "\x1b[A", "down": "\x1b[B", "right": "\x1b[C", "left": "\x1b[D", "shift+right": "\x1b[1;2C", "shift+left": "\x1b[1;2D",
	"home": "\x1b[H", "end": "\x1b[F", "pgup": "\x1b[5~", "pgdown": "\x1b[6~", "delete": "\x1b[3~", "f1": "\x1bOP",
}

// Press sends keys by name, or single characters.
func (s *Screen) Press(names ...string) {
	s.t.Helper()
	for _, name := range names {
		text, ok := keys[name]
		switch {
		case ok:
		case strings.HasPrefix(name, "ctrl+") && len(name) == 6:
			text = string(rune(name[5] & 0x1f))
		case len([]rune(name)) == 1:
			text = name
		default:
			s.t.Fatalf("there is no key %q", name)
		}
		s.Type(text)
	}
}

// Type sends bytes as they are, in one piece.
func (s *Screen) Type(text string) {
	s.t.Helper()
	if _, err := io.WriteString(s.tty, text); err != nil {
		s.t.Fatalf("typing %q: %v\n%s", text, err, s.Text())
	}
}

// Paste sends text the way terminals mark a paste.
func (s *Screen) Paste(text string) { s.Type("\x1b[200~" + text + "\x1b[201~") }

// Resize changes the window.
func (s *Screen) Resize(cols, rows int) {
	s.t.Helper()
	s.mu.Lock()
	s.emulator.Resize(cols, rows)
	s.mu.Unlock()
	if err := pty.Setsize(s.tty, &pty.Winsize{Cols: uint16(cols), Rows: uint16(rows)}); err != nil {
		s.t.Fatal(err)
	}
}

// Signal sends a signal to the program.
func (s *Screen) Signal(sig syscall.Signal) { _ = s.cmd.Process.Signal(sig) }

// Text is the painted screen, a line for each row, without blanks at the ends.
func (s *Screen) Text() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.text()
}

func (s *Screen) text() string {
	rows := strings.Split(s.emulator.String(), "\n")
	for i := range rows {
		rows[i] = strings.TrimRight(rows[i], " ")
	}
	return strings.TrimRight(strings.Join(rows, "\n"), "\n")
}

// Raw is every byte that the program has written.
func (s *Screen) Raw() string { s.mu.Lock(); defer s.mu.Unlock(); return string(s.raw) }

// Alternate reports whether the program still holds the alternate screen.
func (s *Screen) Alternate() bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.emulator.IsAltScreen()
}

// WaitFor waits until the screen shows a text.
func (s *Screen) WaitFor(want string) {
	s.t.Helper()
	s.WaitUntil("the text "+want, func(text string) bool { return strings.Contains(text, want) })
}

// WaitUntil waits until the screen's text is as wanted.
func (s *Screen) WaitUntil(what string, ok func(text string) bool) {
	s.t.Helper()
	late := false
	alarm := time.AfterFunc(Patience, func() {
		s.mu.Lock()
		late = true
		s.changed.Broadcast()
		s.mu.Unlock()
	})
	defer alarm.Stop()
	s.mu.Lock()
	for !ok(s.text()) {
		if late || s.ended {
			text := s.text()
			s.mu.Unlock()
			s.t.Fatalf("waited for %s; the screen is:\n%s", what, text)
		}
		s.changed.Wait()
	}
	s.mu.Unlock()
}

// WaitForLast waits until the last bytes that the program has written are as
// wanted, such as those that end a frame.
func (s *Screen) WaitForLast(want string) {
	s.t.Helper()
	s.WaitUntil("the last bytes", func(string) bool { return strings.HasSuffix(string(s.raw), want) })
}

// End waits until the program has ended and returns its exit status.
func (s *Screen) End() int {
	s.t.Helper()
	select {
	case <-s.over:
		return s.cmd.ProcessState.ExitCode()
	case <-time.After(Patience):
		s.t.Fatalf("the program does not end; the screen is:\n%s", s.Text())
		return -1
	}
}
