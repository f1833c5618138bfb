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
	h := r.body()
	switch r.page {
	case atBench:
		r.bench.Size(r.w, h)
	case atSideBySide:
		r.beside.Size(r.w, h)
	case atStudies:
		r.studies.Size(r.w, h)
	case atKeys:
		r.help.Size(r.w, h)
	}
}

// body is the height left for the page.
func (r *root) body() int { return r.h - 1 - headline.Height(r.w) - len(r.foot()) - 1 }

// View paints the window.
func (m Model) View() string {
	if m.w <= 0 || m.h <= 0 {
		return ""
	}
	if !m.fits() {
		return m.th.Screen(m.tooSmall(), m.w, m.h)
	}
	lines := append([]string{m.title()}, m.strip.View(m.w)...)
	page := m.inSight()
	for y := range m.body() {
		line := ""
		if y < len(page) {
			line = page[y]
		}
		lines = append(lines, line)
	}
	lines = append(lines, m.foot()...)
	lines = append(lines, m.th.Quiet.Paint(m.th.Cut(m.place().Footer(m.w, m.keys.Everywhere.Keys), m.w)))
	return m.th.Screen(lines, m.w, m.h)
}

func (r *root) inSight() []string {
	switch r.page {
	case atSideBySide:
		return r.beside.View()
	case atStudies:
		return r.studies.View()
	case atKeys:
		return r.help.View()
	}
	return r.bench.View()
}

func (r *root) tooSmall() []string {
	lines := theme.Wrap(fmt.Sprintf("Backspan needs 60x16, this window is %dx%d.", r.w, r.h), r.w)
	if r.desk.Unsaved() || r.bench.Busy() {
		return append(lines, theme.Wrap("Your edits are kept.", r.w)...)
	}
	return append(lines, theme.Wrap("q leaves.", r.w)...)
}

// title names the study, the variant in hand and the state of the file.
func (r *root) title() string {
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
	variant := "no variant"
	if v := r.desk.Variant(); v != nil {
		variant = r.th.Clean(v.Name)
		if s.ReferenceIndex() == r.desk.Selected {
			variant += " (reference)"
		}
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
	case r.question != nil:
		lines = r.question.View(r.w)
	case r.problem != "":
		for i, l := range theme.Wrap(r.th.Clean(r.problem), r.w-2) {
			mark := "  "
			if i == 0 {
				mark = "! "
			}
			lines = append(lines, r.th.Fails.Paint(mark+l))
		}
		lines = append(lines, r.th.Quiet.Paint("  esc puts this away"))
	default:
		return []string{r.th.Cut(r.th.Clean(r.notice), r.w)}
	}
	if most := r.h / 2; len(lines) > most {
		lines = lines[:most]
	}
	return lines
}
