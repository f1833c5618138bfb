package report

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/unit"
)

func comparison() model.Comparison {
	outcome := func(name string, thrust float64) model.Outcome {
		return model.Outcome{Variant: name,
			Readings: []reading.Reading{
				reading.New("propeller.static_thrust", "Standing thrust", thrust, unit.Newton).Higher().How("how").Source("source"),
				reading.Missing("cooling.head_temperature", "Head temperature", unit.Celsius, "not computed"),
				reading.New("drive.price", "Drive price", 100, unit.Currency).Lower(),
			},
			Checks: []reading.Check{
				reading.AtLeast("a", "Clearance", 0.05, 0.06, 0.1, unit.Millimetre).Source("common practice, no source").Advice("a smaller Diameter"),
				reading.Unrated("b", "Tooth strength", "no rating"),
			},
		}
	}
	return model.Comparison{Study: "Trials", Currency: "EUR", Outcomes: []model.Outcome{outcome("A", 600), outcome("B\x1b[31m|x", 612)},
		Parameters: []model.ParameterRow{{Section: "Drive", Path: "drive.kind", Label: "Kind", Cells: []string{"belt", ""}, Differs: true}},
		Readings: []model.ReadingRow{{Key: "propeller.static_thrust", Label: "Standing thrust",
			Cells: []reading.Reading{outcome("", 600).Readings[0], outcome("", 612).Readings[0]}}},
		Checks: []model.CheckRow{
			{Key: "a", Label: "Clearance", Cells: []reading.Check{outcome("", 0).Checks[0], outcome("", 0).Checks[0]}},
			{Key: "b", Label: "Tooth strength", Cells: []reading.Check{outcome("", 0).Checks[1], outcome("", 0).Checks[1]}},
		},
		Feel: []model.Feel{{Known: true}, {Known: true, FromMass: 4, FromDepth: 12.5}},
	}
}

func written(t *testing.T, f Format) string {
	t.Helper()
	var b bytes.Buffer
	if err := Comparison(&b, comparison(), f); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestJSONKeepsItsShape(t *testing.T) {
	var got struct {
		Study, Reference string
		Variants         []struct {
			Name     string
			Readings []map[string]any
			Checks   []map[string]any
		}
	}
	if err := json.Unmarshal([]byte(written(t, JSON)), &got); err != nil {
		t.Fatal(err)
	}
	if got.Study != "Trials" || got.Reference != "A" || len(got.Variants) != 2 {
		t.Fatalf("%+v", got)
	}
	thrust, head := got.Variants[1].Readings[0], got.Variants[1].Readings[1]
	for key, want := range map[string]any{"key": "propeller.static_thrust", "label": "Standing thrust", "value": 612.0, "unit": "N", "better": "higher", "how": "how", "source": "source"} {
		if thrust[key] != want {
			t.Errorf("%s is %v, want %v", key, thrust[key], want)
		}
	}
	if v, ok := head["value"]; !ok || v != nil || head["why"] != "not computed" {
		t.Errorf("a missing value is %v, why %v", v, head["why"])
	}
	check := got.Variants[0].Checks[0]
	for key, want := range map[string]any{"verdict": "fails", "value": 50.0, "limit": 60.0, "unit": "mm", "advice": "a smaller Diameter"} {
		if check[key] != want {
			t.Errorf("check's %s is %v, want %v", key, check[key], want)
		}
	}
	if unit := got.Variants[0].Readings[2]["unit"]; unit != "EUR" {
		t.Errorf("money is in %v", unit)
	}
}

func TestTableShowsDifferencesAndNeverControlCharacters(t *testing.T) {
	for _, f := range []Format{Table, Markdown} {
		text := written(t, f)
		for _, want := range []string{"A (reference)", "612 N  +12", "fails -17 %", "not rated", "+12.5 N·m", `B\x1b[31m`, "airworthiness"} {
			if !strings.Contains(text, want) {
				t.Errorf("%s lacks %q:\n%s", f, want, text)
			}
		}
		if strings.ContainsRune(text, 0x1b) {
			t.Errorf("%s lets an escape through", f)
		}
	}
	if !strings.Contains(written(t, Markdown), `\|x`) {
		t.Error("a bar in a name breaks the Markdown table")
	}
}

func TestCSVReadsBack(t *testing.T) {
	rows, err := csv.NewReader(strings.NewReader(written(t, CSV))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) != 5 || rows[2][1] != "propeller.static_thrust" || rows[2][5] != "612" || rows[2][3] != "N" {
		t.Errorf("%q", rows)
	}
}

func TestChecksTellTheCure(t *testing.T) {
	var b bytes.Buffer
	if err := Checks(&b, comparison(), Table); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"A: 0 hold, 0 thin, 1 fail, 1 not rated", "a smaller Diameter", "60.0 mm", "no rating"} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("lacks %q:\n%s", want, b.String())
		}
	}
}

