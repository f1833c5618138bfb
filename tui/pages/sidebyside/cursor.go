package sidebyside

import (
	"strings"

	"backspan/model/explore"
)

// Subject is the reading or the check under the cursor; false on other rows.
func (m *Model) Subject() (explore.Subject, bool) {
	kind, key, _ := strings.Cut(m.at().key, "/")
	if kind == "reading" || kind == "check" {
		return explore.Subject{Check: kind == "check", Key: key}, true
	}
	return explore.Subject{}, false
}

// Text is the row under the cursor with a tab between columns, as spreadsheets
// take it.
func (m *Model) Text() string {
	r := m.at()
	if r.key == "" {
		return ""
	}
	if r.group != "" {
		return strings.TrimSpace(r.label)
	}
	cells := []string{r.label, r.unit}
	for _, k := range r.cells {
		cells = append(cells, k.text)
	}
	return strings.Join(cells, "\t")
}

func (m *Model) at() row {
	if m.roll.Cursor >= len(m.rows) {
		return row{}
	}
	return m.rows[m.roll.Cursor]
}

// Point takes a cell of the page that was pointed at; again is true when its row
// is the one under the cursor already. The column is taken in hand.
func (m *Model) Point(x, y int) (again bool) {
	c := m.columns()
	if n := (x - c.label) / max(c.each, 1); x >= c.label && n < c.shown {
		m.desk.Select(m.first + n)
	}
	m.roll.Point(y - 2)
	m.Size(m.w, m.h)
	return false
}
