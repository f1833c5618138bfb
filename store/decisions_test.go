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

// Comments stay with their decision when others come and go, and are not lost
// with it.
func TestCommentsStayWithTheirDecision(t *testing.T) {
	s, err := Decode("x.toml", []byte("format = 1\n# why\n[[decision]]\n# above date\ndate = 2026-11-26\ntext = \"belt\" # for now\n\n"+
		"# second\n[[decision]]\ndate = \"2026-11-27\"\ntext = \"gear\"\n\n# of A\n[[variant]]\nname = \"A\"\n# end\n"))
	if err != nil {
		t.Fatal(err)
	}
	const first, second = "\n# why\n# above date\n# for now\n[[decision]]\ndate = \"2026-11-26\"\n", "\n# second\n[[decision]]\ndate = \"2026-11-27\"\n"
	out := string(Encode(s))
	if !strings.Contains(out, first) || !strings.Contains(out, second) || !strings.HasSuffix(out, "\n# end\n") {
		t.Errorf("the comments stand elsewhere\n%s", out)
	}
	if back, err := Decode("x.toml", []byte(out)); err != nil || string(Encode(back)) != out {
		t.Errorf("written again it is another file, %v", err)
	}
	s.Decisions = append([]model.Decision{{Date: "2026-11-01", Text: "new"}}, s.Decisions[1])
	out = string(Encode(s))
	if !strings.Contains(out, second) || strings.Contains(out, "# why\n# above date\n# for now\n[[") || !strings.Contains(out, "# why") {
		t.Errorf("after one is gone the comments stand wrong or are lost\n%s", out)
	}
}
