package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

func TestSheetIsWrittenOnce(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "belt.html")
	if s := run(t, dir, "sheet", "--variant", "Belt 190", "--format", "html", "--out", "belt.html"); s.status != statusFine || s.out != "" || !strings.Contains(s.err, "wrote belt.html") {
		t.Fatalf("status %d, %q", s.status, s.err)
	}
	first, err := os.ReadFile(path)
	if err != nil || !strings.HasPrefix(string(first), "<!DOCTYPE html>") {
		t.Fatalf("%v %.40q", err, first)
	}
	again := []string{"sheet", "--variant", "Gear 190", "--format", "html", "--out", "belt.html"}
	if s := run(t, dir, again...); s.status != statusCannot || !strings.Contains(s.err, "--force") {
		t.Errorf("status %d, %q", s.status, s.err)
	}
	if b, _ := os.ReadFile(path); string(b) != string(first) {
		t.Error("written over without being told to")
	}
	if s := run(t, dir, append(again, "--force")...); s.status != statusFine {
		t.Errorf("status %d, %q", s.status, s.err)
	}
	if b, _ := os.ReadFile(path); !strings.Contains(string(b), "Pinion teeth") {
		t.Error("not written over when told to")
	}
	if left, _ := os.ReadDir(dir); len(left) != 1 {
		t.Errorf("something is left beside it: %v", left)
	}
}

func TestSheetNeverTakesAStudysPlace(t *testing.T) {
	dir := t.TempDir()
	path := write(t, dir, "mine.toml", sampleText())
	if err := os.Symlink(path, filepath.Join(dir, "link.md")); err != nil {
		t.Skip(err)
	}
	for _, out := range []string{"mine.toml", "link.md", "new.TOML"} {
		if s := run(t, dir, "sheet", "--out", out, "--force"); s.status != statusCannot || !strings.Contains(s.err, "study") {
			t.Errorf("%s: status %d, %q", out, s.status, s.err)
		}
	}
	if b, _ := os.ReadFile(path); string(b) != sampleText() {
		t.Error("the study is gone")
	}
}

func TestSheetIsPrinted(t *testing.T) {
	for _, args := range [][]string{{"sheet"}, {"sheet", "--format", "markdown"}, {"sheet", "--variant", "Gear 190", "--format", "HTML"}} {
		if s := run(t, t.TempDir(), args...); s.status != statusFine || s.err != "" || !strings.Contains(s.out, "Tightening torque") {
			t.Errorf("%v: status %d, %q", args, s.status, s.err)
		}
	}
	for _, args := range [][]string{{"sheet", "--format", "csv"}, {"sheet", "--variant", "Belt 999"}, {"sheet", "--out", "no/such/place.md"}} {
		if s := run(t, t.TempDir(), args...); s.status != statusCannot || s.out != "" {
			t.Errorf("%v: status %d, %q", args, s.status, s.err)
		}
	}
}

// Two sheets of paper must be told apart: the day, and the state of the file.
func TestSheetTellsTheStateOfTheStudy(t *testing.T) {
	dir := t.TempDir()
	path := write(t, dir, "mine.toml", sampleText())
	saved := time.Date(2026, 3, 4, 5, 6, 0, 0, time.Local)
	if err := os.Chtimes(path, saved, saved); err != nil {
		t.Fatal(err)
	}
	s := run(t, dir, "sheet", "--format", "markdown")
	if !strings.Contains(s.out, "| Printed | 20") || !strings.Contains(s.out, "| mine.toml, saved 2026-03-04 05:06; backspan ") {
		t.Errorf("%.400s", s.out)
	}
	if s := run(t, t.TempDir(), "sheet", "--format", "markdown"); !strings.Contains(s.out, "| the built-in sample; backspan ") {
		t.Errorf("%.400s", s.out)
	}
}
