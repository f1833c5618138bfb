package belt

import (
	"fmt"

	"backspan/model/reading"
	"backspan/model/unit"
)

// peakAdvice names what gives the slack side more to lose, or takes less from it.
func (r *Result) peakAdvice() string {
	const besides = ", at the price of higher loads on bearings and crank; or move the torsional frequency away with Inertia of crank and flywheel or Belt stiffness EA per rib"
	switch {
	case r.TensionGiven:
		return "raise Standing tension per strand, or leave it empty and set Load factor to pulsation" + besides
	case r.LoadFactor == ByPulsation:
		return "raise Reserve on the pulsation demand" + besides
	}
	return "set Load factor to pulsation, or raise Service factor" + besides
}

// peakCheck asks whether the tension set keeps the slack side on its pulley
// through the torque peaks of the examined point. It warns: short of it a dry
// belt skids before the slack side lifts.
func (r *Result) peakCheck(marginAsked float64) reading.Check {
	const key, label = "belt.slack_side_peak", "Slack side at peak torque"
	if !r.Pulsation.Known {
		return reading.Unrated(key, label, r.noPulsation())
	}
	return reading.AtLeast(key, label, r.StandingTension, r.Pulsation.Surge.Need, marginAsked, unit.Newton).Warn().
		Source("mechanics: standing tension that keeps the slack side above m v² over the cycle, both spans taut; drives run below it, skidding at every firing stroke, warmer and worn sooner: common practice, no source").
		Advice(r.peakAdvice())
}

// sweepCheck asks the same from idle to the highest speed. It warns, since
// resonances below the working speed are passed through.
func (r *Result) sweepCheck(marginAsked float64) reading.Check {
	const key, label = "belt.slack_side_sweep", "Slack side at peaks, any speed"
	s := r.Pulsation.Sweep
	if !(s.To > 0) {
		return reading.Unrated(key, label, r.noPulsation())
	}
	return reading.AtLeast(key, label, r.StandingTension, s.Need, marginAsked, unit.Newton).Warn().
		Source("mechanics: the same from idle to the highest speed").
		Advice(fmt.Sprintf("the worst is at %s: ", unit.RPM.Text(s.NeedSpeed)) + r.peakAdvice())
}

const skidHeat = "the belt skids through part of every cycle; that heat and wear are not counted in Belt temperature, efficiency and life"

// skidHeatCheck says what the belt's temperature leaves out.
func (r *Result) skidHeatCheck() reading.Check {
	const key, label = "belt.skid_heat", "Heat of skidding at the peaks"
	if !r.Pulsation.Known {
		return reading.Unrated(key, label, r.noPulsation())
	}
	if r.Pulsation.Surge.Skids() {
		return reading.Unrated(key, label, skidHeat)
	}
	return reading.Condition(key, label, true).Source("mechanics: the belt holds through the cycle").Advice(r.peakAdvice())
}

// slackStiffness is the slack side's tension over m v² that keeps its span
// from fluttering.
const slackStiffness = 1.3

func (r *Result) stiffnessCheck() reading.Check {
	const key, label = "belt.slack_stiffness", "Slack span keeps its stiffness"
	if !(r.Tensions.Centrifugal > 0) {
		return reading.Unrated(key, label, noPassing)
	}
	return reading.AtLeast(key, label, r.Tensions.SlackSide/r.Tensions.Centrifugal, slackStiffness, 0, unit.One).Warn().
		Source("from memory: slack side above about 1.3 m v²").
		Advice("raise Standing tension per strand or Service factor, or lower Belt mass per rib")
}

func (r *Result) wornCheck(marginAsked float64) reading.Check {
	const key, label = "belt.slip_reserve_worn", "No skid when worn, mean torque"
	if !r.Reserve.Worn.Known {
		return reading.Unrated(key, label, noPull)
	}
	return reading.AtLeast(key, label, r.Reserve.Worn.Value, 1, marginAsked, unit.One).
		Source("Euler-Eytelwein with the dry friction given; wear after Yu, Childs, Dalgarno & Day 1998").
		Advice("raise Standing tension per strand, Service factor or Crank pulley, effective diameter")
}

