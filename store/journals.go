package store

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"backspan/store/journal"
	"backspan/store/report"
)

// Held says that a study is open on another bench.
type Held struct{ Owner journal.Head }

func (h *Held) Error() string {
	o := h.Owner
	switch {
	case o.User == "":
		return "it is open on another bench"
	case o.Since.IsZero():
		return report.Printable(o.User) + " has it open, or left it with edits that were not saved"
	}
	return fmt.Sprintf("%s has it open on %s since %s", report.Printable(o.User), report.Printable(o.Host), o.Since.Local().Format("2 Jan 2006 15:04"))
}

// Journals is where the journals of studies are kept: beside them, or in the
// person's own folder where that cannot be written and for studies without a
// file.
type Journals struct {
	State func() (string, error) // makes and names the person's own folder
	From  string                 // folder in which the program was started
	Owner journal.Head           // user, host and process
}

// Begin opens the journal of the study at path, "" for one without a file, and
// tells what earlier sessions left. A study that is open elsewhere gives a
// *Held.
func (j Journals) Begin(path string) (*Session, []*Left, error) {
	head := j.Owner
	head.Since = time.Now()
	names, err := j.places(path, &head)
	if err != nil {
		return nil, nil, err
	}
	var s *Session
	for _, name := range names {
		var held *Held
		if s, err = begin(name, head); err == nil || errors.As(err, &held) {
			break
		}
	}
	if err != nil {
		return nil, nil, err
	}
	if path != "" && s.name != names[0] {
		s.Elsewhere = filepath.Dir(s.name)
	}
	var now time.Time
	if s.name == names[0] {
		now = datedBy(s.name) // written just now
	}
	sweep(realDisk{}, filepath.Dir(names[0]), now)
	lefts := j.lefts(head.Study, names, s.name)
	go s.run()
	return s, lefts, nil
}

// Alone opens a new journal for a study without a file.
func (j Journals) Alone() (*Session, error) {
	head := j.Owner
	head.Since = time.Now()
	names, err := j.places("", &head)
	if err != nil {
		return nil, err
	}
	s, err := begin(names[0], head)
	if err == nil {
		go s.run()
	}
	return s, err
}

const (
	journalEnd   = ".journal"
	leftEnd      = ".left"
	unreadEnd    = ".unread"
	unsavedStart = "unsaved-"
	mostAside    = 99
	mostJournal  = 1 << 30 // bounds what is read of a file that only claims to be a journal
)

// places are the files in which the journal of a study may be, the better one
// first.
func (j Journals) places(path string, head *journal.Head) ([]string, error) {
	if path == "" {
		head.From = realFolder(j.From)
		state, err := j.State()
		name := unsavedStart + head.Since.UTC().Format("20060102-150405.000000000") + journalEnd
		return []string{filepath.Join(state, name)}, err
	}
	head.Study = absolute(path)
	head.Base = fingerprint(head.Study)
	real := head.Study
	if r, err := filepath.EvalSymlinks(real); err == nil {
		real = r
	}
	dir, base := filepath.Split(real)
	names := []string{filepath.Join(dir, "."+base+journalEnd)}
	if state, err := j.State(); err == nil {
		sum := sha256.Sum256([]byte(real))
		names = append(names, filepath.Join(state, hex.EncodeToString(sum[:8])+journalEnd))
	}
	return names, nil
}

// realFolder is a folder as it is named when no link leads to it.
func realFolder(dir string) string {
	dir = absolute(dir)
	if r, err := filepath.EvalSymlinks(dir); err == nil {
		return r
	}
	return dir
}

// begin takes the journal at name for this process. What an earlier session
// left in it is moved beside it first.
func begin(name string, head journal.Head) (*Session, error) {
	var putAside []string
	for {
		f, err := openHeld(name)
		if err != nil {
			return nil, err
		}
		kind, err := remains(f, head.Study)
		if err == nil && kind != "" {
			var moved string
			if moved, err = setAside(name, kind); err == nil && kind == unreadEnd {
				putAside = append(putAside, moved)
			}
		}
		switch {
		case err != nil:
			return nil, errors.Join(err, f.Close())
		case kind != "":
			_ = f.Close()
			continue
		}
		w, err := journal.Begin(f, head)
		if err == nil {
			err = errors.Join(w.Sync(), realDisk{}.syncDir(filepath.Dir(name)))
		}
		if err != nil {
			return nil, errors.Join(err, f.Close())
		}
		return &Session{name: name, study: head.Study, file: f, w: w, PutAside: putAside,
			wake: make(chan struct{}, 1), done: make(chan struct{}), dirty: make(chan struct{}, 1)}, nil
	}
}

// remains says what stands in a journal: "" for nothing of worth, work that
// was left, or something that cannot be read.
func remains(f *os.File, study string) (kind string, err error) {
	src, err := readAll(f, mostJournal)
	if err != nil || len(src) == 0 {
		return "", err
	}
	found := journal.Read(src)
	if found.Text != nil {
		if _, err := Decode(study, found.Text); err != nil {
			return unreadEnd, nil // of another version, perhaps
		}
		return leftEnd, nil
	}
	if !found.Clean {
		return unreadEnd, nil
	}
	return "", nil
}

func aside(name, kind string, n int) string {
	if n == 1 {
		return name + kind
	}
	return fmt.Sprintf("%s%s%d", name, kind, n)
}

// setAside renames a journal to the first name that is free.
func setAside(name, kind string) (string, error) {
	for n := 1; n <= mostAside; n++ {
		to := aside(name, kind, n)
		if _, err := os.Lstat(to); err == nil {
			continue
		}
		return to, os.Rename(name, to)
	}
	return "", fmt.Errorf("there are %d journals put aside as %s already; move some away", mostAside, report.Printable(aside(name, kind, 1)))
}
