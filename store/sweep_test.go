//go:build unix

package store

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

func temps(t *testing.T, dir string) []string {
	t.Helper()
	found, err := filepath.Glob(filepath.Join(dir, tempStart+"*"+tempEnd))
	if err != nil {
		t.Fatal(err)
	}
	return found
}

// deadPID is the number of a process that was and is no more.
func deadPID(t *testing.T) int {
	t.Helper()
	cmd := exec.Command("true")
	must(t, cmd.Run())
	return cmd.Process.Pid
}

func TestOnlyDeadFilesAreSwept(t *testing.T) {
	dead, alive := deadPID(t), os.Getpid()
	init := 1 // another person's process, where this is not the superuser
	for _, tc := range []struct {
		name string
		old  time.Duration
		gone bool
	}{
		{fmt.Sprintf(".backspan-%s-%d-A.tmp", whereabouts(), dead), 0, true},
		{fmt.Sprintf(".backspan-%s-%d-A.tmp", whereabouts(), alive), 0, false},
		{fmt.Sprintf(".backspan-%s-%d-A.tmp", whereabouts(), init), time.Hour, false},
		{fmt.Sprintf(".backspan-%s-%d-A.tmp", whereabouts(), alive), 25 * time.Hour, true},
		{fmt.Sprintf(".backspan-%s-%d-A.tmp", "0badcafe", dead), time.Hour, false},
		{fmt.Sprintf(".backspan-%s-%d-A.tmp", "0badcafe", dead), 25 * time.Hour, true},
		{".backspan-ABCDEF.tmp", time.Hour, false}, // of a version before
		{".backspan-ABCDEF.tmp", 25 * time.Hour, true},
		{fmt.Sprintf(".backspan-%s--1-A.tmp", whereabouts()), 0, false},
		{fmt.Sprintf(".backspan-%s-0-A.tmp", whereabouts()), 0, false},
		{".backspan-notes.tmp", 25 * time.Hour, false},
		{".backspan-my-own-notes.tmp", 25 * time.Hour, false},
		{".backspan-notes.txt", 25 * time.Hour, false},
		{"mine.tmp", 25 * time.Hour, false},
	} {
		name := filepath.Join(t.TempDir(), tc.name)
		put(t, name, "half")
		when := time.Now().Add(-tc.old)
		must(t, os.Chtimes(name, when, when))
		sweep(realDisk{}, filepath.Dir(name), time.Now())
		if exists(name) == tc.gone {
			t.Errorf("%s, %v old: gone %v", tc.name, tc.old, !tc.gone)
		}
	}
	dir := t.TempDir()
	target := filepath.Join(dir, "precious")
	put(t, target, "precious")
	link := filepath.Join(dir, fmt.Sprintf(".backspan-%s-%d-A.tmp", whereabouts(), dead))
	must(t, os.Symlink(target, link))
	if sweep(realDisk{}, dir, time.Now()); !exists(target) || !exists(link) {
		t.Error("a link was followed or removed")
	}
}

// skewed is a disk whose files are dated by a clock that is behind or ahead.
type skewed struct {
	realDisk
	by time.Duration
}

func (d skewed) createTemp(dir string, mode fs.FileMode) (tempFile, error) {
	f, err := d.realDisk.createTemp(dir, mode)
	if err != nil {
		return nil, err
	}
	when := time.Now().Add(d.by)
	return f, os.Chtimes(f.Name(), when, when)
}

// How old a file is, is told by the clock that dates the folder's files, not
// by this computer's.
func TestAgeIsThatOfTheFoldersClock(t *testing.T) {
	for _, by := range []time.Duration{-30 * 24 * time.Hour, 0, 30 * 24 * time.Hour} {
		for _, tc := range []struct {
			old  time.Duration
			gone bool
		}{{time.Minute, false}, {25 * time.Hour, true}} {
			f, path, s := scene(t)
			f.disk = skewed{by: by}
			other := filepath.Join(filepath.Dir(path), ".backspan-0badcafe-12-A.tmp")
			put(t, other, "half")
			when := time.Now().Add(by - tc.old)
			must(t, os.Chtimes(other, when, when))
			_, err := f.Save(path, s)
			must(t, err)
			if exists(other) == tc.gone {
				t.Errorf("a clock %v off, %v old: gone %v", by, tc.old, !tc.gone)
			}
		}
	}
	dir := t.TempDir()
	other := filepath.Join(dir, ".backspan-0badcafe-12-A.tmp")
	put(t, other, "half")
	must(t, os.Chtimes(other, time.Unix(0, 0), time.Unix(0, 0)))
	if sweep(realDisk{}, dir, datedBy(filepath.Join(dir, "none"))); !exists(other) {
		t.Error("swept though no clock is known")
	}
}

// Where two computers cannot be told apart no process number is trusted.
func TestAnUnknownPlaceIsNoPlace(t *testing.T) {
	here := placeOf("shop", "", "", false)
	if name := fmt.Sprintf("%s%s-%d-A%s", tempStart, here, deadPID(t), tempEnd); writerEnded(name, here) {
		t.Errorf("%s could be written on another computer", name)
	}
	if a, b := placeOf("shop", "1", "c", true), placeOf("shop", "2", "c", true); a == b {
		t.Error("two starts are one place")
	}
}

// dying ends the program at the n-th step of a save, like a kill.
type dying struct{ *faultyDisk }

type killed struct{}

func (d dying) link(from, to string) error {
	defer d.end()
	return d.faultyDisk.link(from, to)
}

func (d dying) rename(from, to string) error {
	defer d.end()
	return d.faultyDisk.rename(from, to)
}

// end lets the last step through when fail is even, and not when it is odd.
func (d dying) end() {
	if len(d.steps) >= d.fail {
		panic(killed{})
	}
}

// However far a save came before the program was killed, nothing is left after
// the next save.
func TestNextSaveSweepsAfterAKill(t *testing.T) {
	swept := 0
	for step := 1; step < 30; step++ {
		f, path, s := scene(t)
		f.disk = dying{&faultyDisk{fail: step, cause: os.ErrPermission}}
		func() {
			defer func() { _ = recover() }()
			_, _ = f.Save(path, s)
		}()
		for _, left := range temps(t, filepath.Dir(path)) {
			dead := strings.Replace(left, fmt.Sprintf("-%d-", os.Getpid()), fmt.Sprintf("-%d-", deadPID(t)), 1)
			must(t, os.Rename(left, dead))
			swept++
		}
		next := NewFolder(filepath.Dir(path))
		s, err := next.Open(path)
		if err != nil {
			t.Fatalf("step %d: neither old nor new: %v", step, err)
		}
		s.Name = "after"
		if _, err := next.Save(path, s); err != nil {
			t.Errorf("step %d: %v", step, err)
		}
		checkNoTemp(t, path)
		if !bytes.Contains(get(t, path), []byte(`"after"`)) {
			t.Errorf("step %d: not saved", step)
		}
	}
	if swept == 0 {
		t.Error("no kill left anything: nothing was tried")
	}
}
