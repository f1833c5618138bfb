package gear

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

func (r Result) strengthChecks(thin float64) []reading.Check {
	return append(r.safetyChecks(thin), r.contactCheck(), r.agreementCheck())
}

func (r Result) safetyChecks(thin float64) []reading.Check {
	const pitting, bending = "Safety against pitting", "Safety against tooth breakage"
	s := &r.Strength
	if s.Why != "" {
		return []reading.Check{
			reading.Unrated("gear.pitting", pitting, s.Why),
			reading.Unrated("gear.bending", bending, s.Why),
		}
	}
	const asked = "the safety asked; ISO 6336 from memory"
	return []reading.Check{
		reading.AtLeast("gear.pitting", pitting, s.PittingSafety(), r.spec.PittingAsked, thin, unit.One).Source(asked).
			Advice("Raise Face width, Module or Pinion teeth, choose a finer Accuracy class or a harder material, or soften the coupling."),
		reading.AtLeast("gear.bending", bending, s.BendingSafety(), r.spec.BendingAsked, thin, unit.One).Source(asked).
			Advice("Raise Module, Face width or the profile shift of the weaker gear, or choose a better Material quality."),
	}
}

func (r Result) contactCheck() reading.Check {
	const key, label = "gear.contact_kept", "Teeth stay in contact"
	if why := r.Pulsation.Why; why != "" {
		return reading.Unrated(key, label, why)
	}
	return reading.AtMost(key, label, r.Pulsation.Swing, r.Pulsation.Mean, 0, unit.NewtonMetre).Warn().
		Source("mechanics: past the mean torque the teeth part and rattle").
		Advice("Fit a softer coupling (Coupling stiffness) or raise Inertia of crank and flywheel.")
}

func (r Result) agreementCheck() reading.Check {
	const key, label = "gear.ratings_agree", "Both ratings blame the same tooth"
	if why := firstOf(r.Strength.Why, r.Strength.Cross.Why); why != "" {
		return reading.Unrated(key, label, why)
	}
	return reading.Condition(key, label, r.Strength.agree(r.spec.PittingAsked, r.spec.BendingAsked)).Warn().
		Source("ISO 6336 against AGMA 2001, both from memory").
		Advice("Look at the safeties of Pinion and Wheel: the ratings differ on which is weaker; keep a margin on both (Face width, Module).")
}
