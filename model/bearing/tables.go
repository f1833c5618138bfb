package bearing

import (
	_ "embed" // the tables
	"sync"

	"backspan/model/internal/table"
)

// The tables as files, each row with its clause.
var (
	//go:embed data/sizes.csv
	sizesFile string
	//go:embed data/thrust.csv
	thrustFile string
	//go:embed data/reliability.csv
	reliabilityFile string
)

// sizes are the bearings offered, light series first.
var sizes = sync.OnceValue(func() []DeepGroove {
	var list []DeepGroove
	for _, r := range table.Must(sizesFile).Rows {
		list = append(list, DeepGroove{Size(r.Word("size")), r.Num("bore") / 1000, r.Num("outside") / 1000,
			r.Num("width") / 1000, r.Num("dynamic") * 1000, r.Num("static") * 1000})
	}
	return list
})

// thrustRow is one row of the axial factors: f0 Fa/C0, the limiting share e and
// the factors Y and X.
type thrustRow struct{ relative, limit, axial, radial float64 }

var thrust = sync.OnceValue(func() []thrustRow {
	var rows []thrustRow
	for _, r := range table.Must(thrustFile).Rows {
		rows = append(rows, thrustRow{r.Num("relative"), r.Num("limit"), r.Num("axial"), r.Num("radial")})
	}
	return rows
})

// reliabilityFactor is a1 of a reliability.
type reliabilityFactor struct {
	word   Reliability
	factor float64
}

var reliabilities = sync.OnceValue(func() []reliabilityFactor {
	var list []reliabilityFactor
	for _, r := range table.Must(reliabilityFile).Rows {
		list = append(list, reliabilityFactor{Reliability(r.Word("reliability")), r.Num("factor")})
	}
	return list
})
