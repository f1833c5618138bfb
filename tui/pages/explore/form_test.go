package explore

import (
	"io"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/lipgloss"
	"github.com/muesli/termenv"

	"backspan/model"
	"backspan/model/explore"
	"backspan/tui/desk"
	"backspan/tui/keymap"
	"backspan/tui/theme"
)

func page() *Model {
	r := lipgloss.NewRenderer(io.Discard)
	r.SetColorProfile(termenv.Ascii)
	m := New(theme.New(r, false), keymap.Default(), desk.New(model.Sample(), ""), Effort{explore.Effort{Population: 4, Generations: 1, Runs: 1, Seed: 1}, 100})
	m.Refresh()
	m.Size(80, 18)
	return m
}

var special = map[string]tea.KeyType{"enter": tea.KeyEnter, "esc": tea.KeyEsc, "down": tea.KeyDown, "up": tea.KeyUp, "left": tea.KeyLeft,
	"right": tea.KeyRight, "tab": tea.KeyTab, "end": tea.KeyEnd, "home": tea.KeyHome, "ctrl+u": tea.KeyCtrlU}

func (m *Model) keysTyped(keys ...string) {
	for _, k := range keys {
		if t, ok := special[k]; ok {
			m.Update(tea.KeyMsg{Type: t})
			continue
		}
		for _, c := range k {
			m.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune{c}})
		}
	}
}

// await works the question in sight to its end.
func (m *Model) await(t *testing.T) {
	t.Helper()
	for m.job != nil {
		told, ok := m.Next()().(ToldMsg)
		if !ok {
			t.Fatal("the work ended without an answer")
		}
		m.Take(told)
	}
}

func shownBy(m *Model) string { return strings.Join(m.View(), "\n") }

// What stands in the fields is what a command takes: nothing is read twice.
func TestFieldsAreInTheWordsOfTheCommands(t *testing.T) {
	m := page()
	for _, tc := range []struct {
		field field
		want  string
	}{
		{field{role: over, key: "propeller.pitch", text: " 450 mm..800 mm/8 "}, "propeller.pitch=450 mm..800 mm/8"},
		{field{role: over, key: "propeller.pitch"}, "propeller.pitch"},
		{field{role: show, key: "stack.depth", text: "ignored"}, "stack.depth"},
		{field{role: goal, key: "stack.depth", text: "less"}, "stack.depth=less"},
		{field{role: doubt, key: "propeller.pitch", text: "±2 % normal"}, "propeller.pitch=±2 % normal"},
		{field{role: population, text: " 60 "}, "60"},
	} {
		if got := tc.field.grammar(); got != tc.want {
			t.Errorf("%+v: %q, want %q", tc.field, got, tc.want)
		}
		if err := tc.field.check(m.base()); err != nil {
			t.Errorf("%+v: %v", tc.field, err)
		}
	}
}

func TestRefusedFieldsSayWhy(t *testing.T) {
	b := page().base()
	for _, tc := range []struct {
		field field
		want  string
	}{
		{field{role: over, key: "propeller.pitch", text: "450 kg..800 mm"}, "kg"},
		{field{role: over, key: "propeller.pitch", text: "450..9000 mm"}, "outside"},
		{field{role: over, key: "no.such"}, "there is no parameter"},
		{field{role: show, key: "no.such"}, "there is no reading"},
		{field{role: change, key: "propeller.pitch", text: "500 mm"}, "give the range"},
		{field{role: target, key: "propeller.static_thrust", text: "a lot"}, "target of Standing thrust"},
		{field{role: free, key: "drive.kind", text: "steam"}, "not a choice"},
		{field{role: goal, key: "stack.depth", text: "deeper"}, "neither less nor more"},
		{field{role: least, key: "flight.climb_rate", text: "3 kg"}, "at least"},
		{field{role: most, key: "flight.climb_rate", text: ""}, "at most"},
		{field{role: doubt, key: "propeller.pitch", text: "±0"}, "more than nothing"},
		{field{role: samples, text: "many"}, "samples: \"many\" is not a whole number"},
		{field{role: seed, text: "-1"}, "not a whole number"},
	} {
		if err := tc.field.check(b); err == nil || !strings.Contains(err.Error(), tc.want) {
			t.Errorf("%+v: %v, want %q", tc.field, err, tc.want)
		}
	}
}

