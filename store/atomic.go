package store

import (
	"errors"
	"io/fs"
	"path/filepath"
	"syscall"
)

// ErrUnconfirmed is the one failure after which the new bytes are in place.
var ErrUnconfirmed = errors.New("written, but the disk did not confirm it")

// replace puts data in the place of the file at name, which keeps mode. A
// reader, or the next start after a crash, finds all old or all new bytes.
// confirm runs last before the change; its error stops it.
func replace(d disk, name string, data []byte, mode fs.FileMode, confirm func() error) error {
	return write(d, name, data, &mode, func(temp string) error {
		if err := confirm(); err != nil {
			return err
		}
		return d.rename(temp, name)
	})
}

// create makes a new file at name, whole or not at all, and never over one
// that is there. A nil mode leaves the mode to the umask.
func create(d disk, name string, data []byte, mode *fs.FileMode) error {
	return write(d, name, data, mode, func(temp string) error {
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
}

// linksMissing is true when the file system has no hard links.
func linksMissing(err error) bool {
	return errors.Is(err, syscall.EPERM) || errors.Is(err, syscall.EMLINK) || errors.Is(err, errors.ErrUnsupported)
}

func write(d disk, name string, data []byte, mode *fs.FileMode, place func(temp string) error) (err error) {
	dir := filepath.Dir(name)
	open := fs.FileMode(0o666)
	if mode != nil {
		open = 0o600 // until it has the mode of what it replaces
	}
	f, err := d.createTemp(dir, open)
	if err != nil {
		return err
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
		return err
	}
	if err = f.Sync(); err != nil {
		return err
	}
	closed = true
	if err = f.Close(); err != nil {
		return err
	}
	if mode != nil {
		sameOwner(f.Name(), name)
		if err = d.chmod(f.Name(), *mode); err != nil {
			return err
		}
	}
	if err = place(f.Name()); err != nil {
		return err
	}
	if e := d.syncDir(dir); e != nil {
		return errors.Join(ErrUnconfirmed, e)
	}
	return nil
}
