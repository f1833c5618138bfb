package belt

import (
	"math"

	"backspan/model/param"
	"backspan/model/part"
)

// PulsationResult is what the engine's uneven torque does to the stage.
type PulsationResult struct {
	Known         bool
	Torsional     param.Slot // crank against propeller, both spans taut, Hz
	TorsionalOpen param.Slot // the same with the slack span off its pulley, Hz
	Amplification float64    // belt torque over engine torque, first harmonic present
	Surge         Surge      // at the examined duty
	Moment        float64    // at the crank bearing, at the peak shaft load, N·m
	Sweep         Sweep      // over the engine's speeds; zero when it gives no range
}

// Torsional is the first torsional frequency of crank against propeller with
// both spans taut, Hz; empty while the inertias are not known.
func (r Result) Torsional() param.Slot { return r.Pulsation.Torsional }

// pulse fills in pulsation and resonance.
func (b Belt) pulse(r *Result, at part.Duty, train part.Train, w twin) {
	out := &r.Pulsation
	if train.CrankInertia > 0 && train.PropellerInertia > 0 {
		out.Torsional = param.Known(w.natural(2) / (2 * math.Pi))
		out.TorsionalOpen = param.Known(w.natural(1) / (2 * math.Pi))
	}
	if train.Crank == nil || !(at.CrankSpeed > 0) {
		return
	}
	out.Known = true
	p := train.Crank.Pulsation(at.Power, at.CrankSpeed)
	out.Surge = b.surge(w, &p, at.CrankSpeed, r.Pull, b.standing, r.Tensions.Centrifugal)
	out.Moment = out.Surge.Load.Size() * b.Overhang()
	if p.Count > 0 {
		g := w.transfer(p.Harmonics[0].Order * at.CrankSpeed / w.natural(2))
		out.Amplification = math.Hypot(real(g), imag(g))
	}
	if line, ok := part.LoadLineOf(at, train.Crank); ok {
		out.Sweep = b.sweep(&line, at, w)
		r.Resonance = b.resonance(&line, &p, at)
	}
}

// Resonance is where the spans meet what shakes them, along the load line.
type Resonance struct {
	Known    bool
	Bands    []Band
	Working  float64    // crank speed, rad/s
	Detuning param.Slot // share by which the nearest exciter is off at the working speed
	Cause    Cause      // of that
	Inside   int        // strong bands that hold the working speed
	Near     int        // strong bands that touch the speeds from 3/4 of it up to it
	Nearest  param.Slot // edge of the nearest band that does not hold the working speed, rad/s
	Worst    param.Slot // coincidence nearest to the working speed, rad/s
	WorstOf  Cause
}

func (b Belt) resonance(line *part.LoadLine, p *part.Pulsation, at part.Duty) Resonance {
	r := Resonance{Known: true, Bands: b.bands(line, p), Working: at.CrankSpeed}
	if off, cause, ok := b.detuning(p, at); ok {
		r.Detuning, r.Cause = param.Known(off), cause
	}
	away := func(s param.Slot) float64 {
		if !s.Known {
			return math.MaxFloat64
		}
		return math.Abs(s.Value - r.Working)
	}
	for _, band := range r.Bands {
		if band.Cause.strong() && band.holds(0.75*r.Working, r.Working) {
			r.Near++
		}
		if band.holds(r.Working, r.Working) {
			if band.Cause.strong() {
				r.Inside++
			}
		} else {
			for _, edge := range [2]float64{band.From, band.To} {
				if math.Abs(edge-r.Working) < away(r.Nearest) {
					r.Nearest = param.Known(edge)
				}
			}
		}
		if math.Abs(band.At-r.Working) < away(r.Worst) {
			r.Worst, r.WorstOf = param.Known(band.At), band.Cause
		}
	}
	return r
}
