package store

import (
	"fmt"
	"strconv"
	"strings"

	"backspan/model/param"
)

// remark is the comment beside a value: label and range, then help, then
// where the default comes from. Text whose key says all has none.
func remark(p param.Param) string {
	s := p.Label
	if a := allowed(p); a != "" {
		s += ": " + a
	}
	if p.Guidance != "" {
		s += "; " + strings.TrimSuffix(p.Guidance, ".")
	}
	if p.Origin != "" {
		s += "; default: " + p.Origin
	}
	if strings.EqualFold(s, p.Key) {
		return ""
	}
	return strings.Join(strings.FieldsFunc(s, unseen), " ")
}

// allowed says what may stand in the file.
func allowed(p param.Param) string {
	switch p.Kind {
	case param.KindText:
		return ""
	case param.KindToggle:
		return "true or false"
	case param.KindTable:
		return rowsAllowed(p)
	}
	if p.Optional {
		return p.Range() + `, or "" for not given`
	}
	return p.Range()
}

func rowsAllowed(p param.Param) string {
	columns := make([]string, len(p.Columns))
	for i, c := range p.Columns {
		columns[i] = fmt.Sprintf("%s %s to %s", c.Label, short(c.Min), short(c.Max))
		if c.Unit.Symbol != "" {
			columns[i] += " " + c.Unit.Symbol
		}
	}
	s := "rows of [" + strings.Join(columns, ", ") + "]"
	if p.MinRows > 1 {
		s += fmt.Sprintf(", at least %d", p.MinRows)
	}
	return s + ", or [] for not given"
}

func short(x float64) string { return strconv.FormatFloat(x, 'g', 6, 64) }
