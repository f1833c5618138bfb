package explore

import (
	"context"
	"math"
	"slices"
	"strings"

	"backspan/model"
	"backspan/model/param"
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

// mostCures is how many of the strongest movers are searched.
const mostCures = 12

// Cures searches along the strongest movers of a check for the nearest value
// at which it holds, or at which it at least no longer fails. Left alone are
// what all variants share, what a person asks for (it moves the limit, not the
// machine) and what is assumed rather than chosen. The search goes up from the
// present value by growing numbers of fine steps and then halves the last
// interval; of a check that holds only between two values it can miss a narrow
// place. Cures that spoil no other check come first.
func (y *Survey) Cures(ctx context.Context, key string, progress func(done, total int)) ([]Cure, error) {
	var along []Mover
	for _, m := range y.Movers(Subject{Check: true, Key: key}).Movers {
		if y.chosen(m, key) && len(along) < mostCures {
			along = append(along, m)
		}
	}
	found := make([]*Cure, len(along))
	err := each(ctx, len(along), progress, func(i int) { found[i] = y.cure(ctx, along[i], key) })
	if err != nil {
		return nil, err
	}
	var cures []Cure
	for _, c := range found {
		if c != nil {
			cures = append(cures, *c)
		}
	}
	slices.SortStableFunc(cures, byWorth)
	return cures, nil
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

// chosen reports whether a builder decides the number by building otherwise.
func (y *Survey) chosen(m Mover, key string) bool {
	switch m.Origin {
	case "", "invented", "estimate", "common practice, no source":
		return !m.Shared && !y.asks(m.Path, key)
	}
	return false
}

// asks reports whether a number moves the limit of the check and not its value.
func (y *Survey) asks(path, key string) bool {
	was := y.at.checks[key]
	for _, p := range y.probes {
		if p.Path != path || p.Shared {
			continue
		}
		for _, s := range []side{p.more, p.less} {
			c, ok := s.checks[key]
			if ok && c.value != was.value {
				return false
			}
		}
	}
	return true
}

// cure searches along one number.
func (y *Survey) cure(ctx context.Context, m Mover, key string) *Cure {
	way := 1.0
	if m.Less.Change.Value > m.More.Change.Value {
		way = -1
	}
	t := trial{survey: y, number: m.number, key: key, way: way}
	n, ok := t.nearest(ctx)
	if !ok {
		return nil
	}
	o, text, shown, ok := t.at(n)
	if !ok {
		return nil
	}
	c := &Cure{Path: m.Path, Section: m.Section, Label: m.Label, Origin: m.Origin, From: m.Set, To: shown, Text: text, Steps: n,
		Worse: worsened(y.before, o, key), share: float64(n) * m.number.fine / m.number.size * m.number.share}
	c.Check, _ = checkOf(o, key)
	return c
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

// trial steps one number by whole fine steps one way.
type trial struct {
	survey *Survey
	number number
	key    string
	way    float64
}

// room is how many steps lie between the present value and the end of the range.
func (t trial) room() int {
	width := t.number.max - t.number.now
	if t.way < 0 {
		width = t.number.now - t.number.min
	}
	const rounding = 1e-9
	return int(math.Floor(width/t.number.fine + rounding))
}

// at is the machine n steps on, and the value as text and with its unit.
func (t trial) at(n int) (o model.Outcome, text, shown string, ok bool) {
	s, v := t.survey.study, t.survey.variant.Clone()
	p, found := param.Find(v.Sections(), t.number.Path)
	if !found || p.Step(int(t.way)*n) != nil {
		return o, "", "", false
	}
	return evaluated(s, &v), p.Editable(), p.Show(), true
}

// better reports whether the check reads no worse than v after n steps.
func (t trial) better(n int, v reading.Verdict) bool {
	o, _, _, ok := t.at(n)
	if !ok {
		return false
	}
	c, ok := checkOf(o, t.key)
	return ok && c.Verdict != reading.NotRated && !c.Verdict.Worse(v)
}

// nearest is the least number of steps after which the check holds, or, of one
// that fails, no longer fails.
func (t trial) nearest(ctx context.Context) (int, bool) {
	if n, ok := t.reach(ctx, reading.Holds); ok {
		return n, true
	}
	if t.survey.at.checks[t.key].verdict == reading.Fails {
		return t.reach(ctx, reading.Thin)
	}
	return 0, false
}

func (t trial) reach(ctx context.Context, v reading.Verdict) (int, bool) {
	room := t.room()
	below, above := 0, 0
	for n := 1; n <= room && ctx.Err() == nil; {
		if t.better(n, v) {
			above = n
			break
		}
		below = n
		if n == room {
			break
		}
		n = min(max(n+1, n*3/2), room)
	}
	if above == 0 {
		return 0, false
	}
	for above-below > 1 && ctx.Err() == nil {
		if mid := (above + below) / 2; t.better(mid, v) {
			above = mid
		} else {
			below = mid
		}
	}
	return above, true
}

// VariantName names a variant on which the cure is tried: "Belt 190, Ribs 14".
func (c Cure) VariantName(of string) string {
	return strings.TrimSpace(of) + ", " + c.Label + " " + c.To
}
