package noise

import (
	"backspan/model/reading"
	"backspan/model/unit"
)

const hearing = "Hearing over the day"

// Stalled is why a stalled blade has no noise here.
const Stalled = "the blade stands stalled: its noise follows no formula used here and is louder than theirs; lower Nominal pitch or Pitch trim, or raise the chords or Blades"

// StalledChecks are those of a stalled blade, which is not rated.
func StalledChecks() []reading.Check {
	return []reading.Check{
		reading.Unrated("noise.daily_exposure", hearing, Stalled).
			Advice("wear a hearing protector and measure the noise at the ear"),
	}
}

// Checks holds the noise against guide values: none of them fails a machine,
// and none of them shows that it meets a rule.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	const slower = "let the propeller turn slower: reduce more, with Diameter, Nominal pitch or Pitch trim, or Blades raised to take the power"
	return append(cs,
		reading.AtMost("noise.tip_mach_guide", "Tip Mach number for quiet flying", r.TipMach, r.spec.TipMachGuide, marginAsked, unit.One).Warn().
			Source(ultralights).Advice(slower),
		reading.AtMost("noise.daily_exposure", hearing, r.Daily, r.listener.Criterion, exchange/max(r.listener.Criterion, 1), unit.Decibel).Warn().
			Source("Level allowed for 8 h a day, by default of NIOSH 98-126 and directive 2003/10/EC; local rules decide").
			Advice("wear a hearing protector and give its Hearing protector attenuation, lower Engine running in a day, or "+slower),
		reading.Unrated("noise.level_at_150m", "Noise rule of the place", "limits and ways to measure differ from country to country and site to site: "+
			"have the machine measured as the local rule says").
			Advice("look the rule up before flying near people and animals"),
	)
}
