package desk

import (
	"fmt"
	"reflect"
	"testing"

	"pgregory.net/rapid"
)

func TestSteps(t *testing.T) {
	d := New(sample(), "")
	for _, err := range []error{d.Set(Shared, "margin_asked", "20"), d.Rename(1, "Z"), d.Set(1, "notes", "tried")} {
		if err != nil {
			t.Fatal(err)
		}
	}
	d.Undo()
	steps, done, forgotten := d.Steps()
	want := []Step{{"Margin asked 10 % → 20 %", ""}, {"rename B → Z", "B"}, {"Notes empty → tried", "Z"}}
	if !reflect.DeepEqual(steps, want) || done != 2 || forgotten != 0 {
		t.Errorf("%v, %d done, %d forgotten", steps, done, forgotten)
	}
	for i := range keep + 3 {
		if err := d.Set(Shared, "notes", fmt.Sprint(i)); err != nil {
			t.Fatal(err)
		}
	}
	if steps, done, forgotten = d.Steps(); len(steps) != keep || done != keep || forgotten != 5 {
		t.Errorf("%d steps, %d done, %d forgotten", len(steps), done, forgotten)
	}
}

// Going to a state in one leap is the same as undoing or doing again step by
// step: the same study, the same findings, the same steps.
func TestOneLeapIsManySteps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leap, walk := New(sample(), ""), New(sample(), "")
		for _, n := range rapid.SliceOfN(rapid.IntRange(0, 90), 1, 5).Draw(t, "margins") {
			for _, d := range []*Desk{leap, walk} {
				if err := d.Set(n%4-1, []string{"margin_asked", "notes", "notes", "engine.bore"}[n%4], fmt.Sprint(31+n/2)); err != nil {
					t.Fatal(err)
				}
			}
		}
		for range 3 {
			to := rapid.IntRange(-1, 6).Draw(t, "to")
			said, _ := leap.GoTo(to)
			_, before, _ := walk.Steps()
			steps, _, _ := walk.Steps()
			goal := min(max(to, 0), len(steps))
			for at := before; at != goal; _, at, _ = walk.Steps() {
				if at > goal {
					walk.Undo()
				} else {
					walk.Redo()
				}
			}
			if (said == "") != (before == goal) {
				t.Fatalf("from %d to %d it says %q", before, goal, said)
			}
			same(t, leap, walk)
		}
	})
}

func same(t *rapid.T, a, b *Desk) {
	sa, na, _ := a.Steps()
	sb, nb, _ := b.Steps()
	if na != nb || !reflect.DeepEqual(sa, sb) || !reflect.DeepEqual(a.Study(), b.Study()) || a.Unsaved() != b.Unsaved() {
		t.Fatalf("%d of %v and %d of %v", na, sa, nb, sb)
	}
	for i := range a.Study().Variants {
		if !reflect.DeepEqual(a.OutcomeOf(i), b.OutcomeOf(i)) {
			t.Fatalf("variant %d shows what another state gives", i)
		}
	}
}
