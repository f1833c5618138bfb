package form

import (
	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model/param"
	"backspan/tui/components/line"
	"backspan/tui/components/roll"
)

func (m *Model) begin(f Field) {
	m.refusal = ""
	if len(f.Words) > 0 {
		m.state = choosing
		m.choice = roll.Model{}
		m.choice.Set(len(f.Words), nil)
		m.choice.To(indexOf(f.Words, f.Param.Editable()))
		m.Size(m.height)
		return
	}
	m.state = typing
	m.line = line.New(f.Param.Editable(), breakOf(f.Param))
}

func breakOf(p param.Param) line.Break {
	switch {
	case p.Kind == param.KindTable:
		return line.Rows
	case p.Kind == param.KindText && p.Key == "notes":
		return line.Spelt
	}
	return line.Blank
}

func indexOf(words []string, w string) int {
	for i := range words {
		if words[i] == w {
			return i
		}
	}
	return 0
}

func (m *Model) typed(msg tea.KeyMsg, to Target) {
	switch {
	case key.Matches(msg, m.keys.Editor.Accept):
		m.Accept(to)
	case key.Matches(msg, m.keys.Editor.Leave):
		m.state, m.refusal = resting, ""
	default:
		m.line = m.line.Update(msg)
	}
}

// Accept takes what is typed or chosen, if anything is. It is false when that
// was refused; the text then stays to be mended.
func (m *Model) Accept(to Target) bool {
	f, ok := m.field()
	if !ok || m.state == resting {
		return true
	}
	text := m.line.Value()
	if m.state == choosing {
		text = f.Words[min(m.choice.Cursor, len(f.Words)-1)]
	}
	if m.state == choosing || m.line.Touched() {
		if err := to.Set(f.Path, text); err != nil {
			m.refusal = err.Error()
			return false
		}
	}
	m.state, m.refusal = resting, ""
	return true
}

func (m *Model) choose(msg tea.KeyMsg, to Target) {
	k := m.keys.Picker
	switch {
	case key.Matches(msg, k.Accept):
		m.Accept(to)
	case key.Matches(msg, k.Leave):
		m.state, m.refusal = resting, ""
	case key.Matches(msg, k.Up):
		m.choice.Move(-1)
	case key.Matches(msg, k.Down):
		m.choice.Move(1)
	}
}
