package model

import (
	"math"

	"backspan/model/flight"
	"backspan/model/match"
	"backspan/model/unit"
)

// CurvePoint is a point of a curve, in SI.
type CurvePoint struct{ X, Y float64 }

// Spot is a point that a curve is looked at for.
type Spot struct {
	Label string
	CurvePoint
}

// Curve is one line of a chart. Curves of the same Chart share their axes.
type Curve struct {
	Chart  string // "power", "efficiency", "thrust"
	Key    string // of the line inside its chart
	Label  string
	Along  Axis
	Across Axis
	Points []CurvePoint // X rises; none when the machine cannot be worked
	Spots  []Spot
	Why    string // there are no points
}

// Axis is what is measured along or across a chart.
type Axis struct {
	Label string
	Unit  unit.Unit
}

var (
	overCrank = Axis{"crank speed", unit.RPM}
	overAir   = Axis{"airspeed", unit.KilometrePerHour}
	ofPower   = Axis{"power at the drive face", unit.Kilowatt}
	ofShare   = Axis{"drive efficiency", unit.Percent}
	ofThrust  = Axis{"thrust, installed", unit.Newton}
)

// Steps of the lines: dense enough for a screen, few enough to be quick.
const (
	crankSteps = 72
	airSteps   = 16
	headroom   = 1.15 // absorbed power is of interest little beyond the engine's
)

// Curves are a machine's lines over speed and over airspeed. A machine that
// cannot be built, or finds no working point, has the same curves without
// points, and each says why.
func Curves(s *Study, v *Variant) []Curve {
	c := chain{study: s, variant: v}
	c.assemble()
	w := worker{chain: &c}
	curves := []Curve{
		{Chart: "power", Key: "full", Label: "full throttle", Along: overCrank, Across: ofPower},
		{Chart: "power", Key: "absorbed", Label: "absorbed, standing", Along: overCrank, Across: ofPower},
		{Chart: "efficiency", Key: "standing", Label: "under the propeller, standing", Along: overCrank, Across: ofShare},
		{Chart: "thrust", Key: "full", Label: "full throttle", Along: overAir, Across: ofThrust},
		{Chart: "thrust", Key: "level", Label: "holds level flight", Along: overAir, Across: ofThrust},
	}
	if err := c.firstError(); err != nil {
		for i := range curves {
			curves[i].Why = err.Error()
		}
		return curves
	}
	w.found = c.match()
	w.power(&curves[0])
	w.absorbed(&curves[1], &curves[2])
	w.thrust(&curves[3])
	w.level(&curves[4])
	return curves
}

// worker draws the lines of one assembled machine.
type worker struct {
	*chain
	found match.Report
}

func (w *worker) output() output { return output{w.engine, w.variant.Cooling} }

// power is full throttle over the usable speeds, with the match standing and
// level flight.
func (w *worker) power(c *Curve) {
	e := w.output()
	from, to := e.SpeedRange()
	for _, speed := range between(from, to, crankSteps) {
		c.Points = append(c.Points, CurvePoint{speed, e.Power(speed)})
	}
	if p := w.found.Static; worked(p) {
		c.Spots = append(c.Spots, Spot{"match, standing", CurvePoint{p.CrankSpeed, p.EnginePower}})
	}
	if p := w.found.Level; p.Status == match.Matched {
		c.Spots = append(c.Spots, Spot{"level flight", CurvePoint{p.CrankSpeed, p.EnginePower}})
	}
}

// absorbed is what the propeller standing asks of the crank through the drive,
// and how much of it the drive passes on, until it is past what the engine can
// give.
func (w *worker) absorbed(power, efficiency *Curve) {
	e := w.output()
	_, to := e.SpeedRange()
	most, _ := e.Peak()
	for _, speed := range between(0.2*to, to, crankSteps) {
		asked, passed, ok := w.asks(speed)
		if !ok || asked > headroom*most {
			break
		}
		power.Points = append(power.Points, CurvePoint{speed, asked})
		efficiency.Points = append(efficiency.Points, CurvePoint{speed, passed / asked})
	}
	if len(power.Points) == 0 {
		power.Why = "the propeller asks for more than the engine gives at every speed"
		efficiency.Why = power.Why
	}
	if p := w.found.Static; worked(p) {
		efficiency.Spots = append(efficiency.Spots, Spot{"match, standing", CurvePoint{p.CrankSpeed, p.Transmission.Efficiency()}})
	}
}

// asks is the power at the crank, W, that turns the propeller standing, and
// what of it arrives. The drive's loss and slip depend on the power, so it is
// sought in a few passes.
func (w *worker) asks(crankSpeed float64) (asked, passed float64, ok bool) {
	flow := w.flow(w.air)
	flow.Speed = crankSpeed / w.drive.Ratio()
	passed = w.propeller.At(flow).Power
	asked = passed
	for range 12 {
		t := w.drive.Transmit(asked, crankSpeed)
		if !(t.SpeedOut > 0) || !(passed > 0) {
			return 0, 0, false
		}
		short := passed - t.PowerOut
		if asked += short; math.Abs(short) < 1e-4*passed {
			return asked, passed, true
		}
		if t.SpeedOut != flow.Speed {
			flow.Speed = t.SpeedOut
			passed = w.propeller.At(flow).Power
		}
	}
	return 0, 0, false
}

// thrust is full throttle from standing to the wing's top speed.
func (w *worker) thrust(c *Curve) {
	trim := w.found.Trim.Airspeed
	if !worked(w.found.Static) {
		c.Why = w.unmatched(w.found).Error()
		return
	}
	flow, near := w.flow(w.air), w.found.Static
	for _, v := range between(0, trim*w.study.Wing.TopSpeed, airSteps) {
		flow.Airspeed = v
		p := match.FullThrottleNear(w.output(), w.drive, &w.propeller, flow, near)
		if !flies(p) {
			break
		}
		c.Points = append(c.Points, CurvePoint{v, p.InstalledThrust})
		near = p
	}
	if len(c.Points) == 0 {
		c.Why = w.grounded(w.found).Error()
	}
}

// level is the thrust that holds level flight from the stall to the top speed.
func (w *worker) level(c *Curve) {
	trim, thrust := flight.Level(w.study.Wing, w.allUp(), w.air.Density)
	for _, v := range between(trim*w.study.Wing.LeastSpeed, trim*w.study.Wing.TopSpeed, airSteps) {
		c.Points = append(c.Points, CurvePoint{v, flight.LevelThrust(w.study.Wing, w.allUp(), w.air.Density, v)})
	}
	c.Spots = append(c.Spots, Spot{"trim", CurvePoint{trim, thrust}})
}

// between is n values evenly from one to another, none where there is no way
// up.
func between(from, to float64, n int) []float64 {
	if !(to > from) {
		return nil
	}
	v := make([]float64, n)
	for i := range v {
		v[i] = from + (to-from)*float64(i)/float64(n-1)
	}
	v[n-1] = to // rounding may lead past it, where an engine gives nothing
	return v
}
