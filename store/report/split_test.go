package report

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"math"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/carry"
)

func split() Split {
	return Split{From: "A", To: "B|\x1b[31m", Feel: model.PieceFeel{Known: true, Split: carry.Split{
		Pieces: []carry.Share{
			{Key: "engine", Label: "Engine", InFrom: true, InTo: true, MassFrom: 9, MassTo: 9, PlaceFrom: 0.17, PlaceTo: 0.17},
			{Key: "cooling.fan", Label: "Fan", InTo: true, MassTo: 1.1, PlaceTo: 0.27, DepthTo: 0.045, FromMass: 4.1, OfMassAft: 1.4, ByDepth: 3},
			{Key: "propeller", Label: "Propeller", InFrom: true, InTo: true, MassFrom: 1, MassTo: 1.1, PlaceFrom: 0.33, PlaceTo: 0.42, FromMass: 0.5, FromPlace: 3},
			{Key: "stack.shroud", Label: "Shroud", InFrom: true, MassFrom: 0.2, PlaceFrom: 0.25, FromMass: -0.6},
		},
		FromMass: 4, OfMassAft: 1.4, FromDepth: 3, Total: 7,
	}}}
}

func splitText(t *testing.T, f Format, splits ...Split) string {
	t.Helper()
	var b bytes.Buffer
	if err := Splits(&b, "Trials", splits, f); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestSplitTable(t *testing.T) {
	for _, f := range []Format{Table, Markdown} {
		text := splitText(t, f, split())
		for _, want := range []string{"from A to B", "- to 1.10 kg", "0.200 to -", "330 to 420 mm", "+2.7", "+1.4", "-0.6", "+7.0", "+2.6", "+4.4"} {
			if !strings.Contains(text, want) {
				t.Errorf("%s lacks %q:\n%s", f, want, text)
			}
		}
		if strings.Contains(text, "Engine") {
			t.Error("a piece that makes no difference takes a line")
		}
		if strings.ContainsRune(text, 0x1b) {
			t.Error("an escape comes through")
		}
	}
	if text := splitText(t, Table, Split{From: "A", To: "B"}); !strings.Contains(text, "cannot be told") {
		t.Error(text)
	}
}

func TestSplitData(t *testing.T) {
	var got struct {
		Study  string
		Splits []struct {
			From, Unit, Why string
			Total           *float64
			Pieces          []map[string]any
			OfMass          *float64 `json:"because_of_mass"`
			OfDepth         *float64 `json:"because_of_depth"`
		}
	}
	if err := json.Unmarshal([]byte(splitText(t, JSON, split(), Split{})), &got); err != nil || got.Study != "Trials" || len(got.Splits) != 2 {
		t.Fatalf("%v %+v", err, got)
	}
	first := got.Splits[0]
	fan := first.Pieces[1]
	if *first.Total != 7 || first.Unit != "N·m" || fan["mass_from_kg"] != nil || fan["mass_to_kg"] != 1.1 || fan["depth_to_mm"] != 45.0 || fan["by_its_depth"] != 3.0 ||
		math.Abs(fan["because_of_mass"].(float64)-2.7) > 1e-9 || fan["because_of_depth"] != 1.4 || fan["from_mass"] != 4.1 {
		t.Errorf("%+v", first)
	}
	if *first.OfMass != 2.6 || *first.OfDepth != 4.4 {
		t.Errorf("mass %g and depth %g", *first.OfMass, *first.OfDepth)
	}
	if second := got.Splits[1]; second.Total != nil || second.Why == "" || second.Pieces == nil {
		t.Errorf("a split that cannot be told is %+v", second)
	}
	rows, err := csv.NewReader(strings.NewReader(splitText(t, CSV, split(), Split{From: "A", To: "C"}))).ReadAll()
	if err != nil || len(rows) != 6 || rows[5][1] != "C" || rows[5][3] != cannotTell || rows[2][4] != "" || rows[2][5] != "1.1" || rows[4][5] != "" || rows[3][12] != "3" || rows[3][14] != "0.5" || rows[3][15] != "3" {
		t.Errorf("%v %q", err, rows)
	}
}

// A difference given with a variant stands among its tables.
func TestTablesShowWhatPartsAVariantFromAnother(t *testing.T) {
	o := model.Outcome{Variant: "B"}
	if blocks := Tables(o, "EUR"); len(blocks) != 0 {
		t.Fatalf("%+v", blocks)
	}
	blocks := Tables(o, "EUR", split())
	if len(blocks) != 1 || !strings.Contains(blocks[0].Title, "from A to B") || !strings.Contains(strings.Join(blocks[0].Rows, "\n"), "Fan") {
		t.Errorf("%+v", blocks)
	}
}

func TestDepthsAreWritten(t *testing.T) {
	c := comparison()
	c.Outcomes[1].Depths = []carry.Thickness{{Key: "stack.pad", Label: "Pad", Depth: 0.025, PerDepth: 83.6, Felt: 2.09}, {Key: "engine", Label: "Engine", Depth: 0.164, PerDepth: 45, Felt: 7.4}}
	c.Outcomes[0].Depths = c.Outcomes[1].Depths[1:]
	for f, wants := range map[Format][]string{
		Table:    {"which piece to thin", "0.836 kg/cm", "2.09 kg"},
		Markdown: {"0.836 kg/cm"},
		JSON:     {`"felt_kg_per_cm": 0.836`, `"depth_mm": 164`},
		CSV:      {"depth,stack.pad,Pad,kg/cm,,0.836", "depth,engine,Engine,kg/cm,0.45,0.45"},
	} {
		var b bytes.Buffer
		write := Comparison
		if f == Table || f == Markdown {
			write = VariantTables
		}
		if err := write(&b, c, f); err != nil {
			t.Fatal(err)
		}
		for _, want := range wants {
			if !strings.Contains(b.String(), want) {
				t.Errorf("%s lacks %q:\n%s", f, want, b.String())
			}
		}
	}
}
