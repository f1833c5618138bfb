//go:build unix

package main

import (
	"os"
	"os/signal"
	"strings"
	"syscall"
	"testing"
	"time"
)

// An interrupt ends a long question at once, says how far it came, and leaves
// no part of a file behind.
func TestInterruptEndsAtOnce(t *testing.T) {
	long := []string{"sweep", "--over", crank + "=55..80/1000", "--over", "propeller.pitch=500..800/1000"}
	absorbed := make(chan os.Signal, 1)
	signal.Notify(absorbed, os.Interrupt)
	defer signal.Stop(absorbed)
	for _, args := range [][]string{long, append(long, "--part", "1/2", "--out", "a.part"), quietAndClimbing("--generations", "10000")} {
		dir, over := t.TempDir(), make(chan struct{})
		go interruptUntil(t, over)
		s := run(t, dir, args...)
		close(over)
		if s.status != statusCannot || s.out != "" || !strings.Contains(s.err, "stopped after ") && !strings.Contains(s.err, "is not finished") {
			t.Errorf("%v: status %d, %q", args, s.status, s.err)
		}
		if left, err := os.ReadDir(dir); err != nil || len(left) > 0 {
			t.Errorf("%v left behind, %v", left, err)
		}
	}
}

// interruptUntil sends interrupts again and again: the first may come before
// anybody listens.
func interruptUntil(t *testing.T, over <-chan struct{}) {
	for {
		select {
		case <-over:
			return
		case <-time.After(200 * time.Millisecond):
			if err := syscall.Kill(os.Getpid(), syscall.SIGINT); err != nil {
				t.Error(err)
			}
		}
	}
}
