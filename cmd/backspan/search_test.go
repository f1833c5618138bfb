package main

import (
	"encoding/csv"
	"encoding/json"
	"os"
	"strings"
	"testing"

	"backspan/model/explore"
	"backspan/model/param"
	"backspan/model/unit"
	"backspan/store"
)

func quietAndClimbing(more ...string) []string {
	return append([]string{"search", "--free", "propeller.pitch=500..800/31", "--free", crank + "=60..75/16", "--free", "drive.kind",
		"--goal", "noise.level_at_150m", "--goal", "flight.climb_rate=more", "--population", "12", "--generations", "5"}, more...)
}

// briefly is the same search as far as saving needs it.
func briefly(more ...string) []string {
	return quietAndClimbing(append([]string{"--generations", "2"}, more...)...)
}

func TestSearchInEveryFormat(t *testing.T) {
	s := run(t, t.TempDir(), quietAndClimbing()...)
	if s.status != statusFine || !strings.Contains(s.out, "Belt 190: best compromises of 144 designs, seed 1") || !strings.Contains(s.out, "does not prove") {
		t.Errorf("status %d\n%s%s", s.status, s.out, s.err)
	}
	var data struct {
		Tried   int `json:"designs_tried"`
		Allowed bool
		Spread  []struct {
			Key             string
			Least, Greatest float64
		}
		Designs []struct {
			At       []any
			Readings []float64
			Fails    int `json:"checks_failing"`
		}
	}
	s = run(t, t.TempDir(), quietAndClimbing("--format", "json")...)
	if err := json.Unmarshal([]byte(s.out), &data); err != nil || len(data.Designs) < 3 || data.Tried != 144 || !data.Allowed {
		t.Fatal(err, s.out)
	}
	first, last := data.Designs[0].Readings, data.Designs[len(data.Designs)-1].Readings
	if data.Spread[0].Least != first[0] || data.Spread[1].Greatest != last[1] || data.Designs[0].Fails != 0 {
		t.Errorf("%+v from %v to %v", data.Spread, first, last)
	}
	s = run(t, t.TempDir(), quietAndClimbing("--format", "csv")...)
	if rows, err := csv.NewReader(strings.NewReader(s.out)).ReadAll(); err != nil || len(rows) != len(data.Designs)+1 {
		t.Errorf("%v %v", err, rows)
	}
}

func TestSearchMergedIsTheWhole(t *testing.T) {
	split(t, []string{"1/3", "2/3", "3/3"}, briefly("--runs", "3", "--at-least", "propeller.static_thrust=500 N")...)
	split(t, []string{"1/2", "2/2"}, briefly("--at-least", "propeller.static_thrust=5000 N")...)
}

func TestSearchSaysWhenNothingIsAllowed(t *testing.T) {
	s := run(t, t.TempDir(), quietAndClimbing("--at-least", "propeller.static_thrust=5000 N")...)
	if s.status != statusFails || !strings.Contains(s.out, "No design passed every check and kept to the limits") {
		t.Errorf("status %d\n%s%s", s.status, s.out, s.err)
	}
}

