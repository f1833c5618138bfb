//go:build unix

package tui

import (
	"os"
	"os/signal"
	"syscall"
)

// onHangup calls end when the terminal goes away, and returns what stops
// listening. Bubble Tea listens to interrupts and to requests to end only.
func onHangup(end func()) (stop func()) {
	c, done := make(chan os.Signal, 1), make(chan struct{})
	signal.Notify(c, syscall.SIGHUP)
	go func() {
		select {
		case <-c:
			end()
		case <-done:
		}
	}()
	return func() {
		signal.Stop(c)
		close(done)
	}
}
