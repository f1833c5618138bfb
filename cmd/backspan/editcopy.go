package main

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"

	"backspan/store/report"
)

// A copy that is edited stands in the person's own folder for state, in a
// folder of its own named after the study's place and after the bytes that it
// began with, and a few figures by chance. It so outlasts a window that is
// closed, and the next edit of the study finds it.
const copyStart = "edit-"

// keptCopy is a copy that an edit before did not finish.
type keptCopy struct {
	file  string
	base  string // digest of what it began with
	text  []byte
	since time.Time
	more  bool // the editor left files of its own beside it
}

func digest(b []byte) string {
	sum := sha256.Sum256(b)
	return hex.EncodeToString(sum[:8])
}

// copiesOf begins the names of the folders that hold copies of a study.
func copiesOf(path string) string {
	if abs, err := filepath.Abs(path); err == nil {
		path = abs
	}
	if real, err := filepath.EvalSymlinks(path); err == nil {
		path = real
	}
	return copyStart + digest([]byte(path)) + "-"
}

// alone reports whether nothing else is in a file's folder. An editor that is
// ended keeps there what was typed and not saved.
func alone(file string) bool {
	entries, err := os.ReadDir(filepath.Dir(file))
	if err != nil {
		return false
	}
	for _, e := range entries {
		if e.Name() != filepath.Base(file) {
			return false
		}
	}
	return true
}

// dropCopy removes a copy in which nothing was changed.
func (p program) dropCopy(file string) error {
	if !alone(file) {
		fmt.Fprintf(p.err, "the editor left files of its own beside the copy, in %s; the next edit of the study offers them\n", report.Printable(filepath.Dir(file)))
		return nil
	}
	return os.RemoveAll(filepath.Dir(file))
}

// keptCopies are those of a study in which something was changed or may have
// been, and those in which nothing was.
func (p program) keptCopies(path string) (changed, untouched []keptCopy) {
	state, err := p.stateFolder()
	if err != nil {
		return nil, nil
	}
	entries, err := os.ReadDir(state)
	if err != nil {
		return nil, nil
	}
	start := copiesOf(path)
	for _, e := range entries {
		rest, ours := strings.CutPrefix(e.Name(), start)
		if !ours || !e.IsDir() {
			continue
		}
		c := keptCopy{file: filepath.Join(state, e.Name(), filepath.Base(path))}
		c.base, _, _ = strings.Cut(rest, "-")
		info, err := os.Lstat(c.file)
		if err != nil || !info.Mode().IsRegular() {
			continue
		}
		if c.text, err = os.ReadFile(c.file); err != nil {
			continue
		}
		c.since, c.more = info.ModTime(), !alone(c.file)
		if digest(c.text) == c.base && !c.more {
			untouched = append(untouched, c)
		} else {
			changed = append(changed, c)
		}
	}
	return changed, untouched
}

// words says what a copy is.
func (c keptCopy) words() string {
	if digest(c.text) == c.base {
		return fmt.Sprintf("an edit that did not finish left files of the editor beside its copy, of %s: %s", c.since.Local().Format("2 Jan 2006 15:04"), report.Printable(c.file))
	}
	return fmt.Sprintf("an edit that did not finish left a copy with changes, of %s: %s", c.since.Local().Format("2 Jan 2006 15:04"), report.Printable(c.file))
}

// keptFor names the copies of a study that cannot be opened; nil when there
// are none.
func (p program) keptFor(path string) error {
	var all []error
	changed, _ := p.keptCopies(path)
	for _, c := range changed {
		all = append(all, errors.New(c.words()))
	}
	return errors.Join(all...)
}

// copyToEdit is the file to edit: what an edit before left, where the person
// wants to go on with it, else a fresh copy of src.
func (p program) copyToEdit(path string, src []byte) (string, error) {
	changed, untouched := p.keptCopies(path)
	for _, c := range changed {
		if bytes.Equal(c.text, src) && !c.more {
			continue // it came into the study in another way; an editor's window may have it open still
		}
		fmt.Fprintln(p.err, c.words())
		question, usual := "Go on with it?", true
		if c.base != digest(src) {
			question, usual = "The study was changed since: to save the copy takes those changes back. Go on with it?", false
		}
		if p.yes(question, usual) {
			return c.file, nil
		}
		fmt.Fprintln(p.err, "it stays; remove it when it is not wanted")
	}
	for _, c := range untouched {
		if bytes.Equal(c.text, src) {
			return c.file, nil
		}
	}
	return p.freshCopy(path, src)
}

// freshCopy has the study's name, so that an editor knows its kind. Where this
// person has no folder for state it is kept with what is passing.
func (p program) freshCopy(path string, src []byte) (string, error) {
	name := copiesOf(path) + digest(src) + "-*"
	state, err := p.stateFolder()
	if err == nil {
		state, err = os.MkdirTemp(state, name)
	}
	if err != nil {
		if state, err = os.MkdirTemp("", "backspan-"+name); err != nil {
			return "", err
		}
	}
	file := filepath.Join(state, filepath.Base(path))
	return file, os.WriteFile(file, src, 0o600)
}
