package explore

import (
	"math"
	"strconv"

	"backspan/model"
	"backspan/model/param"
	"backspan/model/unit"
)

// number is one parameter that can be stepped.
type number struct {
	Path    string
	Section string
	Label   string
	Shared  bool // by all variants of the study
	Set     string
	Origin  string // of the default
	Help    string

	unit  unit.Unit
	now   float64 // in unit
	size  float64 // of the step, in unit
	share float64 // the step as a share of the value, or of the usual range
	step  string  // the step in words: "1 %", "1 mm", "0.1 pt"
	fine  float64 // the form's own step, in unit
	min   float64
	max   float64
}

func sections(s *model.Study, v *model.Variant, shared bool) []param.Section {
	if shared {
		return s.Sections()
	}
	return v.Sections()
}

// numbers lists what can be stepped: first what belongs to the variant.
func numbers(s *model.Study, v *model.Variant) []number {
	var all []number
	for _, shared := range []bool{false, true} {
		for _, sec := range sections(s, v, shared) {
			for _, p := range sec.Params {
				x, ok := p.Number()
				if sec.Hidden || !p.Shown() || !ok {
					continue
				}
				all = append(all, numberOf(sec, p, p.Unit.From(x), shared))
			}
		}
	}
	return all
}

func numberOf(sec param.Section, p param.Param, now float64, shared bool) number {
	n := number{Path: sec.Path(p), Section: sec.Label, Label: p.Label, Shared: shared, Set: p.Show(), Origin: p.Origin, Help: p.Guidance,
		unit: p.Unit, now: now, fine: p.FineStep(), min: p.Min, max: p.Max}
	switch {
	case p.Kind == param.KindWhole:
		n.fine, n.size, n.share, n.step = 1, 1, 1/math.Max(math.Abs(now), 1), "1"
	case scales(p) && now > 0:
		n.size, n.share, n.step = 0.01*now, 0.01, "1 %"
	default:
		n.size, n.share = n.fine, n.fine/usualWidth(p)
		n.step = strconv.FormatFloat(n.fine, 'g', 6, 64)
		n.step += stepUnit(p.Unit)
	}
	return n
}

// scales reports whether a share of the value means something: not of a place that
// may lie on either side of zero.
func scales(p param.Param) bool {
	return p.Min >= 0 && Sharable(p.Unit)
}

// stepUnit tells a step in percentage points from a share of the value.
func stepUnit(u unit.Unit) string {
	switch u.Symbol {
	case "", "°":
		return u.Symbol
	case unit.Percent.Symbol:
		return " pt"
	}
	return " " + u.Symbol
}

// Sharable reports whether a share of a figure in that unit means something: not
// of a temperature, nor of a level. A share of a percentage would be mistaken for
// percentage points.
func Sharable(u unit.Unit) bool {
	return u.Shift == 0 && !level(u) && u.Symbol != unit.Percent.Symbol
}

func level(u unit.Unit) bool { return u.Dimension == unit.SoundLevel || u.Dimension == unit.PlainLevel }

func usualWidth(p param.Param) float64 {
	if w := p.TypicalMax - p.TypicalMin; w > 0 {
		return w
	}
	return math.Max(p.Max-p.Min, p.FineStep())
}
