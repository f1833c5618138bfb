package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"backspan/model"
	"backspan/store"
	"backspan/store/report"
)

// rescued marks the names of files that were written when the bench was ended
// from outside.
const rescued = ".rescued"

// mostRescued is how many rescued states of one study are kept side by side.
const mostRescued = 999

// rescue keeps a study that has edits nobody saved, when the bench was ended
// from outside or by a fault: beside its file, or in the person's own folder
// for state when that one cannot be written. It says where.
func (p program) rescue(path string, s *model.Study) {
	dir, base := p.dir, "unsaved"
	if path != "" {
		dir, base = filepath.Split(path)
		base = strings.TrimSuffix(base, filepath.Ext(base))
		base, _, _ = strings.Cut(base, rescued) // one that was rescued before
	}
	kept, err := keep(dir, base, s)
	if err != nil {
		var state string
		if state, err = p.stateFolder(); err == nil {
			kept, err = keep(state, base, s)
		}
	}
	if err != nil {
		fmt.Fprintf(p.err, "backspan: the edits that were not saved are lost: %v\n", err)
		return
	}
	name := report.Printable(kept)
	fmt.Fprintf(p.err, "backspan: the edits that were not saved are kept in %s; to go on: backspan open %s\n", name, name)
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
