package store

import (
	"fmt"
	"strings"
	"testing"

	"backspan/model"
	"backspan/model/param"
)

// variantFile is a sound file with one value of its variant replaced, by the
// file key; the line of that value is returned too.
func variantFile(t *testing.T, full, value string) (src string, line int) {
	t.Helper()
	table, key := cutLast(full)
	src = string(Encode(sound()))
	head := strings.Index(src, "["+variantKey+"."+table+"]\n")
	if head < 0 {
		t.Fatalf("no table %s in\n%s", table, src)
	}
	at := head + strings.Index(src[head:], "\n"+key+" = ") + 1
	end := at + strings.IndexByte(src[at:], '\n')
	return src[:at] + key + " = " + value + src[end:], 1 + strings.Count(src[:at], "\n")
}

func sound() *model.Study {
	s := model.NewStudy("Sound")
	s.Variants = append(s.Variants, model.NewVariant("A"))
	return s
}

// shown finds a variant's parameter that a file always holds.
func shown(t *testing.T, fits func(param.Param) bool) (full string, p param.Param) {
	t.Helper()
	v := model.NewVariant("A")
	for _, sec := range v.Sections() {
		for _, p := range sec.Params {
			if sec.Key != "" && !sec.Hidden && p.Shown() && fits(p) {
				return join(sec.Key, p.FileKey()), p
			}
		}
	}
	t.Skip("no such parameter is declared")
	return
}

func TestBadValues(t *testing.T) {
	quantity := func(p param.Param) bool {
		return p.Kind == param.KindNumber && !p.Optional && p.Unit.Symbol != "" && p.Min >= 0
	}
	count := func(p param.Param) bool { return p.Kind == param.KindWhole && p.Min > 0 }
	choice := func(p param.Param) bool { return p.Kind == param.KindChoice }
	mass := func(p param.Param) bool { return quantity(p) && p.Unit.Symbol == "kg" }
	ribs := func(p param.Param) bool { return p.Key == "ribs" }
	for _, tc := range []struct {
		name, value string
		fits        func(param.Param) bool
		says        []string
	}{
		{"0 ribs", "0", ribs, []string{"0 is outside"}},
		{"8.5 ribs", "8.5", ribs, []string{"whole number"}},
		{"negative mass", "-3.5", mass, []string{"-3.5 kg is outside"}},
		{"nan", "nan", quantity, []string{"not a finite number"}},
		{"inf", "inf", quantity, []string{"not a finite number"}},
		{"+inf", "+inf", quantity, []string{"not a finite number"}},
		{"-nan", "-nan", quantity, []string{"not a finite number"}},
		{"beyond the range", "1e9", quantity, []string{"is outside", " to "}},
		{"text for a number", `"62"`, quantity, []string{`found the text "62"`, "give a number"}},
		{"nothing for a number", `""`, quantity, []string{"give a number"}},
		{"truth for a number", "true", quantity, []string{"found true"}},
		{"list for a number", "[1.0]", quantity, []string{"found a list"}},
		{"table for a number", "{ a = 1 }", quantity, []string{"found a table"}},
		{"date for a number", "2024-02-01", quantity, []string{"a date or a time"}},
		{"decimal comma", "2,5", quantity, []string{"decimal point: 2.5", "column"}},
		{"unit behind", "2.5 cm", quantity, []string{"unit is part of the key", "2.5"}},
		{"count with a point", "8.0", count, []string{"no decimal point", "write 8"}},
		{"count as text", `"8"`, count, []string{"give a whole number"}},
		{"huge count", "9223372036854775807", count, []string{"is outside"}},
		{"no such choice", `"mauve"`, choice, []string{`"mauve" is not a choice`}},
		{"choice as number", "1", choice, []string{"text in quotes"}},
		{"escape to the terminal", `"\u001b[2J"`, choice, []string{`\x1b[2J`}},
	} {
		t.Run(tc.name, func(t *testing.T) {
			full, p := shown(t, tc.fits)
			src, line := variantFile(t, full, tc.value)
			expect(t, src, line, variantKey+"."+full, tc.says...)
			if !strings.Contains(problems(t, src)[0].Text, p.Label) && !strings.Contains(tc.name, "comma") && !strings.Contains(tc.name, "behind") {
				t.Errorf("%q does not name %q", problems(t, src)[0].Text, p.Label)
			}
		})
	}
}

func TestBadTables(t *testing.T) {
	v := model.NewVariant("A")
	for _, sec := range v.Sections() {
		for _, p := range sec.Params {
			if p.Kind != param.KindTable || p.MinRows < 2 {
				continue
			}
			row := make([]string, len(p.Columns))
			for i, c := range p.Columns {
				row[i] = fmt.Sprintf("%f", c.Max)
			}
			for value, says := range map[string]string{
				"[[" + strings.Join(row, ", ") + "]]": "needs at least", // a curve of one point
				"[[1.0]]":                             "row 1 must hold",
				"[1.0, 2.0]":                          "row 1 must hold",
				`"1 2"`:                               "give a list of rows",
				"[" + strings.Repeat("[], ", mostRows+1) + "]":             "give at most 1000",
				"[[nan" + strings.Repeat(", nan", len(p.Columns)-1) + "]]": "not a finite number",
			} {
				src := "format = 1\n[[variant]]\nname = \"A\"\n\n[variant." + sec.Key + "]\n" + p.FileKey() + " = " + value + "\n"
				expect(t, src, 6, variantKey+"."+join(sec.Key, p.FileKey()), p.Label, says)
			}
			return
		}
	}
	t.Skip("no such table is declared")
}

func TestWrongUnit(t *testing.T) {
	metre := func(p param.Param) bool {
		return p.Kind == param.KindNumber && !p.Optional && p.Unit.Symbol == "mm"
	}
	full, p := shown(t, metre)
	table, key := cutLast(full)
	for given, says := range map[string]string{
		p.Key + "_in = 2":             key + " = 50.8",
		p.Key + "_cm = 2.5":           key + " = 25.0",
		p.Key + " = 62.0":             "write " + key + ", in mm",
		p.Key + "_m = \"x\"":          "write " + key,
		strings.ToUpper(key) + " = 1": "write it " + key,
		key + "m = 1":                 "did you mean " + key,
	} {
		src := "format = 1\n[[variant]]\nname = \"A\"\n[variant." + table + "]\n" + given + "\n"
		expect(t, src, 5, variantKey+"."+table+"."+strings.Fields(given)[0], "no such key", says)
	}
}
