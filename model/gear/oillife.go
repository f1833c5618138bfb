package gear

import (
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

// halvingStep is by how much warmer oil lasts half as long, K. Common practice,
// no source: reaction rates double about every ten kelvin.
const halvingStep = 10

// oilLife is how long the oil lasts at a temperature, s.
func (s *Spec) oilLife(temperature float64) float64 {
	return s.OilBaseLife * math.Exp2(-math.Max(0, temperature-s.OilBaseTemperature)/halvingStep)
}

// tiltedDip is how far the dipping gear's middle reaches below the level oil
// with the case tilted fore or aft, m; negative where it stands clear. The oil
// is a block as long as the inside of the case with a flat floor one Tip gap
// below the tips: the level turns about its middle, until the floor runs dry at
// the high end and the rest gathers as a wedge.
func (g *Gear) tiltedDip(tilt float64) float64 {
	length, depth, slope := g.meshDepth(), g.spec.TipGap+g.spec.DipDepth, math.Tan(tilt)
	if slope*length/2 <= depth {
		return g.spec.DipDepth
	}
	wedge := math.Sqrt(2 * depth * length / slope)
	return (wedge-length/2)*slope - g.spec.TipGap
}

func (r *Result) oilReadings(rs []reading.Reading) []reading.Reading {
	const noPower = "no power passes at this point"
	const unbalanced = "the case cannot shed the losses below 300 °C"
	per, why := 0.0, noPower
	if r.Power > 0 {
		per, why = r.spec.OilVolume/(r.Power/1000), ""
	}
	hot := unbalanced
	if r.Sump.Balanced {
		hot = ""
	}
	return append(rs,
		reading.Unless(why, "gear.oil_per_power", "Oil per kilowatt passed", per, unit.CubicCentimetre).Higher().
			How("what is filled in over the power; little oil ages and fouls sooner").Source("common practice, no source"),
		reading.Unless(hot, "gear.oil_life", "Life of the oil", r.spec.oilLife(r.Sump.Temperature), unit.Hour).Higher().
			How("at this duty throughout, halved every ten kelvin above where it lasts as long as cool; the first filling only until the teeth have run in").
			Source("common practice, no source"),
		reading.New("gear.dip_tilted", "Dip with the case tilted", r.TiltedDip, unit.Millimetre).Higher().
			How("at the middle of the face with the Greatest tilt fore and aft; the oil a block with a flat floor as deep as Dip depth says, whatever Oil volume is (estimate)").Source("geometry"),
		r.dipVolumeReading(),
	)
}

func (r *Result) oilLifeChecks(cs []reading.Check, thin float64) []reading.Check {
	const key, label = "gear.oil_life", "Oil lasts to its change"
	life := reading.Unrated(key, label, "the oil finds no steady temperature")
	if r.Sump.Balanced {
		life = reading.AtLeast(key, label, r.spec.oilLife(r.Sump.Temperature), r.spec.ChangeInterval, thin, unit.Hour).Warn().
			Source("common practice, no source: oil ages twice as fast every ten kelvin").
			Advice("Shorten Oil and seal interval, cool the case (Fin factor), or choose an oil with a longer Oil life, cool. Change the first filling after a few hours of running in.")
	}
	return append(cs, life, r.dipVolumeCheck(),
		reading.AtLeast("gear.dip_tilted", "Dips with the case tilted", r.TiltedDip, 0, 0, unit.Millimetre).Warn().
			Source("geometry; the case's floor taken as flat").
			Advice("Raise Dip depth, or lower Gap beside the gears; Oil that the dip asks for says how much to fill in."))
}
