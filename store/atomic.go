package store

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
)

// ErrUnconfirmed is the one failure after which the new bytes are in place.
var ErrUnconfirmed = errors.New("written, but the disk did not confirm it")

// errNotOwner marks a folder in which only the owner of a file may put another
// in its place.
var errNotOwner = errors.New("the folder lets only the owner of a file replace it")

// replace puts data in the place of the file at name, which keeps mode, owner
// and access list as far as the file system lets it; the note says what could
// not be kept. A reader, or the next start after a crash, finds all old or all
// new bytes. confirm runs last before the change; its error stops it.
func replace(d disk, name string, data []byte, mode fs.FileMode, confirm func() error) (note string, err error) {
	lost, err := write(d, name, data, &mode, func(temp string) error {
		if err := confirm(); err != nil {
			return err
		}
		err := d.rename(temp, name)
		if errors.Is(err, fs.ErrPermission) && sticky(filepath.Dir(name)) {
			return errors.Join(errNotOwner, err)
		}
		return err
	})
	if len(lost) == 0 || err != nil && !errors.Is(err, ErrUnconfirmed) {
		return "", err
	}
	return "the file could not keep its " + strings.Join(lost, ", "), err
}

func sticky(dir string) bool {
	info, err := os.Stat(dir)
	return err == nil && info.Mode()&fs.ModeSticky != 0
}

// create makes a new file at name, whole or not at all, and never over one
// that is there. A nil mode leaves the mode to the umask.
func create(d disk, name string, data []byte, mode *fs.FileMode) error {
	_, err := write(d, name, data, mode, func(temp string) error {
		err := d.link(temp, name)
		if !linksMissing(err) {
			if err == nil {
				_ = d.remove(temp) // a second name of the new file; harmless if it stays
			}
			return err
		}
		if err := d.claim(name); err != nil {
			return err
		}
		if err := d.rename(temp, name); err != nil {
			return errors.Join(err, d.remove(name))
		}
		return nil
	})
	return err
}

// linksMissing is true when the file system has no hard links.
func linksMissing(err error) bool {
	return errors.Is(err, syscall.EPERM) || errors.Is(err, syscall.EMLINK) || errors.Is(err, errors.ErrUnsupported)
}

func write(d disk, name string, data []byte, mode *fs.FileMode, place func(temp string) error) (lost []string, err error) {
	dir := filepath.Dir(name)
	open := fs.FileMode(0o666)
	if mode != nil {
		open = 0o600 // until it has the mode of what it replaces
	}
	f, err := d.createTemp(dir, open)
	if err != nil {
		return nil, err
	}
	sweep(d, dir, datedBy(f.Name()))
	closed := false
	defer func() {
		if err != nil && !errors.Is(err, ErrUnconfirmed) {
			if !closed {
				_ = f.Close()
			}
			_ = d.remove(f.Name())
		}
	}()
	if _, err = f.Write(data); err != nil {
		return nil, err
	}
	if err = f.Sync(); err != nil {
		return nil, err
	}
	closed = true
	if err = f.Close(); err != nil {
		return nil, err
	}
	if mode != nil {
		if lost, err = resemble(d, f.Name(), name, *mode); err != nil {
			return nil, err
		}
	}
	if err = place(f.Name()); err != nil {
		return nil, err
	}
	if e := d.syncDir(dir); e != nil {
		return lost, errors.Join(ErrUnconfirmed, e)
	}
	return lost, nil
}

// resemble gives a file what the one has that it is going to replace, and the
// mode. It names what the file system does not let it have: to refuse a save
// for that would lose more.
func resemble(d disk, file, like string, mode fs.FileMode) (lost []string, err error) {
	lost = append(sameOwner(d, file, like), sameAttributes(file, like)...)
	info, err := os.Lstat(file)
	if err == nil && info.Mode().Perm() == mode {
		return lost, nil
	}
	err = d.chmod(file, mode)
	if errors.Is(err, syscall.EPERM) || errors.Is(err, syscall.EINVAL) || errors.Is(err, errors.ErrUnsupported) {
		return append(lost, fmt.Sprintf("mode (%v)", mode)), nil
	}
	return lost, err
}
