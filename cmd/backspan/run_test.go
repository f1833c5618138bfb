package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"backspan/model"
	"backspan/store"
)

// said is what a command printed and its exit status.
type said struct {
	status   int
	out, err string
}

func run(t *testing.T, dir string, args ...string) said {
	t.Helper()
	var out, err bytes.Buffer
	status := program{out: &out, err: &err, env: func(string) string { return "" }, dir: dir}.run(args)
	return said{status, out.String(), err.String()}
}

func write(t *testing.T, dir, name, text string) string {
	t.Helper()
	path := filepath.Join(dir, name)
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	return path
}

func sampleText() string { return string(store.Encode(model.Sample())) }

func TestComparisonOfTheSampleInEveryFormat(t *testing.T) {
	for _, format := range []string{"table", "json", "csv", "markdown"} {
		s := run(t, t.TempDir(), "compare", "--format", format)
		if s.status != 0 || s.err != "" || !strings.Contains(s.out, "Gear 190") {
			t.Errorf("%s: status %d, %q\n%.200s", format, s.status, s.err, s.out)
		}
		switch format {
		case "json":
			if !json.Valid([]byte(s.out)) {
				t.Error("not JSON")
			}
		case "csv":
			if _, err := csv.NewReader(strings.NewReader(s.out)).ReadAll(); err != nil {
				t.Error(err)
			}
		}
	}
}

func TestBareWordComparesWhereThereIsNoTerminal(t *testing.T) {
	if s := run(t, t.TempDir()); s.status != 0 || !strings.Contains(s.out, "Standing thrust") {
		t.Errorf("status %d, %q", s.status, s.err)
	}
	if s := run(t, t.TempDir(), "open"); s.status != 2 || !strings.Contains(s.err, "needs a terminal") {
		t.Errorf("status %d, %q", s.status, s.err)
	}
}

func TestOnlyTheNamedVariants(t *testing.T) {
	s := run(t, t.TempDir(), "compare", "--variant", "Gear 80", "--variant=Belt 80", "--format", "json")
	var got struct {
		Reference string
		Variants  []struct{ Name string }
	}
	if err := json.Unmarshal([]byte(s.out), &got); err != nil || len(got.Variants) != 3 || got.Reference != "Belt 190" || got.Variants[1].Name != "Gear 80" {
		t.Errorf("%v %+v", err, got)
	}
	if s := run(t, t.TempDir(), "check", "--variant", "Gear 80"); s.status != 0 || strings.Contains(s.out, "Belt 190:") || !strings.Contains(s.out, "Gear 80:") {
		t.Errorf("status %d\n%.300s", s.status, s.out)
	}
	if s := run(t, t.TempDir(), "check", "--variant", "Belt 999"); s.status != 2 || !strings.Contains(s.err, "Belt 190") {
		t.Errorf("status %d, %q", s.status, s.err)
	}
}

func TestCheckStatus(t *testing.T) {
	if s := run(t, t.TempDir(), "check"); s.status != 0 || !strings.Contains(s.out, "0 fail") {
		t.Errorf("status %d, %s", s.status, s.err)
	}
	dir := t.TempDir()
	bad := strings.Replace(sampleText(), "diameter_mm = 1300.0 ", "diameter_mm = 1500.0 ", 1)
	path := write(t, dir, "wide.toml", bad)
	s := run(t, dir, "check", path)
	if s.status != 1 || !strings.Contains(s.out, "Guard diameter") {
		t.Errorf("propeller wider than the guard: status %d\n%.300s%s", s.status, s.out, s.err)
	}
}

func TestStudyOfTheFolder(t *testing.T) {
	dir := t.TempDir()
	one := filepath.Join(dir, "one.toml")
	if s := run(t, dir, "new", "one.toml"); s.status != 0 {
		t.Fatal(s.err)
	}
	if s := run(t, dir, "compare"); !strings.Contains(s.out, "First") {
		t.Errorf("did not take the only study: %s", s.err)
	}
	if s := run(t, dir, "sample", "two.toml"); s.status != 0 {
		t.Fatal(s.err)
	}
	if s := run(t, dir, "compare"); s.status != 2 || !strings.Contains(s.err, "one.toml, two.toml") {
		t.Errorf("status %d, %q", s.status, s.err)
	}
	if s := run(t, dir, "compare", one); s.status != 0 {
		t.Error(s.err)
	}
}

func TestNeverOverwrites(t *testing.T) {
	dir := t.TempDir()
	path := write(t, dir, "mine.toml", "precious")
	for _, word := range []string{"new", "sample"} {
		if s := run(t, dir, word, "mine.toml"); s.status != 2 || !strings.Contains(s.err, "already") {
			t.Errorf("%s: status %d, %q", word, s.status, s.err)
		}
	}
	if b, err := os.ReadFile(path); err != nil || string(b) != "precious" {
		t.Errorf("%q %v", b, err)
	}
	if s := run(t, dir, "new"); s.status != 2 || !strings.Contains(s.err, "name the file") {
		t.Errorf("status %d, %q", s.status, s.err)
	}
}

