package drive

import "backspan/model/reading"

// gearChecks are those in which the gear meets its surroundings.
func (r *Result) gearChecks(cs []reading.Check) []reading.Check {
	const key, label = "drive.dipping_gear", "The lower gear dips into the oil"
	dips := reading.Unrated(key, label, "Dip depth is 0: no gear dips, and how else the teeth are oiled is not computed")
	if r.Dips {
		dips = reading.Condition(key, label, !r.DipsAbove).Source("geometry").
			Advice("choose the other Gear that dips, or the other side for Propeller axis")
	}
	if !r.OnCrank {
		return append(cs, dips)
	}
	return append(cs, dips, reading.Condition("drive.crank_coupling", "Pinion on the crank, no coupling", !r.Coupled).Source("geometry").
		Advice("choose rigid as Coupling to the crank, or a shaft of its own as Overhung pinion sits on: a pinion fast on the crank leaves no room for a coupling or clutch, which is left out here, and the propeller turns whenever the engine does"))
}

// lossOil says why the losses of a gear do not quite add up to that power.
func (r *Result) lossOil() string {
	if r.Kind != Gear {
		return ""
	}
	return ", with the oil as warm as at the rated power; the five losses of the gear are at this day's own oil temperature and may add up to a little more or less"
}
