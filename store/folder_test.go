package store

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"backspan/model"
)

func TestCreateOpenSave(t *testing.T) {
	f := NewFolder(t.TempDir())
	path := filepath.Join(f.dir, "a.toml")
	s := sound()
	if note, err := f.Create(path, s); note != "" || err != nil {
		t.Fatal(note, err)
	}
	for i := range 3 {
		s.Name = fmt.Sprint("save ", i)
		if note, err := f.Save(path, s); note != "" || err != nil {
			t.Fatal(note, err)
		}
	}
	back, err := NewFolder(f.dir).Open(path)
	if err != nil || back.Name != "save 2" {
		t.Fatal(back, err)
	}
	if exists(path + ".bak") {
		t.Error("a backup of what this program wrote itself")
	}
}

func TestCreateNeverOverwrites(t *testing.T) {
	f := NewFolder(t.TempDir())
	path := filepath.Join(f.dir, "a.toml")
	put(t, path, "mine")
	link := filepath.Join(f.dir, "dangling.toml")
	if err := os.Symlink(filepath.Join(f.dir, "nowhere"), link); err != nil {
		t.Fatal(err)
	}
	for _, p := range []string{path, link} {
		if _, err := f.Create(p, sound()); !errors.Is(err, fs.ErrExist) || !strings.Contains(err.Error(), "choose another name") {
			t.Errorf("%s: %v", p, err)
		}
	}
	if string(get(t, path)) != "mine" {
		t.Error("written over")
	}
	if _, err := f.Create(filepath.Join(f.dir, "no", "such", "a.toml"), sound()); !errors.Is(err, fs.ErrNotExist) || !strings.Contains(err.Error(), "there is no folder") {
		t.Error(err)
	}
	note, err := f.Create(filepath.Join(f.dir, "plain"), sound())
	if err != nil || !strings.Contains(note, "does not end in .toml") {
		t.Error(note, err)
	}
	long := strings.Repeat("n", 250) + ".toml"
	if _, err := f.Create(filepath.Join(f.dir, long), sound()); err != nil {
		t.Error(err)
	}
}

func TestSaveRefuses(t *testing.T) {
	for _, tc := range []struct {
		name   string
		meddle func(t *testing.T, path string)
		is     error
		says   string
	}{
		{"changed", func(t *testing.T, path string) { put(t, path, byHand+"# theirs\n") }, ErrChanged, "changed by another program"},
		{"emptied", func(t *testing.T, path string) { put(t, path, "") }, ErrChanged, "changed by another program"},
		{"removed", func(t *testing.T, path string) { must(t, os.Remove(path)) }, fs.ErrNotExist, "removed or renamed"},
		{"read-only", func(t *testing.T, path string) { must(t, os.Chmod(path, 0o440)) }, fs.ErrPermission, "read-only"},
		{"a folder now", func(t *testing.T, path string) { must(t, os.Remove(path)); must(t, os.Mkdir(path, 0o755)) }, nil, "is a folder"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			f, path, s := scene(t)
			tc.meddle(t, path)
			before, _ := os.ReadFile(path)
			note, err := f.Save(path, s)
			if err == nil || note != "" || tc.is != nil && !errors.Is(err, tc.is) || !strings.Contains(err.Error(), tc.says) {
				t.Errorf("got %q, %v; want %q", note, err, tc.says)
			}
			if after, _ := os.ReadFile(path); !bytes.Equal(before, after) {
				t.Error("written all the same")
			}
			if exists(path + ".bak") {
				t.Error("left a backup though nothing was saved")
			}
			checkNoTemp(t, path)
		})
	}
}

func TestSaveRefusesWhatWasNotOpenedHere(t *testing.T) {
	_, path, s := scene(t)
	if _, err := NewFolder(filepath.Dir(path)).Save(path, s); err == nil || !strings.Contains(err.Error(), "not opened here") {
		t.Error(err)
	}
}

func TestSaveRefusesWhatCannotBeReadBack(t *testing.T) {
	f, path, s := scene(t)
	s.Variants = append(s.Variants, s.Variants[0])
	_, err := f.Save(path, s)
	var ps Problems
	if !errors.As(err, &ps) || !strings.Contains(err.Error(), "not saved") || !strings.Contains(err.Error(), `"A" is taken`) {
		t.Error(err)
	}
	s.Variants = nil
	if _, err := f.Create(path+"2", s); err == nil || exists(path+"2") {
		t.Error(err)
	}
	if string(get(t, path)) != byHand {
		t.Error("written all the same")
	}
}

