//go:build linux || darwin || freebsd || netbsd || openbsd || dragonfly

package store

import (
	"errors"
	"os"
	"syscall"
)

// hold keeps other processes from holding the file until it is closed or this
// process ends; false when another one holds it. Where files cannot be held,
// such as on some network file systems, it goes on without.
func hold(f *os.File) (held bool, err error) {
	for {
		err = syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
		if !errors.Is(err, syscall.EINTR) {
			return !errors.Is(err, syscall.EWOULDBLOCK), nil
		}
	}
}
