package gearshaft

import (
	"cmp"
	"slices"

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

// millimetrePerMinute is how a bearing's speed limit is usually written.
var millimetrePerMinute = unit.Unit{Dimension: unit.Speed, Symbol: "mm/min", Key: "mm_min", Times: 1, Over: 60000, Figures: 3}

// keys and labels of the four bearings, in their order. The propeller shaft's
// are those of any drive with an axle of its own.
var keys = [bearingCount]string{"prop_side", "engine_side", "pinion_prop_side", "pinion_engine_side"}

var sides = [bearingCount]string{"propeller side", "engine side", "pinion, prop side", "pinion, eng. side"}

// Readings are the result's figures for people.
func (r Result) Readings() []reading.Reading {
	return slices.Concat(r.lifeReadings(), r.worstReadings(), r.loadReadings(), r.forceReadings(), r.shaftReadings(), r.bendReadings(), r.seatReadings())
}

func (r *Result) lifeReadings() []reading.Reading {
	const modified, basic = "a1 aISO (C/P)³ over speed, at this duty throughout", "(C/P)³ million revolutions over speed"
	rs := make([]reading.Reading, 0, 2*bearingCount)
	for i := range r.Bearings {
		rs = append(rs, reading.OfSlot("bearing.life_"+keys[i], "Bearing life, "+sides[i], r.Bearings[i].Life, unit.Hour, r.unloaded(i)).
			Higher().How(modified).Source(lifeSource))
	}
	for i := range r.Bearings {
		rs = append(rs, reading.OfSlot("bearing.basic_life_"+keys[i], "Basic life, "+sides[i], r.Bearings[i].BasicLife, unit.Hour, r.unloaded(i)).
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

func (r *Result) worstReadings() []reading.Reading {
	factor, _ := r.least(lifeFactor)
	film, _ := r.least(viscosityRatio)
	static, worst := r.least(staticSafety)
	return []reading.Reading{
		reading.OfSlot("bearing.life_factor", "Life factor, worse bearing", factor, unit.One, noLoad).Higher().
			How("aISO from viscosity ratio, contamination and load, cut off as asked").Source(lifeSource),
		reading.OfSlot("bearing.viscosity_ratio", "Viscosity ratio, worse bearing", film, unit.One, noLoad).Higher().
			How("oil viscosity over that which just parts the surfaces").Source("ISO 281:2007 from memory"),
		reading.New("bearing.survival", "Bearings reach the life asked", r.Survival, unit.Percent).Higher().
			How("product of four Weibull chances about aISO L10").Source("Shigley's Mechanical Engineering Design, chapter 11: x0 0.02, scale 4.439, slope 1.483"),
		reading.OfSlot("bearing.static_safety", "Static safety, worse bearing", static, unit.One, noLoad).Higher().
			How("static rating over the greatest static load, here of " + names[worst]).Source(staticSource),
		reading.New("bearing.speed_parameter", "Mean diameter times speed", r.fastest(), millimetrePerMinute).Lower().
			How("the largest of the four bearings").Source("geometry"),
	}
}

func (r *Result) fastest() float64 {
	most := 0.0
	for i := range r.Bearings {
		most = max(most, r.Bearings[i].SpeedParameter)
	}
	return most
}

func (r *Result) loadReadings() []reading.Reading {
	load := func(i int, key, label string, n float64) reading.Reading {
		why := ""
		if i >= pinionProp {
			why = r.pinionWhy()
		}
		return reading.Unless(why, key, label, n, unit.Newton).Lower().Source(statics)
	}
	rs := make([]reading.Reading, 0, 16)
	for i := range r.Bearings {
		b := &r.Bearings[i]
		rs = append(rs, load(i, "bearing.load_"+keys[i], "Bearing load, "+sides[i], b.Running).How("mesh and weight in two planes, plus imbalance"))
	}
	for i := range r.Bearings[:pinionProp] {
		b := &r.Bearings[i]
		rs = append(rs, load(i, "bearing.load_turning_"+keys[i], "Load in a turn, "+sides[i], b.Turning).How("straight flight plus the gyroscopic couple over the spacing"),
			load(i, "bearing.load_standing_"+keys[i], "Load standing, "+sides[i], b.Standing).How("the propeller's weight, engine stopped"))
	}
	for i := range r.Bearings {
		rs = append(rs, load(i, "bearing.equivalent_load_"+keys[i], "Equivalent load, "+sides[i], r.Bearings[i].Equivalent).
			How("X Fr + Y Fa, cubic mean over pulses, turns and straight flight, times the load factor").Source(lifeSource))
	}
	return append(rs,
		load(wheelProp, "bearing.axial_load", "Axial load on the locating bearing", max(r.Bearings[wheelProp].Axial, r.Bearings[wheelEngine].Axial)).How("thrust and axial tooth force together"),
		load(pinionProp, "bearing.axial_load_pinion", "Axial load, pinion's locating one", max(r.Bearings[pinionProp].Axial, r.Bearings[pinionEngine].Axial)).How("axial tooth force"))
}

func (r *Result) forceReadings() []reading.Reading {
	with := r.WheelAxial
	if r.Thrust < 0 {
		with = -with
	}
	return []reading.Reading{
		reading.New("gearshaft.axial_with_thrust", "Tooth push along with the thrust", with, unit.Newton).Lower().
			How("axial tooth force on the wheel; positive adds to the propeller's thrust, negative takes from it").
			Source("statics; hand of the helix and turn of the crank"),
		reading.New("gearshaft.axial_net", "Net push forward, propeller shaft", r.WheelAxial+r.Thrust, unit.Newton).
			How("thrust and axial tooth force on the locating bearing; negative pushes aft").Source(statics),
		reading.New("gearshaft.torque_mean", "Torque on the pinion shaft, mean", r.TorqueMean, unit.NewtonMetre).
			How("power over speed, full throttle standing").Source("definition"),
		reading.New("gearshaft.torque_swing", "Torque on the pinion shaft, swing", r.Swing, unit.NewtonMetre).Lower().
			How("amplitude that passes the mesh, or what the Application factor adds where the pulsation is not known").Source("the gear's own pulsation"),
	}
}

func (r *Result) shaftReadings() []reading.Reading {
	var rs []reading.Reading
	for _, x := range [...]struct {
		s          *Shaft
		key, label string
		why        string
	}{{&r.Pinion, "pinion", "pinion shaft", r.pinionWhy()}, {&r.Wheel, "wheel", "propeller shaft", ""}} {
		none := cmp.Or(x.why, noStress)
		rs = append(rs,
			reading.OfSlot("gearshaft.fatigue_safety_"+x.key, "Fatigue safety, "+x.label, x.s.Fatigue, unit.One, none).Higher().
				How("least over the sections, here at the "+x.s.Weakest+"; distortion energy with the criterion chosen").Source(shaftSource),
			reading.OfSlot("gearshaft.yield_safety_"+x.key, "Yield safety, "+x.label, x.s.Yield, unit.One, none).Higher().
				How("least over the sections, peak with the notch factors").Source(shaftSource),
			reading.Unless(x.why, "gearshaft.bending_moment_"+x.key, "Largest bending, "+x.label, x.s.Bending, unit.NewtonMetre).Lower().
				How("mesh force at its peak, weight, imbalance and gyroscopic couple").Source(statics),
			reading.Unless(x.why, "gearshaft.peak_torque_"+x.key, "Greatest torque, "+x.label, x.s.Torque, unit.NewtonMetre).Lower().
				How("at the working point or where the torque peaks from idle up").Source("the gear's own pulsation"))
	}
	return rs
}

func (r *Result) bendReadings() []reading.Reading {
	b := &r.Bend
	slope := func(why, key, label string, x float64) reading.Reading {
		return reading.Unless(why, key, label, x, unit.Milliradian).Lower().Source(beamSource)
	}
	return []reading.Reading{
		slope(r.pinionWhy(), "gearshaft.mesh_slope", "Slope between the gears", b.MeshSlope).How("of one shaft to the other at the teeth, in the worst plane, in a turn"),
		reading.Unless(r.pinionWhy(), "gearshaft.separation", "Gears pushed apart", b.Separation, unit.Micrometre).
			How("deflections along the line of centres, in a turn").Source(beamSource).Lower(),
		slope("", "gearshaft.bearing_slope_wheel", "Bearing slope, propeller shaft", max(b.Bearings[wheelProp], b.Bearings[wheelEngine])).How("at the bearing that tilts more, in a turn"),
		slope(r.pinionWhy(), "gearshaft.bearing_slope_pinion", "Bearing slope, pinion shaft", max(b.Bearings[pinionProp], b.Bearings[pinionEngine])).How("at the bearing that tilts more"),
	}
}

func (r *Result) seatReadings() []reading.Reading {
	var rs []reading.Reading
	for _, x := range r.seats() {
		why := x.s.Why
		if why == "" {
			why = "does not apply to " + string(x.s.Fit)
		}
		rs = append(rs,
			reading.OfSlot("gearshaft."+x.key+"_seat_safety", x.name+" seat, safety", x.s.Safety, unit.One, why).Higher().
				How("least of shear, pressure or slip under the greatest torque").Source(seatSource),
			reading.OfSlot("gearshaft."+x.key+"_seat_pressure", x.name+" seat, pressure", x.s.Pressure, unit.Megapascal, why).Lower().
				How("mean on the flanks of key or spline under the greatest torque").Source(seatSource),
			reading.OfSlot("gearshaft."+x.key+"_key_shear", x.name+" key, shear stress", x.s.Shear, unit.Megapascal, why).Lower().
				How("mean in the key under the greatest torque").Source(seatSource),
			reading.OfSlot("gearshaft."+x.key+"_taper_torque", x.name+" taper, torque it holds", x.s.Capacity, unit.NewtonMetre, why).Higher().
				How("by friction, from the nut's force").Source("statics of a cone"))
	}
	return rs
}

type namedSeat struct {
	s         *SeatRating
	key, name string
}

func (r *Result) seats() [3]namedSeat {
	return [3]namedSeat{{&r.Coupling, "coupling", "Coupling"}, {&r.WheelSeat, "wheel", "Wheel"}, {&r.Flange, "flange", "Flange"}}
}
