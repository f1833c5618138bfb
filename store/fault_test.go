package store

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"backspan/model"
)

// faultyDisk fails at the n-th step, and at no other.
type faultyDisk struct {
	realDisk
	fail  int
	cause error
	steps []string
}

func (d *faultyDisk) step(name string) error {
	d.steps = append(d.steps, name)
	if len(d.steps) == d.fail {
		return &fs.PathError{Op: name, Path: "somewhere", Err: d.cause}
	}
	return nil
}

func (d *faultyDisk) createTemp(dir string, mode fs.FileMode) (tempFile, error) {
	if err := d.step("create"); err != nil {
		return nil, err
	}
	f, err := d.realDisk.createTemp(dir, mode)
	return faultyFile{f, d}, err
}

func (d *faultyDisk) chmod(name string, mode fs.FileMode) error {
	if err := d.step("chmod"); err != nil {
		return err
	}
	return d.realDisk.chmod(name, mode)
}

func (d *faultyDisk) rename(from, to string) error {
	if err := d.step("rename"); err != nil {
		return err
	}
	return d.realDisk.rename(from, to)
}

func (d *faultyDisk) link(from, to string) error {
	if err := d.step("link"); err != nil {
		return err
	}
	return d.realDisk.link(from, to)
}

func (d *faultyDisk) claim(name string) error {
	if err := d.step("claim"); err != nil {
		return err
	}
	return d.realDisk.claim(name)
}

func (d *faultyDisk) syncFile(name string) error {
	if err := d.step("sync file"); err != nil {
		return err
	}
	return d.realDisk.syncFile(name)
}

func (d *faultyDisk) syncDir(dir string) error {
	if err := d.step("sync folder"); err != nil {
		return err
	}
	return d.realDisk.syncDir(dir)
}

type faultyFile struct {
	tempFile
	disk *faultyDisk
}

// Write is torn, as on a full disk.
func (f faultyFile) Write(b []byte) (int, error) {
	if err := f.disk.step("write"); err != nil {
		n, _ := f.tempFile.Write(b[:len(b)/2])
		return n, err
	}
	return f.tempFile.Write(b)
}

func (f faultyFile) Sync() error {
	if err := f.disk.step("sync"); err != nil {
		return err
	}
	return f.tempFile.Sync()
}

func (f faultyFile) Close() error {
	if err := f.disk.step("close"); err != nil {
		_ = f.tempFile.Close()
		return err
	}
	return f.tempFile.Close()
}

// noLinks is a file system without hard links.
type noLinks struct{ *faultyDisk }

func (noLinks) link(string, string) error { return &os.LinkError{Op: "link", Err: syscall.EPERM} }

const byHand = "# my own words\nformat = 1\nname = 'Old'\n[[variant]]\nname = 'A'\n"

// scene is a folder with one study written by hand, opened.
func scene(t *testing.T) (f *Folder, path string, s *model.Study) {
	t.Helper()
	path = filepath.Join(t.TempDir(), "a.toml")
	put(t, path, byHand)
	if err := os.Chmod(path, 0o640); err != nil {
		t.Fatal(err)
	}
	f = NewFolder(filepath.Dir(path))
	s, err := f.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	s.Name = "New"
	return f, path, s
}

// Every step of a save, with its backup, fails once.
func TestSaveWithAFaultAtEveryStep(t *testing.T) {
	f, path, s := scene(t)
	whole := &faultyDisk{}
	f.disk = whole
	if _, err := f.Save(path, s); err != nil {
		t.Fatal(err)
	}
	if len(whole.steps) < 13 {
		t.Fatalf("only steps %v", whole.steps)
	}
	for i, name := range whole.steps {
		t.Run(fmt.Sprintf("%d %s", i+1, name), func(t *testing.T) {
			f, path, s := scene(t)
			f.disk = &faultyDisk{fail: i + 1, cause: syscall.ENOSPC}
			_, err := f.Save(path, s)
			if !errors.Is(err, syscall.ENOSPC) || !strings.Contains(err.Error(), "no space left on device") || strings.Contains(err.Error(), "\n") {
				t.Errorf("the cause is hidden in %q", err)
			}
			got := get(t, path)
			saved := bytes.Equal(got, Encode(s))
			if !saved && string(got) != byHand {
				t.Errorf("neither old nor new:\n%s", got)
			}
			if says := strings.Contains(err.Error(), "not saved"); says == saved {
				t.Errorf("saved %v, but says %q", saved, err)
			}
			checkNoTemp(t, path)
			checkMode(t, path, 0o640)
			f.disk = realDisk{}
			if _, err := f.Save(path, s); err != nil {
				t.Errorf("a second try gave %v", err)
			}
			if !bytes.Equal(get(t, path), Encode(s)) {
				t.Error("a second try did not save")
			}
			if string(get(t, path+".bak")) != byHand || exists(path+".bak2") {
				t.Error("not exactly one backup of what was written by hand")
			}
		})
	}
}

