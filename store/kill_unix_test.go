//go:build unix

package store

import (
	"bufio"
	"errors"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"backspan/model"
)

// The test binary edits and saves a study itself when it is asked to, so that
// a test can kill it.
func TestMain(m *testing.M) {
	switch {
	case os.Getenv("STORE_EDITS") != "":
		editAndSave(os.Getenv("STORE_EDITS"))
	case os.Getenv("STORE_SAVES") != "":
		saveInTurn(os.Getenv("STORE_SAVES"))
	}
	os.Exit(m.Run())
}

// editAndSave goes on until it is killed. It says which edit it makes before
// it makes the next, and up to which all are kept.
func editAndSave(path string) {
	folder := NewFolder(filepath.Dir(path))
	s, err := folder.Open(path)
	check(err)
	session, lefts, err := Journals{State: func() (string, error) { return filepath.Dir(path) + "/state", nil }}.Begin(path)
	check(err)
	for _, l := range lefts {
		if stateOf(l.Study) > stateOf(s) {
			s = l.Study
		}
	}
	if stateOf(s) > 0 {
		session.Edited(s.Name, s)
	}
	n := stateOf(s)
	var steps []int // the edit that each step made or saved
	if n > 0 {
		steps = append(steps, n)
	}
	told := 0
	for {
		n++
		s = s.Clone()
		s.Name = fmt.Sprintf("state %d", n)
		session.Edited(s.Name, s)
		steps = append(steps, n)
		fmt.Println("made", n)
		if rand.IntN(20) == 0 {
			_, err := folder.Save(path, s)
			check(err)
			session.Saved("", nil)
			for _, l := range lefts {
				check(l.Drop())
			}
			lefts = nil
			steps = append(steps, n)
		}
		time.Sleep(time.Duration(rand.IntN(4000)) * time.Microsecond)
		session.mu.Lock()
		written := session.written
		session.mu.Unlock()
		if written > told {
			told = written
			fmt.Println("kept", steps[written-1])
		}
	}
}

// stateOf is which state a study is in.
func stateOf(s *model.Study) int {
	n, _ := strconv.Atoi(strings.TrimPrefix(s.Name, "state "))
	return n
}

func check(err error) {
	if err != nil {
		fmt.Println("fault:", err)
		os.Exit(1)
	}
}

// times is how often a slow test repeats; more where it is asked for.
func times(usual int) int {
	if n, err := strconv.Atoi(os.Getenv("BACKSPAN_TIMES")); err == nil {
		return n
	}
	return usual
}

// counts are what many kills came to.
type counts struct{ kills, kept, late, swept atomic.Int64 }

// A program that is killed at any moment leaves an old or a new file, whole,
// and its journal gives back every edit that was told to be kept.
func TestKilledAtAnyMoment(t *testing.T) {
	const atOnce, each = 4, 10
	folders := max(times(60)/each, 1)
	var c counts
	var wg sync.WaitGroup
	gate := make(chan struct{}, atOnce)
	for range folders {
		dir := t.TempDir()
		wg.Go(func() {
			gate <- struct{}{}
			defer func() { <-gate }()
			path := filepath.Join(dir, "a.toml")
			put(t, path, string(Encode(sound())))
			last := 0
			for range each {
				last = killOnce(t, path, last, &c)
				c.kills.Add(1)
			}
		})
	}
	wg.Wait()
	t.Logf("%d kills; the journal held edits that no save had after %d of them; an edit older than a second was lost in %d; %d files half saved were swept",
		c.kills.Load(), c.kept.Load(), c.late.Load(), c.swept.Load())
}

