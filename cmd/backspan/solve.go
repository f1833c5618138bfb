package main

import (
	"flag"
	"fmt"

	"backspan/model"
	"backspan/model/explore"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/store/report"
)

// solve prints the values of a parameter that bring a reading to a target.
func (p program) solve(args []string) int {
	fs := flag.NewFlagSet("solve", flag.ContinueOnError)
	e := exploring(fs)
	var q solveQuestion
	fs.StringVar(&q.Change, "change", "", "the parameter that may change, \"KEY=55 mm..80 mm\"; a key alone looks through its usual range")
	fs.StringVar(&q.Reading, "reading", "", "the key of the reading that has a target")
	fs.StringVar(&q.To, "to", "", "the target, with or without a unit")
	fs.IntVar(&q.Stretches, "stretches", 0, "in how many stretches the range is looked through; without it 100, of counts all")
	if status, done := e.begin(p, fs, args); done {
		return status
	}
	if q.Change == "" || q.Reading == "" || q.To == "" {
		return p.cannot(fmt.Errorf("solve: give --change, --reading and --to, for example: backspan solve --change propeller.pitch --reading propeller.static_thrust --to \"700 N\""))
	}
	_, status := answer(p, e, "solve", q)
	return status
}

type solveQuestion struct {
	Change, Reading, To string
	Stretches           int
}

func (q solveQuestion) put(s *model.Study, v *model.Variant) (asked[explore.Stretch], error) {
	solve, err := explore.NewSolve(explore.NewBase(s, v), q.Change, q.Reading, q.To, q.Stretches)
	if err != nil {
		return asked[explore.Stretch]{}, err
	}
	return asked[explore.Stretch]{what: "stretches", total: solve.Total(), steps: 1, run: stepping(solve.Run), sheet: func(sts []explore.Stretch) (report.Sheet, int) {
		return solvedSheet(s.Name, v.Name, solve, sts)
	}}, nil
}

func solvedSheet(study, variant string, q explore.Solve, sts []explore.Stretch) (report.Sheet, int) {
	var found []explore.Solution
	for _, st := range sts {
		found = append(found, st.Found...)
	}
	t := findingTable{study, variant, []explore.Dial{q.Dial}, []reading.Reading{q.Reading}}
	rows, met := found, 0
	for _, s := range found {
		if !s.Past {
			met++
		}
	}
	nearest, any := q.Nearest(sts)
	if len(found) == 0 && any {
		rows = []explore.Solution{{Finding: nearest}}
	}
	sheet := t.sheet(findingsOf(rows))
	sheet.Title = fmt.Sprintf("%s: %s for %s of %s", variant, q.Dial.Label, q.Reading.Label, q.Reading.Unit.Text(q.Target))
	sheet.Head = append(sheet.Head, "")
	sheet.Plain[0] = append(sheet.Plain[0], "what", "other_side")
	data := solvedData{findingData: sheet.Data.(findingData), Target: value(param.Known(q.Target), q.Reading.Unit), Solutions: []solutionData{}}
	for i, s := range rows {
		d := solutionData{designData: data.Designs[i], What: whatFound(s, len(found) > 0)}
		if s.Past {
			other := t.design(s.Other)
			d.Other = &other
		}
		sheet.Rows[i] = append(sheet.Rows[i], solvedRemark(q, s, d.What))
		sheet.Plain[i+1] = append(sheet.Plain[i+1], d.What, otherBare(q, s))
		data.Solutions = append(data.Solutions, d)
	}
	data.Designs = nil
	sheet.Note = solvedNote(q, met, len(found)-met, any)
	data.Answer = sheet.Note
	sheet.Data = data
	if met == 0 {
		return sheet, statusFails
	}
	return sheet, statusFine
}

func findingsOf(ss []explore.Solution) []explore.Finding {
	fs := make([]explore.Finding, len(ss))
	for i, s := range ss {
		fs[i] = s.Finding
	}
	return fs
}

func whatFound(s explore.Solution, found bool) string {
	switch {
	case !found:
		return "nearest"
	case s.Past:
		return "past"
	}
	return "met"
}

func solvedRemark(q explore.Solve, s explore.Solution, what string) string {
	miss, _ := q.Miss(s.Finding)
	off := q.Reading.Unit.Delta(miss, s.Figures[0].Value)
	switch what {
	case "met":
		return "meets it"
	case "past":
		return fmt.Sprintf("misses it by %s; on the other side, %s at %s", off, q.Reading.Unit.Text(s.Other.Figures[0].Value), q.Dial.Text(s.Other.At[0]))
	}
	return fmt.Sprintf("misses it by %s, the nearest", off)
}

func otherBare(q explore.Solve, s explore.Solution) string {
	if !s.Past {
		return ""
	}
	return q.Dial.Bare(s.Other.At[0])
}

func solvedNote(q explore.Solve, met, past int, any bool) string {
	within := fmt.Sprintf("%s from %s to %s", q.Dial.Label, q.Dial.Text(q.Levels[0]), q.Dial.Text(q.Levels[q.Total()]))
	switch {
	case met == 1 && past == 0:
		return "One value of " + within + " meets the target."
	case met > 0 && past == 0:
		return fmt.Sprintf("%d values of %s meet the target.", met, within)
	case met > 0:
		return fmt.Sprintf("Of %s the target is met %d times; %d times more the reading goes past it without meeting it.", within, met, past)
	case past > 0:
		return fmt.Sprintf("No value of %s meets the target; at %d the reading goes past it from one side to the other.", within, past)
	case any:
		return "No value of " + within + " meets the target; the nearest of those looked at is shown."
	}
	return "No value of " + within + " gives " + q.Reading.Label + " at all."
}

type solvedData struct {
	findingData
	Target    *float64       `json:"target"`
	Answer    string         `json:"answer"`
	Solutions []solutionData `json:"solutions"`
}

type solutionData struct {
	designData
	What  string      `json:"what"`
	Other *designData `json:"other_side"`
}
