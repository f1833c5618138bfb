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
}

// Wrap returns f with the patience that suits a remote terminal: a lone Esc is
// known as such after 50 ms.
func Wrap(f *os.File) io.Reader { return Keyboard{f, 50 * time.Millisecond} }

// Read reads and, while the bytes end inside a key, reads on.
func (k Keyboard) Read(p []byte) (int, error) {
	n, err := k.File.Read(p)
	for err == nil && n > 0 && n < len(p) && unfinished(p[:n]) && k.more() {
		var m int
		m, err = k.File.Read(p[n:])
		n += m
	}
	return n, err
}

func (k Keyboard) more() bool {
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
