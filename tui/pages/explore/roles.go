package explore

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"backspan/model/explore"
	"backspan/model/reading"
)

// role is what a field is for in its question.
type role int

const (
	over role = iota
	show
	change
	target
	free
	goal
	least
	most
	doubt
	population
	generations
	runs
	seed
	samples
)

// source is where the subject of a field is chosen from.
type source int

const (
	nothing     source = iota
	parameters         // that can be turned
	figures            // readings
	quantities         // parameters that are numbers, and readings
	dimensional        // parameters that have a range
)

// trait is what the fields of a role have in common.
type trait struct {
	word string // before the field
	from source
	text bool   // something is typed
	most int    // fields of the role; with one that is there always nothing is added
	more string // for a field that could be added
	how  string // how it is typed
}

const valuesHow = "a range with or without a count, 55 mm..80 mm/11, or a list, 62, 65, 70 mm; empty takes the usual range, or every word"

var traits = [...]trait{
	over:   {"over", parameters, true, 2, "one more parameter to sweep over", valuesHow},
	show:   {"reading", figures, false, 20, "one more reading to show", ""},
	change: {"change", dimensional, true, 1, "", "the range to look in, 55 mm..80 mm"},
	target: {"target", figures, true, 1, "", "the target, with or without a unit"},
	free:   {"free", parameters, true, 40, "one more parameter that may change", valuesHow},
	goal:   {"goal", figures, true, 12, "one more reading to improve", "less or more"},
	least:  {"at least", figures, true, 20, "a reading that must not be less", "the limit, with or without a unit"},
	most:   {"at most", figures, true, 20, "a reading that must not be more", "the limit, with or without a unit"},
	doubt: {"spread", quantities, true, 60, "one more doubt, of a parameter or a method",
		"±0.05 mm, ±2 %, sd 0.02 mm or 54.9..55.2 mm, with triangular or normal behind it; even unless said"},
	population:  {"population", nothing, true, 1, "", "designs that live at once"},
	generations: {"generations", nothing, true, 1, "", "how many times they are bred"},
	runs:        {"runs", nothing, true, 1, "", "how many times the search begins anew"},
	seed:        {"seed", nothing, true, 1, "", "decides the random numbers: the same seed gives the same answer"},
	samples:     {"samples", nothing, true, 1, "", "how many machines are drawn"},
}

// roles are those of each question, in the order of its fields.
var roles = [questions][]role{
	overRange:   {over, show},
	whatFor:     {change, target},
	compromises: {free, goal, least, most, population, generations, runs, seed},
	howSure:     {doubt, show, samples, seed},
}

// lasting reports whether the field is always there.
func (r role) lasting() bool { return traits[r].more == "" }

// field is one line of a question: what it is about, and what is typed for it.
type field struct {
	role   role
	key    string // of a parameter or a reading
	text   string
	origin string // of a doubt that was not given by the person
}

// grammar is the field as the commands take it.
func (f field) grammar() string {
	switch text := strings.TrimSpace(f.text); {
	case traits[f.role].from == nothing:
		return text
	case !traits[f.role].text || text == "":
		return f.key
	default:
		return f.key + "=" + text
	}
}

// check says why the field cannot be taken.
func (f field) check(b explore.Base) (err error) {
	switch f.role {
	case over:
		_, err = b.Axis(f.grammar())
	case show:
		_, err = b.Reading(f.key)
	case change:
		_, _, _, err = b.Range(f.grammar())
	case target:
		_, _, err = b.Target(f.grammar())
	case free:
		_, err = b.Free(f.grammar())
	case goal:
		_, err = b.Goal(f.grammar())
	case least:
		_, err = b.Limit(f.grammar(), reading.Least)
	case most:
		_, err = b.Limit(f.grammar(), reading.Most)
	case doubt:
		_, err = b.Spread(f.grammar())
	default:
		_, err = f.number()
	}
	return err
}

func (f field) number() (uint64, error) {
	n, err := strconv.ParseUint(strings.TrimSpace(f.text), 10, 31)
	if err != nil {
		return 0, fmt.Errorf("%s: %q is not a whole number from 0 on", traits[f.role].word, f.text)
	}
	return n, nil
}

// usual is what stands in a field of that role and subject at first.
func usual(b explore.Base, r role, key string) field {
	f := field{role: r, key: key}
	switch r {
	case over, change, free:
		if d, err := b.Dial(key); err == nil {
			f.text = d.UsualRange()
		}
	case doubt:
		f.text = usualDoubt(b, key)
	case goal:
		f.text = "more"
		if of, err := b.Reading(key); err == nil && of.Better == reading.Lower {
			f.text = "less"
		}
	case target, least, most:
		if of, err := b.Reading(key); err == nil && of.Known() {
			f.text = of.Text()
		}
	default:
	}
	return f
}

// usualDoubt is a share of the value; where there is no share of it, a part of
// the usual range, and where there is no value, that range.
func usualDoubt(b explore.Base, key string) string {
	const share, part = "±2 %", 0.1
	if !b.HasParameter(key) {
		if r, err := b.Reading(key); err == nil && !explore.Sharable(r.Unit) {
			return "±2 " + r.Unit.Symbol
		}
		return share
	}
	d, err := b.Dial(key)
	switch {
	case err != nil:
		return share
	case math.IsNaN(d.Now):
		return d.UsualRange()
	case d.Now == 0 || !explore.Sharable(d.Unit):
		width := d.Unit.From(d.Usual[1]) - d.Unit.From(d.Usual[0])
		return strings.TrimSpace("±" + strconv.FormatFloat(part*width, 'g', 3, 64) + " " + d.Unit.Symbol)
	}
	return share
}