func TestSearchSavesVariants(t *testing.T) {
	dir := t.TempDir()
	path := write(t, dir, "study.toml", sampleText())
	s := run(t, dir, briefly("--save-as-variants", "2", path)...)
	if s.status != statusFine || !strings.Contains(s.err, "saved in") {
		t.Fatalf("status %d, %s", s.status, s.err)
	}
	study, err := store.NewFolder(dir).Open(path)
	if err != nil || study.Index("Belt 190 found") < 0 || study.Index("Belt 190 found 2") < 0 {
		t.Fatal(err, s.err)
	}
	var data struct {
		Variants []struct {
			Readings []struct {
				Key   string
				Value *float64
			}
		}
	}
	shown := run(t, dir, briefly("--format", "csv")...)
	rows, err := csv.NewReader(strings.NewReader(shown.out)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	c := run(t, dir, "compare", path, "--variant", "Belt 190 found", "--format", "json")
	if err := json.Unmarshal([]byte(c.out), &data); err != nil || len(data.Variants) != 2 {
		t.Fatal(err, c.err)
	}
	for _, r := range data.Variants[1].Readings {
		if r.Key == "flight.climb_rate" {
			if text, _ := json.Marshal(r.Value); string(text) != rows[1][4] {
				t.Errorf("the saved variant climbs %s, found %s", text, rows[1][4])
			}
		}
	}
	if left, err := os.ReadDir(dir); err != nil || len(left) > 2 {
		t.Errorf("%v left behind, %v", left, err)
	}
}

func TestSearchRefuses(t *testing.T) {
	for _, tc := range []struct {
		args []string
		says string
	}{
		{[]string{"search"}, "parameters that are free"},
		{quietAndClimbing("--free", "propeller.pich"), "propeller.pitch"},
		{quietAndClimbing("--runs", "0"), "runs"},
		{quietAndClimbing("--save-as-variants", "2"), "backspan sample"},
		{quietAndClimbing("--save-as-variants", "2", "--part", "1/2"), "a part has no answer"},
		{quietAndClimbing("--save-as-variants", "200"), "1 to 50"},
		{quietAndClimbing("--seed", "-1"), "search --help"},
	} {
		if s := run(t, t.TempDir(), tc.args...); s.status != statusCannot || s.out != "" || !strings.Contains(s.err, tc.says) {
			t.Errorf("%v: status %d, %q", tc.args, s.status, s.err)
		}
	}
}

// A study that somebody has open, or that changed while the search ran, is not
// saved over.
func TestSearchDoesNotSaveOverOthers(t *testing.T) {
	dir := t.TempDir()
	path := write(t, dir, "study.toml", sampleText())
	p := program{env: func(string) string { return "" }, dir: dir}
	session, _, err := p.journals().Begin(path)
	if err != nil {
		t.Fatal(err)
	}
	s := run(t, dir, briefly("--save-as-variants", "1", path)...)
	if s.status != statusCannot || !strings.Contains(s.err, "has it open") {
		t.Errorf("status %d, %q", s.status, s.err)
	}
	if err := session.End(false); err != nil {
		t.Fatal(err)
	}
	study, err := store.NewFolder(dir).Read(path)
	if err != nil {
		t.Fatal(err)
	}
	e := exploration{study: study.Clone(), at: &study.Variants[0], path: path}
	e.study.Notes = "as it was before"
	if err := p.saveBest(&e, searchQuestion{}, nil, 1); err == nil || !strings.Contains(err.Error(), "changed while the search ran") {
		t.Error(err)
	}
	if b, err := os.ReadFile(path); err != nil || string(b) != sampleText() {
		t.Error("the file changed", err)
	}
}

// Work that ended without being saved is not passed over.
func TestSearchDoesNotSaveOverWorkLeftBehind(t *testing.T) {
	dir := t.TempDir()
	path := write(t, dir, "study.toml", sampleText())
	p := program{env: func(string) string { return "" }, dir: dir}
	session, _, err := p.journals().Begin(path)
	if err != nil {
		t.Fatal(err)
	}
	study, err := store.NewFolder(dir).Read(path)
	if err != nil {
		t.Fatal(err)
	}
	study.Notes = "edited, and never saved"
	session.Edited("notes", study)
	if err := session.End(true); err != nil {
		t.Fatal(err)
	}
	s := run(t, dir, briefly("--save-as-variants", "1", path)...)
	if s.status != statusCannot || !strings.Contains(s.err, "Take it up") {
		t.Errorf("status %d, %q", s.status, s.err)
	}
	if _, lefts, err := p.journals().Begin(path); err != nil || len(lefts) != 1 || lefts[0].Study.Notes != study.Notes {
		t.Errorf("what was left is gone: %v %v", lefts, err)
	}
}

// People see a rounded page's worth of a long answer, from its one end to the
// other, without rows that look alike.
func TestAnswerIsShownAtAGlance(t *testing.T) {
	length, teeth := explore.Dial{}, explore.Dial{}
	length.Kind, length.Unit, teeth.Kind = param.KindNumber, unit.Millimetre, param.KindWhole
	table := findingTable{dials: []explore.Dial{length, teeth}}
	var fs []explore.Finding
	for i := range 100 {
		for _, off := range []float64{0, 1e-9} {
			fs = append(fs, explore.Finding{At: []float64{0.0600123456 + float64(i)*1e-3 + off, float64(i)}})
		}
	}
	rows := table.alongAnswer(fs)
	if len(rows) != 20 || rows[0][0] != "60.01 mm" || rows[19][0] != "159 mm" {
		t.Errorf("%d rows: %q", len(rows), rows)
	}
	if rows = table.alongAnswer(fs[:6]); len(rows) != 3 {
		t.Errorf("%q", rows)
	}
}
