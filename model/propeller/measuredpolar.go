package propeller

import (
	"errors"
	"fmt"
	"math"
	"sort"
)

// A measured polar is kept as lift and drag all around the circle at equal
// steps of the angle of attack, one curve for each Reynolds number: quick to
// look up, and complete before the propeller turns.
const (
	gridStep   = 0.25 * math.Pi / 180
	gridPoints = 1441
)

// polarTable is a measured polar on one blade, curves by rising Reynolds
// number.
type polarTable struct {
	logReynolds []float64
	curves      []polarCurve
	pastStall   bool // every curve goes past its greatest lift
}

type polarCurve struct {
	cl, cd            [gridPoints]float64
	zeroLift, slope   float64
	stall, lowerStall float64
	cdLeast           float64
}

// rows of a measured polar: angle of attack rad, lift, drag, Reynolds number.
const (
	colAlpha = iota
	colLift
	colDrag
	colReynolds
)

const leastPolarRows = 4

// polarGroups splits the rows by Reynolds number.
func polarGroups(rows [][]float64) [][][]float64 {
	var groups [][][]float64
	for i, start := 1, 0; i <= len(rows); i++ {
		if i == len(rows) || rows[i][colReynolds] != rows[start][colReynolds] {
			groups = append(groups, rows[start:i])
			start = i
		}
	}
	return groups
}

// RowError says what is wrong with one row of a measured polar.
type RowError struct {
	Row  int // from 1
	Text string
}

func (e *RowError) Error() string { return fmt.Sprintf("row %d: %s", e.Row, e.Text) }

// PolarFits reports whether rows of angle of attack rad, lift, drag and
// Reynolds number make a polar: for each Reynolds number, from the lowest, at
// least four rising angles through one zero of lift. The error is a *RowError.
func PolarFits(rows [][]float64) error {
	at := 0
	last := 0.0
	for _, g := range polarGroups(rows) {
		re := g[0][colReynolds]
		if re <= last {
			return &RowError{at + 1, fmt.Sprintf("the Reynolds number %.6g comes again or falls; put the rows of one Reynolds number together, the lowest first", re)}
		}
		if bad := polarGroupFits(g, at); bad != nil {
			return bad
		}
		last, at = re, at+len(g)
	}
	return nil
}

func polarGroupFits(g [][]float64, at int) *RowError {
	re := g[0][colReynolds]
	if len(g) < leastPolarRows {
		return &RowError{at + 1, fmt.Sprintf("only %d rows at the Reynolds number %.6g; give at least %d", len(g), re, leastPolarRows)}
	}
	for i := 1; i < len(g); i++ {
		if g[i][colAlpha] <= g[i-1][colAlpha] {
			return &RowError{at + i + 1, "the angle of attack must rise from row to row at one Reynolds number"}
		}
		if g[i-1][colLift] > 0 && g[i][colLift] <= 0 {
			return &RowError{at + i + 1, "the lift falls back through zero; leave out what lies beyond"}
		}
	}
	if g[0][colLift] >= 0 || g[len(g)-1][colLift] <= 0 {
		return &RowError{at + 1, fmt.Sprintf("the rows at the Reynolds number %.6g do not pass through zero lift; give angles from below zero lift to stall", re)}
	}
	return nil
}

// newPolarTable lays the rows out for a blade with that drag coefficient
// across the wind. Beyond the first and last angle of attack the flow is taken
// as separated.
func newPolarTable(rows [][]float64, flatPlate float64) (*polarTable, error) {
	if len(rows) == 0 {
		return nil, errors.New("the section's polar is not given: fill Section polar, or choose another Blade section")
	}
	if err := PolarFits(rows); err != nil {
		return nil, fmt.Errorf("the section's polar cannot be used: Section polar, %w", err)
	}
	t := &polarTable{pastStall: true}
	for _, g := range polarGroups(rows) {
		t.logReynolds = append(t.logReynolds, math.Log(g[0][colReynolds]))
		c := newPolarCurve(g, flatPlate)
		t.pastStall = t.pastStall && c.stall < g[len(g)-1][colAlpha]
		t.curves = append(t.curves, c)
	}
	return t, nil
}

