package tui

import (
	"strings"
	"testing"

	"backspan/model"
)

// logged is the sample with two decisions, one too long for its line.
func logged() Options {
	o := plateau()
	o.Study = model.Sample()
	o.Study.Decisions = []model.Decision{
		{Date: "2026-03-02", Text: "The 190 is built first."},
		{Date: "2026-03-09", Text: "Ribbed belt for the first machine: it sits 92 mm shallower than the gear, and the loss of thrust to it is within what the prop's pitch makes up. " +
			"The gear stays on the list until a head has been measured on a hot day."},
	}
	o.Today = func() string { return "2026-11-26" }
	return o
}

func TestDecisionScreens(t *testing.T) {
	for _, tc := range []struct {
		name  string
		w, h  int
		ascii bool
		keys  []string
	}{
		{"decisions-80x24", 80, 24, false, []string{"L"}},
		{"decisions-120x40", 120, 40, false, []string{"L"}},
		{"decisions-ascii-80x24", 80, 24, true, []string{"L", "down"}},
		{"decisions-new-80x24", 80, 24, false, []string{"L", "a", "b", "y", " ", "1", "8", "0"}},
	} {
		o := logged()
		o.ASCII = tc.ascii
		view := press(begin(o, tc.w, tc.h), tc.keys...).View()
		fits(t, view, tc.w, tc.h)
		golden(t, tc.name, view)
	}
}

func TestDecisionsAreEnteredRewordedAndStruckOut(t *testing.T) {
	o := plateau()
	o.Study, o.Today = model.Sample(), func() string { return "2026-11-26" }
	o.Study.Decisions = nil
	m := press(begin(o, 80, 24), "L")
	has(t, m, "nothing is entered yet")
	has(t, press(m, "x"), "there is no decision to strike out")
	m = press(m, "enter", "f", "i", "r", "s", "t", "enter", "a", "q", "s", "enter")
	want := []model.Decision{{Date: "2026-11-26", Text: "first"}, {Date: "2026-11-26", Text: "qs"}}
	if got := m.desk.Study().Decisions; len(got) != 2 || got[0] != want[0] || got[1] != want[1] {
		t.Fatalf("the log holds %v, want %v", got, want)
	}
	if !m.desk.Unsaved() {
		t.Error("a decision is no edit")
	}
	m = press(m, "down", "enter", "!", "enter", "up", "x")
	if got := m.desk.Study().Decisions; len(got) != 1 || got[0].Text != "first!" {
		t.Fatalf("after rewording the first and striking out the second the log holds %v", got)
	}
	m = press(m, "u", "u", "u")
	if got := m.desk.Study().Decisions; len(got) != 1 || got[0] != want[0] {
		t.Fatalf("undoing leads to %v", got)
	}
	has(t, m, "undone: decide: qs")
	m = press(m, "esc")
	has(t, m, "Engine of Belt 190")
}

func TestRefusedDecisionStaysTyped(t *testing.T) {
	m := press(begin(logged(), 80, 24), "L", "a", "home", "x", "enter")
	has(t, m, "write it like 2026-11-26", "2026-11-26   ")
	if len(m.desk.Study().Decisions) != 2 {
		t.Error("a decision without a date was entered")
	}
	m = press(m, "q", "ctrl+c")
	has(t, m, "Something is still being typed")
	m = press(m, "esc", "esc", "a", "enter")
	if len(m.desk.Study().Decisions) != 2 {
		t.Error("an entry left as it was offered was entered")
	}
	lacks(t, m, "write it like")
}

func TestSaveTakesTheDecisionBeingTyped(t *testing.T) {
	m := press(begin(logged(), 80, 24), "L", "a", "g", "o", "ctrl+s")
	if got := m.desk.Study().Decisions; len(got) != 3 || got[2].Text != "go" {
		t.Errorf("a save while typing left %v", got)
	}
}

// A study that is read again while a decision is being reworded may have it
// elsewhere, or not at all: what is typed changes that one or becomes a new one.
func TestWhatIsRewordedIsFoundAgain(t *testing.T) {
	other := model.Decision{Date: "2026-01-01", Text: "theirs"}
	for _, tc := range []struct {
		name   string
		theirs func(log []model.Decision) []model.Decision
		want   []string
	}{
		{"elsewhere", func(log []model.Decision) []model.Decision { return append([]model.Decision{other}, log...) },
			[]string{"theirs", "The 190 is built first. Yes", "Ribbed belt"}},
		{"gone", func([]model.Decision) []model.Decision { return []model.Decision{other} }, []string{"theirs", "The 190 is built first. Yes"}},
		{"gone, with all others", func([]model.Decision) []model.Decision { return nil }, []string{"The 190 is built first. Yes"}},
	} {
		m := press(begin(logged(), 80, 24), "L", "down", "enter", " ", "Yes")
		theirs := m.desk.Study().Clone()
		theirs.Decisions = tc.theirs(theirs.Decisions)
		m = send(m, againMsg{theirsMsg{desk: m.desk, path: "plateau.toml", study: theirs}})
		has(t, m, "The 190 is built first. Yes")
		m = press(m, "enter")
		got := m.desk.Study().Decisions
		if len(got) != len(tc.want) {
			t.Fatalf("%s: %v", tc.name, got)
		}
		for i, want := range tc.want {
			if !strings.HasPrefix(got[i].Text, want) {
				t.Errorf("%s: entry %d is %q, want %q", tc.name, i, got[i].Text, want)
			}
		}
	}
}
