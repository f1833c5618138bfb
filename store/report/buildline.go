package report

import (
	"strconv"
	"strings"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/unit"
)

// buildLines finds the lines of one variant's build sheet.
type buildLines struct {
	variant  *model.Variant
	outcome  *model.Outcome
	making   []part.Allowed
	sections []param.Section
	standard []param.Section // of a fresh variant and study, for what was left at its default
	currency string
}

func newBuildLines(s *model.Study, v *model.Variant, o *model.Outcome) buildLines {
	fresh, shared := model.NewVariant(v.Name), model.NewStudy(s.Name)
	return buildLines{v, o, model.Making(v, o), append(v.Sections(), s.Sections()...), append(fresh.Sections(), shared.Sections()...), s.Currency}
}

// line is label, value, unit and where the value comes from; ok is false for
// what this machine does not have.
func (b *buildLines) line(k buildKey) (cells []string, ok bool) {
	switch k.kind {
	case setKind:
		return b.set(k)
	case foundKind:
		return b.found(k)
	case madeKind:
		for _, a := range b.making {
			if a.Key == k.key {
				return b.made(a), true
			}
		}
		return nil, false
	case toldKind:
		value, from, _ := strings.Cut(k.more, " | ")
		return []string{k.key, value, "", from}, true
	case openKind:
		return []string{k.key, "not given", "", "to be settled by " + k.more}, true
	}
	return b.held(k.key)
}

func (b *buildLines) set(k buildKey) ([]string, bool) {
	p, ok := inUse(b.sections, k.key)
	if !ok {
		return nil, false
	}
	value, symbol := p.Editable(), p.Unit.Symbol
	if value == "" {
		if p.Kind == param.KindText {
			return nil, false
		}
		value, symbol = p.Show(), ""
	}
	more := k.more
	if p.Kind == param.KindTable && p.Editable() != "" {
		more = both(more, p.Range())
	}
	return []string{p.Label, value, money(symbol, p.Unit, b.currency), both(more, b.origin(k.key, p))}, true
}

// inUse is a parameter that applies to the present choices.
func inUse(sections []param.Section, path string) (param.Param, bool) {
	for _, s := range sections {
		if s.Hidden {
			continue
		}
		for _, p := range s.Params {
			if s.Path(p) == path {
				return p, !p.Hidden // whether a form shows it is another matter
			}
		}
	}
	return param.Param{}, false
}

// asSet is the origin of what somebody gave.
const asSet = "as set"

// origin tells a value that was set from one that was left as it came.
func (b *buildLines) origin(path string, p param.Param) string {
	standard, ok := param.Find(b.standard, path)
	switch {
	case ok && !p.Same(standard):
		return asSet
	case p.Origin != "":
		return "default, " + p.Origin
	}
	return "default"
}

func (b *buildLines) found(k buildKey) ([]string, bool) {
	r, ok := b.outcome.Reading(k.key)
	switch {
	case !ok || r.Absent:
		return nil, false
	case !r.Known():
		return []string{r.Label, r.Text(), "", r.Why}, true
	}
	value := r.Unit.Number(r.Value)
	if digits, err := strconv.Atoi(k.more); err == nil {
		value = strconv.FormatFloat(r.Unit.From(r.Value), 'f', digits, 64)
	}
	return []string{r.Label, value, money(r.Unit.Symbol, r.Unit, b.currency), both(r.Method, r.Origin)}, true
}

// checked tells a limit that the design is held against from one to work to.
const checked = "Check: "

func (b *buildLines) held(key string) ([]string, bool) {
	for _, k := range b.outcome.Checks {
		if k.Key != key {
			continue
		}
		if k.Valued {
			return []string{checked + k.Label + ", " + string(k.Side), k.Unit.Number(k.Limit), k.Unit.Symbol, both(k.Origin, string(k.Verdict)+", here "+k.Unit.Text(k.Value))}, true
		}
		return []string{k.Label, string(k.Verdict), "", both(k.Why, k.Origin)}, true
	}
	return nil, false
}

// made is a limit with the origin of the parameter that gives it, if one does.
func (b *buildLines) made(a part.Allowed) []string {
	if p, ok := inUse(b.sections, a.Param); ok {
		a = a.Source(b.origin(a.Param, p))
	}
	return madeLine(a)
}

// madeLine shows a limit with as many digits as the shop works to.
func madeLine(a part.Allowed) []string {
	from := both(a.Method, a.Origin)
	digits := func(si float64) string { return strconv.FormatFloat(a.Unit.From(si), 'f', a.Digits, 64) }
	switch {
	case a.Why != "":
		return []string{a.Label, "not given", "", a.Why}
	case a.Text != "":
		return []string{a.Label, a.Text, "", from}
	case a.Limit:
		return []string{a.Label + ", " + string(reading.Most), digits(a.Most), a.Unit.Symbol, from}
	case digits(a.Least) == digits(a.Most):
		return []string{a.Label, digits(a.Most), a.Unit.Symbol, from}
	}
	return []string{a.Label, digits(a.Least) + " to " + digits(a.Most), a.Unit.Symbol, from}
}

func both(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + "; " + b
}

// bearings lists them by the boundary dimensions that a shop orders by, each
// with the limits of its seats.
func (b *buildLines) bearings() [][]string {
	var rows [][]string
	for i := range b.outcome.Bearings {
		q := &b.outcome.Bearings[i]
		value, symbol, from := "not given", "", "the engine's own"
		if d, ok := q.Size.DeepGroove(); ok {
			value = unit.Millimetre.Exact(d.Bore) + " x " + unit.Millimetre.Exact(d.Outside) + " x " + unit.Millimetre.Exact(d.Width)
			symbol, from = unit.Millimetre.Symbol, "single-row deep-groove ball bearing "+string(q.Size)+", bore x outside x width; ISO 15"
		}
		rows = append(rows, []string{q.Name, value, symbol, from})
		for _, a := range model.SeatLimits(b.variant, b.outcome, i) {
			a.Label = q.Name + ": " + a.Label
			rows = append(rows, madeLine(a))
		}
	}
	return rows
}

// failing lists what forbids building the machine as it stands.
func (b *buildLines) failing() [][]string {
	var rows [][]string
	for _, k := range b.outcome.Checks {
		if k.Verdict == reading.Fails {
			rows = append(rows, []string{k.Label, k.Text(), "", both(k.Cure, k.Origin)})
		}
	}
	return rows
}
