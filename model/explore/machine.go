package explore

import (
	"fmt"
	"strings"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// Base is the machine that a question starts from.
type Base struct {
	study    *model.Study
	variant  *model.Variant
	outcome  model.Outcome
	sections []param.Section
}

// NewBase takes copies, so that the study may change afterwards.
func NewBase(s *model.Study, v *model.Variant) Base {
	m := newMachine(s, v)
	return Base{study: m.study, variant: m.variant, outcome: evaluated(m.study, m.variant, model.Outcome{}), sections: m.sections()}
}

// Name is the variant's.
func (b Base) Name() string { return b.variant.Name }

// With is the base's machine at those values of the dials, for a variant of
// its own. Values of shared givens of the study have no place in it: they are refused.
func (b Base) With(dials []Dial, at []float64) (model.Variant, error) {
	m := newMachine(b.study, b.variant)
	for _, d := range dials {
		if _, shared := param.Find(m.study.Sections(), d.Path); shared {
			return model.Variant{}, fmt.Errorf("%s belongs to the whole study, so a variant cannot hold it", d.Label)
		}
	}
	if err := m.bind(dials).set(at); err != nil {
		return model.Variant{}, err
	}
	return m.variant.Clone(), nil
}

// Reading is the reading with that key, as the base has it. The error names
// near keys.
func (b Base) Reading(key string) (reading.Reading, error) {
	if r, ok := b.outcome.Reading(key); ok {
		r.Unit = b.priced(r.Unit)
		return r, nil
	}
	keys := make([]string, len(b.outcome.Readings))
	for i, r := range b.outcome.Readings {
		keys[i] = r.Key
	}
	return reading.Reading{}, fmt.Errorf("there is no reading %q%s", key, meant(key, keys))
}

// priced is the unit with the study's own currency in it.
func (b Base) priced(u unit.Unit) unit.Unit {
	if u.Dimension == unit.Money || u.Dimension == unit.MoneyPerTime {
		u.Symbol = strings.Replace(u.Symbol, unit.Currency.Symbol, b.study.Currency, 1)
	}
	return u
}

// parse is unit.Parse for a unit that may have the study's currency in it.
func parse(text string, u unit.Unit) (float64, error) {
	if currency := strings.TrimSuffix(u.Symbol, "/h"); currency != "" && (u.Dimension == unit.Money || u.Dimension == unit.MoneyPerTime) {
		text = strings.Replace(text, currency, unit.Currency.Symbol, 1)
	}
	return unit.Parse(text, u)
}

// Readings are those with the keys, in their order.
func (b Base) Readings(keys []string) ([]reading.Reading, error) {
	rs := make([]reading.Reading, len(keys))
	for i, key := range keys {
		r, err := b.Reading(key)
		if err != nil {
			return nil, err
		}
		rs[i] = r
	}
	return rs, nil
}

// param finds a parameter of the study or the variant by its path, with or
// without the unit that its key in a file ends with, and with or without the
// word that a variant's tables begin with there. The error names near paths.
func (b Base) param(typed string) (param.Param, string, error) {
	if p, full, ok := b.find(typed); ok {
		return p, full, nil
	}
	sections, path := b.named(typed)
	var paths []string
	for _, s := range sections {
		for _, p := range s.Params {
			if p.Kind != param.KindText && p.Kind != param.KindTable {
				paths = append(paths, s.Path(p))
			}
		}
	}
	return param.Param{}, "", fmt.Errorf("there is no parameter %q%s", typed, meant(path, paths))
}

// named is where to look for what was typed, and the path there.
func (b Base) named(typed string) ([]param.Section, string) {
	if path, ofVariant := strings.CutPrefix(typed, "variant."); ofVariant {
		return b.variant.Sections(), path
	}
	return b.sections, typed
}

func (b Base) find(typed string) (p param.Param, full string, ok bool) {
	sections, path := b.named(typed)
	for _, s := range sections {
		for _, p := range s.Params {
			full := s.Path(p)
			if full == path || full != p.Key && s.Key+"."+p.FileKey() == path || p.FileKey() == path && s.Key == "" {
				return p, full, true
			}
		}
	}
	return param.Param{}, "", false
}

// HasParameter reports whether a parameter has that path.
func (b Base) HasParameter(path string) bool { _, _, ok := b.find(path); return ok }

// machine is one design that belongs to one goroutine and is set anew for each
// question: making one costs more than setting it.
type machine struct {
	study   *model.Study
	variant *model.Variant
	dials   []Dial
	params  []param.Param
	last    model.Outcome
}

func newMachine(s *model.Study, v *model.Variant) *machine {
	study, variant := *s, v.Clone()
	study.Variants = nil
	return &machine{study: &study, variant: &variant}
}

func (m *machine) sections() []param.Section {
	return append(m.study.Sections(), m.variant.Sections()...)
}

// bind chooses what set will set. The dials come from the same base.
func (m *machine) bind(dials []Dial) *machine {
	sections := m.sections()
	m.dials, m.params = dials, make([]param.Param, len(dials))
	for i, d := range dials {
		m.params[i], _ = param.Find(sections, d.Path)
	}
	return m
}

// set turns every dial; the error says which value is refused and why.
func (m *machine) set(at []float64) error {
	for i, d := range m.dials {
		if err := d.turn(m.params[i], at[i]); err != nil {
			return err
		}
	}
	return nil
}

// try evaluates the machine at those values; refused says why there is none.
// The outcome holds until the next try. A fault of the model is one such
// reason: the work runs in the background of a person's unsaved study.
func (m *machine) try(at []float64) (o model.Outcome, refused string) {
	defer func() {
		if fault := recover(); fault != nil {
			m.last = model.Outcome{}
			o, refused = m.last, fmt.Sprintf("the model stopped with: %v", fault)
		}
	}()
	if err := m.set(at); err != nil {
		return o, err.Error()
	}
	m.last = model.Reevaluate(m.study, m.variant, m.last)
	return m.last, ""
}

// stepped evaluates the machine after a change of one number, and takes the change
// back. The outcome holds until the next step; the error is the change's.
func (m *machine) stepped(p param.Param, change func() error) (model.Outcome, error) {
	was, _ := p.Number()
	if err := change(); err != nil {
		return model.Outcome{}, err
	}
	m.last = evaluated(m.study, m.variant, m.last)
	_ = p.SetNumber(was) // it was taken before
	return m.last, nil
}
