package store

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"backspan/store/report"
)

// keepVersion puts the file's present bytes beside it as version 1 and moves
// the older ones up; the oldest above most is dropped. Nothing is moved before
// the new one is on disk, and each step leaves every version under one name or
// another.
func (f *Folder) keepVersion(name string, old []byte, mode fs.FileMode, most int) error {
	if most <= 0 {
		return nil
	}
	switch there, err := ours(version(name, 1)); {
	case err != nil:
		return err
	case bytes.Equal(there, old):
		return nil // kept by a save that failed afterwards
	}
	free := 1
	for ; free < most; free++ {
		if _, err := os.Lstat(version(name, free)); errors.Is(err, fs.ErrNotExist) {
			break
		}
	}
	if _, err := ours(version(name, free)); err != nil {
		return err
	}
	_, err := write(f.disk, version(name, 1), old, &mode, func(temp string) error {
		for i := free; i > 1; i-- {
			if err := f.disk.rename(version(name, i-1), version(name, i)); err != nil {
				return err
			}
		}
		return f.disk.rename(temp, version(name, 1))
	})
	return err
}

// ours reads a version, nil where there is none; what is no version of a study
// is not to be written over.
func ours(name string) ([]byte, error) {
	there, err := readRegular(name, mostBytes+1)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, nil
	case err != nil:
		return nil, fmt.Errorf("%s cannot be read: %s", report.Printable(filepath.Base(name)), reason(err))
	case !meantAsStudy(there):
		return nil, fmt.Errorf("%s is something else; move it away", report.Printable(filepath.Base(name)))
	}
	return there, nil
}

func version(name string, n int) string { return fmt.Sprintf("%s.%d", name, n) }

// mostVersions is how many a study can ask for.
const mostVersions = 99

// olderVersions names the versions that are more than a study asks for. They
// stay, because a count that is mistyped must cost none; it is said when the
// count was lowered, and after a change by hand, which may have lowered it.
func olderVersions(path, name string, old []byte, byPerson bool, most int) string {
	if s, err := Decode(path, old); err == nil && s.VersionsKept <= most && !byPerson {
		return ""
	}
	var older []string
	for n := most + 1; n <= mostVersions; n++ {
		if there, err := readRegular(version(name, n), mostBytes); err == nil && meantAsStudy(there) {
			older = append(older, report.Printable(filepath.Base(version(name, n))))
		}
	}
	switch len(older) {
	case 0:
		return ""
	case 1:
		return fmt.Sprintf("%s is older than the versions that are kept now; it stays until you delete it", older[0])
	}
	return fmt.Sprintf("%d versions, %s to %s, are older than those that are kept now; they stay until you delete them", len(older), older[0], older[len(older)-1])
}

// also puts two notes together; either may be empty.
func also(note, more string) string {
	if note != "" && more != "" {
		note += "; "
	}
	return note + more
}
