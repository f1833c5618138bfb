package main

import (
	"encoding/csv"
	"encoding/json"
	"math"
	"strings"
	"testing"
)

var thrustOf = []string{"solve", "--change", "propeller.pitch=300..900", "--reading", "propeller.static_thrust", "--to", "70 kgf"}

func TestSolveSaysWhatItFound(t *testing.T) {
	s := run(t, t.TempDir(), thrustOf...)
	if s.status != statusFine || strings.Count(s.out, "meets it") != 2 || !strings.Contains(s.out, "2 values of Nominal pitch from 300 mm to 900 mm meet the target") {
		t.Errorf("status %d\n%s%s", s.status, s.out, s.err)
	}
	s = run(t, t.TempDir(), "solve", "--change", crank+"=55..80", "--reading", "flight.climb_rate", "--to", "9")
	if s.status != statusFails || !strings.Contains(s.out, "No value of") || !strings.Contains(s.out, "the nearest") {
		t.Errorf("status %d\n%s", s.status, s.out)
	}
	s = run(t, t.TempDir(), "solve", "--variant", "Gear 190", "--change", "drive.gear.wheel_teeth=45..75", "--reading", "drive.ratio", "--to", "3.02")
	if s.status != statusFails || !strings.Contains(s.out, "on the other side, 3.053 at 58") {
		t.Errorf("status %d\n%s", s.status, s.out)
	}
	s = run(t, t.TempDir(), "solve", "--variant", "Belt 190", "--change", "drive.gear.wheel_teeth=45..75", "--reading", "gear.pitting_safety", "--to", "3")
	if s.status != statusFails || !strings.Contains(s.out, "at all") {
		t.Errorf("status %d\n%s", s.status, s.out)
	}
}

func TestSolveInFigures(t *testing.T) {
	var data struct {
		Target    float64
		Solutions []struct {
			At       []float64
			Readings []float64
			What     string
		}
	}
	s := run(t, t.TempDir(), append(thrustOf, "--format", "json")...)
	if err := json.Unmarshal([]byte(s.out), &data); err != nil || len(data.Solutions) != 2 {
		t.Fatal(err, s.out)
	}
	for _, sol := range data.Solutions {
		if math.Abs(sol.Readings[0]/686.4655-1) > 1e-6 || sol.What != "met" {
			t.Errorf("%+v", sol)
		}
	}
	s = run(t, t.TempDir(), append(thrustOf, "--format", "csv")...)
	if rows, err := csv.NewReader(strings.NewReader(s.out)).ReadAll(); err != nil || len(rows) != 3 || rows[0][0] != "propeller.pitch_mm" || rows[2][5] != "met" {
		t.Errorf("%v %v", err, rows)
	}
}

func TestSolveMergedIsTheWhole(t *testing.T) {
	split(t, []string{"1/2", "2/2"}, append(thrustOf, "--stretches", "10")...)
	split(t, []string{"1/2", "2/2"}, "solve", "--change", crank+"=55..80", "--reading", "flight.climb_rate", "--to", "9", "--stretches", "6")
}

func TestSolveRefuses(t *testing.T) {
	for _, tc := range []struct {
		args []string
		says string
	}{
		{nil, "give --change"},
		{[]string{"--change", "propeller.pich", "--reading", "drive.ratio", "--to", "3"}, "propeller.pitch"},
		{[]string{"--change", "propeller.pitch", "--reading", "drive.ratio", "--to", "3 kg"}, "target of Ratio"},
	} {
		if s := run(t, t.TempDir(), append([]string{"solve"}, tc.args...)...); s.status != statusCannot || !strings.Contains(s.err, tc.says) {
			t.Errorf("%v: status %d, %q", tc.args, s.status, s.err)
		}
	}
}
