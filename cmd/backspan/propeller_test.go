package main

import (
	"encoding/csv"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"backspan/model/propeller"
	"backspan/store"
)

func sampleIn(t *testing.T) (dir, path string) {
	t.Helper()
	dir = t.TempDir()
	return dir, write(t, dir, "mine.toml", sampleText())
}

// A designed blade is printed, and kept on request beside what was there.
func TestBladeIsDesignedAndKept(t *testing.T) {
	dir, path := sampleIn(t)
	before, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	s := run(t, dir, "blade", "--variant", "Gear 190", "--format", "json")
	var got bladeData
	if err := json.Unmarshal([]byte(s.out), &got); s.status != 0 || err != nil || len(got.Stations) != 12 || got.Thrust < 300 {
		t.Fatalf("status %d, %v, %s %+v", s.status, err, s.err, got)
	}
	if after, _ := os.ReadFile(path); string(after) != string(before) {
		t.Error("printing a blade changed the study")
	}
	s = run(t, dir, "blade", "--variant", "Gear 190", "--save-as", "Gear 190 least loss")
	if s.status != 0 || !strings.Contains(s.err, "kept as variant Gear 190 least loss") {
		t.Fatalf("status %d, %s", s.status, s.err)
	}
	study, err := store.NewFolder(dir).Open(path)
	if err != nil {
		t.Fatal(err)
	}
	i, old := study.Index("Gear 190 least loss"), study.Index("Gear 190")
	if i < 0 || old < 0 || study.Variants[old].Propeller.Shape != propeller.NominalPitch {
		t.Fatalf("variants %d and %d", i, old)
	}
	blade := study.Variants[i].Propeller
	if blade.Shape != propeller.Stations || len(blade.Rows) != 12 || !strings.Contains(study.Variants[i].Notes, "least induced loss") {
		t.Errorf("%+v", blade)
	}
	if s := run(t, dir, "check", path, "--variant", "Gear 190 least loss"); s.status != 0 {
		t.Errorf("the new variant fails:\n%s", s.out)
	}
	if s := run(t, dir, "blade", "--save-as", "Gear 190 least loss"); s.status != 2 || !strings.Contains(s.err, "taken") {
		t.Errorf("status %d, %s", s.status, s.err)
	}
	if s := run(t, t.TempDir(), "blade", "--save-as", "x"); s.status != 2 || !strings.Contains(s.err, "backspan sample") {
		t.Errorf("kept in the sample: status %d, %s", s.status, s.err)
	}
}

func TestBladeTakesWishes(t *testing.T) {
	s := run(t, t.TempDir(), "blade", "--thrust", "300 N", "--airspeed", "36 km/h", "--speed", "2000 rpm", "--blades", "3", "--diameter", "1.2 m",
		"--greatest-chord", "140 mm", "--stations", "8", "--format", "csv")
	rows, err := csv.NewReader(strings.NewReader(s.out)).ReadAll()
	if s.status != 0 || err != nil || len(rows) != 9 || rows[8][1] != "600" {
		t.Errorf("status %d, %v, %s, %v", s.status, err, s.err, rows)
	}
	for _, tc := range []struct {
		args []string
		says string
	}{
		{[]string{"--power", "11 N"}, "--power"},
		{[]string{"--power", "11 kW", "--thrust", "300"}, "either the thrust or the power"},
		{[]string{"--lift", "3"}, "0.1 to 1.5"},
		{[]string{"--stations", "2"}, "4 to 60 stations, not 2"},
		{[]string{"--stations", "9000"}, "4 to 60 stations, not 9000"},
		{[]string{"--blades", "9"}, "--blades: 9 is outside 1 to 6"},
		{[]string{"--diameter", "9 m"}, "--diameter: 9000 mm is outside 600 to 2000 mm"},
		{[]string{"--variant", "Belt 999"}, "Belt 190"},
		{[]string{"--power", "900 kW"}, "raise"},
	} {
		if s := run(t, t.TempDir(), append([]string{"blade"}, tc.args...)...); s.status != 2 || s.out != "" || !strings.Contains(s.err, tc.says) {
			t.Errorf("%v: status %d, %q", tc.args, s.status, s.err)
		}
	}
}

