package tui

import (
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"
	"github.com/muesli/termenv"
	"pgregory.net/rapid"

	"backspan/model/explore"
	explorepage "backspan/tui/pages/explore"
)

// cheaply keeps questions short: the fields begin with small figures.
func cheaply(m Model) Model {
	m.effort = explorepage.Effort{Effort: explore.Effort{Population: 12, Generations: 6, Runs: 1, Seed: 1}, Samples: 400}
	m.lay(m.desk)
	return m
}

// sized makes a bench with brief questions in a window.
func sized(o Options, w, h int) Model {
	return send(cheaply(begin(o, w, h)), tea.WindowSizeMsg{Width: w, Height: h})
}

func TestScreensOfExplorations(t *testing.T) {
	for _, tc := range []struct {
		name  string
		keys  []string
		ascii bool
	}{
		{name: "range", keys: []string{"e", "down"}},
		{name: "range-answered", keys: []string{"e", "r", "pgdown"}},
		{name: "range-two", keys: []string{"e", "down", "180..210 mm/7", "enter", "down", "enter", "ribs", "enter", "r", "down"}},
		{name: "range-choosing", keys: []string{"e", "down", "down", "enter", "pitch"}},
		{name: "range-refused", keys: []string{"e", "down", "5 kg..9", "enter"}},
		{name: "whatfor", keys: []string{"e", "tab", "down", "down"}},
		{name: "whatfor-answered", keys: []string{"e", "tab", "r", "down"}},
		{name: "whatfor-none", keys: []string{"e", "tab", "down", "down", "900", "enter", "r"}},
		{name: "compromises", keys: []string{"e", "tab", "tab", "down", "down"}},
		{name: "compromises-answered", keys: []string{"e", "tab", "tab", "r", "down", "down"}},
		{name: "compromises-taken", keys: []string{"e", "tab", "tab", "r", "down", "enter"}},
		{name: "howsure", keys: []string{"e", "shift+tab", "down", "down", "down"}},
		{name: "howsure-answered", keys: []string{"e", "shift+tab", "r", "down", "down"}},
		{name: "range-ascii", keys: []string{"e", "r", "pgdown"}, ascii: true},
		{name: "howsure-ascii", keys: []string{"e", "shift+tab", "r"}, ascii: true},
	} {
		for _, size := range []struct {
			name string
			w, h int
		}{{"80x24", 80, 24}, {"120x40", 120, 40}} {
			t.Run(tc.name+"-"+size.name, func(t *testing.T) {
				o := onSample()
				o.ASCII = tc.ascii
				view := press(sized(o, size.w, size.h), tc.keys...).View()
				fits(t, view, size.w, size.h)
				for _, r := range view {
					if tc.ascii && r > 0x7f {
						t.Fatalf("%q is not ASCII", r)
					}
				}
				golden(t, "explore-"+tc.name+"-"+size.name, view)
			})
		}
	}
}

func TestColourChangesNoTextOfExplorations(t *testing.T) {
	for _, keys := range [][]string{{"e", "down", "down"}, {"e", "r"}, {"e", "tab", "r"}, {"e", "tab", "tab", "r"}, {"e", "shift+tab", "r"}} {
		bare := press(sized(onSample(), 120, 40), keys...).View()
		o := onSample()
		o.Renderer = renderer(termenv.ANSI256)
		coloured := press(sized(o, 120, 40), keys...).View()
		if coloured == bare {
			t.Errorf("%v: no colour at all", keys)
		}
		if got := trimmed(ansi.Strip(coloured)); got != trimmed(bare) {
			t.Errorf("%v: the text differs\n%s\n--- without colour\n%s", keys, got, bare)
		}
	}
}

// A design that is taken is a variant, one edit, that undo takes back.
func TestADesignTakenIsAVariant(t *testing.T) {
	for name, keys := range map[string][]string{
		"sweep": {"e", "r", "end"}, "solve": {"e", "tab", "r"}, "search": {"e", "tab", "tab", "r", "down"},
	} {
		m := press(sized(onSample(), 80, 24), keys...)
		first, _, _ := m.Study()
		m = press(m, "enter")
		s, _, unsaved := m.Study()
		v := s.Variants[m.desk.Selected]
		if len(s.Variants) != len(first.Variants)+1 || v.Name != "Belt 190 found" || !strings.Contains(v.Notes, "Found ") || !unsaved {
			t.Errorf("%s: %d variants, in hand is %s: %s", name, len(s.Variants), v.Name, v.Notes)
		}
		has(t, m, "take as Belt 190 found", "of Belt 190, not the one in hand")
		m = press(m, "u")
		if s, _, unsaved := m.Study(); s != first || unsaved {
			t.Errorf("%s: one undo does not take it back", name)
		}
		lacks(t, m, "not the one in hand")
	}
	m := press(sized(onSample(), 80, 24), "e", "down", "left", "enter", "site alt", "enter", "r", "enter")
	has(t, m, "not taken: Site altitude belongs to the whole study")
}

// The keyboard is free while the work is done, on any page; the answer is told
// of wherever the person is.
func TestExplorationsAreWorkedInTheBackground(t *testing.T) {
	m := begin(onSample(), 80, 24)
	m, work := background(m, "e", "tab", "tab", "r")
	has(t, m, "working, 0 % of 1000 designs; esc stops it")
	if work == nil {
		t.Fatal("nothing is worked")
	}
	m, _ = background(m, "b", "down", "right", "e")
	has(t, m, "working", "of 1000 designs")
	m, _ = background(m, "esc")
	has(t, m, "stopped after")
	lacks(t, m, "working")
	m = pump(m, work)
	lacks(t, m, "designs, of which none")

	m, work = background(sized(onSample(), 80, 24), "e", "tab", "r", "b")
	m = pump(m, work)
	has(t, m, `"What would it take" is answered; e leads there`)
	m = press(m, "e")
	has(t, m, "values of Nominal pitch")
}

