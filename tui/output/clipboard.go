package output

import (
	"io"
	"strings"

	"github.com/aymanbagabas/go-osc52/v2"
)

// MostCopied is how many bytes are handed to a clipboard at once; some
// terminals drop more without a word.
const MostCopied = 8192

// Copy asks the terminal at the other end of w, also over a remote login, to
// put text on its clipboard: OSC 52. inTmux asks a tmux in between too, and the
// terminal outside it; which of them does it is for tmux's options
// set-clipboard and allow-passthrough to say. The text travels as base64, so
// that nothing in it can act on the terminal.
func Copy(w io.Writer, text string, inTmux bool) error {
	ask := osc52.New(text).Limit(MostCopied)
	s := ask.String()
	if inTmux {
		s = ask.Tmux().String() + s
	}
	_, err := io.WriteString(w, s)
	return err
}

// isCopy is true of what Copy writes.
func isCopy(p []byte) bool {
	s := string(p)
	return strings.HasPrefix(s, "\x1b]52;") || strings.HasPrefix(s, "\x1bPtmux;\x1b\x1b]52;")
}
