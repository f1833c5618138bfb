package carry

import (
	_ "embed" // the table of body measures
	"strconv"
	"strings"
)

// Percentile names whose body measures are used.
type Percentile string

// The measures.
const (
	OwnMeasures Percentile = "own measures"
	Woman5      Percentile = "woman, 5th percentile"
	Woman50     Percentile = "woman, 50th percentile"
	Woman95     Percentile = "woman, 95th percentile"
	Man5        Percentile = "man, 5th percentile"
	Man50       Percentile = "man, 50th percentile"
	Man95       Percentile = "man, 95th percentile"
)

// Percentiles lists the bodies of the table.
func Percentiles() []Percentile {
	return []Percentile{Woman5, Woman50, Woman95, Man5, Man50, Man95}
}

//go:embed ansur.csv
var ansur string

// measures are one body of the table.
type measures struct {
	who                                     Percentile
	mass, stature, footLength, buttockDepth float64 // kg, m
}

var measured = parse(ansur)

// parse reads the table; its test holds that every row counts.
func parse(text string) []measures {
	var all []measures
	for line := range strings.Lines(text) {
		who, figures, found := strings.Cut(strings.TrimSpace(strings.TrimPrefix(line, `"`)), `",`)
		if !found {
			continue
		}
		var x [4]float64
		for i, cell := range strings.SplitN(figures, ",", len(x)) {
			x[i], _ = strconv.ParseFloat(cell, 64)
		}
		all = append(all, measures{Percentile(who), x[0], x[1] / 1000, x[2] / 1000, x[3] / 1000})
	}
	return all
}

// pressed is what pad and clothing press into the seat of a person, m: the
// back plane lies half a buttock depth less this behind the hip axis. Estimate:
// it makes the mean man's 123 mm the 110 mm that are usual.
const pressed = 0.013

// Measured is the pilot with the measures of the percentile chosen: mass,
// stature, foot length, back plane behind the hip axis, and the segments of
// that sex. The straps grow with the stature from where they are set for the
// pilot's own. The rest, the lever arms of the back among it, stays as set.
func (p Pilot) Measured() Pilot {
	for i := range measured {
		m := &measured[i]
		if m.who != p.Percentile {
			continue
		}
		p.StrapHeight *= m.stature / p.Stature
		p.Mass, p.Stature, p.FootLength = m.mass, m.stature, m.footLength
		p.BackBehindHip = m.buttockDepth/2 - pressed
		p.Segments = DeLevaMale
		if strings.HasPrefix(string(m.who), "woman") {
			p.Segments = DeLevaFemale
		}
	}
	return p
}