func TestPitchInEveryFormat(t *testing.T) {
	s := run(t, t.TempDir(), "pitch", "--variant", "Belt 300", "--steps", "9")
	if s.status != 0 || strings.Count(s.out, "<- best") != 1 || !strings.Contains(s.out, "Best: greatest climb") {
		t.Fatalf("status %d, %s\n%s", s.status, s.err, s.out)
	}
	s = run(t, t.TempDir(), "pitch", "--from", "20 in", "--to", "30 in", "--steps", "6", "--for", "thrust", "--format", "json")
	var got pitchData
	if err := json.Unmarshal([]byte(s.out), &got); err != nil || len(got.Points) != 6 || got.Points[0].Pitch != 508 || got.Best == nil || !strings.Contains(got.Reason, "greatest thrust") {
		t.Fatalf("%v, %+v", err, got)
	}
	s = run(t, t.TempDir(), "pitch", "--steps", "5", "--format", "csv")
	if rows, err := csv.NewReader(strings.NewReader(s.out)).ReadAll(); err != nil || len(rows) != 6 || rows[0][0] != "pitch_mm" {
		t.Errorf("%v, %v", err, rows)
	}
	for _, tc := range []struct {
		args []string
		says string
	}{
		{[]string{"--from", "500 mm"}, "both --from and --to"},
		{[]string{"--from", "x", "--to", "700"}, "--from"},
		{[]string{"--from", "100", "--to", "700"}, "200 to 1200 mm"},
		{[]string{"--for", "noise"}, "climb"},
		{[]string{"--steps", "1"}, "steps"},
	} {
		if s := run(t, t.TempDir(), append([]string{"pitch"}, tc.args...)...); s.status != 2 || s.out != "" || !strings.Contains(s.err, tc.says) {
			t.Errorf("%v: status %d, %q", tc.args, s.status, s.err)
		}
	}
}

func TestPolarGoesIntoTheStudy(t *testing.T) {
	dir, path := sampleIn(t)
	file := write(t, dir, "section.csv", "alpha,cl,cd,Re\n-8,-0.4,0.016,600000\n-4,0,0.010,600000\n0,0.42,0.009,600000\n8,1.2,0.014,600000\n12,1.4,0.03,600000\n16,1.3,0.09,600000\n")
	s := run(t, dir, "polar", "--variant", "Gear 80", "--csv", file)
	if s.status != 0 || !strings.Contains(s.err, "6 rows") {
		t.Fatalf("status %d, %s", s.status, s.err)
	}
	study, err := store.NewFolder(dir).Open(path)
	if err != nil {
		t.Fatal(err)
	}
	p := study.Variants[study.Index("Gear 80")].Propeller
	if p.Family != propeller.OwnPolar || len(p.Polar) != 6 || p.Polar[3][1] != 1.2 {
		t.Errorf("%s %v", p.Family, p.Polar)
	}
	if other := study.Variants[study.Index("Belt 80")].Propeller; other.Family == propeller.OwnPolar {
		t.Error("another variant took the polar too")
	}
	s = run(t, dir, "compare", path, "--variant", "Gear 80", "--format", "json")
	if s.status != 0 || !strings.Contains(s.out, "propeller.static_thrust_low") {
		t.Errorf("status %d, %s", s.status, s.err)
	}
	kept, _ := os.ReadFile(path)
	bad := write(t, dir, "bad.csv", "alpha,cl,cd,Re\n-8,-0.4,0.016,600000\n-4,0,nought,600000\n")
	if s := run(t, dir, "polar", path, "--csv", bad); s.status != 2 || !strings.Contains(s.err, "bad.csv: line 3, column 3") {
		t.Errorf("status %d, %s", s.status, s.err)
	}
	if s := run(t, dir, "polar", path); s.status != 2 || !strings.Contains(s.err, "--csv") {
		t.Errorf("status %d, %s", s.status, s.err)
	}
	if s := run(t, t.TempDir(), "polar", "--csv", filepath.Join(dir, "section.csv")); s.status != 2 || !strings.Contains(s.err, "backspan sample") {
		t.Errorf("status %d, %s", s.status, s.err)
	}
	if now, _ := os.ReadFile(path); string(now) != string(kept) {
		t.Error("a refused polar changed the study")
	}
}
