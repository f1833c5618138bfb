package bearing

import (
	_ "embed" // the table
	"sync"

	"backspan/model/internal/table"
	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/unit"
)

//go:embed data/fits.csv
var fitsFile string

// Fit is a tolerance class of ISO 286 for a bearing's seat.
type Fit string

// The classes offered, each from loose to tight.
var (
	shaftFits = []Fit{"g6", "h6", "j6", "k5", "k6", "m6"}
	boreFits  = []Fit{"H7", "J7", "K7", "M7", "N7", "P7"}
)

// Seats are the classes of a bearing's two seats.
type Seats struct{ OnShaft, InBore Fit }

// Seats for a ring that the load turns round in, and one on which it stands.
var (
	TurningShaft = Seats{"k5", "H7"}
	TurningBore  = Seats{"h6", "N7"}
)

const fitOrigin = "from memory: usual advice, tight for the ring that turns under its load"

// Params lists both classes.
func (s *Seats) Params() []param.Param {
	const help = "For the build sheet: tolerance class of ISO 286; the ring that turns under its load needs the tight fit."
	return []param.Param{
		param.Choice(&s.OnShaft, "bearing_seat_class", "Bearing seat on the shaft", shaftFits...).From(fitOrigin).Help(help),
		param.Choice(&s.InBore, "bearing_bore_class", "Bearing seat in the bore", boreFits...).From(fitOrigin).Help(help),
	}
}

type fitRow struct {
	class                   Fit
	above, to, upper, lower float64 // m
}

var fits = sync.OnceValue(func() []fitRow {
	var rows []fitRow
	for _, r := range table.Must(fitsFile).Rows {
		rows = append(rows, fitRow{Fit(r.Word("class")), r.Num("above") / 1e3, r.Num("to") / 1e3, r.Num("upper") / 1e6, r.Num("lower") / 1e6})
	}
	return rows
})

// Limits are the least and the greatest size of a nominal size, m; ok is false
// outside the table.
func (f Fit) Limits(nominal float64) (least, most float64, ok bool) {
	for _, r := range fits() {
		if r.class == f && nominal > r.above && nominal <= r.to {
			return nominal + r.lower, nominal + r.upper, true
		}
	}
	return 0, 0, false
}

// loose classes let a ring creep that turns under its load.
func (f Fit) loose() bool { return f == "g6" || f == "h6" || f == "H7" || f == "J7" }

// Making are the limits of a bearing's two seats and how its rings sit in them,
// cold and running; shaftTurns says which of the rings turns under the load.
func (s Seats) Making(size Size, shaftTurns bool, h Housing) []part.Allowed {
	d, ok := size.DeepGroove()
	if !ok {
		return nil
	}
	seat := func(key, label string, f Fit, nominal float64, turns bool) part.Allowed {
		label += ", " + unit.Millimetre.Exact(nominal) + " " + string(f)
		least, most, ok := f.Limits(nominal)
		if !ok {
			return part.Unknown(key, label, unit.Millimetre, "the table of fits does not reach this size")
		}
		how := "of the tolerance class, at 20 °C"
		if turns && f.loose() {
			how = "too loose for the ring that turns under its load: it creeps; choose a tighter class"
		}
		return part.Between(key, label, least, most, unit.Millimetre, 3).How(how).Source("ISO 286-2, from memory")
	}
	return append([]part.Allowed{
		seat("bearing.shaft_seat", "seat on the shaft", s.OnShaft, d.Bore, shaftTurns),
		seat("bearing.bore_seat", "seat in the bore", s.InBore, d.Outside, !shaftTurns),
	}, s.plays(d, shaftTurns, h)...)
}
