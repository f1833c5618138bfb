package drive

import (
	"fmt"

	"backspan/model/param"
	"backspan/model/part"
	"backspan/model/reading"
	"backspan/model/unit"
)

// clutched is a drive that can let the crank turn alone.
type clutched interface {
	// TurnsAt reports whether the propeller turns at a crank speed, rad/s.
	TurnsAt(crankSpeed float64) bool
}

// idling is the propeller's speed while the engine idles, rad/s: 0 with a
// clutch that is out. A clutch that takes hold there is taken not to slip.
func idling(d Drive, train part.Train) param.Slot {
	if train.Crank == nil || !(train.Crank.IdleSpeed() > 0) {
		return param.Slot{}
	}
	idle := train.Crank.IdleSpeed()
	if c, ok := d.(clutched); ok && !c.TurnsAt(idle) {
		return param.Known(0)
	}
	return param.Known(idle / d.Ratio())
}

const idleUnknown = "the engine's idle speed is not known"

func (r *Result) idleReading() reading.Reading {
	return reading.OfSlot("drive.idle_propeller_speed", "Propeller speed at idle", r.Idle, unit.RPM, idleUnknown).Lower().
		How("the engine's idle speed over the ratio; 0 where a centrifugal clutch is out, though drag in it may still creep the propeller round").
		Source("geometry")
}

func (r *Result) idleCheck() reading.Check {
	const key, label = "drive.idle_propeller", "Propeller stands at idle"
	if !r.Idle.Known {
		return reading.Unrated(key, label, idleUnknown)
	}
	return reading.Condition(key, label, r.Idle.Value == 0).Warn().
		Source("a turning propeller can maim, at idle too").
		Advice(fmt.Sprintf("The propeller turns at %s at idle, and the start turns it too: a hand or a cord that reaches it is lost. "+
			"Start it held fast, throttle closed, nobody near or in line with the disc, and stop the engine before anyone comes close. "+
			"A gear with centrifugal clutch as Coupling to the crank, taking hold well above Idle speed, lets it stand; local codes come first.",
			unit.RPM.Text(r.Idle.Value)))
}
