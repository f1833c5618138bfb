// Package studies is the page that lists the studies of the folder.
package studies

import (
	"fmt"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/store"
	"backspan/tui/components/roll"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// OpenMsg asks the root to open a study.
type OpenMsg struct{ Path string }

// ListMsg asks the root to read the folder.
type ListMsg struct{}

// BackMsg asks the root for the bench.
type BackMsg struct{}

// Model is the page.
type Model struct {
	th      *theme.Theme
	keys    keymap.Map
	entries []store.Entry
	problem string // why the folder could not be read
	known   bool   // the folder was read
	open    string // path of the study on the bench
	roll    roll.Model
	w, h    int
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map) *Model { return &Model{th: t, keys: k} }

// Set gives what was found in the folder. The cursor stays on its file, at
// first on the study that is open.
func (m *Model) Set(entries []store.Entry, err error, open string) {
	was := open
	if e, ok := m.at(); ok {
		was = e.Path
	}
	m.entries, m.known, m.open, m.problem = entries, true, open, ""
	if err != nil {
		m.problem = err.Error()
	}
	m.roll.Set(len(entries), nil)
	for i, e := range entries {
		if e.Path == was {
			m.roll.To(i)
		}
	}
}

func (m *Model) at() (store.Entry, bool) {
	if m.roll.Cursor >= len(m.entries) {
		return store.Entry{}, false
	}
	return m.entries[m.roll.Cursor], true
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtStudies() }

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	k := m.keys.Studies
	switch {
	case key.Matches(msg, k.Open):
		if e, ok := m.at(); ok && e.Problem == "" {
			return OpenMsg{e.Path}
		}
	case key.Matches(msg, k.Again):
		return ListMsg{}
	case key.Matches(msg, k.Back):
		return BackMsg{}
	default:
		m.roll.Update(msg, m.keys.Walk)
	}
	return nil
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	m.w, m.h = w, h
	m.roll.Height(h - 2 - m.detail())
}

func (m *Model) detail() int { return min(max(m.h/4, 3), 8) }

// View shows the page.
func (m *Model) View() []string {
	lines := []string{m.th.Heading("Studies in this folder", m.roll.Note(), m.w, true)}
	switch {
	case m.problem != "":
		for _, l := range theme.Wrap(m.th.Clean(m.problem), m.w-4) {
			lines = append(lines, m.th.Fails.Paint("! "+l))
		}
		return append(lines, "  r reads the folder again")
	case !m.known:
		return append(lines, "", "  reading the folder")
	case len(m.entries) == 0:
		return append(lines, "", "  no studies here yet", "  N begins a new one; esc goes to the study on the bench")
	}
	lines = append(lines, m.th.Quiet.Paint(m.heads()))
	from, to := m.roll.Window()
	for i := from; i < to; i++ {
		lines = append(lines, m.row(m.entries[i], i == m.roll.Cursor))
	}
	for len(lines) < m.h-m.detail() {
		lines = append(lines, "")
	}
	return append(lines, m.about()...)
}

// columns divides a row: mark, name, variants, date, file.
func (m *Model) columns() (name, file int) {
	rest := max(m.w-2-10-18-1, 8)
	name = min(rest*55/100, 50)
	return name, rest - name
}

func (m *Model) heads() string {
	name, file := m.columns()
	return m.th.Fit("", 2) + m.th.Fit("study", name) + m.th.Right("variants", 10) + "  " + m.th.Fit("saved", 17) + m.th.Fit("file", file)
}

func (m *Model) row(e store.Entry, here bool) string {
	name, file := m.columns()
	mark, ink := "  ", theme.Ink{}
	if here {
		mark = m.th.Marks.Here + " "
	}
	count, date := fmt.Sprint(e.Variants), e.Modified.Format("2006-01-02 15:04")
	title := e.Name
	if e.Problem != "" {
		title, count, ink = "cannot be opened", "", m.th.Fails
	}
	if e.Path == m.open && m.open != "" {
		title += " (open)"
	}
	return m.th.Row(here,
		theme.Segment{Ink: m.th.Accent, Text: mark},
		theme.Segment{Ink: ink, Text: m.th.Fit(m.th.Clean(title), name)},
		theme.Segment{Text: m.th.Right(count, 10) + "  "},
		theme.Segment{Ink: m.th.Quiet, Text: m.th.Fit(date, 17)},
		theme.Segment{Text: m.th.Fit(m.th.Clean(e.File), file)})
}

func (m *Model) about() []string {
	e, ok := m.at()
	if !ok {
		return nil
	}
	lines := []string{m.th.Heading(m.th.Clean(e.File), "", m.w, false)}
	s := "Enter opens it"
	if e.Problem != "" {
		s = "cannot be opened: " + e.Problem
	}
	for _, text := range []string{s, e.Path} {
		for _, l := range theme.Wrap(m.th.Clean(text), m.w-4) {
			lines = append(lines, "  "+l)
		}
	}
	if len(lines) > m.detail() {
		lines = lines[:m.detail()]
	}
	return lines
}

// Point takes a cell of the page that was pointed at; again is true when its row
// is the one under the cursor already.
func (m *Model) Point(_, y int) (again bool) { return m.roll.Point(y - 2) }
