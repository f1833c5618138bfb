package main

import (
	"encoding/csv"
	"encoding/json"
	"regexp"
	"slices"
	"strings"
	"testing"
)

func TestDiffOfTwoVariants(t *testing.T) {
	s := run(t, t.TempDir(), "diff", "--variant", "Belt 190", "--variant", "Gear 190")
	if s.status != statusFails || !strings.Contains(s.out, "Drive: Kind of drive") || strings.Contains(s.out, "Variant: Name") {
		t.Errorf("status %d\n%s", s.status, s.out)
	}
	if !strings.Contains(s.out, "390 EUR") {
		t.Errorf("a price without the study's currency\n%s", s.out)
	}
	if s := run(t, t.TempDir(), "diff", "--variant", "Belt 190", "--variant", "Belt 190"); s.status != statusFine || !strings.Contains(s.out, "nothing is set differently") {
		t.Errorf("one variant against itself: status %d\n%s", s.status, s.out)
	}
}

func TestDiffOfTwoFiles(t *testing.T) {
	dir := t.TempDir()
	a := write(t, dir, "a.toml", sampleText())
	changed := strings.Replace(sampleText(), `name = "Belt 80"`, `name = "Belt 90"`, 1)
	changed = strings.Replace(changed, "ribs = 12", "ribs = 13", 1)
	b := write(t, dir, "b.toml", changed)
	s := run(t, dir, "diff", a, b, "--format", "json")
	var contrasts []struct {
		What, Note  string
		Differences []struct{ Key, From, To string }
	}
	if err := json.Unmarshal([]byte(s.out), &contrasts); err != nil || s.status != statusFails {
		t.Fatalf("status %d, %v\n%s", s.status, err, s.out)
	}
	notes, ribs := 0, false
	for _, c := range contrasts {
		if strings.HasPrefix(c.Note, "only in ") {
			notes++
		}
		for _, d := range c.Differences {
			ribs = ribs || c.What == "Variant Belt 190" && d.Key == "drive.ribbed_belt.ribs" && d.From == "12" && d.To == "13"
		}
	}
	if notes != 2 || !ribs {
		t.Errorf("%d variants of one file only, ribs found %v\n%s", notes, ribs, s.out)
	}
	c := write(t, dir, "c.toml", strings.Replace(sampleText(), "[[variant]]", "[[decision]]\ndate = 2026-11-03\ntext = \"three\\u001b[31m blades\"\n\n[[variant]]", 1))
	for format, want := range map[string]string{"table": `three\x1b[31m blades`, "csv": "Decisions,decision,2026-11-03,,", "json": `"key": "decision"`, "markdown": "2026-11-03 | - | three"} {
		if s := run(t, dir, "diff", a, c, "--format", format); s.status != statusFails || !strings.Contains(s.out, want) || strings.Contains(s.out, "\x1b") {
			t.Errorf("%s: a decision more, status %d\n%q", format, s.status, s.out)
		}
	}
	if s := run(t, dir, "diff", a, b, "--format", "csv"); !strings.Contains(s.out, "Variant Belt 90,,,,,yes,"+b+"\n") {
		t.Errorf("a variant of one file is not in the CSV\n%s", s.out)
	}
	if s := run(t, dir, "diff", a, a); s.status != statusFine {
		t.Errorf("a file against itself: status %d", s.status)
	}
	for _, args := range [][]string{{"diff"}, {"diff", a}, {"diff", a, b, "--variant", "Belt 190"}} {
		if s := run(t, dir, args...); s.status != statusCannot || !strings.Contains(s.err, "give two files") {
			t.Errorf("%v: status %d, %s", args, s.status, s.err)
		}
	}
}

// Every key that the sample's file holds is in the reference.
func TestParamsExplainTheFile(t *testing.T) {
	s := run(t, t.TempDir(), "params", "--format", "csv")
	rows, err := csv.NewReader(strings.NewReader(s.out)).ReadAll()
	if err != nil || s.status != statusFine {
		t.Fatalf("status %d, %v", s.status, err)
	}
	explained := map[string]bool{"format": true}
	for _, row := range rows[1:] {
		explained[row[1]] = true
	}
	keys := regexp.MustCompile(`(?m)^([a-z0-9_]+) = `).FindAllStringSubmatch(sampleText(), -1)
	if len(keys) < 500 {
		t.Fatalf("%d keys in the sample's file", len(keys))
	}
	for _, k := range keys {
		if !explained[k[1]] {
			t.Errorf("%s of the file is not explained", k[1])
		}
	}
	for _, format := range []string{"table", "markdown", "json"} {
		if s := run(t, t.TempDir(), "params", "--format", format); s.status != statusFine || !strings.Contains(s.out, "crank_pulley_effective_diameter_mm") {
			t.Errorf("%s: status %d", format, s.status)
		}
	}
}

