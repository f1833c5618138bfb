package gearshaft

import (
	"backspan/model/bearing"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	lifeSource   = "ISO 281:2007 from memory; " + bearing.RatingOrigin
	staticSource = "ISO 76 from memory; " + bearing.RatingOrigin
	statics      = "statics"
	noLoad       = "nothing loads the bearing, or nothing turns"
	noStress     = "nothing loads the shaft"
	shaftSource  = "Shigley's Mechanical Engineering Design, chapter 7, from memory"
	onCrank      = "the pinion sits on the engine's crank"
	beamSource   = "beam theory on stepped shafts, without the give of bearings and case"
	seatSource   = "Shigley's Mechanical Engineering Design, section 7-7, from memory; DIN 6885, DIN 5480"
)

// keys and labels of the four bearings, in their order. The propeller shaft's
// are those of any drive with an axle of its own.
var keys = [bearingCount]string{"prop_side", "engine_side", "pinion_prop_side", "pinion_engine_side"}

var sides = [bearingCount]string{"propeller side", "engine side", "pinion, prop side", "pinion, eng. side"}

// named is a key and a label for each of the four bearings.
type named struct{ keys, labels [bearingCount]string }

func nameFour(key, label string) (n named) {
	for i := range bearingCount {
		n.keys[i], n.labels[i] = key+keys[i], label+sides[i]
	}
	return n
}

var (
	lifeNames       = nameFour("bearing.life_", "Bearing life, ")
	basicNames      = nameFour("bearing.basic_life_", "Basic life, ")
	loadNames       = nameFour("bearing.load_", "Bearing load, ")
	turningNames    = nameFour("bearing.load_turning_", "Load in a turn, ")
	standingNames   = nameFour("bearing.load_standing_", "Load standing, ")
	equivalentNames = nameFour("bearing.equivalent_load_", "Equivalent load, ")
)

// Readings are the result's figures for people.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = r.lifeReadings(rs)
	rs = r.worstReadings(rs)
	rs = r.loadReadings(rs)
	rs = r.forceReadings(rs)
	rs = r.shaftReadings(rs)
	rs = r.bendReadings(rs)
	return r.seatReadings(rs)
}

func (r *Result) lifeReadings(rs []reading.Reading) []reading.Reading {
	const modified, basic = "a1 aISO (C/P)³ over speed, at this duty throughout", "(C/P)³ million revolutions over speed"
	for i := range r.Bearings {
		rs = append(rs, reading.OfSlot(lifeNames.keys[i], lifeNames.labels[i], r.Bearings[i].Life, unit.Hour, r.unloaded(i)).
			Higher().How(modified).Source(lifeSource))
	}
	for i := range r.Bearings {
		rs = append(rs, reading.OfSlot(basicNames.keys[i], basicNames.labels[i], r.Bearings[i].BasicLife, unit.Hour, r.unloaded(i)).
			Higher().How(basic).Source(lifeSource))
	}
	return rs
}

// unloaded is why a bearing has no life.
func (r *Result) unloaded(i int) string {
	if r.onCrank && i >= pinionProp {
		return onCrank
	}
	return noLoad
}

// pinionWhy is why nothing of the pinion's shaft is rated, empty when it is.
func (r *Result) pinionWhy() string {
	if r.onCrank {
		return onCrank
	}
	return ""
}

// least is the smallest of one slot over the bearings.
func (r *Result) least(of func(*bearing.Rated) param.Slot) (least param.Slot, which int) {
	for i := range r.Bearings {
		if s := of(&r.Bearings[i]); s.Known && (!least.Known || s.Value < least.Value) {
			least, which = s, i
		}
	}
	return least, which
}

func lifeFactor(b *bearing.Rated) param.Slot     { return b.LifeFactor }
func viscosityRatio(b *bearing.Rated) param.Slot { return b.ViscosityRatio }
func staticSafety(b *bearing.Rated) param.Slot   { return b.StaticSafety }

func (r *Result) worstReadings(rs []reading.Reading) []reading.Reading {
	factor, _ := r.least(lifeFactor)
	film, _ := r.least(viscosityRatio)
	static, worst := r.least(staticSafety)
	return append(rs,
		reading.OfSlot("bearing.life_factor", "Life factor, worse bearing", factor, unit.One, noLoad).Higher().
			How("aISO from viscosity ratio, contamination and load, cut off as asked").Source(lifeSource),
		reading.OfSlot("bearing.viscosity_ratio", "Viscosity ratio, worse bearing", film, unit.One, noLoad).Higher().
			How("oil viscosity over that which just parts the surfaces").Source("ISO 281:2007 from memory"),
		reading.New("bearing.survival", "Bearings reach the life asked", r.Survival, unit.Percent).Higher().
			How("product of four Weibull chances about aISO L10").Source("Shigley's Mechanical Engineering Design, chapter 11: x0 0.02, scale 4.439, slope 1.483"),
		reading.OfSlot("bearing.static_safety", "Static safety, worse bearing", static, unit.One, noLoad).Higher().
			How("static rating over the greatest static load, here of "+names[worst]).Source(staticSource),
		reading.New("bearing.speed_parameter", "Mean diameter times speed", r.fastest(), unit.MillimetrePerMinute).Lower().
			How("the largest of the four bearings").Source("geometry"),
	)
}

func (r *Result) fastest() float64 {
	most := 0.0
	for i := range r.Bearings {
		most = max(most, r.Bearings[i].SpeedParameter)
	}
	return most
}

func (r *Result) loadReadings(rs []reading.Reading) []reading.Reading {
	load := func(i int, key, label string, n float64) reading.Reading {
		why := ""
		if i >= pinionProp {
			why = r.pinionWhy()
		}
		return reading.Unless(why, key, label, n, unit.Newton).Lower().Source(statics)
	}
	for i := range r.Bearings {
		b := &r.Bearings[i]
		rs = append(rs, load(i, loadNames.keys[i], loadNames.labels[i], b.Running).How("mesh and weight in two planes, plus imbalance"))
	}
	for i := range r.Bearings[:pinionProp] {
		b := &r.Bearings[i]
		rs = append(rs, load(i, turningNames.keys[i], turningNames.labels[i], b.Turning).How("straight flight plus the mean gyroscopic couple over the spacing"),
			load(i, standingNames.keys[i], standingNames.labels[i], b.Standing).How("the propeller's weight, engine stopped"))
	}
	for i := range r.Bearings {
		rs = append(rs, load(i, equivalentNames.keys[i], equivalentNames.labels[i], r.Bearings[i].Equivalent).
			How("X Fr + Y Fa, cubic mean over pulses, turns (of two blades, over a revolution of theirs) and straight flight, times the load factor").Source(lifeSource))
	}
	return append(rs,
		load(wheelProp, "bearing.axial_load", "Axial load on the locating bearing", max(r.Bearings[wheelProp].Axial, r.Bearings[wheelEngine].Axial)).How("thrust and axial tooth force together"),
		load(pinionProp, "bearing.axial_load_pinion", "Axial load, pinion's locating one", max(r.Bearings[pinionProp].Axial, r.Bearings[pinionEngine].Axial)).How("axial tooth force"))
}
