package store

import (
	"fmt"
	"strings"
)

// controlled is a line that holds control characters, which TOML has no place
// for.
type controlled struct {
	line, column, count int
	first               byte
	offset              int // of the first
}

// mostControlled bounds the memory that a file can ask for; so many are told
// of only by their number.
const mostControlled = 10_000

// withoutControls puts blanks in place of control characters, so that one does
// not hide the next mistake, and tells of each line that held some.
func withoutControls(src string) (string, []controlled) {
	if strings.IndexFunc(src, isControl) < 0 {
		return src, nil
	}
	var found []controlled
	clean := []byte(src)
	line, column := 1, 0
	for i, r := range src {
		column++
		switch n := len(found); {
		case r == '\n':
			line, column = line+1, 0
			continue
		case !isControl(r):
			continue
		case n > 0 && found[n-1].line == line:
			found[n-1].count++
		case n < mostControlled:
			found = append(found, controlled{line, column, 1, src[i], i})
		}
		clean[i] = ' '
	}
	return string(clean), found
}

func isControl(r rune) bool { return r < ' ' && r != '\n' && r != '\t' || r == 0x7f }

func (p *parsed) noteControls(file string, lines []controlled) {
	for _, c := range lines {
		fault := Problem{File: file, Line: c.line}
		if st, ok := p.lines.at(c.offset); ok && st.kind != junk {
			fault.Key = st.path.String()
		}
		switch {
		case c.first == '\r':
			fault.Text = fmt.Sprintf("a line end that is only half one, CR without LF (column %d); save the file with line ends of one kind", c.column)
		case c.count == 1:
			fault.Text = fmt.Sprintf("holds the control character 0x%02x (column %d); delete it", c.first, c.column)
		default:
			fault.Text = fmt.Sprintf("holds %d control characters, the first 0x%02x (column %d); delete them", c.count, c.first, c.column)
		}
		p.faults = append(p.faults, fault)
	}
}
