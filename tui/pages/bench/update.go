package bench

import (
	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model/explore"
	"backspan/tui/components/line"
	"backspan/tui/desk"
	"backspan/tui/keymap"
)

// DeleteMsg asks the root to ask whether the variant shall go.
type DeleteMsg struct{ Variant int }

// Place is where the person stands.
func (m *Model) Place() keymap.Place {
	switch {
	case m.naming != nil:
		return m.keys.AtEditor()
	case m.form.Busy():
		return m.form.Place()
	}
	switch m.focus {
	case Variants:
		return m.keys.AtVariants()
	case Parts:
		return m.keys.AtParts()
	case Readings:
		return m.keys.AtReadings()
	case Checks:
		return m.keys.AtChecks()
	}
	return m.keys.AtForm()
}

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	before := m.desk.Revision()
	out := m.route(msg)
	if m.desk.Revision() != before {
		m.Refresh()
	}
	return out
}

func (m *Model) route(msg tea.KeyMsg) tea.Msg {
	if m.naming != nil {
		m.name(msg)
		return nil
	}
	if m.form.Busy() {
		m.form.Update(msg, m.target())
		return nil
	}
	if m.atPanes(msg) {
		return nil
	}
	switch m.focus {
	case Variants:
		return m.atVariants(msg)
	case Parts:
		m.atParts(msg)
	case Form:
		if !m.form.Update(msg, m.target()) && key.Matches(msg, m.keys.Form.Back) {
			m.look(Parts)
		}
	case Readings:
		if !m.readings.Update(msg) && key.Matches(msg, m.keys.Form.Back) {
			m.look(Form)
		}
	case Checks:
		if !m.checks.Update(msg) && key.Matches(msg, m.keys.Form.Back) {
			m.look(Form)
		}
	}
	return nil
}

// look moves the focus.
func (m *Model) look(p Pane) {
	m.focus = (p + panes) % panes
	m.Size(m.w, m.h)
}

func (m *Model) atPanes(msg tea.KeyMsg) bool {
	k := m.keys.Panes
	switch {
	case key.Matches(msg, k.Next):
		m.look(m.focus + 1)
	case key.Matches(msg, k.Previous):
		m.look(m.focus - 1)
	case key.Matches(msg, k.NextPart):
		m.nextPart(1)
	case key.Matches(msg, k.PreviousPart):
		m.nextPart(-1)
	case key.Matches(msg, k.Moved):
		m.readings.MovedOnly()
		if m.focus < Readings {
			m.look(Readings)
		}
	default:
		return false
	}
	return true
}

// nextPart goes to the next part, or one before: of the readings where these have
// the focus, else of what can be set.
func (m *Model) nextPart(n int) {
	if m.focus == Readings {
		m.readings.Leap(n)
		return
	}
	m.parts.Step(n)
	m.refreshForm()
	m.form.Top()
}

// Take takes another variant in hand.
func (m *Model) Take(i int) {
	m.desk.Select(i)
	m.Refresh()
}

func (m *Model) atParts(msg tea.KeyMsg) {
	switch k := m.keys.Parts; {
	case key.Matches(msg, k.Into):
		m.look(Form)
	case key.Matches(msg, k.Back):
		m.look(Variants)
	default:
		m.walkParts(func() { m.parts.Update(msg) })
	}
}

// walkParts moves the cursor among the parts; the form follows.
func (m *Model) walkParts(move func()) {
	was, _ := m.parts.Key()
	move()
	if now, _ := m.parts.Key(); now != was {
		m.refreshForm()
		m.form.Top()
	}
}

