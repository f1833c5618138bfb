// Package drawing is the page on which a machine is seen to scale, from the
// side and from behind, with the reference beside it on the same scale.
package drawing

import (
	"fmt"
	"strings"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/model/unit"
	"backspan/store/report/elevation"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/raster"
	"backspan/tui/theme"
)

// BackMsg asks the root for the bench.
type BackMsg struct{}

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	rear, whole bool
	w, h        int
	lines       []string
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk) *Model { return &Model{th: t, keys: k, desk: d} }

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtDrawing() }

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	k := m.keys.Drawing
	switch {
	case key.Matches(msg, k.Back):
		return BackMsg{}
	case key.Matches(msg, k.View):
		m.rear = !m.rear
	case key.Matches(msg, k.Zoom):
		m.whole = !m.whole
	default:
		return nil
	}
	m.Refresh()
	return nil
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	if w != m.w || h != m.h {
		m.w, m.h = w, h
		m.Refresh()
	}
}

// View shows the page.
func (m *Model) View() []string { return m.lines }

// subject is one machine on the page.
type subject struct {
	drawing elevation.Drawing
	outcome model.Outcome
	name    string
}

// box is the part of the plane that is shown.
func (s *subject) box(whole bool) elevation.Box {
	if whole {
		return s.drawing.Whole
	}
	return s.drawing.Close
}

func (m *Model) subject(i int, suffix string) (subject, bool) {
	draw := elevation.Side
	if m.rear {
		draw = elevation.Rear
	}
	o := m.desk.OutcomeOf(i)
	d, ok := draw(o)
	return subject{d, o, m.th.Clean(o.Variant) + suffix}, ok
}

// From this width on figures stand beside the picture, and from this height on
// the reference is always drawn too.
const (
	withFigures = 76
	withBoth    = 30
)

// Refresh takes over what changed on the desk.
func (m *Model) Refresh() {
	if m.w <= 0 || m.h <= 1 {
		return
	}
	hand, ok := m.subject(m.desk.Selected, "")
	if !ok {
		m.lines = append([]string{m.th.Heading("Drawing", "", m.w, true)}, m.nothing(hand.outcome)...)
		return
	}
	var ref *subject
	if i := m.desk.Study().ReferenceIndex(); i != m.desk.Selected {
		if s, ok := m.subject(i, " ref"); ok {
			ref = &s
		}
	}
	view, column := m.pictures(&hand, ref)
	m.lines = append([]string{m.heading(column)}, view...)
}

func (m *Model) heading(column float64) string {
	title, extent := "Side elevation", "engine and drive"
	if m.rear {
		title = "From behind"
	}
	if m.whole {
		extent = "whole machine"
	}
	if m.w < withFigures {
		title, _, _ = strings.Cut(title, " elevation")
		extent, _, _ = strings.Cut(extent, " ")
	}
	note := fmt.Sprintf("one column is %.1f mm, one row %.1f", unit.Millimetre.From(column), unit.Millimetre.From(2*column))
	return m.th.Heading(title+", "+extent, note, m.w, true)
}

// nothing says why there is no drawing.
func (m *Model) nothing(o model.Outcome) []string {
	s := "No variant yet."
	if m.desk.Variant() != nil {
		s = "This machine cannot be drawn."
		if r, ok := o.Reading("stack.depth"); ok && !r.Known() {
			s = "This machine cannot be drawn: " + r.Why
		}
	}
	lines := theme.Wrap(m.th.Clean(s), m.w-2)
	for i := range lines {
		lines[i] = "  " + lines[i]
	}
	return lines
}

// pictures lays out what is seen and the figures beside it. column is the
// scale, m.
func (m *Model) pictures(hand, ref *subject) (lines []string, column float64) {
	h, w := m.h-1, m.w
	var figures []string
	if m.w >= withFigures {
		side := min(max(m.w*2/5, 36), 48)
		w = m.w - side - 1
		figures = m.figures(hand, ref, side, h)
	}
	lines, column = m.arrange(hand, ref, w, h)
	if figures == nil {
		return lines, column
	}
	return m.th.Beside(h, theme.Block{Width: w, Lines: lines}, theme.Block{Width: m.w - w - 1, Lines: figures}), column
}

// arrange finds the room for the reference: below, beside, or, in a low window
// where both would be small, as a line in the one picture.
func (m *Model) arrange(hand, ref *subject, w, h int) (lines []string, column float64) {
	alone := m.picture(hand, ref, w, h)
	if ref == nil {
		return alone.draw(hand, nil, false), alone.frame.Column
	}
	below, beside := m.picture(hand, ref, w, h/2), m.picture(hand, ref, (w-1)/2, h)
	switch {
	case beside.frame.Column <= below.frame.Column && (h >= withBoth || beside.frame.Column <= 1.3*alone.frame.Column):
		left := theme.Block{Width: beside.w, Lines: beside.draw(hand, ref, false)}
		right := theme.Block{Width: beside.w, Lines: beside.draw(ref, nil, false)}
		return m.th.Beside(h, left, right), beside.frame.Column
	case h >= withBoth:
		lines = below.draw(hand, ref, false)
		return append(lines, below.draw(ref, nil, false)...), below.frame.Column
	}
	return alone.draw(hand, ref, true), alone.frame.Column
}

func (m *Model) picture(hand, ref *subject, w, h int) picture {
	p := picture{m: m, w: w, h: h, chain: !m.rear && h >= 16}
	p.scale(hand, ref)
	return p
}

// inks gives a tone its ink.
func (m *Model) ink(t elevation.Tone, s elevation.Stroke) theme.Ink {
	switch {
	case t == elevation.Main:
		return m.th.Strong
	case t == elevation.Faint || s == elevation.Dashed:
		return m.th.Quiet
	}
	return theme.Ink{}
}

// strokes are those of the drawing on the screen.
var strokes = map[elevation.Stroke]raster.Stroke{
	elevation.Solid: raster.Solid, elevation.Dashed: raster.Dashed, elevation.Dotted: raster.Dotted, elevation.Chain: raster.Chain,
}
