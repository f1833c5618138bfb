package tui

import (
	"os"
	"path/filepath"
	"testing"

	"backspan/model"
	"backspan/store"
	"backspan/store/journal"
)

// One key that was meant for something else drops no work.
func TestWorkLeftIsDroppedOnlyAfterASecondQuestion(t *testing.T) {
	for answer, gone := range map[string]bool{"d": false, "k": false, "esc": false, "enter": false, "y": true} {
		dir := t.TempDir()
		path := filepath.Join(dir, "trials.toml")
		if err := os.WriteFile(path, store.Encode(model.Sample()), 0o600); err != nil {
			t.Fatal(err)
		}
		j := store.Journals{State: func() (string, error) { return dir, nil }, From: dir, Owner: journal.Head{User: "mechanic", Host: "shop", PID: 1}}
		s, _, err := j.Begin(path)
		if err != nil {
			t.Fatal(err)
		}
		edited := model.Sample()
		edited.MarginAsked = 0.33
		s.Edited("margin", edited)
		if err := s.End(true); err != nil {
			t.Fatal(err)
		}
		o := plateau()
		o.Study, o.Path, o.Shelf, o.Journals = model.Sample(), path, store.NewFolder(dir), j
		m := press(begin(o, 80, 24), "d")
		has(t, m, "Drop the work for good?", "yes, drop it")
		m = press(m, answer)
		if _, err := os.Stat(filepath.Join(dir, ".trials.toml.journal.left")); (err != nil) != gone {
			t.Errorf("%s: gone %v", answer, err != nil)
		}
		if gone {
			has(t, m, "it is dropped")
		}
	}
}