// A key is spelt alike by every command, and every spelling of it that is
// printed anywhere is taken.
func TestOneSpellingOfKeys(t *testing.T) {
	rows, err := csv.NewReader(strings.NewReader(run(t, t.TempDir(), "params", "--format", "csv").out)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	known := map[string][]string{} // file key and table
	for _, row := range rows[1:] {
		if was := known[row[0]]; was != nil && row[0] != "name" && row[0] != "notes" {
			t.Errorf("%s stands twice, in [%s] and [%s]", row[0], was[1], row[len(row)-1])
		}
		known[row[0]] = []string{row[1], row[len(row)-1]}
	}
	for _, format := range []string{"csv", "json"} {
		for _, args := range [][]string{{"diff", "--variant", "Belt 190", "--variant", "Gear 80"}, {"compare"}} {
			s := run(t, t.TempDir(), append(args, "--format", format)...)
			keys := regexp.MustCompile(`(?m)^(?:Variant [^,]*|parameter),([a-z0-9_.]+),|"key": "(drive\.ribbed_belt\.[a-z_]+)"`).FindAllStringSubmatch(s.out, -1)
			if len(keys) == 0 && (format == "csv" || args[0] == "diff") {
				t.Errorf("%v as %s: no key at all", args, format)
			}
			for _, k := range keys {
				if known[k[1]+k[2]] == nil {
					t.Errorf("%v as %s: params does not know %s", args, format, k[1]+k[2])
				}
			}
		}
	}
	const path = "drive.ribbed_belt.crank_pulley_effective_diameter"
	inFile := known[path]
	if inFile == nil {
		t.Fatal(path + " is not known")
	}
	table := inFile[1] + "." + inFile[0]
	if table != "variant."+path+"_mm" {
		t.Fatalf("in the file it is %s", table)
	}
	want := run(t, t.TempDir(), "sweep", "--over", path+"=66,68", "--format", "csv").out
	for _, key := range []string{table, strings.TrimPrefix(table, "variant."), strings.TrimSuffix(table, "_mm")} {
		if s := run(t, t.TempDir(), "sweep", "--over", key+"=66,68", "--format", "csv"); s.out != want || s.status != statusFine {
			t.Errorf("%s: status %d\n%s%s", key, s.status, s.out, s.err)
		}
	}
	for _, args := range [][]string{
		{"solve", "--change", "variant.propeller.pitch=400 mm..700 mm", "--reading", "propeller.static_thrust", "--to", "700 N"},
		{"tolerance", "--spread", "variant.propeller.pitch_mm=1 %", "--samples", "100"},
		{"sweep", "--over", "margin_asked_percent=10,20"},
	} {
		if s := run(t, t.TempDir(), args...); s.status == statusCannot {
			t.Errorf("%v: %s", args, s.err)
		}
	}
	if s := run(t, t.TempDir(), "sweep", "--over", "variant.site.altitude=1,2"); s.status != statusCannot || !strings.Contains(s.err, "no parameter") {
		t.Errorf("a variant has no site: %+v", s)
	}
}

func TestVersion(t *testing.T) {
	for _, arg := range []string{"version", "--version"} {
		if s := run(t, t.TempDir(), arg); s.status != statusFine || !strings.HasPrefix(s.out, "backspan ") {
			t.Errorf("%s: %+v", arg, s)
		}
	}
}

// What completion offers as a format is what the command names when it refuses
// another.
func TestFormatsAreThoseOfTheCommand(t *testing.T) {
	for _, c := range commands() {
		offered := ""
		for _, f := range (program{}).flagsOf(c) {
			if f.Name == "format" {
				if offered = valuesOf(f); offered == "" {
					t.Errorf("%s offers no formats", c.name)
				}
			}
		}
		if !slices.Contains([]string{"compare", "sheet", "report", "params"}, c.name) {
			continue
		}
		said := run(t, t.TempDir(), c.name, "--format", "nonsense").err
		for _, f := range []string{"table", "json", "csv", "markdown", "html"} {
			if _, listed, ok := strings.Cut(said, "give"); !ok || strings.Contains(listed, f) != strings.Contains(" "+offered+" ", " "+f+" ") {
				t.Errorf("%s offers %q and says %q", c.name, offered, said)
			}
		}
	}
}

// Every command and every flag stands in every script and in the manual.
func TestNothingIsLeftOutOfScriptsAndManual(t *testing.T) {
	texts := map[string]string{"manual": strings.ReplaceAll(run(t, t.TempDir(), "manual").out, `\-`, "-")}
	for _, shell := range []string{"bash", "zsh", "fish"} {
		texts[shell] = run(t, t.TempDir(), "completion", shell).out
	}
	flags := 0
	for _, c := range commands() {
		for where, text := range texts {
			if !strings.Contains(text, c.name) {
				t.Errorf("%s leaves out %s", where, c.name)
			}
			for _, f := range (program{}).flagsOf(c) {
				flags++
				if !strings.Contains(text, "--"+f.Name) && !strings.Contains(text, "-l "+f.Name) {
					t.Errorf("%s leaves out %s --%s", where, c.name, f.Name)
				}
			}
		}
	}
	if flags == 0 {
		t.Error("no flags at all")
	}
	if s := run(t, t.TempDir(), "completion", "csh"); s.status != statusCannot || !strings.Contains(s.err, "bash, zsh or fish") {
		t.Errorf("%+v", s)
	}
}
