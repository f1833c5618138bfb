package tui

import (
	"fmt"
	"strings"

	"backspan/tui/components/headline"
	"backspan/tui/theme"
)

// The smallest window in which everything can be used.
const (
	leastWidth  = 60
	leastHeight = 16
)

func (r *root) fits() bool { return r.w >= leastWidth && r.h >= leastHeight }

// arrange gives the page in sight its room.
func (r *root) arrange() {
	if !r.fits() {
		return
	}
	r.footing = r.foot()
	r.sight().Size(r.w, r.body())
}

// body is the height left for the page.
func (r *root) body() int { return r.h - 1 - headline.Height(r.w) - len(r.footing) - 1 }

// View paints the window.
func (m Model) View() string {
	defer m.noteFault()
	if m.w <= 0 || m.h <= 0 {
		return ""
	}
	if !m.fits() {
		return m.th.Screen(m.tooSmall(), m.w, m.h)
	}
	lines := append([]string{m.title()}, m.headline()...)
	page := m.sight().View()
	for y := range m.body() {
		line := ""
		if y < len(page) {
			line = page[y]
		}
		lines = append(lines, line)
	}
	lines = append(lines, m.footing...)
	lines = append(lines, m.th.Quiet.Paint(m.footer()))
	return m.th.Screen(lines, m.w, m.h)
}

// footer is the keys of the place; on an ASCII terminal arrows take more room.
func (r *root) footer() string {
	for w := r.w; ; w-- {
		if s := r.th.Clean(r.place().Footer(w, r.keys.Everywhere.Keys)); theme.Width(s) <= r.w {
			return s
		}
	}
}

func (r *root) tooSmall() []string {
	s := fmt.Sprintf("Backspan needs %dx%d, this window is %dx%d. ", leastWidth, leastHeight, r.w, r.h)
	if r.atRest() {
		return theme.Wrap(s+"q leaves; other keys do nothing until the window is larger.", r.w)
	}
	return theme.Wrap(s+"Your edits are kept. Keys do nothing until the window is larger.", r.w)
}

// headline is the strip; empty while no study is chosen.
func (r *root) headline() []string {
	if r.choosing {
		return make([]string, headline.Height(r.w))
	}
	return r.strip.View(r.w)
}

// title names the study, the variant in hand and the state of the file.
func (r *root) title() string {
	if r.choosing {
		return r.th.Strong.Paint("Choose a study")
	}
	state := "saved"
	switch {
	case r.saving:
		state = "saving"
	case r.desk.Unsaved():
		state = "NOT SAVED"
	case r.desk.Path == "":
		state = "in no file yet"
	}
	s := r.desk.Study()
	variant := r.th.Clean(r.desk.InHand())
	if r.desk.Variant() != nil && s.ReferenceIndex() == r.desk.Selected {
		variant += " (reference)"
	}
	room := r.w - len(state) - 2
	variant = r.th.Cut(variant, room*2/3)
	study := r.th.Cut(r.th.Clean(s.Name), room-theme.Width(variant)-3)
	used := theme.Width(study) + 3 + theme.Width(variant)
	ink := r.th.Quiet
	if r.desk.Unsaved() {
		ink = r.th.Thin
	}
	return study + " / " + r.th.Strong.Paint(variant) + strings.Repeat(" ", max(r.w-used-len(state), 1)) + ink.Paint(state)
}

// foot is what is said or asked under the page: a line at least, so that the
// page does not jump, and as many as a fault needs, up to half the window.
func (r *root) foot() []string {
	var lines []string
	switch {
	case r.asked() != nil:
		lines = r.asked().View(r.w, r.h/2)
	case r.problem != "":
		for i, l := range theme.Wrap(r.th.Clean(r.problem), r.w-2) {
			mark := "  "
			if i == 0 {
				mark = "! "
			}
			lines = append(lines, r.th.Fails.Paint(mark+l))
		}
		lines = append(lines, r.th.Quiet.Paint("  esc puts this away"))
	case r.notice.whole:
		lines = theme.Wrap(r.th.Clean(r.notice.text), r.w)
	default:
		tally := r.notice.tally
		return []string{tally + r.th.Short(r.th.Clean(r.notice.text), r.w-theme.Width(tally))}
	}
	if most := r.h / 2; len(lines) > most {
		lines = lines[:most]
	}
	return lines
}
