package form

import (
	"errors"
	"io"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"
	"github.com/muesli/termenv"

	"backspan/model/param"
	"backspan/model/unit"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

// spec stands for a part of a machine.
type spec struct {
	Ribs  int
	Bore  float64
	Made  string
	Kind  string
	Curve [][]float64
}

func (s *spec) params() []param.Param {
	return []param.Param{
		param.Whole(&s.Ribs, "ribs", "Ribs").Within(2, 20),
		param.Number(&s.Bore, "bore", "Bore", unit.Millimetre).Within(-30, 110).Typical(50, 75),
		param.Text(&s.Made, "made", "Made by"),
		param.Choice(&s.Kind, "kind", "Kind", "two-stroke", "four-stroke"),
		param.Table(func() [][]float64 { return s.Curve }, func(r [][]float64) { s.Curve = r }, "curve", "Curve",
			param.Column{Label: "speed", Unit: unit.RPM, Max: 1e4}, param.Column{Label: "power", Unit: unit.Kilowatt, Max: 50}),
	}
}

func (s *spec) fields() []Field {
	var fs []Field
	for _, p := range s.params() {
		fs = append(fs, Field{Param: p, Path: p.Key, Words: p.Options})
	}
	return fs
}

func (s *spec) find(path string) param.Param {
	p, _ := param.Find([]param.Section{{Params: s.params()}}, path)
	return p
}

func (s *spec) Set(path, text string) error   { return s.find(path).Set(text) }
func (s *spec) Step(path string, n int) error { return s.find(path).Step(n) }

func made() (*spec, Model) {
	r := lipgloss.NewRenderer(io.Discard)
	r.SetColorProfile(termenv.Ascii)
	s := &spec{Ribs: 8, Bore: 0.066, Kind: "two-stroke", Curve: [][]float64{{500, 5000}, {600, 7000}}}
	m := New(theme.New(r, false), keymap.Default())
	m.Set("Engine", s.fields())
	m.Size(20)
	return s, m
}

func typed(m *Model, to Target, keys ...string) {
	special := map[string]tea.KeyType{"enter": tea.KeyEnter, "esc": tea.KeyEsc, "right": tea.KeyRight, "ctrl+u": tea.KeyCtrlU, "down": tea.KeyDown}
	for _, k := range keys {
		if t, ok := special[k]; ok {
			m.Update(tea.KeyMsg{Type: t}, to)
			continue
		}
		for _, c := range k {
			m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune{c}}, to)
		}
	}
}

func TestKeysOnRows(t *testing.T) {
	for _, tc := range []struct {
		name, row string
		keys      []string
		want      func(s *spec) bool
	}{
		{"digits begin", "bore", []string{"70", "enter"}, func(s *spec) bool { return s.Bore == 0.070 }},
		{"a point begins", "bore", []string{".25", "enter"}, func(s *spec) bool { return s.Bore == 0.00025 }},
		{"a comma begins", "bore", []string{",5", "enter"}, func(s *spec) bool { return s.Bore == 0.0005 }},
		{"a minus begins", "bore", []string{"-15", "enter"}, func(s *spec) bool { return s.Bore == -0.015 }},
		{"a plus begins", "ribs", []string{"+9", "enter"}, func(s *spec) bool { return s.Ribs == 9 }},
		{"right steps", "ribs", []string{"right"}, func(s *spec) bool { return s.Ribs == 9 }},
		{"bracket steps ten", "ribs", []string{"]"}, func(s *spec) bool { return s.Ribs == 18 }},
		{"esc leaves it", "ribs", []string{"5", "esc"}, func(s *spec) bool { return s.Ribs == 8 }},
		{"signs do nothing to words", "kind", []string{"-", "+", ".", ","}, func(s *spec) bool { return s.Kind == "two-stroke" }},
		{"words are chosen", "kind", []string{"enter", "down", "enter"}, func(s *spec) bool { return s.Kind == "four-stroke" }},
		{"text replaces", "made", []string{"enter", "me", "enter"}, func(s *spec) bool { return s.Made == "me" }},
		{"a table is kept", "curve", []string{"enter", "; 7000 8", "enter"}, func(s *spec) bool { return len(s.Curve) == 3 }},
		{"a table is cleared on purpose", "curve", []string{"enter", "ctrl+u", "enter"}, func(s *spec) bool { return len(s.Curve) == 0 }},
	} {
		s, m := made()
		m.To(tc.row)
		if typed(&m, s, tc.keys...); !tc.want(s) {
			t.Errorf("%s: %+v", tc.name, *s)
		}
	}
}

func TestWhatIsShown(t *testing.T) {
	for _, tc := range []struct {
		name, row string
		w         int
		keys      []string
		wants     []string
	}{
		{"values", "bore", 57, nil, []string{"> Bore", "66 mm", "Ribs", "usual 50 to 75"}},
		{"refusal", "bore", 57, []string{"900", "enter"}, []string{"[900", "! Bore: 900 mm is outside"}},
		{"narrow", "curve", 39, []string{"enter"}, []string{"speed in rpm, power in kW", "> [", "ctrl+u"}},
		{"table", "curve", 57, []string{"enter"}, []string{"speed in rpm, power in kW", "> ["}},
	} {
		s, m := made()
		m.To(tc.row)
		typed(&m, s, tc.keys...)
		lines := m.View(tc.w, true)
		view := strings.Join(lines, "\n")
		for _, want := range tc.wants {
			if !strings.Contains(view, want) {
				t.Errorf("%s lacks %q:\n%s", tc.name, want, view)
			}
		}
		for _, l := range lines {
			if theme.Width(l) > tc.w {
				t.Errorf("%s: %q is wider than %d", tc.name, l, tc.w)
			}
		}
	}
}

func TestTheCursorStaysOnItsParameter(t *testing.T) {
	s, m := made()
	m.To("kind")
	m.Set("Engine", s.fields()[1:])
	if m.Path() != "kind" {
		t.Errorf("it went to %s", m.Path())
	}
}

// refusing takes nothing.
type refusing struct{}

func (refusing) Set(string, string) error { return errors.New("Ribs: no") }
func (refusing) Step(string, int) error   { return errors.New("Ribs: no") }

func TestRefusalKeepsTheEditorOpen(t *testing.T) {
	_, m := made()
	if typed(&m, refusing{}, "5", "enter"); !m.Busy() {
		t.Error("the text is gone")
	}
	if m.Accept(refusing{}) {
		t.Error("accepted all the same")
	}
}
