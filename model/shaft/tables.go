package shaft

import (
	_ "embed" // the table
	"sync"

	"backspan/model/internal/table"
)

//go:embed data/surface.csv
var surfaceFile string

// finish is Marin's surface factor, factor times the tensile strength in MPa to
// an exponent.
type finish struct {
	surface          Surface
	factor, exponent float64
}

var finishes = sync.OnceValue(func() []finish {
	var rows []finish
	for _, r := range table.Must(surfaceFile).Rows {
		rows = append(rows, finish{Surface(r.Word("surface")), r.Num("factor"), r.Num("exponent")})
	}
	return rows
})

// surfaceOrigin is how far the factors may be trusted.
var surfaceOrigin = sync.OnceValue(func() string { return table.Must(surfaceFile).Origin() })
