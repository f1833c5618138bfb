//go:build unix

package tui

import (
	"os"
	"syscall"
)

// endings are the signals by which a program is ended from outside.
var endings = []os.Signal{syscall.SIGHUP, syscall.SIGTERM, syscall.SIGINT, syscall.SIGQUIT}
