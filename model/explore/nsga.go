package explore

import (
	"math"
	"slices"
	"strconv"
)

// The search is NSGA-II: K. Deb, A. Pratap, S. Agarwal and T. Meyarivan, "A Fast
// and Elitist Multiobjective Genetic Algorithm: NSGA-II", IEEE Trans. Evol.
// Comput. 6 (2002) 182, with its simulated binary crossover, polynomial
// mutation, crowding and constrained domination. Of the figures below the
// distribution indices and the probabilities are usual ones, from memory. Words
// and steps have operators of their own, and no design lives twice.
const (
	crossing      = 0.9 // probability that two parents mix
	crossingIndex = 15.0
	mutationIndex = 20.0
	retries       = 8 // to make a child that is not there yet
)

// gene is one thing that may vary: a number between two limits, or one of so
// many steps, of which words have no order.
type gene struct {
	lo, hi  float64
	steps   int
	ordered bool
}

// score is what a design is judged by. Less of each goal is better; a design
// with a violation above zero is not allowed.
type score struct {
	goals     []float64
	violation float64
}

type individual struct {
	x     []float64
	score score
	rank  int
	room  float64 // crowding distance
}

// evolution is one run, from one stream of random numbers.
type evolution struct {
	genes  []gene
	random draw
	size   int // of the population
	// evaluate scores designs, in their order.
	evaluate func(xs [][]float64) ([]score, error)
}

// run breeds so many generations from a first population that holds the seeds,
// and returns the last population, best first.
func (e *evolution) run(seeds [][]float64, generations int) ([]individual, error) {
	population, err := e.scored(e.first(seeds))
	if err != nil {
		return nil, err
	}
	population = survivors(population, e.size)
	for range generations {
		children, err := e.scored(e.breed(population))
		if err != nil {
			return nil, err
		}
		population = survivors(append(population, children...), e.size)
	}
	return population, nil
}

func (e *evolution) scored(xs [][]float64) ([]individual, error) {
	scores, err := e.evaluate(xs)
	if err != nil {
		return nil, err
	}
	is := make([]individual, len(xs))
	for i, x := range xs {
		is[i] = individual{x: x, score: scores[i]}
	}
	return is, nil
}

func (e *evolution) first(seeds [][]float64) [][]float64 {
	xs, seen := slices.Clone(seeds), map[string]bool{}
	for _, x := range seeds {
		seen[name(x)] = true
	}
	for try := 0; len(xs) < e.size && try < retries*e.size; try++ {
		x := make([]float64, len(e.genes))
		for k, g := range e.genes {
			x[k] = g.any(&e.random)
		}
		if !seen[name(x)] {
			seen[name(x)] = true
			xs = append(xs, x)
		}
	}
	return xs
}

// breed makes as many children as the population may hold, none of which is
// there already; fewer where the space is nearly used up.
func (e *evolution) breed(parents []individual) [][]float64 {
	seen := make(map[string]bool, 2*e.size)
	for _, p := range parents {
		seen[name(p.x)] = true
	}
	var children [][]float64
	for try := 0; len(children) < e.size && try < retries*e.size; try++ {
		a, b := slices.Clone(e.winner(parents).x), slices.Clone(e.winner(parents).x)
		e.cross(a, b)
		for _, x := range [][]float64{a, b} {
			e.mutate(x)
			if key := name(x); !seen[key] && len(children) < e.size {
				seen[key] = true
				children = append(children, x)
			}
		}
	}
	return children
}

// winner is the better of two, the less crowded among equals.
func (e *evolution) winner(ps []individual) individual {
	a, b := ps[e.random.below(len(ps))], ps[e.random.below(len(ps))]
	if b.rank < a.rank || b.rank == a.rank && b.room > a.room {
		return b
	}
	return a
}

// name tells designs apart to the last bit.
func name(x []float64) string {
	var b []byte
	for _, v := range x {
		b = strconv.AppendUint(b, math.Float64bits(v), 36)
		b = append(b, ' ')
	}
	return string(b)
}
