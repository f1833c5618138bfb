package readings

import "backspan/tui/components/figure"

// To puts the cursor on the reading with that key, and shows all readings when
// it is not among those that moved.
func (m *Model) To(key string) {
	for _, all := range []bool{false, true} {
		if all && m.movedOnly {
			m.MovedOnly()
		}
		for i, r := range m.rows {
			if r.heading == "" && r.r.Key == key {
				m.roll.To(i)
				return
			}
		}
	}
}

// Key is the key of the reading under the cursor, empty when there is none.
func (m *Model) Key() string { return m.at().r.Key }

// Text is the value of the reading under the cursor, with its unit.
func (m *Model) Text() string {
	if m.Key() == "" {
		return ""
	}
	return figure.Text(m.at().r, m.facts.Currency)
}

// Point takes a line of the pane that was pointed at.
func (m *Model) Point(y int) { m.roll.Point(y - 2) }
