package explore

import (
	"context"
	"fmt"
	"math"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/reading"
)

// The bounds of a tolerance run.
const (
	MostSamples  = 200_000
	leastSamples = 100
	mostSpreads  = 60
)

// Tolerance asks what doubts in parameters and in the model's own methods do to
// readings and checks: it draws every spread at once, all independent of one
// another, many times over.
//
// Source: propagation of distributions by a Monte Carlo method, JCGM 101:2008.
type Tolerance struct {
	Base     Base
	Spreads  []Spread
	Readings []reading.Reading
	Samples  int
	Seed     uint64
}

// Sample is one machine as it may turn out.
type Sample struct {
	Drawn   []float64    `json:"drawn"`   // one for each spread, as it was set
	Figures []param.Slot `json:"figures"` // the readings
	// Verdicts are those of the base's checks, a letter each; Others are the
	// keys of other checks that fail, of a part that cannot be built.
	Verdicts string   `json:"verdicts"`
	Others   []string `json:"others,omitempty"`
	Clipped  bool     `json:"clipped,omitempty"` // a value was held at the end of its allowed range
	Refused  string   `json:"refused,omitempty"`
}

// NewTolerance reads the question as a person gave it.
func NewTolerance(b Base, spreads, readings []string, samples int, seed uint64) (Tolerance, error) {
	t := Tolerance{Base: b, Samples: samples, Seed: seed}
	if samples < leastSamples || samples > MostSamples {
		return t, fmt.Errorf("take %d to %d samples, not %d", leastSamples, MostSamples, samples)
	}
	if len(spreads) < 1 || len(spreads) > mostSpreads {
		return t, fmt.Errorf("give 1 to %d spreads, not %d", mostSpreads, len(spreads))
	}
	seen := map[string]bool{}
	for _, text := range spreads {
		s, err := b.Spread(text)
		if err == nil && seen[s.Key()] {
			err = fmt.Errorf("%s is given twice", s.Label())
		}
		if err != nil {
			return t, err
		}
		seen[s.Key()] = true
		t.Spreads = append(t.Spreads, s)
	}
	var err error
	t.Readings, err = b.Readings(readings)
	return t, err
}

// Total is how many samples there are.
func (t Tolerance) Total() int { return t.Samples }

// Run draws a span of the samples. Sample i is the same whoever draws it.
func (t Tolerance) Run(ctx context.Context, span Span, take func(Sample) error) error {
	return each(ctx, span, func() func(int) Sample {
		m := newMachine(t.Base.study, t.Base.variant).bind(t.dials())
		return func(i int) Sample { return t.sample(m, i) }
	}, func(_ int, s Sample) error { return take(s) })
}

func (t Tolerance) dials() (ds []Dial) {
	for _, s := range t.Spreads {
		if !s.ofReading() {
			ds = append(ds, s.Dial)
		}
	}
	return ds
}

func (t Tolerance) sample(m *machine, i int) Sample {
	drawn, at, clipped := t.draw(i)
	s := Sample{Drawn: drawn, Clipped: clipped, Figures: make([]param.Slot, len(t.Readings))}
	o, refused := m.try(at)
	if s.Refused = refused; refused != "" {
		return s
	}
	for k, r := range t.Readings {
		s.Figures[k] = t.doubted(figure(o, r.Key), r.Key, drawn)
	}
	s.Verdicts, s.Others = t.verdicts(o)
	return s
}

// draw takes sample i of every spread, each from a stream of its own, so that
// a spread more leaves the others as they are.
func (t Tolerance) draw(i int) (drawn, at []float64, clipped bool) {
	drawn = make([]float64, len(t.Spreads))
	for k, s := range t.Spreads {
		d := drawOf(t.Seed, uint64(i), uint64(k))
		drawn[k] = s.take(&d)
		if s.ofReading() {
			continue
		}
		if held := math.Min(math.Max(drawn[k], s.Dial.Min), s.Dial.Max); held != drawn[k] {
			drawn[k], clipped = held, true
		}
		at = append(at, drawn[k])
	}
	return drawn, at, clipped
}

// doubted applies the doubts in the method of that reading.
func (t Tolerance) doubted(f param.Slot, key string, drawn []float64) param.Slot {
	for k, s := range t.Spreads {
		switch {
		case !s.ofReading() || s.Of.Key != key:
		case s.Factor:
			f.Value *= drawn[k]
		default:
			f.Value += drawn[k]
		}
	}
	if !f.Known {
		return param.Slot{}
	}
	return f
}

// The letters of verdicts.
const (
	letterHolds    = 'h'
	letterThin     = 't'
	letterFails    = 'f'
	letterNotRated = 'n'
	letterAbsent   = '-' // there is no such check
)

func letter(v reading.Verdict) byte {
	switch v {
	case reading.Holds:
		return letterHolds
	case reading.Thin:
		return letterThin
	case reading.Fails:
		return letterFails
	case reading.NotRated:
	}
	return letterNotRated
}

func (t Tolerance) verdicts(o model.Outcome) (letters string, others []string) {
	base := t.Base.outcome.Checks
	found := make([]byte, len(base))
	at := make(map[string]int, len(base))
	for i, c := range base {
		found[i], at[c.Key] = letterAbsent, i
	}
	for _, c := range o.Checks {
		if i, ok := at[c.Key]; ok {
			found[i] = letter(c.Verdict)
		} else if c.Verdict == reading.Fails {
			others = append(others, c.Key)
		}
	}
	return string(found), others
}
