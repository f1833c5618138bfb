package explore

import (
	"fmt"

	"backspan/model/explore"
	"backspan/tui/components/roll"
	"backspan/tui/theme"
)

// beside is the width from which fields and answer stand side by side, and
// fieldsWide what the fields then take; wordy is that from which progress is
// told in full.
const (
	wordy      = 80
	beside     = 110
	fieldsWide = 56
)

// draw lays the page out.
func (m *Model) draw() {
	if m.w <= 0 || m.h <= 1 {
		return
	}
	h := m.h - 1
	if m.form().state == choosing {
		m.form().finder.Size(m.w, h)
	}
	body := m.body(h) // the heading tells which of its rows are in sight
	m.lines = append([]string{m.heading()}, body...)
}

func (m *Model) body(h int) []string {
	switch {
	case m.desk.Variant() == nil:
		return []string{"  No variant yet."}
	case m.form().state == choosing:
		return m.form().finder.View()
	case m.w >= beside:
		return m.th.Beside(h, theme.Block{Width: fieldsWide, Lines: m.fields(fieldsWide, h)},
			theme.Block{Width: m.w - fieldsWide - 1, Lines: m.found(m.w-fieldsWide-1, h)})
	case m.reading:
		return m.found(m.w, h)
	}
	return m.fields(m.w, h)
}

func (m *Model) heading() string {
	note := fmt.Sprintf("question %d of %d", m.at+1, questions)
	f := m.form()
	switch {
	case f.state == choosing:
		return m.th.Heading(titles[m.at]+": "+traits[f.here().role].word, f.finder.Note(), m.w, true)
	case m.job != nil:
		note = m.progress() + "; " + m.keys.Explore.Back.Help().Key + " stops it"
	case m.desk.Variant() != nil && m.rows().Note() != "":
		note = m.rows().Note() + "; " + note
	}
	return m.th.Heading(titles[m.at], note, m.w, true)
}

// rows are those that the keys walk through.
func (m *Model) rows() *roll.Model {
	if a := m.answer(); m.reading && a != nil {
		return &a.roll
	}
	return &m.form().roll
}

// progress is how far the work is; of a question that is not in sight, which.
func (m *Model) progress() string {
	what := "working"
	if m.job.question != m.at {
		what = titles[m.job.question]
	}
	s := fmt.Sprintf("%s, %d %%", what, 100*m.job.done/max(m.job.steps, 1))
	if m.w < wordy {
		return s
	}
	return s + fmt.Sprintf(" of %d %s", m.job.steps, m.job.what)
}

// found is the answer in w x h cells.
func (m *Model) found(w, h int) []string {
	a := m.answer()
	if a == nil {
		return m.unanswered(w)
	}
	lines := m.status(a, w, max(h/6, 3))
	if a.fault != "" {
		return lines
	}
	if a.sure != nil {
		return append(lines, m.sureView(a, w, h-len(lines))...)
	}
	return append(lines, m.designsView(a, w, h-len(lines))...)
}

func (m *Model) unanswered(w int) []string {
	k := m.keys.Explore
	switch {
	case m.working():
		return []string{"", "  " + m.th.Cut(m.progress()+"; the answer comes here", w-2)}
	case m.stopped[m.at] != "":
		return []string{"", "  " + m.th.Cut(m.stopped[m.at]+"; "+k.Ask.Help().Key+" begins again", w-2)}
	}
	return []string{"", "  " + m.th.Quiet.Paint(m.th.Cut("No answer yet; "+k.Ask.Help().Key+" works it out.", w-2))}
}

// status says of which machine the answer tells and what it comes to, in at
// most so many lines.
func (m *Model) status(a *answer, w, most int) []string {
	lead := a.standing(m.desk)
	if m.stopped[m.at] != "" {
		lead += ". Asked again, but " + m.stopped[m.at]
	}
	var lines []string
	text := a.note
	if a.fault != "" {
		text = "! " + a.fault
	}
	for _, l := range theme.Wrap(m.th.Clean(lead+". "+text), w-2) {
		lines = append(lines, " "+l)
	}
	if len(lines) > most {
		rest := m.th.Cut(lines[most-1]+" "+m.th.Marks.Cut, w)
		lines = append(lines[:most-1], rest)
	}
	lines[0] = m.th.Strong.Paint(lines[0])
	return append(lines, " "+m.th.Quiet.Paint(m.th.Cut(explore.Caution, w-2)))
}
