package store

import (
	"reflect"
	"strings"
	"testing"

	"backspan/model"
)

func TestDecisionsReadBack(t *testing.T) {
	s := sound()
	s.Decisions = []model.Decision{{Date: "2026-11-26", Text: "belt, not gear"}, {Date: "2026-12-01", Text: "two\nlines, \"quoted\""}}
	src := Encode(s)
	back, err := Decode("x.toml", src)
	if err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(back.Decisions, s.Decisions) || string(Encode(back)) != string(src) {
		t.Errorf("%q read back from\n%s", back.Decisions, src)
	}
	if bare := string(Encode(sound())); strings.Contains(bare, decisionKey) {
		t.Errorf("a study without a log writes one:\n%s", bare)
	}
}

func TestDecisionsByHand(t *testing.T) {
	const rest = "\n[[variant]]\nname = \"A\"\n"
	s, err := Decode("x.toml", []byte("format = 1\n# why\n[[decision]]\ndate = 2026-11-26\ntext = \"belt\" # for now\n"+rest))
	if err != nil || !reflect.DeepEqual(s.Decisions, []model.Decision{{Date: "2026-11-26", Text: "belt"}}) {
		t.Fatalf("%v, %v", s, err)
	}
	for range 2 { // a person's comments are kept, wherever they end up
		if src := string(Encode(s)); !strings.Contains(src, "# why") || strings.Count(src, "# for now") != 1 {
			t.Errorf("comments are lost:\n%s", src)
		}
		if s, err = Decode("x.toml", Encode(s)); err != nil {
			t.Fatal(err)
		}
	}
	for _, tc := range []struct {
		src  string
		line int
		key  string
		says string
	}{
		{"format = 1\n[decision]\ndate = \"2026-11-26\"\n", 2, "decision", "two brackets"},
		{"format = 1\n[[decision]]\ndate = \"26.11.2026\"\ntext = \"x\"\n", 2, "decision", "like 2026-11-26"},
		{"format = 1\n[[decision]]\ndate = \"2026-11-26\"\n", 2, "decision", "write a text"},
		{"format = 1\n[[decision]]\ndate = \"2026-11-26\"\ntext = 5\n", 4, "decision.text", "text in quotes"},
		{"format = 1\n[[decision]]\ndate = \"2026-11-26\"\ntext = \"x\"\nby = \"me\"\n", 5, "decision.by", "date and text"},
		{"format = 1\n" + strings.Repeat("[[decision]]\ndate = \"2026-11-26\"\ntext = \"x\"\n", mostDecisions+1), 2 + 3*mostDecisions, "decision", "at most 5000"},
	} {
		expect(t, tc.src+rest, tc.line, tc.key, tc.says)
	}
}