func killOnce(t *testing.T, path string, before int, c *counts) int {
	cmd := exec.Command(os.Args[0])
	cmd.Env = append(os.Environ(), "STORE_EDITS="+path)
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Error(err)
		return before
	}
	if err := cmd.Start(); err != nil {
		t.Error(err)
		return before
	}
	due := before // what was told to be kept
	made := map[int]time.Time{}
	timer := time.AfterFunc(time.Duration(50+rand.IntN(1450))*time.Millisecond, func() { _ = cmd.Process.Kill() })
	defer timer.Stop()
	for lines := bufio.NewScanner(out); lines.Scan(); {
		var word string
		var n int
		if _, err := fmt.Sscan(lines.Text(), &word, &n); err != nil {
			t.Errorf("the program said %q", lines.Text())
			break
		}
		if word == "kept" {
			due = max(due, n)
		} else {
			made[n] = time.Now()
		}
	}
	end := time.Now()
	_ = cmd.Wait()
	have := afterKill(t, path, due, c)
	if next, ok := made[have+1]; ok && end.Sub(next) > time.Second {
		c.late.Add(1)
	}
	return have
}

// afterKill looks at what is left and says how far it goes.
func afterKill(t *testing.T, path string, due int, c *counts) int {
	s, err := NewFolder(filepath.Dir(path)).Open(path)
	if err != nil {
		t.Errorf("the file is neither old nor new: %v", err)
		return due
	}
	have := stateOf(s)
	c.swept.Add(int64(len(temps(t, filepath.Dir(path)))))
	session, lefts, err := Journals{State: func() (string, error) { return filepath.Dir(path) + "/state", nil }}.Begin(path)
	if err != nil {
		t.Error(err)
		return due
	}
	if left := temps(t, filepath.Dir(path)); len(left) > 0 {
		t.Errorf("left behind after the study was opened: %v", left)
	}
	inFile := have
	for _, l := range lefts {
		have = max(have, stateOf(l.Study))
	}
	if have > inFile {
		c.kept.Add(1)
	}
	if have < due {
		t.Errorf("edit %d is lost, only %d is there", due, have)
	}
	if err := session.End(false); err != nil {
		t.Error(err)
	}
	return have
}

// saveInTurn saves a study many times, each time over what it read last, and
// counts what it wrote.
func saveInTurn(path string) {
	folder := NewFolder(filepath.Dir(path))
	saves, refused := 0, 0
	for range times(60) {
		s, err := folder.Open(path)
		check(err)
		n, _ := strconv.Atoi(strings.TrimPrefix(s.Name, "state "))
		s.Name, s.VersionsKept = fmt.Sprintf("state %d", n+1), 0
		time.Sleep(time.Duration(rand.IntN(1000)) * time.Microsecond)
		switch _, err = folder.Save(path, s); {
		case err == nil:
			saves++
		case errors.Is(err, ErrChanged):
			refused++
		default:
			check(err)
		}
	}
	fmt.Println(saves, refused)
	os.Exit(0)
}

// Two programs that save one study in any order never write over one
// another's change: every save that was not refused counts.
func TestTwoProgramsSaveOneStudy(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.toml")
	first := sound()
	first.Name = "state 0"
	put(t, path, string(Encode(first)))
	total, refusals := 0, 0
	outputs := make(chan string, 2)
	for range 2 {
		go func() {
			cmd := exec.Command(os.Args[0])
			cmd.Env = append(os.Environ(), "STORE_SAVES="+path)
			out, err := cmd.CombinedOutput()
			if err != nil {
				t.Error(err)
			}
			outputs <- string(out)
		}()
	}
	for range 2 {
		var saves, refused int
		out := <-outputs
		if _, err := fmt.Sscan(out, &saves, &refused); err != nil {
			t.Fatalf("%q", out)
		}
		total, refusals = total+saves, refusals+refused
	}
	s, err := NewFolder(filepath.Dir(path)).Open(path)
	if err != nil {
		t.Fatal(err)
	}
	if want := fmt.Sprintf("state %d", total); s.Name != want {
		t.Errorf("%d saves went through, yet the file holds %q", total, s.Name)
	}
	t.Logf("%d saves, %d refused", total, refusals)
}
