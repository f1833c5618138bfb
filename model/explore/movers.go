package explore

import (
	"cmp"
	"math"
	"slices"

	"backspan/model/param"
)

// Effect is what one step does to the figure asked about.
type Effect struct {
	Change param.Slot // as Answer.Terms says; empty when there is none to tell
	Why    string     // the reason then
}

// Mover is a number that moves the figure asked about.
type Mover struct {
	Path    string
	Section string
	Label   string
	Shared  bool   // by all variants
	Set     string // its value
	Origin  string // of its default
	Help    string
	Step    string // "1 %" of its value, "1 mm", "0.1 pt" of a percentage, or "1" of a count

	More, Less Effect // of a step up, and of one down
	weight     float64
	number     number
}

// Terms says how changes are told.
type Terms int

// The ways in which changes are told.
const (
	Shares   Terms = iota // of the figure: 0.01 is one hundredth of it
	Points                // of a check's margin: 0.01 is one percentage point
	Absolute              // in SI: the figure is near zero or below it, a percentage, a temperature or a level
)

// Answer is what moves a figure, the strongest first.
type Answer struct {
	Terms  Terms
	Movers []Mover
}

// least is the weakest change worth telling, as a share of the figure.
const least = 5e-5

// Movers finds what moves the reading or the check. Numbers rank by what one
// hundredth of their value does, or of their usual range where a share of the
// value means nothing; a count by its step over its value. A number that leaves
// no figure whichever way it is stepped comes first; one that does so one way
// is told at least. The answer is empty when there is no figure to move.
func (y *Survey) Movers(of Subject) Answer {
	base, scale, ok := y.figure(y.at, of)
	if !ok {
		return Answer{}
	}
	var a Answer
	for _, p := range y.probes {
		m := y.mover(p, of, base.Value)
		if m.weight > least*scale || m.breaks() {
			a.Movers = append(a.Movers, m)
		}
	}
	slices.SortStableFunc(a.Movers, func(m, n Mover) int { return cmp.Compare(n.weight, m.weight) })
	a.Terms = y.terms(of, base.Value, a.Movers)
	if a.Terms == Shares {
		for i := range a.Movers {
			for _, e := range []*Effect{&a.Movers[i].More, &a.Movers[i].Less} {
				e.Change.Value /= math.Abs(base.Value)
			}
		}
	}
	return a
}

// figure is the number that a subject stands for, and what a change of it is
// small against.
func (y *Survey) figure(f figures, of Subject) (x param.Slot, scale float64, ok bool) {
	if !of.Check {
		x = y.reading(f, of.Key)
		return x, math.Abs(x.Value), x.Known
	}
	c := y.check(f, of.Key)
	if c.limit != 0 {
		return c.room, 1, c.room.Known
	}
	return c.room, math.Abs(c.value), c.room.Known
}

func (y *Survey) mover(p probe, of Subject, base float64) Mover {
	n := p.number
	m := Mover{Path: n.Path, Section: n.Section, Label: n.Label, Shared: n.Shared, Set: n.Set, Origin: n.Origin, Help: n.Help, Step: n.step,
		More: y.effect(p.more, of, base), Less: y.effect(p.less, of, base), number: n}
	m.weight = math.Max(math.Abs(m.More.Change.Value), math.Abs(m.Less.Change.Value)) * 0.01 / n.share
	if m.More.Why == none && m.Less.Why == none {
		m.weight = math.MaxFloat64
	}
	return m
}

// breaks reports whether a step leaves no figure.
func (m Mover) breaks() bool { return m.More.Why == none || m.Less.Why == none }

const none = "no figure then"

func (y *Survey) effect(s side, of Subject, base float64) Effect {
	if s.why != "" {
		return Effect{Why: s.why}
	}
	x, _, ok := y.figure(s.figures, of)
	if !ok {
		return Effect{Why: none}
	}
	return Effect{Change: param.Known(x.Value - base)}
}

func (y *Survey) terms(of Subject, base float64, ms []Mover) Terms {
	if of.Check {
		if y.check(y.at, of.Key).limit != 0 {
			return Points
		}
		return Absolute
	}
	r, _ := y.before.Reading(of.Key)
	if base <= 0 || !Sharable(r.Unit) { // of a figure below zero more could be taken for less
		return Absolute
	}
	const nearZero = 0.1 // of the figure is moved by one hundredth of a number
	for _, m := range ms {
		if m.weight < math.MaxFloat64 && m.weight > nearZero*math.Abs(base) {
			return Absolute
		}
	}
	return Shares
}
