package explore

import (
	"context"
	"fmt"
	"slices"

	"backspan/model/explore"
	"backspan/model/reading"
	"backspan/tui/components/roll"
	"backspan/tui/theme"
)

// sure is the answer of a tolerance run: readings, what moves the one that was
// last under the cursor, and checks, one row each.
type sure struct {
	explore.Result
	reading   int // the one that is charted
	rows      []sureRow
	oddsWidth int // of the longest odds
}

// sureRow is a heading, a reading, a doubt that moves a reading, or a check.
type sureRow struct {
	heading string
	reading int // −1 for none
	mover   int // −1 for none
	check   int // −1 for none
}

func sureAnswer(ctx context.Context, q explore.Tolerance, step func()) (*answer, error) {
	var samples []explore.Sample
	err := q.Run(ctx, explore.Span{To: q.Total()}, func(s explore.Sample) error {
		step()
		samples = append(samples, s)
		return nil
	})
	if err != nil {
		return nil, err
	}
	s := &sure{Result: q.Summary(samples)}
	s.reading = max(slices.IndexFunc(s.Distributions, func(d explore.Distribution) bool { return d.Bars != nil }), 0)
	s.lay()
	for _, j := range s.Judged {
		s.oddsWidth = max(s.oddsWidth, theme.Width(s.odds(j)))
	}
	a := &answer{sure: s, note: s.Note()}
	a.roll.Set(len(s.rows), s.titled)
	a.roll.To(1 + s.reading) // behind their heading
	return a, nil
}

// lay makes the rows for the reading that is charted.
func (s *sure) lay() {
	s.rows = []sureRow{{heading: "Readings"}}
	for i := range s.Distributions {
		s.rows = append(s.rows, sureRow{reading: i, mover: -1, check: -1})
	}
	if d, ok := s.charted(); ok {
		s.rows = append(s.rows, sureRow{heading: "What moves it: " + d.Reading.Label})
		for i := range d.Contributions {
			s.rows = append(s.rows, sureRow{reading: -1, mover: i, check: -1})
		}
	}
	s.rows = append(s.rows, sureRow{heading: "Checks, in how many of the machines"})
	for i := range s.Judged {
		s.rows = append(s.rows, sureRow{reading: -1, mover: -1, check: i})
	}
}

func (s *sure) charted() (explore.Distribution, bool) {
	if s.reading >= len(s.Distributions) {
		return explore.Distribution{}, false
	}
	return s.Distributions[s.reading], true
}

// look charts the reading under the cursor, if there is one.
func (s *sure) look(r *roll.Model) {
	if r.Cursor < len(s.rows) {
		if row := s.rows[r.Cursor]; row.heading == "" && row.reading >= 0 && row.reading != s.reading {
			s.reading = row.reading
			s.lay()
		}
	}
}

// leap goes to another reading.
func (s *sure) leap(r *roll.Model, n int) {
	if len(s.Distributions) == 0 {
		return
	}
	s.reading = (s.reading + n + len(s.Distributions)) % len(s.Distributions)
	s.lay()
	r.Set(len(s.rows), s.titled)
	r.To(1 + s.reading) // behind their heading
}

func (s *sure) titled(i int) bool { return s.rows[i].heading != "" }

// low, middle and high are what 5, 50 and 95 of a hundred machines are below.
func lowMiddleHigh(d explore.Distribution) (low, middle, high string) {
	if d.Samples < 2 {
		return "-", "-", "-"
	}
	u := d.Reading.Unit
	return u.Number(d.P5), u.Number(d.P50), u.Text(d.P95)
}

// odds says how often a check holds.
func (s *sure) odds(j explore.Judged) string {
	share := func(n int) string { return explore.ShareText(n, s.Samples) }
	switch s.Samples {
	case j.NotRated:
		return string(reading.NotRated)
	case j.Absent:
		return "not there"
	}
	text := "holds in " + share(j.Holds)
	for _, part := range []struct {
		word string
		n    int
	}{{"thin in", j.Thin}, {"fails in", j.Fails}, {"not rated in", j.NotRated}, {"not there in", j.Absent}} {
		if part.n > 0 {
			text += ", " + part.word + " " + share(part.n)
		}
	}
	return text
}

// mover says what a doubt is, its part of the variance, and what more of it does
// to the reading.
func mover(c explore.Contribution) (label, share, way string) {
	way = "lowers it"
	if c.Rises {
		way = "raises it"
	}
	if c.Share < 0.005 { // shown as 0
		way = ""
	}
	return c.Spread.Label(), fmt.Sprintf("%.0f %%", 100*c.Share), way
}

// table is the whole, for a clipboard.
func (s *sure) table() [][]string {
	rows := [][]string{{"Reading", "As set", "5 % below", "Half below", "95 % below"}}
	for _, d := range s.Distributions {
		low, middle, high := lowMiddleHigh(d)
		rows = append(rows, []string{d.Reading.Label, d.Reading.Text(), low, middle, high})
	}
	for _, d := range s.Distributions {
		rows = append(rows, []string{"What moves it: " + d.Reading.Label})
		for _, c := range d.Contributions {
			label, share, _ := mover(c)
			rows = append(rows, []string{label, c.Spread.Text(), share})
		}
	}
	rows = append(rows, []string{"Check", "Machines"})
	for _, j := range s.Judged {
		rows = append(rows, []string{j.Label, s.odds(j)})
	}
	return rows
}
