package explore

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/stat"

	"backspan/model/reading"
)

// Distribution is how a reading turned out, in SI.
type Distribution struct {
	Reading       reading.Reading
	Samples       int // that have a value
	Mean          float64
	Deviation     float64 // standard deviation
	P5, P50, P95  float64 // 5 %, 50 % and 95 % lie below
	Least, Most   float64
	Bars          []int // samples in equal steps from Least to Most; nil where all are alike
	Contributions []Contribution
}

// Contribution is the part of a reading's variance that goes with one spread:
// its correlation squared, which for a straight dependence on independent
// spreads is the first-order share. Shares that add up to much less than 1 tell
// of curvature or of spreads that act together.
type Contribution struct {
	Spread Spread
	Share  float64
	Rises  bool // the reading rises with it
}

// Judged is how one check turned out, in numbers of samples.
type Judged struct {
	Key, Label                           string
	Holds, Thin, Fails, NotRated, Absent int
}

// Result is what a tolerance run found.
type Result struct {
	Distributions []Distribution
	Judged        []Judged
	Samples       int
	Sound         int // samples in which no check fails
	Clipped       int // samples with a value at the end of its allowed range
	Methods       int // spreads of readings, which move these alone and no check
}

// Summary works the samples up.
func (t Tolerance) Summary(samples []Sample) Result {
	r := Result{Samples: len(samples), Judged: t.judge(samples)}
	for k, of := range t.Readings {
		var ys []float64
		xs := make([][]float64, len(t.Spreads))
		for _, s := range samples {
			if !s.Figures[k].Known {
				continue
			}
			ys = append(ys, s.Figures[k].Value)
			for i, x := range s.Drawn {
				xs[i] = append(xs[i], x)
			}
		}
		d := distribution(ys, xs, t.Spreads)
		d.Reading = of
		r.Distributions = append(r.Distributions, d)
	}
	for _, s := range t.Spreads {
		if s.ofReading() {
			r.Methods++
		}
	}
	for _, s := range samples {
		if s.sound() {
			r.Sound++
		}
		if s.Clipped {
			r.Clipped++
		}
	}
	return r
}

func (s Sample) sound() bool {
	return s.Refused == "" && len(s.Others) == 0 && !slices.Contains([]byte(s.Verdicts), letterFails)
}

// distribution needs at least two values.
func distribution(ys []float64, xs [][]float64, spreads []Spread) Distribution {
	d := Distribution{Samples: len(ys)}
	if len(ys) < 2 {
		return d
	}
	sorted := slices.Clone(ys)
	slices.Sort(sorted)
	d.P5, d.P50, d.P95 = quantile(sorted, 0.05), quantile(sorted, 0.5), quantile(sorted, 0.95)
	d.Least, d.Most = sorted[0], sorted[len(sorted)-1]
	if d.Least == d.Most { // what is left of a mean by rounding is no spread
		d.Mean = d.Least
		return d
	}
	d.Mean, d.Deviation = stat.MeanStdDev(ys, nil)
	for i, s := range spreads {
		c := Contribution{Spread: s}
		if r := stat.Correlation(xs[i], ys, nil); !math.IsNaN(r) {
			c.Share, c.Rises = math.Min(r*r, 1), r > 0
		}
		d.Contributions = append(d.Contributions, c)
	}
	slices.SortStableFunc(d.Contributions, func(a, b Contribution) int { return cmp.Compare(b.Share, a.Share) })
	d.Bars = counted(sorted)
	return d
}

// counted counts values in equal steps from the first to the last.
func counted(sorted []float64) []int {
	const most = 24
	least, width := sorted[0], sorted[len(sorted)-1]-sorted[0]
	counts := make([]int, most)
	for _, y := range sorted {
		counts[min(int((y-least)/width*most), most-1)]++
	}
	return counts
}

// quantile is between the two values around it.
func quantile(sorted []float64, p float64) float64 {
	at := p * float64(len(sorted)-1)
	i := min(int(at), len(sorted)-2)
	return sorted[i] + (at-float64(i))*(sorted[i+1]-sorted[i])
}

// judge counts verdicts, the checks that fail most often first.
func (t Tolerance) judge(samples []Sample) []Judged {
	var js []Judged
	at := map[string]int{}
	place := func(key, label string) *Judged {
		i, ok := at[key]
		if !ok {
			i = len(js)
			at[key], js = i, append(js, Judged{Key: key, Label: label})
		}
		return &js[i]
	}
	for i, c := range t.Base.outcome.Checks {
		j := place(c.Key, c.Label)
		for _, s := range samples {
			j.count(s, i)
		}
	}
	for _, s := range samples {
		for _, key := range s.Others {
			place(key, key).Fails++
		}
	}
	slices.SortStableFunc(js, func(a, b Judged) int { return cmp.Or(b.Fails-a.Fails, b.Thin-a.Thin) })
	return js
}

func (j *Judged) count(s Sample, i int) {
	if i >= len(s.Verdicts) {
		j.Absent++
		return
	}
	switch s.Verdicts[i] {
	case letterHolds:
		j.Holds++
	case letterThin:
		j.Thin++
	case letterFails:
		j.Fails++
	case letterNotRated:
		j.NotRated++
	default:
		j.Absent++
	}
}
