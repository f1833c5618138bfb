package coupling

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

// idleRoom is how far above idle a clutch should take hold at least, as a share
// of idle; an estimate.
const idleRoom = 0.25

// Checks holds the coupling against its limits. marginAsked is the share of a
// limit below which a margin is thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	if r.Spring.Known {
		cs = append(cs, r.torqueCheck(marginAsked))
	}
	if r.Kind != Clutch {
		return cs
	}
	return append(cs,
		r.idleCheck(), r.meanCheck(marginAsked), r.peakCheck(),
		reading.Unrated("coupling.creep", "Clutch lets the propeller stand",
			"grease, a dragging shoe, a sticking spring or cold oil may creep it round, a worn or hot clutch may take hold early, and a start with the throttle open does so at once: "+
				"look at it with the engine at idle from well outside the disc, and never reach in while the engine runs"))
}

func (r *Result) torqueCheck(thin float64) reading.Check {
	const key, label = "coupling.torque", "Coupling bears the torque peaks"
	switch {
	case !r.Allowed.Known:
		return reading.Unrated(key, label, "Coupling torque allowed is not given")
	case !r.Load.RunUpPeak.Known:
		return reading.Unrated(key, label, noPeak)
	}
	return reading.AtMost(key, label, r.Load.RunUpPeak.Value, r.Allowed.Value, thin, unit.NewtonMetre).
		Source("your own Coupling torque allowed").
		Advice("Keep resonance out of the run-up: choose a centrifugal clutch as Coupling to the crank that takes hold above it, or change Coupling stiffness; or fit a stronger coupling.")
}

func (r *Result) idleCheck() reading.Check {
	const key, label = "coupling.take_up", "Clutch takes hold above idle"
	if !r.Load.IdleSpeed.Known {
		return reading.Unrated(key, label, "the engine's idle speed is not known")
	}
	return reading.AtLeast(key, label, r.TakeUp, r.Load.IdleSpeed.Value, idleRoom, unit.RPM).
		Source("below idle the clutch is no clutch; thin within a quarter above it (estimate), for idle wanders and is set too high").
		Advice("Raise Clutch takes hold at, or lower the engine's Idle speed: a propeller that turns at idle can maim.")
}

func (r *Result) meanCheck(thin float64) reading.Check {
	const key, label = "coupling.clutch_mean", "Clutch carries the mean torque"
	if !r.Capacity.Known {
		return reading.Unrated(key, label, r.unrated(""))
	}
	return reading.AtLeast(key, label, r.Capacity.Value, r.Load.Torque, thin, unit.NewtonMetre).
		Source(clutchBook + ": less slips and burns").
		Advice("Lower Clutch takes hold at, or raise Clutch torque, Mass of one shoe, Clutch shoes or Clutch drum.")
}

func (r *Result) peakCheck() reading.Check {
	const key, label = "coupling.clutch_peak", "Clutch carries the torque peaks"
	if !r.Capacity.Known {
		return reading.Unrated(key, label, r.unrated(""))
	}
	if !r.Load.Peak.Known {
		return reading.Unrated(key, label, noPeak)
	}
	return reading.AtLeast(key, label, r.Capacity.Value, r.Load.Peak.Value, 0, unit.NewtonMetre).Warn().
		Source("mechanics: past it the clutch gives a little at every firing and heats").
		Advice("Raise Clutch torque, Mass of one shoe, Clutch shoes or Clutch drum, or enter a softer Coupling stiffness.")
}
