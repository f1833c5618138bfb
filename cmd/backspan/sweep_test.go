package main

import (
	"encoding/csv"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

const crank = "drive.ribbed_belt.crank_pulley_effective_diameter"

func TestSweepInEveryFormat(t *testing.T) {
	args := []string{"sweep", "--over", crank + "=55 mm..80 mm/6", "--over", "drive.kind", "--reading", "stack.depth", "--reading", "flight.climb_rate"}
	s := run(t, t.TempDir(), args...)
	for _, says := range []string{"Belt 190: sweep over Crank pulley", "toothed belt", "75 mm", "fail", "pass"} {
		if !strings.Contains(s.out, says) {
			t.Errorf("does not say %q:\n%s", says, s.out)
		}
	}
	s = run(t, t.TempDir(), append(args, "--format", "csv")...)
	rows, err := csv.NewReader(strings.NewReader(s.out)).ReadAll()
	if err != nil || len(rows) != 25 || rows[0][0] != crank+"_mm" || rows[0][3] != "flight.climb_rate_m_s" || rows[4][1] != "direct" || rows[4][3] != "" {
		t.Errorf("%v %v", err, rows)
	}
	var data struct {
		Designs []struct {
			At       []any
			Readings []*float64
			Fails    int `json:"checks_failing"`
		}
	}
	s = run(t, t.TempDir(), append(args, "--format", "json")...)
	if err := json.Unmarshal([]byte(s.out), &data); err != nil || len(data.Designs) != 24 || data.Designs[4].At[0] != 60.0 || data.Designs[4].Readings[1] == nil {
		t.Errorf("%v %+v", err, data)
	}
	if s = run(t, t.TempDir(), append(args, "--format", "markdown")...); !strings.HasPrefix(s.out, "## Belt 190") {
		t.Error(s.out)
	}
}

func TestSweepRefuses(t *testing.T) {
	for _, tc := range []struct {
		args []string
		says string
	}{
		{nil, "one or two parameters"},
		{[]string{"--over", "drive.ribs=1..3"}, "did you mean drive.ribbed_belt.ribs"},
		{[]string{"--over", "drive.kind", "--reading", "stack.dept"}, "did you mean stack.depth"},
		{[]string{"--over", "drive.kind", "--variant", "Belt 999"}, "Belt 190"},
		{[]string{"--over", "drive.kind", "--part", "3/2"}, "for example 1/4"},
		{[]string{"--over", "drive.kind", "--part", "1/9"}, "4 parts"},
	} {
		if s := run(t, t.TempDir(), append([]string{"sweep"}, tc.args...)...); s.status != statusCannot || s.out != "" || !strings.Contains(s.err, tc.says) {
			t.Errorf("%v: status %d, %q", tc.args, s.status, s.err)
		}
	}
}

// split works a question whole, and in parts that are then merged. Its whole
// answer is worked out twice: to be printed, and as one part, which is then
// printed in every format.
func split(t *testing.T, parts []string, args ...string) {
	t.Helper()
	dir := t.TempDir()
	const all = "all.part"
	if s := run(t, dir, append(args, "--part", "1/1", "--out", all)...); s.status != statusFine || s.out != "" {
		t.Fatalf("all: status %d, %s%s", s.status, s.out, s.err)
	}
	var files []string
	for _, part := range parts {
		name := strings.ReplaceAll(part, "/", "of") + ".part"
		if s := run(t, dir, append(args, "--part", part, "--out", name)...); s.status != statusFine || s.out != "" {
			t.Fatalf("%s: status %d, %s%s", part, s.status, s.out, s.err)
		}
		files = append([]string{name}, files...)
	}
	printed := run(t, dir, args...)
	for _, format := range []string{"table", "csv", "json", "markdown"} {
		whole := run(t, dir, "merge", "--format", format, all)
		merged := run(t, dir, append([]string{"merge", "--format", format}, files...)...)
		if whole.out == "" || merged.out != whole.out || merged.status != whole.status || format == "table" && (whole.out != printed.out || whole.status != printed.status) {
			t.Errorf("%s: status %d and %d\n%s\n%s%s", format, whole.status, merged.status, whole.out, merged.out, merged.err)
		}
	}
}

func TestSweepMergedIsTheWhole(t *testing.T) {
	split(t, []string{"1/3", "2/3", "3/3"}, "sweep", "--over", crank+"=55 mm..80 mm/5", "--over", "drive.kind", "--reading", "drive.ratio")
}

func TestMergeRefuses(t *testing.T) {
	dir := t.TempDir()
	part := func(name, part, over string) string {
		if s := run(t, dir, "sweep", "--over", over, "--part", part, "--out", name); s.status != statusFine {
			t.Fatal(s.err)
		}
		return name
	}
	a, b, c := part("a", "1/2", "drive.kind"), part("b", "2/2", "drive.kind"), part("c", "2/2", "drive.kind=gear, direct")
	text, err := os.ReadFile(filepath.Join(dir, b))
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.SplitAfter(string(text), "\n")
	write(t, dir, "cut", strings.Join(lines[:2], ""))
	write(t, dir, "endless", strings.Join(lines[:3], ""))
	write(t, dir, "other build", strings.Replace(string(text), `"program":"`, `"program":"x`, 1))
	write(t, dir, "newer", strings.Replace(string(text), `"backspan_part":1`, `"backspan_part":2`, 1))
	write(t, dir, "study.toml", sampleText())
	for _, tc := range []struct {
		files []string
		says  string
	}{
		{nil, "name the part files"}, {[]string{a}, "part 2 of 2 is missing"}, {[]string{b}, "part 1 of 2 is missing"},
		{[]string{a, b, b}, "given twice"}, {[]string{a, c}, "not parts of one question"}, {[]string{a, "cut"}, "cut off at record 2"},
		{[]string{a, "endless"}, "cut off at its end"}, {[]string{a, "other build"}, "one build"}, {[]string{a, "newer"}, "newer Backspan"},
		{[]string{"study.toml"}, "not a part file"}, {[]string{"nowhere"}, "no such file"},
	} {
		if s := run(t, dir, append([]string{"merge"}, tc.files...)...); s.status != statusCannot || s.out != "" || !strings.Contains(s.err, tc.says) {
			t.Errorf("%v: status %d, %q", tc.files, s.status, s.err)
		}
	}
	if s := run(t, dir, "sweep", "--over", "drive.kind", "--part", "1/2", "--out", a); s.status != statusCannot || !strings.Contains(s.err, "not written") {
		t.Errorf("a part was written over: %q", s.err)
	}
}
