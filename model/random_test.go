package model

import (
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"backspan/model/internal/anyspec"
	"backspan/model/param"
)

// randomize sets every parameter somewhere in its declared range. Half the
// draws stay in the usual range, so that many machines can be built at all.
func randomize(t *rapid.T, sections []param.Section) {
	for _, sec := range sections {
		for _, p := range sec.Params {
			switch p.Kind {
			case param.KindNumber, param.KindWhole:
				randomNumber(t, sec.Path(p), p)
			case param.KindChoice, param.KindToggle:
				anyspec.One(t, sec.Path(p), p)
			}
		}
	}
}

func randomNumber(t *rapid.T, path string, p param.Param) {
	lo, hi := p.Min, p.Max
	if p.TypicalMax > p.TypicalMin && rapid.Bool().Draw(t, path+" usual") {
		lo, hi = p.TypicalMin, p.TypicalMax
	}
	anyspec.Number(t, path, p, lo, hi)
}

func checkOutcome(t *rapid.T, o Outcome) {
	for _, r := range o.Readings {
		anyspec.Finite(t, r.Key, r.Value)
		anyspec.Finite(t, r.Key+" shown", r.Unit.From(r.Value))
	}
	for _, c := range o.Checks {
		anyspec.Finite(t, c.Key, c.Value)
		anyspec.Finite(t, c.Key+" limit", c.Limit)
		anyspec.Finite(t, c.Key+" margin", c.Margin)
	}
	for key := range coreKeys {
		if _, ok := o.Reading(key); !ok {
			t.Fatalf("no reading %s", key)
		}
	}
}

// checkMaking sees that a workshop is told figures that can be, or why not.
func checkMaking(t *rapid.T, v *Variant, o *Outcome) {
	list := Making(v, o)
	for i := range o.Bearings {
		list = append(list, SeatLimits(v, o, i)...)
	}
	for _, a := range list {
		anyspec.Finite(t, a.Key, a.Least)
		anyspec.Finite(t, a.Key+" most", a.Most)
		if a.Least > a.Most || a.Least < 0 || a.Key == "" || a.Label == "" {
			t.Fatalf("%+v", a)
		}
	}
}

// Any machine inside the declared ranges: no panic, no NaN, no infinity, every
// core reading there, with a value or a reason.
func TestAnyMachineGetsAnAnswer(t *testing.T) {
	built, flew, all := 0, 0, 0
	rapid.Check(t, func(t *rapid.T) {
		s := NewStudy("random")
		s.Variants = []Variant{NewVariant("any")}
		randomize(t, s.Sections()[1:])
		randomize(t, s.Variants[0].Sections()[1:])
		o := Evaluate(s, &s.Variants[0])
		checkOutcome(t, o)
		checkMaking(t, &s.Variants[0], &o)
		all++
		if r, _ := o.Reading("stack.depth"); r.Known() {
			built++
		}
		if r, _ := o.Reading("flight.climb_rate"); r.Known() {
			flew++
		}
	})
	t.Logf("%d random machines, %d could be built, %d flew", all, built, flew)
}

// Small changes of a machine that works: the same, deeper in the model.
func TestAnyNeighbourOfTheSampleGetsAnAnswer(t *testing.T) {
	sample := Sample()
	built, all := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		s := sample.Clone()
		v := &s.Variants[rapid.IntRange(0, len(s.Variants)-1).Draw(t, "variant")]
		for range rapid.IntRange(1, 6).Draw(t, "changes") {
			sec := rapid.SampledFrom(v.Sections()[1:]).Draw(t, "section")
			p := rapid.SampledFrom(sec.Params).Draw(t, "parameter")
			randomize(t, []param.Section{{Key: sec.Key, Params: []param.Param{p}}})
		}
		o := Evaluate(s, v)
		checkOutcome(t, o)
		checkMaking(t, v, &o)
		all++
		if r, _ := o.Reading("stack.depth"); r.Known() {
			built++
		}
	})
	if built < all/4 {
		t.Errorf("only %d of %d could be built", built, all)
	}
	t.Logf("%d neighbours, %d could be built", all, built)
}

// A default that no decimal number reaches would be shown with noise in its
// last digits and would change on its way through a file.
func TestDefaultsReadAsTyped(t *testing.T) {
	s := NewStudy("defaults")
	v := NewVariant("defaults")
	for _, sec := range append(s.Sections(), v.Sections()...) {
		for _, p := range sec.Params {
			if si, ok := p.Number(); ok && p.Kind == param.KindNumber {
				if text := p.Editable(); len(text) > 9 {
					t.Errorf("%s is %s", sec.Path(p), text)
				}
				if err := p.SetNumber(si); err != nil {
					t.Error(err)
				}
				if back, _ := p.Number(); back != si {
					t.Errorf("%s moved from %s to %s", sec.Path(p), strconv.FormatFloat(si, 'g', -1, 64), strconv.FormatFloat(back, 'g', -1, 64))
				}
			}
		}
	}
}
