//go:build linux || darwin || freebsd || netbsd || openbsd || dragonfly

package store

import (
	"errors"
	"os"
	"syscall"
	"time"
)

// lock keeps other instances of this program from saving in dir until unlock
// is called. Where folders cannot be locked, such as on some network file
// systems, a save goes on without.
func lock(dir string) (unlock func(), err error) {
	f, err := os.Open(dir)
	if err != nil {
		return func() {}, nil
	}
	const tries, pause = 100, 20 * time.Millisecond
	for range tries {
		err = syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
		if !errors.Is(err, syscall.EWOULDBLOCK) && !errors.Is(err, syscall.EINTR) {
			return func() { _ = f.Close() }, nil
		}
		time.Sleep(pause)
	}
	_ = f.Close()
	return nil, refusal(dir, err, "not saved: another Backspan is saving in this folder and does not finish; try again")
}
