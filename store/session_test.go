package store

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"backspan/model"
	"backspan/store/journal"
)

// workshop is a folder with one study and a folder for state.
func workshop(t *testing.T) (j Journals, path string) {
	t.Helper()
	dir := t.TempDir()
	path = filepath.Join(dir, "trials.toml")
	put(t, path, string(Encode(model.Sample())))
	state := t.TempDir()
	return Journals{State: func() (string, error) { return state, nil }, From: dir, Owner: journal.Head{User: "mechanic", Host: "shop", PID: 1}}, path
}

func started(t *testing.T, j Journals, path string) (*Session, *Recovery) {
	t.Helper()
	s, left, err := j.Begin(path)
	if err != nil {
		t.Fatal(err)
	}
	return s, left
}

func ended(t *testing.T, s *Session, keep bool) {
	t.Helper()
	if err := s.End(keep); err != nil {
		t.Fatal(err)
	}
}

// with is the sample with another margin.
func with(margin float64) *model.Study {
	s := model.Sample()
	s.MarginAsked = margin
	return s
}

func TestASessionLeavesWhatWasNotSaved(t *testing.T) {
	for _, file := range []bool{true, false} {
		j, path := workshop(t)
		if !file {
			path = ""
		}
		s, left := started(t, j, path)
		if left != nil {
			t.Fatal("something was left before the first session")
		}
		s.Edited("margin 10 → 20", with(0.2))
		s.Edited("margin 20 → 30", with(0.3))
		ended(t, s, true)

		s, left = started(t, j, path)
		if left == nil || left.Study.MarginAsked != 0.3 || len(left.Edits) != 2 || left.Owner.User != "mechanic" {
			t.Fatalf("file %v: %+v", file, left)
		}
		if w := left.Words(); !strings.Contains(w, "2 edits") || !strings.Contains(w, "margin 20 → 30") || !strings.Contains(w, "shop") {
			t.Error(w)
		}
		// Not taken up, and ended from outside again: it is still there.
		ended(t, s, true)
		if s, left = started(t, j, path); left == nil || left.Study.MarginAsked != 0.3 {
			t.Fatalf("file %v, the second time: %+v", file, left)
		}
		ended(t, s, false)
		s, left = started(t, j, path)
		if left != nil {
			t.Errorf("file %v: left after the person ended the session", file)
		}
		ended(t, s, false)
	}
}

func TestNothingIsLeftAfterASave(t *testing.T) {
	j, path := workshop(t)
	s, _ := started(t, j, path)
	s.Edited("margin 10 → 20", with(0.2))
	s.Saved()
	ended(t, s, true)
	s, left := started(t, j, path)
	if left != nil {
		t.Errorf("left after a save: %+v", left)
	}
	// A crash between saving the file and clearing the journal leaves a state
	// that the file holds.
	s.Edited("margin 10 → 40", with(0.4))
	ended(t, s, true)
	put(t, path, string(Encode(with(0.4))))
	s, left = started(t, j, path)
	if left != nil {
		t.Errorf("what the file holds is offered: %+v", left)
	}
	ended(t, s, false)
	if names, _ := filepath.Glob(filepath.Join(filepath.Dir(path), ".*"+journalEnd)); len(names) > 0 {
		t.Errorf("left behind: %v", names)
	}
}

func TestASecondBenchIsToldWhoHoldsTheStudy(t *testing.T) {
	j, path := workshop(t)
	link := filepath.Join(filepath.Dir(path), "again.toml")
	if err := os.Symlink(path, link); err != nil {
		t.Skip(err)
	}
	s, _ := started(t, j, path)
	for _, name := range []string{path, link} {
		_, _, err := j.Begin(name)
		var held *Held
		if !errors.As(err, &held) || !strings.Contains(err.Error(), "mechanic has it open on shop") {
			t.Errorf("%s: %v", name, err)
		}
	}
	ended(t, s, false)
	s, _ = started(t, j, path)
	ended(t, s, false)
}

func TestFolderThatCannotBeWritten(t *testing.T) {
	if os.Getuid() == 0 {
		t.Skip("root may write anywhere")
	}
	j, path := workshop(t)
	if err := os.Chmod(filepath.Dir(path), 0o500); err != nil {
		t.Fatal(err)
	}
	defer func() { _ = os.Chmod(filepath.Dir(path), 0o700) }()
	s, _ := started(t, j, path)
	s.Edited("margin 10 → 20", with(0.2))
	ended(t, s, true)
	s, left := started(t, j, path)
	if left == nil || left.Study.MarginAsked != 0.2 {
		t.Errorf("%+v", left)
	}
	ended(t, s, false)
}

func TestJournalThatCannotBeReadIsPutAside(t *testing.T) {
	j, path := workshop(t)
	s, _ := started(t, j, path)
	if err := s.w.Add([]byte("format = 99\n"), journal.Edit{Name: "of another version"}); err != nil {
		t.Fatal(err)
	}
	ended(t, s, true)
	if _, _, err := j.Begin(path); err == nil || !strings.Contains(err.Error(), ".unread") {
		t.Errorf("%v", err)
	}
	if _, err := os.Stat(s.name + ".unread"); err != nil {
		t.Error(err)
	}
	s, left := started(t, j, path)
	if left != nil {
		t.Error("offered all the same")
	}
	ended(t, s, false)
}

func TestTroubleIsTold(t *testing.T) {
	j, path := workshop(t)
	s, _ := started(t, j, path)
	if err := s.file.Close(); err != nil {
		t.Fatal(err)
	}
	s.Edited("margin 10 → 20", with(0.2))
	if err := s.End(true); err == nil || s.Trouble() == nil {
		t.Errorf("edits are not kept, and nobody says so: %v", err)
	}
}
