package store

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"

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

func started(t *testing.T, j Journals, path string) (*Session, []*Left) {
	t.Helper()
	s, lefts, err := j.Begin(path)
	if err != nil {
		t.Fatal(err)
	}
	return s, lefts
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

// margins are those of what is left.
func margins(lefts []*Left) []float64 {
	var ms []float64
	for _, l := range lefts {
		ms = append(ms, l.Study.MarginAsked)
	}
	return ms
}

func leftOnly(t *testing.T, lefts []*Left, margin float64) *Left {
	t.Helper()
	if len(lefts) != 1 || lefts[0].Study.MarginAsked != margin {
		t.Fatalf("left are %v, want %g alone", margins(lefts), margin)
	}
	return lefts[0]
}

func TestASessionLeavesWhatWasNotSaved(t *testing.T) {
	for _, file := range []bool{true, false} {
		j, path := workshop(t)
		if !file {
			path = ""
		}
		s, lefts := started(t, j, path)
		if len(lefts) > 0 {
			t.Fatal("something was left before the first session")
		}
		s.Edited("margin 10 → 20", with(0.2))
		s.Edited("margin 20 → 30", with(0.3))
		ended(t, s, true)

		// It stays until it is dropped, whatever the sessions after it do.
		for range 2 {
			s, lefts = started(t, j, path)
			l := leftOnly(t, lefts, 0.3)
			if w := l.Words(); len(l.Edits) != 2 || l.Owner.User != "mechanic" || l.Changed || l.Stray ||
				!strings.Contains(w, "2 edits") || !strings.Contains(w, "margin 20 → 30") || !strings.Contains(w, "shop") {
				t.Errorf("%+v: %s", l, w)
			}
			s.Edited("another", with(0.9))
			s.Saved("", nil)
			ended(t, s, false)
		}
		s, lefts = started(t, j, path)
		if err := leftOnly(t, lefts, 0.3).Drop(); err != nil {
			t.Fatal(err)
		}
		ended(t, s, false)
		s, lefts = started(t, j, path)
		if len(lefts) > 0 {
			t.Errorf("left after it was dropped: %v", margins(lefts))
		}
		ended(t, s, false)
	}
}

// Two sessions that end badly one after the other leave two works.
func TestOneLeftDoesNotPushOutAnother(t *testing.T) {
	j, path := workshop(t)
	for _, m := range []float64{0.2, 0.4} {
		s, _ := started(t, j, path)
		s.Edited("margin", with(m))
		ended(t, s, true)
	}
	s, lefts := started(t, j, path)
	if ms := margins(lefts); len(ms) != 2 || max(ms[0], ms[1]) != 0.4 || min(ms[0], ms[1]) != 0.2 {
		t.Errorf("left are %v", ms)
	}
	ended(t, s, false)
}

func TestNothingIsLeftAfterASave(t *testing.T) {
	j, path := workshop(t)
	s, _ := started(t, j, path)
	s.Edited("margin 10 → 20", with(0.2))
	s.Saved("", nil)
	ended(t, s, true)
	s, lefts := started(t, j, path)
	if len(lefts) > 0 {
		t.Errorf("left after a save: %v", margins(lefts))
	}
	s.Edited("one", with(0.2))
	s.Saved("two", with(0.3)) // edited while it was saved
	ended(t, s, true)
	s, lefts = started(t, j, path)
	if l := leftOnly(t, lefts, 0.3); len(l.Edits) != 1 {
		t.Errorf("%+v", l.Edits)
	}
	if err := lefts[0].Drop(); err != nil {
		t.Fatal(err)
	}
	// A crash between saving the file and marking the journal leaves a state
	// that the file holds.
	s.Edited("margin 10 → 40", with(0.4))
	ended(t, s, true)
	put(t, path, string(Encode(with(0.4))))
	s, lefts = started(t, j, path)
	if len(lefts) > 0 {
		t.Errorf("what the file holds is offered: %v", margins(lefts))
	}
	ended(t, s, false)
	if names, _ := filepath.Glob(filepath.Join(filepath.Dir(path), ".*")); len(names) > 0 {
		t.Errorf("left behind: %v", names)
	}
}

func TestAFileThatChangedSinceIsTold(t *testing.T) {
	j, path := workshop(t)
	s, _ := started(t, j, path)
	s.Edited("margin 10 → 20", with(0.2))
	ended(t, s, true)
	put(t, path, string(Encode(with(0.7))))
	s, lefts := started(t, j, path)
	if l := leftOnly(t, lefts, 0.2); !l.Changed || !strings.Contains(l.Words(), "changed since") {
		t.Errorf("%s", l.Words())
	}
	ended(t, s, false)
}

// Work on a study without a file is told of whatever is opened next.
func TestStraysAreTold(t *testing.T) {
	j, path := workshop(t)
	s, _ := started(t, j, "")
	s.Edited("margin 10 → 20", with(0.2))
	other := j
	other.From = t.TempDir()
	t1, lefts := started(t, other, "")
	if len(lefts) > 0 {
		t.Error("told of work in another folder")
	}
	ended(t, t1, false)
	t2, lefts := started(t, j, path)
	if len(lefts) > 0 {
		t.Error("told of work that is still open")
	}
	ended(t, t2, false)
	ended(t, s, true)
	t3, lefts := started(t, j, path)
	if l := leftOnly(t, lefts, 0.2); !l.Stray {
		t.Error("taken for work on the file")
	}
	ended(t, t3, false)
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

// A journal beside the study that cannot be made is made in the person's own
// folder; what one of the two places holds is found from the other.
func TestJournalsInBothPlaces(t *testing.T) {
	j, path := workshop(t)
	beside := filepath.Join(filepath.Dir(path), ".trials.toml"+journalEnd)
	if err := os.Mkdir(beside, 0o700); err != nil { // no journal can be there
		t.Fatal(err)
	}
	s, _ := started(t, j, path)
	s.Edited("margin 10 → 20", with(0.2))
	ended(t, s, true)
	if err := os.Remove(beside); err != nil {
		t.Fatal(err)
	}
	s, lefts := started(t, j, path)
	leftOnly(t, lefts, 0.2)
	if s.name != beside {
		t.Errorf("the journal is %s", s.name)
	}
	ended(t, s, false)
}

// What is in the place of a journal is never written over.
func TestForeignFilesArePutAside(t *testing.T) {
	for name, text := range map[string]string{"another file": "precious", "a version to come": "backspan journal 2\n", "not to be decoded": ""} {
		j, path := workshop(t)
		beside := filepath.Join(filepath.Dir(path), ".trials.toml"+journalEnd)
		if text == "" {
			s, _ := started(t, j, path)
			if err := s.w.Add([]byte("format = 99\n"), journal.Edit{Name: "of another version"}); err != nil {
				t.Fatal(err)
			}
			ended(t, s, true)
			text = string(get(t, beside))
		} else {
			put(t, beside, text)
		}
		s, lefts := started(t, j, path)
		if len(lefts) > 0 || len(s.PutAside) != 1 || string(get(t, s.PutAside[0])) != text {
			t.Errorf("%s: %v, put aside %v", name, lefts, s.PutAside)
		}
		ended(t, s, false)
	}
	if runtime.GOOS == "windows" {
		return
	}
	j, path := workshop(t)
	precious := filepath.Join(t.TempDir(), "precious")
	put(t, precious, "precious")
	if err := os.Symlink(precious, filepath.Join(filepath.Dir(path), ".trials.toml"+journalEnd)); err != nil {
		t.Fatal(err)
	}
	s, _ := started(t, j, path)
	s.Edited("margin 10 → 20", with(0.2))
	ended(t, s, true)
	if string(get(t, precious)) != "precious" {
		t.Error("a file was written over through a link")
	}
}

// The work on a study whose file is gone or broken is not lost with it.
func TestSalvage(t *testing.T) {
	j, path := workshop(t)
	s, _ := started(t, j, path)
	s.Edited("margin 10 → 20", with(0.2))
	ended(t, s, true)
	for _, spoil := range []func() error{func() error { return os.WriteFile(path, make([]byte, 500), 0o600) }, func() error { return os.Remove(path) }} {
		if err := spoil(); err != nil {
			t.Fatal(err)
		}
		if l := j.Salvage(path); l == nil || l.Study.MarginAsked != 0.2 {
			t.Errorf("%+v", l)
		}
	}
}

func TestTroubleIsTold(t *testing.T) {
	j, path := workshop(t)
	s, _ := started(t, j, path)
	if err := s.file.Close(); err != nil {
		t.Fatal(err)
	}
	s.Edited("margin 10 → 20", with(0.2))
	deadline := time.Now().Add(10 * time.Second)
	for s.Trouble() == nil && time.Now().Before(deadline) {
		time.Sleep(time.Millisecond)
	}
	if s.Trouble() == nil {
		t.Error("edits are not kept, and nobody says so")
	}
}

func TestAJournalThatIsTakenAwayIsTold(t *testing.T) {
	j, path := workshop(t)
	s, _ := started(t, j, path)
	if err := os.Remove(s.name); err != nil {
		t.Fatal(err)
	}
	s.Edited("margin 10 → 20", with(0.2))
	if err := s.End(true); err == nil || !strings.Contains(err.Error(), "removed or renamed") {
		t.Errorf("%v", err)
	}
}

// What was left is found also when what was left before it is gone.
func TestAGapHidesNothingLeft(t *testing.T) {
	j, path := workshop(t)
	for _, margin := range []float64{0.2, 0.3} {
		s, _ := started(t, j, path)
		s.Edited("margin", with(margin))
		ended(t, s, true)
	}
	s, lefts := started(t, j, path)
	if len(lefts) != 2 {
		t.Fatal(margins(lefts))
	}
	must(t, lefts[0].Drop())
	ended(t, s, false)
	s, still := started(t, j, path)
	leftOnly(t, still, lefts[1].Study.MarginAsked)
	ended(t, s, false)
}

// A session whose journal was taken away leaves the next one's alone.
func TestOnlyTheOwnJournalIsRemoved(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("an open file cannot be taken away there")
	}
	j, path := workshop(t)
	first, _ := started(t, j, path)
	must(t, os.Remove(first.name))
	second, _ := started(t, j, path)
	second.Edited("margin", with(0.3))
	ended(t, first, false)
	ended(t, second, true)
	next, lefts := started(t, j, path)
	leftOnly(t, lefts, 0.3)
	ended(t, next, false)
}
