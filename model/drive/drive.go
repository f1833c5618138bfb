package drive

import (
	"fmt"

	"backspan/model/belt"
	"backspan/model/gear"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/toothedbelt"
)

// Drive carries power from the crank to the propeller. Its values are those of
// one design; nothing in it changes.
type Drive interface {
	// Ratio is crank speed over propeller speed, without slip.
	Ratio() float64
	// Turn is +1 when the propeller turns as the crank does, −1 when reversed.
	Turn() int
	// Transmit is the power that arrives when power W enters at a crank speed
	// in rad/s, at any speed and load.
	Transmit(power, crankSpeed float64) part.Transmission
	// Pieces stand from the engine's drive face to the propeller plate.
	Pieces() []part.Piece
	// AxisOffset is the distance of the propeller axis from the crank axis, m.
	AxisOffset() float64
	// SpinningInertia is what the drive adds to the propeller's polar inertia, kg·m².
	SpinningInertia() float64
	// CrankInertia is what the drive adds to the crank's polar inertia, kg·m².
	CrankInertia() float64
	// Upkeep is what the drive costs to buy and to keep.
	Upkeep() part.Upkeep
	// Examine finds everything about the drive at one duty, with what turns on
	// either side of it.
	Examine(at part.Duty, train part.Train) Findings
}

// Findings are a drive's readings and checks at one duty, added to those there are.
type Findings interface {
	Readings(rs []reading.Reading) []reading.Reading
	Checks(cs []reading.Check, marginAsked float64) []reading.Check
}

type beltDrive struct{ belt.Belt }

func (d beltDrive) Examine(at part.Duty, train part.Train) Findings {
	return beltFindings{d.Belt.Examine(at, train), d.BeltPlane(), d.Overhang()}
}

type toothedDrive struct{ toothedbelt.Belt }

func (d toothedDrive) Examine(at part.Duty, train part.Train) Findings {
	return toothedFindings{d.Belt.Examine(at, train), d.BeltPlane(), d.Overhang()}
}

type gearDrive struct{ gear.Gear }

func (d gearDrive) Examine(at part.Duty, train part.Train) Findings { return d.Gear.Examine(at, train) }

// New designs the chosen drive for the rated duty: the engine's peak power and
// its speed in the reference air, so that the same hardware is laid out
// whatever the day. train is what turns on either side. standoff is the depth of what stands between the engine's
// drive face and the drive, m. The error is one sentence naming the parameter
// to change.
func New(s Spec, rated part.Duty, standoff float64, train part.Train) (Drive, error) {
	switch s.Kind {
	case RibbedBelt:
		b, err := belt.New(s.RibbedBelt, rated, standoff, train)
		return beltDrive{b}, err
	case ToothedBelt:
		b, err := toothedbelt.New(s.ToothedBelt, rated, standoff, train)
		return toothedDrive{b}, err
	case Gear:
		g, err := gear.New(s.BuiltGear(), rated)
		return gearDrive{g}, err
	case Direct:
		return Hub{s.Direct}, nil
	}
	return nil, fmt.Errorf("unknown kind of drive %q; choose %s, %s, %s or %s", s.Kind, RibbedBelt, ToothedBelt, Gear, Direct)
}
