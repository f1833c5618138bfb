package explore

import (
	"context"
	"slices"
	"strings"

	"backspan/model"
	"backspan/model/reading"
)

// Cure is one number that, changed alone, improves a check's verdict.
type Cure struct {
	Path    string
	Section string
	Label   string
	Origin  string // of the default
	From    string // the value now
	To      string // the value that cures
	Text    string // To, as a form takes it
	Steps   int    // of the form between the two
	Check   reading.Check
	Worse   []string // labels of other checks whose verdict is then worse
	share   float64  // of the value, or of the usual range, between the two
}

// mostCures is how many of the strongest movers are searched, and how many
// cures are told.
const mostCures = 12

// Cures searches along the strongest movers of a check for the nearest value
// at which it holds, or at which it at least no longer fails. A check that no
// small step moves is searched along every number, coarsely. Left alone are
// what all variants share, what a person asks for (it moves the limit, not the
// machine) and what is assumed rather than chosen. The search goes away from
// the present value by growing numbers of fine steps and then halves the last
// interval; of a check that holds only between two values it can miss a narrow
// place. Cures that spoil no other check come first.
func (y *Survey) Cures(ctx context.Context, key string, progress func(done, total int)) ([]Cure, error) {
	along := y.trials(key)
	var cures []Cure
	err := each(ctx, Span{0, len(along)}, func() func(int) *Cure { return func(i int) *Cure { return along[i].cure(ctx) } }, func(i int, c *Cure) error {
		if c != nil {
			cures = append(cures, *c)
		}
		tell(progress, i+1, len(along))
		return nil
	})
	if err != nil {
		return nil, err
	}
	slices.SortStableFunc(cures, byWorth)
	return cures[:min(len(cures), mostCures)], nil
}

// trials lists the numbers to search along, each with its way.
func (y *Survey) trials(key string) []trial {
	var along []trial
	movers := y.Movers(Subject{Check: true, Key: key}).Movers
	for _, m := range movers {
		if len(along) < mostCures && y.chosen(m.number, key) {
			way := 1.0
			if m.Less.Change.Value > m.More.Change.Value {
				way = -1
			}
			along = append(along, trial{survey: y, number: m.number, key: key, way: way, growth: 1.5})
		}
	}
	if len(movers) > 0 {
		return along
	}
	for _, p := range y.probes {
		if p.built() && (y.moves(p.more) || y.moves(p.less)) {
			up := trial{survey: y, number: p.number, key: key, way: 1, growth: 3}
			down := up
			down.way = -1
			along = append(along, up, down)
		}
	}
	return along
}

// moves reports whether a step moved any reading at all.
func (y *Survey) moves(s side) bool {
	return s.why == "" && !slices.Equal(s.readings, y.at.readings)
}

func byWorth(a, b Cure) int {
	switch {
	case a.Check.Verdict != b.Check.Verdict:
		if b.Check.Verdict.Worse(a.Check.Verdict) {
			return -1
		}
		return 1
	case len(a.Worse) != len(b.Worse):
		return len(a.Worse) - len(b.Worse)
	case a.share < b.share:
		return -1
	case a.share > b.share:
		return 1
	}
	return 0
}

// chosen reports whether building otherwise changes the number, and with it
// what the check looks at.
func (y *Survey) chosen(n number, key string) bool { return n.built() && !y.asks(n.Path, key) }

// built reports whether a builder decides the number by building otherwise.
func (n number) built() bool {
	switch n.Origin {
	case "", "invented", "estimate", "common practice, no source":
		return !n.Shared
	}
	return false
}

// asks reports whether a number moves the limit of the check and not its value.
func (y *Survey) asks(path, key string) bool {
	was := y.check(y.at, key)
	for _, p := range y.probes {
		if p.Path != path || p.Shared {
			continue
		}
		for _, s := range []side{p.more, p.less} {
			if c := y.check(s.figures, key); c.there && c.value != was.value {
				return false
			}
		}
	}
	return true
}

func checkOf(o model.Outcome, key string) (reading.Check, bool) {
	i := slices.IndexFunc(o.Checks, func(c reading.Check) bool { return c.Key == key })
	if i < 0 {
		return reading.Check{}, false
	}
	return o.Checks[i], true
}

// worsened names the checks, but the one of that key, that are worse than before.
func worsened(before, after model.Outcome, key string) []string {
	was := map[string]reading.Verdict{}
	for _, c := range before.Checks {
		was[c.Key] = c.Verdict
	}
	var labels []string
	for _, c := range after.Checks {
		v, known := was[c.Key]
		if c.Key == key || known && !c.Verdict.Worse(v) || !known && c.Verdict != reading.Fails {
			continue
		}
		labels = append(labels, c.Label+" "+string(c.Verdict))
	}
	return labels
}

// VariantName names a variant on which the cure is tried: "Belt 190, Ribs 14".
func (c Cure) VariantName(of string) string {
	return strings.TrimSpace(of) + ", " + c.Label + " " + c.To
}
