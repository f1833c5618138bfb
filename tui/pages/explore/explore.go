// Package explore is the page of questions that ask the model many times: over a
// range, what would it take, the best compromises, and how sure the figures are.
// Each question is a few fields in the words that the commands take; the
// answer is worked in the background and stays in sight, marked, when the
// machine has changed since.
package explore

import (
	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/model/explore"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the bench.
type BackMsg struct{}

// SayMsg asks the root to say something until the next key.
type SayMsg struct{ Text string }

// question is one of those that the page asks.
type question int

const (
	overRange question = iota
	whatFor
	compromises
	howSure
	questions
)

var titles = [questions]string{"Over a range", "What would it take", "Best compromises", "How sure"}

var leads = [questions]string{
	"One or two parameters take many values: what becomes of the readings, and which check fails first?",
	"Which values of a parameter bring a reading to a target?",
	"Some parameters are free: which designs pass every check, with none better in one goal and no worse in the others?",
	"Dimensions and methods are in doubt: where will the readings lie, and how often does each check hold?",
}

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	effort  Effort
	at      question
	forms   [questions]form
	answers [questions]*answer
	stopped [questions]string // how far work came that was stopped
	reading bool              // the answer takes the keys, not the fields
	job     *job              // nil when nothing is worked
	known   explore.Base      // the machine in hand
	knownOf machine
	w, h    int
	lines   []string
}

// machine is the variant in hand in one state of the study.
type machine struct {
	study   *model.Study
	variant int
}

// Effort is how long a question is worked unless its fields say otherwise.
type Effort struct {
	explore.Effort     // of a search
	Samples        int // of a tolerance run
}

// Usual is less effort than the commands take: a person waits for the answer.
func Usual() Effort {
	return Effort{explore.Effort{Population: 40, Generations: 24, Runs: 1, Seed: 1}, 2000}
}

// New makes the page.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk, e Effort) *Model {
	return &Model{th: t, keys: k, desk: d, effort: e}
}

// Refresh takes over what changed on the desk. Fields that nobody has touched
// follow the machine in hand; everything else stays as it is.
func (m *Model) Refresh() {
	if m.desk.Variant() != nil {
		m.suggest()
	}
	m.draw()
}

// base is the machine in hand as a question starts from it.
func (m *Model) base() explore.Base {
	if now := (machine{m.desk.Study(), m.desk.Selected}); m.knownOf != now {
		m.known, m.knownOf = explore.NewBase(m.desk.Study(), m.desk.Variant()), now
	}
	return m.known
}

func (m *Model) form() *form { return &m.forms[m.at] }

// answer is the one in sight, nil when there is none.
func (m *Model) answer() *answer { return m.answers[m.at] }

// Busy reports whether all keys belong to something being typed or chosen.
func (m *Model) Busy() bool { return m.form().state != resting && m.desk.Variant() != nil }

// Place is where the person stands.
func (m *Model) Place() keymap.Place {
	switch f := m.form(); {
	case f.state == typing:
		return m.keys.AtEditor()
	case f.state == choosing:
		return m.keys.AtChooser()
	case m.reading && m.answer() == nil:
		return m.keys.AtUnanswered()
	case m.reading:
		return m.keys.AtAnswer(m.answer().designs != nil)
	}
	return m.keys.AtQuestionForm()
}

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	if m.desk.Variant() == nil {
		if key.Matches(msg, m.keys.Explore.Back) {
			return BackMsg{}
		}
		return nil
	}
	out := m.route(msg)
	m.draw()
	return out
}

func (m *Model) route(msg tea.KeyMsg) tea.Msg {
	k := m.keys.Explore
	switch {
	case m.Busy():
		m.fill(msg)
	case key.Matches(msg, k.Next):
		m.turn(1)
	case key.Matches(msg, k.Previous):
		m.turn(-1)
	case key.Matches(msg, k.Ask):
		m.ask()
	case key.Matches(msg, k.Turn):
		return m.change()
	case key.Matches(msg, k.Back):
		return m.back()
	case m.reading:
		return m.read(msg)
	default:
		return m.rest(msg)
	}
	return nil
}

// turn goes to another question, to its answer where it has one.
func (m *Model) turn(n int) {
	m.at = (m.at + question(n) + questions) % questions
	m.reading = m.reading && m.answer() != nil
}

// change turns from the fields to the answer, or back.
func (m *Model) change() tea.Msg {
	if m.answer() == nil && !m.working() {
		return SayMsg{"there is no answer yet; " + m.keys.Explore.Ask.Help().Key + " works it out"}
	}
	m.reading = !m.reading
	return nil
}

// back stops what is worked, or leaves the answer, or the page.
func (m *Model) back() tea.Msg {
	switch {
	case m.job != nil:
		m.Stop()
	case m.reading:
		m.reading = false
	default:
		return BackMsg{}
	}
	return nil
}

// read takes a key on the answer.
func (m *Model) read(msg tea.KeyMsg) tea.Msg {
	k, a := m.keys.Explore, m.answer()
	switch {
	case a == nil:
	case key.Matches(msg, k.NextChart):
		a.leap(1)
	case key.Matches(msg, k.PreviousChart):
		a.leap(-1)
	case key.Matches(msg, k.Take) && a.designs != nil:
		return m.take(a)
	default:
		a.roll.Update(msg, m.keys.Walk)
	}
	return nil
}

// take takes the design under the cursor as a new variant.
func (m *Model) take(a *answer) tea.Msg {
	d := a.designs
	if a.roll.Cursor >= len(d.rows) || d.rows[a.roll.Cursor].Refused != "" {
		return SayMsg{"there is no such design to take"}
	}
	found, err := d.found(a.roll.Cursor)
	if err == nil {
		behind := m.desk.Study().Index(a.variantName())
		if behind < 0 {
			behind = m.desk.Selected
		}
		err = m.desk.Adopt(behind, found)
	}
	if err != nil {
		return SayMsg{"not taken: " + err.Error()}
	}
	return nil
}

// Text is the table of the answer for a clipboard.
func (m *Model) Text() string {
	if a := m.answer(); a != nil {
		return a.text()
	}
	return ""
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	if w != m.w || h != m.h {
		m.w, m.h = w, h
		m.draw()
	}
}

// View shows the page.
func (m *Model) View() []string { return m.lines }
