// Package weights is the page on which variants are ranked by what counts for
// the person: readings with weights, and how firm the order is.
package weights

import (
	"slices"

	"github.com/charmbracelet/bubbles/key"
	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/model/explore"
	"backspan/model/reading"
	"backspan/tui/components/figure"
	"backspan/tui/components/headline"
	"backspan/tui/components/readings"
	"backspan/tui/components/roll"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// BackMsg asks the root for the bench.
type BackMsg struct{}

// most is the greatest weight: one figure to type.
const most = 9

// row is a reading that could count, or a heading when it has no key.
type row struct {
	heading string
	key     string
	label   string
	best    string // the best value and the variant that has it
}

// Model is the page.
type Model struct {
	th   *theme.Theme
	keys keymap.Map
	desk *desk.Desk

	weights  map[string]int
	counted  bool // only what counts is shown
	rows     []row
	standing []explore.Standing
	roll     roll.Model
	w, h     int
}

// New makes the page; what the headline shows counts alike at first.
func New(t *theme.Theme, k keymap.Map, d *desk.Desk) *Model {
	m := &Model{th: t, keys: k, desk: d, counted: true, weights: map[string]int{}}
	for _, key := range headline.Keys() {
		m.weights[key] = 1
	}
	return m
}

// Place is where the person stands.
func (m *Model) Place() keymap.Place { return m.keys.AtWeights() }

func (m *Model) outcomes() []model.Outcome { return m.desk.Comparison().Outcomes }

// Refresh takes over what changed on the desk.
func (m *Model) Refresh() {
	was := m.at().key
	m.rows = nil
	var ofAPart []row
	part := ""
	flush := func() {
		if len(ofAPart) > 0 {
			m.rows = append(append(m.rows, row{heading: part}), ofAPart...)
		}
		ofAPart = nil
	}
	for _, r := range m.candidates() {
		if p := readings.Part(r.key); p != part {
			flush()
			part = p
		}
		ofAPart = append(ofAPart, r)
	}
	flush()
	m.roll.Set(len(m.rows), func(i int) bool { return m.rows[i].heading != "" })
	for i, r := range m.rows {
		if was != "" && r.key == was {
			m.roll.To(i)
		}
	}
	m.decide()
	m.Size(m.w, m.h)
}

// candidates are the readings with a better and a worse in which the variants
// differ, those of a part together.
func (m *Model) candidates() []row {
	var order []string
	of := map[string][]row{}
	for _, q := range m.desk.Comparison().Readings {
		if m.counted && m.weights[q.Key] == 0 {
			continue
		}
		if best, ok := m.best(q.Cells); ok {
			p := readings.Part(q.Key)
			if of[p] == nil {
				order = append(order, p)
			}
			of[p] = append(of[p], row{key: q.Key, label: q.Label, best: best})
		}
	}
	var rows []row
	for _, p := range order {
		rows = append(rows, of[p]...)
	}
	return rows
}

// best is the best value with the variant that has it; false when the reading
// tells no two variants apart.
func (m *Model) best(cells []reading.Reading) (string, bool) {
	at, differs := -1, false
	for i, r := range cells {
		if r.Key == "" || !r.Known() || r.Better == reading.Neither {
			continue
		}
		if at >= 0 && cells[at].Value != r.Value {
			differs = true
		}
		if at < 0 || cells[at].Improves(r) > 0 {
			at = i
		}
	}
	if !differs {
		return "", false
	}
	return figure.Text(cells[at], m.desk.Study().Currency) + ", " + m.desk.Study().Variants[at].Name, true
}

func (m *Model) decide() {
	keys := make([]string, 0, len(m.weights))
	for k := range m.weights {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	var of []explore.Criterion
	for _, k := range keys {
		of = append(of, explore.Criterion{Key: k, Weight: float64(m.weights[k])})
	}
	m.standing = explore.Decide(m.outcomes(), of)
}

func (m *Model) at() row {
	if m.roll.Cursor >= len(m.rows) {
		return row{}
	}
	return m.rows[m.roll.Cursor]
}

// Update takes a key. A returned message is for the root.
func (m *Model) Update(msg tea.KeyMsg) tea.Msg {
	k, r := m.keys.Weights, m.at()
	switch {
	case key.Matches(msg, k.Back):
		return BackMsg{}
	case key.Matches(msg, k.Counted):
		m.counted = !m.counted
		m.Refresh()
	case key.Matches(msg, m.keys.Panes.NextPart):
		m.roll.Leap(1, m.begins)
	case key.Matches(msg, m.keys.Panes.PreviousPart):
		m.roll.Leap(-1, m.begins)
	case r.key == "":
	case key.Matches(msg, k.More):
		m.set(r.key, m.weights[r.key]+1)
	case key.Matches(msg, k.Less):
		m.set(r.key, m.weights[r.key]-1)
	case key.Matches(msg, k.Figure):
		m.set(r.key, int(msg.Runes[0]-'0'))
	default:
		m.roll.Update(msg, m.keys.Walk)
	}
	return nil
}

func (m *Model) begins(i int) bool { return m.rows[i].heading != "" }

func (m *Model) set(key string, weight int) {
	m.weights[key] = min(max(weight, 0), most)
	m.decide()
}

// Text is the order with scores, for a clipboard: a tab between columns.
func (m *Model) Text() string {
	s := ""
	for i, v := range m.standing {
		if i > 0 {
			s += "\n"
		}
		s += m.desk.Study().Variants[v.Variant].Name + "\t" + hundredths(v.Score) + "\t" + hundredths(v.First)
	}
	return s
}

// Size gives the page's room.
func (m *Model) Size(w, h int) {
	m.w, m.h = w, h
	m.roll.Height(h - 2 - m.ranked())
}

// ranked is how many variants of the order are shown.
func (m *Model) ranked() int { return max(min(len(m.standing), (m.h-4)/2), 1) }
