package propeller

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	// bestMerit is more than any open propeller has been measured to reach.
	bestMerit = 0.85

	practice = "common practice, no source"

	slower  = "reduce more: a smaller crank pulley or pinion, or a larger driven pulley or wheel; or lower Diameter"
	tooFast = "shocks on the tips add drag and noise that this model does not know: thrust and power here stand for nothing; " + slower
)

// Checks holds the propeller against its limits. marginAsked is the share of a
// limit below which a check is thin.
func (r Report) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	cs = append(cs, r.tipMach(marginAsked), r.stallMargin(), r.reynolds(), r.figureOfMerit(), r.model())
	if r.Single {
		cs = append(cs, reading.Unrated("propeller.single_blade", "Thrust of a single blade", Single).Source("mechanics"))
	}
	if r.Measured {
		cs = append(cs, reading.Condition("propeller.polar", "Section polar goes past stall", r.PastStall).Warn().
			Source("flow is taken as separated past the last angle given: Viterna & Corrigan 1981").
			Advice("add rows of Section polar past the greatest lift at every Reynolds number: stall margin and standing thrust hang on it"))
	}
	return cs
}

// tipMach is a matter of noise up to greatestMach and of the model beyond.
func (r *Report) tipMach(marginAsked float64) reading.Check {
	const key = "propeller.tip_mach"
	mach, label := r.Static.TipMach, "Tip Mach number, standing"
	if r.Trim.TipMach > mach {
		mach, label = r.Trim.TipMach, "Tip Mach number, at trim speed"
	}
	switch {
	case r.Static.Status == Standing:
		return reading.Unrated(key, label, r.lacking())
	case mach > greatestMach:
		return reading.AtMost(key, label, mach, greatestMach, marginAsked, unit.One).
			Source("end of Prandtl and Glauert's rule and of the section model").
			Advice(tooFast)
	}
	return reading.AtMost(key, label, mach, r.TipMachLimit, marginAsked, unit.One).Warn().
		Source("Tip Mach number allowed, for noise; " + practice).Advice(slower)
}

func (r *Report) stallMargin() reading.Check {
	const key, label = "propeller.stall_margin", "Stall margin"
	if r.Static.Status != Valid {
		return reading.Unrated(key, label, r.lacking())
	}
	advice := "lower Nominal pitch or Pitch trim, or raise the chords or Blades"
	if r.Static.StallMargin < 0 {
		advice = "the working blade is stalled: it takes much power for little thrust and is loud; " + advice
	}
	return reading.AtLeast(key, label, r.Static.StallMargin, r.StallMarginAsked, 0, unit.Degree).Warn().
		Source("Stall margin asked; " + practice).Advice(advice)
}

// reynolds holds the working blade against the least Reynolds number that the
// section's figures were given or compared at.
func (r *Report) reynolds() reading.Check {
	const key, label = "propeller.reynolds", "Reynolds number of the blade"
	if r.Static.Status != Valid {
		return reading.Unrated(key, label, r.lacking())
	}
	return reading.AtLeast(key, label, r.Static.Reynolds, r.LeastReynolds, 0, unit.One).Warn().
		Source("lowest that the section's figures were given at, or compared with measurements at: Deters, Ananda & Selig 2014").
		Advice("sections this small lose lift and gain drag in ways not known here: raise the chords, with fewer Blades, or give a polar at this Reynolds number")
}

func (r *Report) figureOfMerit() reading.Check {
	const key, label = "propeller.figure_of_merit", "Below the model's own ceiling"
	if r.Static.Status != Valid {
		return reading.Unrated(key, label, r.lacking())
	}
	return reading.AtMost(key, label, r.Static.FigureOfMerit, bestMerit, 0, unit.One).
		Source("no open propeller is known to do better; the model itself is optimistic, real ones reach 0.60 to 0.70: common practice, from memory").
		Advice("the section figures are too good to be true here: look at Least drag coefficient, or at chords outside the usual")
}

// model is the sanity of the computation itself.
func (r *Report) model() reading.Check {
	const key, label = "propeller.model", "Inside the propeller model"
	if r.Static.Status == Standing {
		return reading.Unrated(key, label, r.lacking())
	}
	trimGood := r.Trim.Status == Valid || r.Trim.Status == Standing
	advice := "the blade does not push air backwards all along: raise Nominal pitch, Pitch trim or the angles of Blade stations"
	if r.Static.Status == TooFast || r.Trim.Status == TooFast {
		advice = tooFast
	}
	return reading.Condition(key, label, r.Static.Status == Valid && trimGood && r.Static.Thrust <= r.IdealThrust).
		Source(momentum).Advice(advice)
}
