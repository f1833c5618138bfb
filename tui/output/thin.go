package output

import (
	"bytes"
	"os"
	"strings"
	"sync"
)

// Terminal is a terminal to which only what changed is sent. It is an *os.File
// still, so that Bubble Tea finds a terminal to draw on.
type Terminal struct {
	*os.File
	mu   sync.Mutex
	rows []row // what each line shows
}

// row is what one line of the screen shows.
type row struct {
	cells []cell
	known bool
}

// Thin wraps the terminal f.
func Thin(f *os.File) *Terminal { return &Terminal{File: f} }

// Write sends a frame, or anything else.
func (t *Terminal) Write(p []byte) (int, error) {
	t.mu.Lock()
	defer t.mu.Unlock()
	if _, err := t.File.Write(t.thinned(p)); err != nil {
		t.rows = nil
		return 0, err
	}
	return len(p), nil
}

// WriteString is Write; the one of the file underneath would pass unseen.
func (t *Terminal) WriteString(s string) (int, error) { return t.Write([]byte(s)) }

const (
	home  = "\x1b[H"
	erase = "\x1b[K"
)

// thinned is what has to be sent of p.
func (t *Terminal) thinned(p []byte) []byte {
	f, ok := parse(string(p))
	if !ok {
		if !harmless(p) {
			t.rows = nil
		}
		return p
	}
	if f.anew {
		t.rows = nil
	}
	var out bytes.Buffer
	for len(t.rows) < len(f.lines) {
		t.rows = append(t.rows, row{})
	}
	for i, line := range f.lines {
		if line == "" {
			continue // left as it is
		}
		t.paint(&out, i, line)
	}
	out.WriteString(f.tail)
	return out.Bytes()
}

// paint sends line i, only what differs where both are known.
func (t *Terminal) paint(out *bytes.Buffer, i int, line string) {
	text, erased := strings.CutSuffix(line, erase)
	cells, plain := cellsOf(text)
	if was := t.rows[i]; plain && was.known {
		rewrite(out, i+1, was.cells, cells)
	} else {
		out.WriteString(position(i + 1))
		out.WriteString(text)
		if erased {
			out.WriteString(erase)
		}
	}
	t.rows[i] = row{cells, plain}
}
