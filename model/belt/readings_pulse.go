package belt

import (
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	twinSource     = "mechanics: two inertias joined by the belt, loss factor an estimate"
	branchedSource = "mechanics: two inertias and a loop that is half as stiff while a strand is off; equivalent stiffness by least squares"
	skiddingSource = "mechanics: the same, and Euler-Eytelwein with the dry friction given; locked centre"
	movingSource   = "from memory: Sack 1954, Mote; moving string"
)

// noPulsation says why nothing is known of the torque's unevenness.
func (r *Result) noPulsation() string {
	if r.Speed > 0 || r.Transmission.SpeedIn == 0 && r.Ribs == 0 {
		return noTorque
	}
	return noPassing
}

func (r *Result) surgeReadings(rs []reading.Reading) []reading.Reading {
	p := r.Pulsation
	newton := func(key, label string, n float64) reading.Reading {
		return reading.OfSlot(key, label, param.Slot{Value: n, Known: p.Known}, unit.Newton, r.noPulsation())
	}
	const inertia = "the inertias of crank and propeller are not known"
	return append(rs,
		reading.OfSlot("belt.torsional", "Torsional frequency", p.Torsional, unit.Hertz, inertia).
			How("the crank against the propeller, both spans taut; stretch of spans and a share of the arcs").Source(twinSource),
		reading.OfSlot("belt.torsional_open", "Torsional frequency, slack off", p.TorsionalOpen, unit.Hertz, inertia).
			How("the same with the slack span carrying nothing").Source(twinSource),
		reading.OfSlot("belt.amplification", "Belt over engine torque", param.Slot{Value: p.Amplification, Known: p.Known}, unit.One, r.noPulsation()).Lower().
			How("of the first harmonic present, both spans taut").Source(twinSource),
		newton("belt.tight_side_peak", "Tight side, peak", p.Surge.Tight).Lower().
			How("greatest over a cycle, the harmonics summed with their phase; dry friction caps it").Source(skiddingSource),
		newton("belt.slack_side_least", "Slack side, least", p.Surge.Slack).Higher().
			How("least over a cycle; a belt that skids keeps it on its pulley").Source(skiddingSource),
		newton("belt.pull_peak", "Effective pull, peak", p.Surge.Pull).Lower().
			How("greatest over a cycle; no more than dry friction holds").Source(skiddingSource),
		newton("belt.tight_side_held", "Tight side, peak if it held", p.Surge.HeldTight).Lower().
			How("the same for a belt that could not skid: past the lift of the slack side one span pulls alone").Source(branchedSource),
		newton("belt.pulsation_need", "Standing tension for the peaks", p.Surge.Need).Lower().
			How("that just keeps the slack side pressed on its pulley at this point, both spans taut").Source(twinSource),
		reading.OfSlot("belt.slack_open", "Slack side off, if it held", param.Slot{Value: p.Surge.Open, Known: p.Known}, unit.Percent, r.noPulsation()).Lower().
			How("share of a cycle in which the slack side would not press on its pulley if the belt could not skid").Source(branchedSource),
		newton("belt.shaft_load_peak", "Shaft load, torque peaks", p.Surge.Load.Size()).Lower().
			How("contact tensions at the greatest tight side, added as vectors").Source(branchedSource),
		reading.OfSlot("belt.overhang_moment_peak", "Crank bending at torque peaks", param.Slot{Value: p.Moment, Known: p.Known}, unit.NewtonMetre, r.noPulsation()).Lower().
			How("peak shaft load times the overhang from the crank bearing").Source("mechanics"),
	)
}

// greatestShaftLoad is the greatest of standing as set, new and warm, running
// and at the torque peaks of the examined point, N.
func (r *Result) greatestShaftLoad() float64 {
	return max(r.Standing.Size(), r.Running.Size(), r.Adjustment.HotLoad, r.Adjustment.NewLoad, r.Pulsation.Surge.Load.Size())
}

