package main

import (
	"flag"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"backspan/model"
	"backspan/model/explore"
	"backspan/model/param"
	"backspan/model/unit"
	"backspan/store/report"
)

// tolerance prints what doubts in parameters and methods do to readings and
// checks.
func (p program) tolerance(args []string) int {
	fs := flag.NewFlagSet("tolerance", flag.ContinueOnError)
	e := exploring(fs)
	var q toleranceQuestion
	fs.Var((*words)(&q.Spreads), "spread", "a parameter and its doubt, \"KEY=±0.05 mm\", \"KEY=±2 %\", \"KEY=sd 0.02 mm\" or \"KEY=54.9..55.2 mm\", even unless triangular or normal stands behind it (± of normal holds 95 %); the key of a reading spreads that reading alone, for the doubt in its method; may be given several times")
	fs.Var((*words)(&q.Readings), "reading", "the key of a reading to show; may be given several times")
	fs.IntVar(&q.Samples, "samples", 10_000, "how many machines are drawn")
	fs.Uint64Var(&q.Seed, "seed", 1, "decides the random numbers: the same seed gives the same answer")
	if status, done := e.begin(p, fs, args); done {
		return status
	}
	_, status := answer(p, e, "tolerance", q)
	return status
}

type toleranceQuestion struct {
	Spreads, Readings []string
	Samples           int
	Seed              uint64
}

func (q toleranceQuestion) put(s *model.Study, v *model.Variant) (asked[explore.Sample], error) {
	base := explore.NewBase(s, v)
	if len(q.Readings) == 0 {
		q.Readings = slices.Concat(explore.UsualReadings(), spreadReadings(base, q.Spreads))
	}
	t, err := explore.NewTolerance(base, q.Spreads, q.Readings, q.Samples, q.Seed)
	if err != nil {
		return asked[explore.Sample]{}, err
	}
	return asked[explore.Sample]{what: "samples", total: t.Total(), steps: 1, run: stepping(t.Run), sheet: func(samples []explore.Sample) (report.Sheet, int) {
		return toleranceSheet(s.Name, v.Name, t, t.Summary(samples)), statusFine
	}}, nil
}

// spreadReadings are the keys that are spread and no parameter's: a doubt that
// somebody enters is one that he wants to see.
func spreadReadings(base explore.Base, spreads []string) []string {
	var keys []string
	for _, text := range spreads {
		key, _, _ := strings.Cut(text, "=")
		if key = strings.TrimSpace(key); key == "" || slices.Contains(explore.UsualReadings(), key) || slices.Contains(keys, key) {
			continue
		}
		if !base.HasParameter(key) {
			keys = append(keys, key)
		}
	}
	return keys
}

// toleranceSheet has the readings first, each with what moves it most, and
// below them the checks that do not always hold.
func toleranceSheet(study, variant string, t explore.Tolerance, r explore.Result) report.Sheet {
	sheet := report.Sheet{
		Title: fmt.Sprintf("%s: %d machines drawn, seed %d", variant, r.Samples, t.Seed),
		Head:  []string{"Reading or check", "As set", "Mean", "Standard deviation", "5 % below", "Half below", "95 % below", "Moved most by"},
		Plain: [][]string{{"kind", "key", "of", "samples", "as_set", "mean", "sd", "p5", "p50", "p95", "share", "holds", "thin", "fails", "not_rated", "absent"}},
		Note:  r.Note(),
	}
	data := toleranceData{Study: study, Variant: variant, Samples: r.Samples, Seed: t.Seed, Sound: r.Sound, Clipped: r.Clipped, Spreads: []spreadSet{}, Readings: []distributed{}, Checks: []judgedData{}}
	for _, s := range t.Spreads {
		data.Spreads = append(data.Spreads, spreadSet{s.Key(), s.Label(), s.Text()})
	}
	for _, d := range r.Distributions {
		addReading(&sheet, &data, d)
	}
	for _, j := range r.Judged {
		addCheck(&sheet, &data, j, r.Samples)
	}
	sheet.Data = data
	return sheet
}