// Every way a study can be wrong gets a sentence that names the place and what
// to do, status 2, and leaves the file as it was.
func TestBadStudies(t *testing.T) {
	good := sampleText()
	replace := func(old, now string) string {
		if !strings.Contains(good, old) {
			t.Fatalf("the sample has no %q", old)
		}
		return strings.Replace(good, old, now, 1)
	}
	until := func(mark string) string {
		head, _, found := strings.Cut(good, mark)
		if !found {
			t.Fatalf("the sample has no %q", mark)
		}
		return head
	}
	for _, tc := range []struct{ name, text, says string }{
		{"empty file", "", "is empty"},
		{"binary file", "\x00\x01\x02\xff\xfe", "not a text file"},
		{"half-written file", good[:len(until("stroke_mm"))+8], "cut short"},
		{"no variants", until("[[variant]]"), "no variants"},
		{"two of one name", replace(`name = "Gear 190"`, `name = "Belt 190"`), "variant"},
		{"reference gone", replace(`reference = "Belt 190"`, `reference = "Belt 200"`), "Belt 200"},
		{"no ribs", replace("ribs = 12 ", "ribs = 0 "), "2 to 20"},
		{"negative mass", replace("mass_kg = 9.6 ", "mass_kg = -9.6 "), "-9.6 kg"},
		{"curve of one point", replace("power_curve_rpm_kw = [", "power_curve_rpm_kw = [[5000.0, 7.0]]\nx = ["), "at least 2"},
		{"not a number", replace("bore_mm = 66.0 ", "bore_mm = nan "), "finite"},
		{"infinite", replace("bore_mm = 66.0 ", "bore_mm = +inf "), "finite"},
		{"unknown key", replace("bore_mm = 66.0 ", "boar_mm = 66.0 "), "bore_mm"},
		{"newer format", replace("format = 1 ", "format = 99 "), "99"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			dir := t.TempDir()
			path := write(t, dir, "study.toml", tc.text)
			for _, word := range []string{"compare", "check"} {
				s := run(t, dir, word, path)
				if s.status != 2 || s.out != "" || !strings.Contains(s.err, tc.says) || !strings.Contains(s.err, "study.toml") {
					t.Errorf("%s: status %d, out %.60q, says %q", word, s.status, s.out, s.err)
				}
			}
			if b, err := os.ReadFile(path); err != nil || string(b) != tc.text {
				t.Errorf("the file changed: %v", err)
			}
		})
	}
	if s := run(t, t.TempDir(), "check", "nowhere.toml"); s.status != 2 || !strings.Contains(s.err, "no such file") {
		t.Errorf("missing file: %q", s.err)
	}
	if s := run(t, t.TempDir(), "check", t.TempDir()); s.status != 2 || !strings.Contains(s.err, "folder") {
		t.Errorf("a folder: %q", s.err)
	}
}

func TestCommandLineIsExplained(t *testing.T) {
	for _, args := range [][]string{{"--help"}, {"help"}, {"help", "check"}, {"compare", "--help"}, {"check", "-h"}, {"new", "--help"}} {
		if s := run(t, t.TempDir(), args...); s.status != 0 || !strings.Contains(s.out, "backspan") || s.err != "" {
			t.Errorf("%v: status %d, %q", args, s.status, s.err)
		}
	}
	for _, args := range [][]string{{"frobnicate"}, {"compare", "--wrong"}, {"compare", "a", "b"}, {"check", "--format", "xml"}, {"--ascii"}} {
		if s := run(t, t.TempDir(), args...); s.status != 2 || s.err == "" || s.out != "" {
			t.Errorf("%v: status %d, %q", args, s.status, s.err)
		}
	}
}

// The sample in the repository is the one that the program writes.
func TestSampleFileIsUpToDate(t *testing.T) {
	path := filepath.Join("..", "..", "testdata", "studies", "saddle_meadow.toml")
	got, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if string(got) != sampleText() {
		t.Errorf("%s differs from \"backspan sample\"; write it anew", path)
	}
}

func TestBriefComparisonIsWhatDecides(t *testing.T) {
	for _, format := range []string{"table", "markdown"} {
		s := run(t, t.TempDir(), "compare", "--brief", "--variant", "Gear 190", "--format", format)
		for _, want := range []string{"Gear 190: feels like 35.9 kg (+6.1)", "+6.0 from mass and +9.7 from depth", "◆ 29.8", "Checks that fail or are thin", "no check fails; 8 thin, 6 of them past their guide values by up to 42 %", "is past its guide value by 44 %", "airworthiness"} {
			if s.status != statusFine || !strings.Contains(s.out, want) {
				t.Errorf("%s lacks %q: status %d %s", format, want, s.status, s.err)
			}
		}
		if n := strings.Count(s.out, "\n"); n > 60 {
			t.Errorf("%s: %d lines are not brief", format, n)
		}
	}
	if s := run(t, t.TempDir(), "compare", "--brief", "--help"); !strings.Contains(s.out, "with --brief table or markdown") {
		t.Errorf("the help offers what is refused\n%s", s.out)
	}
	if s := run(t, t.TempDir(), "compare", "--brief", "--format", "csv"); s.status != statusCannot || s.out != "" || !strings.Contains(s.err, "table or markdown") {
		t.Errorf("%+v", s)
	}
}
