package model

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func three() *Study {
	s := NewStudy("three")
	s.Variants = []Variant{NewVariant("A"), NewVariant("B"), NewVariant("C")}
	s.Reference = "B"
	return s
}

func TestRename(t *testing.T) {
	s := three()
	if err := s.Rename(1, "  Better "); err != nil || s.Variants[1].Name != "Better" || s.Reference != "Better" {
		t.Errorf("%v, %q, reference %q", err, s.Variants[1].Name, s.Reference)
	}
	for _, name := range []string{"", " ", "A", "two\nlines", "bell\a"} {
		if err := s.Rename(1, name); err == nil || s.Variants[1].Name != "Better" {
			t.Errorf("took the name %q", name)
		}
	}
	if err := s.Rename(1, "Better"); err != nil {
		t.Errorf("refused its own name: %v", err)
	}
}

func TestFreeName(t *testing.T) {
	s := three()
	if got := s.FreeName("D"); got != "D" {
		t.Error(got)
	}
	s.Variants = append(s.Variants, NewVariant("A 2"))
	if got := s.FreeName("A"); got != "A 3" {
		t.Error(got)
	}
}

func TestFaults(t *testing.T) {
	for _, tc := range []struct {
		name   string
		change func(*Study)
		says   string
	}{
		{"sound", func(*Study) {}, ""},
		{"no variants", func(s *Study) { s.Variants = nil }, "no variants"},
		{"one name twice", func(s *Study) { s.Variants[2].Name = "A" }, "taken by another"},
		{"no name", func(s *Study) { s.Variants[0].Name = "" }, "needs a name"},
		{"reference gone", func(s *Study) { s.Reference = "Z" }, `no variant named "Z"; name one of: "A", "B", "C"`},
		{"no reference", func(s *Study) { s.Reference = "" }, ""},
	} {
		s := three()
		tc.change(s)
		var all []string
		for _, f := range s.Faults() {
			all = append(all, f.Error())
		}
		if text := strings.Join(all, "; "); (tc.says == "") != (text == "") || !strings.Contains(text, tc.says) {
			t.Errorf("%s: %q", tc.name, text)
		}
	}
}

func TestReferenceFallsBackToTheFirst(t *testing.T) {
	s := three()
	if s.ReferenceIndex() != 1 {
		t.Error(s.ReferenceIndex())
	}
	s.Reference = "gone"
	if s.ReferenceIndex() != 0 {
		t.Error(s.ReferenceIndex())
	}
	s.Variants = nil
	if s.ReferenceIndex() != -1 {
		t.Error(s.ReferenceIndex())
	}
}

func TestCloneSharesNothing(t *testing.T) {
	s := Sample()
	c := s.Clone()
	if d := cmp.Diff(s, c); d != "" {
		t.Fatal(d)
	}
	for i := range c.Variants {
		for j := range c.Variants[i].Engine.Curve {
			c.Variants[i].Engine.Curve[j].Power = 0
		}
		c.Variants[i].Name = "changed"
	}
	if d := cmp.Diff(Sample(), s); d != "" {
		t.Errorf("the original changed with its copy:\n%s", d)
	}
}

func TestComparisonLaysOutEveryVariant(t *testing.T) {
	s := Sample()
	c := Compare(s, EvaluateAll(s))
	if len(c.Feel) != len(s.Variants) || c.Feel[c.Reference] != (Feel{Known: true}) {
		t.Errorf("feel: %+v", c.Feel)
	}
	same := false
	for _, p := range c.Parameters {
		if len(p.Cells) != len(s.Variants) {
			t.Errorf("%s has %d cells", p.Path, len(p.Cells))
		}
		if same = same || !p.Differs; same && p.Differs {
			t.Errorf("%s differs, but stands below one that does not", p.Path)
		}
	}
	last := map[string]int{}
	for i, r := range c.Readings {
		if at, seen := last[partOf(r.Key)]; seen && at != i-1 {
			t.Errorf("%s stands away from the rest of its part", r.Key)
		}
		last[partOf(r.Key)] = i
	}
	for _, p := range c.Parameters {
		if p.Path == "drive.ribbed_belt.service_factor" && p.Differs {
			t.Error("a belt's parameter differs because a gear has none")
		}
		if p.Path == "drive.ribbed_belt.ribs" && !p.Differs {
			t.Error("ribs differ between the belts")
		}
	}
}
