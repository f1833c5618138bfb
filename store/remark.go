package store

import (
	"fmt"
	"regexp"
	"slices"
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

var spanWords = regexp.MustCompile(`^-?[\d.e+]+ to -?[\d.e+]+( \S+)?(, or "" for not given)?$`)

// remarkedBefore reports whether what follows a label in a comment is what a
// version before would have written there, and not a person's words.
func remarkedBefore(p param.Param, after string) bool {
	if after == "" {
		return true
	}
	if p.Kind == param.KindText {
		first, _, _ := strings.Cut(p.Guidance, " ")
		return first != "" && strings.HasPrefix(after+" ", "; "+first+" ")
	}
	said, ok := strings.CutPrefix(after, ": ")
	said, _, _ = strings.Cut(said, "; ")
	switch {
	case !ok:
		return false
	case p.Kind == param.KindChoice:
		return strings.Contains(said, " or ") && slices.ContainsFunc(p.Options, func(o string) bool { return strings.Contains(said, o) })
	case p.Kind == param.KindToggle:
		return said == allowed(p)
	case p.Kind == param.KindTable:
		return strings.HasPrefix(said, "rows of [")
	}
	return spanWords.MatchString(said)
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
