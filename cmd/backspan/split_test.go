package main

import (
	"encoding/csv"
	"encoding/json"
	"math"
	"strings"
	"testing"
)

func TestSplitOfTheSample(t *testing.T) {
	for _, args := range [][]string{{"--from", "Belt 190", "--to", "Gear 190"}, {"--to", "Gear 190"}, {"--variant", "Belt 190", "--variant", "Gear 190"}} {
		s := run(t, t.TempDir(), append([]string{"split", "--format", "json"}, args...)...)
		var got struct {
			Splits []struct {
				From, To  string
				Total     float64
				FromMass  float64 `json:"from_mass"`
				FromDepth float64 `json:"from_depth"`
				Pieces    []struct {
					Key   string
					Place float64 `json:"from_place"`
					Cause float64 `json:"by_its_depth"`
				}
			}
		}
		if err := json.Unmarshal([]byte(s.out), &got); err != nil || s.status != 0 || len(got.Splits) != 1 {
			t.Fatalf("%v: %v, status %d, %s", args, err, s.status, s.err)
		}
		d := got.Splits[0]
		if d.From != "Belt 190" || d.To != "Gear 190" || math.Abs(d.FromMass+d.FromDepth-d.Total) > 1e-9 || d.Total <= 0 {
			t.Errorf("%v: %+v", args, d)
		}
		place, cause := 0.0, 0.0
		for _, q := range d.Pieces {
			place, cause = place+q.Place, cause+q.Cause
		}
		if math.Abs(place-d.FromDepth) > 1e-9 || math.Abs(cause-d.FromDepth) > 1e-9 {
			t.Errorf("%v: places sum to %g and causes to %g of %g", args, place, cause, d.FromDepth)
		}
	}
}

func TestSplitInEveryFormat(t *testing.T) {
	for _, format := range []string{"table", "markdown", "csv"} {
		s := run(t, t.TempDir(), "split", "--format", format)
		if s.status != 0 || s.err != "" || !strings.Contains(s.out, "Gear 300") || !strings.Contains(s.out, "Fan and shroud") {
			t.Errorf("%s: status %d, %s\n%.300s", format, s.status, s.err, s.out)
		}
		if format == "csv" {
			if _, err := csv.NewReader(strings.NewReader(s.out)).ReadAll(); err != nil {
				t.Error(err)
			}
		}
	}
}

func TestSplitRefuses(t *testing.T) {
	dir := t.TempDir()
	if s := run(t, dir, "new", "one.toml"); s.status != 0 {
		t.Fatal(s.err)
	}
	for _, tc := range []struct {
		args []string
		says string
	}{
		{[]string{"sample", "--from", "Belt 999"}, "Belt 190"},
		{[]string{"sample", "--to", "Belt 999"}, "Belt 190"},
		{[]string{"sample", "--variant", "Belt 190"}, "--variant twice"},
		{[]string{"sample", "--variant", "Belt 190", "--variant", "Gear 190", "--to", "Gear 80"}, "--variant twice"},
		{[]string{"sample", "--format", "xml"}, "xml"},
		{[]string{"alone"}, "one variant only"},
	} {
		at := dir
		if tc.args[0] == "sample" {
			at = t.TempDir()
		}
		if s := run(t, at, append([]string{"split"}, tc.args[1:]...)...); s.status != 2 || s.out != "" || !strings.Contains(s.err, tc.says) {
			t.Errorf("%v: status %d, %q", tc.args, s.status, s.err)
		}
	}
}
