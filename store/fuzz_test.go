package store

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"testing"
)

// Run it with -fuzzminimizetime=10x: files are long, and making them shorter
// would take most of the time.
func FuzzDecode(f *testing.F) {
	s := sound()
	s.Notes = "a\n\"\"\"\nb\\"
	f.Add(Encode(s))
	bad, _ := filepath.Glob("../testdata/bad/*.toml")
	for _, name := range bad {
		if src, err := os.ReadFile(name); err == nil {
			f.Add(src)
		}
	}
	f.Fuzz(func(t *testing.T, src []byte) {
		s, err := Decode("fuzz.toml", src)
		if err != nil {
			var ps Problems
			if !errors.As(err, &ps) || len(ps) == 0 || s != nil {
				t.Fatalf("%v, %v", s, err)
			}
			checkShowable(t, ps)
			for _, p := range ps {
				if p.Line > 1+bytes.Count(src, []byte("\n")) {
					t.Fatalf("beyond the end: %v", p)
				}
			}
			return
		}
		out := Encode(s)
		back, err := Decode("again.toml", out)
		if err != nil {
			t.Fatalf("%v in\n%s", err, out)
		}
		if again := Encode(back); !bytes.Equal(out, again) {
			t.Fatalf("wrote\n%s\nthen\n%s", out, again)
		}
	})
}
