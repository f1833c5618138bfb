//go:build unix

package input

import (
	"io"
	"os"
	"time"

	"golang.org/x/sys/unix"
)

// Keyboard is a terminal whose reads do not end inside a key. It is an
// *os.File still, so that Bubble Tea finds a terminal to put in raw mode.
type Keyboard struct {
	*os.File
	Patience time.Duration // how long the rest of a key may take

	begun []byte // of a key that the last read had no room for
}

// Wrap returns f with the patience that suits a remote terminal: a lone Esc is
// known as such after 50 ms.
func Wrap(f *os.File) io.Reader { return &Keyboard{File: f, Patience: 50 * time.Millisecond} }

// Read reads and, while the bytes end inside a key, reads on. A key that is
// longer than the room left is kept for the next read.
func (k *Keyboard) Read(p []byte) (int, error) {
	n := copy(p, k.begun)
	k.begun = k.begun[n:]
	if n == len(p) {
		return n, nil
	}
	m, err := k.File.Read(p[n:])
	n += m
	for err == nil && m > 0 && n < len(p) && unfinished(p[:n]) > 0 && k.more() {
		m, err = k.File.Read(p[n:])
		n += m
	}
	if rest := unfinished(p[:n]); err == nil && n == len(p) && rest > 0 && rest < n && k.more() {
		n -= rest
		k.begun = append([]byte(nil), p[n:]...)
	}
	return n, err
}

func (k *Keyboard) more() bool {
	fds := []unix.PollFd{{Fd: int32(k.Fd()), Events: unix.POLLIN}}
	until := time.Now().Add(k.Patience)
	for {
		n, err := unix.Poll(fds, int(time.Until(until).Milliseconds()))
		if err == unix.EINTR && time.Now().Before(until) {
			continue
		}
		return err == nil && n > 0
	}
}
