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
	"backspan/store/report"
)

// search prints the best compromises that it finds.
func (p program) search(args []string) int {
	fs := flag.NewFlagSet("search", flag.ContinueOnError)
	e := exploring(fs)
	var q searchQuestion
	fs.Var((*words)(&q.Free), "free", "a parameter that may change: \"KEY\" over its usual range or words, \"KEY=55 mm..80 mm\", \"KEY=55..80/26\" in 26 steps, \"KEY=a, b\"; may be given several times")
	fs.Var((*words)(&q.Goals), "goal", "a reading to improve, \"KEY\", \"KEY=less\" or \"KEY=more\"; may be given several times")
	fs.Var((*words)(&q.AtLeast), "at-least", "a reading and its least value, \"KEY=600 N\"; may be given several times")
	fs.Var((*words)(&q.AtMost), "at-most", "a reading and its greatest value; may be given several times")
	fs.IntVar(&q.Population, "population", 60, "designs that live at once; the answer has at most as many from each run")
	fs.IntVar(&q.Generations, "generations", 49, "how many times they are bred")
	fs.IntVar(&q.Runs, "runs", 2, "how many times the search begins anew; parts are of runs")
	fs.Uint64Var(&q.Seed, "seed", 1, "decides the random numbers: the same seed gives the same answer")
	save := fs.Int("save-as-variants", 0, "add so many of the answer, evenly along it, to the study as variants")
	if status, done := e.begin(p, fs, args); done {
		return status
	}
	if err := e.maySave(*save); err != nil {
		return p.cannot(fmt.Errorf("search: %w", err))
	}
	runs, status := answer(p, e, "search", q)
	if *save == 0 || status != statusFine {
		return status
	}
	return p.done(p.saveBest(e, q, runs, *save))
}

type searchQuestion struct {
	explore.Wishes
	explore.Effort
}

func (q searchQuestion) ask(s *model.Study, v *model.Variant) (explore.Search, error) {
	return explore.NewSearch(explore.NewBase(s, v), q.Wishes, q.Effort)
}

func (q searchQuestion) put(s *model.Study, v *model.Variant) (asked[explore.Run], error) {
	search, err := q.ask(s, v)
	if err != nil {
		return asked[explore.Run]{}, err
	}
	return asked[explore.Run]{what: "designs", total: search.Total(), steps: search.Steps(), run: search.Run, sheet: func(runs []explore.Run) (report.Sheet, int) {
		return searchSheet(s.Name, v.Name, search, runs)
	}}, nil
}

func searchSheet(study, variant string, q explore.Search, runs []explore.Run) (report.Sheet, int) {
	best, allowed := q.Best(runs)
	t := findingTable{study, variant, q.Dials(), q.Readings()}
	fs := make([]explore.Finding, len(best))
	for i, c := range best {
		fs[i] = c.Finding
	}
	sheet := t.sheet(fs)
	rows := t.alongAnswer(fs)
	tried := 0
	for _, r := range runs {
		tried += r.Evaluations
	}
	sheet.Title = fmt.Sprintf("%s: best compromises of %d designs, seed %d", variant, tried, q.Effort.Seed)
	data := searchData{findingData: sheet.Data.(findingData), Tried: tried, Seed: q.Effort.Seed, Allowed: allowed}
	data.Spread, sheet.Note = spreadOf(q, best)
	status := statusFine
	if !allowed {
		sheet.Note, data.Spread, status = "No design passed every check and kept to the limits; the nearest to it is shown. Widen what is free, or ease a limit.", nil, statusFails
	}
	data.Answer = sheet.Note
	if len(rows) < len(sheet.Rows) {
		sheet.Note += fmt.Sprintf(" %d are shown, evenly along the answer and rounded; the formats json and csv have all, as they are.", len(rows))
	}
	sheet.Data, sheet.Rows = data, rows
	return sheet, status
}

// alongAnswer are rows for people: rounded, without those that then look like
// the one before, and no more than are read at a glance.
func (t findingTable) alongAnswer(fs []explore.Finding) [][]string {
	const most, digits = 20, 4
	var rows [][]string
	for _, f := range fs {
		row := t.row(f)
		for i, d := range t.dials {
			if !d.Stepped() {
				row[i] = strings.TrimSpace(strconv.FormatFloat(d.Unit.From(f.At[i]), 'g', digits, 64) + " " + d.Unit.Symbol)
			}
		}
		if n := len(rows); n == 0 || !slices.Equal(rows[n-1], row) {
			rows = append(rows, row)
		}
	}
	if len(rows) <= most {
		return rows
	}
	thinned := make([][]string, most)
	for i := range thinned {
		thinned[i] = rows[i*(len(rows)-1)/(most-1)]
	}
	return thinned
}

type searchData struct {
	findingData
	Tried   int          `json:"designs_tried"`
	Seed    uint64       `json:"seed"`
	Allowed bool         `json:"allowed"`
	Answer  string       `json:"answer"`
	Spread  []spreadData `json:"spread"`
}

// spreadData is from where to where the answer reaches.
type spreadData struct {
	columnData
	Least *float64 `json:"least"`
	Most  *float64 `json:"greatest"`
}

func spreadOf(q explore.Search, best []explore.Candidate) (spread []spreadData, note string) {
	note = fmt.Sprintf("%d designs, of which none is better in one goal without being worse in another", len(best))
	if len(best) == 1 {
		note = "One design is the best in every goal"
	}
	for i, g := range q.Goals {
		least, most := math.Inf(1), math.Inf(-1)
		for _, c := range best {
			least, most = math.Min(least, c.Figures[i].Value), math.Max(most, c.Figures[i].Value)
		}
		d := spreadData{columnData: columnData{g.Key, g.Label, g.Unit.Symbol}}
		if len(best) > 0 {
			d.Least, d.Most = value(param.Known(least), g.Unit), value(param.Known(most), g.Unit)
			reach := g.Unit.Text(most)
			if low := g.Unit.Number(least); low != g.Unit.Number(most) {
				reach = low + " to " + reach
			}
			note += "; " + g.Label + " " + reach
		}
		spread = append(spread, d)
	}
	return spread, note + ". A search finds good designs and does not prove that there are no better."
}
