package store

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"

	"backspan/store/journal"
	"backspan/store/report"
)

// openHeld opens a journal and holds it against others. A bench that ends
// removes its file; one that was opened before that and held after it would
// hold nothing, so it is opened anew.
func openHeld(name string) (*os.File, error) {
	for {
		f, err := openRegular(name, os.O_RDWR|os.O_CREATE)
		if errors.Is(err, fs.ErrPermission) {
			if there, lost := os.Lstat(name); lost == nil {
				return nil, &Held{journal.Head{User: ownerOf(there)}}
			}
		}
		if err != nil {
			return nil, err
		}
		held, err := hold(f)
		if err != nil {
			return nil, errors.Join(err, f.Close())
		}
		if !held {
			src, _ := readAll(f, mostJournal)
			_ = f.Close()
			return nil, &Held{journal.Read(src).Head}
		}
		if (&Session{name: name, file: f}).inPlace() {
			return f, nil
		}
		_ = f.Close()
	}
}

// openRegular opens an ordinary file of the person's own; through no link,
// because what is behind it would be written over.
func openRegular(name string, how int) (*os.File, error) {
	if there, err := os.Lstat(name); err == nil && !there.Mode().IsRegular() {
		return nil, fmt.Errorf("%s is no ordinary file; move it away", report.Printable(name))
	}
	return os.OpenFile(name, how|notThroughLinks, 0o600)
}

func readRegular(name string, most int64) ([]byte, error) {
	f, err := openRegular(name, os.O_RDONLY)
	if err != nil {
		return nil, err
	}
	src, err := readAll(f, most)
	return src, errors.Join(err, f.Close())
}

func readAll(f *os.File, most int64) ([]byte, error) {
	return io.ReadAll(io.NewSectionReader(f, 0, most))
}
