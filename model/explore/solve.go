package explore

import (
	"context"
	"fmt"
	"math"
	"strings"

	"backspan/model/reading"
)

const (
	usualStretches = 100
	// A root is closed in to this share of the range, and taken for a jump when
	// the reading still misses by this share of what it changes in the stretch.
	rootWidth, rootMiss = 1e-10, 1e-4
)

// Solve asks for the values of one parameter that bring a reading to a target.
// The range is looked through in stretches; one whose ends lie on either side
// of the target holds a solution, or an odd number of them of which one is
// found. Two solutions within one stretch are not seen.
type Solve struct {
	Base    Base
	Dial    Dial
	Reading reading.Reading
	Target  float64 // SI
	Levels  []float64
}

// Stretch is what lies between two neighbouring values of the scan.
type Stretch struct {
	Ends  [2]Finding `json:"ends"`
	Found []Solution `json:"found,omitempty"`
}

// Solution is a value of the parameter that brings the reading to its target,
// or past it.
type Solution struct {
	Finding
	// Past says that the reading goes past the target here without meeting it:
	// it jumps, or the parameter takes whole numbers only. Other is then the
	// value on the other side.
	Past  bool    `json:"past,omitempty"`
	Other Finding `json:"other"`
}

// NewSolve reads the question as a person gave it. Zero stretches are a hundred.
func NewSolve(b Base, change, key, to string, stretches int) (Solve, error) {
	s := Solve{Base: b}
	d, lo, hi, err := b.Range(change)
	if err == nil {
		s.Reading, s.Target, err = b.Target(key + "=" + to)
	}
	if err != nil {
		return s, err
	}
	if stretches == 0 && !d.Stepped() {
		stretches = usualStretches
	}
	if stretches < 0 || stretches >= MostLevels {
		return s, fmt.Errorf("look in 1 to %d stretches, not %d", MostLevels-1, stretches)
	}
	if stretches > 0 {
		stretches++
	}
	s.Dial = d
	s.Levels, err = d.evenly(lo, hi, stretches)
	return s, err
}

// Target reads "KEY=700 N": a reading and the value asked of it, SI.
func (b Base) Target(text string) (r reading.Reading, si float64, err error) {
	key, value, _ := strings.Cut(text, "=")
	if r, err = b.Reading(strings.TrimSpace(key)); err != nil {
		return r, 0, err
	}
	if si, err = parse(value, r.Unit); err != nil {
		err = fmt.Errorf("target of %s: %w", r.Label, err)
	}
	return r, si, err
}

// Total is how many stretches are looked through.
func (s Solve) Total() int { return len(s.Levels) - 1 }

// Run looks through a span of the stretches.
func (s Solve) Run(ctx context.Context, span Span, take func(Stretch) error) error {
	ends, err := gather(ctx, Span{span.From, span.To + 1}, func() func(int) Finding {
		m := s.machine()
		return func(i int) Finding { return s.find(m, s.Levels[i]) }
	})
	if err != nil {
		return err
	}
	return each(ctx, span, func() func(int) Stretch {
		m := s.machine()
		return func(i int) Stretch { return s.look(m, i, ends[i-span.From], ends[i-span.From+1]) }
	}, func(_ int, st Stretch) error { return take(st) })
}

func (s Solve) machine() *machine {
	return newMachine(s.Base.study, s.Base.variant).bind([]Dial{s.Dial})
}

func (s Solve) find(m *machine, x float64) Finding {
	return m.find([]float64{x}, []reading.Reading{s.Reading})
}

// Miss is how far a design is from the target, in SI; ok is false where it has
// no such reading.
func (s Solve) Miss(f Finding) (miss float64, ok bool) {
	return f.Figures[0].Value - s.Target, f.Figures[0].Known
}

// look finds the solutions from the left end of a stretch up to, and only in
// the last with, its right end.
func (s Solve) look(m *machine, i int, left, right Finding) Stretch {
	st := Stretch{Ends: [2]Finding{left, right}}
	a, okA := s.Miss(left)
	b, okB := s.Miss(right)
	if okA && a == 0 {
		st.Found = append(st.Found, Solution{Finding: left})
	}
	if okA && okB && a*b < 0 {
		st.Found = append(st.Found, s.between(m, left, right, a, b)...)
	}
	if okB && b == 0 && i == s.Total()-1 {
		st.Found = append(st.Found, Solution{Finding: right})
	}
	return st
}

// between is what there is between two designs on either side of the target;
// nothing where the reading has no value on the way to it.
func (s Solve) between(m *machine, left, right Finding, a, b float64) []Solution {
	if s.Dial.Stepped() {
		return []Solution{nearer(left, right, a, b)}
	}
	width := rootWidth * (s.Levels[s.Total()] - s.Levels[0])
	r, ok := bracket{left.At[0], right.At[0], a, b}.narrow(width, func(x float64) (float64, bool) { return s.Miss(s.find(m, x)) })
	if !ok {
		return nil
	}
	if x, y := r.best(); math.Abs(y) <= rootMiss*math.Abs(b-a) {
		return []Solution{{Finding: s.find(m, x)}}
	}
	return []Solution{nearer(s.find(m, r.a), s.find(m, r.b), r.ya, r.yb)}
}

func nearer(left, right Finding, a, b float64) Solution {
	if math.Abs(b) < math.Abs(a) {
		left, right = right, left
	}
	return Solution{Finding: left, Past: true, Other: right}
}

// Nearest is the scanned design that comes nearest to the target; ok is false
// where none has the reading.
func (s Solve) Nearest(sts []Stretch) (nearest Finding, ok bool) {
	least := math.Inf(1)
	for _, st := range sts {
		for _, f := range st.Ends {
			if miss, known := s.Miss(f); known && math.Abs(miss) < least {
				nearest, ok, least = f, true, math.Abs(miss)
			}
		}
	}
	return nearest, ok
}
