package shaft

import (
	"backspan/model/bearing"
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

// Bearing is one of the two.
type Bearing = bearing.Rated

// Result is the axle on its bearings. Moments in N·m.
type Result struct {
	Axle         Axle
	PropSide     Bearing
	EngineSide   Bearing
	Survival     float64 // chance that both bearings outlive the life asked
	LifeAsked    float64 // s
	SpeedLimit   float64 // m·rev/s
	Spacing      float64 // m
	LeastSpacing float64 // at which the bearings touch, m

	Bending        [3]float64 // greatest at the propeller-side seat, the engine-side seat, and at wheel or hold
	LargestBending float64
	EnduranceLimit float64 // least over the sections, Pa
	Walled         bool    // the bore leaves a wall
	FatigueSafety  param.Slot
	YieldSafety    param.Slot
	SafetyAsked    float64
	CrankMoment    float64

	speedSource string

	held   Reactions  // steady, of the bearings on the axle
	thrust [2]float64 // on each bearing, positive forward
}

// Bearings lists the two with the steady forces on them.
func (r *Result) Bearings() []bearing.Row {
	p, e := r.held.PropSide, r.held.EngineSide
	return []bearing.Row{
		r.PropSide.Row("axle, propeller side", -p.Along, -p.Across, r.thrust[0], r.SpeedLimit),
		r.EngineSide.Row("axle, engine side", -e.Along, -e.Across, r.thrust[1], r.SpeedLimit),
	}
}

// staticSafety is that of the worse bearing.
func (r *Result) staticSafety() param.Slot {
	return lower(r.PropSide.StaticSafety, r.EngineSide.StaticSafety)
}

// lower is the smaller of two slots; an empty one does not count.
func lower(a, b param.Slot) param.Slot {
	if !a.Known || b.Known && b.Value < a.Value {
		return b
	}
	return a
}

func (r *Result) speedParameter() float64 {
	return max(r.PropSide.SpeedParameter, r.EngineSide.SpeedParameter)
}

const (
	lifeSource   = "ISO 281:2007 from memory; " + bearing.RatingOrigin
	statics      = "statics"
	noLoad       = "nothing loads the bearing, or nothing turns"
	noStress     = "nothing loads the axle"
	noWall       = "Axle bore leaves the axle no wall"
	shaftSource  = "Shigley's Mechanical Engineering Design, chapter 7, from memory"
	marinSource  = "Marin's factors, Shigley's Mechanical Engineering Design, chapter 6, from memory"
	staticSource = "ISO 76 from memory; " + bearing.RatingOrigin
)

// Readings are the result's figures for people.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = r.lifeReadings(rs)
	rs = r.loadReadings(rs)
	return r.axleReadings(rs)
}

func (r *Result) lifeReadings(rs []reading.Reading) []reading.Reading {
	life := func(key, label string, s param.Slot) reading.Reading {
		return reading.OfSlot(key, label, s, unit.Hour, noLoad).Higher().Source(lifeSource)
	}
	const modified, basic = "a1 aISO (C/P)³ over speed, at this duty throughout", "(C/P)³ million revolutions over speed"
	p, e := &r.PropSide, &r.EngineSide
	return append(rs,
		life("bearing.life_prop_side", "Bearing life, propeller side", p.Life).How(modified),
		life("bearing.life_engine_side", "Bearing life, engine side", e.Life).How(modified),
		life("bearing.basic_life_prop_side", "Basic life, propeller side", p.BasicLife).How(basic),
		life("bearing.basic_life_engine_side", "Basic life, engine side", e.BasicLife).How(basic),
		reading.OfSlot("bearing.life_factor", "Life factor, worse bearing", lower(p.LifeFactor, e.LifeFactor), unit.One, noLoad).Higher().
			How("aISO from viscosity ratio, contamination and load, cut off as asked").Source(lifeSource),
		reading.OfSlot("bearing.viscosity_ratio", "Viscosity ratio, worse bearing", lower(p.ViscosityRatio, e.ViscosityRatio), unit.One, noLoad).Higher().
			How("oil viscosity over that which just parts the surfaces").Source("ISO 281:2007 from memory"),
		reading.New("bearing.survival", "Bearings reach the life asked", r.Survival, unit.Percent).Higher().
			How("product of two Weibull chances about aISO L10").Source("Shigley's Mechanical Engineering Design, chapter 11: x0 0.02, scale 4.439, slope 1.483"),
		reading.OfSlot("bearing.static_safety", "Static safety, worse bearing", r.staticSafety(), unit.One, noLoad).Higher().
			How("static rating over the greatest static load, running or standing").Source(staticSource),
		reading.New("bearing.speed_parameter", "Mean diameter times speed", r.speedParameter(), unit.MillimetrePerMinute).Lower().
			How("of the larger bearing").Source("geometry"),
	)
}

