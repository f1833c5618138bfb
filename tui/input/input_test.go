//go:build unix

package input

import (
	"os"
	"strings"
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
		if got := unfinished([]byte(tc.bytes)) > 0; got != tc.want {
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
	k := &Keyboard{File: r, Patience: 5 * time.Second}
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
	if n, err := (&Keyboard{File: r, Patience: time.Millisecond}).Read(buf); err != nil || string(buf[:n]) != "\x1b" {
		t.Errorf("read %q, %v", buf[:n], err)
	}
}

// A turning wheel sends more than one read has room for: no event is torn.
func TestFullReadsEndBetweenEvents(t *testing.T) {
	r, w, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _, _ = r.Close(), w.Close() }()
	const event = "\x1b[<65;30;10M"
	sent := strings.Repeat(event, 300)
	if _, err := w.WriteString(sent); err != nil {
		t.Fatal(err)
	}
	k, read := &Keyboard{File: r, Patience: 50 * time.Millisecond}, 0
	for read < len(sent) {
		buf := make([]byte, 256)
		n, err := k.Read(buf)
		if err != nil || n == 0 || n%len(event) != 0 || string(buf[:n]) != strings.Repeat(event, n/len(event)) {
			t.Fatalf("after %d bytes read %q, %v", read, buf[:n], err)
		}
		read += n
	}
}
