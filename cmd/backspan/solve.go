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
	solved := q.Sum(sts)
	t := findingTable{study, variant, []explore.Dial{q.Dial}, []reading.Reading{q.Reading}}
	sheet := t.sheet(findingsOf(solved.Shown))
	sheet.Title = fmt.Sprintf("%s: %s for %s of %s", variant, q.Dial.Label, q.Reading.Label, q.Reading.Unit.Text(q.Target))
	sheet.Head = append(sheet.Head, "")
	sheet.Plain[0] = append(sheet.Plain[0], "what", "other_side")
	data := solvedData{findingData: sheet.Data.(findingData), Target: value(param.Known(q.Target), q.Reading.Unit), Solutions: []solutionData{}}
	for i, s := range solved.Shown {
		d := solutionData{designData: data.Designs[i], What: solved.What(i)}
		if s.Past {
			other := t.design(s.Other)
			d.Other = &other
		}
		sheet.Rows[i] = append(sheet.Rows[i], q.Remark(solved, i))
		sheet.Plain[i+1] = append(sheet.Plain[i+1], d.What, otherBare(q, s))
		data.Solutions = append(data.Solutions, d)
	}
	data.Designs = nil
	sheet.Note = q.Note(solved)
	data.Answer = sheet.Note
	sheet.Data = data
	if solved.Met == 0 {
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

func otherBare(q explore.Solve, s explore.Solution) string {
	if !s.Past {
		return ""
	}
	return q.Dial.Bare(s.Other.At[0])
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
