package store

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"testing"

	"golang.org/x/sys/unix"
)

// A folder that everybody may write in gives nobody the files of others.
func TestForeignFileIsNotWrittenOver(t *testing.T) {
	if os.Getuid() != 0 {
		t.Skip("only the superuser may act as another person")
	}
	for _, tc := range []struct {
		mode  fs.FileMode
		saved bool
	}{{0o644, false}, {0o666, true}} {
		f, path, s := scene(t)
		must(t, os.Chmod(filepath.Dir(filepath.Dir(path)), 0o755))
		must(t, os.Chmod(filepath.Dir(path), 0o777))
		must(t, os.Chmod(path, tc.mode))
		err := as(t, func() error { _, err := f.Save(path, s); return err })
		if tc.saved {
			must(t, err)
			continue
		}
		if !errors.Is(err, fs.ErrPermission) || !strings.Contains(err.Error(), "may not write to this file") || string(get(t, path)) != byHand || exists(path+".bak") {
			t.Error(err)
		}
		document := filepath.Join(filepath.Dir(path), "a.html")
		put(t, document, "theirs")
		err = as(t, func() error { return WriteDocument(document, []byte("mine"), true) })
		if !errors.Is(err, fs.ErrPermission) || string(get(t, document)) != "theirs" {
			t.Error(err)
		}
	}
}

const visitor = 54321

// as does something with the rights that a visitor has to files.
func as(t *testing.T, do func() error) error {
	t.Helper()
	runtime.LockOSThread()
	defer runtime.UnlockOSThread()
	must(t, syscall.Setfsuid(visitor))
	defer func() { _ = syscall.Setfsuid(0) }()
	return do()
}

// A file that everybody may change, in a folder where only its owner may
// replace it, as /tmp is.
func TestStickyFolderIsToldApart(t *testing.T) {
	if os.Getuid() != 0 {
		t.Skip("only the superuser may act as another person")
	}
	f, path, s := scene(t)
	must(t, os.Chmod(filepath.Dir(filepath.Dir(path)), 0o755))
	must(t, os.Chmod(filepath.Dir(path), 0o777|fs.ModeSticky))
	must(t, os.Chmod(path, 0o666))
	err := as(t, func() error { _, err := f.Save(path, s); return err })
	if !errors.Is(err, fs.ErrPermission) || !strings.Contains(err.Error(), "lets only the owner of the file replace it; save under a new name") || string(get(t, path)) != byHand {
		t.Error(err)
	}
	checkNoTemp(t, path)
	document := filepath.Join(filepath.Dir(path), "a.html")
	put(t, document, "theirs")
	must(t, os.Chmod(document, 0o666))
	err = as(t, func() error { return WriteDocument(document, []byte("mine"), true) })
	if err == nil || !strings.Contains(err.Error(), "choose another name") || string(get(t, document)) != "theirs" {
		t.Error(err)
	}
}

// An owner whom only the superuser could put back is told of.
func TestLostOwnerIsToldOf(t *testing.T) {
	if os.Getuid() != 0 {
		t.Skip("only the superuser may act as another person")
	}
	f, path, s := scene(t)
	must(t, os.Chmod(filepath.Dir(filepath.Dir(path)), 0o755))
	must(t, os.Chmod(filepath.Dir(path), 0o777))
	must(t, os.Chown(path, 12345, 0))
	must(t, os.Chmod(path, 0o666))
	var note string
	must(t, as(t, func() (err error) { note, err = f.Save(path, s); return err }))
	if !strings.Contains(note, "the file could not keep its owner (12345)") {
		t.Error(note)
	}
	s.Name = "again"
	must(t, as(t, func() (err error) { note, err = f.Save(path, s); return err }))
	if strings.Contains(note, "owner") {
		t.Errorf("told twice: %s", note)
	}
}

// readers is an access list as the kernel takes it, after acl(5) and
// posix_acl_xattr.h: version 2, then tag, rights and id of each entry: owner
// rw, user 12345 r, group none, mask r, others none.
var readers = []byte{
	2, 0, 0, 0,
	1, 0, 6, 0, 255, 255, 255, 255,
	2, 0, 4, 0, 0x39, 0x30, 0, 0,
	4, 0, 0, 0, 255, 255, 255, 255,
	16, 0, 4, 0, 255, 255, 255, 255,
	32, 0, 0, 0, 255, 255, 255, 255,
}

func TestSaveKeepsAccessListAndAttributes(t *testing.T) {
	f, path, s := scene(t)
	for name, value := range map[string][]byte{accessList: readers, "user.origin": []byte("bench")} {
		if err := unix.Setxattr(path, name, value, 0); err != nil {
			t.Skipf("no %s here: %v", name, err)
		}
	}
	note, err := f.Save(path, s)
	must(t, err)
	if strings.Contains(note, "could not keep") {
		t.Error(note)
	}
	kept, err := attributes(path)
	if err != nil || !bytes.Equal(kept[accessList], readers) || string(kept["user.origin"]) != "bench" || len(kept) != 2 {
		t.Errorf("%v, %v", kept, err)
	}
	checkMode(t, path, 0o640)
}

// An access list that the folder gives to new files does not come upon a study
// that had none.
func TestSaveAddsNoAccessList(t *testing.T) {
	f, path, s := scene(t)
	if err := unix.Setxattr(filepath.Dir(path), "system.posix_acl_default", readers, 0); err != nil {
		t.Skip(err)
	}
	_, err := f.Save(path, s)
	must(t, err)
	if kept, err := attributes(path); err != nil || len(kept) != 0 {
		t.Errorf("%v, %v", kept, err)
	}
	checkMode(t, path, 0o640)
}
