package report

import (
	"math"
	"strings"

	"backspan/model"

	"github.com/charmbracelet/x/ansi"
)

// The plane of a chart, in its own units.
const (
	chartWide, chartHigh = 300.0, 180.0
	chartLeft, chartFoot = 48.0, 54.0
	chartWord            = 13.0
	legendStep           = 17.0
)

// chartPens tell lines apart on a screen by colour and on paper by dashes.
var chartPens = [...]pen{
	{"#0b3c8c", 2, ""}, {"#a33b00", 2, "8 4"}, {"#1b6e3a", 2, "2 3"}, {"#6b2a86", 2, "10 3 2 3"},
	{"#444", 2, "14 4"}, {"#8a6d00", 2, "4 4"}, {"#00717a", 2, "10 3 2 3 2 3"}, {"#a1004f", 2, "1 4"},
}

// chartLine is one line of a chart and what it is called.
type chartLine struct {
	name  string
	curve model.Curve
}

// chart draws lines that share their axes. ok is false when none has points.
func chart(id, title string, lines []chartLine) (drawn string, ok bool) {
	least, most, ok := chartReach(lines)
	if !ok {
		return "", false
	}
	along, across := lines[0].curve.Along, lines[0].curve.Across
	foot := chartHigh + chartFoot
	v := newSVG(id, title, chartTold(lines), 0, 0, chartLeft+chartWide+24, foot+legendStep*float64(len(lines)))
	place := func(p model.CurvePoint) [2]float64 {
		return [2]float64{chartLeft + (p.X-least.X)/(most.X-least.X)*chartWide, 10 + (most.Y-p.Y)/(most.Y-least.Y)*(chartHigh-20)}
	}
	v.axes(model.CurvePoint{X: along.Unit.From(least.X), Y: across.Unit.From(least.Y)}, model.CurvePoint{X: along.Unit.From(most.X), Y: across.Unit.From(most.Y)}, func(p model.CurvePoint) [2]float64 {
		return place(model.CurvePoint{X: along.Unit.SI(p.X), Y: across.Unit.SI(p.Y)})
	})
	v.word(chartLeft+chartWide/2, chartHigh+30, chartWord, atMiddle, along.Label+", "+along.Unit.Symbol)
	v.word(4, chartWord, chartWord, atStart, across.Unit.Symbol)
	for i, l := range lines {
		ink := chartPens[i%len(chartPens)]
		points := make([][2]float64, len(l.curve.Points))
		for j, p := range l.curve.Points {
			points[j] = place(p)
		}
		v.line(ink, points...)
		x, y := chartLeft, foot+legendStep*float64(i)
		v.line(ink, [2]float64{x, y}, [2]float64{x + 44, y})
		name := l.name
		if len(points) == 0 {
			name += ": no line"
		}
		v.word(x+50, y+4, chartWord, atStart, shortened(name, 36))
	}
	return v.end(), true
}

// shortened keeps a name inside the room that it has.
func shortened(name string, letters int) string {
	return ansi.Truncate(Printable(name), letters, "…")
}

// chartTold tells the lines in figures.
func chartTold(lines []chartLine) string {
	words := make([]string, len(lines))
	for i, l := range lines {
		words[i] = l.name + ": " + pointsText(l.curve)
	}
	return strings.Join(words, ". ")
}

// chartReach is the room that all points need, in SI.
func chartReach(lines []chartLine) (least, most model.CurvePoint, ok bool) {
	least, most = model.CurvePoint{X: math.Inf(1), Y: 0}, model.CurvePoint{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, l := range lines {
		for _, p := range l.curve.Points {
			least.X, least.Y = math.Min(least.X, p.X), math.Min(least.Y, p.Y)
			most.X, most.Y = math.Max(most.X, p.X), math.Max(most.Y, p.Y)
		}
	}
	return least, most, most.X > least.X && most.Y > least.Y
}

// axes rules a grid at round figures, in the units shown.
func (v *svg) axes(least, most model.CurvePoint, place func(model.CurvePoint) [2]float64) {
	rule := pen{colour: "#ccc", width: 0.7}
	for _, x := range roundFigures(least.X, most.X) {
		low, high := place(model.CurvePoint{X: x, Y: least.Y}), place(model.CurvePoint{X: x, Y: most.Y})
		v.line(rule, low, high)
		v.word(low[0], chartHigh+7, chartWord, atMiddle, bound(x))
	}
	for _, y := range roundFigures(least.Y, most.Y) {
		left, right := place(model.CurvePoint{X: least.X, Y: y}), place(model.CurvePoint{X: most.X, Y: y})
		v.line(rule, left, right)
		v.word(left[0]-6, left[1]+4, chartWord, atEnd, bound(y))
	}
}

// roundFigures are multiples of 1, 2 or 5 in some power of ten, four to ten of
// them between both ends.
func roundFigures(least, most float64) []float64 {
	step := math.Pow(10, math.Floor(math.Log10((most-least)/4)))
	for _, times := range []float64{5, 2} {
		if step*times <= (most-least)/4 {
			step *= times
			break
		}
	}
	var figures []float64
	for n := math.Ceil(least / step); n*step <= most*(1+1e-12) && len(figures) < 12; n++ {
		figures = append(figures, n*step)
	}
	return figures
}