// A refused file may be put right in an editor and saved again: the refusal
// must not count as reading it.
func TestFailedOpenDoesNotAllowASave(t *testing.T) {
	f, path, s := scene(t)
	put(t, path, byHand+"purple = 1\n")
	if _, err := f.Open(path); err == nil {
		t.Fatal("opened")
	}
	if _, err := f.Save(path, s); !errors.Is(err, ErrChanged) {
		t.Error(err)
	}
	if string(get(t, path)) != byHand+"purple = 1\n" {
		t.Error("written over")
	}
}

func TestBackups(t *testing.T) {
	f, path, s := scene(t)
	put(t, path+".bak", "older, and different")
	note, err := f.Save(path, s)
	if err != nil || !strings.Contains(note, "a.toml.bak2") {
		t.Fatal(note, err)
	}
	if string(get(t, path+".bak")) != "older, and different" || string(get(t, path+".bak2")) != byHand {
		t.Error("a backup is lost")
	}
	checkMode(t, path, 0o640)
	checkMode(t, path+".bak2", 0o640)
	s.Name = "Newer"
	if note, err := f.Save(path, s); note != "" || err != nil {
		t.Error(note, err)
	}
	put(t, path, byHand) // and once more by hand, the same
	if _, err := f.Open(path); err != nil {
		t.Fatal(err)
	}
	if note, err := f.Save(path, s); !strings.Contains(note, "a.toml.bak2") || err != nil || exists(path+".bak3") {
		t.Errorf("%q, %v, third backup %v", note, err, exists(path+".bak3"))
	}
}

func TestWindowsLineEndsCountAsWrittenByHand(t *testing.T) {
	f := NewFolder(t.TempDir())
	path := filepath.Join(f.dir, "a.toml")
	src := strings.ReplaceAll(string(Encode(sound())), "\n", "\r\n")
	put(t, path, src)
	s, err := f.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	if note, err := f.Save(path, s); note == "" || err != nil || string(get(t, path+".bak")) != src {
		t.Error(note, err)
	}
}

func TestSymlinkKeepsPointing(t *testing.T) {
	f, path, _ := scene(t)
	link := filepath.Join(t.TempDir(), "link.toml")
	must(t, os.Symlink(path, link))
	s, err := f.Open(link)
	if err != nil {
		t.Fatal(err)
	}
	s.Name = "through the link"
	if _, err := f.Save(link, s); err != nil {
		t.Fatal(err)
	}
	if target, err := os.Readlink(link); err != nil || target != path {
		t.Errorf("the link points to %s, %v", target, err)
	}
	if !bytes.Equal(get(t, path), Encode(s)) || !exists(path+".bak") {
		t.Error("not saved where the link points")
	}
}

// Saving again writes nothing, but asks the disk to confirm what is there.
func TestSavingNothingNewWritesNothing(t *testing.T) {
	f := NewFolder(t.TempDir())
	path := filepath.Join(f.dir, "a.toml")
	if _, err := f.Create(path, sound()); err != nil {
		t.Fatal(err)
	}
	d := &faultyDisk{}
	f.disk = d
	if _, err := f.Save(path, sound()); err != nil || !slices.Equal(d.steps, []string{"sync file", "sync folder"}) {
		t.Error(err, d.steps)
	}
}

// Of several who opened the same file, one saves; the others are told.
func TestOneOfManyWins(t *testing.T) {
	_, path, _ := scene(t)
	var won, told atomic.Int32
	var all sync.WaitGroup
	var start sync.WaitGroup
	start.Add(1)
	const people = 8
	for i := range people {
		f := NewFolder(filepath.Dir(path))
		s, err := f.Open(path)
		if err != nil {
			t.Fatal(err)
		}
		s.Name = fmt.Sprint("person ", i)
		all.Go(func() {
			start.Wait()
			switch _, err := f.Save(path, s); {
			case err == nil:
				won.Add(1)
			case errors.Is(err, ErrChanged):
				told.Add(1)
			default:
				t.Error(err)
			}
		})
	}
	start.Done()
	all.Wait()
	if won.Load() != 1 || told.Load() != people-1 {
		t.Errorf("%d saved, %d were told", won.Load(), told.Load())
	}
	if string(get(t, path+".bak")) != byHand {
		t.Error("what was written by hand is lost")
	}
}

func TestOpenedIsWhatWasSaved(t *testing.T) {
	f := NewFolder(t.TempDir())
	path := filepath.Join(f.dir, "a.toml")
	s, err := Decode("sample", Encode(model.Sample()))
	must(t, err)
	if _, err := f.Create(path, s); err != nil {
		t.Fatal(err)
	}
	if back, err := f.Open(path); err != nil || !reflect.DeepEqual(s, back) {
		t.Errorf("another study came back, or %v", err)
	}
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}
