package explore

import (
	"cmp"
	"math"
	"slices"

	"backspan/model/explore"
	"backspan/model/unit"
)

// plot is one chart of designs, in SI.
type plot struct {
	along, across axis
	lines         []strand
	loose         bool    // points that no line joins
	level         float64 // a value to be reached; NaN when there is none
	legend        string  // what the letters of the lines stand for
	row           func(i int) (x float64, ok bool)
}

type axis struct {
	label string
	unit  unit.Unit
}

// strand is points that hang together. A letter has several lines where some of
// its designs have no figure.
type strand struct {
	nth    int // which letter
	points []point
}

type point struct {
	x, y float64
	row  int  // in the table; −1 for none
	bad  bool // a check fails
}

// mostLines is how many lines one chart shows.
const mostLines = 5

// sweepPlots are a chart for each reading over the parameter that has an order,
// with a line for each value of the other.
func sweepPlots(q explore.Sweep, fs []explore.Finding) (plots []plot) {
	along := 0
	if q.Axes[0].Worded() {
		along = 1
	}
	if along >= len(q.Axes) || q.Axes[along].Worded() || len(fs) < q.Total() {
		return nil
	}
	a := q.Axes[along]
	each, stride, step := 1, 1, 1 // lines, rows from one to the next, rows along one
	legend := ""
	if len(q.Axes) == 2 {
		other := q.Axes[1-along]
		each = len(other.Levels)
		legend = other.Label
		if along == 0 {
			step = each
		} else {
			stride = len(a.Levels)
		}
	}
	shown := evenly(each, mostLines)
	for n, k := range shown {
		if len(q.Axes) == 2 {
			legend += " " + letter(n) + " " + dialText(q.Axes[1-along].Dial, q.Axes[1-along].Levels[k])
		}
	}
	order := ascending(len(a.Levels), func(j int) float64 { return a.Levels[j] })
	for i, r := range q.Readings {
		p := plot{along: axis{a.Label, a.Unit}, across: axis{r.Label, r.Unit}, level: math.NaN(), legend: legend,
			row: func(row int) (float64, bool) { return fs[row].At[along], true }}
		for n, k := range shown {
			p.thread(n, len(a.Levels), func(j int) (point, bool) {
				row := k*stride + order[j]*step
				f := fs[row]
				return point{f.At[along], f.Figure(i).Value, row, !f.Sound()}, f.Figure(i).Known
			})
		}
		plots = append(plots, p)
	}
	return plots
}

// thread puts points on a line, and begins another where one is missing.
func (p *plot) thread(nth, n int, at func(i int) (point, bool)) {
	begun := false
	for i := range n {
		pt, ok := at(i)
		if !ok {
			begun = false
			continue
		}
		if !begun {
			p.lines = append(p.lines, strand{nth: nth})
			begun = true
		}
		last := &p.lines[len(p.lines)-1]
		last.points = append(last.points, pt)
	}
}

// solvePlots is the reading over the range looked through, with the target.
func solvePlots(q explore.Solve, sts []explore.Stretch, solved explore.Solved) []plot {
	p := plot{along: axis{q.Dial.Label, q.Dial.Unit}, across: axis{q.Reading.Label, q.Reading.Unit}, level: q.Target,
		row: func(i int) (float64, bool) { return solved.Shown[i].At[0], true }}
	p.thread(0, len(sts)+1, func(i int) (point, bool) {
		f := sts[max(i-1, 0)].Ends[min(i, 1)]
		return point{f.At[0], f.Figure(0).Value, -1, !f.Sound()}, f.Figure(0).Known
	})
	found := strand{nth: 0}
	for i, s := range solved.Shown {
		if s.Figure(0).Known {
			found.points = append(found.points, point{s.At[0], s.Figure(0).Value, i, !s.Sound()})
		}
	}
	for _, pt := range found.points {
		p.lines = append(p.lines, strand{nth: 0, points: []point{pt}})
	}
	return []plot{p}
}

// searchPlots are a chart for each pair of goals.
func searchPlots(q explore.Search, fs []explore.Finding) (plots []plot) {
	if len(fs) < 2 {
		return nil
	}
	for i := range q.Goals {
		for k := i + 1; k < len(q.Goals); k++ {
			x, y := q.Goals[i], q.Goals[k]
			p := plot{along: axis{x.Label, x.Unit}, across: axis{y.Label, y.Unit}, level: math.NaN(), loose: len(q.Goals) > 2,
				row: func(row int) (float64, bool) { return fs[row].Figure(i).Value, fs[row].Figure(i).Known }}
			order := ascending(len(fs), func(row int) float64 { return fs[row].Figure(i).Value })
			p.thread(0, len(fs), func(j int) (point, bool) {
				row, f := order[j], fs[order[j]]
				return point{f.Figure(i).Value, f.Figure(k).Value, row, !f.Sound()}, f.Figure(i).Known && f.Figure(k).Known
			})
			plots = append(plots, p)
		}
	}
	return plots
}

// ascending is n places in the order of a value of each.
func ascending(n int, value func(i int) float64) []int {
	order := make([]int, n)
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(value(a), value(b)) })
	return order
}

// firstThatMoves is the first chart whose lines are not level.
func firstThatMoves(plots []plot) int {
	for i, p := range plots {
		for _, l := range p.lines {
			for _, pt := range l.points {
				if pt.y != l.points[0].y {
					return i
				}
			}
		}
	}
	return 0
}

// evenly is up to most of n places, both ends among them.
func evenly(n, most int) []int {
	if n <= most {
		most = n
	}
	places := make([]int, most)
	for i := range places {
		if most > 1 {
			places[i] = i * (n - 1) / (most - 1)
		}
	}
	return places
}

func letter(nth int) string { return string(rune('a' + nth%26)) }
