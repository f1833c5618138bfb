// Package decisions is the page of the study's log: what was settled, and when,
// the newest on top.
package decisions

import (
	"slices"
	"strings"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/tui/components/line"
	"backspan/tui/components/roll"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the bench.
type BackMsg struct{}

// fresh stands in place of an entry's index for one that is still to be made.
const fresh = -1

// Model is the page.
type Model struct {
	th    *theme.Theme
	keys  keymap.Map
	desk  *desk.Desk
	today func() string

	typing  *line.Model    // nil: nothing is being typed
	of      int            // entry that it is for, or fresh
	was     model.Decision // that entry, as it was when the typing began
	problem string         // what is wrong with what is being typed
	notice  string
	roll    roll.Model
	w, h    int
}

// New makes the page; today gives the date of a new entry.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk, today func() string) *Model {
	return &Model{th: t, keys: k, desk: d, today: today}
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place {
	if m.Busy() {
		return m.keys.AtEditor()
	}
	return m.keys.AtDecisions()
}

func (m *Model) log() []model.Decision { return m.desk.Study().Decisions }

// at is the index of the entry under the cursor, fresh when there is none.
func (m *Model) at() int { return len(m.log()) - 1 - m.roll.Cursor }

// Refresh takes over what changed on the desk. An entry that is being reworded
// may stand elsewhere now; of one that is no more a new one is made.
func (m *Model) Refresh() {
	if log := m.log(); m.Busy() && m.of != fresh && (m.of >= len(log) || log[m.of] != m.was) {
		m.of = slices.Index(log, m.was)
	}
	m.Size(m.w, m.h)
}

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	if m.Busy() {
		m.typed(msg)
		return nil
	}
	i := m.at()
	switch k := m.keys.Decisions; {
	case key.Matches(msg, k.Back):
		return BackMsg{}
	case key.Matches(msg, k.Add), key.Matches(msg, k.Reword) && i == fresh:
		m.begin(fresh, model.Decision{Date: m.today()})
	case key.Matches(msg, k.Reword):
		m.begin(i, m.log()[i])
	case key.Matches(msg, k.Strike):
		if err := m.desk.Strike(i); err != nil {
			m.notice = err.Error()
		}
	default:
		m.roll.Update(msg, m.keys.Walk)
	}
	m.Size(m.w, m.h)
	return nil
}

// begin puts an entry on a line as date and text. The caret stands behind what
// is there, which the first key therefore does not replace.
func (m *Model) begin(i int, d model.Decision) {
	l := line.New(d.Date+" "+d.Text, line.Spelt).Update(tea.KeyMsg{Type: tea.KeyEnd})
	m.typing, m.of, m.was, m.problem = &l, i, d, ""
}

func (m *Model) typed(msg tea.KeyMsg) {
	switch k := m.keys.Editor; {
	case key.Matches(msg, k.Accept):
		m.Accept()
	case key.Matches(msg, k.Leave):
		m.typing, m.problem = nil, ""
	default:
		l := m.typing.Update(msg)
		m.typing = &l
	}
	m.Size(m.w, m.h)
}

// Busy reports whether all keys belong to something being typed.
func (m *Model) Busy() bool { return m.typing != nil }

// Accept takes what is being typed, if anything is; false when it was refused.
// A new entry left as it was offered is none.
func (m *Model) Accept() bool {
	if !m.Busy() {
		return true
	}
	if m.typing.Touched() {
		if err := m.enter(entry(m.typing.Value())); err != nil {
			m.problem = err.Error()
			m.Size(m.w, m.h)
			return false
		}
	}
	m.typing, m.problem = nil, ""
	m.Size(m.w, m.h)
	return true
}

func (m *Model) enter(d model.Decision) error {
	if m.of != fresh {
		return m.desk.Reword(m.of, d)
	}
	err := m.desk.Decide(d)
	if err == nil {
		m.Refresh()
		m.roll.To(0)
	}
	return err
}

// entry is a line's first word as the date and the rest as the text.
func entry(s string) model.Decision {
	date, text, _ := strings.Cut(strings.TrimSpace(s), " ")
	return model.Decision{Date: date, Text: strings.TrimSpace(text)}
}

// Notice is a sentence to show to the person, once.
func (m *Model) Notice() string {
	if m.problem != "" {
		return m.problem
	}
	s := m.notice
	m.notice = ""
	return s
}

// Text is the entry under the cursor, for the clipboard.
func (m *Model) Text() string {
	i := m.at()
	if i == fresh {
		return ""
	}
	d := m.log()[i]
	return d.Date + "\t" + d.Text
}
