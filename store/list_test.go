package store

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

func TestOpenNamesTheCure(t *testing.T) {
	dir := t.TempDir()
	f := NewFolder(dir)
	in := func(name string) string { return filepath.Join(dir, name) }
	put(t, in("secret.toml"), byHand)
	must(t, os.Chmod(in("secret.toml"), 0))
	big, err := os.Create(in("big.toml"))
	must(t, err)
	must(t, errors.Join(big.Truncate(mostBytes+1), big.Close()))
	must(t, os.Symlink("loop.toml", in("loop.toml")))
	for _, tc := range []struct {
		path, says string
		is         error
	}{
		{in("missing.toml"), "there is no such file; check the name", fs.ErrNotExist},
		{dir, "is a folder; give the file", nil},
		{in("secret.toml"), "may not be read by you", fs.ErrPermission},
		{in("big.toml"), "8 MiB", nil},
		{os.DevNull, "not an ordinary file", nil},
		{in("loop.toml"), "cannot be read: too many levels", syscall.ELOOP},
		{in("\x1b[2J.toml"), `\x1b[2J.toml: there is no such file`, fs.ErrNotExist},
	} {
		if strings.Contains(tc.path, "secret") && os.Getuid() == 0 {
			continue // nothing is unreadable to root
		}
		_, err := f.Open(tc.path)
		if err == nil || !strings.Contains(err.Error(), tc.says) || tc.is != nil && !errors.Is(err, tc.is) || strings.ContainsAny(err.Error(), "\n\x1b") {
			t.Errorf("%q: got %v, want %q", tc.path, err, tc.says)
		}
	}
	if err := unreadable("a", &fs.PathError{Op: "open", Path: "a", Err: syscall.EACCES}); !strings.Contains(err.Error(), "may not be read by you") || !errors.Is(err, fs.ErrPermission) {
		t.Error(err)
	}
}

func TestList(t *testing.T) {
	dir := t.TempDir()
	f := NewFolder(dir)
	for name, text := range map[string]string{
		"sound.toml": string(Encode(sound())), "Upper.TOML": byHand, "broken.toml": byHand + "purple = 1\ngreen = 2\n", "cut.toml": "# Backspan study. The un",
		"zeros.toml": "\x00\x00\x00", "empty.toml": "", "other.toml": "[package]\nname = \"x\"\n", "otherbroken.toml": "[package\n",
		"notes.txt": byHand, ".hidden.toml": byHand, "sound.toml.bak": byHand, "newer.toml": "format = 2\n",
	} {
		put(t, filepath.Join(dir, name), text)
	}
	must(t, os.Mkdir(filepath.Join(dir, "folder.toml"), 0o755))
	must(t, os.Symlink("nowhere", filepath.Join(dir, "dangling.toml")))
	entries, err := f.List()
	if err != nil {
		t.Fatal(err)
	}
	type short struct {
		name     string
		variants int
		problem  string
	}
	got := map[string]short{}
	for _, e := range entries {
		if e.Path != filepath.Join(dir, e.File) || e.Modified.IsZero() {
			t.Errorf("%+v", e)
		}
		got[e.File] = short{e.Name, e.Variants, e.Problem}
	}
	for name, want := range map[string]short{
		"sound.toml": {"Sound", 1, ""}, "Upper.TOML": {"Old", 1, ""}, "broken.toml": {"", 0, `line 6: variant.purple: there is no such key (variant "A") (and 1 more)`},
		"cut.toml": {"", 0, "is not a Backspan study"}, "zeros.toml": {"", 0, "is not a text file"}, "empty.toml": {"", 0, "is empty"}, "newer.toml": {"", 0, "newer Backspan"},
	} {
		g, ok := got[name]
		if !ok || g.name != want.name || g.variants != want.variants || !strings.Contains(g.problem, want.problem) || (want.problem == "") != (g.problem == "") {
			t.Errorf("%s: %+v, want %+v", name, g, want)
		}
		delete(got, name)
	}
	if len(got) > 0 {
		t.Errorf("listed besides: %+v", got)
	}
	if _, err := NewFolder(filepath.Join(dir, "nowhere")).List(); !errors.Is(err, fs.ErrNotExist) {
		t.Error(err)
	}
}