func (r *Result) loadReadings(rs []reading.Reading) []reading.Reading {
	load := func(key, label string, n float64) reading.Reading {
		return reading.New(key, label, n, unit.Newton).Lower().Source(statics)
	}
	const running, turning, standing = "drive and weight as vectors, plus imbalance", "straight flight plus the mean gyroscopic couple over the spacing", "drive and weight as vectors, engine stopped"
	const equivalent = "X Fr + Y Fa, cubic mean over turns (of two blades, over a revolution of theirs) and straight flight, times the application factor"
	p, e := &r.PropSide, &r.EngineSide
	return append(rs,
		load("bearing.load_prop_side", "Bearing load, propeller side", p.Running).How(running),
		load("bearing.load_engine_side", "Bearing load, engine side", e.Running).How(running),
		load("bearing.load_turning_prop_side", "Load in a turn, propeller side", p.Turning).How(turning),
		load("bearing.load_turning_engine_side", "Load in a turn, engine side", e.Turning).How(turning),
		load("bearing.load_standing_prop_side", "Load standing, propeller side", p.Standing).How(standing),
		load("bearing.load_standing_engine_side", "Load standing, engine side", e.Standing).How(standing),
		load("bearing.equivalent_load_prop_side", "Equivalent load, propeller side", p.Equivalent).How(equivalent).Source(lifeSource),
		load("bearing.equivalent_load_engine_side", "Equivalent load, engine side", e.Equivalent).How(equivalent).Source(lifeSource),
		load("bearing.axial_load", "Axial load on the locating bearing", max(p.Axial, e.Axial)).How("thrust of the propeller"),
	)
}

func (r *Result) axleReadings(rs []reading.Reading) []reading.Reading {
	moment := func(key, label string, m float64) reading.Reading {
		return reading.New(key, label, m, unit.NewtonMetre).Lower().How("steady and alternating parts together, running or standing").Source(statics)
	}
	why := noStress
	if !r.Walled {
		why = noWall
	}
	return append(rs,
		moment("shaft.bending_moment", "Bending moment, largest", r.LargestBending),
		moment("shaft.bending_moment_prop_side", "Bending at propeller-side bearing", r.Bending[0]),
		moment("shaft.bending_moment_engine_side", "Bending at engine-side bearing", r.Bending[1]),
		moment("shaft.bending_moment_wheel", "Bending at the wheel or the hold", r.Bending[2]),
		reading.New("shaft.endurance_limit", "Endurance limit of the axle", r.EnduranceLimit, unit.Megapascal).Higher().
			How("half the tensile strength times surface, size and reliability factors").Source(marinSource),
		reading.OfSlot("shaft.fatigue_safety", "Axle safety against fatigue", r.FatigueSafety, unit.One, why).Higher().
			How("least over the sections, distortion energy with the criterion chosen").Source(shaftSource),
		reading.OfSlot("shaft.yield_safety", "Axle safety against yield", r.YieldSafety, unit.One, why).Higher().
			How("least over the sections, peak with the notch factors").Source(shaftSource),
	)
}
