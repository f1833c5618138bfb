package output

import (
	"bytes"
	"fmt"
)

// bridge is how many unchanged cells are written again rather than leapt over,
// because the leap would cost as much.
const bridge = 5

// rewrite turns what row (from 1) shows from old into now. Cells beyond the
// end of either are blank.
func rewrite(out *bytes.Buffer, row int, old, now []cell) {
	ink, at := "", -1
	for x := next(old, now, 0); x < len(now); {
		end := runEnd(old, now, x)
		switch {
		case at < 0:
			fmt.Fprintf(out, "\x1b[%d;%dH", row, x+1)
		case x > at:
			fmt.Fprintf(out, "\x1b[%dC", x-at)
		}
		for _, c := range now[x:end] {
			if c != blank || seenOnBlanks(ink) {
				change(out, &ink, c.ink)
			}
			out.WriteString(c.text)
		}
		at = end
		x = next(old, now, end)
	}
	change(out, &ink, "")
	if len(old) > len(now) {
		if at != len(now) {
			fmt.Fprintf(out, "\x1b[%d;%dH", row, len(now)+1)
		}
		out.WriteString("\x1b[K")
	}
}

// change puts another ink in force.
func change(out *bytes.Buffer, from *string, to string) {
	if *from == to {
		return
	}
	if *from != "" {
		out.WriteString("\x1b[m")
	}
	out.WriteString(to)
	*from = to
}

func same(old, now []cell, x int) bool {
	if x < len(old) {
		return old[x] == now[x]
	}
	return now[x] == blank
}

// next is the first cell from x on that differs.
func next(old, now []cell, x int) int {
	for x < len(now) && same(old, now, x) {
		x++
	}
	return x
}

// runEnd is the end of the run of cells at x that are written in one go.
func runEnd(old, now []cell, x int) int {
	end := x + 1
	for i := end; i < len(now) && i-end < bridge; i++ {
		if !same(old, now, i) {
			end = i + 1
		}
	}
	return end
}
