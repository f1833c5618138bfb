package sidebyside

import (
	"fmt"
	"strings"

	"backspan/tui/theme"
)

// heading shows the heading of a group, with a cursor when it is folded.
func (m *Model) heading(r row, here bool) string {
	text := m.th.Clean(r.label)
	if here {
		return m.th.Row(true, theme.Segment{Text: m.th.Fit(m.th.Marks.Here+" "+strings.TrimPrefix(text, "  "), m.w)})
	}
	return m.th.Quiet.Paint(m.th.Cut(text, m.w))
}

// groupKey is the key of a folded heading.
func groupKey(group string) string { return "group/" + group }

// fold takes out the rows of folded groups; their headings tell how many those
// are.
func (m *Model) fold(rows []row) []row {
	var out []row
	for i := 0; i < len(rows); {
		end := groupEnd(rows, i)
		if r := rows[i]; r.group != "" && m.folded[r.group] && end > i+1 {
			r.key = groupKey(r.group)
			r.label += ": " + counted(rows[i+1:end])
			out = append(out, r)
		} else {
			out = append(out, rows[i:end]...)
		}
		i = end
	}
	return out
}

// groupEnd is behind the last row under the heading at i.
func groupEnd(rows []row, i int) int {
	for i++; i < len(rows) && rows[i].group == ""; i++ {
		continue
	}
	return i
}

func counted(rows []row) string {
	differ := 0
	for _, r := range rows {
		if r.differs {
			differ++
		}
	}
	s := fmt.Sprintf("%d rows", len(rows))
	if len(rows) == 1 {
		s = "1 row"
	}
	switch differ {
	case 0:
		return s + ", none differs"
	case 1:
		return s + ", 1 differs"
	}
	return fmt.Sprintf("%s, %d differ", s, differ)
}

// here is the row of the heading over the cursor, −1 when there is none.
func (m *Model) here() int {
	for i := min(m.roll.Cursor, len(m.rows)-1); i >= 0; i-- {
		if m.rows[i].group != "" {
			return i
		}
	}
	return -1
}

// foldHere folds the group in which the cursor stands, or unfolds it.
func (m *Model) foldHere() {
	at := m.here()
	if at < 0 {
		return
	}
	group := m.rows[at].group
	m.folded[group] = !m.folded[group]
	m.arrange()
	m.toGroup(group)
}

// toGroup puts the cursor on a folded heading, or on the first row under one
// that is not.
func (m *Model) toGroup(group string) {
	for i, r := range m.rows {
		if r.group == group {
			m.roll.To(i)
		}
	}
}

// foldAll folds every group, or unfolds all when all are folded.
func (m *Model) foldAll() {
	group := ""
	if at := m.here(); at >= 0 {
		group = m.rows[at].group
	}
	all := m.lay(m.desk.Comparison())
	open := false
	for i, r := range all {
		open = open || r.group != "" && groupEnd(all, i) > i+1 && !m.folded[r.group]
	}
	for _, r := range all {
		if r.group != "" {
			m.folded[r.group] = open
		}
	}
	m.arrange()
	m.toGroup(group)
}
