package line

import (
	"backspan/tui/theme"
)

// span is where a row of a table stands in the text: from its first character
// to the semicolon behind it.
type span struct{ from, to int }

// spans finds the rows of the text and the one that holds the caret.
func (m Model) spans() (rows []span, at int) {
	text := []rune(m.input.Value())
	from := 0
	for i := 0; i <= len(text); i++ {
		if i < len(text) && text[i] != ';' {
			continue
		}
		for from < i && text[from] == ' ' {
			from++
		}
		if i >= m.input.Position() && (len(rows) == 0 || rows[len(rows)-1].to < m.input.Position()) {
			at = len(rows)
		}
		rows = append(rows, span{from, i})
		from = i + 1
	}
	return rows, at
}

// climb moves the caret n rows up or down a table.
func (m *Model) climb(n int) {
	rows, at := m.spans()
	to := rows[min(max(at+n, 0), len(rows)-1)]
	column := max(m.input.Position()-rows[at].from, 0)
	m.input.SetCursor(min(to.from+column, to.to))
}

// Table shows a table being typed, a row a line, in at most h lines of w
// cells; the row with the caret is always among them.
func (m Model) Table(t *theme.Theme, w, h int) []string {
	rows, at := m.spans()
	first := min(max(at-h/2, 0), max(len(rows)-h, 0))
	text := []rune(m.input.Value())
	var lines []string
	for i := first; i < len(rows) && len(lines) < h; i++ {
		r := rows[i]
		if i != at {
			lines = append(lines, t.Cut("   "+t.Clean(string(text[r.from:r.to])), w))
			continue
		}
		pos := min(max(m.input.Position(), r.from), r.to)
		lines = append(lines, t.Accent.Paint(t.Marks.Here+" ")+framed(t, text[r.from:pos], text[pos:r.to], w-2))
	}
	return lines
}
