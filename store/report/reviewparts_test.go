package report

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/reading"
	"backspan/model/unit"
)

func TestReviewTellsTheDecisions(t *testing.T) {
	s := model.Sample()
	s.Variants = s.Variants[:2]
	s.Decisions = []model.Decision{{Date: "2026-11-26", Text: nasty}, {Date: "2026-12-01", Text: "gear | after all"}}
	text, plain := review(t, s, HTML), review(t, s, Markdown)
	seen := soundPage(t, text)
	for _, want := range []string{"Decisions", "2026-11-26", `<script>alert(1)</script>\x1b[31m\x00`, "gear | after all"} {
		if !strings.Contains(seen, want) {
			t.Errorf("the page lacks %q", want)
		}
	}
	if strings.Contains(seen, "No decision") || strings.Contains(plain, "No decision") || !strings.Contains(plain, `| 2026-12-01 | gear \| after all |`) {
		t.Error("the log is told wrong")
	}
}

// Seventeen variants do not fit beside each other: they stand in three tables, each
// with the names of its rows.
func TestManyVariantsArePartedForPaper(t *testing.T) {
	g := grid{head: []string{"what", "unit"}, rows: [][]string{{"x", "mm"}, {"part"}}, figures: true, second: "unit"}
	for i := range 17 {
		g.head, g.rows[0] = append(g.head, strconv.Itoa(i)), append(g.rows[0], "v"+strconv.Itoa(i))
	}
	var all []string
	for _, part := range g.parted() {
		n := len(part.head)
		if n > 2+widest || n < 5 || part.rows[0][1] != "mm" || len(part.rows[0]) != n || part.rows[0][2] != "v"+part.head[2] {
			t.Errorf("%q %q", part.head, part.rows)
		}
		all = append(all, part.head[2:]...)
	}
	if !slices.Equal(all, g.head[2:]) {
		t.Errorf("%q", all)
	}
}

func TestFiguresOfOneSentenceAreMerged(t *testing.T) {
	for want, in := range map[string][]string{
		"36.4 to 37.2 km/h and 5":  {"36.7 km/h and 5", "36.4 km/h and 5", "37.2 km/h and 5"},
		"nothing":                  {"nothing", "nothing"},
		"9 to 10 N, 1.05 to 2.5 m": {"9 N, 2.5 m", "10 N, 1.05 m"},
	} {
		if got := merged(in); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

func TestBestAndWorstAreMarked(t *testing.T) {
	lower := func(x float64) reading.Reading { return reading.New("k", "k", x, unit.Newton).Lower() }
	blank := reading.Missing("k", "k", unit.Newton, "not known").Lower()
	for _, tc := range []struct {
		cells       []reading.Reading
		best, worst int
	}{
		{[]reading.Reading{lower(600), lower(500), lower(700)}, 1, 2}, {[]reading.Reading{blank, lower(500), {}, lower(400)}, 3, 1},
		{[]reading.Reading{lower(600), lower(600.01)}, -1, -1}, {[]reading.Reading{blank, blank}, -1, -1},
	} {
		if best, worst := extremes(tc.cells); best != tc.best || worst != tc.worst {
			t.Errorf("%v: %d and %d, want %d and %d", tc.cells, best, worst, tc.best, tc.worst)
		}
	}
}

// A thin check may be past a guide value: whoever reads "no check fails" must
// see that.
func TestAnswerTellsWhatIsPastAGuideValue(t *testing.T) {
	near := reading.AtMost("a.b", "near", 95, 100, 0.1, unit.One)
	past := reading.AtMost("a.c", "past", 105, 100, 0.1, unit.One).Warn()
	if got := verdictWords([]reading.Check{near, past}); got != "no check fails; 2 thin, 1 of them past its guide value by 5 %; 0 not rated" {
		t.Error(got)
	}
	further := reading.AtMost("a.d", "further", 144, 100, 0.1, unit.One).Warn()
	told := reading.Condition("a.e", "told", false).Warn()
	if got := verdictWords([]reading.Check{past, further, told, near}); got != "no check fails; 4 thin, 3 of them past their guide values by up to 44 %; 0 not rated" {
		t.Error(got)
	}
	if got := verdictWords([]reading.Check{told}); got != "no check fails; 1 thin, 1 of them past its guide value; 0 not rated" {
		t.Error(got)
	}
	if got := verdictWords([]reading.Check{told, told}); got != "no check fails; 2 thin, 2 of them past their guide values; 0 not rated" {
		t.Error(got)
	}
	if got := verdictWords([]reading.Check{near}); got != "no check fails; 1 thin; 0 not rated" {
		t.Error(got)
	}
}

// Advice with one variant's figures is not told as if it were everybody's.
func TestCureSaysWhose(t *testing.T) {
	r := Reviewed{Compared: model.Comparison{Outcomes: []model.Outcome{{Variant: "A"}, {Variant: "B"}}}}
	check := func(value float64, cure string) reading.Check {
		return reading.AtMost("a.b", "l", value, 1, 0, unit.One).Advice(cure)
	}
	for _, tc := range []struct{ a, b, want string }{{"at 1 rpm", "at 2 rpm", "B: at 2 rpm"}, {"less", "less", "less"}} {
		cells := []reading.Check{check(2, tc.a), check(3, tc.b)}
		worst, _ := reading.Worst(cells)
		if got := r.cureText(model.CheckRow{Cells: cells}, worst); got != tc.want {
			t.Errorf("%q, want %q", got, tc.want)
		}
	}
}

// A machine drawn on a quarter of the width of A4 less its margins must still be
// read: six points are what print bears.
func TestWordsOfElevationsAreReadOnPaper(t *testing.T) {
	s := model.Sample()
	text := review(t, s, HTML)
	box := strings.Fields(viewBox(text, 1))
	wide, err := strconv.ParseFloat(box[2], 64)
	if err != nil {
		t.Fatal(err)
	}
	const quarter = (190.0 - 3*2) / 4 / 25.4 * 72 // points
	if points := wordSize * quarter / wide; points < 6.5 {
		t.Errorf("words of %.1f points", points)
	}
	if !strings.Contains(text, "Small squares: the guard") || !strings.Contains(text, "Chain lines: the thrust line") {
		t.Error("the note lacks guard or chain lines")
	}
}

func TestAVariantWithFewFiguresOfAPartLeavesItsTable(t *testing.T) {
	g := grid{title: "P", figures: true, second: "unit", head: []string{"reading", "unit", "A", "B", "C"},
		rows: [][]string{{"x", "m", "1", "-", "2"}, {"y", "m", "1", "-", "3"}, {"z", "m", "1", "4", "-"}}}
	got := sparse(g)
	if len(got) != 2 || strings.Join(got[0].head, " ") != "reading unit A C" || len(got[0].rows) != 2 || strings.Join(got[1].head, " ") != "reading unit A B" || len(got[1].rows) != 1 {
		t.Errorf("%+v", got)
	}
	s := model.Sample()
	for _, g := range func() []grid { r := NewReviewed(s); return r.readings() }() {
		if g.title == "Belt" && slices.Contains(g.head, "Toothed 190") {
			t.Error("a toothed belt stands among the ribbed ones")
		}
	}
}

func TestWhatIsCutStandsInFull(t *testing.T) {
	s := model.Sample()
	text := review(t, s, Markdown)
	for _, want := range []string{"Engine: Power curve (rows of speed in rpm, power in kW", "3000 3.6; 4000 5.6; 5000 8.3; 6000 11.9;"} {
		if !strings.Contains(text, want) {
			t.Errorf("lacks %q", want)
		}
	}
}
