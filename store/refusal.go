package store

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"

	"backspan/store/report"
)

// refused is one sentence for a person, with the cause for errors.Is.
type refused struct {
	path, text string
	cause      error
}

func (e *refused) Error() string { return report.Printable(e.path) + ": " + e.text }
func (e *refused) Unwrap() error { return e.cause }

func refusal(path string, cause error, format string, a ...any) error {
	return &refused{path, fmt.Sprintf(format, a...), cause}
}

func unreadable(path string, err error) error {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return refusal(path, err, "there is no such file; check the name and the folder")
	case errors.Is(err, fs.ErrPermission):
		return refusal(path, err, "may not be read by you; ask its owner, or change its permissions")
	}
	return refusal(path, err, "cannot be read: %s", reason(err))
}

func gone(path string, err error) error {
	if errors.Is(err, fs.ErrNotExist) {
		return refusal(path, err, "not saved: the file was removed or renamed since it was opened here; save it as a new file")
	}
	return notSaved(path, err)
}

func notSaved(path string, err error) error {
	var already *refused
	switch {
	case errors.As(err, &already):
		return already
	case errors.Is(err, ErrUnconfirmed):
		return refusal(path, err, "saved, but the disk did not confirm it (%s); a power cut now could bring the old file back: save once more", reason(err))
	case errors.Is(err, fs.ErrExist):
		return refusal(path, err, "not saved: there is such a file already; choose another name")
	case errors.Is(err, fs.ErrNotExist) && isFolder(filepath.Dir(path)):
		return refusal(path, err, "not saved: the file was taken away by another program while it was written; save again")
	case errors.Is(err, fs.ErrNotExist):
		return refusal(path, err, "not saved: there is no folder %s; make it first or choose another", report.Printable(filepath.Dir(path)))
	case errors.Is(err, errNotOwner):
		return refusal(path, err, "not saved: the folder %s lets only the owner of the file replace it; save under a new name", report.Printable(filepath.Dir(absolute(path))))
	case errors.Is(err, fs.ErrPermission):
		return refusal(path, err, "not saved: you may not write in the folder %s; save somewhere else", report.Printable(filepath.Dir(absolute(path))))
	case errors.Is(err, syscall.ENOSPC), errors.Is(err, syscall.EDQUOT):
		return refusal(path, err, "not saved: %s; free some and save again, or save on another disk; what was on disk is as it was", reason(err))
	}
	return refusal(path, err, "not saved: %s; what was on disk is as it was", reason(err))
}

func isFolder(name string) bool {
	info, err := os.Stat(name)
	return err == nil && info.IsDir()
}

// reason is the innermost words of an error of the operating system.
func reason(err error) string {
	var path *fs.PathError
	var link *os.LinkError
	switch {
	case errors.As(err, &path):
		err = path.Err
	case errors.As(err, &link):
		err = link.Err
	}
	return report.Printable(strings.ReplaceAll(err.Error(), "\n", ": "))
}

// faultsOf is the first of the problems in err, without the file's name, and
// how many more there are.
func faultsOf(err error) string {
	var ps Problems
	if !errors.As(err, &ps) || len(ps) == 0 {
		var r *refused
		if errors.As(err, &r) {
			return r.text
		}
		return reason(err)
	}
	p := ps[0]
	s := p.Text
	if p.Key != "" {
		s = p.Key + ": " + s
	}
	if p.Line > 0 {
		s = fmt.Sprintf("line %d: %s", p.Line, s)
	}
	if n := len(ps) - 1; n > 0 {
		s += fmt.Sprintf(" (and %d more)", n)
	}
	return s
}
