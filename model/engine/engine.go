package engine

import (
	"errors"
	"math"

	"backspan/model/air"
)

// Engine is an engine in the air of one site.
type Engine struct {
	spec            *Spec   // private to this engine
	cyclic          *cyclic // likewise
	curve           curve
	lowest, highest float64 // usable speeds at full throttle, rad/s
	factor          float64 // reference power over site power
	displacement    float64 // m³
	fuelPerWork     float64 // fuel per indicated work, kg/J
}

// New builds the curve, carries it to the site's air and finds the shape of the
// torque. It is an error when the curve has fewer than two points or speeds
// that do not rise, or when depths of the body or lengths of the crank gear
// contradict one another.
func New(s Spec, at air.State) (Engine, error) {
	if s.DepthToRearEnd < s.DepthToDrive {
		return Engine{}, errors.New("make Mount face to rear end at least as long as Mount face to drive face, which is a part of it")
	}
	if s.CGAft > s.DepthToRearEnd {
		return Engine{}, errors.New("make Centre of gravity behind mount no longer than Mount face to rear end: it lies inside the engine")
	}
	if s.RodLength < s.Stroke {
		return Engine{}, errors.New("make Length of connecting rod at least as long as Stroke")
	}
	c, err := newCurve(s)
	if err != nil {
		return Engine{}, err
	}
	s.Curve = nil // the curve holds its own copy of the points
	own := &struct {
		spec   Spec
		cyclic cyclic
	}{s, newCyclic(&s, at.Pressure)}
	e := Engine{spec: &own.spec, cyclic: &own.cyclic, curve: c, factor: s.Correction.factor(at), displacement: s.Displacement()}
	e.lowest, e.highest = c.span()
	e.fuelPerWork = e.willansSlope()
	return e, nil
}

func newCurve(s Spec) (curve, error) {
	if s.CurveSource == Concept {
		return newConceptCurve(s)
	}
	return newMeasuredCurve(s.Curve)
}

// Torque is that at full throttle on site, N·m; 0 outside the speed range.
func (e Engine) Torque(crankSpeed float64) float64 {
	if !(crankSpeed >= e.lowest && crankSpeed <= e.highest) {
		return 0
	}
	return e.curve.torque(crankSpeed) / e.factor
}

// Power is that at full throttle on site, W; 0 outside the speed range.
func (e Engine) Power(crankSpeed float64) float64 {
	if !(crankSpeed >= e.lowest && crankSpeed <= e.highest) {
		return 0
	}
	return crankSpeed * e.curve.torque(crankSpeed) / e.factor
}

// SpeedRange is the lowest and the highest speed the curve covers, rad/s. The
// engine is taken not to pull outside it.
func (e Engine) SpeedRange() (lowest, highest float64) { return e.lowest, e.highest }

// Peak is the highest power at full throttle on site, W, and its speed, rad/s.
func (e Engine) Peak() (power, speed float64) {
	speed = e.curve.peakSpeed()
	return e.Power(speed), speed
}

// RatedPeak is the highest power at full throttle in the reference air, W, and
// its speed, rad/s: what a drive is laid out for, whatever the day.
func (e Engine) RatedPeak() (power, speed float64) {
	power, speed = e.Peak()
	return power * e.factor, speed
}

// IdleSpeed is where the engine turns without load, rad/s.
func (e Engine) IdleSpeed() float64 { return e.spec.IdleSpeed }

// SpeedLimit is the highest allowed crank speed, rad/s.
func (e Engine) SpeedLimit() float64 { return e.spec.SpeedLimit }

// MeanPistonSpeed is twice the stroke per revolution, m/s.
func (e Engine) MeanPistonSpeed(crankSpeed float64) float64 {
	return e.spec.Stroke * crankSpeed / math.Pi
}

// workRate is the work a mean effective pressure, Pa, does per time, W.
func (e Engine) workRate(pressure, crankSpeed float64) float64 {
	return pressure * e.displacement * crankSpeed / (2 * math.Pi * e.spec.Cycle.Revolutions())
}

// meanEffectivePressure is that of a torque at the crank, Pa.
func (e Engine) meanEffectivePressure(torque float64) float64 {
	return 2 * math.Pi * e.spec.Cycle.Revolutions() * torque / e.displacement
}