// While something is typed or chosen, letters are text.
func TestLettersInFieldsAreText(t *testing.T) {
	m := press(sized(onSample(), 80, 24), "e", "down", "enter", "q")
	has(t, m, "[q")
	m = paste(m, "200..\n210 mm")
	has(t, m, "[q200.. 210 mm")
	m = press(m, "ctrl+s")
	has(t, m, "[q200.. 210 mm")
	m = press(m, "esc", "left", "enter", "U", "7", "?")
	has(t, m, "[U7?", "nothing has these letters")
	if m.desk.CanUndo() != "" || m.left {
		t.Error("letters of what is typed are commands")
	}
	m = press(m, "ctrl+c")
	has(t, m, "Something is still being typed")
	if m = press(m, "w"); !m.left {
		t.Error("ctrl+c does not lead to leaving")
	}
}

func TestTheAnswerIsCopied(t *testing.T) {
	got := ""
	o := onSample()
	o.Clipboard = func(text string) error { got = text; return nil }
	m := press(sized(o, 80, 24), "e", "y")
	has(t, m, "nothing to copy here")
	m = press(m, "r", "y")
	if !strings.HasPrefix(got, "Driven pulley, effective diameter\tDepth, back to propeller plate\t") || strings.Count(got, "\n") != 11 {
		t.Errorf("%q", got)
	}
	has(t, m, "handed to the terminal's clipboard: 12 l")
}

func TestExplorationsOfOddStudies(t *testing.T) {
	o := plateau()
	o.Study = small("Bare")
	m := press(sized(o, 80, 24), "e", "r", "tab", "enter", "a")
	has(t, m, "No variant yet")
	has(t, press(m, "esc"), "Variants")
	o.Study = small("Wide", "漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字漢字", "\x1b[31mred")
	o.Study.Currency = "漢"
	for _, first := range []string{"<", ">"} {
		for _, keys := range [][]string{{"r"}, {"tab", "r"}, {"tab", "tab", "r"}, {"shift+tab", "r"}} {
			m := press(press(sized(o, 60, 16), first, "e"), keys...)
			for _, size := range [][2]int{{60, 16}, {120, 40}, {59, 15}} {
				m = send(m, tea.WindowSizeMsg{Width: size[0], Height: size[1]})
				fits(t, m.View(), size[0], size[1])
				if strings.Contains(m.View(), "\x1b") {
					t.Error("a control character is on the screen")
				}
			}
		}
	}
}

var explorationKeys = rapid.SampledFrom([]string{
	"enter", "enter", "enter", "esc", "tab", "shift+tab", "up", "down", "down", "left", "right", "home", "end", "pgup", "pgdown", "r", "x", "d", "a", "y", "(", ")",
	"7", "..", "±", "5 mm", "1e9", "-", "less", "ribs", "漢", "<", ">", "u", "e", "b", "?", "/", "backspace", "ctrl+u",
})

// Whatever is pressed on the page of explorations: nothing breaks, nothing is
// painted outside the window, and undo leads back to the first study.
func TestAnyKeysOnExplorations(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := plateau()
		o.Study = small("Plateau trials", "A belt", "漢字 B")
		o.ASCII = rapid.Bool().Draw(t, "ascii")
		o.Clipboard = func(string) error { return nil }
		size := anySize.Draw(t, "size")
		m := sized(o, size[0], size[1])
		m.effort = explorepage.Effort{Effort: explore.Effort{Population: 4, Generations: 1, Runs: 1, Seed: 1}, Samples: 100}
		m.lay(m.desk)
		m = press(m, "e")
		first := m.desk.Study()
		for range rapid.IntRange(1, 12).Draw(t, "keys") {
			m = press(m, explorationKeys.Draw(t, "key"))
			fits(t, m.View(), size[0], size[1])
		}
		for m.desk.CanUndo() != "" {
			m = press(m, "esc", "u")
			if m.page == atFind || !m.fits() {
				m.desk.Undo()
			}
		}
		if m.desk.Study() != first {
			t.Fatal("undo led to another study")
		}
	})
}

// What is typed in a field is no more lost without a question than a value is.
func TestLeavingAsksForAFieldBeingTyped(t *testing.T) {
	m := press(sized(onSample(), 80, 24), "e", "down", "1", "5", "0", "ctrl+c")
	has(t, m, "Something is still being typed", "150")
	m = press(m, "esc")
	if has(t, m, "150"); m.left || !m.explore.Busy() {
		t.Error("staying loses what is typed")
	}
	if m = press(m, "ctrl+c", "w"); !m.left {
		t.Error("it does not leave")
	}
	m = send(press(sized(onSample(), 80, 24), "e", "down", "1"), tea.WindowSizeMsg{Width: 40, Height: 10})
	if has(t, m, "Your edits are kept"); press(m, "q").left {
		t.Error("an unseen q loses what is typed")
	}
}

// What is being worked is not dropped without a word.
func TestLeavingAsksWhileAQuestionIsWorked(t *testing.T) {
	m, _ := background(sized(onSample(), 80, 24), "e", "r", "q")
	has(t, m, "is still being worked; its answer would be lost")
	if m = press(m, "esc"); m.left || !m.explore.Working() {
		t.Error("staying does not stay")
	}
	if m = press(m, "q", "w"); !m.left {
		t.Error("leaving all the same does not leave")
	}
}