// The fault is told apart from a folder that is missing.
func TestSaveWhoseFileIsTakenAway(t *testing.T) {
	f, path, s := scene(t)
	_, err := f.Save(path, s)
	must(t, err)
	before := get(t, path)
	f.disk, s.Name = taking{}, "Newer"
	if _, err := f.Save(path, s); err == nil || !strings.Contains(err.Error(), "taken away") || !bytes.Equal(get(t, path), before) {
		t.Error(err)
	}
}

// taking is a disk on which another program removes what is being written.
type taking struct{ realDisk }

func (d taking) chmod(name string, mode fs.FileMode) error {
	if err := os.Remove(name); err != nil {
		return err
	}
	return d.realDisk.chmod(name, mode)
}

func TestCreateWithAFaultAtEveryStep(t *testing.T) {
	for name, make := range map[string]func(*faultyDisk) disk{
		"links": func(d *faultyDisk) disk { return d }, "no links": func(d *faultyDisk) disk { return noLinks{d} },
	} {
		whole := &faultyDisk{}
		f := NewFolder(t.TempDir())
		f.disk = make(whole)
		if _, err := f.Create(filepath.Join(f.dir, "a.toml"), sound()); err != nil {
			t.Fatal(err)
		}
		for i, step := range whole.steps {
			t.Run(name+", "+step, func(t *testing.T) {
				f := NewFolder(t.TempDir())
				path := filepath.Join(f.dir, "a.toml")
				f.disk = make(&faultyDisk{fail: i + 1, cause: syscall.EIO})
				_, err := f.Create(path, sound())
				if !errors.Is(err, syscall.EIO) {
					t.Errorf("the cause is hidden in %v", err)
				}
				if exists(path) != (step == "sync folder") {
					t.Errorf("there is a file: %v", exists(path))
				}
				if exists(path) && !bytes.Equal(get(t, path), Encode(sound())) {
					t.Error("the file is not whole")
				}
				checkNoTemp(t, path)
			})
		}
	}
}

func TestNoLinksNeverOverwrites(t *testing.T) {
	f := NewFolder(t.TempDir())
	f.disk = noLinks{&faultyDisk{}}
	path := filepath.Join(f.dir, "a.toml")
	put(t, path, "mine")
	if _, err := f.Create(path, sound()); !errors.Is(err, fs.ErrExist) || string(get(t, path)) != "mine" {
		t.Errorf("%v; holds %s", err, get(t, path))
	}
	checkNoTemp(t, path)
}

func checkNoTemp(t *testing.T, path string) {
	t.Helper()
	left, err := filepath.Glob(filepath.Join(filepath.Dir(path), ".*"))
	if err != nil || len(left) > 0 {
		t.Errorf("left behind: %v, %v", left, err)
	}
}

func checkMode(t *testing.T, path string, want fs.FileMode) {
	t.Helper()
	info, err := os.Stat(path)
	if err != nil || info.Mode().Perm() != want {
		t.Errorf("%s: mode %v, %v; want %v", path, info.Mode(), err, want)
	}
}

func put(t *testing.T, path, text string) {
	t.Helper()
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

func get(t *testing.T, path string) []byte {
	t.Helper()
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func exists(path string) bool {
	_, err := os.Lstat(path)
	return err == nil
}
