package toothedbelt

import (
	"fmt"

	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

// leastInMesh is the number of teeth in mesh below which the rating falls.
const leastInMesh = 6

// guideSpeed is the crank speed beyond which guidance on least teeth is read
// further than it was written for, rad/s.
const guideSpeed = 5000 * math.Pi / 30

// Checks holds the result against its limits. marginAsked is the share of a
// limit below which a margin counts as thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	cs = append(cs,
		reading.AtLeast("toothedbelt.teeth_in_mesh", "Teeth in mesh, smaller pulley", float64(r.TeethInMesh), leastInMesh, 0, unit.Count).Warn().
			Source("ISO 5295: the rating falls below six").
			Advice("add Belt teeth, raise Centre distance wanted, or add Crank pulley teeth"),
		r.leastTeethCheck(),
		r.speedCheck(marginAsked),
		reading.AtLeast("toothedbelt.slack_side", "Slack side at mean torque", r.Tensions.SlackSide, r.Tensions.Centrifugal, marginAsked, unit.Newton).
			Source("mechanics: slack side above m v²").
			Advice("raise Standing tension per strand or Service factor"),
		r.peakCheck(marginAsked),
		reading.Unrated("toothedbelt.tooth_jump", "Teeth do not jump at peak torque",
			"no published limit of the torque at which teeth jump is known for these belts; spans that stay taut through the turn are the nearest safeguard"),
		r.ratingCheck(marginAsked),
		reading.AtMost("toothedbelt.temperature", "Belt temperature", r.Temperature, r.TemperatureLimit, marginAsked, unit.Celsius).
			Source("the compound's limit as given").
			Advice("raise Efficiency at rated power if measured better, raise Belt width, or raise Belt temperature limit for a better compound"),
	)
	if r.TensionGiven {
		cs = append(cs, reading.AtLeast("toothedbelt.standing_tension", "Standing tension as set", r.StandingTension, r.RequiredTension, 0, unit.Newton).
			Source(ruleSource+", at the service factor times the rated power").
			Advice("raise Standing tension per strand, or leave it empty"))
	}
	return cs
}

func (r *Result) leastTeethCheck() reading.Check {
	const key, label = "toothedbelt.least_teeth", "Teeth of the smaller pulley"
	if r.Section.Trapezoidal() {
		return reading.Unrated(key, label, "no guidance on least teeth is at hand for trapezoidal sections")
	}
	source := "from memory: JB/T 7512.3-1994"
	if r.SmallestSpeed > guideSpeed {
		source += "; extrapolated, nothing is published beyond 5000 rpm"
	}
	return reading.AtLeast(key, label, float64(r.SmallestTeeth), float64(leastTeeth(r.SmallestSpeed)), 0, unit.Count).Warn().
		Source(source).
		Advice("add Crank pulley teeth, and Driven pulley teeth to keep the ratio")
}

func (r *Result) speedCheck(marginAsked float64) reading.Check {
	const key, label = "toothedbelt.speed", "Belt speed"
	if !r.SpeedMax.Known {
		return reading.Unrated(key, label, "no limit is published for these sections and none is given; fill in Belt speed limit")
	}
	return reading.AtMost(key, label, r.Speed, r.SpeedMax.Value, marginAsked, unit.MetrePerSecond).
		Source("the limit as given").Advice("take fewer Crank pulley teeth")
}

// peakCheck asks that neither span falls slack at any moment of a turn, which
// is when a tooth may climb.
func (r *Result) peakCheck(marginAsked float64) reading.Check {
	const key, label = "toothedbelt.slack_side_peak", "Slack side at peak torque"
	if !r.Swing.Known {
		return reading.Unrated(key, label, r.Swing.why())
	}
	if !r.StiffnessGiven {
		return reading.Unrated(key, label, fmt.Sprintf("the belt's stiffness is not given, and a resonance can multiply the peaks; on a rigid belt the least span tension would be %s",
			unit.Newton.Text(r.leastSpan())))
	}
	return reading.AtLeast(key, label, r.leastSpan(), r.Tensions.Centrifugal, marginAsked, unit.Newton).
		Source("mechanics: both spans above m v² through the turn, crank and propeller as two inertias").
		Advice("raise Standing tension per strand, or move the torsional frequency away with Inertia of crank and flywheel or the belt's stiffness")
}

func (r *Result) ratingCheck(marginAsked float64) reading.Check {
	const key, label = "toothedbelt.power_rating", "Power rating covers design power"
	if !r.Rating.Known {
		return reading.Unrated(key, label, r.whyNoRating())
	}
	return reading.AtLeast(key, label, r.Rating.Value, r.DesignPower, marginAsked, unit.Kilowatt).
		Source(r.RatingSource).
		Advice("raise Belt width, add Crank pulley teeth, or choose a coarser Belt section")
}