func TestBadInputKeepsTheText(t *testing.T) {
	m := page()
	m.keysTyped("down", "enter", "5 kg..9", "enter")
	if !m.Busy() || !strings.Contains(shownBy(m), "[5 kg..9") || !strings.Contains(shownBy(m), "! Driven pulley") {
		t.Fatal(shownBy(m))
	}
	if m.keysTyped("r"); !strings.Contains(shownBy(m), "[5 kg..9r") || m.job != nil {
		t.Fatal("a letter of what is typed is a command", shownBy(m))
	}
	m.keysTyped("ctrl+u", "180..200 mm/3", "enter")
	if m.Busy() || !strings.Contains(shownBy(m), "180..200 mm/3") {
		t.Fatal(shownBy(m))
	}
	m.keysTyped("2", "esc")
	if !strings.Contains(shownBy(m), "180..200 mm/3") {
		t.Fatal("Esc does not leave it as it was", shownBy(m))
	}
	m.keysTyped("r")
	m.await(t)
	if a := m.answer(); len(a.designs.rows) != 3 {
		t.Errorf("%d designs", len(a.designs.rows))
	}
}

func TestFieldsComeAndGo(t *testing.T) {
	m := page()
	m.keysTyped("down", "down", "enter", "nompi", "enter") // one more parameter
	if got := m.form().values(over); len(got) != 2 || got[1] != "propeller.pitch=450 mm..800 mm" {
		t.Fatal(got)
	}
	m.keysTyped("left", "enter", "diam bl", "esc")
	if got := m.form().values(over); got[1] != "propeller.pitch=450 mm..800 mm" {
		t.Fatal(got)
	}
	m.keysTyped("left", "enter", "no of bl", "esc", "x")
	if got := m.form().values(over); len(got) != 1 {
		t.Fatal(got)
	}
	m.keysTyped("up", "x", "r")
	if !strings.Contains(shownBy(m), "! give one or two parameters") || m.job != nil {
		t.Fatal(shownBy(m))
	}
	m.keysTyped("d")
	if got := m.form().values(over); len(got) != 1 {
		t.Fatal("the usual fields are not there again", got)
	}
	if m.keysTyped("d"); len(m.form().values(over)) != 0 {
		t.Fatal("the person's own fields are gone")
	}
	m.keysTyped("tab", "down", "x")
	if got := m.form().values(change); len(got) != 1 {
		t.Fatal("a field that must be there is gone")
	}
}

// A question is refused at the field to blame.
func TestTheCursorGoesToTheFieldToBlame(t *testing.T) {
	m := page()
	m.form().fields[2].key = "no.such"
	m.keysTyped("r")
	if s := m.form().here(); s.field != 2 || !strings.Contains(shownBy(m), `! there is no reading "no.such"`) {
		t.Error(shownBy(m))
	}
}

func TestUntouchedFieldsFollowTheMachine(t *testing.T) {
	m := page()
	belt := m.form().values(over)[0]
	m.desk.Select(1)
	m.Refresh()
	if got := m.form().values(over)[0]; got == belt || !strings.HasPrefix(got, "drive.gear.wheel_teeth") {
		t.Fatal(got)
	}
	m.keysTyped("down", "50..60", "enter")
	m.desk.Select(0)
	m.Refresh()
	if got := m.form().values(over)[0]; got != "drive.gear.wheel_teeth=50..60" {
		t.Errorf("what was typed is gone: %s", got)
	}
	if !strings.Contains(shownBy(m), "does not bear on the machine in hand") {
		t.Error(shownBy(m))
	}
}

func TestFieldsOfEveryRoleCanBeChosen(t *testing.T) {
	m, seen := page(), map[role]bool{}
	for q := range questions {
		m.at = q
		f := m.form()
		for i, s := range f.spots {
			if s.asks || traits[s.role].from == nothing || seen[s.role] {
				continue
			}
			seen[s.role] = true
			f.roll.To(i)
			f.right = false
			m.keysTyped("enter")
			if f.state != choosing || len(f.keys) == 0 {
				t.Fatalf("%s: nothing to choose from", traits[s.role].word)
			}
			for _, key := range f.keys {
				if x := usual(m.base(), s.role, key); x.text != "" && x.check(m.base()) != nil {
					err := x.check(m.base())
					t.Errorf("%s of %s begins with what is refused: %v", traits[s.role].word, key, err)
				}
			}
			m.keysTyped("esc")
		}
	}
}

// A share of a temperature or of a level means nothing, nor does one of nothing.
func TestUsualDoubts(t *testing.T) {
	b := page().base()
	for key, want := range map[string]string{
		"propeller.pitch": "±2 %", "cooling.head.hot_day": "±1.2 °C", "wing.headwind": "±2 km/h", "propeller.static_thrust": "±2 %",
		"noise.level_at_150m": "±2 dB(A)",
	} {
		if got := usualDoubt(b, key); got != want {
			t.Errorf("%s: %q, want %q", key, got, want)
		}
	}
}
