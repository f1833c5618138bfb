package model

import "testing"

// The form of a date is the calendar date of ISO 8601, extended format.
func TestDecisionCheck(t *testing.T) {
	for _, tc := range []struct {
		date, text string
		fine       bool
	}{
		{"2026-11-26", "belt", true}, {"2026-01-31", "x", true}, {"2026-12-01", "x", true},
		{"2026-13-01", "x", false}, {"2026-00-10", "x", false}, {"2026-10-00", "x", false}, {"2026-10-32", "x", false},
		{"2026-02-29", "x", false}, {"2028-02-29", "x", true}, {"2100-02-29", "x", false}, {"2026-04-31", "x", false},
		{"26-11-2026", "x", false}, {"2026/11/26", "x", false}, {"2026-11-2", "x", false}, {"2026-1a-26", "x", false}, {"", "x", false},
		{"2026-11-26", "", false}, {"2026-11-26", " \n", false},
	} {
		if err := (Decision{tc.date, tc.text}).Check(); (err == nil) != tc.fine {
			t.Errorf("%q %q: %v", tc.date, tc.text, err)
		}
	}
}

func TestACloneHasItsOwnLog(t *testing.T) {
	s := NewStudy("x")
	s.Decisions = []Decision{{"2026-11-26", "belt"}}
	c := s.Clone()
	c.Decisions[0].Text = "gear"
	if s.Decisions[0].Text != "belt" {
		t.Error("the log is shared")
	}
}
