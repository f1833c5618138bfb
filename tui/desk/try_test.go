package desk

import (
	"testing"

	"backspan/model"
)

func TestTryIsOneEdit(t *testing.T) {
	d := New(model.Sample(), "")
	first, n := d.Study(), len(d.Study().Variants)
	if err := d.Try(0, "Belt 190, Ribs 14", "drive.ribbed_belt.ribs", "14"); err != nil {
		t.Fatal(err)
	}
	v := d.Variant()
	if len(d.Study().Variants) != n+1 || d.Selected != 1 || v.Name != "Belt 190, Ribs 14" || v.Drive.RibbedBelt.Ribs != 14 {
		t.Errorf("%d variants, %d in hand: %s with %d ribs", len(d.Study().Variants), d.Selected, v.Name, v.Drive.RibbedBelt.Ribs)
	}
	if d.Study().Variants[0].Drive.RibbedBelt.Ribs == 14 {
		t.Error("the variant tried from changed too")
	}
	if d.CanUndo() != "try as Belt 190, Ribs 14" {
		t.Errorf("the edit is %q", d.CanUndo())
	}
	if err := d.Try(0, "Belt 190, Ribs 14", "drive.ribbed_belt.ribs", "15"); err != nil || d.Variant().Name != "Belt 190, Ribs 14 2" {
		t.Errorf("%v, the second is named %s", err, d.Variant().Name)
	}
	d.Undo()
	if d.Undo(); d.Study() != first {
		t.Error("one undo for each does not lead back")
	}
	for _, err := range []error{d.Try(0, "X", "drive.ribbed_belt.ribs", "99"), d.Try(0, "X", "drive.ribbed_belt.ribz", "9"), d.Try(99, "X", "name", "Y")} {
		if err == nil || d.Study() != first {
			t.Errorf("not refused: %v", err)
		}
	}
}

func TestAdoptIsOneEditAndTellsMachinesApart(t *testing.T) {
	d := New(model.Sample(), "")
	first := d.Study()
	found := first.Variants[0].Clone()
	found.Name, found.Drive.RibbedBelt.Ribs = "Belt 190 found", 14
	for range 2 {
		if err := d.Adopt(0, found); err != nil {
			t.Fatal(err)
		}
	}
	if d.Selected != 1 || d.Variant().Name != "Belt 190 found 2" || d.CanUndo() != "take as Belt 190 found 2" {
		t.Errorf("%d in hand: %s by %q", d.Selected, d.Variant().Name, d.CanUndo())
	}
	if !d.Same(0, first, 0) || d.Same(1, first, 0) || d.Same(3, first, 0) || d.Same(99, first, 0) {
		t.Error("machines of another state are not told apart")
	}
	if err := d.Set(Shared, "site.altitude", "900 m"); err != nil || d.Same(0, first, 0) {
		t.Errorf("%v; under other givens it is another machine", err)
	}
	d.Undo()
	d.Undo()
	if d.Undo(); d.Study() != first {
		t.Error("one undo for each does not lead back")
	}
}
