package explore

import (
	"fmt"
	"strings"

	"backspan/model/explore"
	"backspan/model/param"
	"backspan/model/reading"
)

// label names the subject of a field.
func (f field) label(b explore.Base) string {
	if traits[f.role].from != figures && b.HasParameter(f.key) {
		if d, err := b.Dial(f.key); err == nil {
			return d.Label
		}
	}
	r, err := b.Reading(f.key)
	switch {
	case err != nil:
		return f.key
	case f.role == doubt:
		return r.Label + ", method"
	}
	return r.Label
}

// facts is what is known of the subject of a field.
func (f field) facts(b explore.Base) []string {
	if traits[f.role].from == nothing {
		return nil
	}
	if traits[f.role].from == figures || !b.HasParameter(f.key) {
		return readingFacts(b, f)
	}
	d, err := b.Dial(f.key)
	if err != nil {
		return nil
	}
	var facts []string
	if f.origin != "" {
		facts = append(facts, f.origin)
	}
	if !b.Applies(d.Path) {
		facts = append(facts, "does not bear on the machine in hand as it is chosen")
	}
	if d.Worded() {
		return append(facts, "now "+d.Text(d.Now)+"; of "+strings.Join(d.Options, ", "))
	}
	now := "not given now"
	if d.Now == d.Now { // not NaN
		now = "now " + d.Text(d.Now)
	}
	return append(facts, fmt.Sprintf("%s; usual %s to %s, allowed %s to %s", now, d.Text(d.Usual[0]), d.Text(d.Usual[1]), d.Text(d.Min), d.Text(d.Max)))
}

func readingFacts(b explore.Base, f field) []string {
	r, err := b.Reading(f.key)
	if err != nil {
		return nil
	}
	s := "now " + r.Text()
	if r.Better != reading.Neither {
		s += "; " + string(r.Better) + " is better"
	}
	if f.origin != "" {
		return []string{f.origin, s}
	}
	return []string{s}
}

// turnable reports whether a parameter may be the subject of a field.
func (s source) turnable(k param.Kind) bool {
	switch k {
	case param.KindNumber:
		return s == parameters || s == quantities || s == dimensional
	case param.KindWhole:
		return s == parameters || s == dimensional
	case param.KindChoice, param.KindToggle:
		return s == parameters
	default:
		return false
	}
}
