package match

import (
	"math"

	"backspan/model/part"
	"backspan/model/propeller"
)

// Engine is what the match asks of an engine. Speeds in rad/s, power in W.
type Engine interface {
	// Power at full throttle; 0 outside the usable speeds.
	Power(crankSpeed float64) float64
	// SpeedRange is the usable range at full throttle, both ends included.
	SpeedRange() (lowest, highest float64)
	// SpeedLimit is the highest speed allowed, inside the usable range or past it.
	SpeedLimit() float64
	// Peak is the greatest power and its speed.
	Peak() (power, speed float64)
	// FuelFlow is kg/s at any part of full throttle.
	FuelFlow(power, crankSpeed float64) float64
}

// Drive is what the match asks of a drive. Ratio is crank over propeller
// speed, positive whichever way the propeller turns.
type Drive interface {
	Ratio() float64
	Transmit(power, crankSpeed float64) part.Transmission
}

// Status says how a Point came about.
type Status int

// The states of a point.
const (
	Unsolved    Status = iota // nothing was found; the figures are 0
	Matched                   // a steady working point
	OverSpeed                 // at the highest speed allowed, throttled back to stay there
	PastCurve                 // the same at the last speed of the engine's curve, where that comes first
	Lugging                   // the load is too heavy at every usable speed; the figures are 0
	Windmilling               // the air drives the propeller at the engine's highest speed; the figures are 0
	BelowRange                // level flight below the engine's lowest usable full-throttle speed
	Impossible                // level flight asks for more than full throttle; this is full throttle
	Forbidden                 // the highest speed allowed lies below the curve; the figures are 0
)

// Few words for what bars a machine, for a place in a sentence.
var shortWords = [...]string{
	OverSpeed:   "the engine over-speeds",
	PastCurve:   "the engine runs past the end of its Power curve",
	Lugging:     "the engine lugs",
	Windmilling: "the air drives the propeller",
	Forbidden:   "Highest allowed speed is below Power curve",
}

// Short is the state in few words, where it bars a machine; else empty.
func (s Status) Short() string { return shortWords[s] }

// Said is the state whose sentence is given; Unsolved when there is none.
func Said(sentence string) Status {
	for s, words := range statusWords {
		if words == sentence {
			return Status(s)
		}
	}
	return Unsolved
}

var statusWords = [...]string{
	Unsolved:    "no working point was found",
	Matched:     "matched",
	OverSpeed:   "over-speed, load too light: at full throttle the engine would run past Highest allowed speed, so it is throttled back to it; too much reduction, or too small a propeller",
	PastCurve:   "past the end of its Power curve; extend it: at full throttle the load is too light to keep the engine on it, so it is throttled back to its last speed; too much reduction, or too small a propeller",
	Lugging:     "the engine lugs, load too heavy: at full throttle it does not reach its lowest usable speed; too little reduction, or too large a propeller",
	Windmilling: "the air drives the propeller even at the engine's highest speed",
	BelowRange:  "level flight needs less than the engine's lowest usable speed",
	Impossible:  "level flight needs more thrust than full throttle gives",
	Forbidden:   "Highest allowed speed is not above the lowest speed of Power curve: raise the one, or extend the other downwards",
}

func (s Status) String() string { return statusWords[s] }

// Settled reports whether the figures stand for a steady point with the engine
// inside its range.
func (s Status) Settled() bool { return s == Matched || s.Throttled() }

// Throttled reports a point that is held at a highest speed.
func (s Status) Throttled() bool { return s == OverSpeed || s == PastCurve }

// Point is the machine at one steady working point.
type Point struct {
	Status          Status
	Airspeed        float64 // m/s
	CrankSpeed      float64 // rad/s
	PropellerSpeed  float64 // rad/s
	EnginePower     float64 // at the crank, W
	Throttle        float64 // share of full-throttle power at this crank speed
	FuelFlow        float64 // kg/s
	Transmission    part.Transmission
	Propeller       propeller.Point
	InstalledThrust float64 // N

	// Deficit: somewhere below this point full throttle gives less than the
	// load asks, so there may be a second, lower working point and the engine
	// may not come up to this one.
	Deficit bool
}

// machine is the three parts and the air they work in.
type machine struct {
	engine    Engine
	drive     Drive
	propeller *propeller.Propeller
	flow      propeller.Flow // Speed is set by at
	tolerance float64        // relative, of power and thrust at a working point
}

const (
	fine  = 1e-6
	fair  = 1e-3
	rough = 2e-2 // at the last working of the propeller, before polish
)

// span is the range of speeds that the engine may turn at: its curve, cut off
// at the highest speed allowed.
func (m *machine) span() (lowest, highest float64) {
	lowest, highest = m.engine.SpeedRange()
	return lowest, math.Min(highest, m.engine.SpeedLimit())
}

// spanless says why there is no such range.
func (m *machine) spanless() Status {
	if lowest, end := m.engine.SpeedRange(); lowest > 0 && end > lowest && m.engine.SpeedLimit() <= lowest {
		return Forbidden
	}
	return Unsolved
}

// held is the state of an engine throttled back to its highest speed.
func (m *machine) held() Status {
	if _, end := m.engine.SpeedRange(); end < m.engine.SpeedLimit() {
		return PastCurve
	}
	return OverSpeed
}

// at works the propeller at a speed of rotation.
func (m *machine) at(speed float64) propeller.Point {
	f := m.flow
	f.Speed = speed
	return m.propeller.At(f)
}

// full is the transmission at full throttle.
func (m *machine) full(crankSpeed float64) part.Transmission {
	return m.drive.Transmit(m.engine.Power(crankSpeed), crankSpeed)
}

// point gathers a working point.
func (m *machine) point(status Status, tr part.Transmission, pp propeller.Point) Point {
	p := Point{
		Status: status, Airspeed: m.flow.Airspeed, CrankSpeed: tr.SpeedIn, PropellerSpeed: tr.SpeedOut, EnginePower: tr.PowerIn,
		FuelFlow: m.engine.FuelFlow(tr.PowerIn, tr.SpeedIn), Transmission: tr, Propeller: pp,
		InstalledThrust: m.propeller.Installed(pp.Thrust),
	}
	if full := m.engine.Power(tr.SpeedIn); full > 0 {
		p.Throttle = tr.PowerIn / full
	}
	return p
}
