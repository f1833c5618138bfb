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
