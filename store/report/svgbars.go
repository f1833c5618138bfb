package report

import (
	"math"

	"backspan/model/unit"
)

// The plane of the bars, in its own units.
const (
	barName, barWide, barFigure = 150.0, 230.0, 45.0
	barHigh, barStep            = 9.0, 32.0
)

// moments draws for each variant the difference of hip moment from the
// reference as two bars: what mass does is filled, what depth does is hollow.
// It is empty where nothing differs.
func (r *Reviewed) moments(id string) string {
	least, most := 0.0, 0.0
	for _, f := range r.Compared.Feel {
		least, most = min(least, f.FromMass, f.FromDepth), max(most, f.FromMass, f.FromDepth)
	}
	if !(most > least) {
		return ""
	}
	others := float64(len(r.Compared.Feel) - 1)
	v := newSVG(id, "What mass and what depth add to the moment at the hip", "The figures stand in the table above.", 0, 0, barName+barWide+2*barFigure, 20+barStep*others)
	at := func(x float64) float64 { return barName + barFigure + (x-least)/(most-least)*barWide }
	ink := pen{colour: "#111", width: 1}
	v.line(ink, [2]float64{at(0), 0}, [2]float64{at(0), barStep * others})
	y := 4.0
	for i, f := range r.Compared.Feel {
		if i == r.Compared.Reference {
			continue
		}
		v.word(0, y+14, chartWord, atStart, shortened(r.Compared.Outcomes[i].Variant, 22))
		if f.Known {
			v.bar(at(0), at(f.FromMass), y, "#555", f.FromMass, f.FromMass+f.FromDepth)
			v.bar(at(0), at(f.FromDepth), y+barHigh+2, "#fff", f.FromDepth, f.FromMass+f.FromDepth)
		} else {
			v.word(at(0)+6, y+14, chartWord, atStart, "cannot be told")
		}
		y += barStep
	}
	v.word(barName+barFigure, y+12, chartWord, atStart, "filled: from mass, hollow: from depth, "+unit.NewtonMetre.Symbol)
	return "<figure class=\"bars\">\n" + v.end() + "</figure>\n"
}

// bar goes from the axis to its end, where its figure stands.
func (v *svg) bar(zero, end, y float64, fill string, value, like float64) {
	v.box(math.Min(zero, end), y, math.Abs(end-zero), barHigh, fill)
	side := atStart
	gap := 5.0
	if end < zero {
		side, gap = atEnd, -5
	}
	v.word(end+gap, y+barHigh-0.5, 10, side, unit.NewtonMetre.Delta(value, like))
}
