package vibration

import (
	"fmt"

	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	unsolved = "no steady full-throttle run standing was found"
	adrift   = "the mounts do not hold the machine: give three or more Places of the mounts that do not stand in one line"
	several  = "the shaking of more than one cylinder hangs on their arrangement, which is not given"
	slider   = "slider-crank, Heywood and Taylor, from memory"
	rigid    = "stiff body on linear mounts, sum of modes; Rao, from memory"
	whole    = "of engine, cooling, drive, propeller and what rides with them, at rest; the spinning propeller's couple, left out, parts pitch and yaw"
)

// Readings lists what was found.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = append(rs,
		r.single("vibration.shake_along", "Shaking along the bore", r.Shake.Along, unit.Newton).Lower().
			How("once a turn: reciprocating mass less the counterweight's share, at the standing speed").Source(slider),
		r.single("vibration.shake_across", "Shaking across the bore", r.Shake.Across, unit.Newton).Lower().
			How("once a turn: the counterweight's share; it turns the shaking, it does not remove it").Source(slider),
		r.single("vibration.shake_second", "Shaking twice a turn", r.Shake.Second, unit.Newton).Lower().
			How("along the bore, from the slant of the rod").Source(slider),
		r.solved("vibration.mass", "Mass that swings in the mounts", r.Mass, unit.Kilogram).
			How("engine, cooling, drive, propeller and what rides with them").Source("geometry"),
		r.held("vibration.overhang", "Its centre behind the mounts", r.Overhang, unit.Millimetre).Lower().
			How("centre of gravity aft of the mounts' middle").Source("geometry"),
	)
	for i, hz := range r.Modes {
		rs = append(rs, r.held(fmt.Sprintf("vibration.mode_%d", i+1), fmt.Sprintf("Mount mode %d", i+1), hz, unit.Hertz).How(whole).Source(rigid))
	}
	rs = r.passing(rs)
	return r.sagging(rs)
}

func (r *Result) passing(rs []reading.Reading) []reading.Reading {
	return append(rs,
		r.shaking("vibration.passed_share", "Shaking that reaches the frame", r.PassedFirst, unit.Percent).Lower().
			How("force in the mounts over the force once a turn, at the standing speed").Source(rigid),
		r.shaking("vibration.passed_force", "Force once a turn on the frame", r.FirstForce, unit.Newton).Lower().
			How("root of the squares of its parts along the axes").Source(rigid),
		r.shaking("vibration.passed_second", "Force twice a turn on the frame", r.SecondForce, unit.Newton).Lower().
			How("root of the squares of its parts along the axes").Source(rigid),
		r.solved("vibration.firing_couple", "Firing couple on the engine", r.FiringCouple, unit.NewtonMetre).Lower().
			How("first harmonic of the crank's torque; the propeller is taken to turn evenly").Source("the engine's pulsation"),
		r.held("vibration.firing_passed", "Firing couple on the frame", r.FiringPassed, unit.Percent).Lower().
			How("couple in the mounts over the firing couple, at the standing speed").Source(rigid),
		r.held("vibration.crossed_starting", "Modes crossed below idle", float64(r.Crossed[0]), unit.Count).
			How("modes below the idle speed, crossed at each start and stop").Source(rigid),
		r.held("vibration.crossed_running", "Modes crossed from idle up", float64(r.Crossed[1]), unit.Count).Lower().
			How("modes between the idle and the standing speed").Source(rigid),
		r.shaking("vibration.passage_swing", "Hub's swing while crossing a mode", r.Passage.Hub, unit.Millimetre).Lower().
			How("largest steady swing of the propeller plate below the standing speed; a quick passage stays below it; "+r.counted()).Source(rigid),
		r.shaking("vibration.passage_speed", "Crank speed of that swing", r.Passage.HubSpeed, unit.RPM).
			How("where an order up to the second meets the mode; "+r.counted()).Source(rigid),
		r.shaking("vibration.passage_in_plane", "Tips' swing across, crossing", r.Passage.InPlane, unit.Millimetre).Lower().
			How("the plate's largest swing across the thrust axis while crossing a mode; "+r.counted()).Source(rigid),
		r.shaking("vibration.passage_axial", "Tips' swing along, crossing", r.Passage.Axial, unit.Millimetre).Lower().
			How("the plate's swing along the thrust axis and radius × rocking of the disc, the largest of the modes; "+r.counted()).Source(rigid),
	)
}

func (r *Result) sagging(rs []reading.Reading) []reading.Reading {
	const loads = "weight, thrust and torque at full throttle standing"
	return append(rs,
		r.held("vibration.hub_forward", "Propeller plate goes forward", r.HubForward, unit.Millimetre).Lower().How(loads).Source(rigid),
		r.held("vibration.hub_drop", "Propeller plate drops", r.HubDrop, unit.Millimetre).How(loads+"; negative rises").Source(rigid),
		r.held("vibration.hub_aside", "Propeller plate goes to the right", r.HubAside, unit.Millimetre).How(loads).Source(rigid),
		r.held("vibration.tilt", "Propeller disc tilts", r.Tilt, unit.Degree).Lower().How(loads).Source(rigid),
		r.held("vibration.twist", "Engine twists in its mounts", r.Twist, unit.Degree).How("the air's torque on the propeller, about the thrust axis").Source(rigid),
		r.held("vibration.tip_left", "Tip clearance left after sag", r.TipLeft, unit.Millimetre).Higher().
			How("tip to guard at rest less the plate's way"+r.swung(" and its swing across while crossing a mode")).Source(rigid),
		r.held("vibration.ahead_left", "Clearance ahead of the tips left", r.AheadLeft, unit.Millimetre).Higher().
			How("guard's plane ahead of the plate less the plate's way forward and the tilt at the tip"+r.swung(", and swing and rocking while crossing a mode")).Source(rigid),
	)
}

// swung says whether a clearance is less the swing while crossing a mode.
func (r *Result) swung(text string) string {
	if r.Solved && !r.Single {
		return "; the swing while crossing a mode is not in it: " + several
	}
	return text + "; " + r.counted()
}

// counted says what shakes the body on its way through the modes.
func (r *Result) counted() string {
	if r.Passage.Pulses {
		return "inertia forces and the torque pulses without load"
	}
	return "inertia forces alone, without torque pulses"
}

func (r *Result) solved(key, label string, si float64, u unit.Unit) reading.Reading {
	why := ""
	if !r.Solved {
		why = unsolved
	}
	return reading.Unless(why, key, label, si, u)
}

func (r *Result) held(key, label string, si float64, u unit.Unit) reading.Reading {
	if r.Solved && !r.Held {
		return reading.Missing(key, label, u, adrift)
	}
	return r.solved(key, label, si, u)
}

// single is a reading of the shaking itself, which needs no mounts.
func (r *Result) single(key, label string, si float64, u unit.Unit) reading.Reading {
	if r.Solved && !r.Single {
		return reading.Missing(key, label, u, several)
	}
	return r.solved(key, label, si, u)
}

func (r *Result) shaking(key, label string, si float64, u unit.Unit) reading.Reading {
	if r.Solved && !r.Single {
		return reading.Missing(key, label, u, several)
	}
	return r.held(key, label, si, u)
}
