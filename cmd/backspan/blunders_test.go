package main

import (
	"encoding/csv"
	"slices"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/param"
	"backspan/store"
)

// A builder's blunders through the file and the command, as a user meets them.
func TestBlundersAreAnswered(t *testing.T) {
	const pulley = "drive.ribbed_belt.driven_pulley_effective_diameter"
	for _, tc := range []struct {
		name          string
		change        [][2]string
		status        int
		key, verdict  string
		says, advises string
	}{
		{"ratio far too low", [][2]string{{pulley, "100 mm"}}, 1, "match.static", "fails", "the engine lugs, load too heavy", "raise the reduction"},
		{"ratio far too high", [][2]string{{pulley, "268 mm"}, {"engine.speed_limit", "8500"}}, 1, "match.trim", "fails", "run past Highest allowed speed", "lower the reduction"},
		{"past the curve", [][2]string{{pulley, "268 mm"}}, 1, "match.trim", "fails", "past the end of its Power curve; extend it", "extend Power curve"},
		{"propeller wider than the guard", [][2]string{{"propeller.diameter", "1500 mm"}}, 1, "stack.tip_clearance", "fails", "| -25 | 60 | mm", "a smaller propeller Diameter"},
		{"tip Mach 0.9", [][2]string{{"propeller.pitch", "200 mm"}, {"propeller.diameter", "1400 mm"}, {pulley, "100 mm"},
			{"propeller.greatest_chord", "50 mm"}, {"propeller.root_chord", "50 mm"}, {"propeller.tip_chord", "25 mm"}},
			1, "propeller.tip_mach", "fails", "Tip Mach number, at trim speed | fails | 0.9142", "stand for nothing"},
		{"four blades of 2 cm", [][2]string{{"propeller.blades", "4"}, {"propeller.shape", "stations"}, {"propeller.stations", "0.15 20 43; 0.4 20 19.5; 0.7 20 11.4; 1 20 8"}},
			1, "propeller.stall_margin", "thin", "| thin | 1.2", "raise the chords"},
		{"40° standing", [][2]string{{"propeller.shape", "stations"}, {"propeller.stations", "0.15 90 75; 0.4 76 57.5; 0.75 55 40; 1 40 32.2"}},
			1, "propeller.stall_margin", "thin", "| thin | -32.3", "the working blade is stalled"},
	} {
		s := model.Sample()
		v := &s.Variants[s.Index("Belt 190")]
		for _, c := range tc.change {
			p, ok := param.Find(v.Sections(), c[0])
			if !ok {
				t.Fatal("no parameter ", c[0])
			}
			if err := p.Set(c[1]); err != nil {
				t.Fatal(err)
			}
		}
		dir := t.TempDir()
		path := write(t, dir, "blunder.toml", string(store.Encode(s)))
		got := run(t, dir, "check", path, "--variant", "Belt 190", "--format", "csv")
		rows, err := csv.NewReader(strings.NewReader(got.out)).ReadAll()
		if got.status != tc.status || err != nil {
			t.Fatalf("%s: status %d, %v, %s", tc.name, got.status, err, got.err)
		}
		i := slices.IndexFunc(rows, func(row []string) bool { return slices.Contains(row, tc.key) && slices.Contains(row, tc.verdict) })
		if i < 0 {
			t.Errorf("%s: no %s that %s", tc.name, tc.key, tc.verdict)
			continue
		}
		if line := strings.Join(rows[i], " | "); !strings.Contains(line, tc.says) || !strings.Contains(line, tc.advises) {
			t.Errorf("%s: %s", tc.name, line)
		}
	}
}
