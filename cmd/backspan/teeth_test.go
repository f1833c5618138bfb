package main

import (
	"encoding/csv"
	"encoding/json"
	"strings"
	"testing"
)

func TestTeethInEveryFormat(t *testing.T) {
	for _, format := range []string{"table", "json", "csv", "markdown"} {
		s := run(t, t.TempDir(), "teeth", "--variant", "Gear 190", "--format", format)
		if s.status != 0 || s.err != "" || !strings.Contains(s.out, "54") {
			t.Errorf("%s: status %d, %q\n%.200s", format, s.status, s.err, s.out)
		}
		switch format {
		case "json":
			if !json.Valid([]byte(s.out)) {
				t.Error("not JSON")
			}
		case "csv":
			rows, err := csv.NewReader(strings.NewReader(s.out)).ReadAll()
			if err != nil || len(rows) < 2 || rows[0][2] != "module_mm" {
				t.Errorf("%v, %d rows", err, len(rows))
			}
		}
	}
}

type teethFound struct {
	Variant        string
	Ratio          float64
	CentreDistance *float64 `json:"centre_distance"`
	Pairs          []struct {
		Ratio   float64
		Centre  float64  `json:"centre_distance"`
		Module  float64  `json:"module"`
		Pitting *float64 `json:"pitting_safety"`
	}
}

func teethOf(t *testing.T, args ...string) teethFound {
	t.Helper()
	s := run(t, t.TempDir(), append([]string{"teeth", "--format", "json"}, args...)...)
	var got teethFound
	if err := json.Unmarshal([]byte(s.out), &got); err != nil || s.status != 0 {
		t.Fatalf("%v: status %d, %v, %q", args, s.status, err, s.err)
	}
	return got
}

func TestTeethForARatioAndACentreDistanceAsTyped(t *testing.T) {
	got := teethOf(t, "--ratio", "2,9", "--centre-distance", "3.1 in", "--tolerance", "1 %")
	if got.Variant != "Gear 190" || got.Ratio != 2.9 || got.CentreDistance == nil || *got.CentreDistance != 78.74 || len(got.Pairs) == 0 {
		t.Fatalf("%+v", got)
	}
	modules := map[float64]bool{}
	for _, p := range got.Pairs {
		modules[p.Module] = true
		if p.Ratio < 2.871 || p.Ratio > 2.929 || p.Centre < 78.64 || p.Centre > 78.84 || p.Pitting == nil {
			t.Errorf("%+v", p)
		}
	}
	if len(modules) < 2 {
		t.Errorf("modules %v", modules)
	}
	for _, p := range teethOf(t, "--module", "2.5 mm", "--variant", "Gear 80").Pairs {
		if p.Module != 2.5 {
			t.Errorf("%+v", p)
		}
	}
	if got := teethOf(t); got.CentreDistance != nil || got.Ratio < 2.842 || got.Ratio > 2.8422 || got.Pairs[0].Module != 2 {
		t.Errorf("%+v", got)
	}
}

func TestTeethThatCannotBeLookedFor(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, "broken.toml", "format = ")
	for _, tc := range []struct {
		args []string
		says string
	}{
		{[]string{"--variant", "Belt 190"}, "has no gear"}, {[]string{"--variant", "Gear 9"}, "there is no variant"},
		{[]string{"--ratio", "fast"}, "--ratio"}, {[]string{"--ratio", "0.5"}, "from 1 to 10"},
		{[]string{"--centre-distance", "80 kg"}, "--centre-distance"}, {[]string{"--tolerance", "50 %"}, "20 %"},
		{[]string{"--centre-tolerance", "x"}, "--centre-tolerance"}, {[]string{"--module", "x"}, "--module"},
		{[]string{"--module", "9"}, "1 to 5 mm"}, {[]string{"--format", "xml"}, "unknown format"}, {[]string{"broken.toml"}, "broken.toml"},
		{[]string{"none.toml"}, "none.toml"}, {[]string{"a", "b"}, "too many words"},
	} {
		args := append([]string{"teeth"}, tc.args...)
		for i, a := range args {
			if strings.HasSuffix(a, ".toml") {
				args[i] = dir + "/" + a
			}
		}
		if s := run(t, t.TempDir(), args...); s.status != 2 || s.out != "" || !strings.Contains(s.err, tc.says) {
			t.Errorf("%v: status %d, %q", tc.args, s.status, s.err)
		}
	}
	if s := run(t, dir, "teeth", "--help"); s.status != 0 || !strings.Contains(s.out, "--centre-distance") {
		t.Errorf("status %d, %q", s.status, s.out)
	}
}

func TestTeethSayWhenNoPairIsFound(t *testing.T) {
	s := run(t, t.TempDir(), "teeth", "--centre-distance", "21 mm")
	if s.status != 0 || !strings.Contains(s.out, "no pair meets this") {
		t.Errorf("status %d, %q %q", s.status, s.out, s.err)
	}
}
