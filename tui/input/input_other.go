//go:build !unix

package input

import (
	"io"
	"os"
)

// Wrap returns f as it is: this system delivers keys as events, whole.
func Wrap(f *os.File) io.Reader { return f }
