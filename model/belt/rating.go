package belt

import (
	"errors"

	"backspan/model/param"
	"backspan/model/unit"
)

// Rating is a published power per rib. It counts only with its source.
type Rating struct {
	Rows   [][3]float64 // effective crank diameter m, crank speed rad/s, power W
	Source string
}

func (r *Rating) params() []param.Param {
	return []param.Param{
		param.Table(r.rows, r.setRows, "rating_table", "Rating table, power per rib",
			param.Column{Label: "crank pulley effective diameter", Unit: unit.Millimetre, Min: 10, Max: 400},
			param.Column{Label: "crank speed", Unit: unit.RPM, Min: 100, Max: 20000},
			param.Column{Label: "power per rib", Unit: unit.Kilowatt, Min: 0.001, Max: 50}).
			Rule(risingRatings).Help("at 180° of wrap; ordered by diameter, then by speed"),
		param.Text(&r.Source, "rating_source", "Source of the rating table").
			Help("document, table and date; without it the table is not used"),
	}
}

func (r *Rating) rows() [][]float64 {
	rows := make([][]float64, len(r.Rows))
	for i, row := range r.Rows {
		rows[i] = []float64{row[0], row[1], row[2]}
	}
	return rows
}

func (r *Rating) setRows(rows [][]float64) {
	r.Rows = nil
	for _, row := range rows {
		r.Rows = append(r.Rows, [3]float64{row[0], row[1], row[2]})
	}
}

func risingRatings(rows [][]float64) error {
	for i := 1; i < len(rows); i++ {
		a, b := rows[i-1], rows[i]
		if b[0] < a[0] || b[0] == a[0] && b[1] <= a[1] {
			return errors.New("give the rows from the smallest diameter up, and for each diameter from the lowest speed up")
		}
	}
	return nil
}

// Why a power is not rated.
const (
	noRating      = "no published power per rib may be used without its source, and none is given"
	noSource      = "a rating without its source is not used"
	outsideRating = "outside the table"
)

// power is the rated power per rib, W, at a crank pulley's effective diameter,
// m, and speed, rad/s: linear in speed, then in diameter. The reason says why
// there is none.
func (r *Rating) power(diameter, speed float64) (power float64, why string) {
	switch {
	case len(r.Rows) == 0:
		return 0, noRating
	case r.Source == "":
		return 0, noSource
	}
	var below, above float64
	var under, over []([3]float64)
	for start := 0; start < len(r.Rows); {
		end := start + 1
		for end < len(r.Rows) && r.Rows[end][0] == r.Rows[start][0] {
			end++
		}
		if at := r.Rows[start][0]; at <= diameter*(1+1e-9) {
			below, under = at, r.Rows[start:end]
		} else if over == nil {
			above, over = at, r.Rows[start:end]
		}
		start = end
	}
	low, ok := alongSpeed(under, speed)
	if !ok {
		return 0, outsideRating
	}
	if diameter <= below*(1+1e-9) {
		return low, ""
	}
	high, ok := alongSpeed(over, speed)
	if !ok {
		return 0, outsideRating
	}
	return low + (high-low)*(diameter-below)/(above-below), ""
}

// alongSpeed interpolates the rows of one diameter.
func alongSpeed(rows [][3]float64, speed float64) (power float64, ok bool) {
	for i, row := range rows {
		if row[1] == speed {
			return row[2], true
		}
		if i > 0 && rows[i-1][1] < speed && speed < row[1] {
			before := rows[i-1]
			return before[2] + (row[2]-before[2])*(speed-before[1])/(row[1]-before[1]), true
		}
	}
	return 0, false
}
