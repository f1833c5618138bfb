package readings

import (
	"fmt"

	"backspan/model/reading"
	"backspan/tui/components/figure"
	"backspan/tui/theme"
)

// about is h lines on the reading under the cursor.
func (m *Model) about(w, h int) []string {
	if h == 0 {
		return nil
	}
	r := m.at()
	lines := []string{m.th.Heading(m.th.Clean(r.r.Label), "", w, false)}
	add := func(s string) {
		for _, l := range theme.Wrap(m.th.Clean(s), w-4) {
			lines = append(lines, "  "+l)
		}
	}
	if !r.r.Known() {
		add("not rated: " + r.r.Why)
	}
	if s := m.history(r); s != "" {
		add(s)
	}
	if s := m.difference(r); s != "" {
		add(s)
	}
	if r.r.Method != "" {
		add("how: " + r.r.Method)
	}
	if r.r.Origin != "" {
		add("source: " + r.r.Origin)
	}
	if r.r.Known() && r.r.Better != reading.Neither {
		add(string(r.r.Better) + " is better")
	}
	if len(lines) > h {
		lines = lines[:h]
	}
	return lines
}

// difference is how a reading stands against the reference.
func (m *Model) difference(r row) string {
	if r.against.Text == "" {
		return ""
	}
	s := r.against.Text + " against " + m.facts.Reference.Variant
	if word := theme.MeritWord(r.against.Sign); word != "" {
		s += ", " + word
	}
	return s
}

func (m *Model) history(r row) string {
	was, ok := reading.Find(m.facts.Earlier.Readings, r.r.Key)
	if !ok || r.change.Text == "" {
		return ""
	}
	s := fmt.Sprintf("%s before the last edit", figure.Text(was, m.facts.Currency))
	if word := theme.MeritWord(r.change.Sign); word != "" {
		s += ", now " + word
	}
	return s
}
