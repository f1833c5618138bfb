//go:build unix

package store

import (
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// A save takes a file from nobody: owner, group and mode stay.
func TestSaveKeepsTheOwner(t *testing.T) {
	if os.Getuid() != 0 {
		t.Skip("only the superuser may give files away")
	}
	f, path, s := scene(t)
	must(t, os.Chown(path, 1234, 2345))
	must(t, os.Chmod(path, 0o664))
	if _, err := f.Save(path, s); err != nil {
		t.Fatal(err)
	}
	checkMode(t, path, 0o664)
	info, err := os.Stat(path)
	if stat := info.Sys().(*syscall.Stat_t); err != nil || stat.Uid != 1234 || stat.Gid != 2345 {
		t.Errorf("it is now %d:%d's, %v", stat.Uid, stat.Gid, err)
	}
}

func TestHardLinkIsToldOf(t *testing.T) {
	f, path, s := scene(t)
	other := filepath.Join(filepath.Dir(path), "other.toml")
	must(t, os.Link(path, other))
	note, err := f.Save(path, s)
	if err != nil || !strings.Contains(note, "2 names (hard links)") || string(get(t, other)) != byHand {
		t.Errorf("%q, %v; the other holds %q", note, err, get(t, other))
	}
	s.Name = "Newer"
	if note, err := f.Save(path, s); note != "" || err != nil {
		t.Errorf("%q, %v", note, err)
	}
}

// Where no journal can stand beside a study it is kept elsewhere, and told so.
func TestJournalElsewhereIsToldOf(t *testing.T) {
	_, path, _ := scene(t)
	state := t.TempDir()
	j := Journals{State: func() (string, error) { return state, nil }}
	s, _, err := j.Begin(path)
	if err != nil || s.Elsewhere != "" {
		t.Fatal(s, err)
	}
	must(t, s.End(false))
	must(t, os.Mkdir(filepath.Join(filepath.Dir(path), ".a.toml.journal"), 0o700))
	if s, _, err = j.Begin(path); err != nil || s.Elsewhere != state {
		t.Fatalf("%+v, %v", s, err)
	}
	must(t, s.End(false))
}

// A pipe beside a study holds no save up.
func TestPipesBesideAStudy(t *testing.T) {
	f, path, s := scene(t)
	must(t, syscall.Mkfifo(path+".bak", 0o600))
	must(t, syscall.Mkfifo(version(path, 1), 0o600))
	for _, name := range []string{"one", "two"} {
		s.Name = name
		_, err := f.Save(path, s)
		must(t, err)
	}
	if string(get(t, path+".bak2")) != byHand {
		t.Error("not kept beside the pipe")
	}
	must(t, os.Remove(path))
	must(t, syscall.Mkfifo(path, 0o600))
	s.Name = "three"
	if _, err := f.Save(path, s); err == nil || !strings.Contains(err.Error(), "ordinary file") {
		t.Error(err)
	}
}

// What is no file is not read to tell its state.
func TestNoSessionReadsAPipe(t *testing.T) {
	j, path := workshop(t)
	must(t, os.Remove(path))
	must(t, syscall.Mkfifo(path, 0o600))
	s, _ := started(t, j, path)
	ended(t, s, false)
}
