package main

import (
	"encoding/csv"
	"encoding/json"
	"strings"
	"testing"
)

func guarded(more ...string) []string {
	return append([]string{"tolerance", "--spread", "frame.guard.diameter=±60 mm", "--spread", "frame.pad_depth=±3 mm", "--spread", "propeller.static_thrust=±5 % normal",
		"--reading", "stack.depth", "--reading", "propeller.static_thrust", "--reading", "gear.pitting_safety", "--samples", "150"}, more...)
}

func TestToleranceInEveryFormat(t *testing.T) {
	s := run(t, t.TempDir(), guarded()...)
	for _, says := range []string{"Belt 190: 150 machines drawn, seed 1", "+Pad depth", "+Standing thrust, installed, method 100 %", "no value", "Propeller tip to guard", "fails in 2", "Every check holds or is thin in 7"} {
		if !strings.Contains(s.out, says) {
			t.Errorf("does not say %q:\n%s%s", says, s.out, s.err)
		}
	}
	var data struct {
		Sound    int `json:"samples_without_failing_check"`
		Readings []struct {
			Key           string
			Mean, SD, P95 *float64
			Contributions []struct {
				Key   string
				Share float64
			}
		}
		Checks []struct {
			Key         string
			Fails       int
			Probability float64 `json:"probability_not_failing"`
		}
	}
	s = run(t, t.TempDir(), guarded("--format", "json")...)
	if err := json.Unmarshal([]byte(s.out), &data); err != nil || len(data.Readings) != 3 || *data.Readings[0].Mean < 310 || data.Readings[2].Mean != nil {
		t.Fatal(err, s.out)
	}
	c := data.Checks[0]
	if c.Key != "stack.tip_clearance" || data.Sound != 150-c.Fails || c.Probability < 0.6 || c.Probability > 0.9 || data.Readings[0].Contributions[0].Key != "frame.pad_depth" {
		t.Errorf("%+v", data)
	}
	s = run(t, t.TempDir(), guarded("--format", "csv")...)
	if rows, err := csv.NewReader(strings.NewReader(s.out)).ReadAll(); err != nil || len(rows) < 50 || rows[1][1] != "stack.depth" || rows[1][6] == "" {
		t.Errorf("%v %v", err, rows)
	}
}

func TestToleranceSaysWhatNoFailureMeans(t *testing.T) {
	s := run(t, t.TempDir(), "tolerance", "--spread", "frame.pad_depth=±1 mm", "--samples", "100")
	if s.status != statusFine || !strings.Contains(s.out, "less than 3 % fail one") {
		t.Errorf("status %d\n%s%s", s.status, s.out, s.err)
	}
}

func TestToleranceMergedIsTheWhole(t *testing.T) {
	split(t, []string{"1/3", "2/3", "3/3"}, guarded("--samples", "100")...)
}

func TestToleranceRefuses(t *testing.T) {
	for _, tc := range []struct {
		args []string
		says string
	}{
		{[]string{"tolerance"}, "spreads"},
		{guarded("--spread", "frame.pad_dept=±1"), "frame.pad_depth"},
		{guarded("--samples", "5"), "100 to 200000"},
		{guarded("--spread", "frame.pad_depth=±2 mm"), "given twice"},
	} {
		if s := run(t, t.TempDir(), tc.args...); s.status != statusCannot || s.out != "" || !strings.Contains(s.err, tc.says) {
			t.Errorf("%v: status %d, %q", tc.args, s.status, s.err)
		}
	}
}

func TestReadingsWithADoubtAreShown(t *testing.T) {
	s := run(t, t.TempDir(), "tolerance", "--samples", "100", "--spread", "noise.level_at_150m=±3", "--spread", "drive.ribbed_belt.centre_distance=±0.2 mm")
	for _, want := range []string{"Noise at 150 m", "Standing thrust", "nothing"} {
		if s.status != statusFine || !strings.Contains(s.out, want) {
			t.Errorf("lacks %q: status %d\n%s%s", want, s.status, s.out, s.err)
		}
	}
	if strings.Contains(s.out, "0.0000") {
		t.Errorf("digits that mean nothing:\n%s", s.out)
	}
}

// However a parameter's key is spelt, its spread asks for no reading of that name.
func TestSpreadOfAParameterIsNoReading(t *testing.T) {
	want := ""
	for _, key := range []string{"propeller.pitch", "variant.propeller.pitch", "propeller.pitch_mm", "variant.propeller.pitch_mm"} {
		s := run(t, t.TempDir(), "tolerance", "--samples", "100", "--spread", key+"=±5 mm")
		if want == "" {
			want = s.out
		}
		if s.status != statusFine || s.out != want {
			t.Errorf("%s: status %d\n%s%s", key, s.status, s.out, s.err)
		}
	}
}
