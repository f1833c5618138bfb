package checks

import "backspan/tui/components/figure"

// To puts the cursor on the check with that key.
func (m *Model) To(key string) {
	for i, c := range m.checks {
		if c.Key == key {
			m.roll.To(i)
			return
		}
	}
}

// Key is the key of the check under the cursor, empty when there is none.
func (m *Model) Key() string { return m.at().Key }

// Text is the check under the cursor in words.
func (m *Model) Text() string {
	c := m.at()
	if c.Key == "" {
		return ""
	}
	s := c.Label + " " + string(c.Verdict)
	if c.Valued {
		s += ": " + figure.Limit(c, false, m.currency) + marginClause(c)
	}
	return s
}

// Point takes a line of the pane that was pointed at.
func (m *Model) Point(y int) { m.roll.Point(y - 1) }
