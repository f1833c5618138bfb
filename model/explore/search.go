package explore

import (
	"context"
	"math"
	"slices"

	"backspan/model/reading"
)

// Search asks for the best compromises: the designs of which none is better in
// one goal without being worse in another, among those that pass every check
// and keep to the limits. It finds good ones, and does not prove that there are
// no better.
type Search struct {
	Base     Base
	Free     []Free
	Goals    []Goal
	Limits   []Limit
	Effort   Effort
	readings []reading.Reading // of the goals, then of the limits
}

// Effort is how long a search looks. Each run begins anew, from a stream of
// random numbers of its own, so that one that went astray does not decide.
type Effort struct {
	Population, Generations, Runs int
	Seed                          uint64
}

// Free is a parameter that the search may set: anywhere in a range, or to one
// of its Levels.
type Free struct {
	Dial
	Low, High float64
	Levels    []float64
}

// Goal is a reading to make less or more of.
type Goal struct {
	reading.Reading
	More bool
}

// Limit is a reading that must keep to one side of a value.
type Limit struct {
	reading.Reading
	Side  reading.Side
	Value float64 // SI
}

// Run is what one run of a search found: its best compromises, or where no
// design is allowed the one that is nearest to it.
type Run struct {
	Found       []Candidate `json:"found"`
	Evaluations int         `json:"evaluations"`
}

// Candidate is a design of a search. Its figures are those of the goals, then
// of the limits.
type Candidate struct {
	Finding
	Violation float64 `json:"violation,omitempty"` // zero when it is allowed
}

// Total is how many runs there are.
func (s Search) Total() int { return s.Effort.Runs }

// Steps is how many designs one run tries, at most.
func (s Search) Steps() int { return s.Effort.Population * (s.Effort.Generations + 1) }

// Readings are those of the goals, then of the limits.
func (s Search) Readings() []reading.Reading { return s.readings }

// Run works a span of the runs; tried is told of each design.
func (s Search) Run(ctx context.Context, span Span, tried func(), take func(Run) error) error {
	for i := span.From; i < span.To; i++ {
		r, err := s.run(ctx, i, tried)
		if err == nil {
			err = take(r)
		}
		if err != nil {
			return err
		}
	}
	return nil
}

func (s Search) run(ctx context.Context, i int, tried func()) (Run, error) {
	found := map[string]Candidate{}
	evaluations := 0
	e := evolution{genes: s.genes(), random: drawOf(s.Effort.Seed, uint64(i)), size: s.Effort.Population}
	e.evaluate = func(xs [][]float64) ([]score, error) {
		evaluations += len(xs)
		scores := make([]score, 0, len(xs))
		err := each(ctx, Span{0, len(xs)}, func() func(int) Candidate {
			m := newMachine(s.Base.study, s.Base.variant).bind(s.Dials())
			return func(k int) Candidate { return s.judge(m, s.at(xs[k])) }
		}, func(k int, c Candidate) error {
			tried()
			found[name(xs[k])] = c
			scores = append(scores, s.score(c))
			return nil
		})
		return scores, err
	}
	last, err := e.run(s.seeds(), s.Effort.Generations)
	if err != nil {
		return Run{}, err
	}
	r := Run{Evaluations: evaluations}
	for _, p := range last {
		if p.rank == 0 && (p.score.violation == 0 || len(r.Found) == 0) {
			r.Found = append(r.Found, found[name(p.x)])
		}
	}
	return r, nil
}

// Dials are those of the free parameters.
func (s Search) Dials() []Dial {
	ds := make([]Dial, len(s.Free))
	for i, f := range s.Free {
		ds[i] = f.Dial
	}
	return ds
}

func (s Search) genes() []gene {
	gs := make([]gene, len(s.Free))
	for i, f := range s.Free {
		gs[i] = gene{lo: f.Low, hi: f.High, steps: len(f.Levels), ordered: !f.Worded()}
	}
	return gs
}

// at turns genes into values of the dials.
func (s Search) at(x []float64) []float64 {
	at := slices.Clone(x)
	for i, f := range s.Free {
		if f.Levels != nil {
			at[i] = f.Levels[int(x[i])]
		}
	}
	return at
}

// seeds is the base itself, as near as the ranges come to it.
func (s Search) seeds() [][]float64 {
	x := make([]float64, len(s.Free))
	for i, f := range s.Free {
		switch {
		case math.IsNaN(f.Now):
			return nil
		case f.Levels == nil:
			x[i] = math.Min(math.Max(f.Now, f.Low), f.High)
		default:
			x[i] = float64(nearestLevel(f.Levels, f.Now))
		}
	}
	return [][]float64{x}
}

func nearestLevel(levels []float64, x float64) (best int) {
	for i, l := range levels {
		if math.Abs(l-x) < math.Abs(levels[best]-x) {
			best = i
		}
	}
	return best
}
