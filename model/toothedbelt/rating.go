package toothedbelt

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"backspan/model/param"
	"backspan/model/part"
)

// meshFactor is the share of the rating left with so many whole teeth in mesh
// on the smaller pulley. Source: ISO 5295; Chinese mechanical design handbook
// for arc teeth too.
func meshFactor(teeth int) float64 {
	switch {
	case teeth >= 6:
		return 1
	case teeth < 1:
		return 0
	}
	return 1 - 0.2*float64(6-teeth)
}

// widthFactor is the rating at a belt width over that at the base width.
// Source: as meshFactor.
func widthFactor(width, base float64) float64 { return math.Pow(width/base, 1.14) }

// trapezoidalRating is the power, W, that a belt of trapezoidal teeth carries:
// allowable tension at the base width N, mass of the whole belt kg/m, speed
// m/s. Source: ISO 5295, P = (kz kw Ta − (b/b0) m v²) v.
func trapezoidalRating(mesh, width, allowable, mass, speed float64) float64 {
	return (mesh*width*allowable - mass*speed*speed) * speed
}

const (
	noTable       = "no published rating is free to use for curvilinear teeth; give a Power table"
	noTableSource = "a power table without its source is not used; fill in Source of the power table"
)

// rating is the power, W, that the belt may carry at a crank speed before the
// service factor, or why there is none.
func (b Belt) rating(at part.Duty) (power param.Slot, why string) {
	mesh := meshFactor(b.teethInMesh())
	if b.spec.Section.Trapezoidal() {
		width := widthFactor(b.spec.BeltWidth, b.row.baseWidth)
		return param.Known(trapezoidalRating(mesh, width, b.row.allowable, b.MassPerLength(), b.Run().Speed(at.CrankSpeed))), ""
	}
	if len(b.spec.PowerTable) == 0 {
		return param.Slot{}, noTable
	}
	if strings.TrimSpace(b.spec.TableSource) == "" {
		return param.Slot{}, noTableSource
	}
	listed, err := lookUp(b.spec.PowerTable, b.spec.CrankTeeth, at.CrankSpeed)
	if err != nil {
		return param.Slot{}, err.Error()
	}
	return param.Known(listed * b.spec.LengthFactor * mesh * widthFactor(b.spec.BeltWidth, b.spec.TableWidth)), ""
}

// tableInOrder is an error unless the rows go by whole teeth, then by speed.
func tableInOrder(rows [][]float64) error {
	for i, r := range rows {
		if r[0] != math.Trunc(r[0]) {
			return fmt.Errorf("row %d: teeth must be a whole number", i+1)
		}
		if i == 0 {
			continue
		}
		if before := rows[i-1]; r[0] < before[0] || r[0] == before[0] && !(r[1] > before[1]) {
			return fmt.Errorf("row %d: put the rows in order of teeth, then of rising speed", i+1)
		}
	}
	return nil
}

var (
	errOutsideTeeth = errors.New("the crank pulley's teeth lie outside the power table")
	errOutsideSpeed = errors.New("the crank speed lies outside the power table")
)

// lookUp reads a power between the rows of a table, straight from speed to
// speed and from teeth to teeth. It never reads beyond the table.
func lookUp(table []PowerPoint, teeth int, speed float64) (float64, error) {
	below, above := 0, 0 // the rows' teeth on either side
	for _, p := range table {
		if p.Teeth <= teeth {
			below = p.Teeth
		}
		if p.Teeth >= teeth {
			above = p.Teeth
			break
		}
	}
	if below == 0 || above == 0 {
		return 0, errOutsideTeeth
	}
	low, err := alongSpeed(table, below, speed)
	if err != nil || below == above {
		return low, err
	}
	high, err := alongSpeed(table, above, speed)
	return low + (high-low)*float64(teeth-below)/float64(above-below), err
}

// alongSpeed reads the power of one pulley of the table.
func alongSpeed(table []PowerPoint, teeth int, speed float64) (float64, error) {
	for i, p := range table {
		if p.Teeth != teeth || p.Speed < speed {
			continue
		}
		if p.Speed == speed {
			return p.Power, nil
		}
		if i == 0 || table[i-1].Teeth != teeth {
			return 0, errOutsideSpeed
		}
		before := table[i-1]
		return before.Power + (p.Power-before.Power)*(speed-before.Speed)/(p.Speed-before.Speed), nil
	}
	return 0, errOutsideSpeed
}

// leastTeeth is the fewest teeth the smaller pulley of an 8 mm curvilinear
// belt should have at a speed in rad/s. From memory: JB/T 7512.3-1994.
func leastTeeth(speed float64) int {
	switch rpm := speed * 30 / math.Pi; {
	case rpm <= 900:
		return 22
	case rpm <= 1200:
		return 24
	case rpm < 1800:
		return 26
	}
	return 28
}
