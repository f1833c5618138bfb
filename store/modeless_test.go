package store

import (
	"bytes"
	"errors"
	"io/fs"
	"strings"
	"syscall"
	"testing"
)

// modeless is a mount on which modes are not to be changed.
type modeless struct {
	realDisk
	cause error
}

func (d modeless) chmod(name string, _ fs.FileMode) error {
	return &fs.PathError{Op: "chmod", Path: name, Err: d.cause}
}

// A mount that keeps no modes lets studies be saved; a mode that is right
// already is not asked for.
func TestSaveWhereModesAreNotKept(t *testing.T) {
	for _, cause := range []error{syscall.EPERM, syscall.ENOTSUP, syscall.ENOSYS, syscall.EINVAL} {
		f, path, s := scene(t)
		f.disk = modeless{cause: cause}
		note, err := f.Save(path, s)
		if err != nil || !bytes.Equal(get(t, path), Encode(s)) || !strings.Contains(note, "the file could not keep its mode (-rw-r-----)") {
			t.Errorf("%v: %q, %v", cause, note, err)
		}
		s.Name = "Newer"
		if note, err := f.Save(path, s); err != nil || note != "" {
			t.Errorf("%v: told again: %q, %v", cause, note, err)
		}
	}
	f, path, s := scene(t)
	f.disk = modeless{cause: syscall.EIO}
	if _, err := f.Save(path, s); !errors.Is(err, syscall.EIO) || string(get(t, path)) != byHand {
		t.Errorf("a disk that is ill: %v", err)
	}
}
