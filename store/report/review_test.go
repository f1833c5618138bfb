package report

import (
	"bytes"
	"encoding/xml"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/unit"
)

func review(t *testing.T, s *model.Study, f Format) string {
	t.Helper()
	var b bytes.Buffer
	if err := Review(&b, NewReviewed(s), f); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestReviewOfTheSample(t *testing.T) {
	s := model.Sample()
	text := review(t, s, HTML)
	seen := soundPage(t, text)
	if n := strings.Count(text, "<svg"); n != len(s.Variants)+6 {
		t.Errorf("%d drawings of %d machines, 5 charts and the bars of moment", n, len(s.Variants))
	}
	plain := review(t, s, Markdown)
	for _, want := range []string{"Gear 300", "Standing thrust", "back to plate", "thrust, installed", "piece by piece", "How far figures may be off", "Assumptions", "from memory: EN 228",
		"Fingers through the net", "airworthiness", "The answer in short", "◆ 22.9 -6.9", "moment at the hip +15.6 N·m, +6.0 from mass and +9.7 from depth",
		"nobody here wants to carry the 300"} {
		if !strings.Contains(seen, want) {
			t.Errorf("the page lacks %q", want)
		}
		if !strings.Contains(plain, want) {
			t.Errorf("the Markdown lacks %q", want)
		}
	}
}

func TestReviewWithoutDecisionsSaysSo(t *testing.T) {
	s := model.Sample()
	s.Variants, s.Decisions = s.Variants[:1], nil
	for _, f := range []Format{HTML, Markdown} {
		if !strings.Contains(strings.ReplaceAll(review(t, s, f), "&#39;", "'"), "No decision is in the study's log yet") {
			t.Errorf("%s does not say that nothing was decided", f)
		}
	}
}

func TestReviewOfNastyNames(t *testing.T) {
	s := model.Sample()
	s.Variants = s.Variants[:2]
	s.Name, s.Notes, s.Variants[0].Name, s.Variants[1].Notes, s.Reference = nasty, "one\ntwo "+nasty, nasty, nasty, nasty
	text := review(t, s, HTML)
	if seen := soundPage(t, text); !strings.Contains(seen, `a<b>&"'</td><script>alert(1)</script>\x1b[31m\x00`) {
		t.Error("the name is not told as it is")
	}
	plain := review(t, s, Markdown)
	for _, f := range []string{text, plain} {
		if strings.ContainsAny(f, "\x1b\x00") {
			t.Error("a control character got through")
		}
	}
	if strings.Contains(strings.ReplaceAll(plain, `\<`, ""), "<") {
		t.Error("Markdown lets markup through")
	}
}

func TestReviewOfWhatCannotBeBuilt(t *testing.T) {
	s := model.Sample()
	s.Variants = s.Variants[:2]
	p, ok := param.Find(s.Variants[1].Sections(), "drive.gear.pinion_bearings")
	if !ok || p.Set("6207") != nil {
		t.Fatal("cannot set the bearing")
	}
	if w, ok := param.Find(s.Variants[1].Sections(), "drive.gear.centre_distance"); !ok || w.Set("200 mm") != nil {
		t.Fatal("cannot set the centre distance")
	}
	if o := model.Evaluate(s, &s.Variants[1]); len(o.Layout.Bodies) > 0 {
		t.Fatal("the machine can be built after all")
	}
	if seen := soundPage(t, review(t, s, HTML)); !strings.Contains(seen, "cannot be built as set") || !strings.Contains(seen, "Gear 190: fails: Drive can be built; 0 thin; 0 not rated.") {
		t.Error("nothing says why there is no drawing")
	}
}

// segments are the lines of a drawing.
func segments(t *testing.T, text string) (lines [][][2]float64) {
	t.Helper()
	dec := xml.NewDecoder(strings.NewReader(text))
	for tok, err := dec.Token(); err == nil; tok, err = dec.Token() {
		x, ok := tok.(xml.StartElement)
		if !ok || x.Name.Local != "polyline" {
			continue
		}
		var line [][2]float64
		for _, a := range x.Attr {
			if a.Name.Local != "points" {
				continue
			}
			for _, pair := range strings.Fields(a.Value) {
				at, up, _ := strings.Cut(pair, ",")
				px, errX := strconv.ParseFloat(at, 64)
				py, errY := strconv.ParseFloat(up, 64)
				if errX != nil || errY != nil {
					t.Fatalf("no point: %q", pair)
				}
				line = append(line, [2]float64{px, py})
			}
		}
		lines = append(lines, line)
	}
	return lines
}

// A millimetre of the machine is one of the drawing: the propeller of 1300 mm
// and the depth that is read stand in it as lines of that length.
func TestElevationsAreToScale(t *testing.T) {
	s := model.Sample()
	s.Variants = s.Variants[:2]
	text := review(t, s, HTML)
	for i, picture := range strings.Split(text, "<svg")[1:3] {
		o := model.Evaluate(s, &s.Variants[i])
		depth, _ := o.Reading("stack.depth")
		for _, want := range []float64{1300, unit.Millimetre.From(depth.Value)} {
			if !slices.ContainsFunc(segments(t, "<svg"+picture[:strings.Index(picture, "</svg>")]+"</svg>"), func(l [][2]float64) bool {
				return len(l) == 2 && math.Abs(math.Hypot(l[1][0]-l[0][0], l[1][1]-l[0][1])-want) < 0.02
			}) {
				t.Errorf("%s: no line of %.1f mm", o.Variant, want)
			}
		}
	}
	if a, b := viewBox(text, 1), viewBox(text, 2); a == "" || a != b {
		t.Errorf("two scales: %q and %q", a, b)
	}
}

func viewBox(text string, n int) string {
	_, rest, _ := strings.Cut(strings.Split(text, "<svg")[n], `viewBox="`)
	box, _, _ := strings.Cut(rest, `"`)
	return box
}

func TestAssumptionsAreThoseNobodyMeasured(t *testing.T) {
	s := model.Sample()
	s.Variants = s.Variants[:2]
	if p, ok := param.Find(s.Variants[0].Sections(), "engine.idle_speed"); !ok || p.Set("2100 rpm") != nil {
		t.Fatal("cannot set the idle speed")
	}
	r := NewReviewed(s)
	found := map[string]assumed{}
	for _, a := range r.assumed() {
		found[a.section+": "+a.label] = a
	}
	for name, want := range map[string]assumed{
		"Engine: Idle speed":                {value: "1900 rpm", origin: "invented", in: []bool{false, true}, given: []bool{true, false}},
		"Ribbed belt: Pulley rim thickness": {value: "5 mm", origin: "estimate", in: []bool{true, false}},
	} {
		if got := found[name]; got.value != want.value || got.origin != want.origin || !slices.Equal(got.in, want.in) || !slices.Equal(got.given, want.given) {
			t.Errorf("%s: %+v, want %+v", name, got, want)
		}
	}
	if found["Engine: Bore"].value != "" || len(found) < 50 {
		t.Errorf("%d assumptions, bore %+v", len(found), found["Engine: Bore"])
	}
	text := review(t, s, Markdown)
	for _, want := range []string{"| Idle speed | 1900 rpm (Gear 190; set in Belt 190) |", "| Pulley rim thickness | 5 mm |", "Engine: Heating value of the fuel 43.5 MJ/kg; from memory: EN 228"} {
		if !strings.Contains(text, want) {
			t.Errorf("lacks %q", want)
		}
	}
}

func TestBandsHaveBothEnds(t *testing.T) {
	s := model.Sample()
	s.Variants = s.Variants[:1]
	r := NewReviewed(s)
	low, _ := r.Compared.Outcomes[0].Reading("propeller.static_thrust_low")
	high, _ := r.Compared.Outcomes[0].Reading("propeller.static_thrust_high")
	want := low.Unit.Number(low.Value) + " to " + high.Text()
	if !slices.ContainsFunc(r.bands().rows, func(row []string) bool { return row[1] == want }) {
		t.Errorf("no band %s in %q", want, r.bands().rows)
	}
}

func TestRoundFigures(t *testing.T) {
	for _, tc := range []struct {
		least, most float64
		want        []float64
	}{
		{0, 10, []float64{0, 2, 4, 6, 8, 10}}, {3000, 9100, []float64{3000, 4000, 5000, 6000, 7000, 8000, 9000}},
		{0, 0.43, []float64{0, 0.1, 0.2, 0.3, 0.4}}, {-7, 21, []float64{-5, 0, 5, 10, 15, 20}},
	} {
		got := roundFigures(tc.least, tc.most)
		if !slices.EqualFunc(got, tc.want, func(a, b float64) bool { return math.Abs(a-b) < 1e-9 }) {
			t.Errorf("%g to %g: %v, want %v", tc.least, tc.most, got, tc.want)
		}
	}
}

func TestChartPlacesItsPoints(t *testing.T) {
	c := model.Curve{Along: model.Axis{Label: "speed", Unit: unit.RPM}, Across: model.Axis{Label: "power", Unit: unit.Kilowatt},
		Points: []model.CurvePoint{{X: 100, Y: 0}, {X: 200, Y: 5000}, {X: 300, Y: 10000}}}
	text, ok := chart("id", "T", []chartLine{{"A", c}, {"B", model.Curve{Why: "no engine"}}})
	if !ok || !strings.Contains(text, "B: no line") {
		t.Fatalf("%v %s", ok, text)
	}
	want := [][2]float64{{chartLeft, chartHigh - 10}, {chartLeft + chartWide/2, chartHigh / 2}, {chartLeft + chartWide, 10}}
	if !slices.ContainsFunc(segments(t, text), func(l [][2]float64) bool { return slices.Equal(l, want) }) {
		t.Errorf("no line through %v", want)
	}
	if _, ok := chart("id", "T", []chartLine{{"B", model.Curve{}}}); ok {
		t.Error("a chart of nothing")
	}
}
