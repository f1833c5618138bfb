// Package keys is the page that tells which keys work where the person stood
// when it was asked for, and what the figures are not.
package keys

import (
	"strings"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/components/roll"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the page from which the keys were asked for.
type BackMsg struct{}

// cautions concern the real machine.
var cautions = []string{
	"All figures are for design. They are not proof of airworthiness: follow local rules and licensed practice.",
	"Propeller: it maims and kills. Keep people out of its plane and its wash; never run it without its guard.",
	"Fuel: it burns and its vapour explodes. Fill with the engine cold and off, away from flames, in the open.",
	"Noise: at the machine it harms hearing within minutes. Wear ear protection; mind the neighbours.",
	"Hot parts: the exhaust and the head burn skin and harness long after the engine has stopped.",
	"Load on the back: a depth or mass that a check lets pass can still hurt. Try the real weight before you build.",
	`"Holds" means that this sum stays within this limit, no more. "Not rated" means that no limit is known that could be trusted.`,
}

// Model is the page.
type Model struct {
	th    *theme.Theme
	keys  keymap.Map
	place keymap.Place
	lines []string
	roll  roll.Model
	w, h  int
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map) *Model { return &Model{th: t, keys: k} }

// Of says of which place the page tells.
func (m *Model) Of(p keymap.Place) {
	m.place = p
	m.roll.To(0)
	m.Size(m.w, m.h)
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtKeys() }

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	switch {
	case key.Matches(msg, m.keys.Back), key.Matches(msg, m.keys.Everywhere.Keys):
		return BackMsg{}
	case key.Matches(msg, m.keys.Walk.Up):
		m.scroll(-1)
	case key.Matches(msg, m.keys.Walk.Down):
		m.scroll(1)
	case key.Matches(msg, m.keys.Walk.HalfUp), key.Matches(msg, m.keys.Walk.Top):
		m.scroll(-max(m.h/2, 1))
	case key.Matches(msg, m.keys.Walk.HalfDown), key.Matches(msg, m.keys.Walk.Bottom):
		m.scroll(max(m.h/2, 1))
	}
	return nil
}

func (m *Model) scroll(n int) {
	m.roll.Offset = min(max(m.roll.Offset+n, 0), max(len(m.lines)-(m.h-1), 0))
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	m.w, m.h = w, h
	m.lines = m.write(w)
	m.scroll(0)
}

func (m *Model) write(w int) []string {
	lines := m.table(m.place.Own, w)
	if too := m.place.All()[len(m.place.Own):]; len(too) > 0 {
		lines = append(lines, "", "also")
		lines = append(lines, m.table(too, w)...)
	}
	lines = append(lines, "", "Before you build or fly")
	for _, c := range cautions {
		for i, l := range theme.Wrap(m.th.Clean(c), min(w-4, 96)) {
			lead := "    "
			if i == 0 {
				lead = "  ! "
			}
			lines = append(lines, lead+l)
		}
	}
	return lines
}

// table sets keys and what they do in as many columns as fit.
func (m *Model) table(bs []key.Binding, w int) []string {
	const each, keys = 40, 16
	across := max(w/each, 1)
	down := (len(bs) + across - 1) / across
	lines := make([]string, down)
	for i, b := range bs {
		y := i % max(down, 1)
		lines[y] += m.th.Fit("  "+m.th.Fit(keymap.Spelt(b), keys)+" "+b.Help().Desc, each)
	}
	for i := range lines {
		lines[i] = strings.TrimRight(lines[i], " ")
	}
	return lines
}

// View shows the page.
func (m *Model) View() []string {
	note := ""
	if len(m.lines) > m.h-1 {
		note = "down for more"
	}
	lines := []string{m.th.Heading("Keys: "+m.place.Name, note, m.w, true)}
	from := min(m.roll.Offset, len(m.lines))
	for _, l := range m.lines[from:min(from+max(m.h-1, 0), len(m.lines))] {
		lines = append(lines, m.th.Cut(l, m.w))
	}
	return lines
}