// peakSkidCheck warns only: a peak is over before the belt has slipped far.
func (r *Result) peakSkidCheck() reading.Check {
	const key, label = "belt.slip_reserve_peak", "No skid when dry, peak torque"
	if !r.Reserve.Peak.Known {
		return reading.Unrated(key, label, r.noPulsation())
	}
	return reading.AtLeast(key, label, r.Reserve.Peak.Value, 1, 0, unit.One).Warn().
		Source("Euler-Eytelwein with the dry friction given").
		Advice(r.peakAdvice())
}

func (r *Result) ratingCheck(marginAsked float64) reading.Check {
	const key, label = "belt.power_rating", "Power rating"
	if r.RatedWhy != "" {
		return reading.Unrated(key, label, r.RatedWhy)
	}
	return reading.AtMost(key, label, r.WantedPower, r.RatedPower, marginAsked, unit.Kilowatt).
		Source(r.RatingSource).
		Advice("add Ribs, or raise Crank pulley, effective diameter")
}

// intervalCheck holds the change interval against the life that may be counted on.
func (r *Result) intervalCheck() reading.Check {
	const key, label = "belt.replacement", "Belt changed within its life"
	l := r.Life
	switch {
	case l.Why == "" && (!l.Wear.Known || l.Dependable < l.Wear.Value):
		return reading.AtMost(key, label, l.Interval, l.Dependable, 0, unit.Hour).Warn().
			Source("durability law over its uncertainty; for comparison only").
			Advice(fmt.Sprintf("lower Belt change interval to %s, add Ribs, or raise Crank pulley, effective diameter", unit.Hour.Text(l.Dependable)))
	case l.Wear.Known:
		return reading.AtMost(key, label, l.Interval, l.Wear.Value, 0, unit.Hour).
			Source("wear life as given").Advice("lower Belt change interval")
	}
	return reading.Unrated(key, label, r.noLife())
}

func (r *Result) bandCheck(key, label string, bands int) reading.Check {
	if !r.Resonance.Known {
		return reading.Unrated(key, label, r.noPulsation())
	}
	o := r.Resonance
	advice := "move the spans' frequencies with Centre distance, Standing tension per strand or Belt mass per rib"
	if o.Worst.Known {
		advice = fmt.Sprintf("nearest is %s at %s: ", o.WorstOf, unit.RPM.Text(o.Worst.Value)) + advice
	}
	return reading.AtMost(key, label, float64(bands), 0, 0, unit.Count).Warn().
		Source("common practice, no source: 15 % of detuning; moving string from memory: Sack 1954, Mote").Advice(advice)
}

func (r *Result) travelCheck() reading.Check {
	const key, label = "belt.eccentric_travel", "Eccentric takes up the belt"
	if !(r.EccentricOffset > 0) {
		return reading.Unrated(key, label, "the adjuster is no eccentric, so its travel is not known")
	}
	return reading.AtLeast(key, label, r.Adjustment.Travel, r.Adjustment.TakeUpNeeded, 0, unit.Millimetre).Warn().
		Source("geometry; belt tolerance and permanent stretch as given").
		Advice("raise Offset of the eccentric, or lower Belt length tolerance, whole band by choosing belts")
}

// slackAdvice says what a belt set too slack means.
func (r *Result) slackAdvice() string {
	if r.StandingTension >= r.RequiredTension || !(r.Speed > 0) {
		return ""
	}
	text := ""
	if d := r.Reserve.Design; d.Known {
		text = fmt.Sprintf("set so, it carries %s at the design tension ratio", unit.Kilowatt.Text(d.Value*r.Pull*r.Speed))
	}
	if d := r.Reserve.Worn; d.Known {
		text += fmt.Sprintf(" and skids worn at %s: ", unit.Kilowatt.Text(d.Value*r.Pull*r.Speed))
	}
	return text
}

// heatAdvice says what the temperature costs.
func (r *Result) heatAdvice() string {
	cure := "raise Efficiency at rated power if measured better, add Ribs, or raise Belt temperature limit for a better compound"
	if r.Life.Heat > 1 {
		return fmt.Sprintf("at %s the belt tires %s times as fast as when cool: ", unit.Celsius.Text(r.Temperature), unit.One.Number(r.Life.Heat)) + cure
	}
	return cure
}
