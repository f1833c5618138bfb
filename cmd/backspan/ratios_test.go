package main

import (
	"encoding/csv"
	"encoding/json"
	"strings"
	"testing"

	"backspan/model/explore"
	"backspan/model/param"
)

func TestRatiosMarkTheBest(t *testing.T) {
	s := run(t, t.TempDir(), "ratios", "--steps", "9")
	if s.status != 0 || s.err != "" || strings.Count(s.out, "<- best") != 1 {
		t.Fatalf("status %d, %q\n%s", s.status, s.err, s.out)
	}
	for _, says := range []string{"Belt 190: thrust", "Driven pulley", "Best: greatest climb", "neither lugs nor over-speeds", "the engine lugs", "the engine runs past the end of its Power curve"} {
		if !strings.Contains(s.out, says) {
			t.Errorf("does not say %q:\n%s", says, s.out)
		}
	}
	if strings.ContainsFunc(s.out, func(r rune) bool { return r > 126 }) {
		t.Error("not plain ASCII")
	}
}

func TestRatiosInEveryFormat(t *testing.T) {
	var data struct {
		Variant string
		Best    *float64 `json:"best_ratio"`
		Points  []struct {
			Ratio *float64
			Climb *float64 `json:"climb_rate_m_s"`
			Best  bool
		}
	}
	s := run(t, t.TempDir(), "ratios", "--variant", "Toothed 190", "--from", "2.8", "--to=4", "--steps", "6", "--format", "json")
	if err := json.Unmarshal([]byte(s.out), &data); err != nil || data.Variant != "Toothed 190" || len(data.Points) != 6 || data.Best == nil {
		t.Fatalf("%v %+v", err, data)
	}
	if last := data.Points[5]; last.Ratio != nil || last.Climb != nil || last.Best {
		t.Errorf("pulleys that touch have figures: %+v", last)
	}
	s = run(t, t.TempDir(), "ratios", "--format", "csv", "--steps", "4")
	rows, err := csv.NewReader(strings.NewReader(s.out)).ReadAll()
	if err != nil || len(rows) != 5 || rows[0][5] != "climb_rate_m_s" || rows[1][7] != "false" {
		t.Errorf("%v %v", err, rows)
	}
	if s = run(t, t.TempDir(), "ratios", "--format", "markdown"); !strings.HasPrefix(s.out, "## Belt 190") {
		t.Error(s.out)
	}
}

func TestRatiosRefuse(t *testing.T) {
	for _, tc := range []struct {
		args []string
		says string
	}{
		{[]string{"--variant", "Belt 999"}, "Belt 190"},
		{[]string{"--format", "pdf"}, "unknown format"},
		{[]string{"--from", "3", "--to", "2"}, "first below the last"},
		{[]string{"--steps", "1"}, "2 to 400"},
		{[]string{"--steps", "many"}, "ratios --help"},
		{[]string{"nowhere.toml"}, "nowhere.toml"},
	} {
		if s := run(t, t.TempDir(), append([]string{"ratios"}, tc.args...)...); s.status != 2 || !strings.Contains(s.err, tc.says) {
			t.Errorf("%v: status %d, %q", tc.args, s.status, s.err)
		}
	}
	if s := run(t, t.TempDir(), "ratios", "--help"); s.status != 0 || !strings.Contains(s.out, "--from") {
		t.Errorf("status %d, %s", s.status, s.out)
	}
}

func TestCurveMarks(t *testing.T) {
	known := param.Known
	points := []explore.Ratio{
		{Thrust: known(100), Climb: known(2), TipMach: known(0.4)},
		{Thrust: known(200), Climb: known(1), TipMach: known(0.5)},
		{},
	}
	c := newCurve(points)
	for i, want := range []string{"*" + strings.Repeat(".", curveWidth-2) + "c", "c" + strings.Repeat(".", curveWidth-2) + "*", strings.Repeat(".", curveWidth)} {
		if got := c.line(points[i]); got != want {
			t.Errorf("line %d is %s, want %s", i, got, want)
		}
	}
	if len(c.head()) != curveWidth {
		t.Errorf("head %q", c.head())
	}
}
