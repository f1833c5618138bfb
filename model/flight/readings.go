package flight

import (
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

const (
	mechanics = "mechanics of flight"
	statics   = "statics"
	gyroscope = "mechanics, gyroscopic couple"
	newton    = "Newton's second law"
	twoLines  = "statics of the body, mechanics of a two-line suspension"

	tooMuchThrust = "the thrust is too great for a steady climb at trim"
	noLevel       = "full throttle does not hold level flight at trim speed"
	noLevelAtAll  = "full throttle does not hold level flight at any speed between stall and top speed"
	noFlow        = "the fuel flow of level flight was not found"
	noHang        = "the body finds no angle under the hang points at which its weight balances thrust and drag"
	noTwist       = "the torque is more than the lines can turn back"
	noBank        = "the torque is more than the weight below the wing can balance"
	burning       = "all the fuel at the start in level flight at trim; fuel flow falls with a power of mass from ready to empty tank, no reserve kept"
	noRun         = "thrust and legs do not bring the pilot to lift-off"
	noFullFuel    = "the fuel flow at full throttle was not found"
	noService     = "full throttle climbs less than that at this site already"
)

// Readings lists what was found.
func (r Result) Readings(rs []reading.Reading) []reading.Reading {
	rs = r.path(rs)
	rs = r.speeds(rs)
	rs = r.launch(rs)
	rs = r.height(rs)
	rs = r.hang(rs)
	rs = r.reaction(rs)
	return r.gyro(rs)
}

func (r *Result) path(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.OfSlot("flight.climb_rate", "Climb rate", param.Slot{Value: r.ClimbRate, Known: r.Climbs}, unit.MetrePerSecond, tooMuchThrust).Higher().
			How("airspeed × sine of the climb angle, full throttle at the trim lift, ready mass; thrust at the airspeed of the climb").Source(mechanics),
		reading.OfSlot("flight.climb_angle", "Climb angle", param.Slot{Value: r.ClimbAngle, Known: r.Climbs}, unit.Degree, tooMuchThrust).Higher().
			How("thrust against drag and weight along the path, lift less by the climb, solved exactly").Source(mechanics),
		reading.New("flight.sink_off", "Sink, engine off", r.SinkOff, unit.MetrePerSecond).Lower().
			How("airspeed × sine of the glide angle at trim, ready mass").Source(mechanics),
		reading.New("flight.all_up_mass", "All-up mass", r.AllUp, unit.Kilogram).Lower().
			How("pilot, clothing, machine ready and wing").Source("geometry"),
		reading.New("flight.trim_speed", "Trim speed, level", r.TrimSpeed, unit.KilometrePerHour).
			How("true airspeed: grows with the root of lift, falls with the root of air density").Source(mechanics),
		reading.New("flight.level_thrust", "Thrust for level flight", r.Thrust, unit.Newton).Lower().
			How("weight / (glide ratio × cosine of thrust tilt + sine of it)").Source(mechanics),
		r.slot("flight.level_fuel", "Fuel in level flight", r.LevelFuel, unit.LitrePerHour).Lower().
			How("fuel flow where engine and propeller hold level flight at trim / fuel density").Source(mechanics),
		r.slot("flight.endurance", "Endurance", r.Endurance, unit.Hour).Higher().
			How(burning).Source(mechanics),
		r.slot("flight.range", "Range in still air", r.Range, unit.Kilometre).Higher().
			How("trim speed over the endurance; "+burning).Source(mechanics),
		reading.OfSlot("flight.full_fuel", "Fuel at full throttle", r.FullFuel, unit.LitrePerHour, noFullFuel).Lower().
			How("fuel flow at full throttle and trim / fuel density").Source("Willans line of the engine"),
	)
}

func (r *Result) hang(rs []reading.Reading) []reading.Reading {
	return append(rs,
		reading.OfSlot("flight.hang_off", "Lean back, power off", param.Slot{Value: r.HangOff, Known: r.HangsOff}, unit.Degree, noHang).
			How("centre of gravity of pilot and machine swings under the hang points, with their drag").Source(statics),
		reading.OfSlot("flight.hang_full", "Lean back, full throttle", param.Slot{Value: r.HangFull, Known: r.HangsFull}, unit.Degree, noHang).
			How("thrust below the hang points against weight and drag").Source(statics),
		reading.OfSlot("flight.hang_level", "Lean back, level flight", param.Slot{Value: r.HangLevel, Known: r.HangsLevel}, unit.Degree, noHang).
			How("thrust of level flight below the hang points against weight and drag").Source(statics),
		reading.OfSlot("flight.hang_change", "Lean back added by full throttle", param.Slot{Value: r.HangFull - r.HangOff, Known: r.HangsOff && r.HangsFull}, unit.Degree, noHang).
			How("full throttle less power off; grows with thrust × how far the thrust line lies below the hang points, none where it meets them").Source(statics),
		reading.New("flight.thrust_offset", "Thrust line below hang points", r.ThrustOffset, unit.Millimetre).
			How("its height alone: thrust pulls along its line, so how far back on it the propeller sits does not change its moment").Source("geometry"),
		reading.New("flight.static_moment", "Machine's moment about hang points", r.StaticMoment, unit.NewtonMetre).Lower().
			How("weight × distance of its centre of gravity behind the hang points; grows in step with depth").Source(statics),
		reading.New("flight.pitch_inertia", "Pitch inertia of the hung body", r.PitchInertia, unit.KilogramSquareMetre).
			How("pilot and machine about the hang points; the machine's part grows with the square of its distance from them").Source("mechanics, parallel axes"),
		reading.New("flight.yaw_inertia", "Yaw inertia of the hung body", r.YawInertia, unit.KilogramSquareMetre).
			How("the same about the upright axis through the hang points; the machine's part grows with depth squared").Source("mechanics, parallel axes"),
	)
}

// slot is a reading that exists when level flight does.
func (r *Result) slot(key, label string, s param.Slot, u unit.Unit) reading.Reading {
	why := noFlow
	if r.FullThrust < r.Thrust {
		why = noLevel
	}
	return reading.OfSlot(key, label, s, u, why)
}
