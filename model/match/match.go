package match

import (
	"backspan/model/part"
	"backspan/model/propeller"
)

// Engine is what the match asks of an engine. Speeds in rad/s, power in W.
type Engine interface {
	// Power at full throttle; 0 outside the usable speeds.
	Power(crankSpeed float64) float64
	// SpeedRange is the usable range at full throttle, both ends included.
	SpeedRange() (lowest, highest float64)
	// SpeedLimit is the highest speed allowed, which the usable range may pass.
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
	OverSpeed                 // at the engine's highest speed, throttled back to stay there
	Lugging                   // the load is too heavy at every usable speed; the figures are 0
	Windmilling               // the air drives the propeller at the engine's highest speed; the figures are 0
	BelowRange                // level flight below the engine's lowest usable full-throttle speed
	Impossible                // level flight asks for more than full throttle; this is full throttle
)

var statusWords = [...]string{
	Unsolved:    "no working point was found",
	Matched:     "matched",
	OverSpeed:   "over-speed, load too light: at full throttle the engine would run past its highest speed, so it is throttled back to it; too much reduction, or too small a propeller",
	Lugging:     "the engine lugs, load too heavy: at full throttle it does not reach its lowest usable speed; too little reduction, or too large a propeller",
	Windmilling: "the air drives the propeller even at the engine's highest speed",
	BelowRange:  "level flight needs less than the engine's lowest usable speed",
	Impossible:  "level flight needs more thrust than full throttle gives",
}

func (s Status) String() string { return statusWords[s] }

// Settled reports whether the figures stand for a steady point with the engine
// inside its range.
func (s Status) Settled() bool { return s == Matched || s == OverSpeed }

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
