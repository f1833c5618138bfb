package store

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"backspan/model"
	"backspan/store/journal"
	"backspan/store/report"
)

// Left is work that a session which was ended from outside left. It stays on
// disk until it is dropped.
type Left struct {
	Study   *model.Study
	Edits   []journal.Edit
	Owner   journal.Head
	Torn    bool // the newest could not be read and is lost
	Changed bool // the file is not the one that this work began from
	Stray   bool // of a study without a file, found while another is opened

	file string
}

// Drop removes it: it is saved elsewhere, or not wanted.
func (l *Left) Drop() error { return os.Remove(l.file) }

// Words says what was found.
func (l *Left) Words() string {
	last := l.Edits[len(l.Edits)-1]
	study := report.Printable(l.Study.Name)
	if l.Stray {
		study += ", which is in no file yet,"
	}
	s := fmt.Sprintf("Work on %s ended without being saved, on %s, at %s. ", study, report.Printable(l.Owner.Host), last.At.Local().Format("2 Jan 2006 15:04"))
	if len(l.Edits) == 1 {
		s += fmt.Sprintf("One edit is kept: %s.", report.Printable(last.Name))
	} else {
		s += fmt.Sprintf("%d edits are kept; the last: %s.", len(l.Edits), report.Printable(last.Name))
	}
	if l.Torn {
		s += " The end could not be read."
	}
	if l.Changed {
		s += " The file was changed since."
	}
	return s
}

// leftIn reads what is left in a file of a study, nil when it holds nothing
// that the study's file does not hold. What the study's file holds already is
// removed.
func leftIn(file, study string) *Left {
	src, err := readRegular(file, mostJournal)
	if err != nil {
		return nil
	}
	found := journal.Read(src)
	if found.Text == nil {
		return nil
	}
	s, err := Decode(study, found.Text)
	if err != nil {
		return nil
	}
	l := &Left{Study: s, Edits: found.Edits, Owner: found.Head, Torn: found.Torn, file: file}
	if study == "" {
		return l
	}
	if there, err := read(study); err == nil {
		if was, err := Decode(study, there); err == nil && bytes.Equal(Encode(was), Encode(s)) {
			_ = l.Drop()
			return nil
		}
	}
	l.Changed = found.Base != "" && found.Base != fingerprint(study)
	return l
}

// lefts gathers what is left of a study beside its journals, and of studies
// without a file that were begun in the same folder.
func (j Journals) lefts(study string, journals []string, mine string) []*Left {
	var all []*Left
	add := func(file, study string) {
		if l := leftIn(file, study); l != nil {
			all = append(all, l)
		}
	}
	for _, name := range journals {
		for n := 1; n <= mostAside; n++ {
			add(aside(name, leftEnd, n), study) // also after a gap: an earlier one may have been dropped
		}
		if name != mine && unheld(name) {
			add(name, study)
		}
	}
	for _, file := range j.strays(mine) {
		add(file, "")
		if n := len(all); study != "" && n > 0 && all[n-1].file == file {
			all[n-1].Stray = true
		}
	}
	return all
}

// strays are the journals of studies without a file that were begun in this
// folder and are open nowhere.
func (j Journals) strays(mine string) []string {
	state, err := j.State()
	if err != nil {
		return nil
	}
	entries, err := os.ReadDir(state)
	if err != nil {
		return nil
	}
	var files []string
	for _, e := range entries {
		file := filepath.Join(state, e.Name())
		if !strings.HasPrefix(e.Name(), unsavedStart) || file == mine || !unheld(file) {
			continue
		}
		src, err := readRegular(file, mostJournal)
		if err == nil && journal.Read(src).Head.From == realFolder(j.From) {
			files = append(files, file)
		}
	}
	return files
}

// unheld reports whether a journal is open nowhere.
func unheld(name string) bool {
	f, err := openRegular(name, os.O_RDWR)
	if err != nil {
		return false
	}
	held, err := hold(f)
	_ = f.Close()
	return held && err == nil
}

// fingerprint tells states of a file apart; "" for one that cannot be read.
func fingerprint(file string) string {
	src, err := read(file)
	if err != nil {
		return ""
	}
	sum := sha256.Sum256(src)
	return hex.EncodeToString(sum[:])
}

// Salvage is what the journals of a study hold whose file cannot be opened,
// the newest first.
func (j Journals) Salvage(path string) *Left {
	head := j.Owner
	names, err := j.places(path, &head)
	if err != nil {
		return nil
	}
	var newest *Left
	for _, l := range j.lefts(absolute(path), names, "") {
		if !l.Stray && (newest == nil || l.Edits[len(l.Edits)-1].At.After(newest.Edits[len(newest.Edits)-1].At)) {
			newest = l
		}
	}
	return newest
}