func newPolarCurve(g [][]float64, flatPlate float64) (c polarCurve) {
	first, last := g[0], g[len(g)-1]
	above := endOf(last[colAlpha], last[colLift], last[colDrag], flatPlate)
	below := endOf(-first[colAlpha], -first[colLift], first[colDrag], flatPlate)
	for i := range c.cl {
		alpha := gridAngle(i)
		switch {
		case alpha > last[colAlpha]:
			c.cl[i], c.cd[i] = above.coefficients(alpha)
		case alpha < first[colAlpha]:
			c.cl[i], c.cd[i] = below.coefficients(-alpha)
			c.cl[i] = -c.cl[i]
		default:
			c.cl[i], c.cd[i] = between(g, alpha)
		}
	}
	c.landmarks(g)
	return c
}

// landmarks finds zero lift, the slope there, stall and the least drag.
func (c *polarCurve) landmarks(g [][]float64) {
	c.cdLeast, c.stall, c.lowerStall = g[0][colDrag], g[len(g)-1][colAlpha], g[0][colAlpha]
	most, least := 0.0, 0.0
	for _, row := range g {
		c.cdLeast = min(c.cdLeast, row[colDrag])
		if row[colLift] > most {
			most, c.stall = row[colLift], row[colAlpha]
		}
		if row[colLift] < least {
			least, c.lowerStall = row[colLift], row[colAlpha]
		}
	}
	c.zeroLift = c.zeroBetween(c, 0, c.lowerStall, c.stall)
	const reach = 3 * math.Pi / 180
	up := min(c.zeroLift+reach, c.stall)
	lift, _ := c.look(up)
	c.slope = lift / (up - c.zeroLift)
}

// end carries a polar past its last row.
type end struct {
	plate      plate
	from       float64 // where the plate begins; the last row holds up to there
	lift, drag float64
}

func endOf(alpha, cl, cd, flatPlate float64) end {
	from := max(alpha, leastStallAngle)
	return end{platePast(from, cl, cd, flatPlate), from, cl, cd}
}

func (e *end) coefficients(alpha float64) (cl, cd float64) {
	if alpha <= e.from {
		return e.lift, e.drag
	}
	return e.plate.coefficients(alpha)
}

func between(g [][]float64, alpha float64) (cl, cd float64) {
	i := sort.Search(len(g)-1, func(i int) bool { return g[i+1][colAlpha] >= alpha })
	i = min(i, len(g)-2)
	a, b := g[i], g[i+1]
	x := (alpha - a[colAlpha]) / (b[colAlpha] - a[colAlpha])
	return a[colLift] + x*(b[colLift]-a[colLift]), a[colDrag] + x*(b[colDrag]-a[colDrag])
}

func gridAngle(i int) float64 { return float64(i)*gridStep - math.Pi }

// look interpolates along the angle of attack, −π to π.
func (c *polarCurve) look(alpha float64) (cl, cd float64) {
	x := (alpha + math.Pi) / gridStep
	i := min(max(int(x), 0), gridPoints-2)
	f := x - float64(i)
	return c.cl[i] + f*(c.cl[i+1]-c.cl[i]), c.cd[i] + f*(c.cd[i+1]-c.cd[i])
}

// zeroBetween is where the mix of two curves, share of the second, rises
// through zero lift between two angles, exactly as look has it.
func (c *polarCurve) zeroBetween(d *polarCurve, share, low, high float64) float64 {
	i := min(max(int((low+math.Pi)/gridStep), 0), gridPoints-2)
	lift := func(i int) float64 { return c.cl[i] + share*(d.cl[i]-c.cl[i]) }
	for ; i < gridPoints-2 && gridAngle(i+1) < high && lift(i+1) <= 0; i++ {
	}
	a, b := lift(i), lift(i+1)
	if a >= 0 || b <= a {
		return gridAngle(i)
	}
	return gridAngle(i) + gridStep*min(-a/(b-a), 1)
}
