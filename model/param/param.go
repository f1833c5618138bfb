package param

import (
	"fmt"
	"math"
	"strconv"

	"backspan/model/unit"
)

// Kind tells a form which control fits and a file which type to write.
type Kind int

// The kinds of parameter.
const (
	KindNumber Kind = iota // a quantity with a unit
	KindWhole              // a count
	KindChoice             // one of a few words
	KindToggle             // yes or no
	KindText               // free text
	KindTable              // rows of quantities
)

// Slot is a number that may be missing: a rating nobody has published, a
// measurement not yet taken. The zero Slot is empty.
type Slot struct {
	Value float64 // SI, meaningful only when Known
	Known bool
}

// Known is a filled slot.
func Known(si float64) Slot { return Slot{Value: si, Known: true} }

// Finite is a slot filled by a sum, empty where the sum has no finite answer.
func Finite(si float64) Slot {
	if math.IsInf(si, 0) || math.IsNaN(si) {
		return Slot{}
	}
	return Known(si)
}

// Param declares one parameter and is bound to its value.
type Param struct {
	Key   string // snake_case, without the unit
	Label string
	Kind  Kind
	Unit  unit.Unit

	Min, Max               float64 // allowed, in Unit, both included
	TypicalMin, TypicalMax float64 // usual, in Unit; equal when not declared
	Options                []string
	Columns                []Column // of a table
	MinRows                int      // of a table
	Guidance               string   // one sentence of help
	Origin                 string   // where a default comes from, when it is not plain geometry
	Optional               bool     // may be left empty
	Hidden                 bool     // does not apply to the present choices
	Aside                  bool     // applies, but a form shows it only when asked for

	bind binding
	rule func(rows [][]float64) error
}

// Column is one column of a table parameter. Min and Max are in Unit.
type Column struct {
	Label    string
	Unit     unit.Unit
	Min, Max float64
}

// binding reads and writes the bound value. Values travel as float64 (SI),
// int, string, bool, Slot or [][]float64 (SI) according to the kind.
type binding struct {
	get func() any
	set func(any)
}

// Number declares a quantity, kept in SI, shown in u. Give its range with Within.
func Number(p *float64, key, label string, u unit.Unit) Param {
	return Param{Key: key, Label: label, Kind: KindNumber, Unit: u,
		bind: binding{func() any { return *p }, func(v any) { *p = v.(float64) }}}
}

// Open declares a quantity that may be left empty.
func Open(p *Slot, key, label string, u unit.Unit) Param {
	return Param{Key: key, Label: label, Kind: KindNumber, Unit: u, Optional: true,
		bind: binding{func() any { return *p }, func(v any) { *p = v.(Slot) }}}
}

// Whole declares a count. Give its range with Within.
func Whole(p *int, key, label string) Param {
	return Param{Key: key, Label: label, Kind: KindWhole, Unit: unit.One,
		bind: binding{func() any { return *p }, func(v any) { *p = v.(int) }}}
}

// Choice declares one of a few words; the words stand in the file as they are.
func Choice[T ~string](p *T, key, label string, options ...T) Param {
	words := make([]string, len(options))
	for i, o := range options {
		words[i] = string(o)
	}
	return Param{Key: key, Label: label, Kind: KindChoice, Options: words,
		bind: binding{func() any { return string(*p) }, func(v any) { *p = T(v.(string)) }}}
}

// Toggle declares a yes or no.
func Toggle(p *bool, key, label string) Param {
	return Param{Key: key, Label: label, Kind: KindToggle,
		bind: binding{func() any { return *p }, func(v any) { *p = v.(bool) }}}
}

// Text declares free text.
func Text(p *string, key, label string) Param {
	return Param{Key: key, Label: label, Kind: KindText,
		bind: binding{func() any { return *p }, func(v any) { *p = v.(string) }}}
}

// Table declares rows of quantities. Rows are kept in SI; get must return a
// copy, and set receives rows that passed the columns' ranges and the rule.
func Table(get func() [][]float64, set func(rows [][]float64), key, label string, columns ...Column) Param {
	return Param{Key: key, Label: label, Kind: KindTable, Columns: columns,
		bind: binding{func() any { return get() }, func(v any) { set(v.([][]float64)) }}}
}

