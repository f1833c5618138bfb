// Package readings is the pane of figures that the model found for the variant
// in hand, with what the last edit changed and how they stand against the
// reference.
package readings

import (
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/model/reading"
	"backspan/tui/components/figure"
	"backspan/tui/components/roll"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// Facts is what the pane shows.
type Facts struct {
	Now       model.Outcome
	Earlier   model.Outcome // before the last edit; empty when there is none
	Reference model.Outcome // empty when the variant in hand is the reference
	Currency  string
}

type row struct {
	heading string
	r       reading.Reading
	change  figure.Change
	against figure.Change
}

// Model is the pane.
type Model struct {
	th        *theme.Theme
	walk      keymap.Walk
	facts     Facts
	rows      []row
	roll      roll.Model
	movedOnly bool
	height    int
	focus     bool
}

// New makes an empty pane.
func New(t *theme.Theme, k keymap.Walk) Model { return Model{th: t, walk: k} }

// Set gives the facts. The cursor stays on its reading while that is shown.
func (m *Model) Set(f Facts) {
	m.facts = f
	m.arrange()
}

// MovedOnly turns on and off that only readings are shown which the last edit
// moved.
func (m *Model) MovedOnly() {
	m.movedOnly = !m.movedOnly
	m.arrange()
}

// arrange puts what the last edit moved before the rest: an edit is made to
// see its effect.
func (m *Model) arrange() {
	was := m.at().r.Key
	all := m.compared()
	moved := func(r row) bool { return r.change.Text != "" }
	m.rows = grouped(nil, all, ", moved by the last edit", moved)
	if !m.movedOnly {
		m.rows = grouped(m.rows, all, "", func(r row) bool { return !moved(r) })
	}
	m.roll.Set(len(m.rows), func(i int) bool { return m.rows[i].heading != "" })
	for i, r := range m.rows {
		if m.focus && was != "" && r.r.Key == was {
			m.roll.To(i)
		}
	}
	if !m.focus {
		m.roll.To(0)
	}
	m.Size(m.height, m.focus)
}

// compared sets every reading beside its value before the last edit and that
// of the reference.
func (m *Model) compared() []row {
	earlier, reference := index(m.facts.Earlier.Readings), index(m.facts.Reference.Readings)
	rows := make([]row, len(m.facts.Now.Readings))
	for i, r := range m.facts.Now.Readings {
		rows[i] = row{r: r, change: figure.Between(earlier[r.Key], r), against: figure.Between(reference[r.Key], r)}
	}
	return rows
}

// grouped appends to rows those of all that are wanted, part by part under
// headings.
func grouped(rows, all []row, suffix string, wanted func(row) bool) []row {
	var parts []string
	of := map[string][]row{}
	for _, r := range all {
		if !wanted(r) {
			continue
		}
		part := Part(r.r.Key)
		if of[part] == nil {
			parts = append(parts, part)
		}
		of[part] = append(of[part], r)
	}
	for _, part := range parts {
		rows = append(rows, row{heading: part + suffix})
		rows = append(rows, of[part]...)
	}
	return rows
}

func (m *Model) at() row {
	if m.roll.Cursor >= len(m.rows) {
		return row{}
	}
	return m.rows[m.roll.Cursor]
}

// Update moves the cursor; false when the key means something else.
func (m *Model) Update(msg tea.KeyMsg) bool { return m.roll.Update(msg, m.walk) }

// Leap moves the cursor to the next part, or to one before.
func (m *Model) Leap(step int) {
	m.roll.Leap(step, func(i int) bool { return m.rows[i].heading != "" })
}

// Size gives the pane's height, heading included, and whether it has the
// focus, because the reading under the cursor then takes some lines.
func (m *Model) Size(h int, focus bool) {
	m.height, m.focus = h, focus
	m.roll.Height(h - 2 - m.detail())
}

func (m *Model) detail() int {
	if !m.focus || len(m.rows) == 0 {
		return 0
	}
	return min(max(m.height/3, 3), 8)
}

// Title is the pane's heading.
func (m *Model) title() string {
	if m.movedOnly {
		return "Readings that moved"
	}
	return "Readings"
}

// View shows the pane.
func (m *Model) View(w int) []string {
	lines := []string{m.th.Heading(m.title(), m.roll.Note(), w, m.focus)}
	if len(m.rows) == 0 {
		none := "no variant, no readings"
		if m.movedOnly {
			none = "the last edit moved none; m shows all"
		}
		return append(lines, "", "  "+m.th.Quiet.Paint(none))
	}
	c := divide(w, len(m.facts.Reference.Readings) > 0)
	lines = append(lines, m.th.Quiet.Paint(c.heads(m.th)))
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		r := m.rows[i]
		if r.heading != "" {
			lines = append(lines, m.th.Quiet.Paint(m.th.Cut(m.th.Clean(r.heading), w)))
			continue
		}
		lines = append(lines, m.row(r, c, i == m.roll.Cursor))
	}
	d := m.detail()
	for len(lines) < m.height-d {
		lines = append(lines, "")
	}
	return append(lines, m.about(w, d)...)
}

func (m *Model) row(r row, c columns, here bool) string {
	mark, ink := "  ", theme.Ink{}
	if here && m.focus {
		mark, ink = m.th.Marks.Here+" ", m.th.Strong
	}
	value := m.value(r.r, c.value)
	label := c.label - max(theme.Width(value)-c.value, 0) // a label can be cut, a unit not
	segs := []theme.Segment{
		{Ink: m.th.Accent, Text: mark},
		{Ink: ink, Text: m.th.Label(m.th.Clean(r.r.Label), label)},
		{Ink: ink, Text: " " + value},
		{Ink: m.th.Merit(r.change.Sign), Text: " " + m.change(r.change, c.change, c.words)},
	}
	if c.against > 0 {
		segs = append(segs, theme.Segment{Ink: m.th.Merit(r.against.Sign), Text: " " + m.change(r.against, c.against, false)})
	}
	return m.th.Row(here && m.focus, segs...)
}

// unitRoom is what the units take at the end of the value column.
const unitRoom = 6

// value is flush right in w cells, or wider when number and unit need it.
func (m *Model) value(r reading.Reading, w int) string {
	if !r.Known() {
		return m.th.Right(r.Text(), w)
	}
	u := m.th.Clean(figure.Money(r.Unit.Symbol, r.Unit, m.facts.Currency))
	number := r.Unit.Number(r.Value)
	if len(number) > w-unitRoom || theme.Width(u) >= unitRoom {
		return m.th.Right(number+" "+u, max(w, theme.Width(number+" "+u)))
	}
	return m.th.Right(number, w-unitRoom) + " " + m.th.Fit(u, unitRoom-1)
}

func (m *Model) change(c figure.Change, w int, words bool) string {
	if c.Text == "" {
		return m.th.Fit("", w)
	}
	word := ""
	if words {
		word = m.th.Fit(" "+theme.MeritWord(c.Sign), wordRoom)
	}
	room := w - 2 - theme.Width(word)
	return m.th.Right(figure.Rounded(c.Text, room), room) + " " + m.th.MeritMark(c.Sign) + word
}
