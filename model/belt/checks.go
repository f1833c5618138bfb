package belt

import (
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

// Wraps of the smaller pulley, rad. Below the first a belt is worth a second
// look only, since the standing tension already allows for the wrap; below the
// second no table of arc factors goes far.
const (
	usualWrap = 2 * math.Pi / 3
	leastWrap = math.Pi / 2
)

func (r *Result) wrapCheck() reading.Check {
	wrap, limit := r.Geometry.SmallestWrap(), leastWrap
	if wrap >= leastWrap {
		limit = usualWrap
	}
	check := reading.AtLeast("belt.wrap", "Wrap on the smaller pulley", wrap, limit, 0, unit.Degree).
		Source("common practice, no source; arc tables end near 90°").
		Advice("raise Centre distance or Crank pulley, effective diameter")
	if wrap >= leastWrap {
		return check.Warn()
	}
	return check
}

// Checks holds the result against its limits. marginAsked is the share of a
// limit below which a margin counts as thin.
func (r Result) Checks(cs []reading.Check, marginAsked float64) []reading.Check {
	row := r.Profile.section()
	cs = append(cs,
		reading.AtLeast("belt.crank_diameter", "Crank pulley, effective diameter", r.CrankDiameter, row.smallestPulley, 0, unit.Millimetre).
			Source("from memory: ISO 9982 table 2, least diameter of the profile").
			Advice("raise Crank pulley, effective diameter, or choose a finer Profile"),
		reading.AtLeast("belt.driven_diameter", "Driven pulley, effective diameter", r.DrivenDiameter, row.smallestPulley, 0, unit.Millimetre).
			Source("from memory: ISO 9982 table 2, least diameter of the profile").
			Advice("raise Driven pulley, effective diameter, or choose a finer Profile"),
		r.wrapCheck(),
		reading.AtMost("belt.speed", "Belt speed", r.Speed, row.fastest, marginAsked, unit.MetrePerSecond).
			Source("from memory: handbook limit of the profile").
			Advice("lower Crank pulley, effective diameter, or choose a finer Profile"),
		r.lengthCheck(row),
		reading.AtLeast("belt.slack_side", "Slack side at mean torque", r.Tensions.SlackSide, r.Tensions.Centrifugal, marginAsked, unit.Newton).
			Source("mechanics: slack side above m v²").
			Advice("raise Standing tension per strand or Service factor, or lower Belt mass per rib"),
		r.peakCheck(marginAsked),
		r.skidHeatCheck(),
		r.sweepCheck(marginAsked),
		r.stiffnessCheck(),
		r.dryCheck(marginAsked),
		r.wornCheck(marginAsked),
		r.wetCheck(marginAsked),
		r.peakSkidCheck(),
		r.tensionBandCheck(row),
		reading.AtMost("belt.temperature", "Belt temperature", r.Temperature, r.TemperatureLimit, marginAsked, unit.Celsius).
			Source("the compound's limit as given").
			Advice(r.heatAdvice()),
		r.ratingCheck(marginAsked),
		r.intervalCheck(),
		r.bandCheck("belt.resonance", "No strong span resonance here", r.Resonance.Inside),
		r.bandCheck("belt.resonance_range", "No strong resonance from 3/4 speed", r.Resonance.Near),
		r.travelCheck(),
	)
	if r.TensionGiven {
		cs = append(cs, reading.AtLeast("belt.standing_tension", "Standing tension as set", r.StandingTension, r.RequiredTension, 0, unit.Newton).
			Source("mechanics: locked centre, for what Load factor allows").
			Advice(r.slackAdvice()+"raise Standing tension per strand, or leave it empty"))
	}
	return cs
}

// lengthCheck warns outside the profile's usual lengths, against the end that
// is nearer.
func (r *Result) lengthCheck(row section) reading.Check {
	const key, label = "belt.length", "Belt length, effective"
	check := reading.AtLeast(key, label, r.EffectiveLength, row.shortest, 0, unit.Millimetre).
		Advice("raise Centre distance, or choose a finer Profile")
	if r.EffectiveLength > (row.shortest+row.longest)/2 {
		check = reading.AtMost(key, label, r.EffectiveLength, row.longest, 0, unit.Millimetre).
			Advice("lower Centre distance, or choose a coarser Profile")
	}
	return check.Warn().Source("from memory: ISO 9982, usual lengths of the profile")
}

const noPull = "the belt pulls nothing at this point"

func (r *Result) dryCheck(marginAsked float64) reading.Check {
	const key, label = "belt.slip_reserve_dry", "No skid when dry, mean torque"
	if !r.Reserve.Dry.Known {
		return reading.Unrated(key, label, noPull)
	}
	return reading.AtLeast(key, label, r.Reserve.Dry.Value, 1, marginAsked, unit.One).
		Source("Euler-Eytelwein with the dry friction given").
		Advice("raise Standing tension per strand, Service factor or Crank pulley, effective diameter; a skidding belt carries less than is reckoned here")
}

func (r *Result) wetCheck(marginAsked float64) reading.Check {
	const key, label = "belt.slip_reserve_wet", "No skid when wet, mean torque"
	if !r.Reserve.Wet.Known {
		return reading.Unrated(key, label, noPull)
	}
	return reading.AtLeast(key, label, r.Reserve.Wet.Value, 1, marginAsked, unit.One).Warn().
		Source("Euler-Eytelwein with the wet friction given").
		Advice("raise Service factor or Standing tension per strand, or Crank pulley, effective diameter")
}

// tensionBandCheck warns of a rib tension above what is usual. Below the band
// a belt is merely wider than it need be.
func (r *Result) tensionBandCheck(row section) reading.Check {
	const key, label = "belt.tension_per_rib", "Standing tension per rib is usual"
	if row.usualTension == 0 {
		return reading.Unrated(key, label, "no usual tension per rib is known for this profile")
	}
	return reading.AtMost(key, label, r.perRib(r.StandingTension), row.usualTension, 0, unit.Newton).Warn().
		Source("from memory: 60 to 90 N per PK rib in accessory drives").
		Advice("add Ribs, or raise Crank pulley, effective diameter")
}
