package output

import (
	"encoding/base64"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// OSC 52 as xterm's control sequences define it: ESC ] 5 2 ; c ; base64, ended
// by BEL or ST; within tmux a device control string with every ESC doubled.
func TestCopy(t *testing.T) {
	for _, tc := range []struct {
		name string
		tmux bool
		want string
	}{
		{"terminal", false, "\x1b]52;c;NjIgbW0=\x07"},
		{"tmux", true, "\x1bPtmux;\x1b\x1b]52;c;NjIgbW0=\x07\x1b\\\x1b]52;c;NjIgbW0=\x07"},
	} {
		var b strings.Builder
		if err := Copy(&b, "62 mm", tc.tmux); err != nil || b.String() != tc.want {
			t.Errorf("%s: %q, %v; want %q", tc.name, b.String(), err, tc.want)
		}
		if !harmless([]byte(b.String())) {
			t.Errorf("%s: the screen is thought lost", tc.name)
		}
	}
}

// Whatever is copied, nothing but base64 reaches the terminal, and all of it.
func TestCopiedTextCannotAct(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.String().Draw(t, "text")
		var b strings.Builder
		if err := Copy(&b, text, false); err != nil {
			t.Fatal(err)
		}
		inner, ok := strings.CutPrefix(b.String(), "\x1b]52;c;")
		inner, ended := strings.CutSuffix(inner, "\x07")
		back, err := base64.StdEncoding.DecodeString(inner)
		if len(text) > MostCopied {
			return
		}
		if !ok || !ended || err != nil || string(back) != text {
			t.Fatalf("%q becomes %q", text, b.String())
		}
	})
}

func TestCopyIsWrittenBetweenFrames(t *testing.T) {
	f, err := os.Create(filepath.Join(t.TempDir(), "terminal"))
	if err != nil {
		t.Fatal(err)
	}
	term := Thin(f)
	const frame = "\x1b[H\rone\x1b[K\r\ntwo\x1b[K\x1b[2;H"
	for range 2 {
		if _, err := io.WriteString(term, frame); err != nil {
			t.Fatal(err)
		}
		if err := Copy(term, "x", false); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile(f.Name())
	if err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(string(got), "\x1b]52;c;eA==\x07"); n != 2 {
		t.Errorf("copied %d times: %q", n, got)
	}
}
