package coupling

import (
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	clutchBook = "Budynas & Nisbett, Shigley's Mechanical Engineering Design, chapter 16, from memory"
	slips      = "the clutch never carries the propeller's load without slipping"
	noInertia  = "the inertias of crank and propeller are not known"
	noPower    = "no torque passes at this point"
)

// Readings lists what the coupling bears.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	const half = "as entered, or half of a solid disc of 90 mm of the coupling's mass"
	rs = append(rs,
		reading.New("coupling.engine_inertia", "Coupling inertia, engine half", r.EngineInertia, unit.KilogramSquareMetre).How(half).Source("mechanics"),
		reading.New("coupling.drive_inertia", "Coupling inertia, drive half", r.DriveInertia, unit.KilogramSquareMetre).How(half).Source("mechanics"),
	)
	rs = r.springReadings(rs)
	clutch := len(rs)
	rs = r.clutchReadings(rs)
	if r.Kind != "" && r.Kind != Clutch {
		reading.Without(rs[clutch:], noClutch)
	}
	return rs
}

func (r *Result) springReadings(rs []reading.Reading) []reading.Reading {
	why := r.unsprung()
	twist := func(torque param.Slot) param.Slot {
		if why != "" {
			return param.Slot{}
		}
		return param.Finite(torque.Value / r.Spring.Value)
	}
	return append(rs,
		reading.OfSlot("coupling.twist", "Coupling twist, greatest", twist(r.Load.Peak), unit.Degree, why).Lower().
			How("greatest torque through the coupling at full throttle standing over its stiffness").Source("mechanics"),
		reading.OfSlot("coupling.run_up_twist", "Coupling twist, greatest, run-up", twist(r.Load.RunUpPeak), unit.Degree, why).Lower().
			How("the same on the way up to there, all heights of the harmonics added; a coupling whose stops come sooner hits them").Source("mechanics"),
		reading.OfSlot("coupling.run_up_torque", "Coupling torque, greatest, run-up", r.Load.RunUpPeak, unit.NewtonMetre, noPeak).Lower().
			How("on the way up to full throttle standing, all heights of the harmonics added; at most so much").Source("mechanics"),
		reading.OfSlot("coupling.damping_heat", "Heat of the coupling's damping", r.Load.DampingHeat, unit.Watt, why).Lower().
			How("work of the harmonics in its damping at full throttle standing; rubber bears few watts").Source("Den Hartog, Mechanical Vibrations, from memory"),
	)
}

// unsprung is why the spring's figures have no value.
func (r *Result) unsprung() string {
	switch {
	case !r.Spring.Known:
		return "the stiffness of the coupling is not given, or it is rigid"
	case !r.Load.Peak.Known:
		return noPeak
	}
	return ""
}

func (r *Result) clutchReadings(rs []reading.Reading) []reading.Reading {
	reserve := param.Slot{}
	if r.Capacity.Known && r.Load.Peak.Known && r.Load.Peak.Value > 0 {
		reserve = param.Finite(r.Capacity.Value / r.Load.Peak.Value)
	}
	return append(rs,
		reading.OfSlot("coupling.clutch_torque", "Clutch torque at working speed", r.Capacity, unit.NewtonMetre, r.unrated("")).Higher().
			How("grows with the square of speed above that at which the clutch takes hold").Source(clutchBook),
		reading.OfSlot("coupling.clutch_reserve", "Clutch torque over torque peak", reserve, unit.One, r.unrated(noPeak)).Higher().
			How("what it carries over the greatest torque through the coupling, at full throttle standing").Source(clutchBook),
		reading.OfSlot("coupling.slip_below", "Clutch slips below", r.Locks, unit.RPM, r.unrated(slips)).Lower().
			How("crank speed at which its torque meets that of the propeller's load line; below it, down to where it takes hold, it rubs and heats").
			Source("balance of torque"),
		reading.OfSlot("coupling.slip_heat", "Heat of the slipping clutch, most", r.SlipHeat, unit.Watt, r.unrated(slips)).Lower().
			How("its torque times the difference of speeds, held steadily where that is greatest; do not dwell there").Source("balance of power"),
		reading.OfSlot("coupling.slip_heat_speed", "Crank speed of that heat", param.Slot{Value: r.SlipAt, Known: r.SlipHeat.Known}, unit.RPM, r.unrated(slips)).
			How("between taking hold and gripping").Source("balance of power"),
		reading.OfSlot("coupling.take_up_heat", "Heat of one take-up, at least", r.Heat, unit.Joule, r.unheated()).Lower().
			How("of crank and propeller that meet, the one at the speed of grip, the other at rest; what the engine adds meanwhile comes on top").Source(clutchBook),
	)
}

const noPeak = "the engine's torque through a turn is not known"

// unrated is why a figure of the clutch has no value.
func (r *Result) unrated(otherwise string) string {
	switch {
	case !(r.Load.Torque > 0):
		return noPower
	case r.Why != "":
		return r.Why
	}
	return otherwise
}

func (r *Result) unheated() string {
	if r.Locks.Known {
		return noInertia
	}
	return r.unrated(slips)
}