// clampMoment is on the eccentric at the greatest shaft load known, N·m.
func (r *Result) clampMoment() float64 {
	return max(r.greatestShaftLoad(), r.Pulsation.Sweep.Load) * r.EccentricOffset
}

func (r *Result) sweepReadings(rs []reading.Reading) []reading.Reading {
	s := r.Pulsation.Sweep
	swept := func(key, label string, x float64, u unit.Unit) reading.Reading {
		why := "the engine's range of speeds is not known"
		if !r.Pulsation.Known {
			why = r.noPulsation()
		}
		return reading.OfSlot(key, label, param.Slot{Value: x, Known: s.To > 0}, u, why).Source(branchedSource)
	}
	return append(rs,
		swept("belt.tight_side_sweep", "Tight side, peak at any speed", s.Tight, unit.Newton).Lower().
			How("from idle to the highest speed on the propeller's cube law, capped by full throttle"),
		swept("belt.tight_side_sweep_speed", "Speed of that peak", s.TightSpeed, unit.RPM).How("crank speed"),
		swept("belt.pulsation_need_sweep", "Standing tension, any speed", s.Need, unit.Newton).Lower().
			How("that just keeps the slack side pressed on its pulley from idle to the highest speed, both spans taut"),
		swept("belt.pulsation_need_speed", "Speed that asks for it", s.NeedSpeed, unit.RPM).How("crank speed"),
		swept("belt.slack_open_sweep", "Slack off at any speed, if held", s.Open, unit.Percent).Lower().
			How("greatest share of a cycle, from idle to the highest speed, if the belt could not skid"),
		swept("belt.shaft_load_sweep", "Shaft load, peak at any speed", s.Load, unit.Newton).Lower().
			How("from idle to the highest speed"),
	)
}

func (r *Result) resonanceReadings(rs []reading.Reading) []reading.Reading {
	o := r.Resonance
	why := r.noPulsation()
	count := func(key, label string, n int) reading.Reading {
		return reading.OfSlot(key, label, param.Slot{Value: float64(n), Known: o.Known}, unit.Count, why).Lower()
	}
	const slack = "the slack side carries nothing but its own mass"
	return append(rs,
		reading.OfSlot("belt.span_frequency_tight", "Span frequency, running, tight", r.TightFrequency, unit.Hertz, "the belt does not run").
			How("(c² − v²) over twice the span times c, c = √(T/m)").Source(movingSource),
		reading.OfSlot("belt.span_frequency_slack", "Span frequency, running, slack", r.SlackFrequency, unit.Hertz, slack).
			How("(c² − v²) over twice the span times c, c = √(T/m)").Source(movingSource),
		count("belt.bands", "Speed bands to avoid", len(o.Bands)).
			How("from idle to the highest speed: engine orders up to 3, pulley run-out and belt passage on both spans").Source(movingSource),
		count("belt.bands_here", "Strong bands at this speed", o.Inside).How("bands of engine orders 1 and 2 on a span's first mode that hold the working speed").Source(movingSource),
		reading.OfSlot("belt.detuning", "Detuning at this speed", o.Detuning, unit.Percent, why).Higher().
			How("of the nearest exciting frequency from a span's own; "+o.causeText(o.Detuning, o.Cause)).Source(movingSource),
		reading.OfSlot("belt.band_nearest", "Nearest other band begins", o.Nearest, unit.RPM, "there is no other band").
			How("edge of the nearest band that does not hold the working speed").Source(movingSource),
		reading.OfSlot("belt.band_worst", "Nearest coincidence", o.Worst, unit.RPM, "there is no band").
			How("crank speed where a span meets, or at an end of the range comes nearest to, an exciting frequency; "+o.causeText(o.Worst, o.WorstOf)).Source(movingSource),
	)
}

func (Resonance) causeText(s param.Slot, c Cause) string {
	if !s.Known {
		return "none is found"
	}
	return c.String()
}
