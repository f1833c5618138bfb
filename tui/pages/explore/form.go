package explore

import (
	"slices"
	"strings"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/tui/components/finder"
	"backspan/tui/components/line"
	"backspan/tui/components/roll"
)

// state is what a form is doing.
type state int

const (
	resting state = iota
	typing
	choosing
)

// spot is a row of a form: the one that asks, a field, or one where a field
// could be added.
type spot struct {
	asks  bool
	field int // −1 where one could be added
	role  role
}

// form is the fields of a question.
type form struct {
	fields []field
	spots  []spot
	roll   roll.Model
	top    int  // line of the page on which the rows begin
	right  bool // the text of a field is in hand, not its subject
	edited bool
	asked  bool
	of     string  // variant of which it was asked
	own    []field // given by the person, while the usual ones stand in their place

	state   state
	line    line.Model
	finder  finder.Model
	keys    []string // of what can be chosen
	refusal string   // why what is typed is not taken, or why the question cannot be asked
}

// set gives the fields; the cursor stays on its row.
func (f *form) set(q question, fields []field) {
	if f.fields == nil {
		f.right = true
	}
	f.fields, f.refusal = fields, ""
	f.lay(q)
}

// lay makes the rows anew.
func (f *form) lay(q question) {
	f.spots = []spot{{asks: true, field: -1}}
	for _, r := range roles[q] {
		n := 0
		for i := range f.fields {
			if f.fields[i].role == r {
				f.spots = append(f.spots, spot{field: i, role: r})
				n++
			}
		}
		if !r.lasting() && n < traits[r].most {
			f.spots = append(f.spots, spot{field: -1, role: r})
		}
	}
	f.roll.Set(len(f.spots), nil)
}

// here is the row under the cursor.
func (f *form) here() spot {
	if f.roll.Cursor >= len(f.spots) {
		return spot{asks: true, field: -1}
	}
	return f.spots[f.roll.Cursor]
}

// onText reports whether Enter on the row types rather than chooses.
func (f *form) onText() bool {
	s := f.here()
	return s.field >= 0 && traits[s.role].text && (f.right || traits[s.role].from == nothing)
}

// rest takes a key while nothing is typed.
func (m *Model) rest(msg tea.KeyMsg) tea.Msg {
	k, f := m.keys.Explore, m.form()
	s := f.here()
	switch {
	case f.roll.Update(msg, m.keys.Walk):
		f.refusal = ""
	case key.Matches(msg, k.Left):
		f.right = false
	case key.Matches(msg, k.Right):
		f.right = true
	case key.Matches(msg, k.Set) && s.asks:
		m.ask()
	case key.Matches(msg, k.Set):
		m.begin()
	case key.Matches(msg, k.Remove):
		return m.remove()
	case key.Matches(msg, k.Usual):
		return m.swap()
	case f.onText() && beginsValue(msg):
		m.begin()
		f.line = f.line.Update(msg)
	}
	return nil
}

// swap puts the usual fields in the place of the person's own, or those back.
// What was given last in their place is kept in turn.
func (m *Model) swap() tea.Msg {
	f := m.form()
	switch {
	case f.own != nil:
		own := f.own
		if f.own = nil; f.edited {
			f.own = f.fields
		}
		f.edited = true
		f.set(m.at, own)
		return SayMsg{"your fields again"}
	case f.edited:
		f.own, f.edited = f.fields, false
		f.set(m.at, m.usualFields(m.at))
		return SayMsg{"the usual fields; " + m.keys.Explore.Usual.Help().Key + " brings yours back"}
	}
	return SayMsg{"these are the usual fields"}
}

// beginsValue reports whether a key can be the first of a value typed.
func beginsValue(msg tea.KeyMsg) bool {
	return msg.Type == tea.KeyRunes && !msg.Alt && !msg.Paste && len(msg.Runes) == 1 && strings.ContainsRune("0123456789.,+-\u2212±", msg.Runes[0])
}

// begin begins to type, or to choose.
func (m *Model) begin() {
	f := m.form()
	f.refusal = ""
	if f.onText() {
		f.state, f.line = typing, line.New(f.fields[f.here().field].text, line.Blank)
		return
	}
	f.state = choosing
	m.offer()
}

func (m *Model) remove() tea.Msg {
	f := m.form()
	s := f.here()
	if s.field < 0 {
		return SayMsg{"there is no field here to take out"}
	}
	if s.role.lasting() {
		return SayMsg{"this field stays; " + m.keys.Explore.Set.Help().Key + " changes it"}
	}
	f.fields = slices.Delete(f.fields, s.field, s.field+1)
	f.edited, f.refusal = true, ""
	f.lay(m.at)
	return nil
}

// fill takes a key while something is typed or chosen.
func (m *Model) fill(msg tea.KeyMsg) {
	f := m.form()
	if f.state == choosing {
		switch f.finder.Update(msg) {
		case finder.Left:
			f.state = resting
		case finder.Chosen:
			m.chosen(f.keys[f.finder.At()])
		case finder.None:
		}
		return
	}
	switch k := m.keys.Editor; {
	case key.Matches(msg, k.Accept):
		m.accept()
	case key.Matches(msg, k.Leave):
		f.state, f.refusal = resting, ""
	default:
		f.line = f.line.Update(msg)
	}
}

// accept takes what is typed. A text that says nothing stays where it is, with
// the reason.
func (m *Model) accept() {
	f := m.form()
	was := &f.fields[f.here().field]
	now := *was
	if f.line.Touched() {
		now.text, now.origin = f.line.Value(), ""
	}
	if err := now.check(m.base()); err != nil {
		f.refusal = err.Error()
		return
	}
	f.edited = f.edited || now != *was
	*was = now
	f.state, f.refusal = resting, ""
}

// chosen takes the subject of a field, of a new one where one could be added.
func (m *Model) chosen(subject string) {
	f := m.form()
	s := f.here()
	now := usual(m.base(), s.role, subject)
	f.state, f.edited = resting, true
	if s.field >= 0 {
		if f.fields[s.field].key != subject {
			f.fields[s.field] = now
		}
		return
	}
	f.fields = append(f.fields, now)
	f.lay(m.at)
	for i, at := range f.spots {
		if at.field == len(f.fields)-1 {
			f.roll.To(i)
		}
	}
	f.right = true
}
