package main

import (
	"flag"
	"strconv"
	"strings"

	"backspan/model"
	"backspan/model/explore"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/store/report"
)

// sweep prints readings over a range of one or two parameters.
func (p program) sweep(args []string) int {
	fs := flag.NewFlagSet("sweep", flag.ContinueOnError)
	e := exploring(fs)
	var q sweepQuestion
	fs.Var((*words)(&q.Over), "over", "a parameter and its values, \"KEY=55 mm..80 mm/11\" or \"KEY=62, 65, 70\"; give it twice to sweep over two")
	fs.Var((*words)(&q.Readings), "reading", "the key of a reading to show; may be given several times")
	if status, done := e.begin(p, fs, args); done {
		return status
	}
	if len(q.Readings) == 0 {
		q.Readings = explore.UsualReadings()
	}
	_, status := answer(p, e, "sweep", q)
	return status
}

type sweepQuestion struct{ Over, Readings []string }

func (q sweepQuestion) put(s *model.Study, v *model.Variant) (asked[explore.Finding], error) {
	sweep, err := explore.NewSweep(explore.NewBase(s, v), q.Over, q.Readings)
	if err != nil {
		return asked[explore.Finding]{}, err
	}
	t := findingTable{study: s.Name, variant: v.Name, readings: sweep.Readings}
	var labels []string
	for _, a := range sweep.Axes {
		t.dials = append(t.dials, a.Dial)
		labels = append(labels, a.Label)
	}
	return asked[explore.Finding]{what: "designs", total: sweep.Total(), steps: 1, run: stepping(sweep.Run), sheet: func(fs []explore.Finding) (report.Sheet, int) {
		sheet := t.sheet(fs)
		sheet.Title = v.Name + ": sweep over " + strings.Join(labels, " and ")
		sheet.Note = sweep.Note(fs)
		return sheet, statusFine
	}}, nil
}

// findingTable shows designs, one a line.
type findingTable struct {
	study, variant string
	dials          []explore.Dial
	readings       []reading.Reading
}

func (t findingTable) sheet(fs []explore.Finding) report.Sheet {
	var head, plain []string
	for _, d := range t.dials {
		head, plain = append(head, d.Label), append(plain, keyed(d.Path, d.Unit.Key))
	}
	for _, r := range t.readings {
		head, plain = append(head, r.Label), append(plain, keyed(r.Key, r.Unit.Key))
	}
	sheet := report.Sheet{Head: append(head, "Checks"), Plain: [][]string{append(plain, "checks_failing", "first_failing", "refused")}}
	data := findingData{Study: t.study, Variant: t.variant, Over: dialsData(t.dials), Readings: readingsData(t.readings), Designs: []designData{}}
	for _, f := range fs {
		sheet.Rows = append(sheet.Rows, t.row(f))
		sheet.Plain = append(sheet.Plain, t.plain(f))
		data.Designs = append(data.Designs, t.design(f))
	}
	sheet.Data = data
	return sheet
}

func (t findingTable) row(f explore.Finding) []string {
	var row []string
	for i, d := range t.dials {
		row = append(row, d.Text(f.At[i]))
	}
	for i, r := range t.readings {
		row = append(row, shownSlot(f.Figure(i), r.Unit))
	}
	return append(row, f.Verdict())
}

func (t findingTable) plain(f explore.Finding) []string {
	var row []string
	for i, d := range t.dials {
		row = append(row, d.Bare(f.At[i]))
	}
	for i, r := range t.readings {
		row = append(row, bare(f.Figure(i), r.Unit))
	}
	return append(row, strconv.Itoa(f.Fails), f.First, f.Refused)
}

func keyed(key, unit string) string {
	if unit == "" {
		return key
	}
	return key + "_" + unit
}

type findingData struct {
	Study    string       `json:"study"`
	Variant  string       `json:"variant"`
	Over     []columnData `json:"over"`
	Readings []columnData `json:"readings"`
	Designs  []designData `json:"designs,omitempty"`
}

type columnData struct {
	Key   string `json:"key"`
	Label string `json:"label"`
	Unit  string `json:"unit"`
}

type designData struct {
	At       []any      `json:"at"`
	Readings []*float64 `json:"readings"`
	Fails    int        `json:"checks_failing"`
	First    string     `json:"first_failing"`
	Refused  string     `json:"refused"`
}

func dialsData(ds []explore.Dial) []columnData {
	cs := make([]columnData, len(ds))
	for i, d := range ds {
		cs[i] = columnData{d.Path, d.Label, d.Unit.Symbol}
	}
	return cs
}

func readingsData(rs []reading.Reading) []columnData {
	cs := make([]columnData, len(rs))
	for i, r := range rs {
		cs[i] = columnData{r.Key, r.Label, r.Unit.Symbol}
	}
	return cs
}

func (t findingTable) design(f explore.Finding) designData {
	d := designData{Fails: f.Fails, First: f.First, Refused: f.Refused, Readings: make([]*float64, len(t.readings))}
	for i, dial := range t.dials {
		if dial.Worded() {
			d.At = append(d.At, dial.Bare(f.At[i]))
			continue
		}
		d.At = append(d.At, *value(param.Known(f.At[i]), dial.Unit))
	}
	for i, r := range t.readings {
		d.Readings[i] = value(f.Figure(i), r.Unit)
	}
	return d
}
