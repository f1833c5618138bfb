package bearing

import (
	_ "embed" // the table
	"fmt"
	"math"
	"sync"

	"backspan/model/internal/table"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/unit"
)

//go:embed data/rings.csv
var ringsFile string

// Growth of metals with temperature, 1/K. Source: textbook values, from
// memory.
const (
	AluminiumExpansion = 23e-6
	SteelExpansion     = 11.5e-6
)

// DrawnTemperature is that of drawings and gauges, K. Source: ISO 1, from
// memory.
const DrawnTemperature = 293.15

// Housing is what the outer rings sit in; shaft and bearings are of steel.
type Housing struct {
	Name        string     // "hub", "case"
	Temperature param.Slot // running, K; that of the rings as well
	As          string     // what it is taken to be as warm as
	Expansion   float64    // 1/K
}

type ringRow struct {
	ring             string
	above, to, below float64 // m
}

var rings = sync.OnceValue(func() []ringRow {
	var rows []ringRow
	for _, r := range table.Must(ringsFile).Rows {
		rows = append(rows, ringRow{r.Word("ring"), r.Num("above") / 1e3, r.Num("to") / 1e3, r.Num("below") / 1e6})
	}
	return rows
})

// ringBelow is by how much a ring may be less than its nominal size, m.
func ringBelow(ring string, nominal float64) (float64, bool) {
	for _, r := range rings() {
		if r.ring == ring && nominal > r.above && nominal <= r.to {
			return r.below, true
		}
	}
	return 0, false
}

// play is by how much a bore is wider than what sits in it, m; below 0 it
// presses.
type play struct{ least, most float64 }

// text tells it in words, to a whole µm.
func (p play) text() string {
	um := func(m float64) string { return fmt.Sprintf("%.0f", math.Abs(unit.Micrometre.From(m))) }
	switch {
	case p.most <= 0:
		return "press " + um(p.most) + " to " + um(p.least) + " µm"
	case p.least >= 0:
		return "play " + um(p.least) + " to " + um(p.most) + " µm"
	}
	return "from " + um(p.least) + " µm press to " + um(p.most) + " µm play"
}

// wide is the share of its diameter by which a ring that stands still may be
// open before that is told: an estimate.
const wide = 1e-3

// worth tells what is wrong with a fit that warms, if anything.
func (p play) worth(turns bool, nominal float64) string {
	switch {
	case turns && p.least > 0:
		return "warning: the ring that turns under its load has lost its press and will creep; choose a tighter class, or hold the ring by other means"
	case turns && p.most > 0:
		return "warning: the ring that turns under its load may lose its press and creep; choose a tighter class, or hold the ring by other means"
	case !turns && p.most > wide*nominal:
		return "warning: it opens by more than a thousandth of its diameter (estimate) and may rattle and fret; choose a tighter class"
	}
	return ""
}

// plays are how the rings sit at 20 °C and running.
func (s Seats) plays(d DeepGroove, shaftTurns bool, h Housing) []part.Allowed {
	const source = "ISO 286-2 and ISO 492, normal class, from memory"
	var list []part.Allowed
	if low, high, ok := s.OnShaft.Limits(d.Bore); ok {
		if below, ok := ringBelow("inner", d.Bore); ok {
			p := play{d.Bore - below - high, d.Bore - low}
			how := "cold and warm alike, shaft and ring both of steel"
			if said := p.worth(shaftTurns, d.Bore); said != "" {
				how = said
			}
			list = append(list, part.Said("bearing.shaft_play", "inner ring on the shaft", p.text()).How(how).Source(source))
		}
	}
	low, high, ok := s.InBore.Limits(d.Outside)
	below, listed := ringBelow("outer", d.Outside)
	if !ok || !listed {
		return list
	}
	cold := play{low - d.Outside, high - d.Outside + below}
	list = append(list, part.Said("bearing.bore_play", "outer ring in the "+h.Name+" at 20 °C", cold.text()).How("limits of bore and ring").Source(source))
	const key = "bearing.bore_play_running"
	label := "outer ring in the " + h.Name + ", running"
	if !h.Temperature.Known {
		return append(list, part.Unknown(key, label, unit.Micrometre, "how warm the "+h.Name+" runs is not known"))
	}
	opens := (h.Expansion - SteelExpansion) * (h.Temperature.Value - DrawnTemperature) * d.Outside
	warm := play{cold.least + opens, cold.most + opens}
	how := fmt.Sprintf("%s and ring at %s, as warm as %s; the %s grows by %s more than the ring", h.Name, unit.Celsius.Text(h.Temperature.Value), h.As, h.Name, unit.Micrometre.Text(opens))
	if opens < 0 {
		how = fmt.Sprintf("%s and ring at %s, as warm as %s; the ring grows by %s more than the %s", h.Name, unit.Celsius.Text(h.Temperature.Value), h.As, unit.Micrometre.Text(-opens), h.Name)
	}
	if said := warm.worth(!shaftTurns, d.Outside); said != "" {
		how = said + "; " + how
	}
	return append(list, part.Said(key, label, warm.text()).How(how).Source("expansion from memory; "+source))
}
