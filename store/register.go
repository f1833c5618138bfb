package store

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"time"

	"backspan/model/param"
)

// register is what a study or a variant may hold, by its dotted file key.
type register struct {
	params map[string]param.Param
	tables map[string]bool
	order  []string // of the params, as declared
}

func registerOf(sections []param.Section) register {
	g := register{params: map[string]param.Param{}, tables: map[string]bool{}}
	for _, sec := range sections {
		for table := sec.Key; table != ""; table, _ = cutLast(table) {
			g.tables[table] = true
		}
		for _, p := range sec.Params {
			key := join(sec.Key, p.FileKey())
			g.params[key] = p
			g.order = append(g.order, key)
		}
	}
	return g
}

func join(table, key string) string {
	if table == "" {
		return key
	}
	return table + "." + key
}

// cutLast parts "drive.gear.module_mm" into "drive.gear" and "module_mm".
func cutLast(key string) (table, last string) {
	i := strings.LastIndexByte(key, '.')
	if i < 0 {
		return "", key
	}
	return key[:i], key[i+1:]
}

// entry reads one key of a table; the path at leads to it.
func (r *reader) entry(known register, table, key string, v any, at path) {
	full := join(table, key)
	plain := !strings.Contains(key, ".") // else a quoted key could pass for a table's
	switch p, isParam := known.params[full]; {
	case plain && isParam:
		if err := set(p, v); err != nil {
			r.badAt(at, "%s", err)
		}
	case plain && known.tables[full]:
		t, ok := v.(map[string]any)
		if !ok {
			r.badAt(at, "must be a table; write [%s] with one bracket on either side and its keys below", at)
			return
		}
		for _, k := range r.keys(t, at) {
			r.entry(known, full, k, t[k], at.with(k))
		}
	case len(r.faults) > mostProblems: // counted, but never shown
		r.badAt(at, "there is no such key")
	default:
		r.badAt(at, "there is no such key%s", known.suggest(table, key, v, r.variant != ""))
	}
}

// mostRows is far above any curve a person measures.
const mostRows = 1000

// set gives a parameter what the file holds. An empty text stands for a
// quantity that is not given, an empty list for a table that is not.
func set(p param.Param, v any) error {
	switch v := v.(type) {
	case time.Time:
		return fmt.Errorf("%s: found a date or a time; give %s", p.Label, p.Range())
	case string:
		if v == "" && p.Optional {
			return p.Set("")
		}
	case []any:
		if len(v) == 0 && p.Kind == param.KindTable && p.FileValue() == nil {
			return nil
		}
		if len(v) > mostRows {
			return fmt.Errorf("%s: holds %d rows; give at most %d", p.Label, len(v), mostRows)
		}
	case float64:
		if p.Kind == param.KindWhole && v == math.Trunc(v) && math.Abs(v) < 1e9 {
			return fmt.Errorf("%s: a whole number has no decimal point; write %.0f, from %s", p.Label, v, p.Range())
		}
	}
	err := p.SetFile(v)
	var refused *param.Refusal
	if errors.As(err, &refused) {
		return fmt.Errorf("%s: %s", refused.Param.Label, refused.Reason)
	}
	return err
}
