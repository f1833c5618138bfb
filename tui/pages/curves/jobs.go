package curves

import (
	"fmt"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/model/explore"
	"backspan/model/reading"
)

// question is what is asked of a machine in the background.
type question int

const (
	lines  question = iota // its curves
	ratios                 // what other ratios would make of it
)

var questions = []question{lines, ratios}

// ratioSteps is how many ratios a chart tries.
const ratioSteps = 25

// subject is a machine as it stands, and what is asked of it. The desk keeps
// the readings of a machine that an edit did not touch, so their address stands
// for the state of the machine.
type subject struct {
	state *reading.Reading
	asked question
}

// answer is what was found.
type answer struct {
	curves []model.Curve
	chart  explore.Chart
	why    string // there is no answer
}

// DoneMsg brings the answer to a question asked in the background.
type DoneMsg struct {
	subject subject
	answer  answer
}

func (m *Model) subject(i int, q question) subject {
	s := subject{asked: q}
	if rs := m.desk.OutcomeOf(i).Readings; len(rs) > 0 {
		s.state = &rs[0]
	}
	return s
}

// waiting is the variants in sight whose answer to the sheet's question is
// still to be found, and how many are in sight.
func (m *Model) waiting() (left []int, all int) {
	shown := m.shown()
	if !sheets[m.sheet].asks {
		return nil, len(shown)
	}
	for _, i := range shown {
		s := m.subject(i, sheets[m.sheet].question)
		if _, ok := m.found[s]; !ok && s.state != nil {
			left = append(left, i)
		}
	}
	return left, len(shown)
}

// Next is the work to be done in the background, nil when there is none or
// some is being done. An edit makes what is being done worthless at once: its
// answer finds no one who asked.
func (m *Model) Next() tea.Cmd {
	left, _ := m.waiting()
	if m.busy || len(left) == 0 {
		return nil
	}
	m.busy = true
	study, subject := m.desk.Study(), m.subject(left[0], sheets[m.sheet].question)
	variant := &study.Variants[left[0]]
	return func() tea.Msg { return DoneMsg{subject, work(study, variant, subject.asked)} }
}

// work shields a person's unsaved study from a fault of the model.
func work(s *model.Study, v *model.Variant, q question) (a answer) {
	defer func() {
		if fault := recover(); fault != nil {
			a = answer{why: fmt.Sprintf("the model stopped with: %v", fault)}
		}
	}()
	if q == lines {
		return answer{curves: model.Curves(s, v)}
	}
	chart, err := explore.Ratios(s, v, 0, 0, ratioSteps)
	if err != nil {
		return answer{why: err.Error()}
	}
	return answer{chart: chart}
}

// Take takes an answer. One to a machine that is no longer as it was is put
// away. The first is shown at once and the others together: each picture has to
// be sent whole.
func (m *Model) Take(msg DoneMsg) {
	m.busy = false
	for i := range m.desk.Study().Variants {
		if m.subject(i, msg.subject.asked) == msg.subject {
			m.found[msg.subject] = msg.answer
		}
	}
	if left, all := m.waiting(); len(left) > 0 && all-len(left) > 1 && len(m.lines) > 0 {
		m.lines[0] = m.heading()
		return
	}
	m.draw()
}
