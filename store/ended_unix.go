//go:build unix

package store

import (
	"errors"
	"syscall"
)

// processEnded reports whether no process of this number is there.
func processEnded(pid int) bool { return errors.Is(syscall.Kill(pid, 0), syscall.ESRCH) }
