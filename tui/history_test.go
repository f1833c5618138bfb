package tui

import (
	"testing"

	"backspan/model"
)

// threeEdits leaves the first of three edits in force.
var threeEdits = []string{"down", "down", "right", "down", "right", "down", "]", "u", "u", "H"}

func TestHistoryScreens(t *testing.T) {
	for _, tc := range []struct {
		name  string
		w, h  int
		ascii bool
	}{{"history-80x24", 80, 24, false}, {"history-120x40", 120, 40, false}, {"history-ascii-80x24", 80, 24, true}} {
		o := plateau()
		o.Study, o.ASCII = model.Sample(), tc.ascii
		view := press(begin(o, tc.w, tc.h), threeEdits...).View()
		fits(t, view, tc.w, tc.h)
		golden(t, tc.name, view)
	}
}

func TestHistoryLeadsToAnyState(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	m := begin(o, 120, 40)
	first := m.desk.Study()
	m = press(m, threeEdits...)
	has(t, m, "History of this session", "now", "undone", "as it was at the beginning")
	second := m.desk.Study()
	m = press(m, "home", "enter")
	third := m.desk.Study()
	has(t, m, "2 done again", "> ")
	lacks(t, m, "undone")
	m = press(m, "down", "down", "enter")
	if m.desk.Study() != second {
		t.Error("the state after the first edit is another one")
	}
	has(t, m, "2 undone")
	m = press(m, "end", "enter")
	if m.desk.Study() != first || m.desk.Unsaved() {
		t.Error("the last row is not the state at first")
	}
	m = press(m, "enter")
	has(t, m, "this is the present state")
	m = press(m, "U", "U", "U")
	if m.desk.Study() != third {
		t.Error("doing again from the first state leads elsewhere")
	}
	m = press(m, "esc")
	has(t, m, "Engine of Belt 190")
	m = press(m, "c", "H", "esc")
	has(t, m, "Side by side")
}

// A variant as it was at any step, also one undone, becomes a variant of its own
// beside what it is now.
func TestHistoryGivesBackAVariant(t *testing.T) {
	o := plateau()
	o.Study = model.Sample()
	m := press(begin(o, 120, 40), threeEdits...)
	now := m.desk.Variant().Engine
	m = press(m, "home", "d")
	has(t, m, "/ Belt 190 2", "duplicate as Belt 190 2, as it was after: ")
	has(t, press(m, "esc"), "of Belt 190 2 ┣")
	m = press(m, "H")
	s := m.desk.Study()
	if got := s.Variants[0].Engine; got.Stroke != now.Stroke {
		t.Error("the variant in hand was changed")
	}
	if got := s.Variants[1].Engine; got.Stroke == now.Stroke || s.Variants[1].Name != "Belt 190 2" {
		t.Errorf("%s has a stroke of %v m, as now", s.Variants[1].Name, got.Stroke)
	}
	m = press(m, "u")
	if n := len(m.desk.Study().Variants); n != len(o.Study.Variants) {
		t.Errorf("%d variants after undoing", n)
	}
	m = press(m, "end", "d")
	has(t, m, "duplicate as Belt 190 2, as it was at the beginning")
	has(t, press(m, "end", "d"), "was not there in that state")
}
