package model

import (
	"fmt"
	"maps"
	"slices"
	"strings"
)

// Contrast is in what two studies differ in one thing: in what all variants
// share, in one variant, or in the log of decisions.
type Contrast struct {
	Title       string
	Only        Side
	Differences []Difference
}

// TitleDecisions is the title of the contrast of two logs.
const TitleDecisions = "Decisions"

// DecisionOrder is the path of the one difference between logs of the same
// entries in another order.
const DecisionOrder = "decision_order"

// Nothing reports whether both sides are alike.
func (c Contrast) Nothing() bool { return c.Only == OnBoth && len(c.Differences) == 0 }

// Side is which of two studies has a variant.
type Side int

// The sides.
const (
	OnBoth Side = iota
	OnlyFrom
	OnlyTo
)

// Contrasts compares two studies: what all variants share first, then the
// variants by name, those of one study only last, then the log when there is
// one. What is alike has a contrast with nothing in it.
func Contrasts(from, to *Study) []Contrast {
	cs := []Contrast{{Title: "Study", Differences: append(Differences(from.Sections(), to.Sections()), orders(from, to)...)}}
	for i := range from.Variants {
		v := &from.Variants[i]
		if j := to.Index(v.Name); j >= 0 {
			cs = append(cs, ContrastOf(v, &to.Variants[j]))
		} else {
			cs = append(cs, Contrast{Title: titled(v), Only: OnlyFrom})
		}
	}
	for i := range to.Variants {
		if v := &to.Variants[i]; from.Index(v.Name) < 0 {
			cs = append(cs, Contrast{Title: titled(v), Only: OnlyTo})
		}
	}
	if len(from.Decisions)+len(to.Decisions) > 0 {
		cs = append(cs, Contrast{Title: TitleDecisions, Differences: logged(from.Decisions, to.Decisions)})
	}
	return cs
}

// ContrastOf compares two variants; that their names differ is no difference.
func ContrastOf(from, to *Variant) Contrast {
	ds := slices.DeleteFunc(Differences(from.Sections(), to.Sections()), func(d Difference) bool { return d.Path == "name" })
	title := titled(from)
	if from.Name != to.Name {
		title += " against " + to.Name
	}
	return Contrast{Title: title, Differences: ds}
}

func titled(v *Variant) string { return "Variant " + v.Name }

// orders tells whether the variants that both have stand in another order.
func orders(from, to *Study) []Difference {
	here, there := namesAlso(from, to), namesAlso(to, from)
	if slices.Equal(here, there) {
		return nil
	}
	return []Difference{{Section: "Study", Path: "variant_order", Label: "Order of the variants", From: strings.Join(here, ", "), To: strings.Join(there, ", ")}}
}

func namesAlso(in, also *Study) []string {
	var names []string
	for i := range in.Variants {
		if name := in.Variants[i].Name; also.Index(name) >= 0 {
			names = append(names, name)
		}
	}
	return names
}

// logged tells which decisions only one log has. Two of one date are one that
// was reworded.
func logged(from, to []Decision) []Difference {
	here, there := without(from, to), without(to, from)
	var ds []Difference
	for _, d := range here {
		reworded := ""
		if j := slices.IndexFunc(there, func(o Decision) bool { return o.Date == d.Date }); j >= 0 {
			reworded = there[j].Text
			there = slices.Delete(there, j, j+1)
		}
		ds = append(ds, decided(d.Date, d.Text, reworded))
	}
	for _, d := range there {
		ds = append(ds, decided(d.Date, "", d.Text))
	}
	for i := range from {
		if len(ds) == 0 && from[i] != to[i] {
			return []Difference{{Path: DecisionOrder, Label: fmt.Sprintf("Entry %d", i+1), From: from[i].Date + " " + from[i].Text, To: to[i].Date + " " + to[i].Text}}
		}
	}
	return ds
}

func decided(date, from, to string) Difference {
	return Difference{Path: "decision", Label: date, From: from, To: to}
}

// without is what a log has and another has not; of equal entries as many as
// it has more.
func without(log, other []Decision) []Decision {
	spare := map[Decision]int{}
	for _, d := range other {
		spare[d]++
	}
	var only []Decision
	for _, d := range log {
		if spare[d]--; spare[d] < 0 {
			only = append(only, d)
		}
	}
	return only
}

// Remarked compares what a person wrote beside the values of two studies; it
// is set nowhere, so Contrasts leaves it out.
func Remarked(from, to *Study) Contrast {
	c := Contrast{Title: "Comments in the file", Differences: remarks("", from.Comments, to.Comments)}
	for i := range from.Variants {
		v := &from.Variants[i]
		if j := to.Index(v.Name); j >= 0 {
			c.Differences = append(c.Differences, remarks(v.Name+": ", v.Comments, to.Variants[j].Comments)...)
		}
	}
	return c
}

func remarks(of string, from, to map[string]string) []Difference {
	keys := slices.AppendSeq(slices.Collect(maps.Keys(from)), maps.Keys(to))
	slices.Sort(keys)
	var ds []Difference
	for _, key := range slices.Compact(keys) {
		if from[key] != to[key] {
			ds = append(ds, Difference{Path: "#" + key, Label: of + placed(key), From: from[key], To: to[key]})
		}
	}
	return ds
}

// placed says where in the file a comment stands.
func placed(key string) string {
	switch key {
	case "":
		return "above it"
	case CommentAtEnd:
		return "at the end of the file"
	}
	return key
}
