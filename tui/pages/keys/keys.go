// Package keys is the page of help: which keys work where the person stood when
// it was asked for and what the figures are not, a tour, and the words of the
// trade.
package keys

import (
	"fmt"
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

// sheet is one of the page's.
type sheet int

// The sheets, in the order in which Tab walks.
const (
	ofKeys sheet = iota
	ofTour
	ofWords
	sheets
)

// Model is the page.
type Model struct {
	th     *theme.Theme
	keys   keymap.Map
	place  keymap.Place
	sheet  sheet
	screen int // of the tour
	lines  []string
	roll   roll.Model
	w, h   int
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map) *Model { return &Model{th: t, keys: k} }

// Of says of which place the page tells.
func (m *Model) Of(p keymap.Place) {
	m.place, m.sheet, m.screen = p, ofKeys, 0
	m.roll.Offset = 0
	m.Size(m.w, m.h)
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtKeys() }

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	switch {
	case key.Matches(msg, m.keys.Back), key.Matches(msg, m.keys.Everywhere.Keys):
		return BackMsg{}
	case key.Matches(msg, m.keys.Sheets.Next):
		m.turn(1, 0)
	case key.Matches(msg, m.keys.Sheets.Previous):
		m.turn(-1, 0)
	case key.Matches(msg, m.keys.Sheets.Forth):
		m.turn(0, 1)
	case key.Matches(msg, m.keys.Sheets.Before):
		m.turn(0, -1)
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

// turn goes to another sheet, or to another screen of the tour.
func (m *Model) turn(by, screens int) {
	if screens != 0 && m.sheet != ofTour {
		return
	}
	m.sheet = (m.sheet + sheet(by) + sheets) % sheets
	m.screen = min(max(m.screen+screens, 0), len(m.tour())-1)
	m.roll.Offset = 0
	m.Size(m.w, m.h)
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
	switch m.sheet {
	case ofTour:
		return m.paragraphs(m.tour()[m.screen].says, w)
	case ofWords:
		return m.glossary(w)
	}
	return m.sheetOfKeys(w)
}

func (m *Model) paragraphs(ps []string, w int) []string {
	var lines []string
	for _, p := range ps {
		lines = append(lines, "")
		for _, l := range theme.Wrap(m.th.Clean(p), min(w-4, 76)) {
			lines = append(lines, "  "+l)
		}
	}
	return lines
}

func (m *Model) glossary(w int) []string {
	const term = 25
	var lines []string
	for _, d := range words {
		for i, l := range theme.Wrap(m.th.Clean(d.meaning), min(w-term-4, 84)) {
			name := ""
			if i == 0 {
				name = d.term
			}
			lines = append(lines, "  "+m.th.Strong.Paint(name)+m.th.Fit("", term-theme.Width(name))+l)
		}
	}
	return lines
}

func (m *Model) sheetOfKeys(w int) []string {
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
	lines := []string{m.th.Heading(m.title(), m.note(), m.w, true)}
	from := min(m.roll.Offset, len(m.lines))
	for _, l := range m.lines[from:min(from+max(m.h-1, 0), len(m.lines))] {
		lines = append(lines, m.th.Cut(l, m.w))
	}
	return lines
}

func (m *Model) title() string {
	switch m.sheet {
	case ofTour:
		return fmt.Sprintf("Tour, %d of %d: %s", m.screen+1, len(m.tour()), m.tour()[m.screen].title)
	case ofWords:
		return "Words of the trade"
	}
	return "Keys: " + m.place.Name
}

// note says where the rest is.
func (m *Model) note() string {
	k := m.keys.Sheets
	next := k.Next.Help().Key + ": " + []string{"tour", "words", "keys"}[m.sheet]
	switch {
	case m.sheet == ofTour && m.screen < len(m.tour())-1:
		next = k.Forth.Help().Key + ": " + k.Forth.Help().Desc
	case len(m.lines) > m.h-1:
		next = "down for more, " + next
	}
	return next
}
