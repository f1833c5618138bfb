// Package find is the page on which a parameter, a reading or a check is found
// by a few letters of its name.
package find

import (
	"fmt"
	"slices"
	"strings"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model/explore"
	"backspan/tui/components/figure"
	"backspan/tui/components/line"
	"backspan/tui/components/readings"
	"backspan/tui/components/roll"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the page from which something was looked for.
type BackMsg struct{}

// SetMsg asks the root for the form, at a parameter.
type SetMsg struct{ Place desk.Place }

// FigureMsg asks the root for a reading or a check.
type FigureMsg struct{ Of explore.Subject }

// item is something that can be found.
type item struct {
	kind, label, part, key, value string
	goes                          tea.Msg
}

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	line  line.Model
	items []item
	found []item
	roll  roll.Model
	w, h  int
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk) *Model {
	return &Model{th: t, keys: k, desk: d, line: line.New("", line.Blank)}
}

// Begin looks for something else.
func (m *Model) Begin() {
	m.line = line.New("", line.Blank)
	m.items = append(append(m.settings(m.desk.Selected), m.settings(desk.Shared)...), m.figures()...)
	m.look()
}

func (m *Model) settings(variant int) []item {
	kind := "set"
	if variant == desk.Shared {
		kind = "set for all"
	}
	var items []item
	for _, s := range m.desk.Sections(variant) {
		for _, p := range s.Params {
			if !p.Hidden {
				items = append(items, item{kind, p.Label, s.Label, s.Path(p), figure.Money(p.Show(), p.Unit, m.currency()),
					SetMsg{desk.Place{Variant: variant, Path: s.Path(p)}}})
			}
		}
	}
	return items
}

func (m *Model) currency() string { return m.desk.Study().Currency }

func (m *Model) figures() []item {
	var items []item
	o := m.desk.Outcome()
	for _, r := range o.Readings {
		items = append(items, item{"reading", r.Label, readings.Part(r.Key), r.Key, figure.Text(r, m.currency()), FigureMsg{explore.Subject{Key: r.Key}}})
	}
	for _, c := range o.Checks {
		items = append(items, item{"check", c.Label, readings.Part(c.Key), c.Key, string(c.Verdict), FigureMsg{explore.Subject{Check: true, Key: c.Key}}})
	}
	return items
}

// look finds what answers to the letters typed, best first, and among equals
// the shorter name, then the order of the study.
func (m *Model) look() {
	query := m.line.Value()
	m.found = nil
	worths := map[string]int{}
	for _, it := range m.items {
		if n := worth(query, it.label, it.key+" "+it.part); n > 0 {
			m.found = append(m.found, it)
			worths[it.kind+it.key] = n
		}
	}
	best := 0
	for _, n := range worths {
		best = max(best, n)
	}
	if best >= elsewhere { // letters here and there are for want of better
		m.found = slices.DeleteFunc(m.found, func(it item) bool { return worths[it.kind+it.key] < elsewhere })
	}
	slices.SortStableFunc(m.found, func(a, b item) int {
		if d := worths[b.kind+b.key] - worths[a.kind+a.key]; d != 0 {
			return d
		}
		return len(a.label) - len(b.label)
	})
	m.roll.Cursor, m.roll.Offset = 0, 0
	m.roll.Set(len(m.found), nil)
	m.Size(m.w, m.h)
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtFind() }

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	k := m.keys.Find
	switch {
	case key.Matches(msg, k.Leave):
		return BackMsg{}
	case key.Matches(msg, k.Go):
		if m.roll.Cursor < len(m.found) {
			return m.found[m.roll.Cursor].goes
		}
	case key.Matches(msg, k.Up):
		m.roll.Move(-1)
	case key.Matches(msg, k.Down):
		m.roll.Move(1)
	default:
		m.line = m.line.Update(msg)
		m.look()
	}
	return nil
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	m.w, m.h = w, h
	m.roll.Height(h - 3)
}

// View shows the page.
func (m *Model) View() []string {
	lines := []string{m.th.Heading("Find", m.roll.Note(), m.w, true), "  " + m.line.View(m.th, min(m.w-4, 60)), m.th.Quiet.Paint(m.th.Cut("  "+m.told(), m.w))}
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.row(m.found[i], i == m.roll.Cursor))
	}
	return lines
}

func (m *Model) told() string {
	switch {
	case strings.TrimSpace(m.line.Value()) == "":
		return fmt.Sprintf("a few letters of a value to set, a reading or a check; %d to choose from", len(m.items))
	case len(m.found) == 0:
		return "nothing has these letters; fewer find more"
	}
	return fmt.Sprintf("%d of %d", len(m.found), len(m.items))
}

func (m *Model) row(it item, here bool) string {
	const kind = 13
	value, part := 16, 0
	if m.w >= 76 {
		part = 15
	}
	if m.w >= 112 {
		value, part = 24, 32
	}
	mark := "  "
	if here {
		mark = m.th.Marks.Here + " "
	}
	label := min(m.w-2-kind-value-part, 44)
	return m.th.Row(here, theme.Segment{Ink: m.th.Accent, Text: mark},
		theme.Segment{Text: m.th.Label(m.th.Clean(it.label), label)},
		theme.Segment{Ink: m.th.Quiet, Text: " " + m.th.Fit(it.kind, kind-1)},
		theme.Segment{Ink: m.th.Quiet, Text: m.th.Fit(m.th.Clean(it.part), part)},
		theme.Segment{Text: m.th.Right(m.th.Short(m.th.Clean(it.value), value-1), value)})
}

// Point takes a cell of the page that was pointed at; again is true when its row
// is the one under the cursor already.
func (m *Model) Point(_, y int) (again bool) { return m.roll.Point(y - 3) }
