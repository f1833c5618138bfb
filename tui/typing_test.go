package tui

import (
	"math"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/unit"
	"backspan/tui/desk"
)

// numbers lists every parameter of a study that is one number, with its place.
func numbers(d *desk.Desk) (places []desk.Place, params []param.Param) {
	for variant := desk.Shared; variant < len(d.Study().Variants); variant++ {
		for _, s := range d.Sections(variant) {
			for _, p := range s.Params {
				if p.Shown() && (p.Kind == param.KindNumber || p.Kind == param.KindWhole) {
					places = append(places, desk.Place{Variant: variant, Path: s.Path(p)})
					params = append(params, p)
				}
			}
		}
	}
	return places, params
}

// spelling draws a number inside p's range as a person might type it, and what
// it is worth in SI.
func spelling(t *rapid.T, p param.Param) (text string, si float64) {
	if p.Kind == param.KindWhole {
		n := rapid.IntRange(int(p.Min), int(p.Max)).Draw(t, "count")
		text = strconv.Itoa(n)
		if n >= 0 && rapid.Bool().Draw(t, "plus") {
			text = "+" + text
		}
		return text, float64(n)
	}
	x := rapid.Float64Range(p.Min, p.Max).Draw(t, "value")
	if p.Min < 1 && p.Max > 0 && rapid.Bool().Draw(t, "small") {
		x = rapid.Float64Range(max(p.Min, -0.99), min(p.Max, 0.99)).Draw(t, "small value")
	}
	decimals := rapid.IntRange(0, 6).Draw(t, "decimals")
	x, _ = strconv.ParseFloat(strconv.FormatFloat(x, 'f', decimals, 64), 64)
	if x < p.Min || x > p.Max {
		x = p.Min
		decimals = -1
	}
	text = strconv.FormatFloat(x, 'f', decimals, 64)
	switch {
	case strings.HasPrefix(text, "0.") && rapid.Bool().Draw(t, "no zero"):
		text = text[1:]
	case strings.HasPrefix(text, "-0.") && rapid.Bool().Draw(t, "no zero"):
		text = "-" + text[2:]
	}
	if x >= 0 && !strings.HasPrefix(text, "-") && rapid.Bool().Draw(t, "plus") {
		text = "+" + text
	}
	if rapid.Bool().Draw(t, "comma") {
		text = strings.Replace(text, ".", ",", 1)
	}
	if p.Unit.Symbol != "" && p.Unit.Dimension != unit.Money && rapid.Bool().Draw(t, "unit") {
		text += " " + p.Unit.Symbol
	}
	return text, p.Unit.SI(x)
}

// Whatever number is typed on a row of numbers, the first character already
// belongs to it: Enter sets that parameter to that value, and nothing else in
// the study changes.
func TestATypedNumberSetsItsParameterAndNothingElse(t *testing.T) {
	study := model.Sample()
	study.Variants = study.Variants[:2]
	rapid.Check(t, func(t *rapid.T) {
		o := plateau()
		o.Study = study
		m := begin(o, 80, 24)
		places, params := numbers(m.desk)
		i := rapid.IntRange(0, len(places)-1).Draw(t, "row")
		place, p := places[i], params[i]
		text, si := spelling(t, p)
		if place.Variant != desk.Shared {
			m.bench.Take(place.Variant)
		}
		m.bench.Show(place)
		for _, c := range text {
			m = press(m, string(c))
		}
		m = press(m, "enter")

		want := study.Clone()
		sections := want.Sections()
		if place.Variant != desk.Shared {
			sections = want.Variants[place.Variant].Sections()
		}
		q, _ := param.Find(sections, place.Path)
		if err := q.SetNumber(si); err != nil {
			t.Fatalf("%s %s: %v", place.Path, text, err)
		}
		if got, ok := q.Number(); !ok || math.Abs(got-si) > 1e-9*(1+math.Abs(si)) {
			t.Fatalf("%s: %g was set as %g", place.Path, si, got)
		}
		if got, _, _ := m.Study(); !reflect.DeepEqual(got, want.Clone()) {
			now, _ := param.Find(m.desk.Sections(place.Variant), place.Path)
			t.Fatalf("%q typed on %s (%s) left it at %s and the study otherwise than wanted:\n%s", text, p.Label, place.Path, now.Show(), m.View())
		}
	})
}
