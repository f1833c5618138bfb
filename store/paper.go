package store

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"backspan/store/report"
)

// WriteDocument writes a document to path, whole or not at all. A file that is
// there is replaced only when over is true, a study never.
func WriteDocument(path string, data []byte, over bool) error {
	if err := NoStudy(path); err != nil {
		return err
	}
	err := create(realDisk{}, path, data, nil)
	if over && errors.Is(err, fs.ErrExist) {
		return written(path, overwrite(path, data))
	}
	return written(path, err)
}

// NoStudy refuses a name by which what is no study would be taken for one.
func NoStudy(path string) error {
	if strings.EqualFold(filepath.Ext(path), extension) {
		return refusal(path, nil, "not written: %s is the ending of a study; choose another name", extension)
	}
	return nil
}

// overwrite follows a link to the file that it stands for.
func overwrite(path string, data []byte) error {
	real, err := filepath.EvalSymlinks(path)
	if err != nil {
		return err
	}
	info, err := os.Stat(real)
	switch {
	case err != nil:
		return err
	case !info.Mode().IsRegular():
		return errors.New(report.Printable(path) + " is not a file")
	case strings.EqualFold(filepath.Ext(real), extension):
		return errors.New("it stands for a study")
	case !mayWrite(real):
		return fs.ErrPermission
	case holdsStudy(real):
		return errors.New("it holds a study; choose another name")
	}
	_, err = replace(realDisk{}, real, data, info.Mode().Perm(), func() error { return nil })
	return err
}

// holdsStudy is true for a study under another ending, such as one of its
// versions or backups.
func holdsStudy(name string) bool {
	src, err := read(name)
	if err != nil {
		return false
	}
	text, unreadable := textOf("", src)
	return unreadable == nil && likeStudy(text, outlineOf(text))
}

func written(path string, err error) error {
	switch {
	case err == nil:
		return nil
	case errors.Is(err, fs.ErrExist):
		return refusal(path, err, "not written: there is such a file already; choose another name, or give --force to write over it")
	case errors.Is(err, errNotOwner):
		return refusal(path, err, "not written: the folder lets only the owner of the file replace it; choose another name")
	}
	return refusal(path, err, "not written: %s", reason(err))
}
