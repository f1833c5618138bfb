package curves

import (
	"backspan/model"
	"backspan/model/explore"
	"backspan/model/param"
	"backspan/model/unit"
)

// sheet is one chart of the page.
type sheet struct {
	title    string
	key      string // of the model's chart
	question question
	asks     bool // of the background
	ratio    func(explore.Ratio) param.Slot
	unit     unit.Unit
	reading  string // that a ratio's figure is a reading of
}

var sheets = []sheet{
	{title: "Power over crank speed", key: "power", question: lines, asks: true},
	{title: "Drive efficiency over crank speed", key: "efficiency", question: lines, asks: true},
	{title: "Thrust over airspeed", key: "thrust", question: lines, asks: true},
	{title: "Climb over the ratio", question: ratios, asks: true, unit: unit.MetrePerSecond, reading: "flight.climb_rate",
		ratio: func(r explore.Ratio) param.Slot { return r.Climb }},
	{title: "Standing thrust over the ratio", question: ratios, asks: true, unit: unit.Newton, reading: "propeller.static_thrust",
		ratio: func(r explore.Ratio) param.Slot { return r.Thrust }},
	{title: "Tip Mach number over the ratio", question: ratios, asks: true, unit: unit.One, reading: "propeller.tip_mach",
		ratio: func(r explore.Ratio) param.Slot { return r.TipMach }},
	{title: "Crank speeds that shake a belt span"},
}

// curve is one line with the machine it belongs to.
type curve struct {
	variant int
	label   string
	why     string
	points  []model.CurvePoint
	spots   []model.Spot
	best    []model.CurvePoint
	crosses []model.CurvePoint
}

// axes are the sheet's, once anything is known of it.
type axes struct{ along, across model.Axis }

// curves are the lines in sight so far.
func (m *Model) curves() (out []curve, a axes) {
	s := sheets[m.sheet]
	for _, i := range m.shown() {
		found, ok := m.found[m.subject(i, s.question)]
		switch {
		case !ok:
		case found.why != "":
			out = append(out, curve{variant: i, why: found.why})
		case s.ratio != nil:
			out = append(out, m.ratioCurve(i, s, found.chart))
			a = axes{model.Axis{Label: "ratio", Unit: unit.One}, model.Axis{Unit: s.unit}}
		default:
			for _, c := range found.curves {
				if c.Chart == s.key {
					out = append(out, curve{variant: i, label: c.Label, why: c.Why, points: c.Points, spots: c.Spots})
					a = axes{c.Along, c.Across}
				}
			}
		}
	}
	return out, a
}

// ratioCurve marks the machine as it is, and strikes out the ratios that are
// barred.
func (m *Model) ratioCurve(i int, s sheet, c explore.Chart) curve {
	out := curve{variant: i, label: "by " + c.Parameter}
	for n, p := range c.Points {
		y := s.ratio(p)
		if !p.Ratio.Known || !y.Known {
			continue
		}
		at := model.CurvePoint{X: p.Ratio.Value, Y: y.Value}
		out.points = append(out.points, at)
		switch {
		case n == c.Best:
			out.best = append(out.best, at)
		case len(p.Barred) > 0:
			out.crosses = append(out.crosses, at)
		}
	}
	o := m.desk.OutcomeOf(i)
	ratio, known := o.Reading("drive.ratio")
	value, also := o.Reading(s.reading)
	if known && also && ratio.Known() && value.Known() {
		out.spots = append(out.spots, model.Spot{Label: "as it is", CurvePoint: model.CurvePoint{X: ratio.Value, Y: value.Value}})
	}
	if len(out.points) == 0 {
		out.why = c.Reason
	}
	return out
}
