package gear

import (
	"math"

	"backspan/model/reading"
	"backspan/model/unit"
)

// dipVolume is the oil that stands in the case at rest when the dipping gear
// reaches into it as deep as asked, m³: the inside of the case below the level,
// as wide as the gap beside the gears leaves it, less what of that gear stands
// in it. The other gear is neglected, and so is what clings to walls and gears
// or stands in pockets of the case. The dipping gear lies at the bottom.
func (g *Gear) dipVolume() float64 {
	s, m := &g.spec, &g.geometry
	low, high := &m.Pinion, &m.Driven
	if s.DippingGear == DipWheel {
		low, high = high, low
	}
	if !(s.DipDepth > 0) {
		return 0
	}
	below := filled(low.TipDiameter/2+s.TipGap, high.TipDiameter/2+s.TipGap, m.CentreDistance, s.TipGap+s.DipDepth)
	return math.Max(0, below*g.meshDepth()-segment(low.TipDiameter/2, s.DipDepth)*s.FaceWidth)
}

// segment is the area of a circle below a level above its lowest point, m².
func segment(radius, level float64) float64 {
	level = math.Min(level, 2*radius)
	return radius*radius*math.Acos(1-level/radius) - (radius-level)*math.Sqrt(level*(2*radius-level))
}

// filled is the area below a level above the lowest point of the hull of two
// circles, the upper one a distance above the lower, m²: up to where the
// straight sides begin the lower circle's, then the sides'. Above where they
// end, or with one circle inside the other, the lower circle's alone counts.
func filled(low, high, distance, level float64) float64 {
	if math.Abs(high-low) >= distance {
		return segment(low, level)
	}
	sin := (high - low) / distance
	cos := math.Sqrt(1 - sin*sin)
	from, to := low*(1-sin), low+distance-high*sin
	if level <= from {
		return segment(low, level)
	}
	rise := math.Min(level, to) - from
	return segment(low, from) + rise*(2*low*cos+rise*sin/cos)
}

// sameOil is by what factor the oil filled in may differ from what the dip asks
// for; an estimate of what clings and of the room that a real case has besides.
const sameOil = 2

func (r *Result) dipVolumeReading() reading.Reading {
	return reading.New("gear.dip_volume", "Oil that the dip asks for", r.DipVolume, unit.CubicCentimetre).
		How("inside of the case below the level at rest, less what of the dipping gear stands in it; what clings to walls and gears and what pockets of the case hold is left out").
		Source("geometry; the case's outline as wrapped around both gears")
}

// dipVolumeCheck finds oil and dip that cannot belong to one case.
func (r *Result) dipVolumeCheck() reading.Check {
	const key, label = "gear.oil_volume", "Oil volume fits the dip"
	if !(r.DipVolume > 0) {
		return reading.Unrated(key, label, "Dip depth is 0: no gear dips")
	}
	source := "geometry; a factor of two either way for what clings and for pockets of the case (estimate)"
	if r.spec.OilVolume > r.DipVolume {
		return reading.AtMost(key, label, r.spec.OilVolume, sameOil*r.DipVolume, 0, unit.CubicCentimetre).Warn().Source(source).
			Advice("so much oil stands higher than Dip depth says and churns more: lower Oil volume, or raise Dip depth or Gap around the gears")
	}
	return reading.AtLeast(key, label, r.spec.OilVolume, r.DipVolume/sameOil, 0, unit.CubicCentimetre).Warn().Source(source).
		Advice("so little oil does not reach up to Dip depth: raise Oil volume, or lower Dip depth, Gap around the gears or Gap beside the gears")
}
