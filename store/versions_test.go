package store

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"strings"
	"syscall"
	"testing"
)

func TestVersionsAreKeptInTurn(t *testing.T) {
	for _, most := range []int{0, 1, 3} {
		f, path, s := scene(t)
		s.VersionsKept = most
		for i := range 6 {
			s.Name = fmt.Sprintf("state %d", i)
			if _, err := f.Save(path, s); err != nil {
				t.Fatal(err)
			}
		}
		for n := 1; n <= 6; n++ {
			b, err := os.ReadFile(version(path, n))
			want := fmt.Sprintf("name = \"state %d\"", 5-n)
			switch {
			case n > most && err == nil:
				t.Errorf("%d asked for, yet there is a version %d", most, n)
			case n <= most && (err != nil || !strings.Contains(string(b), want)):
				t.Errorf("%d asked for: version %d is not %q, %v", most, n, want, err)
			}
		}
		if entries, err := f.List(); err != nil || len(entries) != 1 {
			t.Errorf("versions are listed as studies: %v, %v", entries, err)
		}
	}
}

// A save that changes nothing costs no version.
func TestSavingAgainKeepsTheVersions(t *testing.T) {
	f, path, s := scene(t)
	for range 4 {
		if _, err := f.Save(path, s); err != nil {
			t.Fatal(err)
		}
	}
	if _, err := os.Stat(version(path, 2)); err == nil {
		t.Error("a second version of one state")
	}
}

// Whatever step of keeping versions fails, the study is saved, and no version
// but the oldest is lost.
func TestVersionsSurviveFaults(t *testing.T) {
	for fail := 1; fail < 60; fail++ {
		f, path, s := scene(t)
		s.VersionsKept = 3
		for _, name := range []string{"one", "two", "three", "four"} {
			s.Name = name
			if _, err := f.Save(path, s); err != nil {
				t.Fatal(err)
			}
		}
		d := &faultyDisk{fail: fail, cause: os.ErrPermission}
		f.disk = d
		s.Name = "five"
		note, err := f.Save(path, s)
		all := ""
		for n := 1; n <= 4; n++ {
			b, _ := os.ReadFile(version(path, n))
			all += string(b)
		}
		for _, name := range []string{"two", "three"} {
			if !strings.Contains(all, "\""+name+"\"") {
				t.Errorf("step %d: version %q is lost", fail, name)
			}
		}
		now, _ := NewFolder(".").Open(path)
		if now == nil || now.Name != "five" && err == nil {
			t.Errorf("step %d: note %q, error %v", fail, note, err)
		}
		if len(d.steps) < fail {
			return
		}
	}
	t.Error("the save never got through")
}

// A save that fails after a version was kept does not push the older ones out,
// and what is no version is never touched.
func TestVersionsOnlyOfWhatWasSaved(t *testing.T) {
	f, path, s := scene(t)
	for _, name := range []string{"one", "two", "three"} {
		s.Name = name
		if _, err := f.Save(path, s); err != nil {
			t.Fatal(err)
		}
	}
	for range 4 {
		whole := &faultyDisk{}
		f.disk = failingRename{whole, path}
		s.Name = "four"
		if _, err := f.Save(path, s); err == nil {
			t.Fatal("no fault")
		}
	}
	for n, want := range map[int]string{1: "three", 2: "two", 3: "one"} {
		if !strings.Contains(string(get(t, version(path, n))), "\""+want+"\"") {
			t.Errorf("version %d is not %q", n, want)
		}
	}
	f.disk = realDisk{}
	put(t, version(path, 1), "a photograph")
	note, err := f.Save(path, s)
	if err != nil || !strings.Contains(note, "something else") || string(get(t, version(path, 1))) != "a photograph" {
		t.Errorf("%q, %v", note, err)
	}
}

// A version that cannot be written, as on a full disk, pushes no other out.
func TestFullDiskCostsNoVersion(t *testing.T) {
	for _, most := range []int{1, 2} {
		f, path, s := scene(t)
		s.VersionsKept = most
		for i := range 4 {
			s.Name = fmt.Sprint("state ", i)
			if _, err := f.Save(path, s); err != nil {
				t.Fatal(err)
			}
		}
		f.disk = fullDisk{}
		s.Name = "after"
		if _, err := f.Save(path, s); !errors.Is(err, syscall.ENOSPC) {
			t.Fatal(err)
		}
		for n := 1; n <= most; n++ {
			if want := fmt.Sprintf("\"state %d\"", 3-n); !strings.Contains(string(get(t, version(path, n))), want) {
				t.Errorf("%d kept: version %d is not %s", most, n, want)
			}
		}
	}
}