// Within sets the allowed range, in the parameter's unit.
func (p Param) Within(lo, hi float64) Param { p.Min, p.Max = lo, hi; return p }

// Typical sets the usual range, in the parameter's unit; outside it is allowed.
func (p Param) Typical(lo, hi float64) Param { p.TypicalMin, p.TypicalMax = lo, hi; return p }

// Help sets one sentence of guidance.
func (p Param) Help(s string) Param { p.Guidance = s; return p }

// From says where the default value comes from: "from memory", "common
// practice, no source", "invented", or a published source.
func (p Param) From(origin string) Param { p.Origin = origin; return p }

// Rows sets the least number of rows of a table that is not empty.
func (p Param) Rows(least int) Param { p.MinRows = least; return p }

// Rule sets a condition on all rows of a table together, given in SI.
func (p Param) Rule(f func(rows [][]float64) error) Param { p.rule = f; return p }

// When hides the parameter from forms unless applies is true. Its value is
// kept, in memory and in the file, so that changing a choice loses nothing.
func (p Param) When(applies bool) Param { p.Hidden = !applies; return p }

// Shown reports whether a form lists the parameter: it applies, and is wanted.
func (p Param) Shown() bool { return !p.Hidden && !p.Aside }

// Apart leaves the parameter out of forms until it is asked for. It applies all
// the same.
func (p Param) Apart(unasked bool) Param { p.Aside = unasked; return p }

// FileKey is the key in a study file: the unit is part of it.
func (p Param) FileKey() string {
	key := p.Key
	for _, c := range p.Columns {
		if c.Unit.Key != "" {
			key += "_" + c.Unit.Key
		}
	}
	if p.Unit.Key != "" {
		key += "_" + p.Unit.Key
	}
	return key
}

// Range says what is allowed, in words: "20 to 200 mm".
func (p Param) Range() string {
	switch p.Kind {
	case KindNumber, KindWhole:
		return span(p.Min, p.Max, p.Unit)
	case KindChoice:
		return list(p.Options)
	case KindToggle:
		return "yes or no"
	case KindTable:
		return p.columnsHelp()
	}
	return "any text"
}

// Number returns the value in SI and whether there is one; counts are numbers
// too. Other kinds have none.
func (p Param) Number() (si float64, ok bool) {
	switch v := p.bind.get().(type) {
	case float64:
		return v, true
	case int:
		return float64(v), true
	case Slot:
		return v.Value, v.Known
	}
	return 0, false
}

// Same reports whether two declarations of one parameter hold the same value.
func (p Param) Same(q Param) bool { return p.Editable() == q.Editable() }

// Show formats the value for people, with its unit.
func (p Param) Show() string {
	switch v := p.bind.get().(type) {
	case bool:
		return yesNo(v)
	case Slot:
		if !v.Known {
			return "not given"
		}
	case [][]float64:
		return p.showRows(v)
	}
	s := p.Editable()
	if p.Unit.Symbol == "" {
		return s
	}
	if p.Unit.Symbol == "°" {
		return s + p.Unit.Symbol
	}
	return s + " " + p.Unit.Symbol
}

// Editable is the value as text that Set takes back unchanged, without a unit.
func (p Param) Editable() string {
	switch v := p.bind.get().(type) {
	case float64:
		return p.Unit.Exact(v)
	case int:
		return strconv.Itoa(v)
	case string:
		return v
	case bool:
		return yesNo(v)
	case Slot:
		if v.Known {
			return p.Unit.Exact(v.Value)
		}
	case [][]float64:
		return p.editableRows(v)
	}
	return ""
}

func yesNo(v bool) string {
	if v {
		return "yes"
	}
	return "no"
}

func span(lo, hi float64, u unit.Unit) string {
	s := fmt.Sprintf("%s to %s", short(lo), short(hi))
	if u.Symbol == "" {
		return s
	}
	return s + " " + u.Symbol
}

func short(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }

func list(words []string) string {
	s := ""
	for i, w := range words {
		switch {
		case i > 0 && i == len(words)-1:
			s += " or "
		case i > 0:
			s += ", "
		}
		s += w
	}
	return s
}
