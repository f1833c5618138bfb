package report

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/bearing"
	"backspan/model/param"
)

func withBearings() model.Comparison {
	c := comparison()
	c.Outcomes[0].Bearings = []bearing.Row{
		{Name: "shaft, engine side", Size: "6205", Along: -300, Across: 400, Axial: -120, Equivalent: param.Known(560), Life: param.Known(1500 * 3600),
			StaticSafety: param.Known(2.5), SpeedShare: param.Known(0.42)},
		{Name: "crank, nearer main bearing", Along: 700},
	}
	return c
}

func TestBearingGrid(t *testing.T) {
	if _, ok := bearingGrid(model.Outcome{}); ok {
		t.Error("a table of no bearings")
	}
	for _, f := range []Format{Table, Markdown} {
		var b bytes.Buffer
		if err := Checks(&b, withBearings(), f); err != nil {
			t.Fatal(err)
		}
		for _, want := range []string{"A: forces on the bearings", "6205", "-300 N", "400 N", "500 N", "-120 N", "560 N", "1500 h", "2.500", "42.0 %", "crank, nearer main bearing"} {
			if !strings.Contains(b.String(), want) {
				t.Errorf("%s lacks %q:\n%s", f, want, b.String())
			}
		}
		if strings.Contains(b.String(), "B\\x1b[31m|x: forces") {
			t.Error("a machine without bearings has a table of them")
		}
	}
}

func TestBearingsInJSON(t *testing.T) {
	var b bytes.Buffer
	if err := Comparison(&b, withBearings(), JSON); err != nil {
		t.Fatal(err)
	}
	var got struct {
		Variants []struct{ Bearings []map[string]any }
	}
	if err := json.Unmarshal(b.Bytes(), &got); err != nil {
		t.Fatal(err)
	}
	if len(got.Variants[0].Bearings) != 2 || got.Variants[1].Bearings == nil || len(got.Variants[1].Bearings) != 0 {
		t.Fatalf("%+v", got)
	}
	first, crank := got.Variants[0].Bearings[0], got.Variants[0].Bearings[1]
	for key, want := range map[string]any{"size": "6205", "along_n": -300.0, "axial_n": -120.0, "life_h": 1500.0, "static_safety": 2.5, "speed_percent": 42.0} {
		if first[key] != want {
			t.Errorf("%s is %v, want %v", key, first[key], want)
		}
	}
	if v, ok := crank["life_h"]; !ok || v != nil {
		t.Errorf("a life that is not known is %v", v)
	}
}
