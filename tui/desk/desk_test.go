package desk

import (
	"reflect"
	"strings"
	"testing"

	"backspan/model"
)

func sample() *model.Study {
	s := model.NewStudy("Trials")
	for _, n := range []string{"A", "B", "C"} {
		s.Variants = append(s.Variants, model.NewVariant(n))
	}
	s.Reference = "A"
	return s
}

func TestTheStudyGivenIsNotChanged(t *testing.T) {
	s := sample()
	was := s.Clone()
	d := New(s, "")
	for _, err := range []error{d.Set(Shared, "margin_asked", "20"), d.Duplicate(0), d.Rename(1, "Z"), d.Delete(0), d.Move(0, 1)} {
		if err != nil {
			t.Fatal(err)
		}
	}
	if !reflect.DeepEqual(s.Clone(), was) {
		t.Error("the study given was changed")
	}
}

func TestEveryStateStaysAsItWas(t *testing.T) {
	d := New(sample(), "")
	first := d.Study()
	if err := d.Set(Shared, "margin_asked", "20"); err != nil {
		t.Fatal(err)
	}
	if first.MarginAsked != 0.1 || d.Study().MarginAsked != 0.2 {
		t.Errorf("the first state has %g, the present one %g", first.MarginAsked, d.Study().MarginAsked)
	}
}

func TestNamesOfEdits(t *testing.T) {
	for _, tc := range []struct {
		name string
		do   func(d *Desk) error
		want string
	}{
		{"value", func(d *Desk) error { return d.Set(Shared, "margin_asked", "20") }, "Margin asked 10 % → 20 %"},
		{"same value", func(d *Desk) error { return d.Set(Shared, "margin_asked", "10 %") }, ""},
		{"text emptied", func(d *Desk) error { return d.Set(Shared, "currency", "") }, "Currency EUR → empty"},
		{"long text", func(d *Desk) error { return d.Set(Shared, "notes", strings.Repeat("n", 99)) }, "Notes empty → " + strings.Repeat("n", 31) + "…"},
		{"end of a long text", func(d *Desk) error {
			_ = d.Set(Shared, "notes", strings.Repeat("n", 99))
			return d.Set(Shared, "notes", strings.Repeat("n", 98)+"m")
		}, "Notes changed"},
		{"reference", func(d *Desk) error { return d.Set(Shared, "reference", "C") }, "reference A → C"},
		{"name of a variant", func(d *Desk) error { return d.Set(1, "name", "Z") }, "rename B → Z"},
		{"duplicate", func(d *Desk) error { return d.Duplicate(0) }, "duplicate as A 2"},
		{"delete", func(d *Desk) error { return d.Delete(2) }, "delete C"},
		{"move past the end", func(d *Desk) error { return d.Move(2, 1) }, ""},
	} {
		d := New(sample(), "")
		if err := tc.do(d); err != nil {
			t.Errorf("%s: %v", tc.name, err)
		}
		if got := d.CanUndo(); got != tc.want {
			t.Errorf("%s: %q, want %q", tc.name, got, tc.want)
		}
	}
}

func TestRefusalsChangeNothing(t *testing.T) {
	for name, do := range map[string]func(d *Desk) error{
		"out of range":      func(d *Desk) error { return d.Set(Shared, "margin_asked", "900") },
		"no such reference": func(d *Desk) error { return d.Set(Shared, "reference", "Q") },
		"name taken":        func(d *Desk) error { return d.Rename(0, "B") },
		"no such variant":   func(d *Desk) error { return d.Delete(7) },
		"no such parameter": func(d *Desk) error { return d.Set(0, "engine.wings", "2") },
	} {
		d := New(sample(), "")
		before := d.Study()
		if err := do(d); err == nil {
			t.Errorf("%s: not refused", name)
		}
		if d.Study() != before || d.CanUndo() != "" {
			t.Errorf("%s: it left a trace", name)
		}
	}
}

func TestUnsaved(t *testing.T) {
	d := New(sample(), "trials.toml")
	set := func(text string) {
		if err := d.Set(Shared, "margin_asked", text); err != nil {
			t.Fatal(err)
		}
	}
	set("20")
	if !d.Unsaved() {
		t.Error("an edit, and yet saved")
	}
	set("10")
	if d.Unsaved() {
		t.Error("set back by hand, and yet unsaved")
	}
	set("30")
	state := d.Study()
	set("40")
	d.Saved("trials.toml", state)
	if !d.Unsaved() {
		t.Error("edited while it was saved, and yet saved")
	}
	d.Undo()
	if d.Unsaved() {
		t.Error("back at what was saved, and yet unsaved")
	}
}

func TestOutcomesOfUntouchedVariantsAreKept(t *testing.T) {
	d := New(sample(), "")
	before := d.outcomes
	if err := d.Set(1, "notes", "tried"); err != nil {
		t.Fatal(err)
	}
	if &before[0].Readings[0] != &d.outcomes[0].Readings[0] {
		t.Error("A was computed again though B was edited")
	}
	if err := d.Set(Shared, "margin_asked", "20"); err != nil {
		t.Fatal(err)
	}
	if &before[0].Readings[0] == &d.outcomes[0].Readings[0] {
		t.Error("a shared given changed, and A was not computed again")
	}
}

func TestEarlierFollowsNameAndPlace(t *testing.T) {
	for _, tc := range []struct {
		name string
		do   func(d *Desk) error
		want string
	}{
		{"renamed", func(d *Desk) error { return d.Rename(0, "Z") }, "A"},
		{"moved", func(d *Desk) error { return d.Move(0, 1) }, "A"},
		{"duplicated", func(d *Desk) error { return d.Duplicate(0) }, ""},
	} {
		d := New(sample(), "")
		if err := tc.do(d); err != nil {
			t.Fatal(err)
		}
		o, ok := d.Earlier()
		if ok != (tc.want != "") || o.Variant != tc.want {
			t.Errorf("%s: earlier is %q, %v", tc.name, o.Variant, ok)
		}
	}
}
