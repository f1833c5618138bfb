package store

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
)

// disk is every step by which a save changes the disk. Tests make one step
// fail at a time.
type disk interface {
	createTemp(dir string, mode fs.FileMode) (tempFile, error)
	chmod(name string, mode fs.FileMode) error
	chown(name string, uid, gid int) error // −1 leaves one as it is
	rename(from, to string) error          // over what is there
	link(from, to string) error            // never over what is there
	claim(name string) error               // makes an empty file, never over what is there
	remove(name string) error
	syncFile(name string) error
	syncDir(dir string) error
}

type tempFile interface {
	Name() string
	Write([]byte) (int, error)
	Sync() error
	Close() error
}

type realDisk struct{}

// createTemp takes from the mode what the user's umask takes.
func (realDisk) createTemp(dir string, mode fs.FileMode) (tempFile, error) {
	f, err := os.OpenFile(filepath.Join(dir, tempName()), os.O_RDWR|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return nil, err
	}
	return f, nil
}

func (realDisk) chmod(name string, mode fs.FileMode) error { return os.Chmod(name, mode) }
func (realDisk) chown(name string, uid, gid int) error     { return os.Chown(name, uid, gid) }
func (realDisk) rename(from, to string) error              { return os.Rename(from, to) }
func (realDisk) link(from, to string) error                { return os.Link(from, to) }
func (realDisk) remove(name string) error                  { return os.Remove(name) }

func (realDisk) claim(name string) error {
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return err
	}
	return f.Close()
}

func (realDisk) syncFile(name string) error {
	f, err := os.OpenFile(name, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	return errors.Join(f.Sync(), f.Close())
}

// syncDir makes a rename survive a power cut. File systems that cannot do
// that for a folder say so with EINVAL or ENOTSUP; nothing more can be done.
func (realDisk) syncDir(dir string) error {
	f, err := os.Open(dir)
	if err != nil {
		return err
	}
	err = f.Sync()
	if errors.Is(err, syscall.EINVAL) || errors.Is(err, errors.ErrUnsupported) {
		err = nil
	}
	return errors.Join(err, f.Close())
}
