package main

import (
	"errors"
	"flag"
	"fmt"
	"io/fs"

	"backspan/model"
	"backspan/store"
	"backspan/store/report"
)

// study is a study opened so that it can be saved again.
type study struct {
	*model.Study
	folder *store.Folder
	path   string // empty for the sample
}

// toChange reads the command line of what opens one study. done means that
// help was shown or something was refused, with the status to leave with.
func (p program) toChange(fs *flag.FlagSet, args []string) (s study, status int, done bool) {
	rest, status, done := p.parse(fs, args, 1)
	if done {
		return s, status, true
	}
	s.folder = store.NewFolder(p.dir)
	var err error
	if s.Study, s.path, err = findIn(s.folder, first(rest)); err != nil {
		return s, p.cannot(err), true
	}
	return s, statusFine, false
}

// pick is the variant of that name, the reference when name is empty.
func pick(s *model.Study, name string) (int, error) {
	if name == "" {
		if i := s.ReferenceIndex(); i >= 0 {
			return i, nil
		}
		return 0, fmt.Errorf("the study has no variants; add at least one [[variant]]")
	}
	if _, err := only(s, []string{name}, false); err != nil {
		return 0, err
	}
	return s.Index(name), nil
}

// save writes the study over its file and says so.
func (p program) save(s study, what string) error {
	if s.path == "" {
		return fmt.Errorf("there is no study file here to keep it in; write one first: backspan sample my.toml")
	}
	release, err := p.holdAlone(s.path)
	if err != nil {
		return fmt.Errorf("%s: not saved: %w", report.Printable(s.path), err)
	}
	defer release()
	note, err := s.folder.Save(s.path, s.Study)
	if err != nil {
		return err
	}
	fmt.Fprintf(p.err, "%s in %s\n", report.Printable(what), report.Printable(s.path))
	if note != "" {
		fmt.Fprintln(p.err, note)
	}
	return nil
}

// holdAlone keeps benches and other commands off a study. It refuses one that
// is open elsewhere, or that has edits which nobody took up yet.
func (p program) holdAlone(path string) (release func(), err error) {
	session, lefts, err := p.journals().Begin(path)
	var refused *fs.PathError
	switch {
	case errors.As(err, &refused):
		return nil, fmt.Errorf("it cannot be held against a second bench, because nothing may be written beside it nor in a folder of your own (%w); set XDG_STATE_HOME to a folder that you may write in", refused.Err)
	case err != nil:
		return nil, err
	}
	release = func() { _ = session.End(false) }
	for _, l := range lefts {
		if !l.Stray {
			release()
			return nil, fmt.Errorf("%s Take it up or put it aside first: backspan open %s", l.Words(), report.Printable(path))
		}
	}
	return release, nil
}
