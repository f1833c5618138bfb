package output

import (
	"fmt"
	"strings"
	"testing"
)

// A frame of 40 lines, all changed, 120 cells each.
func BenchmarkFrame(b *testing.B) {
	frames := make([][]string, 2)
	for f := range frames {
		for y := range 40 {
			line := ""
			for x := range 10 {
				line += fmt.Sprintf("\x1b[38;5;31m%s\x1b[0m %5d", strings.Repeat("x", 6), 1000*f+x*y)
			}
			frames[f] = append(frames[f], line)
		}
	}
	var t Terminal
	t.thinned([]byte(asRenderer(nil, frames[1])))
	there, back := []byte(asRenderer(frames[1], frames[0])), []byte(asRenderer(frames[0], frames[1]))
	b.ReportAllocs()
	for b.Loop() {
		t.thinned(there)
		t.thinned(back)
	}
}
