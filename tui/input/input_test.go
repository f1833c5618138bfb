//go:build unix

package input

import (
	"os"
	"testing"
	"time"
)

func TestUnfinished(t *testing.T) {
	for _, tc := range []struct {
		name, bytes string
		want        bool
	}{
		{"nothing", "", false}, {"letters", "abc", false}, {"lone escape", "\x1b", true},
		{"open sequence", "\x1b[", true}, {"open with figures", "\x1b[5", true}, {"arrow", "\x1b[B", false},
		{"page", "\x1b[5~", false}, {"function key begun", "\x1bO", true}, {"function key", "\x1bOP", false},
		{"alt and a letter", "\x1bq", false}, {"arrow then escape", "\x1b[A\x1b", true},
		{"half a letter", "\xc3", true}, {"whole letter", "é", false}, {"two thirds", "\xe2\x82", true}, {"stray tail", "\x82", false},
	} {
		if got := unfinished([]byte(tc.bytes)); got != tc.want {
			t.Errorf("%s: %v", tc.name, got)
		}
	}
}

func TestReadKeepsKeysWhole(t *testing.T) {
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _, _ = r.Close(), w.Close() }()
	k := Keyboard{r, 5 * time.Second}
	if _, err := w.WriteString("\x1b"); err != nil {
		t.Fatal(err)
	}
	got := make(chan string)
	go func() {
		buf := make([]byte, 64)
		n, _ := k.Read(buf)
		got <- string(buf[:n])
	}()
	if _, err := w.WriteString("[B"); err != nil {
		t.Fatal(err)
	}
	if s := <-got; s != "\x1b[B" {
		t.Errorf("read %q", s)
	}
}

func TestLoneEscapeIsGivenUpOn(t *testing.T) {
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _, _ = r.Close(), w.Close() }()
	if _, err := w.WriteString("\x1b"); err != nil {
		t.Fatal(err)
	}
	buf := make([]byte, 64)
	if n, err := (Keyboard{r, time.Millisecond}).Read(buf); err != nil || string(buf[:n]) != "\x1b" {
		t.Errorf("read %q, %v", buf[:n], err)
	}
}
