package bolt

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	vdi       = "from memory: VDI 2230"
	mechanics = "mechanics"

	noTorque = "the propeller takes no torque"
	overdone = "the bolts yield in tightening: they do not hold such a preload"
	noHold   = "the bolts hold nothing after their losses"
	noArea   = "the bolts do not lie between bore and edge of flange, plate and hub"
	noLimit  = "Pressure allowed on the hub is not given"
)

// Readings lists what the joint bears.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	peak := "mean propeller torque times Peak over mean propeller torque"
	if r.SwingKnown {
		peak = "the highest that the drive passes, standing at full throttle or on the way up to it where that is known; all of it is taken to reach the propeller"
	}
	safetyWhy := noArea
	if !r.CrushAllowed.Known {
		safetyWhy = noLimit
	}
	return append(rs,
		reading.New("bolt.count", "Propeller bolts", float64(r.Count), unit.Count).How("as entered").Source("the study"),
		reading.New("bolt.tightening_torque", "Tightening torque", r.TighteningTorque, unit.NewtonMetre).
			How("as entered, or from the yield used in tightening").Source(vdi),
		reading.New("bolt.full_torque", "Torque to 90 % of yield", r.FullTorque, unit.NewtonMetre).
			How("tension and twist of tightening together use 90 % of the bolt's yield strength").Source(vdi),
		reading.New("bolt.preload", "Preload per bolt, greatest", r.Preload, unit.Newton).
			How("tightening torque at the friction entered").Source(vdi),
		reading.New("bolt.full_preload", "Preload per bolt at 90 % of yield", r.FullPreload, unit.Newton).Higher().
			How("tension and twist of tightening together use 90 % of the bolt's yield strength").Source(vdi),
		reading.New("bolt.preload_least", "Preload per bolt, least", r.LeastPreload, unit.Newton).Higher().
			How("greatest over the tightening factor, less settling and, in wood, drying").Source(vdi),
		reading.New("bolt.stress_share", "Yield used in tightening", r.StressShare, unit.Percent).Lower().
			How("tension and twist of tightening together over the yield strength").Source(vdi),
		reading.New("bolt.clamping_force", "Clamping force, greatest", r.ClampingForce, unit.Newton).How("all bolts together").Source(vdi),
		reading.New("bolt.peak_torque", "Peak torque at the plate", r.PeakTorque, unit.NewtonMetre).Lower().How(peak).Source(mechanics),
		reading.New("bolt.slip_torque", "Slip torque of the plate", r.SlipTorque, unit.NewtonMetre).Higher().
			How("least preload of all bolts times friction, on the bolt circle or, where that is less, at the middle of an evenly pressed face; "+r.ends()).Source(vdi),
		reading.OfSlot("bolt.slip_safety", "Safety against slip", r.SlipSafety, unit.One, r.unslipped()).Higher().
			How("slip torque over peak torque").Source(vdi),
		reading.OfSlot("bolt.crush_pressure", "Pressure on the hub", r.CrushPressure, unit.Megapascal, noArea).Lower().
			How("greatest clamping force over the face that flange, plate and hub share, less bore and holes; "+r.ends()).Source(mechanics),
		reading.OfSlot("bolt.crush_safety", "Safety against crushing the hub", r.CrushSafety, unit.One, safetyWhy).Higher().
			How("pressure allowed over pressure").Source(mechanics),
		reading.New("bolt.shear_force", "Shear per bolt if friction fails", r.ShearForce, unit.Newton).Lower().
			How("peak torque on the bolt circle, all bolts alike").Source(mechanics),
		reading.New("bolt.shear_stress", "Bolt shear if friction fails", r.ShearStress, unit.Megapascal).Lower().
			How("shear force over the thread's stress area").Source(mechanics),
		reading.New("bolt.bending_stress", "Bolt bending if friction fails", r.BendingStress, unit.Megapascal).Lower().
			How("shear force over half the hub's thickness at the thread's root, bolt held at both ends").Source(mechanics),
		reading.New("bolt.combined_stress", "Bolt stress if friction fails", r.Combined, unit.Megapascal).Lower().
			How("bending and shear together").Source(mechanics),
		reading.OfSlot("bolt.thrust_share", "Thrust against clamping force", r.ThrustShare, unit.Percent, noHold).
			How("thrust over the least preload of all bolts; not counted in the slip torque").Source(mechanics),
	)
}

// unslipped is why the safety against slip is not known.
func (r *Result) unslipped() string {
	switch {
	case !r.HolesInside:
		return noArea
	case r.StressShare > 1:
		return overdone
	}
	return noTorque
}
