package explore

import (
	"math"
	"testing"
)

// problem is a published test problem whose true front is known.
type problem struct {
	name   string
	genes  []gene
	f      func(x []float64) score
	front  func(f1 float64) float64 // the true second goal at a first goal
	f1     [2]float64               // where the front begins and ends
	mean   float64                  // mean distance to the front allowed, as a share of its width
	widest float64                  // widest gap allowed along the front, as a share
}

func unitGenes(n int) []gene {
	gs := make([]gene, n)
	for i := range gs {
		gs[i].hi = 1
	}
	return gs
}

func zdt(h func(f1, g float64) float64) func(x []float64) score {
	return func(x []float64) score {
		sum := 0.0
		for _, v := range x[1:] {
			sum += v
		}
		g := 1 + 9*sum/float64(len(x)-1)
		return score{goals: []float64{x[0], g * h(x[0], g)}}
	}
}

// Problems: E. Zitzler, K. Deb and L. Thiele, "Comparison of Multiobjective
// Evolutionary Algorithms: Empirical Results", Evol. Comput. 8 (2000) 173, ZDT1
// and ZDT2 (definitions and fronts seen in documentation that reprints them);
// T. T. Binh and U. Korn, MENDEL 1997, with the front of K. Deb, Multi-Objective
// Optimization Using Evolutionary Algorithms (2001), and its CONSTR (both from
// memory). NSGA-II's own paper found mean distances of 0.033 and 0.072 on ZDT1
// and ZDT2 after as many evaluations (from memory); later programs a tenth.
var problems = []problem{
	{"ZDT1", unitGenes(30), zdt(func(f, g float64) float64 { return 1 - math.Sqrt(f/g) }),
		func(f float64) float64 { return 1 - math.Sqrt(f) }, [2]float64{0, 1}, 0.0025, 0.03},
	{"ZDT2", unitGenes(30), zdt(func(f, g float64) float64 { return 1 - f/g*(f/g) }),
		func(f float64) float64 { return 1 - f*f }, [2]float64{0, 1}, 0.0025, 0.03},
	{"Binh-Korn", []gene{{hi: 5}, {hi: 3}}, func(x []float64) score {
		a, b := x[0], x[1]
		return score{[]float64{4*a*a + 4*b*b, (a-5)*(a-5) + (b-5)*(b-5)},
			math.Max(0, (a-5)*(a-5)+b*b-25) + math.Max(0, 7.7-(a-8)*(a-8)-(b+3)*(b+3))}
	}, func(f float64) float64 { // x1 = x2 up to 3, then x2 stays
		if f <= 72 {
			x := math.Sqrt(f / 8)
			return 2 * (x - 5) * (x - 5)
		}
		x := math.Sqrt(f/4 - 9)
		return (x-5)*(x-5) + 4
	}, [2]float64{0, 136}, 0.0025, 0.03},
	{"CONSTR", []gene{{lo: 0.1, hi: 1}, {hi: 5}}, func(x []float64) score {
		a, b := x[0], x[1]
		return score{[]float64{a, (1 + b) / a}, math.Max(0, 6-b-9*a) + math.Max(0, 1+b-9*a)}
	}, func(f float64) float64 { // along the first constraint, then x2 = 0
		if f < 2.0/3 {
			return (7 - 9*f) / f
		}
		return 1 / f
	}, [2]float64{7.0 / 18, 1}, 0.0025, 0.03},
}

func (p problem) solve(t testing.TB, seed uint64) []individual {
	t.Helper()
	e := evolution{genes: p.genes, random: drawOf(seed), size: 100, evaluate: func(xs [][]float64) ([]score, error) {
		ss := make([]score, len(xs))
		for i, x := range xs {
			for k, g := range p.genes {
				if x[k] < g.lo || x[k] > g.hi {
					t.Fatalf("%s: gene %d is %g", p.name, k, x[k])
				}
			}
			ss[i] = p.f(x)
		}
		return ss, nil
	}}
	ps, err := e.run(nil, 249)
	if err != nil {
		t.Fatal(err)
	}
	return ps
}

// distances of each found point to the true front, both goals as a share of
// the front's width, and the widest gap between neighbours on the front.
func (p problem) distances(ps []individual) (mean, gap float64) {
	const fine = 2000
	wide := [2]float64{p.f1[1] - p.f1[0], math.Abs(p.front(p.f1[1]) - p.front(p.f1[0]))}
	for _, i := range ps {
		least := math.Inf(1)
		for n := range fine + 1 {
			f := p.f1[0] + wide[0]*float64(n)/fine
			least = math.Min(least, math.Hypot((i.score.goals[0]-f)/wide[0], (i.score.goals[1]-p.front(f))/wide[1]))
		}
		mean += least / float64(len(ps))
	}
	for n := range fine + 1 { // the farthest that the true front is from any found point
		f, least := p.f1[0]+wide[0]*float64(n)/fine, math.Inf(1)
		for _, i := range ps {
			least = math.Min(least, math.Hypot((i.score.goals[0]-f)/wide[0], (i.score.goals[1]-p.front(f))/wide[1]))
		}
		gap = math.Max(gap, least)
	}
	return mean, gap
}

func TestSearchFindsKnownFronts(t *testing.T) {
	for _, p := range problems {
		for seed := range uint64(3) {
			ps := p.solve(t, seed)
			for _, i := range ps {
				if i.score.violation > 0 || i.rank != 0 {
					t.Errorf("%s: %+v is left", p.name, i)
				}
			}
			mean, gap := p.distances(ps)
			t.Logf("%s, seed %d: %d points, mean distance %.5f, farthest point of the front %.4f", p.name, seed, len(ps), mean, gap)
			if !(mean <= p.mean) || !(gap <= p.widest) || len(ps) != 100 {
				t.Errorf("%s: beyond %g and %g", p.name, p.mean, p.widest)
			}
		}
	}
}

// Between its ends a count moves whenever it mutates, and a word always.
func TestMutationMovesStepsAndWords(t *testing.T) {
	for _, g := range []gene{{steps: 9, ordered: true}, {steps: 9}} {
		e := evolution{genes: []gene{g}, random: drawOf(1)}
		far := 0
		for range 500 {
			x := []float64{4}
			e.mutate(x)
			if x[0] == 4 || x[0] < 0 || x[0] > 8 || x[0] != math.Trunc(x[0]) {
				t.Fatalf("%+v: from 4 to %g", g, x[0])
			}
			if math.Abs(x[0]-4) > 2 { // half of the other words are
				far++
			}
		}
		if g.ordered == (far > 150) {
			t.Errorf("%+v: %d of 500 go far", g, far)
		}
	}
}
