// Package form is the pane in which the values of one part are set.
package form

import (
	"strings"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model/param"
	"backspan/tui/components/figure"
	"backspan/tui/components/line"
	"backspan/tui/components/roll"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// Field is a row of the form.
type Field struct {
	Param     param.Param
	Path      string
	Words     []string // to choose from; empty when the value is typed
	Reference string   // what the reference variant has, when that differs
}

// Target takes what a person sets. An error is a sentence, and then the old
// value stays.
type Target interface {
	Set(path, text string) error
	Step(path string, n int) error
}

// state is what the form is doing.
type state int

const (
	resting state = iota
	typing
	choosing
)

// Model is the pane.
type Model struct {
	Title    string
	Currency string
	Against  string // name of the reference variant

	th      *theme.Theme
	keys    keymap.Map
	fields  []Field
	roll    roll.Model
	state   state
	line    line.Model
	choice  roll.Model
	refusal string
	height  int
}

// New makes an empty form.
func New(t *theme.Theme, k keymap.Map) Model { return Model{th: t, keys: k} }

// Set gives the rows. The cursor stays on its parameter while that is shown.
func (m *Model) Set(title string, fields []Field) {
	was := m.Path()
	m.Title, m.fields = title, fields
	m.roll.Set(len(fields), nil)
	m.To(was)
	m.Size(m.height)
}

// Path is the path of the parameter under the cursor.
func (m *Model) Path() string {
	if f, ok := m.field(); ok {
		return f.Path
	}
	return ""
}

// Text is the value under the cursor with its unit; a table's rows in full.
func (m *Model) Text() string {
	f, ok := m.field()
	switch {
	case !ok:
		return ""
	case f.Param.Kind == param.KindTable:
		return f.Param.Editable()
	}
	return figure.Money(f.Param.Show(), f.Param.Unit, m.Currency)
}

// To puts the cursor on a parameter, if it is shown.
func (m *Model) To(path string) {
	for i, f := range m.fields {
		if f.Path == path {
			m.roll.To(i)
			return
		}
	}
}

// Top puts the cursor on the first row.
func (m *Model) Top() { m.roll.To(0); m.refusal = "" }

func (m *Model) field() (Field, bool) {
	if m.roll.Cursor >= len(m.fields) {
		return Field{}, false
	}
	return m.fields[m.roll.Cursor], true
}

// Busy reports whether the form takes all keys: a value is typed or chosen.
func (m *Model) Busy() bool { return m.state != resting }

// Place is where the person stands.
func (m *Model) Place() keymap.Place {
	switch m.state {
	case typing:
		return m.keys.AtEditor()
	case choosing:
		return m.keys.AtPicker()
	}
	return m.keys.AtForm()
}

// Update takes a key. It is false when the key means nothing to the form.
func (m *Model) Update(msg tea.KeyMsg, to Target) bool {
	switch m.state {
	case typing:
		m.typed(msg, to)
		return true
	case choosing:
		m.choose(msg, to)
		return true
	}
	f, ok := m.field()
	if m.roll.Update(msg, m.keys.Walk) {
		m.refusal = ""
		return true
	}
	if !ok {
		return false
	}
	k := m.keys.Form
	switch {
	case key.Matches(msg, k.Edit):
		m.begin(f)
	case key.Matches(msg, k.More):
		m.step(f, to, 1)
	case key.Matches(msg, k.Less):
		m.step(f, to, -1)
	case key.Matches(msg, k.MuchMore):
		m.step(f, to, coarse(f))
	case key.Matches(msg, k.MuchLess):
		m.step(f, to, -coarse(f))
	case numeric(f.Param) && beginsNumber(msg):
		m.begin(f)
		m.line = m.line.Update(msg)
	default:
		return false
	}
	return true
}

// coarse is ten fine steps; words are taken one by one.
func coarse(f Field) int {
	if numeric(f.Param) {
		return 10
	}
	return 1
}

// numeric reports whether a value is one number.
func numeric(p param.Param) bool { return p.Kind == param.KindNumber || p.Kind == param.KindWhole }

// beginsNumber reports whether a key can be the first of a number that a
// person types.
func beginsNumber(msg tea.KeyMsg) bool {
	return msg.Type == tea.KeyRunes && !msg.Alt && !msg.Paste && len(msg.Runes) == 1 &&
		strings.ContainsRune("0123456789.,+-\u2212", msg.Runes[0])
}

func (m *Model) step(f Field, to Target, n int) {
	m.refusal = ""
	if err := to.Step(f.Path, n); err != nil {
		m.refusal = err.Error()
	}
}

// Size gives the pane's height, heading included.
func (m *Model) Size(h int) {
	m.height = h
	rows := max(h-1-m.detail(), 1)
	m.roll.Height(rows)
	m.choice.Height(max(rows-1, 1))
}

// detail is how many of the pane's lines tell of the row under the cursor.
func (m *Model) detail() int {
	if len(m.fields) == 0 {
		return 0
	}
	return min(max(m.height/3, 3), 8)
}

// Point takes a line of the pane that was pointed at.
func (m *Model) Point(y int) (again bool) { return m.roll.Point(y - 1) }
