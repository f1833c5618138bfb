package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestReviewIsWritten(t *testing.T) {
	dir := t.TempDir()
	for _, format := range []string{"html", "markdown"} {
		out := "review." + format
		s := run(t, dir, "report", "--variant", "Gear 80", "--format", format, "--out", out)
		b, err := os.ReadFile(filepath.Join(dir, out))
		if s.status != statusFine || err != nil || !strings.Contains(string(b), "Gear 80") || !strings.Contains(string(b), "Belt 190") || strings.Contains(string(b), "Gear 300") {
			t.Errorf("%s: status %d, %q, %v", format, s.status, s.err, err)
		}
	}
	if s := run(t, dir, "report", "--out", "review.html"); s.status != statusCannot || !strings.Contains(s.err, "--force") {
		t.Errorf("status %d, %q", s.status, s.err)
	}
	for _, args := range [][]string{{"report"}, {"report", "--format", "csv", "--out", "x"}, {"report", "--variant", "Belt 999", "--out", "x"}} {
		if s := run(t, dir, args...); s.status != statusCannot || s.out != "" || s.err == "" {
			t.Errorf("%v: status %d, %q", args, s.status, s.err)
		}
	}
}