func (m *Model) atVariants(msg tea.KeyMsg) tea.Msg {
	k, i := m.keys.Variants, m.desk.Selected
	var err error
	switch {
	case key.Matches(msg, k.Into):
		m.look(Parts)
	case key.Matches(msg, k.Duplicate):
		err = m.desk.Duplicate(i)
	case key.Matches(msg, k.Add):
		err = m.desk.Add()
	case key.Matches(msg, k.Rename):
		if v := m.desk.Variant(); v != nil {
			l := line.New(v.Name, line.Blank)
			m.naming, m.problem = &l, ""
		}
	case key.Matches(msg, k.Delete):
		if m.desk.Variant() != nil {
			return DeleteMsg{i}
		}
	case key.Matches(msg, k.MoveUp):
		err = m.desk.Move(i, -1)
	case key.Matches(msg, k.MoveDown):
		err = m.desk.Move(i, 1)
	case key.Matches(msg, k.Reference):
		err = m.desk.MakeReference(i)
	default:
		if m.variants.Update(msg) {
			if i, ok := m.variants.Key(); ok {
				m.Take(i)
			}
		}
	}
	if err != nil {
		m.notice = err.Error()
	}
	return nil
}

func (m *Model) name(msg tea.KeyMsg) {
	switch k := m.keys.Editor; {
	case key.Matches(msg, k.Accept):
		m.acceptName()
	case key.Matches(msg, k.Leave):
		m.naming, m.problem = nil, ""
	default:
		l := m.naming.Update(msg)
		m.naming = &l
	}
}

func (m *Model) acceptName() bool {
	if m.naming.Touched() {
		if err := m.desk.Rename(m.desk.Selected, m.naming.Value()); err != nil {
			m.problem = err.Error()
			return false
		}
	}
	m.naming, m.problem = nil, ""
	return true
}

// Accept takes what is being typed, if anything is; false when it was refused.
func (m *Model) Accept() bool {
	before := m.desk.Revision()
	ok := true
	if m.naming != nil {
		ok = m.acceptName()
	} else if m.form.Busy() {
		ok = m.form.Accept(m.target())
	}
	if m.desk.Revision() != before {
		m.Refresh()
	}
	return ok
}

// Notice is a sentence to show to the person, once.
func (m *Model) Notice() string {
	if m.problem != "" {
		return m.problem
	}
	s := m.notice
	m.notice = ""
	return s
}

// Show leads to where an edit was made.
func (m *Model) Show(p desk.Place) {
	m.Refresh()
	if p.Path == "" {
		return
	}
	for _, s := range m.desk.Sections(p.Variant) {
		for _, q := range s.Params {
			if s.Path(q) == p.Path {
				m.parts.To(part{p.Variant == desk.Shared, s.Key})
				m.refreshForm()
				m.form.To(p.Path)
				return
			}
		}
	}
}

// Open leads to a parameter, with the focus on it.
func (m *Model) Open(p desk.Place) {
	m.Show(p)
	m.look(Form)
}

// OpenFigure leads to a reading or a check, with the focus on it.
func (m *Model) OpenFigure(of explore.Subject) {
	m.Refresh()
	if of.Check {
		m.look(Checks)
		m.checks.To(of.Key)
		return
	}
	m.look(Readings)
	m.readings.To(of.Key)
}

// Subject is the reading or the check under the cursor of the pane with the
// focus; false in other panes.
func (m *Model) Subject() (explore.Subject, bool) {
	key := ""
	switch m.focus {
	case Readings:
		key = m.readings.Key()
	case Checks:
		key = m.checks.Key()
	}
	return explore.Subject{Check: m.focus == Checks, Key: key}, key != ""
}

// Value is the place of the value under the cursor of the form; false when another
// pane has the focus.
func (m *Model) Value() (desk.Place, bool) {
	variant, _ := m.scope()
	path := m.form.Path()
	return desk.Place{Variant: variant, Path: path}, m.focus == Form && path != ""
}

// Text is what is under the cursor, for a clipboard; empty where there is no
// value.
func (m *Model) Text() string {
	switch m.focus {
	case Variants:
		if v := m.desk.Variant(); v != nil {
			return v.Name
		}
	case Form:
		return m.form.Text()
	case Readings:
		return m.readings.Text()
	case Checks:
		return m.checks.Text()
	}
	return ""
}
