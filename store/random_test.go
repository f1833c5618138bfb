package store

import (
	"fmt"
	"slices"
	"strconv"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/unit"

	"pgregory.net/rapid"
)

// anyText draws text with everything that could upset a file.
var anyText = rapid.OneOf(
	rapid.String(),
	rapid.StringOfN(rapid.SampledFrom([]rune("a \"'\\\n\r\t#=[]{}.\x00\x1b\x7f\u0085\u2028\u202e\ufeff\ufffd\U0001F6E9é")), 0, 30, -1),
	rapid.SampledFrom([]string{"\"\"\"", "a\n\"\"\"\nb\"", "\n", "'''\n", "\\", "[[variant]]\nname = 5", "C:\\new\\table"}),
)

var anyName = rapid.StringOfN(rapid.SampledFrom([]rune("ab \"'\\#=[].é\U0001F6E9\u202e")), 1, 12, -1)

// drawStudy is any study that a person could set up, every number one that a
// decimal number in its unit reaches.
func drawStudy(t *rapid.T) *model.Study {
	s := model.NewStudy("")
	drawSections(t, s.Sections())
	for range rapid.IntRange(0, 3).Draw(t, "decisions") {
		d := model.Decision{Date: rapid.StringMatching(`[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|1[0-9]|2[0-8])`).Draw(t, "date"), Text: "d" + anyText.Draw(t, "decision")}
		s.Decisions = append(s.Decisions, d)
	}
	names := rapid.SliceOfNDistinct(anyName, 1, 4, rapid.ID).Draw(t, "names")
	for _, name := range names {
		v := model.NewVariant("")
		drawSections(t, v.Sections())
		v.Name = name
		s.Variants = append(s.Variants, v)
	}
	s.Reference = rapid.SampledFrom(append(names, "")).Draw(t, "reference")
	return s
}

func drawSections(t *rapid.T, sections []param.Section) {
	for _, sec := range sections {
		for _, p := range sec.Params {
			drawParam(t, p, sec.Path(p))
		}
	}
}

// drawParam may be refused by a rule between rows; the old value is as good.
func drawParam(t *rapid.T, p param.Param, label string) {
	settle(t, p)
	if rapid.IntRange(0, 3).Draw(t, label+", keep") == 0 {
		return
	}
	switch p.Kind {
	case param.KindNumber:
		drawNumber(t, p, label)
	case param.KindWhole:
		n := rapid.Float64Range(p.Min, p.Max).Draw(t, label)
		_ = p.Set(strconv.Itoa(int(n)))
	case param.KindChoice:
		_ = p.Set(rapid.SampledFrom(p.Options).Draw(t, label))
	case param.KindToggle:
		_ = p.SetFile(rapid.Bool().Draw(t, label))
	case param.KindText:
		_ = p.SetFile(anyText.Draw(t, label))
	case param.KindTable:
		drawRows(t, p, label)
	}
}

func drawNumber(t *rapid.T, p param.Param, label string) {
	x := rapid.Float64Range(p.Min, p.Max).Draw(t, label)
	switch how := rapid.IntRange(0, 3).Draw(t, label+", how"); {
	case how == 0 && p.Optional:
		_ = p.Set("")
	case how == 1:
		_ = p.SetFile(x)
	case how == 2: // as typed in another unit
		u := rapid.SampledFrom(unit.Of(p.Unit.Dimension)).Draw(t, label+", unit")
		_ = p.Set(fmt.Sprintf("%.6g %s", u.From(p.Unit.SI(x)), u.Symbol))
	default:
		_ = p.SetNumber(p.Unit.SI(x))
	}
}

// drawRows draws columns that rise, as curves do.
func drawRows(t *rapid.T, p param.Param, label string) {
	n := rapid.IntRange(max(p.MinRows, 1), p.MinRows+6).Draw(t, label+", rows")
	rows := make([]any, n)
	for j, c := range p.Columns {
		column := rapid.SliceOfN(rapid.Float64Range(c.Min, c.Max), n, n).Draw(t, label+", "+c.Label)
		slices.Sort(column)
		for i := range rows {
			row, _ := rows[i].([]any)
			rows[i] = append(row[:j:j], column[i])
		}
	}
	_ = p.SetFile(rows)
}

type fataler interface {
	Fatal(args ...any)
	Fatalf(format string, args ...any)
}

// settle moves a default that no decimal number in its unit reaches to the
// nearest that one does.
func settle(t fataler, p param.Param) {
	var err error
	switch v := p.FileValue().(type) {
	case param.Literal:
		err = p.SetFile(number(t, v))
	case [][]param.Literal:
		var rows []any
		for _, r := range v {
			var row []any
			for _, c := range r {
				row = append(row, number(t, c))
			}
			rows = append(rows, row)
		}
		err = p.SetFile(rows)
	}
	if err != nil {
		t.Fatalf("%s does not take its own default: %v", p.FileKey(), err)
	}
}

func number(t fataler, l param.Literal) float64 {
	x, err := strconv.ParseFloat(string(l), 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}
