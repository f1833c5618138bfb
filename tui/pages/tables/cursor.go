package tables

import "strings"

// Text is the table at the top of the page, or the one that begins above it.
func (m *Model) Text() string {
	from := 0
	for i, l := range m.lines {
		if l.title && i <= m.roll.Offset {
			from = i
		}
	}
	var rows []string
	for i := from; i < len(m.lines) && (i == from || !m.lines[i].title); i++ {
		rows = append(rows, strings.TrimRight(m.lines[i].text, " "))
	}
	return strings.TrimSpace(strings.Join(rows, "\n"))
}
