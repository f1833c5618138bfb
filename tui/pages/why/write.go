package why

import (
	"fmt"
	"slices"

	"backspan/model/explore"
	"backspan/model/reading"
	"backspan/tui/components/figure"
	"backspan/tui/theme"
)

// line is one line of the page; the cursor passes over headings.
type line struct {
	text  string // of what is said, without the two cells for the mark
	said  bool
	ink   theme.Ink
	mover *explore.Mover
	cure  *explore.Cure
}

func (l line) rests() bool { return l.said || l.goes() }

// goes reports whether Enter leads from the line to a parameter.
func (l line) goes() bool { return l.mover != nil || l.cure != nil }

// write lays the page out anew. The cursor stays on its row, or on the first
// while nobody moved it.
func (m *Model) write() {
	was := m.at()
	m.lines = nil
	m.known()
	if m.Ails() {
		m.writeCures()
	}
	m.writeMovers()
	m.roll.Set(len(m.lines), func(i int) bool { return !m.lines[i].rests() })
	m.roll.Height(m.h - 1 - m.detail())
	if !m.touched {
		m.roll.Offset = 0
		m.roll.To(max(slices.IndexFunc(m.lines, line.goes), 0))
		return
	}
	for i, l := range m.lines {
		if l.cure == was.cure && l.cure != nil || l.mover != nil && was.mover != nil && l.mover.Path == was.mover.Path {
			m.roll.To(i)
		}
	}
}

func (m *Model) say(ink theme.Ink, s string) {
	for _, l := range theme.Wrap(m.th.Clean(s), max(m.w-2, 20)) {
		m.lines = append(m.lines, line{text: l, said: true, ink: ink})
	}
}

func (m *Model) title(s string) {
	m.lines = append(m.lines, line{}, line{text: m.th.Clean(s), ink: m.th.Strong})
}

func (m *Model) currency() string { return m.desk.Study().Currency }

// head is the figure asked about, with its name.
func (m *Model) head() string {
	if c, ok := m.check(); ok {
		switch {
		case c.Valued:
			s := c.Label + " " + string(c.Verdict) + ": " + figure.Limit(c, false, m.currency())
			if t := c.MarginText(); t != "" {
				s += ", margin " + t
			}
			return s
		case c.Why != "":
			return c.Label + " " + string(c.Verdict) + ": " + c.Why
		}
		return c.Label + " " + string(c.Verdict)
	}
	r, ok := m.desk.Outcome().Reading(m.of.Key)
	switch {
	case m.of.Check || !ok:
		return "this variant has no such figure"
	case !r.Known():
		return r.Label + " " + r.Text() + ": " + r.Why
	}
	s := r.Label + ": " + figure.Text(r, m.currency())
	if r.Better != reading.Neither {
		s += "; " + string(r.Better) + " is better"
	}
	return s
}

// known is what needs no sums: the figure, how it is found and from where.
func (m *Model) known() {
	m.say(m.th.Strong, m.head())
	if c, ok := m.check(); ok {
		if c.Cure != "" && c.Verdict != reading.Holds {
			m.say(theme.Ink{}, "what helps: "+c.Cure)
		}
		if c.Origin != "" {
			m.say(theme.Ink{}, "limit from: "+c.Origin)
		}
	}
	r, ok := m.desk.Outcome().Reading(m.of.Key)
	if !ok {
		return
	}
	if r.Method != "" {
		m.say(theme.Ink{}, "how it is found: "+r.Method)
	}
	if r.Origin != "" {
		m.say(theme.Ink{}, "source: "+r.Origin)
	}
}

func (m *Model) writeCures() {
	m.title("What would cure it, changed alone")
	switch {
	case !m.cured:
		m.waiting("looked for after the small steps")
	case len(m.cures) == 0:
		m.say(theme.Ink{}, "No single number does, within its range. What is asked, assumed or shared by all variants was left alone.")
	}
	for i := range m.cures {
		m.lines = append(m.lines, line{cure: &m.cures[i]})
	}
}

// waiting says what is being done, or what is done first.
func (m *Model) waiting(later string) {
	switch {
	case m.fault != "":
		m.say(m.th.Fails, "! "+m.fault)
	case m.answer != nil && m.doing != "":
		m.say(m.th.Quiet, m.doing)
	default:
		m.say(m.th.Quiet, later)
	}
}

func (m *Model) writeMovers() {
	if m.answer == nil {
		m.title("What moves it most")
		if m.fault != "" {
			m.say(m.th.Fails, "! "+m.fault)
			return
		}
		m.say(m.th.Quiet, m.doing)
		return
	}
	n := len(m.answer.Movers)
	if n == 0 {
		m.title("What moves it most")
		m.say(theme.Ink{}, m.unmoved())
		return
	}
	if m.answer.Terms == explore.Points {
		m.title(fmt.Sprintf("What moves its margin most, in percentage points (pt): %d of %d numbers", n, m.tried))
	} else {
		m.title(fmt.Sprintf("What moves it most: %d of %d numbers (words and tables not tried)", n, m.tried))
	}
	m.lines = append(m.lines, line{text: m.heads(), ink: m.th.Quiet})
	for i := range m.answer.Movers {
		m.lines = append(m.lines, line{mover: &m.answer.Movers[i]})
	}
}

func (m *Model) unmoved() string {
	if c, ok := m.check(); ok && !c.Valued {
		return "This check has no figure that could move; it holds or it does not."
	}
	if r, ok := m.desk.Outcome().Reading(m.of.Key); !m.of.Check && ok && !r.Known() {
		return "There is no figure that could move."
	}
	return fmt.Sprintf("None of %d numbers moves it by a small step.", m.tried)
}
