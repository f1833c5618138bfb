package explore

import (
	"context"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"backspan/model"
	"backspan/model/explore"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// designs is an answer that is a list of machines.
type designs struct {
	dials         []explore.Dial
	readings      []reading.Reading
	rows          []explore.Finding
	remarks       []string // one a row, or none at all
	plots         []plot
	readingsFirst bool // in the table
	found         func(row int) (model.Variant, error)
}

func sweepAnswer(ctx context.Context, q explore.Sweep, step func()) (*answer, error) {
	d := &designs{readings: q.Readings}
	d.found = func(row int) (model.Variant, error) { return q.Found(d.rows[row].At) }
	for _, a := range q.Axes {
		d.dials = append(d.dials, a.Dial)
	}
	err := q.Run(ctx, explore.Span{To: q.Total()}, func(f explore.Finding) error {
		step()
		d.rows = append(d.rows, f)
		return nil
	})
	d.plots = sweepPlots(q, d.rows)
	return &answer{designs: d, note: q.Note(d.rows), chart: firstThatMoves(d.plots)}, err
}

func solveAnswer(ctx context.Context, q explore.Solve, step func()) (*answer, error) {
	var sts []explore.Stretch
	err := q.Run(ctx, explore.Span{To: q.Total()}, func(st explore.Stretch) error {
		step()
		sts = append(sts, st)
		return nil
	})
	if err != nil {
		return nil, err
	}
	solved := q.Sum(sts)
	d := &designs{dials: []explore.Dial{q.Dial}, readings: []reading.Reading{q.Reading}}
	d.found = func(row int) (model.Variant, error) { return q.Found(solved, row) }
	for i, s := range solved.Shown {
		d.rows = append(d.rows, s.Finding)
		d.remarks = append(d.remarks, q.Remark(solved, i))
	}
	d.plots = solvePlots(q, sts, solved)
	return &answer{designs: d, note: q.Note(solved)}, nil
}

func searchAnswer(ctx context.Context, q explore.Search, step func()) (*answer, error) {
	var rs []explore.Run
	err := q.Run(ctx, explore.Span{To: q.Total()}, step, func(r explore.Run) error {
		rs = append(rs, r)
		return nil
	})
	if err != nil {
		return nil, err
	}
	best, allowed := q.Best(rs)
	d := &designs{dials: q.Dials(), readings: q.Readings(), readingsFirst: true}
	d.found = func(row int) (model.Variant, error) { return q.Found(d.rows[row].At, allowed) }
	for _, c := range best {
		d.rows = append(d.rows, c.Finding)
	}
	d.plots = searchPlots(q, d.rows)
	return &answer{designs: d, note: q.Note(best, allowed)}, nil
}

// heads name the columns: the dials, the readings and the verdict.
func (d *designs) heads() []string {
	var heads []string
	for _, l := range d.dials {
		heads = append(heads, l.Label)
	}
	for _, r := range d.readings {
		heads = append(heads, r.Label)
	}
	return heads
}

// cells are a design's figures in the order of the heads.
func (d *designs) cells(f explore.Finding) []string {
	var cells []string
	for i, l := range d.dials {
		cells = append(cells, dialText(l, f.At[i]))
	}
	for i, r := range d.readings {
		cells = append(cells, slotText(f.Figure(i), r.Unit))
	}
	return cells
}

// dialText is a dial's value in few figures; a design that is taken has them
// all.
func dialText(d explore.Dial, x float64) string {
	value, err := strconv.ParseFloat(d.Bare(x), 64)
	if d.Stepped() || err != nil {
		return d.Text(x)
	}
	const figures = 5
	return strings.TrimSpace(strconv.FormatFloat(value, 'g', figures, 64) + " " + d.Unit.Symbol)
}

func slotText(s param.Slot, u unit.Unit) string {
	if !s.Known {
		return "-"
	}
	return u.Text(s.Value)
}

// order is that of the columns in sight: of a search the goals first, else the
// parameters and then the reading that is charted.
func (d *designs) order(chart int) []int {
	n := len(d.dials) + len(d.readings)
	order := make([]int, n)
	for i := range order {
		order[i] = i
		if d.readingsFirst {
			order[i] = (i + len(d.dials)) % n
		}
	}
	if charted := len(d.dials) + chart; !d.readingsFirst && charted < n {
		order = slices.Insert(slices.Delete(order, charted, charted+1), len(d.dials), charted)
	}
	return order
}

// verdict says how a row's checks are, and what else is to be said of it.
func (d *designs) verdict(i int) string {
	s := d.rows[i].Verdict()
	if i < len(d.remarks) {
		s += "; " + d.remarks[i]
	}
	return s
}

// brief is a row's verdict in a word or two; the design under the cursor has it
// in full.
func (d *designs) brief(i int) string {
	switch f := d.rows[i]; {
	case f.Refused != "":
		return "no such design"
	case f.Fails > 1:
		return fmt.Sprintf("%d fail", f.Fails)
	case f.Fails == 1:
		return "fails"
	}
	return d.verdict(i)
}

// mostCopied is how many designs go into a text: more than a clipboard takes.
const mostCopied = 2000

// table is the whole, for a clipboard.
func (d *designs) table() [][]string {
	rows := [][]string{append(d.heads(), "Checks")}
	for i, f := range d.rows[:min(len(d.rows), mostCopied)] {
		rows = append(rows, append(d.cells(f), d.verdict(i)))
	}
	return rows
}
