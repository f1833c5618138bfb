package store

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"syscall"

	"backspan/store/journal"
	"backspan/store/report"
)

const journalEnd = ".journal"

// places are the files in which the journal of a study may be, the better one
// first. For a study without a file it is one that was left in the same
// folder, else a new one.
func (j Journals) places(path string, head *journal.Head) ([]string, error) {
	if path == "" {
		head.From = absolute(j.From)
		state, err := j.State()
		if err != nil {
			return nil, err
		}
		if left, ok := leftIn(state, head.From); ok {
			return []string{left}, nil
		}
		return []string{unsavedName(state, *head)}, nil
	}
	head.Study = absolute(path)
	real := head.Study
	if r, err := filepath.EvalSymlinks(real); err == nil {
		real = r
	}
	dir, base := filepath.Split(real)
	names := []string{filepath.Join(dir, "."+base+journalEnd)}
	if state, err := j.State(); err == nil {
		sum := sha256.Sum256([]byte(real))
		names = append(names, filepath.Join(state, base+"-"+hex.EncodeToString(sum[:4])+journalEnd))
	}
	return names, nil
}

func unsavedName(state string, h journal.Head) string {
	return filepath.Join(state, "unsaved-"+h.Since.UTC().Format("20060102-150405.000000000")+journalEnd)
}

// leftIn finds the journal of a study without a file that was begun in a
// folder and is open nowhere.
func leftIn(state, from string) (name string, ok bool) {
	names, err := filepath.Glob(filepath.Join(state, "unsaved-*"+journalEnd))
	if err != nil {
		return "", false
	}
	for _, name := range names {
		f, err := os.OpenFile(name, os.O_RDWR, 0)
		if err != nil {
			continue
		}
		held, _ := hold(f)
		found, _ := readJournal(f)
		_ = f.Close()
		if held && found.Head.From == from && len(found.Edits) > 0 {
			return name, true
		}
	}
	return "", false
}

// begin takes the journal at name for this process and reads what is left in
// it.
func begin(name string, head journal.Head) (*Session, *Recovery, error) {
	f, err := openHeld(name)
	if err != nil {
		return nil, nil, err
	}
	found, err := readJournal(f)
	if err != nil {
		return nil, nil, errors.Join(err, f.Close())
	}
	s := &Session{name: name, file: f, wake: make(chan struct{}, 1), done: make(chan struct{}), dirty: make(chan struct{}, 1)}
	left, err := recovered(found)
	if err != nil { // of another version, perhaps
		aside := name + ".unread"
		return nil, nil, errors.Join(refusal(name, err, "is a journal that this version cannot read; it is put aside as %s, and edits are not kept until the study is opened again",
			report.Printable(filepath.Base(aside))), os.Rename(name, aside), f.Close())
	}
	if left == nil {
		s.w, err = journal.Begin(f, head)
	} else {
		s.w, err = journal.Resume(f, head, found)
	}
	if err == nil {
		err = s.w.Sync()
	}
	if err != nil {
		return nil, nil, errors.Join(err, f.Close())
	}
	return s, left, nil
}

// openHeld opens the file and holds it against others. A bench that ends
// removes its file; one that was opened before that and held after it would
// hold nothing, so it is opened anew.
func openHeld(name string) (*os.File, error) {
	for {
		f, err := os.OpenFile(name, os.O_RDWR|os.O_CREATE, 0o600)
		if err != nil {
			return nil, err
		}
		held, err := hold(f)
		if err != nil {
			return nil, errors.Join(err, f.Close())
		}
		if !held {
			found, _ := readJournal(f)
			_ = f.Close()
			return nil, &Held{found.Head}
		}
		if (&Session{name: name, file: f}).inPlace() {
			return f, nil
		}
		_ = f.Close()
	}
}

func readJournal(f *os.File) (journal.Found, error) {
	src, err := io.ReadAll(io.NewSectionReader(f, 0, mostJournal))
	return journal.Read(src), err
}

// mostJournal bounds what is read of a file that only claims to be a journal.
const mostJournal = 1 << 30

// recovered is what of a journal is worth offering: nil when nothing was left,
// or when the file of the study holds the last state already.
func recovered(found journal.Found) (*Recovery, error) {
	if found.Text == nil {
		return nil, nil
	}
	s, err := Decode(found.Head.Study, found.Text)
	if err != nil {
		return nil, err
	}
	if src, err := os.ReadFile(found.Head.Study); err == nil {
		if there, err := Decode(found.Head.Study, src); err == nil && bytes.Equal(Encode(there), found.Text) {
			return nil, nil
		}
	}
	return &Recovery{Study: s, Edits: found.Edits, Owner: found.Head, Torn: found.Torn}, nil
}

func readOnly(err error) bool {
	return errors.Is(err, syscall.EROFS) || strings.Contains(err.Error(), "read-only file system")
}
