package store

import (
	"errors"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"
)

var update = flag.Bool("update", false, "write the problems found into testdata/bad/*.want")

// Each bad file has beside it, word for word, the problems it must give.
func TestBadFiles(t *testing.T) {
	files, err := filepath.Glob("../testdata/bad/*.toml")
	if err != nil || len(files) < 25 {
		t.Fatalf("found %d files, %v", len(files), err)
	}
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) {
			src, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			s, err := Decode(filepath.Base(file), src)
			var ps Problems
			if s != nil || !errors.As(err, &ps) || len(ps) == 0 {
				t.Fatalf("got %v and %v, want problems", s, err)
			}
			got := ps.Error() + "\n"
			wanted := strings.TrimSuffix(file, ".toml") + ".want"
			if *update {
				if err := os.WriteFile(wanted, []byte(got), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(wanted)
			if err != nil {
				t.Fatal(err)
			}
			if got != string(want) {
				t.Errorf("got\n%s\nwant\n%s", got, want)
			}
			checkShowable(t, ps)
		})
	}
}

// checkShowable holds problems to what a terminal and a person can take.
func checkShowable(t *testing.T, ps Problems) {
	t.Helper()
	for _, p := range ps {
		if p.Text == "" || p.Line < 0 || strings.ContainsFunc(p.String(), func(r rune) bool { return !unicode.IsPrint(r) }) {
			t.Errorf("not fit to show: %q", p.String())
		}
	}
}