// fullDisk has no room for another byte.
type fullDisk struct{ realDisk }

func (fullDisk) createTemp(string, fs.FileMode) (tempFile, error) { return nil, syscall.ENOSPC }

// What stands where the oldest version would go and is none stays.
func TestOldestVersionIsNoVersion(t *testing.T) {
	for name, make := range map[string]func(t *testing.T, at string){
		"a file":   func(t *testing.T, at string) { put(t, at, "a photograph") },
		"a folder": func(t *testing.T, at string) { must(t, os.Mkdir(at, 0o755)) },
		"a link":   func(t *testing.T, at string) { must(t, os.Symlink("nowhere", at)) },
	} {
		for most := 1; most <= 3; most++ {
			f, path, s := scene(t)
			s.VersionsKept = most
			make(t, version(path, most))
			before, err := os.Lstat(version(path, most))
			must(t, err)
			note := ""
			for i := range 6 {
				s.Name = fmt.Sprint("state ", i)
				n, err := f.Save(path, s)
				must(t, err)
				note += n
			}
			after, err := os.Lstat(version(path, most))
			if err != nil || !os.SameFile(before, after) || !strings.Contains(note, "could not be kept") {
				t.Errorf("%s as version %d: %v, said %q", name, most, err, note)
			}
		}
	}
}

// failingRename fails to put the study in its place, at nothing else.
type failingRename struct {
	*faultyDisk
	name string
}

func (d failingRename) rename(from, to string) error {
	if to == d.name {
		return os.ErrPermission
	}
	return d.faultyDisk.rename(from, to)
}

// A lower count deletes nothing, and is said once.
func TestLoweringTheCountOfVersions(t *testing.T) {
	for _, tc := range []struct {
		most   int
		byHand bool
		says   string
	}{
		{2, false, "3 versions, a.toml.3 to a.toml.5, are older"},
		{0, false, "5 versions, a.toml.1 to a.toml.5, are older"},
		{4, false, "a.toml.5 is older"},
		{5, false, ""},
		{9, false, ""},
		{2, true, "3 versions, a.toml.3 to a.toml.5, are older"},
	} {
		f, path, s := scene(t)
		for i := range 7 {
			s.Name = fmt.Sprint("state ", i)
			if _, err := f.Save(path, s); err != nil {
				t.Fatal(err)
			}
		}
		put(t, version(path, 12), "no study")
		s.VersionsKept = tc.most
		if tc.byHand {
			put(t, path, strings.Replace(string(Encode(s)), "versions_kept = ", "versions_kept  =  ", 1))
			if _, err := f.Open(path); err != nil {
				t.Fatal(err)
			}
		}
		s.Name = "lowered"
		note, err := f.Save(path, s)
		if err != nil || tc.says == "" && note != "" || !strings.Contains(note, tc.says) || strings.Contains(note, "toml.12") {
			t.Errorf("%d kept: %q, %v", tc.most, note, err)
		}
		for n := 1; n <= 5; n++ {
			if !exists(version(path, n)) {
				t.Errorf("%d kept: version %d is gone", tc.most, n)
			}
		}
		s.Name = "once more"
		if note, err := f.Save(path, s); err != nil || note != "" {
			t.Errorf("%d kept: said again: %q, %v", tc.most, note, err)
		}
	}
}

// A document goes over no state of a study, whatever its ending.
func TestNoDocumentOverAStudy(t *testing.T) {
	f, path, s := scene(t)
	for _, name := range []string{"one", "two"} {
		s.Name = name
		_, err := f.Save(path, s)
		must(t, err)
	}
	for _, name := range []string{path + ".bak", version(path, 1)} {
		before := get(t, name)
		if err := WriteDocument(name, []byte("# Review"), true); err == nil || !strings.Contains(err.Error(), "holds a study") || string(get(t, name)) != string(before) {
			t.Errorf("%s: %v", name, err)
		}
	}
	review := path + ".md"
	put(t, review, "# an older review")
	must(t, WriteDocument(review, []byte("# Review"), true))
}
