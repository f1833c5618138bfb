package engine

import (
	"errors"
	"fmt"

	"gonum.org/v1/gonum/interp"
)

// curve is full-throttle torque over speed in the reference air.
type curve interface {
	span() (lowest, highest float64)  // usable speeds, rad/s
	torque(speed float64) float64     // within the span, N·m
	peakSpeed() (speedOfPeak float64) // of power, rad/s
}

// measuredCurve runs through the points without overshoot. Source: Fritsch &
// Butland, A method for constructing local monotone piecewise cubic
// interpolants, SIAM J. Sci. Stat. Comput. 5 (1984) 300–304. It interpolates
// torque, which is flatter than power.
type measuredCurve struct {
	cubic           interp.FritschButland
	lowest, highest float64
	peak            float64
}

func newMeasuredCurve(points []Point) (*measuredCurve, error) {
	if len(points) < 2 {
		return nil, errors.New(`give Power curve at least two points, or set Source of the curve to "concept"`)
	}
	if err := rising(len(points), func(i int) float64 { return points[i].Speed }); err != nil {
		return nil, fmt.Errorf("correct Power curve: %w", err)
	}
	speeds, torques := make([]float64, len(points)), make([]float64, len(points))
	for i, p := range points {
		if !(p.Speed > 0 && p.Power > 0) {
			return nil, fmt.Errorf("correct Power curve: row %d needs a speed and a power above zero", i+1)
		}
		speeds[i], torques[i] = p.Speed, p.Power/p.Speed
	}
	c := &measuredCurve{lowest: speeds[0], highest: speeds[len(speeds)-1]}
	if err := c.cubic.Fit(speeds, torques); err != nil {
		return nil, fmt.Errorf("correct Power curve: %w", err)
	}
	c.peak = findPeak(c, speeds)
	return c, nil
}

// rising is an error unless n speeds rise from row to row.
func rising(n int, speed func(i int) float64) error {
	for i := 1; i < n; i++ {
		if !(speed(i) > speed(i-1)) {
			return fmt.Errorf("row %d: the speed must be higher than in the row before", i+1)
		}
	}
	return nil
}

func (c *measuredCurve) span() (lowest, highest float64) { return c.lowest, c.highest }
func (c *measuredCurve) torque(speed float64) float64    { return c.cubic.Predict(speed) }
func (c *measuredCurve) peakSpeed() float64              { return c.peak }
