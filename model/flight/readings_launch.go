package flight

import (
	"backspan/model/param"
	"backspan/model/reading"
	"backspan/model/unit"
)

func (r *Result) speeds(rs []reading.Reading) []reading.Reading {
	s := &r.Speeds
	slow := "bounded by the stall: Slowest over trim speed × trim speed"
	if s.ShortSlow {
		slow = "bounded by thrust: slower, the drag of the lift is more than full throttle gives"
	}
	fast := "bounded by the wing: Top over trim speed × trim speed"
	if s.ShortFast {
		fast = "bounded by thrust: faster, the drag is more than full throttle gives"
	}
	const method = "full throttle against the parabolic polar through glide ratio and trim speed; "
	how := method
	if s.Level && r.FullThrust < r.Thrust {
		how += "at trim speed full throttle falls short, at slower or faster flight it does not; "
	}
	return append(rs,
		reading.New("flight.stall_speed", "Slowest the wing flies, level", s.Stall, unit.KilometrePerHour).
			How("Slowest over trim speed × trim speed at ready mass; power leaves it nearly alone").Source("as set").Lower(),
		reading.OfSlot("flight.slowest_level", "Slowest level speed", param.Slot{Value: s.Slowest, Known: s.Level}, unit.KilometrePerHour, noLevelAtAll).
			How(how+slow).Source(mechanics).Lower(),
		reading.OfSlot("flight.fastest_level", "Fastest level speed", param.Slot{Value: s.Fastest, Known: s.Level}, unit.KilometrePerHour, noLevelAtAll).
			How(how+fast).Source(mechanics).Higher(),
	)
}

// launch is the take-off run.
func (r *Result) launch(rs []reading.Reading) []reading.Reading {
	const left = "wing already overhead, level ground; thrust falls with airspeed, drag grows with its square; " +
		"inflating the wing, its swing and the air it drags along are left out"
	of := func(x float64) param.Slot { return param.Slot{Value: x, Known: r.Run.Lifts} }
	return append(rs,
		reading.New("flight.lift_off_speed", "Airspeed at lift-off", r.Run.Airspeed, unit.KilometrePerHour).Lower().
			How("Lift-off over trim speed × airspeed at which the wing carries what thrust does not").Source(mechanics),
		reading.New("flight.lift_off_ground_speed", "Speed over ground at lift-off", r.Run.GroundSpeed, unit.KilometrePerHour).Lower().
			How("airspeed at lift-off less headwind: so fast must the legs be able to run").Source(mechanics),
		reading.OfSlot("flight.take_off_run", "Take-off run", of(r.Run.Distance), unit.Metre, noRun).Lower().
			How("way over the ground to lift-off; "+left).Source(newton),
		reading.OfSlot("flight.take_off_time", "Time of the take-off run", of(r.Run.Time), unit.Second, noRun).Lower().
			How("standing to lift-off; "+left).Source(newton),
		reading.OfSlot("flight.lift_off_thrust", "Thrust left at lift-off", of(r.Run.ThrustLeft), unit.Percent, noRun).Higher().
			How("share of the standing thrust: a propeller pulls less the faster it goes").Source("match at three airspeeds, parabola between"),
	)
}

// height is how far up the machine can go.
func (r *Result) height(rs []reading.Reading) []reading.Reading {
	const method = "the match again in thinner air, same machine, full throttle at trim, ready mass; " +
		"the engine's air correction is stretched far beyond its standard, and mixture is taken as set right at every height; " +
		"the pilot's oxygen, cold, clouds and the law of the air are not looked at and mostly end the climb lower"
	return append(rs,
		reading.OfSlot("flight.ceiling", "Absolute ceiling", r.Ceiling.Absolute, unit.Metre, r.noCeiling()).Higher().
			How("altitude at which the climb at trim ends; "+method).Source(mechanics),
		reading.OfSlot("flight.service_ceiling", "Service ceiling", r.Ceiling.Service, unit.Metre, r.noServiceCeiling()).Higher().
			How("altitude at which "+unit.MetrePerSecond.Text(ServiceClimb)+" of climb at trim are left; "+method).Source(mechanics),
	)
}

func (r *Result) noCeiling() string {
	if r.Ceiling.Why != "" {
		return r.Ceiling.Why
	}
	return "the ceiling was not sought"
}

func (r *Result) noServiceCeiling() string {
	if r.Ceiling.Absolute.Known {
		return noService
	}
	return r.noCeiling()
}
