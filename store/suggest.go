package store

import (
	"fmt"
	"strings"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/unit"
)

// suggest says what may have been meant by a key that a table does not have;
// empty when nothing is near.
func (g register) suggest(table, key string, v any, inVariant bool) string {
	for _, try := range []func() string{
		func() string { return g.otherCase(table, key) },
		func() string { return g.otherUnit(table, key, v) },
		func() string { return g.otherScope(table, key, inVariant) },
		func() string { return g.otherTable(key) },
		func() string { return g.nearest(table, key) },
	} {
		if s := try(); s != "" {
			return "; " + s
		}
	}
	return ""
}

// here calls visit for every param and every table directly in table.
func (g register) here(table string, visit func(last string)) {
	for _, full := range g.order {
		if t, last := cutLast(full); t == table {
			visit(last)
		}
	}
	for full := range g.tables {
		if t, last := cutLast(full); t == table {
			visit(last)
		}
	}
}

func (g register) otherCase(table, key string) (s string) {
	g.here(table, func(last string) {
		if strings.EqualFold(last, key) {
			s = fmt.Sprintf("write it %s: keys are read letter for letter", last)
		}
	})
	return s
}

// otherUnit finds the parameter whose key was given with another unit or with
// none, and converts the value when it can.
func (g register) otherUnit(table, key string, v any) string {
	for _, full := range g.order {
		t, last := cutLast(full)
		p := g.params[full]
		if t != table || p.Kind != param.KindNumber && p.Kind != param.KindWhole {
			continue
		}
		rest, ok := strings.CutPrefix(strings.ToLower(key), p.Key)
		switch {
		case !ok:
		case rest == "":
			return fmt.Sprintf("the unit is part of the key; write %s, in %s", last, p.Unit)
		case rest[0] != '_':
		default:
			if u, ok := unitOf(p.Unit, rest[1:]); ok {
				return otherUnitText(p, u, v)
			}
			if p.Unit.Symbol == "" && p.Unit.Dimension == unit.Dimensionless && len(rest) <= 4 {
				return fmt.Sprintf("it takes no unit; write %s", last)
			}
		}
	}
	return ""
}

func unitOf(like unit.Unit, key string) (unit.Unit, bool) {
	for _, u := range unit.Of(like.Dimension) {
		if u.Key != "" && u.Key == key {
			return u, true
		}
	}
	return unit.Unit{}, false
}

func otherUnitText(p param.Param, u unit.Unit, v any) string {
	s := fmt.Sprintf("%s is asked for in %s: write %s", p.Label, inWords(p.Unit), p.FileKey())
	var x float64
	switch n := v.(type) {
	case float64:
		x = n
	case int64:
		x = float64(n)
	default:
		return s
	}
	if si := u.SI(x); si-si == 0 { // finite
		s += " = " + float(param.Literal(p.Unit.Exact(si)))
	}
	return s
}

func inWords(u unit.Unit) string {
	if u.Symbol == "" {
		return "plain numbers"
	}
	return u.Symbol
}

// otherScope catches a variant's table at the top of the file, and the
// study's tables within a variant.
func (g register) otherScope(table, key string, inVariant bool) string {
	if table != "" {
		return ""
	}
	if inVariant {
		other := registerOf(model.NewStudy("").Sections())
		switch {
		case other.tables[key]:
			return fmt.Sprintf("it belongs to the whole study: write [%s], without %q", key, variantKey)
		case hasParam(other, key):
			return "it belongs to the whole study: write it at the top of the file"
		}
		return ""
	}
	v := model.NewVariant("")
	if registerOf(v.Sections()).tables[key] {
		return fmt.Sprintf("it belongs to a variant: write [%s.%s] below its [[%s]]", variantKey, key, variantKey)
	}
	return ""
}

func hasParam(g register, key string) bool { _, ok := g.params[key]; return ok }

// otherTable finds the one table that has this very key.
func (g register) otherTable(key string) string {
	var found []string
	for _, full := range g.order {
		if t, last := cutLast(full); last == key && t != "" {
			found = append(found, t)
		}
	}
	if len(found) != 1 {
		return ""
	}
	return fmt.Sprintf("it belongs in the table %s", found[0])
}

func (g register) nearest(table, key string) string {
	most := min(max(2, len(key)/3), 6) + 1
	best, least := "", most
	g.here(table, func(last string) {
		d := distance(strings.ToLower(key), last, most)
		if d < least || d < most && d == least && last < best {
			best, least = last, d
		}
	})
	if best == "" {
		return ""
	}
	return fmt.Sprintf("did you mean %s?", best)
}

// distance counts the letters to change, add, drop or swap with a neighbour
// to get from a to b; most when there are as many or more.
func distance(a, b string, most int) int {
	if len(a)-len(b) >= most || len(b)-len(a) >= most {
		return most
	}
	before, row := make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := 1; i <= len(a); i++ {
		next := make([]int, len(b)+1)
		next[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			next[j] = min(row[j]+1, next[j-1]+1, row[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				next[j] = min(next[j], before[j-2]+1)
			}
		}
		before, row = row, next
	}
	return min(row[len(b)], most)
}
