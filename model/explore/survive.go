package explore

import (
	"cmp"
	"math"
	"slices"
)

// survivors are the best of a population, whole fronts first and then the least
// crowded of the next, in that order.
func survivors(ps []individual, size int) []individual {
	kept := make([]individual, 0, size)
	for _, front := range ranked(ps) {
		crowd(ps, front)
		if len(kept)+len(front) > size {
			slices.SortStableFunc(front, func(i, j int) int { return cmp.Compare(ps[j].room, ps[i].room) })
			front = front[:size-len(kept)]
		}
		for _, i := range front {
			kept = append(kept, ps[i])
		}
	}
	return kept
}

// crowd gives each of a front its room: how far apart its neighbours are in
// each goal, as a share of the front's width; the ends have all there is.
func crowd(ps []individual, front []int) {
	for _, i := range front {
		ps[i].room = 0
	}
	order := slices.Clone(front)
	for k := range ps[front[0]].score.goals {
		goal := func(n int) float64 { return ps[order[n]].score.goals[k] }
		slices.SortStableFunc(order, func(i, j int) int { return cmp.Compare(ps[i].score.goals[k], ps[j].score.goals[k]) })
		last := len(order) - 1
		width := goal(last) - goal(0)
		ps[order[0]].room, ps[order[last]].room = math.Inf(1), math.Inf(1)
		for n := 1; n < last && width > 0; n++ {
			ps[order[n]].room += (goal(n+1) - goal(n-1)) / width
		}
	}
}

// any is a value anywhere in the range.
func (g gene) any(d *draw) float64 {
	if g.steps > 0 {
		return float64(d.below(g.steps))
	}
	return g.lo + (g.hi-g.lo)*d.share()
}

func (g gene) limits() (lo, hi float64) {
	if g.steps > 0 {
		return 0, float64(g.steps - 1)
	}
	return g.lo, g.hi
}

func (g gene) fit(x float64) float64 {
	lo, hi := g.limits()
	if g.steps > 0 {
		x = math.Round(x)
	}
	return math.Min(math.Max(x, lo), hi)
}

// cross mixes two designs in place: numbers by simulated binary crossover
// within their limits, words by exchange.
func (e *evolution) cross(a, b []float64) {
	if !e.random.chance(crossing) {
		return
	}
	for k, g := range e.genes {
		switch {
		case !e.random.chance(0.5) || a[k] == b[k]:
		case g.steps > 0 && !g.ordered:
			a[k], b[k] = b[k], a[k]
		default:
			lo, hi := math.Min(a[k], b[k]), math.Max(a[k], b[k])
			least, most := g.limits()
			u := e.random.share()
			low := (lo + hi - blend(u, (lo-least)/(hi-lo))*(hi-lo)) / 2
			high := (lo + hi + blend(u, (most-hi)/(hi-lo))*(hi-lo)) / 2
			if e.random.chance(0.5) {
				low, high = high, low
			}
			a[k], b[k] = g.fit(low), g.fit(high)
		}
	}
}

// blend is how far apart the children are over how far the parents were, with
// so much space left beyond the parents, as a share of their distance.
func blend(u, space float64) float64 {
	alpha := 2 - math.Pow(1+2*space, -(crossingIndex+1))
	if u <= 1/alpha {
		return math.Pow(u*alpha, 1/(crossingIndex+1))
	}
	return math.Pow(1/(2-u*alpha), 1/(crossingIndex+1))
}

// mutate changes about one gene of a design in place.
func (e *evolution) mutate(x []float64) {
	for k, g := range e.genes {
		if !e.random.chance(1 / float64(len(e.genes))) {
			continue
		}
		switch {
		case g.steps == 1 || g.steps == 0 && g.lo == g.hi:
		case g.steps > 0 && !g.ordered:
			x[k] = float64((int(x[k]) + 1 + e.random.below(g.steps-1)) % g.steps)
		default:
			was := x[k]
			if x[k] = g.fit(e.shifted(g, was)); x[k] == was && g.steps > 0 {
				x[k] = g.fit(was + 1 - 2*float64(e.random.below(2)))
			}
		}
	}
}

// shifted is a value moved by polynomial mutation within its limits.
func (e *evolution) shifted(g gene, x float64) float64 {
	lo, hi := g.limits()
	u, power := e.random.share(), 1/(mutationIndex+1)
	if u < 0.5 {
		rest := math.Pow(1-(x-lo)/(hi-lo), mutationIndex+1)
		return x + (math.Pow(2*u+(1-2*u)*rest, power)-1)*(hi-lo)
	}
	rest := math.Pow(1-(hi-x)/(hi-lo), mutationIndex+1)
	return x + (1-math.Pow(2*(1-u)+2*(u-0.5)*rest, power))*(hi-lo)
}
