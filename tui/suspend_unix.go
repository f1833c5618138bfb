//go:build unix

package tui

import "golang.org/x/sys/unix"

// underShell reports whether a shell of this terminal can bring a stopped
// program back. Without one the system does not stop it either, and it would
// wait for ever with the terminal given up.
func underShell() bool {
	parent := unix.Getppid()
	session, err := unix.Getsid(parent)
	if err != nil {
		return false
	}
	own, err := unix.Getsid(0)
	if err != nil || own != session {
		return false
	}
	group, err := unix.Getpgid(parent)
	return err == nil && group != unix.Getpgrp()
}