func TestPrintable(t *testing.T) {
	for in, want := range map[string]string{"plain é 漢": "plain é 漢", "a\x1b[2Jb": `a\x1b[2Jb`, "a\nb": `a\nb`, "a\u202eb": `a\u202eb`, "\u009b31m": `\x9b31m`, "bad \xff": `bad \xff`} {
		if got := Printable(in); got != want {
			t.Errorf("Printable(%q) = %q, want %q", in, got, want)
		}
	}
}

func TestSpeedMap(t *testing.T) {
	m := part.SpeedMap{From: 100, To: 580, Working: 345, Bands: []part.SpeedBand{{Cause: "first order", From: 200, To: 250}, {Cause: "beyond", From: 570, To: 900}, {Cause: "here", From: 344, To: 346}}}
	for i, want := range []string{
		"..........######........|.......................",
		"........................|......................#",
		"........................!.......................",
	} {
		if got := speedLine(m, m.Bands[i]); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if _, ok := speedGrid(model.Outcome{}); ok {
		t.Error("a map of nothing")
	}
	if g, ok := speedGrid(model.Outcome{Variant: "A", Speeds: m}); !ok || len(g.rows) != 3 || !strings.Contains(g.title, "crank speeds") {
		t.Errorf("%+v", g)
	}
}

// The log of decisions ends a report that is read, and stays out of what other
// programs read.
func TestDecisionsEndTheMarkdown(t *testing.T) {
	c := comparison()
	for _, f := range Formats {
		var bare, with bytes.Buffer
		c.Decisions = nil
		if err := Comparison(&bare, c, f); err != nil {
			t.Fatal(err)
		}
		c.Decisions = []model.Decision{{Date: "2026-11-26", Text: "belt | not gear\x1b"}, {Date: "2026-12-01", Text: "gear after all"}}
		if err := Comparison(&with, c, f); err != nil {
			t.Fatal(err)
		}
		want := ""
		if f == Markdown {
			want = "\n## Decisions\n\n| date | decision |\n|---|---|\n| 2026-11-26 | belt \\| not gear\\x1b |\n| 2026-12-01 | gear after all |\n"
		}
		if got := strings.TrimPrefix(with.String(), bare.String()); got != want {
			t.Errorf("%s: %q, want %q", f, got, want)
		}
	}
}

// CommonMark 0.31, sections 2.4, 6.2, 6.3 and 6.6: a backslash before
// punctuation keeps it text, elsewhere it is itself.
func TestMarkdownKeepsTextAsItIs(t *testing.T) {
	for in, want := range map[string]string{
		"plain 3.5 mm": "plain 3.5 mm", "a|b": `a\|b`, "<b>": `\<b>`, "one\ntwo": `one\ntwo`, `\|`: `\\\|`, `C:\x`: `C:\x`,
		"[x](http://y)": `[x\](http://y)`, "[3] of 4": "[3] of 4", "*x*": `\*x\*`, "_x_ a_b": `\_x\_ a_b`, "&lt; R&D A & B": `\&lt; R\&D A & B`, "`x`": "\\`x\\`", "~~x~~": `\~\~x\~\~`, "": "",
	} {
		if got := cellText(in); got != want {
			t.Errorf("%q: %s, want %s", in, got, want)
		}
	}
	var b strings.Builder
	grid{title: "a # b #", head: []string{"x", "y"}, rows: [][]string{{"part"}, {"1", "|"}}, under: true, points: []string{"*"}, note: "<"}.markdown(&b)
	if want := "### a \\# b \\#\n\n* \\*\n\n| x | y |\n|---|---|\n| **part** |  |\n| 1 | \\| |\n\n\\<\n"; b.String() != want {
		t.Errorf("%q, want %q", b.String(), want)
	}
}

func TestAPointOfAListStaysOne(t *testing.T) {
	for in, want := range map[string]string{
		"# A: 1": `\# A: 1`, "> A": `\> A`, "- A": `\- A`, "+ A": `\+ A`, "12. A": `12\. A`, "1) A": `1\) A`, "[x] A": `\[x] A`,
		"A - 1": "A - 1", "12 A": "12 A", "Belt 190: 1.5": "Belt 190: 1.5",
	} {
		if got := itemText(in); got != want {
			t.Errorf("%q: %s, want %s", in, got, want)
		}
	}
}
