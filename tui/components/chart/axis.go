package chart

import (
	"math"
	"strconv"
)

// axis is a range with ticks at round numbers.
type axis struct {
	from, to float64
	ticks    []float64
	decimals int
}

// step is the round number, one, two or five of a power of ten, at which a
// range has at most n ticks.
func step(span float64, n int) float64 {
	raw := span / float64(n)
	ten := math.Pow(10, math.Floor(math.Log10(raw)))
	for _, m := range []float64{1, 2, 5} {
		if m*ten >= raw {
			return m * ten
		}
	}
	return 10 * ten
}

// leastSpan is the narrowest range with ticks of its own: between the ends of a
// narrower one there is hardly a number left to count in.
func leastSpan(from, to float64) float64 {
	const share, least = 1e-9, 1e-12
	return math.Max(share*math.Max(math.Abs(from), math.Abs(to)), least)
}

// tight is an axis that ends where the data end.
func tight(from, to float64, n int) axis {
	if !(to-from > leastSpan(from, to)) {
		from, to = from-math.Max(math.Abs(from), 1)*0.05, to+math.Max(math.Abs(to), 1)*0.05
	}
	by := step(to-from, n)
	a := axis{from: from, to: to, decimals: max(0, -int(math.Floor(math.Log10(by)+1e-9)))}
	for i := math.Ceil(from/by - 1e-9); i*by <= to+1e-9*by; i++ {
		a.ticks = append(a.ticks, i*by)
	}
	return a
}

// wide is an axis that ends at ticks, and begins at nought where the data come
// near it.
func wide(from, to float64, n int) axis {
	if from > 0 && from < 0.5*to {
		from = 0
	}
	a := tight(from, to, n)
	by := step(a.to-a.from, n)
	return tight(math.Floor(a.from/by+1e-9)*by, math.Ceil(a.to/by-1e-9)*by, n)
}

// share is how far along the axis a value lies, 0..1 on it.
func (a *axis) share(v float64) float64 { return (v - a.from) / (a.to - a.from) }

func (a *axis) holds(v float64) bool { return v >= a.from && v <= a.to }

func (a *axis) text(v float64) string {
	s := strconv.FormatFloat(v, 'f', a.decimals, 64)
	if s == "-0" {
		return "0"
	}
	return s
}

func (a *axis) widest() int {
	n := 0
	for _, t := range a.ticks {
		n = max(n, len(a.text(t)))
	}
	return n
}
