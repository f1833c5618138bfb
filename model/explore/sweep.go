package explore

import (
	"context"
	"fmt"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/reading"
)

// MostPoints is how many designs one sweep may try.
const MostPoints = 1_000_000

// Sweep is one or two parameters, and the readings looked at. With two, the
// second turns faster.
type Sweep struct {
	Base     Base
	Axes     []Axis
	Readings []reading.Reading // as the base has them: key, label, unit
}

// Finding is what one design gives. It is the same for the same design,
// wherever it is found.
type Finding struct {
	At      []float64    `json:"at"`                // the dials, as they were turned
	Refused string       `json:"refused,omitempty"` // why there is no such design
	Fails   int          `json:"fails,omitempty"`   // checks that fail
	First   string       `json:"first,omitempty"`   // the first of them, in the way of the power
	Figures []param.Slot `json:"figures,omitempty"` // the readings asked for
}

// Sound reports whether there is such a design and no check fails.
func (f Finding) Sound() bool { return f.Refused == "" && f.Fails == 0 }

// NewSweep reads the axes and readings as a person gave them.
func NewSweep(b Base, over, readings []string) (Sweep, error) {
	s := Sweep{Base: b}
	if len(over) < 1 || len(over) > 2 {
		return s, fmt.Errorf("give one or two parameters to sweep over, not %d", len(over))
	}
	for _, text := range over {
		a, err := b.Axis(text)
		if err != nil {
			return s, err
		}
		s.Axes = append(s.Axes, a)
	}
	if len(s.Axes) == 2 && s.Axes[0].Path == s.Axes[1].Path {
		return s, fmt.Errorf("%s is given twice; sweep over two different parameters", s.Axes[0].Label)
	}
	if n := s.Total(); n > MostPoints {
		return s, fmt.Errorf("%d designs are too many; give up to %d", n, MostPoints)
	}
	var err error
	s.Readings, err = b.Readings(readings)
	return s, err
}

// Total is how many designs there are.
func (s Sweep) Total() int {
	n := 1
	for _, a := range s.Axes {
		n *= len(a.Levels)
	}
	return n
}

// Run finds the designs of a span and hands them to take in order.
func (s Sweep) Run(ctx context.Context, span Span, take func(Finding) error) error {
	return each(ctx, span, func() func(int) Finding {
		m := newMachine(s.Base.study, s.Base.variant).bind(dials(s.Axes))
		return func(i int) Finding { return m.find(s.at(i), s.Readings) }
	}, func(_ int, f Finding) error { return take(f) })
}

func (s Sweep) at(i int) []float64 {
	at := make([]float64, len(s.Axes))
	for k := len(s.Axes) - 1; k >= 0; k-- {
		n := len(s.Axes[k].Levels)
		at[k] = s.Axes[k].Levels[i%n]
		i /= n
	}
	return at
}

func dials(axes []Axis) []Dial {
	ds := make([]Dial, len(axes))
	for i, a := range axes {
		ds[i] = a.Dial
	}
	return ds
}

// find evaluates one design and keeps what is asked for.
func (m *machine) find(at []float64, rs []reading.Reading) Finding {
	f := Finding{At: at, Figures: make([]param.Slot, len(rs))}
	o, refused := m.try(at)
	if f.Refused = refused; refused != "" {
		return f
	}
	f.Fails, f.First = failing(o)
	for i, r := range rs {
		f.Figures[i] = figure(o, r.Key)
	}
	return f
}

func figure(o model.Outcome, key string) param.Slot {
	r, ok := o.Reading(key)
	if !ok || !r.Known() {
		return param.Slot{}
	}
	return param.Known(r.Value)
}

func failing(o model.Outcome) (n int, first string) {
	for _, c := range o.Checks {
		if c.Verdict != reading.Fails {
			continue
		}
		if n == 0 {
			first = c.Label
		}
		n++
	}
	return n, first
}