func addReading(sheet *report.Sheet, data *toleranceData, d explore.Distribution) {
	u, of := d.Reading.Unit, d.Reading
	row, out := []string{of.Label, of.Text()}, distributed{Key: of.Key, Label: of.Label, Unit: u.Symbol, Samples: d.Samples, Contributions: []contribution{}}
	plain := []string{"reading", of.Key, u.Key, strconv.Itoa(d.Samples), bare(param.Slot{Value: of.Value, Known: of.Known()}, u)}
	if d.Samples < 2 {
		row, plain = append(row, "-", "-", "-", "-", "-", "no value"), append(plain, "", "", "", "", "")
	} else {
		row = append(row, u.Text(d.Mean), spreadText(u, d.Mean, d.Deviation), u.Text(d.P5), u.Text(d.P50), u.Text(d.P95), movedBy(d))
		out.Mean, out.P5, out.P50, out.P95 = valueOf(d.Mean, u), valueOf(d.P5, u), valueOf(d.P50, u), valueOf(d.P95, u)
		out.Deviation = valueOf(d.Deviation, differences(u))
		plain = append(plain, bare(param.Known(d.Mean), u), bare(param.Known(d.Deviation), differences(u)), bare(param.Known(d.P5), u), bare(param.Known(d.P50), u), bare(param.Known(d.P95), u))
	}
	sheet.Rows = append(sheet.Rows, row)
	sheet.Plain = append(sheet.Plain, append(plain, "", "", "", "", "", ""))
	for _, c := range d.Contributions {
		share := strconv.FormatFloat(c.Share, 'g', 6, 64)
		sheet.Plain = append(sheet.Plain, []string{"contribution", of.Key, c.Spread.Key(), "", "", "", "", "", "", "", share, "", "", "", "", ""})
		out.Contributions = append(out.Contributions, contribution{c.Spread.Key(), c.Spread.Label(), *valueOf(c.Share, unit.One), c.Rises})
	}
	data.Readings = append(data.Readings, out)
}

// addCheck shows a check that fails or is thin in some samples; the figures
// have them all.
func addCheck(sheet *report.Sheet, data *toleranceData, j explore.Judged, n int) {
	if j.Fails > 0 || j.Thin > 0 && j.Thin < n {
		words := fmt.Sprintf("fails in %s, thin in %s of the machines", explore.ShareText(j.Fails, n), explore.ShareText(j.Thin, n))
		sheet.Rows = append(sheet.Rows, []string{j.Label, "", "", "", "", "", "", words})
	}
	sheet.Plain = append(sheet.Plain, []string{"check", j.Key, "", "", "", "", "", "", "", "", "",
		strconv.Itoa(j.Holds), strconv.Itoa(j.Thin), strconv.Itoa(j.Fails), strconv.Itoa(j.NotRated), strconv.Itoa(j.Absent)})
	data.Checks = append(data.Checks, judgedData{j.Key, j.Label, j.Holds, j.Thin, j.Fails, j.NotRated, j.Absent, *valueOf(1-float64(j.Fails)/float64(n), unit.One)})
}

func valueOf(x float64, u unit.Unit) *float64 { return value(param.Known(x), u) }

// differences is the unit in which a difference is written: a degree is as
// long as a kelvin.
func differences(u unit.Unit) unit.Unit { u.Shift = 0; return u }

// still is the share of a figure under which its spread is what the sum leaves
// over, not what a doubt does.
const still = 1e-6

func unmoved(mean, deviation float64) bool { return deviation <= still*math.Abs(mean) }

func spreadText(u unit.Unit, mean, deviation float64) string {
	if unmoved(mean, deviation) {
		deviation = 0
	}
	return differences(u).Text(deviation)
}

func movedBy(d explore.Distribution) string {
	const shown, least = 3, 0.01
	if unmoved(d.Mean, d.Deviation) {
		return "nothing"
	}
	text, sum := "", 0.0
	for i, c := range d.Contributions {
		sum += c.Share
		if i >= shown || c.Share < least {
			continue
		}
		if text != "" {
			text += ", "
		}
		way := "-"
		if c.Rises {
			way = "+"
		}
		text += fmt.Sprintf("%s%s %.0f %%", way, c.Spread.Label(), 100*c.Share)
	}
	if d.Deviation > 0 && sum < 0.9 {
		text += fmt.Sprintf(" (%.0f %% not along straight lines)", 100*(1-sum))
	}
	return text
}
