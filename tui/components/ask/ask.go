// Package ask puts a question at the foot of the screen: one with answers to
// choose from, or one that is answered in words.
package ask

import (
	"strings"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/components/line"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// Answer is one way to answer. A letter of its own answers at once.
type Answer struct {
	Letter string
	Label  string
}

// Reply is what came of a key.
type Reply int

// The replies.
const (
	Waiting Reply = iota // not answered yet
	Given                // answered
	Dropped              // the person does not want to answer
)

// Model is the question. Text answers have no Answers.
type Model struct {
	Question string
	Answers  []Answer
	Problem  string // what was wrong with the answer before

	th     *theme.Theme
	keys   keymap.Map
	chosen int
	line   line.Model
}

// Choice asks which of several answers.
func Choice(t *theme.Theme, k keymap.Map, question string, answers ...Answer) *Model {
	return &Model{Question: question, Answers: answers, th: t, keys: k}
}

// Words asks for a text, with a proposal.
func Words(t *theme.Theme, k keymap.Map, question, proposal string) *Model {
	return &Model{Question: question, th: t, keys: k, line: line.New(proposal, line.Blank)}
}

// Chosen is the index of the answer.
func (m *Model) Chosen() int { return m.chosen }

// Text is the answer in words.
func (m *Model) Text() string { return strings.TrimSpace(m.line.Value()) }

// Place is where the person stands.
func (m *Model) Place() keymap.Place {
	if len(m.Answers) > 0 {
		return m.keys.AtQuestion()
	}
	return m.keys.AtEditor()
}

// Update takes a key.
func (m *Model) Update(msg tea.KeyMsg) Reply {
	if len(m.Answers) == 0 {
		switch {
		case key.Matches(msg, m.keys.Editor.Accept):
			return Given
		case key.Matches(msg, m.keys.Editor.Leave):
			return Dropped
		}
		m.line = m.line.Update(msg)
		return Waiting
	}
	k, n := m.keys.Question, len(m.Answers)
	switch {
	case key.Matches(msg, k.Answer):
		return Given
	case key.Matches(msg, k.Leave):
		return Dropped
	case key.Matches(msg, k.Next):
		m.chosen = (m.chosen + 1) % n
	case key.Matches(msg, k.Previous):
		m.chosen = (m.chosen + n - 1) % n
	default:
		for i, a := range m.Answers {
			if a.Letter == msg.String() {
				m.chosen = i
				return Given
			}
		}
	}
	return Waiting
}

// View shows the question in at most h lines of w cells. The answers come
// whole; where there is no room the text loses its end.
func (m *Model) View(w, h int) []string {
	room := h - 1 - max(len(m.Answers), 1)
	question := theme.Wrap(m.th.Clean(m.Question), w-4)
	problem := m.atMost(theme.Wrap(m.th.Clean(m.Problem), w-4), room-len(question))
	lines := []string{m.th.Heading("Question", "", w, true)}
	for _, l := range problem {
		lines = append(lines, m.th.Fails.Paint("! "+l))
	}
	for _, l := range m.atMost(question, room-len(problem)) {
		lines = append(lines, "  "+m.th.Strong.Paint(l))
	}
	if len(m.Answers) == 0 {
		return append(lines, "  "+m.line.View(m.th, min(w-4, 72)))
	}
	for i, a := range m.Answers {
		mark := "    "
		if i == m.chosen {
			mark = "  " + m.th.Marks.Here + " "
		}
		s := m.th.Fit(mark+m.th.Fit(a.Letter, 4)+m.th.Clean(a.Label), w)
		lines = append(lines, m.th.Row(i == m.chosen, theme.Segment{Text: s}))
	}
	return lines
}

// atMost leaves out the end of a text that has more than n lines.
func (m *Model) atMost(lines []string, n int) []string {
	if n = max(n, 1); len(lines) <= n {
		return lines
	}
	return append(lines[:n-1:n-1], m.th.Marks.Cut)
}
