package gear

import (
	"cmp"
	"fmt"
	"math"

	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

func (r *Result) strengthChecks(cs []reading.Check, thin float64) []reading.Check {
	return append(r.safetyChecks(cs, thin), r.peakRootCheck(thin), r.contactCheck(), r.coverCheck(), r.resonanceCheck(), r.torsionalCheck(), r.lineLoadCheck(), r.agreementCheck())
}

func (r *Result) safetyChecks(cs []reading.Check, thin float64) []reading.Check {
	const pitting, bending = "Safety against pitting", "Safety against tooth breakage"
	s := &r.Strength
	if s.Why != "" {
		return append(cs,
			reading.Unrated("gear.pitting", pitting, s.Why),
			reading.Unrated("gear.bending", bending, s.Why),
		)
	}
	const asked = "the safety asked; ISO 6336 from memory"
	return append(cs,
		reading.AtLeast("gear.pitting", pitting, s.PittingSafety(), r.spec.PittingAsked, thin, unit.One).Source(asked).
			Advice("Raise Face width, Module or Pinion teeth, or choose a finer Accuracy class, Crowned teeth or a better Pinion material and Wheel material."),
		reading.AtLeast("gear.bending", bending, s.BendingSafety(), r.spec.BendingAsked, thin, unit.One).Source(asked).
			Advice("Raise Module or Face width, or choose a finer Accuracy class, Crowned teeth or a better Material quality."),
	)
}

// peakRootCheck warns only: how long the engine stays at the peak is up to the
// pilot.
func (r *Result) peakRootCheck(thin float64) reading.Check {
	const key, label = "gear.run_up_bending", "Tooth root at the run-up peak"
	if !r.Strength.PeakRoot.Known {
		return reading.Unrated(key, label, r.noPeakRoot())
	}
	return reading.AtLeast(key, label, r.Strength.PeakRoot.Value, r.spec.BendingAsked, thin, unit.One).Warn().
		Source("Breakage safety asked; ISO 6336 from memory, under the greatest torque of the run-up as if held for Life asked of the teeth").
		Advice(r.peakAdvice() + "raise Module or Face width.")
}

// peakAdvice begins what to do about the greatest torque: below the working
// speed it can be kept out of use.
func (r *Result) peakAdvice() string {
	const below = 0.95 // of the working speed
	working := 2 * math.Pi * r.MeshFrequency / float64(max(r.Geometry.Pinion.Teeth, 1))
	at := "The torque in the mesh peaks at " + unit.RPM.Text(r.Pulsation.PeakSpeed)
	if r.Pulsation.PeakSpeed >= below*working {
		return at + ", about the working point: "
	}
	return at + ": pass through quickly; a softer Coupling stiffness or a clutch that takes hold later moves the peak out of use. Or "
}

// noPeakRoot is why the roots are not rated at the peak.
func (r *Result) noPeakRoot() string { return cmp.Or(r.Strength.Why, r.Pulsation.Why, noTorque) }

func (r *Result) resonanceCheck() reading.Check {
	const key, label = "gear.mesh_resonance", "Clear of mesh resonance"
	if r.Strength.Why != "" {
		return reading.Unrated(key, label, r.Strength.Why)
	}
	k := &r.Strength.Load
	return reading.Condition(key, label, k.Resonance < k.resonant || k.Resonance > resonantTo).Warn().
		Source("from memory: ISO 6336-1, 0.85 to 1.15 of resonance, from less where the load is low; both gears as blanks alone").
		Advice("Change Pinion teeth or Module.")
}

// torsionalCheck asks the same of the whole train: what hangs on the pinion and
// on the wheel pulls the teeth's frequency down to that of the train.
func (r *Result) torsionalCheck() reading.Check {
	const key, label = "gear.mesh_torsional", "Mesh clear of torsional resonance"
	n := r.overTorsional()
	if !n.Known {
		return reading.Unrated(key, label, r.noTorsional())
	}
	return reading.Condition(key, label, n.Value < resonantFrom || n.Value > resonantTo).Warn().
		Source(fmt.Sprintf("mesh frequency %s of the Second torsional frequency, to keep out of 0.85 to 1.15 as in ISO 6336-1, from memory: teeth that meet at that frequency shake pinion against wheel; "+
			"shafts, bearings and case give too, so the true one is lower", unit.One.Text(n.Value))).
		Advice("Change Pinion teeth, Face width or Coupling inertia, drive half, or keep the engine from running long at full throttle.")
}

// Resonance of the mesh reaches from a share of the natural frequency to
// another. Source: ISO 6336-1, from memory.
const (
	resonantFrom = 0.85
	resonantTo   = 1.15
)

// overTorsional is the mesh frequency over the second torsional one.
func (r *Result) overTorsional() param.Slot {
	second := r.Pulsation.Second
	if !second.Known || !(r.MeshFrequency > 0) {
		return param.Slot{}
	}
	return param.Finite(r.MeshFrequency / second.Value)
}

// noTorsional is why that is not known.
func (r *Result) noTorsional() string { return cmp.Or(r.Pulsation.Why, noTorque) }

func (r *Result) lineLoadCheck() reading.Check {
	const key, label = "gear.line_load", "Flanks pressed enough together"
	if r.Strength.Why != "" {
		return reading.Unrated(key, label, r.Strength.Why)
	}
	return reading.AtLeast(key, label, r.Strength.Load.lineLoad*1000, 50e3, 0, unit.NewtonPerMillimetre).Warn().
		Source("from memory: ISO 6336-1, below 50 N/mm flanks may part and the dynamic factor grows without meaning").
		Advice("lower Face width or raise Application factor; at part load read the safeties with care")
}

func (r *Result) agreementCheck() reading.Check {
	const key, label = "gear.ratings_agree", "Both ratings blame the same tooth"
	if why := cmp.Or(r.Strength.Why, r.Strength.Cross.Why); why != "" {
		return reading.Unrated(key, label, why)
	}
	iso, agma, comparable := r.Strength.blamed(r.spec.PittingAsked, r.spec.BendingAsked)
	if !comparable {
		return reading.Unrated(key, label, "ISO 6336 has "+iso.String()+" give out first, and AGMA 2001 rates no roots here: "+r.Strength.Cross.BendingWhy)
	}
	return reading.Condition(key, label, iso == agma).Warn().
		Source(r.blame() + "; both from memory").
		Advice("Look at the safeties of Pinion and Wheel: the ratings differ on which is weaker; keep a margin on both (Face width, Module).")
}
