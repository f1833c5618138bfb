package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/user"
	"path/filepath"
	"strings"

	"backspan/model"
	"backspan/store"
	"backspan/store/journal"
	"backspan/store/report"
	"backspan/tui"
)

// rescued marks the names of files that were written when the bench was ended
// from outside.
const rescued = ".rescued"

// mostRescued is how many rescued states of one study are kept side by side.
const mostRescued = 999

// ended says where unsaved edits are when the bench was ended from outside or
// by a fault, and keeps them in a file of their own when the journal could
// not.
func (p program) ended(e tui.Ending) {
	if e.Fault != nil {
		p.reportFault(e)
	}
	switch {
	case !e.Unsaved:
	case e.Journaled && e.Path != "" && !there(e.Path):
		p.rescue(e.Path, e.Study)
	case e.Journaled && e.Path != "":
		fmt.Fprintf(p.err, "backspan: the edits that were not saved are kept; to go on with them: backspan open %s\n", report.Printable(e.Path))
	case e.Journaled:
		fmt.Fprintf(p.err, "backspan: the edits that were not saved are kept; to go on with them, start backspan in this folder again\n")
	default:
		p.rescue(e.Path, e.Study)
	}
}

func there(path string) bool {
	_, err := os.Stat(path)
	return err == nil
}

// rescue keeps a study in a file of its own and says where.
func (p program) rescue(path string, s *model.Study) {
	kept, err := p.aside(path, s)
	if err != nil {
		fmt.Fprintf(p.err, "backspan: the edits that were not saved are lost: %v\n", err)
		return
	}
	name := report.Printable(kept)
	fmt.Fprintf(p.err, "backspan: the edits that were not saved are kept in %s; to go on: backspan open %s\n", name, name)
}

// aside keeps a study beside the file at path, or in the person's own folder
// for state when that one cannot be written.
func (p program) aside(path string, s *model.Study) (kept string, err error) {
	dir, base := p.dir, "unsaved"
	if path != "" {
		dir, base = filepath.Split(path)
		base = strings.TrimSuffix(base, filepath.Ext(base))
		base, _, _ = strings.Cut(base, rescued) // one that was rescued before
	}
	if kept, err = keep(dir, base, s); err == nil {
		return kept, nil
	}
	state, err := p.stateFolder()
	if err != nil {
		return "", err
	}
	return keep(state, base, s)
}

// journals is where edits are kept until they are saved.
func (p program) journals() store.Journals {
	owner := journal.Head{PID: os.Getpid(), User: p.env("USER")}
	if u, err := user.Current(); err == nil {
		owner.User = u.Username
	}
	owner.Host, _ = os.Hostname()
	return store.Journals{State: p.stateFolder, From: p.dir, Owner: owner}
}

// keep writes s under the first free name for base in dir.
func keep(dir, base string, s *model.Study) (path string, err error) {
	folder := store.NewFolder(dir)
	for n := 1; n <= mostRescued; n++ {
		name := base + rescued
		if n > 1 {
			name += fmt.Sprint(n)
		}
		path = filepath.Join(dir, name+".toml")
		if _, err = folder.Create(path, s); !errors.Is(err, fs.ErrExist) {
			return path, err
		}
	}
	return "", err
}

// stateFolder is where this person's programs keep what they must not lose.
func (p program) stateFolder() (string, error) {
	parent := p.env("XDG_STATE_HOME")
	if parent == "" {
		var err error
		if parent, err = os.UserConfigDir(); err != nil {
			return "", err
		}
	}
	dir := filepath.Join(parent, "backspan")
	return dir, os.MkdirAll(dir, 0o700)
}
