package store

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"testing"
)

// A folder that everybody may write in gives nobody the files of others.
func TestForeignFileIsNotWrittenOver(t *testing.T) {
	if os.Getuid() != 0 {
		t.Skip("only the superuser may act as another person")
	}
	const visitor = 54321
	for _, tc := range []struct {
		mode  fs.FileMode
		saved bool
	}{{0o644, false}, {0o666, true}} {
		f, path, s := scene(t)
		must(t, os.Chmod(filepath.Dir(filepath.Dir(path)), 0o755))
		must(t, os.Chmod(filepath.Dir(path), 0o777))
		must(t, os.Chmod(path, tc.mode))
		err := as(t, visitor, func() error { _, err := f.Save(path, s); return err })
		if tc.saved {
			must(t, err)
			continue
		}
		if !errors.Is(err, fs.ErrPermission) || !strings.Contains(err.Error(), "may not write to this file") || string(get(t, path)) != byHand || exists(path+".bak") {
			t.Error(err)
		}
		document := filepath.Join(filepath.Dir(path), "a.html")
		put(t, document, "theirs")
		err = as(t, visitor, func() error { return WriteDocument(document, []byte("mine"), true) })
		if !errors.Is(err, fs.ErrPermission) || string(get(t, document)) != "theirs" {
			t.Error(err)
		}
	}
}

// as does something with the rights that another person has to files.
func as(t *testing.T, uid int, do func() error) error {
	t.Helper()
	runtime.LockOSThread()
	defer runtime.UnlockOSThread()
	must(t, syscall.Setfsuid(uid))
	defer func() { _ = syscall.Setfsuid(0) }()
	return do()
}
