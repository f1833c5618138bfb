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
// put text on its clipboard: OSC 52. throughTmux wraps it for a tmux in
// between, which must allow it. The text travels as base64, so that nothing in
// it can act on the terminal.
func Copy(w io.Writer, text string, throughTmux bool) error {
	s := osc52.New(text).Limit(MostCopied)
	if throughTmux {
		s = s.Tmux()
	}
	_, err := io.WriteString(w, s.String())
	return err
}

// isCopy is true of what Copy writes.
func isCopy(p []byte) bool {
	s := string(p)
	return strings.HasPrefix(s, "\x1b]52;") || strings.HasPrefix(s, "\x1bPtmux;\x1b\x1b]52;")
}
