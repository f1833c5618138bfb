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

	tooMuchThrust = "the thrust is too great for a steady climb at trim"
	noLevel       = "full throttle does not hold level flight"
	noFlow        = "the fuel flow of level flight was not found"
	noHang        = "the body finds no angle under the hang points at which its weight balances thrust and drag"
	noTwist       = "the torque is more than lines and weight can turn back"
	noBank        = "the torque is more than the weight below the wing can balance"
)

// Readings lists what was found.
func (r Result) Readings() []reading.Reading {
	rs := make([]reading.Reading, 0, 24)
	rs = append(rs, r.path()...)
	rs = append(rs, r.hang()...)
	rs = append(rs, r.reaction()...)
	return append(rs, r.gyro()...)
}

func (r Result) path() []reading.Reading {
	return []reading.Reading{
		reading.OfSlot("flight.climb_rate", "Climb rate", param.Slot{Value: r.ClimbRate, Known: r.Climbs}, unit.MetrePerSecond, tooMuchThrust).Higher().
			How("airspeed × sine of the climb angle, full throttle, ready mass").Source(mechanics),
		reading.OfSlot("flight.climb_angle", "Climb angle", param.Slot{Value: r.ClimbAngle, Known: r.Climbs}, unit.Degree, tooMuchThrust).Higher().
			How("thrust against drag and weight along the path, lift less by the climb, solved exactly").Source(mechanics),
		reading.New("flight.all_up_mass", "All-up mass", r.AllUp, unit.Kilogram).Lower().
			How("pilot, clothing, machine ready and wing").Source("geometry"),
		reading.New("flight.trim_speed", "Trim speed, level", r.TrimSpeed, unit.KilometrePerHour).
			How("true airspeed: grows with the root of lift, falls with the root of air density").Source(mechanics),
		reading.New("flight.level_thrust", "Thrust for level flight", r.Thrust, unit.Newton).Lower().
			How("weight / (glide ratio × cosine of thrust tilt + sine of it)").Source(mechanics),
		r.slot("flight.level_fuel", "Fuel in level flight", r.LevelFuel, unit.LitrePerHour).Lower().
			How("fuel flow where engine and propeller hold level flight at trim / fuel density").Source(mechanics),
		r.slot("flight.endurance", "Endurance", r.Endurance, unit.Hour).Higher().
			How("all the fuel at the start / level fuel flow at ready mass; the gain from growing lighter is left out").Source(mechanics),
	}
}

func (r Result) hang() []reading.Reading {
	return []reading.Reading{
		reading.OfSlot("flight.hang_off", "Lean back, power off", param.Slot{Value: r.HangOff, Known: r.HangsOff}, unit.Degree, noHang).
			How("centre of gravity of pilot and machine swings under the hang points, with their drag").Source(statics),
		reading.OfSlot("flight.hang_full", "Lean back, full throttle", param.Slot{Value: r.HangFull, Known: r.HangsFull}, unit.Degree, noHang).
			How("thrust below the hang points against weight and drag").Source(statics),
		reading.OfSlot("flight.hang_change", "Lean back added by full throttle", param.Slot{Value: r.HangFull - r.HangOff, Known: r.HangsOff && r.HangsFull}, unit.Degree, noHang).
			How("full throttle less power off").Source(statics),
		reading.New("flight.static_moment", "Machine's moment about hang points", r.StaticMoment, unit.NewtonMetre).Lower().
			How("weight × distance of its centre of gravity behind the hang points; grows with depth").Source(statics),
		reading.New("flight.pitch_inertia", "Pitch inertia of the hung body", r.PitchInertia, unit.KilogramSquareMetre).
			How("pilot and machine about the hang points; grows with depth squared").Source("mechanics, parallel axes"),
	}
}

func (r Result) reaction() []reading.Reading {
	return []reading.Reading{
		reading.New("flight.torque_reaction", "Torque reaction", r.TorqueReaction, unit.NewtonMetre).Lower().
			How("shaft torque at the propeller, full throttle standing; rolls the craft against the propeller's turn, wherever the propeller sits").
			Source("mechanics"),
		reading.New("flight.hang_load_difference", "Load moved between hang points", r.HangLoadDifference, unit.Newton).Lower().
			How("torque reaction / hang point spacing: so much more on one side, so much less on the other").Source(statics),
		reading.New("flight.weight_shift", "Weight shift that balances torque", r.WeightShift, unit.Millimetre).Lower().
			How("torque reaction / all-up weight, sideways").Source(statics),
		reading.OfSlot("flight.bank_unopposed", "Bank when torque is not balanced", r.Bank, unit.Degree, noBank).Lower().
			How("sine is torque reaction / (all-up weight × height from centre of gravity to canopy)").Source(statics),
		reading.OfSlot("flight.twist", "Twist of body against wing", r.Twist, unit.Degree, noTwist).
			How("yaw part of the torque, by the lean at full throttle, against the lines' restoring moment").
			Source("mechanics, two-line suspension"),
	}
}

func (r Result) gyro() []reading.Reading {
	return []reading.Reading{
		reading.New("flight.gyroscopic_couple", "Gyroscopic couple at 1 rad/s", r.GyroscopicCouple, unit.NewtonMetre).Lower().
			How("propeller polar inertia × propeller speed × 1 rad/s; a couple does not depend on where the propeller sits").
			Source(gyroscope),
		reading.New("flight.angular_momentum", "Net spin momentum", r.AngularMomentum, unit.NewtonMetreSecond).
			How("propeller and driven parts, plus the crank with its own direction; positive turns with the propeller").
			Source("mechanics"),
		reading.New("flight.net_couple", "Net couple at the turn rate", r.NetCouple, unit.NewtonMetre).Lower().
			How("propeller, driven parts and crank with its direction × turn rate, " + unit.RadianPerSecond.Text(r.TurnRate) +
				"; does not depend on depth").Source(gyroscope),
		reading.New("flight.angular_acceleration", "Nodding from the net couple", r.AngularAcceleration, unit.RadianPerSecondSquared).Lower().
			How("net couple / pitch inertia of the hung body; depth leaves the couple alone and enlarges the inertia: " +
				"slower to start, harder to stop").Source("mechanics"),
		reading.New("flight.turn_pull", "Machine's outward pull in the turn", r.TurnPull, unit.Newton).Lower().
			How("machine's mass × distance behind the hang points × turn rate²; grows with depth").Source("mechanics"),
	}
}

// slot is a reading that exists when level flight does.
func (r Result) slot(key, label string, s param.Slot, u unit.Unit) reading.Reading {
	why := noFlow
	if r.FullThrust < r.Thrust {
		why = noLevel
	}
	return reading.OfSlot(key, label, s, u, why)
}
