package explore

import (
	"cmp"
	"math"
	"slices"

	"backspan/model"
	"backspan/model/reading"
)

// Criterion is a reading that counts in a decision, with its weight against
// the others (≥ 0).
type Criterion struct {
	Key    string
	Weight float64
}

// Standing is one variant in a decision.
type Standing struct {
	Variant int      // index of its outcome
	Score   float64  // 0, worst in all that counts, to 1, best in all
	First   float64  // share of the weightings tried in which it comes first
	Lacking []string // labels of readings that count and that it has not; each counts as the worst
	Failing int      // checks that fail
}

// Weightings is how many weightings a decision is tried with.
const Weightings = 4096

// spread is how far each weight is moved either way, as a share of it.
const spread = 0.5

// Decide ranks outcomes by the weighted mean of what counts, the best first.
// Within a reading the best of the variants counts 1 and the worst 0, in
// proportion between: so a variant more or less can turn the order of others,
// and a reading in which all are much alike counts as much as one in which they
// differ widely. Readings without a better and a worse do not count. How firm
// the order is, First tells: every weight is moved by up to half of it either
// way, independently, through Weightings points that fill that box evenly.
// Empty when nothing counts.
//
// Source: additive value function (Keeney & Raiffa, Decisions with Multiple
// Objectives, from memory); the points are a Kronecker sequence on the square
// roots of primes.
func Decide(outcomes []model.Outcome, of []Criterion) []Standing {
	values, weights := worths(outcomes, of)
	if len(weights) == 0 || len(outcomes) == 0 {
		return nil
	}
	standings := make([]Standing, len(outcomes))
	for i, o := range outcomes {
		standings[i] = Standing{Variant: i, Score: weighed(values[i], weights), Lacking: lacking(o, outcomes, of),
			Failing: reading.Count(o.Checks, reading.Fails)}
	}
	steps, moved := roots(len(weights)), make([]float64, len(weights))
	for k := range Weightings {
		for j, w := range weights {
			_, share := math.Modf(float64(k+1) * steps[j])
			moved[j] = w * (1 - spread + 2*spread*share)
		}
		standings[first(values, moved)].First += 1.0 / Weightings
	}
	slices.SortStableFunc(standings, func(a, b Standing) int { return cmp.Compare(b.Score, a.Score) })
	return standings
}

// worths is what each outcome is worth, 0 to 1, in each reading that counts,
// and the weights of these.
func worths(outcomes []model.Outcome, of []Criterion) (values [][]float64, weights []float64) {
	values = make([][]float64, len(outcomes))
	for _, c := range of {
		low, high, way := extent(outcomes, c.Key)
		if c.Weight <= 0 || way == reading.Neither {
			continue
		}
		weights = append(weights, c.Weight)
		for i, o := range outcomes {
			values[i] = append(values[i], worthIn(o, c.Key, low, high, way))
		}
	}
	return values, weights
}

func worthIn(o model.Outcome, key string, low, high float64, way reading.Better) float64 {
	r, ok := o.Reading(key)
	switch {
	case !ok || !r.Known():
		return 0
	case high == low:
		return 1
	case way == reading.Lower:
		return (high - r.Value) / (high - low)
	}
	return (r.Value - low) / (high - low)
}

// extent is the least and the greatest value of a reading, and which way is
// better; Neither when nobody has it.
func extent(outcomes []model.Outcome, key string) (low, high float64, way reading.Better) {
	low, high, way = math.Inf(1), math.Inf(-1), reading.Neither
	for _, o := range outcomes {
		if r, ok := o.Reading(key); ok && r.Known() {
			low, high, way = math.Min(low, r.Value), math.Max(high, r.Value), r.Better
		}
	}
	return low, high, way
}

func weighed(values, weights []float64) float64 {
	sum, of := 0.0, 0.0
	for j, w := range weights {
		sum += w * values[j]
		of += w
	}
	return sum / of
}

// first is the outcome with the best score, the earlier one of equals.
func first(values [][]float64, weights []float64) int {
	best, at := -1.0, 0
	for i := range values {
		if s := weighed(values[i], weights); s > best {
			best, at = s, i
		}
	}
	return at
}

// lacking names what counts and o has not, though another has.
func lacking(o model.Outcome, all []model.Outcome, of []Criterion) []string {
	var labels []string
	for _, c := range of {
		if r, ok := o.Reading(c.Key); c.Weight <= 0 || ok && r.Known() {
			continue
		}
		for _, other := range all {
			if r, ok := other.Reading(c.Key); ok && r.Known() {
				labels = append(labels, r.Label)
				break
			}
		}
	}
	return labels
}

// roots are the square roots of the first n primes.
func roots(n int) []float64 {
	var primes []int
	for p := 2; len(primes) < n; p++ {
		if !slices.ContainsFunc(primes, func(q int) bool { return p%q == 0 }) {
			primes = append(primes, p)
		}
	}
	steps := make([]float64, n)
	for i, p := range primes {
		steps[i] = math.Sqrt(float64(p))
	}
	return steps
}
