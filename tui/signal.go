package tui

import (
	"os"
	"os/signal"
)

// onSignal calls end when the terminal goes away or the program is told to
// end, and returns what stops listening. Until then no such signal ends the
// program by itself, so that unsaved edits are kept first.
func onSignal(end func()) (stop func()) {
	c, done := make(chan os.Signal, 1), make(chan struct{})
	signal.Notify(c, endings...)
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
