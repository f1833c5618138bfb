package engine

import (
	"errors"
	"math"
)

// conceptEnd is how far above the speed of peak power a concept's curve is
// trusted; estimate.
const conceptEnd = 1.2

// conceptCurve is a curve made from a mean effective pressure. With x the
// speed over the speed of peak power, torque follows
//
//	1 + cx − (cx)² + A·exp(−((x−1)/s)²)
//
// The polynomial is the common spark-ignition form (Wong, Theory of Ground
// Vehicles; Gillespie, Fundamentals of Vehicle Dynamics; from memory); A and s
// are the gain and the width of a tuned pipe's hump (estimate). The stretch c
// puts the peak of power exactly at x = 1; it is 1 without a pipe.
type conceptCurve struct {
	lowest, highest float64
	peak            float64 // speed of peak power, rad/s
	scale           float64 // N·m
	stretch         float64
	gain, perWidth  float64
}

func newConceptCurve(s Spec) (*conceptCurve, error) {
	if !(s.IdleSpeed < s.PeakPowerSpeed) {
		return nil, errors.New("set Idle speed below Speed of peak power")
	}
	c := &conceptCurve{lowest: s.IdleSpeed, highest: conceptEnd * s.PeakPowerSpeed, peak: s.PeakPowerSpeed, stretch: 1}
	if s.Shape == TunedPipe {
		c.gain, c.perWidth = s.PipeGain, 1/s.PipeWidth
		// d(x·torque)/dx = 0 at x = 1 is 3c² − 2c − (1 + A) = 0.
		c.stretch = (1 + math.Sqrt(4+3*c.gain)) / 3
	}
	c.scale = s.MeanEffectivePressure * s.Displacement() / (2 * math.Pi * s.Cycle.Revolutions()) / c.shape(1)
	return c, nil
}

func (c *conceptCurve) shape(x float64) float64 {
	y := c.stretch * x
	t := 1 + y - y*y
	if c.gain > 0 {
		d := (x - 1) * c.perWidth
		t += c.gain * math.Exp(-d*d)
	}
	return t
}

func (c *conceptCurve) span() (lowest, highest float64) { return c.lowest, c.highest }
func (c *conceptCurve) torque(speed float64) float64    { return c.scale * c.shape(speed/c.peak) }
func (c *conceptCurve) peakSpeed() float64              { return c.peak }
