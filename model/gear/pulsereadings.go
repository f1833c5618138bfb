package gear

import (
	"cmp"
	"fmt"

	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	twistOrigin = "mechanics of inertias on springs; Den Hartog, Mechanical Vibrations, from memory"
	clutchOut   = "the clutch is out at idle: no torque of the crank reaches the teeth"
)

func (r *Result) pulsationReading() reading.Reading {
	return reading.Unless(r.Pulsation.Why, "gear.pulsation_factor", "Greatest over mean torque, mesh", r.Pulsation.Factor, unit.One).Lower().
		How("the engine's torque harmonics, each with its phase, carried over coupling and teeth and added through a cycle").
		Source(twistOrigin)
}

func (r *Result) peakReading(key, label string, si float64, u unit.Unit) reading.Reading {
	return reading.Unless(r.Pulsation.Why, key, label, si, u).
		How("at the pinion, each harmonic with its phase, along the propeller's load from idle, or from where a clutch grips, up to full throttle standing").
		Source(twistOrigin)
}

// torsionReadings are those of the twisting train beside the load factors.
func (r *Result) torsionReadings(rs []reading.Reading) []reading.Reading {
	p := &r.Pulsation
	rs = append(rs,
		reading.Unless(p.Why, "gear.pulsation_bound", "Bound of torque peak, mesh", 1+p.Swing/max(p.Mean, leastTorque), unit.One).Lower().
			How("over the mean, standing, as if every harmonic peaked at once: no error of phase reaches higher").Source(twistOrigin),
		reading.Unless(p.Why, "gear.least_torque", "Least torque in the mesh", p.Least, unit.NewtonMetre).Higher().
			How("at the pinion, over a cycle at full throttle standing; below zero the teeth part").Source(twistOrigin),
		r.idleReading(),
	)
	parting := len(rs)
	rs = append(rs,
		reading.Unless(p.Why, "gear.parting_from", "Teeth part from", p.RunUp.PartsFrom, unit.RPM).Higher().
			How("lowest crank speed of the run-up at which the torque in the mesh turns round, looked at in even steps of 40 and where an order meets the first frequency").Source(twistOrigin),
		reading.Unless(p.Why, "gear.parting_to", "Teeth part up to", p.RunUp.PartsTo, unit.RPM).Lower().
			How("highest of those speeds; in between they may stay in contact here and there").Source(twistOrigin),
	)
	if p.Why == "" && !p.RunUp.Parts {
		reading.Without(rs[parting:], "the teeth stay in contact all the way up")
	}
	return rs
}

func (r *Result) idleReading() reading.Reading {
	p := &r.Pulsation
	x := reading.Unless(cmp.Or(p.Why, p.Idle.Why), "gear.idle_swing", "Drop over mean torque, idle", p.Idle.Drop(), unit.One).Lower().
		How("how far the torque in the mesh falls below its mean at idle with the propeller on, over that mean; past 1 the teeth part").Source(twistOrigin)
	if p.Idle.Out {
		return reading.Without([]reading.Reading{x}, clutchOut)[0]
	}
	return x
}

func (r *Result) contactCheck() reading.Check {
	const key, label = "gear.contact_kept", "Teeth stay in contact"
	p := &r.Pulsation
	if p.Why != "" {
		return reading.Unrated(key, label, p.Why)
	}
	return reading.AtMost(key, label, p.Mean-p.Least, p.Mean, 0, unit.NewtonMetre).Warn().
		Source("mechanics: where the torque falls further than its mean the teeth part and hammer").
		Advice("Fit a softer coupling and enter its Coupling stiffness, or raise Inertia of crank and flywheel.")
}

// idleCheck is where gears rattle first: the load falls with the square of
// speed, the pressure of compression does not.
func (r *Result) idleCheck() reading.Check {
	const key, label = "gear.idle_contact", "Teeth stay in contact at idle"
	p := &r.Pulsation
	if why := cmp.Or(p.Why, p.Idle.Why); why != "" {
		return reading.Unrated(key, label, why)
	}
	if p.Idle.Out {
		return reading.Condition(key, label, true).Source(clutchOut).Advice("Keep idle below Clutch takes hold at.")
	}
	return reading.AtMost(key, label, p.Idle.Mean-p.Idle.Least, p.Idle.Mean, 0, unit.NewtonMetre).Warn().
		Source("mechanics; springs stay springs in it, so past the limit it says that the teeth rattle, not how hard").
		Advice(r.rattle())
}

func (r *Result) runUpCheck() reading.Check {
	const key, label = "gear.run_up_contact", "Teeth stay in contact, run-up"
	p := &r.Pulsation
	if p.Why != "" {
		return reading.Unrated(key, label, p.Why)
	}
	return reading.Condition(key, label, !p.RunUp.Parts).Warn().
		Source("mechanics: where the torque falls further than its mean the teeth part and hammer").
		Advice(fmt.Sprintf("From %s to %s the teeth part: pass through quickly and do not dwell there. "+
			"A softer Coupling stiffness, or a clutch that takes hold later, moves it down out of use.",
			unit.RPM.Text(p.RunUp.PartsFrom), unit.RPM.Text(p.RunUp.PartsTo)))
}

func (r *Result) rattle() string {
	play := "their play"
	if r.Backlash.Known {
		play = fmt.Sprintf("the %.2f mm of Normal backlash", 1000*r.Backlash.Running)
	}
	return "At idle the teeth cross " + play + " at every turn and rattle. " +
		"Choose a centrifugal clutch as Coupling to the crank, or raise Inertia of crank and flywheel, or lower Coupling stiffness well below resonance at idle."
}

// coverCheck holds the application factor against the pulsation it stands for,
// at the duty and on the way up to it. One that is the duty's own pulsation is
// held against the way up only.
func (r *Result) coverCheck() reading.Check {
	const key, label = "gear.application_factor", "Load factor covers the pulsation"
	if why := cmp.Or(r.Strength.Why, r.Pulsation.Why); why != "" {
		return reading.Unrated(key, label, why)
	}
	const hair = 1 - 1e-9
	p := &r.Pulsation
	peak := p.Peak * hair
	if r.spec.LoadFactor != FromPulsation {
		peak = max(peak, p.Most)
	}
	return reading.AtLeast(key, label, r.Strength.Load.Application*p.Mean, peak, 0, unit.NewtonMetre).Warn().
		Source("application factor times the mean torque, against the greatest in the mesh standing and on the way up; " + twistOrigin).
		Advice(r.peakAdvice() + "raise Application factor, chosen in Load factor from. Tooth root at the run-up peak says what the teeth still stand there.")
}
