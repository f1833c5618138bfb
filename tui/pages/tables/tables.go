// Package tables is the page of what is better read as a table than as single
// figures, for the variant in hand.
package tables

import (
	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"

	"backspan/model"
	"backspan/store/report"
	"backspan/tui/components/roll"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the bench.
type BackMsg struct{}

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	lines []line
	roll  roll.Model
	wide  int // the widest line
	pan   int // cells scrolled out at the left
	w, h  int
}

// line is one line of the page; text scrolls sideways, what is said about it
// does not.
type line struct {
	text  string
	ink   theme.Ink
	title bool
	still bool
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk) *Model {
	return &Model{th: t, keys: k, desk: d}
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtTables() }

// Refresh takes over what changed on the desk.
func (m *Model) Refresh() {
	m.lines, m.wide = nil, 0
	if m.desk.Variant() == nil {
		m.say("no variant yet")
	} else if blocks := report.Tables(m.desk.Outcome(), m.desk.Study().Currency, m.splits()...); len(blocks) > 0 {
		for _, b := range blocks {
			m.put(b)
		}
	} else {
		m.say("this variant has no tables")
	}
	m.roll.Set(len(m.lines), nil)
	m.Size(m.w, m.h)
}

// splits are the differences from the reference, piece by piece; the reference
// itself has none.
func (m *Model) splits() []report.Split {
	ref, own := m.desk.ReferenceOutcome(), m.desk.Outcome()
	if ref.Variant == own.Variant {
		return nil
	}
	return []report.Split{{From: ref.Variant, To: own.Variant, Feel: model.SplitFeel(m.desk.Study(), &ref, &own)}}
}

func (m *Model) say(s string) { m.lines = append(m.lines, line{text: "  " + s, still: true}) }

func (m *Model) put(b report.Block) {
	if len(m.lines) > 0 {
		m.lines = append(m.lines, line{still: true})
	}
	m.wrap(b.Title, m.th.Strong, true)
	m.row(b.Head, m.th.Quiet)
	for _, r := range b.Rows {
		m.row(r, theme.Ink{})
	}
	if b.Note != "" {
		m.wrap(b.Note, m.th.Quiet, false)
	}
}

func (m *Model) row(s string, ink theme.Ink) {
	s = m.th.Clean(s)
	m.wide = max(m.wide, theme.Width(s))
	m.lines = append(m.lines, line{text: s, ink: ink})
}

// wrap breaks what would not fit; titles begin where Tab stops.
func (m *Model) wrap(s string, ink theme.Ink, title bool) {
	for i, l := range theme.Wrap(m.th.Clean(s), max(m.w-2, 20)) {
		m.lines = append(m.lines, line{text: " " + l, ink: ink, title: title && i == 0, still: true})
	}
}

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	k, half := m.keys.Tables, max(m.w/4, 1)
	switch {
	case key.Matches(msg, k.Back):
		return BackMsg{}
	case key.Matches(msg, k.Left):
		m.pan -= half
	case key.Matches(msg, k.Right):
		m.pan += half
	case key.Matches(msg, k.Next):
		m.leap(1)
	case key.Matches(msg, k.Previous):
		m.leap(-1)
	default:
		m.scroll(msg)
	}
	m.clamp()
	return nil
}

func (m *Model) scroll(msg tea.KeyMsg) {
	w := m.keys.Walk
	switch {
	case key.Matches(msg, w.Up):
		m.roll.Offset--
	case key.Matches(msg, w.Down):
		m.roll.Offset++
	case key.Matches(msg, w.HalfUp):
		m.roll.Offset -= max(m.room()/2, 1)
	case key.Matches(msg, w.HalfDown):
		m.roll.Offset += max(m.room()/2, 1)
	case key.Matches(msg, w.Top):
		m.roll.Offset = 0
	case key.Matches(msg, w.Bottom):
		m.roll.Offset = len(m.lines)
	}
}

// leap goes to the next title, or to one before.
func (m *Model) leap(step int) {
	for i := m.roll.Offset + step; i >= 0 && i < len(m.lines); i += step {
		if m.lines[i].title {
			m.roll.Offset = i
			return
		}
	}
}

func (m *Model) room() int { return max(m.h-1, 0) }

func (m *Model) clamp() {
	m.roll.Offset = min(max(m.roll.Offset, 0), max(len(m.lines)-m.room(), 0))
	m.pan = min(max(m.pan, 0), max(m.wide-m.w, 0))
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	wrapped := w != m.w
	m.w, m.h = w, h
	if wrapped {
		m.Refresh()
		return
	}
	m.roll.Cursor = m.roll.Offset // no row is under a cursor here; the window stays where it is
	m.roll.Height(m.room())
	m.clamp()
}

// View shows the page.
func (m *Model) View() []string {
	note := m.roll.Note()
	if m.wide > m.w {
		note = m.th.Clean("← → for more  ") + note
	}
	lines := []string{m.th.Heading("Tables", note, m.w, true)}
	from, to := m.roll.Window()
	for _, l := range m.lines[from:to] {
		text := l.text
		if !l.still {
			text = ansi.TruncateLeft(text, m.pan, "")
		}
		lines = append(lines, l.ink.Paint(m.th.Cut(text, m.w)))
	}
	return lines
}
