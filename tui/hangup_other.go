//go:build !unix

package tui

// onHangup has nothing to listen to: this system sends no hangup.
func onHangup(func()) (stop func()) { return func() {} }
