package tui

import (
	"regexp"
	"strings"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"backspan/model"
	"backspan/model/param"
)

// A tally that is cut tells a wrong figure; a label that is cut does not.
func TestEffectOfAnEditIsToldWhole(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	m := press(begin(o, 80, 24), ">", ")", "down", "right")
	rows := strings.Split(m.View(), "\n")
	foot := rows[len(rows)-2]
	if !regexp.MustCompile(`^[0-9]+ better, [0-9]+ worse of [0-9]+ moved; Inflow.* 60 % → 61 %$`).MatchString(foot) {
		t.Errorf("the foot says %q", foot)
	}
}

func TestNoStudyIsShownBeforeOneIsChosen(t *testing.T) {
	for _, tc := range []struct {
		name string
		keys []string
		says []string
	}{
		{"esc", []string{"esc"}, []string{"built-in sample, in no file yet", "Plateau trials / A belt", "depth"}},
		{"another page", []string{"c"}, []string{"built-in sample, in no file yet", "Side by side"}},
		{"a study", []string{"down", "enter"}, []string{"opened valley.toml", "Valley trials / One"}},
		{"a new one", []string{"N"}, []string{"New study / A"}},
	} {
		o := plateau()
		o.Path, o.ChooseFirst = "", true
		m := begin(o, 80, 24)
		has(t, m, "Choose a study", "Studies in this folder", "Valley trials")
		lacks(t, m, "A belt", "depth", "in no file yet", "worst check")
		m = press(m, "?")
		has(t, m, "Choose a study")
		m = press(press(m, "esc"), tc.keys...)
		has(t, m, tc.says...)
		lacks(t, m, "Choose a study")
	}
}

func TestTooSmallSaysWhatBecomesOfKeys(t *testing.T) {
	m := begin(plateau(), 50, 10)
	has(t, m, "other keys do nothing until")
	m = press(m, "right", "d", "x")
	if _, _, unsaved := m.Study(); unsaved {
		t.Error("a key that nobody saw the effect of changed the study")
	}
	m = send(press(send(m, tea.WindowSizeMsg{Width: 80, Height: 24}), "down", "right"), tea.WindowSizeMsg{Width: 50, Height: 10})
	has(t, m, "edits are kept", "Keys do nothing until")
}

// A save that fails in the background asks for another name only after the
// question that is being answered.
func TestAFailedSaveWaitsForTheQuestionAsked(t *testing.T) {
	o := plateau()
	o.Path = ""
	m := press(begin(o, 80, 24), "esc", "esc", "d", "S", "ctrl+u", "ridge")
	o.Shelf.(*shelf).full = true
	n, save := m.Update(keyOf("enter"))
	m = press(n.(Model), "x")
	has(t, m, "Delete the variant")
	m = pump(m, save)
	has(t, m, "Delete the variant")
	lacks(t, m, "le name?")
	m = press(m, "k")
	has(t, m, "Save under which file name?", "no space left", "[ridge.toml")
	if s, _, _ := m.Study(); len(s.Variants) != 4 {
		t.Errorf("%d variants", len(s.Variants))
	}
}

func TestRefusedSaveSaysItOnce(t *testing.T) {
	o := plateau()
	o.Shelf.(*shelf).full = true
	m := press(begin(o, 120, 40), "down", "right", "s")
	if n := strings.Count(strings.ToLower(strings.ReplaceAll(m.View(), "NOT SAVED", "")), "not saved"); n != 1 {
		t.Errorf("said %d times:\n%s", n, m.View())
	}
}

// The power curve: the columns are named while it is typed, no single key
// replaces it, and its rows stand under one another.
func TestTableIsTypedRowByRow(t *testing.T) {
	for _, size := range [][2]int{{80, 24}, {120, 40}, {60, 16}} {
		o := plateau()
		o.Study = model.Sample()
		m := begin(o, size[0], size[1])
		for range 10 {
			if strings.HasSuffix(m.bench.Path(), "power_curve") {
				break
			}
			m = press(m, "down")
		}
		before := curve(t, m)
		m = press(m, "enter")
		names := "speed in rpm"
		has(t, m, names, strings.Split(before, "; ")[9])
		m = press(m, "up", "down", "end", ";", "space", "9", "2", "0", "0")
		has(t, m, names, "9200")
		m = press(m, "enter")
		has(t, m, names, "!") // refused: one number is missing
		m = press(m, "space", "1", "2", ".", "5", "enter")
		if got := curve(t, m); got != before+"; 9200 12.5" {
			t.Errorf("%v: the curve is %s", size, got)
		}
		m = press(m, "enter", "ctrl+u")
		lacks(t, m, "9200 12.5")
		if m = press(m, "esc"); curve(t, m) != before+"; 9200 12.5" {
			t.Errorf("%v: Esc left %s", size, curve(t, m))
		}
	}
}

func curve(t *testing.T, m Model) string {
	t.Helper()
	p, ok := param.Find(m.desk.Sections(m.desk.Selected), m.bench.Path())
	if !ok {
		t.Fatal("no power curve under the cursor")
	}
	return p.Editable()
}

// In a window of 120x40 no label of thirty cells or less is cut, and no two
// that are cut read alike.
func TestLabelsStayApart(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	m := press(begin(o, 120, 40), strings.Split(strings.Repeat("(", 30), "")...)
	labels := map[string]string{} // as shown, and of what
	for range 30 {
		for _, row := range strings.Split(m.View(), "\n")[3:] {
			panes := strings.Split(row, "│")
			if len(panes) < 2 || len([]rune(panes[1])) < 34 {
				continue
			}
			shown := strings.TrimSpace(string([]rune(panes[1])[2:32]))
			head, tail, cut := strings.Cut(shown, "…")
			if !cut {
				continue
			}
			for _, s := range m.desk.Sections(m.desk.Selected) {
				for _, p := range s.Params {
					if !strings.HasPrefix(p.Label, head) || !strings.HasSuffix(p.Label, tail) {
						continue
					}
					if len([]rune(p.Label)) <= 30 {
						t.Errorf("%q is cut to %q", p.Label, shown)
					}
					if was, taken := labels[shown]; taken && was != p.Label {
						t.Errorf("%q and %q both read %q", was, p.Label, shown)
					}
					labels[shown] = p.Label
				}
			}
		}
		m = press(m, ")")
	}
}
